/** Names of the views and of what stands beside them. */
export const views = {
  sheet: 'Sheet',
  plan: 'Plan',
  zoom: {
    group: 'Move the drawing',
    closer: 'Closer',
    farther: 'Farther off',
    whole: 'Whole drawing',
    left: 'Look to the left',
    right: 'Look to the right',
    up: 'Look higher',
    down: 'Look lower',
  },
};
