import type { Vec3 } from '../../core/geometry/vector';
import type { Place } from './workPlaces';
import type { Thing } from './task';

/** Two sawhorses with a board on them, on the ground by the gable at end A: boards are looked at and cut there. Inches. */

/** Ground inside the walls and out, as far as the drawing shows any: inches; ours. */
export const groundLevel = -66;
/** Top of the horses over the ground: common practice, no source. */
const horseHigh = 34;
const at = { x: -30, reach: 44, feet: 26 } as const;

/** `lane`: as far aside as the staging stands. */
export const horses = (lane: number): readonly Thing[] => {
  const top = groundLevel + horseHigh;
  const horse = (y: number): Thing => ({
    kind: 'horse',
    from: [at.x - 15, lane + y, top],
    to: [at.x + 15, lane + y, top],
  });
  return [
    horse(-at.feet),
    horse(at.feet),
    { kind: 'board', from: [at.x, lane - at.reach, top + 0.75], to: [at.x, lane + at.reach, top + 0.75] },
  ];
};

/** Where one works on the board, and where the mate has hold of its end. */
export const atHorses = (who: 'work' | 'end', lane: number): Place => {
  const z = groundLevel + horseHigh + 1.6;
  const [y, way, from]: readonly [number, number, Vec3] =
    who === 'work' ? [-8, 1, [-1, -0.1, 0]] : [at.reach - 3, -1, [-0.3, 1, 0]];
  return { at: [at.x, lane + y, z], grip: [at.x, lane + y + way * 15, z], from };
};
