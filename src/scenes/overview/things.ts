import { lerp, type Vec3 } from '../../core/geometry/vector';
import { box, stick } from '../../present/model/prism';
import { groundLevel } from '../../present/model/sawhorses';
import type { Solid, Stroke } from '../../present/model/solid';
import type { Thing } from '../../present/model/task';
import type { Mesh } from '../ink/mesh';
import { stretched } from './tools';

/** What the crew uses besides tools in a hand, as bodies and lines. */

type Drawn = {
  readonly solids: readonly Solid[];
  readonly meshes: readonly Mesh[];
  readonly strokes: readonly Stroke[];
};

export const thingsDrawn = (things: readonly Thing[]): Drawn => ({
  solids: things.flatMap(solidsOfThing),
  meshes: things.flatMap(({ kind, from, to }): readonly Mesh[] => {
    if (kind === 'tape') return [stretched('tape', [from, to], { tone: 'hat', r: 0.45 })];
    return kind === 'hose' ? [stretched('hose', [from, to], { tone: 'glass', r: 0.6 })] : [];
  }),
  strokes: things.flatMap(({ kind, from, to }): readonly Stroke[] =>
    kind === 'string' ? [{ kind: 'string', id: 'crew.string', a: from, b: to }] : [],
  ),
});

const solidsOfThing = ({ kind, from, to }: Thing, i: number): readonly Solid[] => {
  if (kind === 'board')
    return [
      stick(
        { id: `thing.board.${i}`, role: 'board', seed: 61 + i },
        { from, to, wide: [1, 0, 0], width: 5.5, thickness: 1.5 },
      ),
    ];
  if (kind === 'level')
    return [
      stick(
        { id: 'thing.level', role: 'tool', material: 'steel', seed: 4 },
        { from, to, wide: [0, 0, 1], width: 2.6, thickness: 1 },
      ),
    ];
  if (kind === 'pole')
    return [
      stick(
        { id: 'thing.pole', role: 'board', seed: 65 },
        { from, to, wide: [1, 0, 0], width: 1.6, thickness: 0.8 },
      ),
    ];
  if (kind === 'handle')
    return [
      stick({ ...jackAbout, id: 'thing.handle' }, { from, to, wide: [0, 0, 1], width: 1, thickness: 1 }),
    ];
  if (kind === 'jack') return jack(from, to);
  return kind === 'horse' ? horse(from, to) : [];
};

const jackAbout = { id: 'thing.jack', role: 'tool', material: 'steel', seed: 9 } as const;

/** A jack post: a tube on a plate, a screw out of it, a plate under what it lifts. */
const jack = (from: Vec3, to: Vec3): readonly Solid[] => {
  const plate = (at: Vec3, z: number): Solid =>
    box(jackAbout, { from: [at[0] - 3, at[1] - 3, z], to: [at[0] + 3, at[1] + 3, z + 0.6] });
  const tube = (low: Vec3, high: Vec3, thick: number): Solid =>
    stick(jackAbout, { from: low, to: high, wide: [1, 0, 0], width: thick, thickness: thick });
  const neck = lerp(from, to, 0.62);
  return [plate(from, from[2]), tube(from, neck, 2.6), tube(neck, to, 1.4), plate(to, to[2] - 0.6)];
};

/** A beam on four splayed legs; it runs out below like everything on the ground. */
const horse = (from: Vec3, to: Vec3): readonly Solid[] => {
  const top = from[2];
  const about = { id: `horse.${from[1]}`, role: 'staging' } as const;
  const legs = [0.12, 0.88].flatMap((t) =>
    [-1, 1].map((way) => {
      const head = lerp(from, to, t);
      return stick(about, {
        from: [head[0], head[1] + way * 1.2, top - 2],
        to: [head[0] + (t < 0.5 ? -2 : 2), head[1] + way * 8, groundLevel],
        wide: [1, 0, 0],
        width: 3,
        thickness: 1.2,
      });
    }),
  );
  return [
    box(about, { from: [from[0], from[1] - 1.75, top - 3.5], to: [to[0], to[1] + 1.75, top] }),
    ...legs,
  ];
};
