import type { SiteState } from './state';

/** The site before anybody touched it: walls and plates stand, boards lie on the ground, nobody is near a load. */
export const initialSite: SiteState = {
  agreed: {},
  ready: {},
  people: { lead: 'clear', helper: 'clear' },
  sling: undefined,
  mends: {},
  ridge: undefined,
  members: {},
  joints: {},
  rests: {},
  marks: {},
  lines: {},
  judged: {},
  readings: [],
  trims: {},
  splits: [],
  stops: [],
  minutes: 0,
  told: 0,
  unhooked: false,
  down: undefined,
  handedOver: false,
};
