import type { Lights } from './light';
import { differenceOf, type MayDiffer } from './relight';
import { nothing, type Raster, type Surface } from './raster';

/** Which pixels of a picture stay as they were in an earlier one. */

/** Colors of a picture, four to a device pixel, before anything is drawn over them. */
export type Colors = Uint8ClampedArray<ArrayBuffer>;

/** A picture of the same size from the same place, shaded the same way. Its colors are taken over and changed. */
export type Earlier = { readonly raster: Raster; readonly lights: Lights; readonly colors: Colors };

/** Nothing earlier is this surface. */
const unknown = -2;

/**
 * Whether a device pixel stays: every sample shows the same surface as before, in light that cannot have changed. People
 * never stay.
 */
export const stayingIn = (
  raster: Raster,
  lights: Lights,
  earlier: Earlier,
): ((px: number, py: number) => boolean) => {
  const { fine, width, surface, surfaces, camera } = raster;
  const then = earlier.raster.surface;
  const was = numbersThen(surfaces, earlier.raster.surfaces);
  const differs = differenceOf(earlier.lights, lights);
  const asked: (MayDiffer | 'never' | undefined)[] = [];
  return (px, py) => {
    let last = nothing;
    for (let j = 0; j < fine; j++) {
      const y = py * fine + j;
      for (let i = 0, k = y * width + px * fine; i < fine; i++, k++) {
        const id = surface[k] as number;
        if (id < 0) {
          if ((then[k] as number) >= 0) return false;
          continue;
        }
        if (was[id] !== then[k]) return false;
        if (id === last) continue;
        last = id;
        const may = (asked[id] ??= differs(surfaces[id] as Surface, camera) ?? 'never');
        if (may !== 'never' && may(px * fine + i + 0.5, y + 0.5)) return false;
      }
    }
    return true;
  };
};

/** For each surface its number in the earlier picture; no two have the same. Bodies are known by being the same objects. */
const numbersThen = (now: readonly Surface[], then: readonly Surface[]): Int32Array => {
  const known = new Map<Surface['solid'], number[]>();
  then.forEach(({ solid }, id) => {
    const own = solid && known.get(solid);
    if (own) own.push(id);
    else if (solid) known.set(solid, [id]);
  });
  return Int32Array.from(now, ({ solid, normal, point }) => {
    const own = solid && known.get(solid);
    const i = own?.findIndex((id) => then[id]?.normal === normal && then[id].point === point) ?? -1;
    return (i >= 0 ? own?.splice(i, 1)[0] : undefined) ?? unknown;
  });
};
