import { hair } from '../units/hair';
import type { FiguredBlock } from './figured';
import type { Vents } from './plan';

/** Wood left between two vent holes, and between a hole and a block's end. Inches; ours, no rule for blocks was found. */
export const webBetweenHoles = 1;

type Vent = NonNullable<FiguredBlock['vent']>;

/** What a block lets through, square inches, before any mesh. No `vent` where the block is too short for an opening. */
export const ventOf = (vents: Vents | undefined, length: number): { readonly vent?: Vent } => {
  if (vents === undefined) return {};
  const area = vents.shape === 'notch' ? notch(vents, length) : holes(vents, length);
  return area > 0 ? { vent: { area, shape: vents.shape } } : {};
};

const notch = ({ depth, leave }: Extract<Vents, { shape: 'notch' }>, length: number): number =>
  depth * Math.max(0, length - 2 * leave);

/** As many as asked for, or as many as the block holds with wood between them. */
const holes = ({ count, diameter }: Extract<Vents, { shape: 'holes' }>, length: number): number => {
  const held = Math.floor((length - webBetweenHoles + hair) / (diameter + webBetweenHoles));
  return (Math.max(0, Math.min(count, held)) * Math.PI * diameter * diameter) / 4;
};
