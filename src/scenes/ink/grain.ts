import { clamp, noise2 } from './noise';
import { woodAt, woodOf } from './wood';

/**
 * Grain baked once: a few boards' faces, edges and ends as strips of darkness, shared by all boards of the overview.
 * A board takes one by its seed, shifted along; a strip goes onto its face by one affine map, since projection is parallel.
 */
export type Strip = {
  readonly width: number;
  readonly height: number;
  /** Texels per inch along and across. */
  readonly fine: readonly [number, number];
  /** Darkness of late wood 0…255, and a little fiber around 128. */
  readonly dark: Uint8Array;
  readonly fiber: Uint8Array;
};

export type Board = { readonly face: Strip; readonly edge: Strip; readonly end: Strip };

/** How many different boards there are. Ours: enough that neighbors differ. */
const boards = 10;
const faceInches = { along: 240, across: 12 };
const edgeInches = { along: 240, across: 2.4 };
const endInches = { along: 12, across: 4 };

type Cut = 'face' | 'edge' | 'end';
const sizes = { face: faceInches, edge: edgeInches, end: endInches };
const fine: Readonly<Record<Cut, readonly [number, number]>> = {
  face: [1.25, 5],
  edge: [1.25, 5],
  end: [7, 7],
};

const baked = new Map<string, Board>();

/** The board whose grain a seed wears. `pitch` in inches: no ring closer than 1.6 px on screen. */
export const boardFor = (seed: number, pitch: number): Board => {
  const which = Math.abs(seed) % boards;
  const key = `${String(which)}@${pitch.toFixed(2)}`;
  const known = baked.get(key);
  if (known) return known;
  const board = {
    face: bake('face', which, pitch),
    edge: bake('edge', which, pitch),
    end: bake('end', which, pitch),
  };
  baked.set(key, board);
  return board;
};

const bake = (cut: Cut, which: number, pitch: number): Strip => {
  const wood = woodOf(which * 31 + 5, { pitch, lean: 0.03 });
  const [fx, fy] = fine[cut];
  const size = sizes[cut];
  const width = Math.ceil(size.along * fx);
  const height = Math.ceil(size.across * fy);
  const dark = new Uint8Array(width * height);
  const fiber = new Uint8Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const u = (x + 0.5) / fx - size.along / 2;
      const v = (y + 0.5) / fy - size.across / 2;
      const spot =
        cut === 'face'
          ? { along: u, across: v, through: 0.75 }
          : cut === 'edge'
            ? { along: u, across: 2.75, through: v }
            : { along: 0, across: u, through: v };
      dark[y * width + x] = clamp(woodAt(wood, spot)) * 255;
      fiber[y * width + x] = noise2(u * 0.12 + wood.phase, v * 2.2 * 2, wood.seed + 11) * 255;
    }
  return { width, height, fine: [fx, fy], dark, fiber };
};
