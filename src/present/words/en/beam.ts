/** What is called otherwise where the ridge is a beam and its posts stay. */
export const beam = {
  post: (n: number) => `Post ${n}`,
  setPosts: 'Set the posts that stay, plumb and fixed',
  hang: 'lifted onto its posts',
  ridge: (n: number) => `a beam on ${n} posts that stay`,
  noTies: 'none. The beam holds the rafters up, so they hardly push the walls.',
  fromA: (post: string) => `${post}, center from end A`,
  length: 'Posts, footing to ridge',
  liftedOn: 'Lift it onto its posts',
  lowered: 'Lower it with the machine',
  set: 'Set the post on its footing',
  posts: 'The ridge is up on its posts.',
  onPosts: 'on its posts',
  held: 'End pairs and middle pair nailed, posts fixed, braces in, everybody clear.',
  raise: 'Stop. Do not push up by hand under a hung load. Signal the machine, or set the post there first.',
  under: 'Stop. That post carries the ridge and somebody is under it.',
  inTheWay: 'The ridge is up. Cut the post to fit under it.',
};
