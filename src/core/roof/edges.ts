import type { Vec2 } from '../geometry/vector';
import type { RoofForm } from './form';
import {
  alongMeeting,
  dot2,
  isSameWay,
  meeting,
  pointOn,
  type Line,
  type Of,
  type Plane,
  type Stop,
} from './surface';

/** Where two planes of the roof meet, from the lower end to the upper. */
export type Edge = {
  readonly kind: 'ridge' | 'hip' | 'valley' | 'break';
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

export const edgesOf = ({ bodies }: RoofForm): readonly Edge[] => {
  const all = bodies.flatMap((body) => body.planes.map((plane): Of => ({ plane, body })));
  return all.flatMap((a, i) => all.slice(i + 1).flatMap((b) => edgesBetween(a, b, bodies)));
};

const edgesBetween = (a: Of, b: Of, bodies: RoofForm['bodies']): readonly Edge[] => {
  const line = meeting(a.plane, b.plane);
  if (!line) return [];
  const m = a.plane.m * dot2(a.plane.up, line.way);
  return alongMeeting([a, b], line, bodies).map(({ from, to, low, high }) => ({
    kind: kindOf([a, b]),
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

/** Of two bodies a valley. Of one: climbing against each other a ridge, the same way a break, round a corner a hip. */
const kindOf = ([a, b]: readonly [Of, Of]): Edge['kind'] => {
  if (a.body !== b.body) return 'valley';
  const same = dot2(a.plane.up, b.plane.up);
  if (same < 0) return 'ridge';
  return isSameWay(same) ? 'break' : 'hip';
};

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
