import { gaugeBlock } from '../../core/instruments/rows';
import { signOf, type Side } from '../../core/roof/side';
import { eaveAt } from '../../core/site/tails';
import { plateAt } from '../../core/site/truePlate';
import { edgesOfRafter } from './rafterShape';
import type { RafterPose } from '../../core/site/pose';
import type { Scheme, Shown } from './scheme';
import type { Stroke } from './solid';

/** Marks that still wait for their member, strings that are up, chalk that was snapped. */
export const strokesOf = (shown: Shown, scheme: Scheme): readonly Stroke[] => [
  ...scheme.sides.flatMap((side) => plateMarks(shown, scheme, side)),
  ...ridgeMarks(shown, scheme),
  ...scheme.sides.flatMap((side) => strings(shown, scheme, side)),
  ...scheme.sides.flatMap((side) => chalkLines(shown, side)),
  ...scheme.sides.flatMap((side) => tailLines(shown, side)),
];

/** Two lines and an X between them: where a rafter stands. Lifted this much so that it lies on the face, inches. */
const lift = 0.02;

/** Where a rafter would stand: its station as marked, and the mark's height from `low` to `high`. */
const plateMarks = ({ site, pose }: Shown, scheme: Scheme, side: Side): readonly Stroke[] => {
  const sign = signOf(side);
  return (site.marks[`plate.${side}`] ?? []).flatMap((x, i) => {
    if (`rafter.${side}.${i + 1}` in pose.rafters) return [];
    const { out, z } = plateAt(pose.plates[side], x);
    const at = (dx: number, inward: number): readonly [number, number, number] => [
      x + dx,
      sign * (out - inward),
      z + lift,
    ];
    const wide = Math.min(3.5, scheme.half / 20);
    const id = `mark.plate.${side}.${i + 1}`;
    const stroke = (a: Stroke['a'], b: Stroke['b']): Stroke => ({ kind: 'mark', id, a, b });
    return [
      stroke(at(-0.75, 0), at(-0.75, wide)),
      stroke(at(0.75, 0), at(0.75, wide)),
      stroke(at(-0.75, 0.6), at(0.75, wide - 0.7)),
      stroke(at(0.75, 0.6), at(-0.75, wide - 0.7)),
    ];
  });
};

const ridgeMarks = ({ site, pose, level }: Shown, { sides }: Scheme): readonly Stroke[] => {
  const { ridge } = pose;
  if (!ridge) return [];
  const { thickness, depth } = level.plan.ridge;
  return sides.flatMap((side) =>
    (site.marks.ridge ?? []).flatMap((x, i) => {
      if (`rafter.${side}.${i + 1}` in pose.rafters) return [];
      const t = (x - ridge.A.x) / (ridge.B.x - ridge.A.x);
      const y = ridge.A.y + (ridge.B.y - ridge.A.y) * t + signOf(side) * (thickness / 2 + lift);
      const top = ridge.A.z + (ridge.B.z - ridge.A.z) * t;
      const at = (dx: number, down: number): readonly [number, number, number] => [x + dx, y, top - down];
      const id = `mark.ridge.${side}.${i + 1}`;
      const stroke = (a: Stroke['a'], b: Stroke['b']): Stroke => ({ kind: 'mark', id, a, b });
      return [
        stroke(at(-0.75, 0), at(-0.75, depth)),
        stroke(at(0.75, 0), at(0.75, depth)),
        stroke(at(-0.75, depth * 0.72), at(0.75, depth * 0.3)),
        stroke(at(0.75, depth * 0.72), at(-0.75, depth * 0.3)),
      ];
    }),
  );
};

/** A string runs a gauge block above the top edges of the two end rafters at their heels, and a little past them. */
const strings = ({ site, pose }: Shown, { stations, m }: Scheme, side: Side): readonly Stroke[] => {
  const first = pose.rafters[`rafter.${side}.1`];
  const last = pose.rafters[`rafter.${side}.${stations.length}`];
  if (!site.lines[`string.${side}`] || !first || !last) return [];
  const over = gaugeBlock * Math.sqrt(1 + m * m) + 0.2;
  const end = (rafter: typeof first, dx: number): Stroke['a'] => [
    rafter.x.heel + dx,
    signOf(side) * rafter.heel.out,
    rafter.heel.z + over,
  ];
  return [{ kind: 'string', id: `string.${side}`, a: end(first, -5), b: end(last, 5) }];
};

/** A chalk line shows only where there is wood under it: a touch on each rafter of a side, across its thickness. */
const touches = (
  { pose, level }: Shown,
  line: { readonly id: 'chalk' | 'tail'; readonly side: Side },
  at: (rafter: RafterPose) => { readonly out: number; readonly z: number } | undefined,
): readonly Stroke[] =>
  Object.entries(pose.rafters).flatMap(([id, rafter]): readonly Stroke[] => {
    const place = rafter.side === line.side ? at(rafter) : undefined;
    if (!place) return [];
    const half = level.plan.rafter.thickness / 2;
    const point = (dx: number): Stroke['a'] => [rafter.x.heel + dx, signOf(line.side) * place.out, place.z];
    return [{ kind: 'chalk', id: `${line.id}.${id}`, a: point(-half), b: point(half) }];
  });

/** Where collars go: on the under edges. */
const chalkLines = (shown: Shown, side: Side): readonly Stroke[] => {
  const line = shown.site.lines[`chalk.${side}`];
  if (!line) return [];
  return touches(shown, { id: 'chalk', side }, (rafter) => {
    const { m } = edgesOfRafter(rafter, 0);
    return { out: rafter.top.out + (rafter.top.z - line.off) / m + lift, z: line.off };
  });
};

/** Where tails are cut: on the top edges of rafters that still run past it. */
const tailLines = (shown: Shown, side: Side): readonly Stroke[] => {
  const line = shown.site.lines[`tail.${side}`];
  if (!line) return [];
  const { overhang } = shown.level.plan;
  return touches(shown, { id: 'tail', side }, (rafter) => {
    const out = eaveAt(shown.pose.plates[side], rafter.x.heel, line.off);
    if (rafter.heel.out + overhang + rafter.tail < out + lift) return undefined;
    return { out, z: edgesOfRafter(rafter, 0).over(out) + lift };
  });
};
