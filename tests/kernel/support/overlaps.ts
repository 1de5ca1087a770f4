import type { Timber } from '../../../src/core/roof/timber';
import { boxOf, overlap, solidOf, volumeOf, type Box } from './kernel';

export type Overlap = {
  readonly pair: readonly [string, string];
  readonly volume: number;
  /** Of the smaller one's own volume. */
  readonly share: number;
};

/** Every two members whose boxes touch, with the wood that both lay claim to: none, where they only meet. */
export const overlapsOf = (timbers: readonly Timber[]): readonly Overlap[] => {
  const all = timbers.map((timber) => {
    const solid = solidOf(timber);
    return { id: timber.id, solid, box: boxOf(solid), size: volumeOf(solid) };
  });
  return all.flatMap((a, i) =>
    all
      .slice(i + 1)
      .filter((b) => touch(a.box, b.box))
      .map((b) => {
        const volume = overlap(a.solid, b.solid);
        return { pair: [a.id, b.id], volume, share: volume / Math.min(a.size, b.size) } as const;
      }),
  );
};

/** Faces that meet but for rounding touch. Inches. */
const rounding = 1e-9;

const touch = (a: Box, b: Box): boolean =>
  ([0, 1, 2] as const).every((i) => a.min[i] <= b.max[i] + rounding && b.min[i] <= a.max[i] + rounding);

/** Their ids, where one of them takes more than `least` of the smaller; easy to read when a test fails. */
export const clashesOf = (overlaps: readonly Overlap[], least: number): readonly string[] =>
  overlaps
    .filter(({ share }) => !(share < least))
    .map(
      ({ pair, volume, share }) =>
        `${pair.join(' × ')}: ${volume.toFixed(4)} cu in, ${share.toPrecision(3)} of it`,
    );
