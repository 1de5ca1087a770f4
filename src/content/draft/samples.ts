import type { Style } from './fields';
import type { RoofDraft } from './roofDraft';

/** What stands in the form before anybody typed: a small roof of each style, invented. */

const shared = {
  span: "24'",
  length: "26'",
  'plate.width': '5 1/2"',
  slope: '6',
  overhang: '14"',
  rafter: '2×8',
  ridge: '2×10',
  spacing: '24"',
  seat: '3 1/2"',
  datum: 'endA',
  joists: 'one',
  collars: 'two',
} as const;

const shed = { ...shared, span: "12'", length: "20'", slope: '4', ledger: '2×10', spacing: '16"' } as const;

const own: Readonly<Record<Style, Readonly<Record<string, string>>>> = {
  gable: shared,
  posts: {
    ...shared,
    ...{
      slope: '4',
      joists: 'none',
      collars: 'none',
      ridge: 'other',
      'ridge.thickness': '3 1/2"',
      'ridge.depth': '11 7/8"',
    },
    ...{ 'posts.at': '1 3/4", 13\', 25\' 10 1/4"', 'posts.below': '8\' 1 1/8"' },
  },
  unequal: { ...shared, 'yard.plateHeight': '18"', 'yard.slope': '6' },
  standing: {
    ...shared,
    ...{ length: "12'", 'standing.end': 'A', 'standing.ridgeTop': '6\' 7 1/2"' },
    ...{ 'standing.heightAbovePlate': '6 3/8"', 'standing.lastRafter': '3/4"' },
  },
  shed,
  shedHigh: { ...shed, 'highPlate.overhang': '10"' },
  shedBetween: shed,
  hip: { ...shared, length: "40'", hip: '2×10', hipFit: 'backed' },
  gambrel: {
    ...shared,
    ...{ length: "30'", slope: '20', upperSlope: '6', breakIn: "5'", overhang: '8"', seat: '2"' },
    ...{ purlin: 'other', 'purlin.thickness': '3 1/2"', 'purlin.depth': '9 1/4"' },
  },
  wing: {
    ...shared,
    ...{
      length: "40'",
      'wings.0.side': 'yard',
      'wings.0.at': "18'",
      'wings.0.span': "16'",
      'wings.0.length': "10'",
    },
  },
  stepped: {
    ...shared,
    ...{
      length: "40'",
      'sections.0.length': "24'",
      'sections.0.plateHeight': '12"',
      'sections.0.stepOverhang': '8"',
    },
    ...{ 'sections.1.span': "18'", 'sections.1.bearing.on': 'pocket', 'sections.1.bearing.length': '3 1/2"' },
  },
  dormer: {
    ...shared,
    ...{ length: "30'", slope: '12', ridge: '2×12', 'plate.width': '3 1/2"' },
    ...{ 'dormers.0.side': 'street', 'dormers.0.at': "15'", 'dormers.0.width': "12'" },
    ...{ 'dormers.0.front': '24"', 'dormers.0.wall': "7'", 'dormers.0.slope': '4' },
  },
};

export const sampleOf = (style: Style): RoofDraft => ({ style, units: 'in', typed: own[style] });

/** Another style: what was typed stays, and what stood there from the sample becomes what that style's sample has. */
export const restyled = (draft: RoofDraft, style: Style): RoofDraft => {
  const before = own[draft.style];
  const typed = Object.entries(draft.typed).filter(([id, text]) => before[id] !== text);
  return { ...draft, style, typed: { ...own[style], ...Object.fromEntries(typed) } };
};
