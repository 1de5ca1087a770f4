import { lerp, type Vec3 } from '../core/geometry/vector';
import { jointSeenAt } from '../present/model/jointSeen';
import { openSpotsOf } from '../present/model/openSpots';
import { onScreen } from './ink/camera';
import type { Point } from './ink/pencil';
import { onSheet, sheetPoint } from './measured/sheet';
import type { Staged } from './overview/drawOverview';
import type { Area } from './overview/fit';
import { hiddenBy } from './overview/hidden';
import { memberAt } from './overview/pick';
import { scaled, shownOf, type Kept } from './stageKept';
import type { StageView } from './stageView';

/** What of the work is where on the stage. */

export const pick = (kept: Kept, ratio: number, [x, y]: Point): string | undefined => {
  const { view, overview, sheet, layout } = kept;
  if (!view || !layout) return undefined;
  const at: Point = [x * ratio, y * ratio];
  const spots = openSpotsOf(shownOf(view));
  const inLinked = layout.linked ? y >= layout.linked.y : true;
  if (sheet && inLinked)
    return onSheet(sheet, ({ raster, camera }, p) => memberAt({ raster, camera, spots: [], ratio }, p), [
      at[0] - kept.sheetAt.x,
      at[1] - kept.sheetAt.y,
    ]);
  if (!overview) return undefined;
  const inside: Point = [at[0] - layout.main.x * ratio, at[1] - layout.main.y * ratio];
  return memberAt({ raster: overview.raster, camera: overview.camera, spots, ratio }, inside);
};

export const hides = ({ view, overview, layout }: Kept, ratio: number, box: Area): number => {
  if (!overview || !layout) return 0;
  const { x, y } = layout.main;
  return hiddenBy(overview, scaled({ ...box, x: box.x - x, y: box.y - y }, ratio), view?.selected);
};

export const standsAt = (
  kept: Kept,
  ratio: number,
  id: string,
): { readonly x: number; readonly y: number } | undefined => {
  const { view, overview, sheet, staged, layout } = kept;
  if (!view) return undefined;
  const p = landmark(view, staged?.what, id);
  if (!p) return undefined;
  if (overview && layout) {
    const [x, y] = onScreen(overview.camera, p);
    return { x: layout.main.x + x / ratio, y: layout.main.y + y / ratio };
  }
  const on = view.view === 'sheet' ? 'plan' : view.view === 'side' ? 'side' : 'section';
  const seen = sheet && sheetPoint(sheet, on, p);
  return seen && { x: (seen[0] + kept.sheetAt.x) / ratio, y: (seen[1] + kept.sheetAt.y) / ratio };
};

/** A rafter is known by a spot near its heel, anything else by its middle, an open place by its first point. */
const landmark = (view: StageView, staged: Staged | undefined, id: string): Vec3 | undefined => {
  if (id.includes(':')) return jointSeenAt(shownOf(view), id);
  const solids = staged?.model.solids.filter((solid) => solid.id === id) ?? [];
  const points = solids.flatMap(({ faces }) => faces[0]?.points ?? []);
  const first = points[0];
  if (!first) return openSpotsOf(shownOf(view)).find((spot) => spot.id === id)?.points[0];
  const middle = points.reduce<Vec3>((sum, p) => lerp(sum, p, 1 / points.length), first);
  return id.startsWith('rafter.') ? lerp(first, points[4] ?? middle, 0.12) : middle;
};
