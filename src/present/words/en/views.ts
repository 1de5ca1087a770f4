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
  loads: {
    show: 'Load path',
    says: 'From the lumber’s own weight as it stands now, in pounds. No snow, wind or people.',
    none: 'Nothing is fastened yet, so nothing carries.',
    arrows: 'Arrows point the way a part presses or pulls. The wider, the more.',
    kind: { push: 'push', pull: 'pull', down: 'down', out: 'out' },
    way: { down: 'down', up: 'up', out: 'out', in: 'in' },
    key: (pounds: number): string => `so wide: ${pounds} lb`,
    rafter: (name: string, top: string, foot: string): string =>
      `${name}: ${top} at the ridge, ${foot} at the wall.`,
    heel: (down: string, out: string): string => `On the wall: ${down}, ${out}.`,
    pulls: (name: string, pounds: string): string => `${name}: pulls ${pounds}.`,
    pushes: (name: string, pounds: string): string => `${name}: pushes ${pounds}.`,
    carries: (name: string, pounds: string): string => `${name}: carries ${pounds}.`,
    held: (pounds: string): string => `Held up by hands or the sling: ${pounds}.`,
    whole: (all: string, walls: string): string =>
      `The whole frame weighs ${all}. The walls carry ${walls} of it.`,
  },
  strip: {
    show: 'Enlarged',
    title: (times: number): string => `×${times}, not to scale`,
    none: 'No ridge is up yet.',
    intended: 'Dashed: as intended. Nothing is placed by this strip.',
    kind: {
      height: 'Ridge height',
      straight: 'Ridge from above',
      'gap.street': 'String, street side',
      'gap.yard': 'String, yard side',
    },
    way: {
      height: { plus: 'high', minus: 'low' },
      straight: { plus: 'to the yard', minus: 'to the street' },
      'gap.street': { plus: 'near the string', minus: 'off the string' },
      'gap.yard': { plus: 'near the string', minus: 'off the string' },
    },
    on: (name: string): string => `${name}: on its line.`,
    off: (name: string, far: string, station: number): string => `${name}: most at ${station}, ${far}.`,
  },
  /** A signal that the load follows as long as it is given. */
  hold: { hoist: 'Hold to hoist', lower: 'Hold to lower', start: 'Start', stop: 'Stop' },
};
