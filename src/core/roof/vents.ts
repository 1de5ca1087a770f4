import { hair } from '../units/hair';
import type { FiguredBlock } from './figured';
import type { Vents } from './plan';

/** Wood left between two vent holes, and round them to the block's edges. Inches; ours, no rule for blocks was found. */
export const webBetweenHoles = 1;

type Vent = NonNullable<FiguredBlock['vent']>;
type Notch = Extract<Vents, { readonly shape: 'notch' }>;
type Holes = Extract<Vents, { readonly shape: 'holes' }>;

/** What a block lets through, square inches, before any mesh. No `vent` where the block is too short for an opening. */
export const ventOf = (vents: Vents | undefined, length: number): { readonly vent?: Vent } => {
  if (vents === undefined) return {};
  const area = vents.shape === 'notch' ? notchArea(vents, length) : holesArea(vents, length);
  return area > 0 ? { vent: { area, shape: vents.shape } } : {};
};

const notchArea = ({ depth, leave }: Notch, length: number): number =>
  depth * Math.max(0, length - 2 * leave);

const holesArea = (holes: Holes, length: number): number =>
  (holesHeld(holes, length) * Math.PI * holes.diameter * holes.diameter) / 4;

/** As many as asked for, or as many as a block of this length holds with wood between them. */
export const holesHeld = ({ count, diameter }: Holes, length: number): number => {
  const most = Math.floor((length - webBetweenHoles + hair) / (diameter + webBetweenHoles));
  return Math.max(0, Math.min(count, most));
};
