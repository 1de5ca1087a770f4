import { glMatrix, mat3, vec3 } from 'gl-matrix';
import type { Slope } from '../../src/core/units/slope';

/**
 * A hip roof's theoretical lengths by gl-matrix, in double precision: every rafter runs between the two points where its own
 * upright plane meets the roof plane over the wall line and at the ridge or hip. Inches, at the corner of the plates: x along
 * the long wall, y in from it, z up.
 */

glMatrix.setMatrixArrayType(Array);

/** Points p with normal · p = distance. */
type Plane = { readonly normal: vec3; readonly distance: number };

const plane = (normal: vec3, distance = 0): Plane => ({ normal, distance });
const { fromValues } = vec3;

/** Where three planes meet. */
const meet = (...[a, b, c]: readonly [Plane, Plane, Plane]): vec3 => {
  // prettier-ignore
  const rows = mat3.fromValues(
    a.normal[0], b.normal[0], c.normal[0],
    a.normal[1], b.normal[1], c.normal[1],
    a.normal[2], b.normal[2], c.normal[2],
  );
  const inverse = mat3.invert(mat3.create(), rows);
  if (!inverse) throw new Error('the planes meet in no point');
  return vec3.transformMat3(vec3.create(), fromValues(a.distance, b.distance, c.distance), inverse);
};

export type HipRoof = {
  readonly span: number;
  readonly slope: Slope;
  readonly endSlope: Slope;
  /** Places of rafters along the long wall from the corner, and along the end wall from its middle. */
  readonly along: readonly number[];
  readonly across: readonly number[];
};

export type Lengths = {
  readonly hip: number;
  readonly along: readonly number[];
  readonly across: readonly number[];
};

const tan = ({ rise, run }: Slope): number => rise / run;

/** Line lengths: of a hip, of the rafters at `along` up to hip or ridge, and of those at `across` up to their hip. */
export const byVectors = ({ span, slope, endSlope, along, across }: HipRoof): Lengths => {
  const [long, end] = [plane(fromValues(0, -tan(slope), 1)), plane(fromValues(-tan(endSlope), 0, 1))];
  const [longWall, endWall] = [plane(fromValues(0, 1, 0)), plane(fromValues(1, 0, 0))];
  const middle = plane(fromValues(0, 1, 0), span / 2);
  const corner = meet(long, end, longWall);
  const peak = meet(long, end, middle);
  const upright = vec3.cross(vec3.create(), vec3.sub(vec3.create(), peak, corner), fromValues(0, 0, 1));
  const hip = plane(upright, vec3.dot(upright, corner));
  const between = (own: Plane, [roof, wall, top]: readonly [Plane, Plane, Plane]): number =>
    vec3.distance(meet(own, roof, wall), meet(own, roof, top));
  return {
    hip: vec3.distance(corner, peak),
    along: along.map((x) => {
      const own = plane(fromValues(1, 0, 0), x);
      return between(own, [long, longWall, x < peak[0] ? hip : middle]);
    }),
    across: across.map((y) => {
      const own = plane(fromValues(0, 1, 0), span / 2 - Math.abs(y));
      return between(own, [end, endWall, hip]);
    }),
  };
};
