import { lerp, sub, lengthOf, type Vec3 } from '../../core/geometry/vector';
import type { Model } from './solidsOf';
import type { Solid } from './solid';

/** What one act changed in the bodies of a site, by id: a member may be made of several solids. */
export type Changes = {
  readonly came: readonly string[];
  readonly gone: readonly string[];
  readonly moved: readonly string[];
};

/** Less than this is not seen to move, inches. Ours. */
const leastMove = 0.05;

/** Solids by id, in the order of the model. */
export const groupsOf = (solids: readonly Solid[]): ReadonlyMap<string, readonly Solid[]> => {
  const groups = new Map<string, Solid[]>();
  for (const solid of solids) {
    const known = groups.get(solid.id);
    if (known) known.push(solid);
    else groups.set(solid.id, [solid]);
  }
  return groups;
};

const pointsOf = ({ faces }: Solid): readonly Vec3[] => faces.flatMap(({ points }) => points);

/** Whether two are the same body in two places: as many faces, with as many corners each. */
const alike = (a: Solid, b: Solid): boolean =>
  a.edges.length === b.edges.length &&
  a.faces.length === b.faces.length &&
  a.faces.every(({ points }, i) => points.length === b.faces[i]?.points.length);

const differ = (a: readonly Solid[], b: readonly Solid[]): boolean =>
  a.some((solid, i) => {
    const to = pointsOf(b[i] as Solid);
    return pointsOf(solid).some((p, k) => lengthOf(sub(p, to[k] as Vec3)) > leastMove);
  });

/** Members only: what cannot be chosen is scenery and changes without a show. A body of another shape did not move. */
export const changesOf = (before: Pick<Model, 'solids'>, after: Pick<Model, 'solids'>): Changes => {
  const was = groupsOf(before.solids.filter(({ selectable }) => selectable));
  const is = groupsOf(after.solids.filter(({ selectable }) => selectable));
  const both = [...is].flatMap(([id, to]) => {
    const from = was.get(id);
    const same = from?.length === to.length && from.every((solid, i) => alike(solid, to[i] as Solid));
    return from && same ? [{ id, from, to }] : [];
  });
  return {
    came: [...is.keys()].filter((id) => !was.has(id)),
    gone: [...was.keys()].filter((id) => !is.has(id)),
    moved: both.filter(({ from, to }) => differ(from, to)).map(({ id }) => id),
  };
};

/** A body part of the way from one place to another: every corner goes straight. `t` 0…1. */
export const between = (from: Solid, to: Solid, t: number): Solid => {
  const at = (a: Vec3, b: Vec3): Vec3 => lerp(a, b, t);
  return {
    ...to,
    frame: { ...to.frame, origin: at(from.frame.origin, to.frame.origin) },
    faces: to.faces.map((face, i) => ({
      ...face,
      points: face.points.map((p, k) => at(from.faces[i]?.points[k] ?? p, p)),
    })),
    edges: to.edges.map((edge, i) => ({
      ...edge,
      a: at(from.edges[i]?.a ?? edge.a, edge.a),
      b: at(from.edges[i]?.b ?? edge.b, edge.b),
    })),
  };
};
