import { roofSolids } from './roofSolids';
import { scenery } from './scenery';
import { schemeOf, type Shown } from './scheme';
import type { Solid, Stroke } from './solid';
import { strokesOf } from './strokes';
import { supportSolids } from './supportSolids';
import { tieSolids } from './tieSolids';
import { wallSolids } from './wallSolids';

/** Bodies and lines of the site as it stands. Everything any view draws comes from here. */
export type Model = { readonly solids: readonly Solid[]; readonly strokes: readonly Stroke[] };

export const modelOf = (shown: Shown): Model => {
  const scheme = schemeOf(shown);
  return {
    solids: [
      ...wallSolids(shown, scheme),
      ...tieSolids(shown, scheme),
      ...scenery(shown, scheme),
      ...supportSolids(shown, scheme),
      ...roofSolids(shown, scheme),
    ],
    strokes: strokesOf(shown, scheme),
  };
};
