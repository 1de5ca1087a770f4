import type { Vec2 } from '../geometry/vector';
import { scenesOf, type RoofForm } from './form';
import {
  alongMeeting,
  dot2,
  isSameWay,
  meeting,
  pointOn,
  type Body,
  type Line,
  type Of,
  type Plane,
  type Stop,
} from './surface';

/** Where two planes of the roof meet, from the lower end to the upper. */
export type Edge = {
  readonly kind: 'ridge' | 'hip' | 'valley' | 'sleeper' | 'break';
  readonly planes: readonly [Of, Of];
  readonly line: Line;
  readonly from: Vec2;
  readonly to: Vec2;
  /** Level, from end to end. Inches. */
  readonly run: number;
  /** Rise for each inch of its own run. */
  readonly m: number;
  readonly low: readonly Stop[];
  readonly high: readonly Stop[];
  /** Of a valley that runs on past where the planes part: level, from its lower end to there. Inches. */
  readonly parts?: number;
};

/** Planes that climb in one line, up to rounding. */
const level = 1e-9;

export const edgesOf = (form: RoofForm): readonly Edge[] =>
  scenesOf(form).flatMap((bodies) => {
    const all = bodies.flatMap((body) => body.planes.map((plane): Of => ({ plane, body })));
    const framed = ({ body }: Of): boolean => form.bodies.includes(body);
    return all.flatMap((a, i) =>
      all
        .slice(i + 1)
        .filter((b) => framed(a) || framed(b))
        .flatMap((b) => edgesBetween(a, b, { bodies, isOver: !framed(a) || !framed(b) })),
    );
  });

type Among = { readonly bodies: readonly Body[]; readonly isOver: boolean };

const edgesBetween = (a: Of, b: Of, { bodies, isOver }: Among): readonly Edge[] => {
  const line = meeting(a.plane, b.plane);
  if (!line) return [];
  const m = a.plane.m * dot2(a.plane.up, line.way);
  return alongMeeting([a, b], line, bodies).map(({ from, to, low, high }) => ({
    kind: isOver ? 'sleeper' : kindOf([a, b]),
    planes: [a, b],
    line,
    from: pointOn(line, from),
    to: pointOn(line, to),
    run: to - from,
    m,
    low,
    high,
  }));
};

/**
 * Over sheathing a valley is where sleepers lie. Planes of one body that climb against each other make a ridge, the same way
 * a break, round a corner a hip; of two a valley, or where one slope goes over into another a break.
 */
const kindOf = ([a, b]: readonly [Of, Of]): Edge['kind'] => {
  const [one, other] = [a.plane.up, b.plane.up];
  if (a.body !== b.body) return Math.abs(one[0] * other[1] - one[1] * other[0]) < level ? 'break' : 'valley';
  const same = dot2(one, other);
  if (same < 0) return 'ridge';
  return isSameWay(same) ? 'break' : 'hip';
};

/** The plane of the sleepers' tops that an edge lies in; nothing of one that is framed on both sides. */
export const deckOf = ({ bodies }: RoofForm, { planes }: Edge): Of | undefined =>
  planes.find(({ body }) => !bodies.includes(body));

export const hasPlane = ({ planes }: Edge, one: Plane): boolean => planes.some(({ plane }) => plane === one);

/** The unit way to the left of one looking up the edge. */
export const leftOf = ({ line: { way } }: Edge): Vec2 => [-way[1], way[0]];

/** The planes to the left and right of one looking up a hip or valley. */
export const handsOf = (edge: Edge): { readonly left: Of; readonly right: Of } => {
  const [a, b] = edge.planes;
  const left = leftOf(edge);
  const falls = a.plane.m * dot2(a.plane.up, left) - b.plane.m * dot2(b.plane.up, left);
  const aOnLeft = edge.kind === 'valley' ? falls > 0 : falls < 0;
  return aOnLeft ? { left: a, right: b } : { left: b, right: a };
};
