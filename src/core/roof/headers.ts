import { hair, isOver } from '../units/hair';
import type { Vec2 } from '../geometry/vector';
import { handsOf, hasPlane, type Edge } from './edges';
import type { FiguredHeader } from './figured';
import { frameOf, type Eave } from './form';
import type { Framing } from './framing';
import type { Section } from './plan';
import { topOf, wallsOf, type RoofPlane } from './planes';
import type { Timber } from './timber';

/**
 * Headers at small gables. One stands on the outside of the pair of commons there, and is long enough that the whole cheek
 * of both hips bears on it. Past the middles of the hips the long planes cut off its upper corners.
 */
export type Header = {
  readonly eave: Eave;
  readonly wood: Section;
  /** Level, from the ridge's line to the middle of a hip, and to the header's end. Inches. */
  readonly hip: number;
  readonly end: number;
  readonly topHeight: number;
  readonly leastDepth: number;
  /** Rise of the long planes for each inch along it. */
  readonly m: number;
};

export const headersOn = (
  { form, edges }: Pick<Framing, 'form' | 'edges'>,
  planes: readonly RoofPlane[],
): readonly Header[] =>
  planes.flatMap((plane) => {
    const { eave, cuts } = plane;
    const { header: wood, hip } = frameOf(form, eave.body);
    const edge = edges.find((one) => one.kind === 'hip' && hasPlane(one, eave.plane));
    if (!wood || !hip || !edge || !eave.plane.till) return [];
    const { half, reach: cheek } = acrossAt(edge, eave, { wood, hip });
    const m = besideIn(edge, eave);
    const reach = Math.min(cheek, wood.depth / m);
    return [
      {
        eave,
        wood,
        hip: half,
        end: half + reach,
        topHeight: topOf(plane),
        leastDepth: cuts.plumbCutLength,
        m,
      },
    ];
  });

/** Where a hip comes to the header's face: how far from the middle, and half of what its cheek takes of it. */
const acrossAt = (
  { line: { way }, to }: Edge,
  { plane: { up } }: Eave,
  { wood, hip }: { readonly wood: Section; readonly hip: Section },
): { readonly half: number; readonly reach: number } => {
  const along: Vec2 = [-up[1], up[0]];
  const [climbs, aside] = [
    Math.abs(up[0] * way[0] + up[1] * way[1]),
    Math.abs(along[0] * way[0] + along[1] * way[1]),
  ];
  const off = Math.abs(along[0] * to[0] + along[1] * to[1]);
  return { half: off + (wood.thickness * aside) / climbs, reach: hip.thickness / 2 / climbs };
};

const besideIn = (edge: Edge, { plane }: Eave): number => {
  const { left, right } = handsOf(edge);
  return (left.plane === plane ? right : left).plane.m;
};

/** Ends that have the same header told together. */
export const figuredHeaders = (headers: readonly Header[]): readonly FiguredHeader[] => {
  const [first] = headers;
  if (!first) return [];
  const { wood, end, hip, topHeight, leastDepth, m } = first;
  return [
    {
      id: 'header',
      count: headers.length,
      side: wallsOf(headers.map(({ eave }) => eave.side)),
      length: 2 * end,
      section: wood,
      topHeight,
      leastDepth,
      bearsFully: !isOver(leastDepth, wood.depth),
      clip: (end - hip) * m,
    },
  ];
};

export const headerTimber = ({ eave, wood, hip, end, topHeight, m }: Header): Timber => {
  const { up, till } = eave.plane;
  const back = (till?.reach ?? 0) - wood.thickness / 2;
  const low = topHeight - wood.depth;
  const cut = Math.max(low + hair, topHeight - (end - hip) * m);
  return {
    id: `header.${eave.side}`,
    origin: [up[0] * back, up[1] * back],
    direction: [0, 1],
    outline: [
      [-end, low],
      [end, low],
      [end, cut],
      [hip, topHeight],
      [-hip, topHeight],
      [-end, cut],
    ],
    thickness: wood.thickness,
    cuts: [],
  };
};
