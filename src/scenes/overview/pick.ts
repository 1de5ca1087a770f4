import type { OpenSpot } from '../../present/model/solid';
import { onScreen, type Camera } from '../ink/camera';
import type { Point } from '../ink/pencil';
import type { Raster } from '../ink/raster';

/** How near a finger has to come, CSS pixels: WCAG 2.2 targets are 24 across; thin sticks get some room round them. */
const spotReach = 16;
const stickReach = 9;

export type Seen = {
  readonly raster: Raster;
  readonly camera: Camera;
  readonly spots: readonly OpenSpot[];
  readonly ratio: number;
};

/** The member or the open place under a finger; device pixels of the picture. */
export const memberAt = (seen: Seen, at: Point): string | undefined => {
  const direct = solidAt(seen.raster, at);
  if (direct) return direct;
  return near(seen, at) ?? around(seen, at);
};

const solidAt = ({ surface, surfaces, width, height, fine }: Raster, [px, py]: Point): string | undefined => {
  const [x, y] = [Math.floor(px * fine), Math.floor(py * fine)];
  if (x < 0 || y < 0 || x >= width || y >= height) return undefined;
  const solid = surfaces[surface[y * width + x] as number]?.solid;
  return solid?.selectable ? solid.id : undefined;
};

const near = ({ camera, spots, ratio }: Seen, [x, y]: Point): string | undefined => {
  const ranked = spots
    .map(({ id, points }) => ({
      id,
      far: Math.min(
        ...points.map((p) => {
          const [sx, sy] = onScreen(camera, p);
          return Math.hypot(sx - x, sy - y);
        }),
      ),
    }))
    .sort((a, b) => a.far - b.far);
  const first = ranked[0];
  return first && first.far <= spotReach * ratio ? first.id : undefined;
};

const around = ({ raster, ratio }: Seen, [x, y]: Point): string | undefined => {
  for (let r = 2; r <= stickReach; r += 2)
    for (let i = 0; i < 12; i++) {
      const a = (i * Math.PI) / 6;
      const found = solidAt(raster, [x + Math.cos(a) * r * ratio, y + Math.sin(a) * r * ratio]);
      if (found) return found;
    }
  return undefined;
};
