import { troubles, woods } from '../roofSchemaParts';

/** The form for a crew's own roof: what it asks, roof by roof, and where an answer goes in the roof file. */

/** Roofs as people name them; several are one kind of file. */
export const styles = [
  'gable',
  'posts',
  'unequal',
  'standing',
  'shed',
  'shedHigh',
  'shedBetween',
  'hip',
  'gambrel',
  'wing',
  'dormer',
  'stepped',
] as const;
export type Style = (typeof styles)[number];

/** What an answer puts into the file, by path; nothing where the usual is meant. */
export type Puts = Readonly<Record<string, unknown>>;

export type Field = {
  /** Its path in the roof file, which is also where a complaint finds it. */
  readonly id: string;
  readonly group: Group;
  readonly styles: readonly Style[];
  /** Only asked while another field is answered so. */
  readonly where?: { readonly field: string; readonly is: readonly string[] };
} & (
  | { readonly kind: 'length'; readonly optional?: boolean }
  | { readonly kind: 'rise'; readonly optional?: boolean }
  | { readonly kind: 'stock'; readonly optional?: boolean }
  | { readonly kind: 'places' }
  | { readonly kind: 'count' | 'load'; readonly optional?: boolean }
  | { readonly kind: 'text' }
  | { readonly kind: 'choice'; readonly options: Readonly<Record<string, Puts>> }
);

export const groups = [
  'walls',
  'slope',
  'boards',
  'rafters',
  'meets',
  'ties',
  'blocks',
  'loads',
  'site',
] as const;
export type Group = (typeof groups)[number];

const all = styles;
const gables: readonly Style[] = ['gable', 'posts', 'unequal', 'standing', 'wing', 'dormer'];
const sheds: readonly Style[] = ['shed', 'shedHigh', 'shedBetween'];
const ridged = all.filter((style) => !sheds.includes(style));
const without = (...left: readonly Style[]): readonly Style[] => all.filter((style) => !left.includes(style));

const walls: readonly Field[] = [
  { id: 'span', group: 'walls', styles: all, kind: 'length' },
  { id: 'length', group: 'walls', styles: all, kind: 'length' },
  { id: 'plate.width', group: 'walls', styles: all, kind: 'length' },
  { id: 'between.clearance', group: 'walls', styles: ['shedBetween'], kind: 'length', optional: true },
  { id: 'yard.plateHeight', group: 'walls', styles: ['unequal'], kind: 'length', optional: true },
  { id: 'highPlate.width', group: 'walls', styles: ['shedHigh'], kind: 'length', optional: true },
  {
    id: 'reference',
    group: 'walls',
    styles: all,
    kind: 'choice',
    options: { plate: {}, sheathing: { reference: 'sheathing' } },
  },
  {
    id: 'sheathing',
    group: 'walls',
    styles: all,
    kind: 'length',
    optional: true,
    where: { field: 'reference', is: ['sheathing'] },
  },
];

const slopes: readonly Field[] = [
  { id: 'slope', group: 'slope', styles: all, kind: 'rise' },
  { id: 'yard.seat', group: 'rafters', styles: ['unequal'], kind: 'length', optional: true },
  { id: 'yard.slope', group: 'slope', styles: ['unequal'], kind: 'rise', optional: true },
  { id: 'endSlope', group: 'slope', styles: ['hip'], kind: 'rise', optional: true },
  { id: 'upperSlope', group: 'slope', styles: ['gambrel'], kind: 'rise' },
  { id: 'breakIn', group: 'slope', styles: ['gambrel'], kind: 'length' },
  { id: 'overhang', group: 'slope', styles: all, kind: 'length' },
  { id: 'yard.overhang', group: 'slope', styles: ['unequal'], kind: 'length', optional: true },
  { id: 'highPlate.overhang', group: 'slope', styles: ['shedHigh'], kind: 'length', optional: true },
  {
    id: 'rakeOverhang',
    group: 'slope',
    styles: without('hip', 'shedBetween'),
    kind: 'length',
    optional: true,
  },
];

const boards: readonly Field[] = [
  { id: 'rafter', group: 'boards', styles: all, kind: 'stock' },
  { id: 'ridge', group: 'boards', styles: ridged, kind: 'stock' },
  { id: 'hip', group: 'boards', styles: ['hip'], kind: 'stock', optional: true },
  { id: 'ledger', group: 'boards', styles: ['shed', 'shedBetween'], kind: 'stock' },
  { id: 'purlin', group: 'boards', styles: ['gambrel'], kind: 'stock', optional: true },
  { id: 'purlin.seat', group: 'rafters', styles: ['gambrel'], kind: 'length', optional: true },
];

const rafters: readonly Field[] = [
  { id: 'spacing', group: 'rafters', styles: all, kind: 'length' },
  { id: 'seat', group: 'rafters', styles: without('standing'), kind: 'length' },
  {
    id: 'datum',
    group: 'rafters',
    styles: without('hip', 'standing'),
    kind: 'choice',
    options: { endA: {}, endB: { datum: 'endB' }, centre: { datum: 'centre' } },
  },
  {
    id: 'hipFit',
    group: 'rafters',
    styles: ['hip'],
    kind: 'choice',
    options: { backed: {}, dropped: { hipFit: 'dropped' } },
  },
];

const meets: readonly Field[] = [
  { id: 'posts.at', group: 'meets', styles: ['posts'], kind: 'places' },
  { id: 'posts.below', group: 'meets', styles: ['posts'], kind: 'length' },
  {
    id: 'standing.end',
    group: 'meets',
    styles: ['standing'],
    kind: 'choice',
    options: { A: { 'standing.end': 'A' }, B: { 'standing.end': 'B' } },
  },
  { id: 'standing.ridgeTop', group: 'meets', styles: ['standing'], kind: 'length', optional: true },
  { id: 'standing.heightAbovePlate', group: 'meets', styles: ['standing'], kind: 'length' },
  { id: 'standing.lastRafter', group: 'meets', styles: ['standing'], kind: 'length' },
  {
    id: 'wings.0.side',
    group: 'meets',
    styles: ['wing'],
    kind: 'choice',
    options: { street: { 'wings.0.side': 'street' }, yard: { 'wings.0.side': 'yard' } },
  },
  { id: 'wings.0.at', group: 'meets', styles: ['wing'], kind: 'length' },
  { id: 'wings.0.span', group: 'meets', styles: ['wing'], kind: 'length' },
  { id: 'wings.0.length', group: 'meets', styles: ['wing'], kind: 'length' },
  { id: 'wings.0.slope', group: 'meets', styles: ['wing'], kind: 'rise', optional: true },
  {
    id: 'wings.0.framing',
    group: 'meets',
    styles: ['wing'],
    kind: 'choice',
    options: {
      longValley: {},
      suspendedRidge: { 'wings.0.framing': 'suspendedRidge' },
      overSheathing: { 'wings.0.framing': 'overSheathing' },
    },
  },
  { id: 'wings.0.valley', group: 'meets', styles: ['wing'], kind: 'stock', optional: true },
  {
    id: 'dormers.0.kind',
    group: 'meets',
    styles: ['dormer'],
    kind: 'choice',
    options: { shed: { 'dormers.0.kind': 'shed' }, gable: { 'dormers.0.kind': 'gable' } },
  },
  {
    id: 'dormers.0.side',
    group: 'meets',
    styles: ['dormer'],
    kind: 'choice',
    options: { street: { 'dormers.0.side': 'street' }, yard: { 'dormers.0.side': 'yard' } },
  },
  { id: 'sections.0.length', group: 'meets', styles: ['stepped'], kind: 'length' },
  { id: 'sections.0.plateHeight', group: 'meets', styles: ['stepped'], kind: 'length', optional: true },
  { id: 'sections.0.stepOverhang', group: 'meets', styles: ['stepped'], kind: 'length', optional: true },
  { id: 'sections.1.span', group: 'meets', styles: ['stepped'], kind: 'length', optional: true },
  { id: 'sections.1.slope', group: 'meets', styles: ['stepped'], kind: 'rise', optional: true },
  {
    id: 'sections.1.bearing.on',
    group: 'meets',
    styles: ['stepped'],
    kind: 'choice',
    options: {
      pocket: { 'sections.1.bearing.on': 'pocket' },
      wall: { 'sections.1.bearing.on': 'wall' },
    },
  },
  { id: 'sections.1.bearing.length', group: 'meets', styles: ['stepped'], kind: 'length', optional: true },
  { id: 'gablet.back', group: 'meets', styles: ['hip'], kind: 'length', optional: true },
  { id: 'dormers.0.at', group: 'meets', styles: ['dormer'], kind: 'length' },
  { id: 'dormers.0.width', group: 'meets', styles: ['dormer'], kind: 'length' },
  { id: 'dormers.0.front', group: 'meets', styles: ['dormer'], kind: 'length' },
  { id: 'dormers.0.wall', group: 'meets', styles: ['dormer'], kind: 'length', optional: true },
  { id: 'dormers.0.slope', group: 'meets', styles: ['dormer'], kind: 'rise', optional: true },
  { id: 'dormers.0.overhang', group: 'meets', styles: ['dormer'], kind: 'length', optional: true },
  { id: 'dormers.0.header', group: 'meets', styles: ['dormer'], kind: 'stock', optional: true },
];

/** The usual first, which the file need not say. */
const every = (key: string, usual: 1 | 2): Readonly<Record<string, Puts>> => ({
  ...(usual === 1 ? { one: {}, two: { [`${key}.every`]: 2 } } : { two: {}, one: { [`${key}.every`]: 1 } }),
  three: { [`${key}.every`]: 3 },
  none: { [key]: false },
});

const ties: readonly Field[] = [
  { id: 'joists', group: 'ties', styles: ridged, kind: 'choice', options: every('joists', 1) },
  {
    id: 'joists.height',
    group: 'ties',
    styles: ridged,
    kind: 'length',
    optional: true,
    where: { field: 'joists', is: ['one', 'two', 'three'] },
  },
  { id: 'collars', group: 'ties', styles: ridged, kind: 'choice', options: every('collars', 2) },
];

const blocks: readonly Field[] = [
  {
    id: 'blockStands',
    group: 'blocks',
    styles: all,
    kind: 'choice',
    options: { plumb: {}, square: { blockStands: 'square' } },
  },
  { id: 'blockAllowance', group: 'blocks', styles: all, kind: 'length', optional: true },
  {
    id: 'vents.shape',
    group: 'blocks',
    styles: all,
    kind: 'choice',
    options: { none: {}, notch: { 'vents.shape': 'notch' }, holes: { 'vents.shape': 'holes' } },
  },
  {
    id: 'vents.depth',
    group: 'blocks',
    styles: all,
    kind: 'length',
    where: { field: 'vents.shape', is: ['notch'] },
  },
  {
    id: 'vents.leave',
    group: 'blocks',
    styles: all,
    kind: 'length',
    where: { field: 'vents.shape', is: ['notch'] },
  },
  {
    id: 'vents.count',
    group: 'blocks',
    styles: all,
    kind: 'count',
    where: { field: 'vents.shape', is: ['holes'] },
  },
  {
    id: 'vents.diameter',
    group: 'blocks',
    styles: all,
    kind: 'length',
    where: { field: 'vents.shape', is: ['holes'] },
  },
  {
    id: 'gableStuds',
    group: 'blocks',
    styles: [...gables.filter((style) => style !== 'standing'), 'shed', 'shedHigh', 'gambrel', 'stepped'],
    kind: 'choice',
    options: { none: {}, usual: { gableStuds: {} } },
  },
  {
    id: 'rake',
    group: 'blocks',
    styles: ['gable', 'unequal', 'posts', 'shed'],
    kind: 'choice',
    options: { none: {}, usual: { rake: {} }, plain: { 'rake.lookouts': false } },
  },
];

const site: readonly Field[] = [
  { id: 'name', group: 'site', styles: all, kind: 'text' },
  {
    id: 'site.machine',
    group: 'site',
    styles: all,
    kind: 'choice',
    options: { no: {}, yes: { 'site.machine': true } },
  },
  {
    id: 'site.trouble',
    group: 'site',
    styles: all,
    kind: 'choice',
    options: { none: {}, ...Object.fromEntries(troubles.map((one) => [one, { 'site.trouble': one }])) },
  },
];

const loads: readonly Field[] = [
  {
    id: 'site.wood',
    group: 'loads',
    styles: gables,
    kind: 'choice',
    options: { unsaid: {}, ...Object.fromEntries(woods.map((one) => [one, { 'site.wood': one }])) },
  },
  { id: 'site.live', group: 'loads', styles: gables, kind: 'load', optional: true },
  { id: 'site.dead', group: 'loads', styles: gables, kind: 'load', optional: true },
];

export const fields: readonly Field[] = [
  ...walls,
  ...slopes,
  ...boards,
  ...rafters,
  ...meets,
  ...ties,
  ...blocks,
  ...loads,
  ...site,
];

/** What makes a file of this style, whatever is typed. */
export const putsOf: Readonly<Record<Style, Puts>> = {
  gable: { kind: 'gable' },
  posts: { kind: 'gable' },
  unequal: { kind: 'gable' },
  standing: { kind: 'gable' },
  shed: { kind: 'shed' },
  shedHigh: { kind: 'shed', highPlate: {} },
  shedBetween: { kind: 'shed', between: {} },
  hip: { kind: 'hip' },
  gambrel: { kind: 'gambrel' },
  wing: { kind: 'gable' },
  dormer: { kind: 'gable' },
  stepped: { kind: 'stepped' },
};

/** The style that shows the whole of a file, by what is in it. */
export const styleOf = (file: Readonly<Record<string, unknown>>): Style | undefined => {
  if (file['kind'] === 'hip' || file['kind'] === 'gambrel' || file['kind'] === 'stepped') return file['kind'];
  if (file['kind'] === 'shed')
    return file['highPlate'] ? 'shedHigh' : file['between'] ? 'shedBetween' : 'shed';
  if (file['kind'] !== 'gable') return undefined;
  if (file['wings']) return 'wing';
  if (file['dormers']) return 'dormer';
  if (file['standing']) return 'standing';
  if (file['posts']) return 'posts';
  return file['yard'] ? 'unequal' : 'gable';
};
