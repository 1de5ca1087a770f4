import type { Action, Of } from '../core/site/action';
import type { Decision } from '../core/site/attempt';
import type { SiteEvent } from '../core/site/event';

/** What is heard of an act. Everything that makes a sound on the site has one name here and a caption in both languages. */

export const soundNames = [
  'hammer',
  'nailer',
  'creak',
  'saw',
  'plane',
  'chalk',
  'string',
  'tape',
  'tick',
  'lay',
  'pencil',
  'rafter',
  'block',
  'ridge',
  'brace',
  'knock',
  'ladder',
  'steps',
  'clip',
  'chain',
  'lift',
  'idle',
  'slack',
  'no',
  'stop',
  'fall',
] as const;

export type SoundName = (typeof soundNames)[number];

/** Which of the two volumes a sound goes by. */
export type SoundGroup = 'work' | 'machine';

const machineSounds: readonly SoundName[] = ['chain', 'lift', 'idle', 'slack'];

export const groupOf = (name: SoundName): SoundGroup => (machineSounds.includes(name) ? 'machine' : 'work');

/** One sound, so many times over, beginning `delay` seconds after the act. */
export type Sound = { readonly name: SoundName; readonly times: number; readonly delay: number };

/** Nails can be counted up to this many; more of them sound like many. */
export const mostTimes = 4;

/** How long the first of two sounds is left to itself, seconds. */
const next = 0.7;

const heard = (name: SoundName, times = 1): readonly Sound[] => [
  { name, times: Math.max(1, Math.min(mostTimes, Math.round(times))), delay: 0 },
];

const then = (first: readonly Sound[], second: readonly Sound[]): readonly Sound[] => [
  ...first,
  ...second.map((sound) => ({ ...sound, delay: sound.delay + next * (first[0]?.times ?? 0) })),
];

const silent: readonly Sound[] = [];

/** What the act came to, as a list: the loud end of it alone where something gave, fell or was stopped. */
export const soundsFor = (action: Action, outcome: Decision): readonly Sound[] => {
  if (action.type === 'undo') return silent;
  if (!outcome.ok) return heard(outcome.stop ? 'stop' : 'no');
  const { events } = outcome;
  const came = (type: SiteEvent['type']): boolean => events.some((event) => event.type === type);
  if (came('stopped')) return heard('stop');
  const own = (makers[action.type] as Maker<Action>)(action, events);
  if (came('cameDown')) return then(own.slice(0, 1), heard('fall'));
  return came('slipped') ? then(own.slice(0, 1), heard('creak', 2)) : own;
};

type Maker<A> = (action: A, events: readonly SiteEvent[]) => readonly Sound[];

/** Every act, and the sound it makes when it is done; a look and a word make none. */
const makers: { readonly [T in Action['type']]: Maker<Of<T>> } = {
  agree: () => silent,
  makeReady: ({ what }) => heard(readied[what]),
  read: ({ tool }) => readWith[tool],
  judge: () => heard('pencil'),
  mark: ({ faces }) => then(heard('tape'), heard('pencil', 2 * faces)),
  mendWall: ({ how }) => mended[how],
  setTie: () => heard('rafter'),
  place: ({ member, at }) => put(member, at),
  tack: ({ nails }) => heard('hammer', nails),
  nailOff: (_, events) => heard('nailer', nailsIn(events)),
  draw: ({ nails }) => heard('creak', nails),
  hookOn: () => heard('chain'),
  stand: ({ where }) => heard(where === 'ladder' ? 'ladder' : 'steps'),
  signal: ({ sign }) => heard(sign === 'stop' ? 'idle' : 'lift'),
  setPost: () => heard('knock'),
  raise: ({ by }) => heard('knock', by < 0 ? 1 : 2),
  shift: () => heard('knock'),
  brace: () => heard('brace'),
  letGo: () => heard('slack'),
  line: ({ kind }) => heard(kind === 'string' ? 'string' : 'chalk'),
  trim: ({ cut }) => heard(cut === 'wedge' ? 'plane' : 'saw'),
  cutTail: () => heard('saw'),
  swap: () => heard('rafter', 2),
  takeOut: ({ member }) => takenOut(member),
  carryOn: (_, events) => carried(events),
  handOver: () => silent,
  undo: () => silent,
};

const readied = {
  platform: 'rafter',
  ladder: 'ladder',
  openings: 'rafter',
  anchor: 'clip',
  gear: 'clip',
} as const satisfies Record<Of<'makeReady'>['what'], SoundName>;

/** An eye makes no sound, nor does a bob that hangs. */
const readWith: Readonly<Record<Of<'read'>['tool'], readonly Sound[]>> = {
  eye: silent,
  tape: heard('tape'),
  rule: heard('lay'),
  level: heard('tick'),
  waterLevel: heard('tick'),
  string: heard('lay'),
  pattern: heard('lay'),
  square: heard('lay'),
  bob: silent,
  straightedge: heard('lay'),
  storyPole: heard('lay'),
};

const mended: Readonly<Record<Of<'mendWall'>['how'], readonly Sound[]>> = {
  shim: heard('hammer', 2),
  plane: heard('plane', 3),
  pull: heard('creak'),
  brace: heard('brace'),
};

const put = (member: string, at: Of<'place'>['at']): readonly Sound[] => {
  if (member === 'ridge') return at === 'machine' ? then(heard('lift', 2), heard('ridge')) : heard('ridge');
  if (member.startsWith('strap.')) return heard('lay');
  if (!member.startsWith('block.')) return heard('rafter');
  return at === 'drive' ? then(heard('block'), heard('hammer')) : heard('block');
};

const takenOut = (member: string): readonly Sound[] => {
  if (/^(string|chalk|tail)\./.test(member)) return heard('string');
  if (member.startsWith('post.')) return heard('knock');
  return then(heard('creak'), heard(member.startsWith('block.') ? 'block' : 'rafter'));
};

const nailsIn = (events: readonly SiteEvent[]): number =>
  events.reduce((sum, event) => sum + (event.type === 'nailed' ? event.nails : 0), 0);

/** The crew goes on: what they set, and how it is fastened, as from a little way off. */
const carried = (events: readonly SiteEvent[]): readonly Sound[] => {
  const sets = events.filter(({ type }) => type === 'placed' || type === 'tieSet').length;
  const tacks = events.filter(({ type }) => type === 'tacked').length;
  const nails = nailsIn(events);
  const set = sets > 0 ? heard('rafter', Math.min(2, sets)) : silent;
  const fastened = nails > 0 ? heard('nailer', nails) : tacks > 0 ? heard('hammer', tacks) : silent;
  const both = then(set, fastened);
  return both.length > 0 ? both : heard('steps', 2);
};
