import type { Messages } from './messages';

/** The catalogue of a job whose ridge is a beam: posts are the plan's and not props, and are called so. */
export const withPosts = (words: Messages): Messages => {
  const { beam, trade, ui, spoken } = words;
  return {
    ...words,
    tasks: { ...words.tasks, setPosts: beam.setPosts },
    trade: {
      ...trade,
      member: { ...trade.member, post: beam.post },
      method: { ...trade.method, hang: { ...trade.method.hang, posts: beam.hang } },
    },
    ui: {
      ...ui,
      act: {
        ...ui.act,
        post: beam.set,
        place: { ...ui.act.place, posts: beam.liftedOn, machine: beam.lowered },
      },
    },
    spoken: {
      ...spoken,
      roof: {
        ...spoken.roof,
        posts: beam.posts,
        heldBy: { ...spoken.roof.heldBy, posts: beam.onPosts },
      },
    },
    rules: { ...words.rules, S2: { ...words.rules.S2, why: beam.held } as Messages['rules'][string] },
    dangers: { ...words.dangers, raiseUnderLoad: beam.raise, propWithSomeoneUnder: beam.under },
    refusals: { ...words.refusals, ridgeInTheWay: beam.inTheWay },
  };
};
