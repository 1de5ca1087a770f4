import { bobSwing, levelAt, levelLength } from '../../instruments/rows';
import { spread } from '../../level/draw';
import { againstWall, sidesOf } from '../../level/layout';
import type { PlateSpot } from '../../level/planted';
import { levelBias, waterBias } from '../../level/toolTruth';
import type { End, Side } from '../../roof/side';
import { platesNow, ridgeNow } from '../posed';
import type { Standing } from '../standing';
import { heightFromStart } from '../truePlate';
import { firstOf, plain, type Reader, type Row } from './reach';

/** Tools that know which way is down: the level, the water level, the bob. */

/** A level lies along the ridge: rise of end B over its length, its bias turned with it. */
export const levelShows: Reader = (standing, at, from) => {
  const ridge = ridgeNow(standing);
  const long = levelAt.get(at);
  if (long === undefined || !ridge || (from !== 'A' && from !== 'B')) return undefined;
  const rise = ((ridge.B.z - ridge.A.z) * long) / standing.level.plan.length;
  return rise + ((from === 'B' ? -1 : 1) * levelBias(standing) * long) / levelLength;
};

/** Water against the mark at street A; air in the hose lifts or drops it everywhere alike, at the mark itself too. */
export const waterShows = firstOf([
  plain(/^plate\.(street|yard)\.(A|mid|B)$/, (s, [which, at]) =>
    sidesOf(s.level).includes(which as Side)
      ? heightFromStart(s, which as Side, at as PlateSpot) + waterBias(s)
      : undefined,
  ),
]);

/** How far an end of the ridge leans toward B (+) or A from over the ends of the plates. */
const leaning = (standing: Standing, end: End): number | undefined => {
  if (againstWall(standing.level)) return undefined;
  const ridge = ridgeNow(standing);
  const plates = platesNow(standing);
  return ridge && ridge[end].x - (plates.street[end].x + plates.yard[end].x) / 2;
};

const hung: Row = [
  /^ridge\.([AB])\.plumb$/,
  (standing, [end], from) => {
    const lean = leaning(standing, end as End);
    if (lean === undefined || from === 'still') return lean;
    const { seed, site } = standing;
    const swing = { seed, place: `bob.${end as End}`, purpose: `swing.${site.told}` };
    return from === undefined ? lean + spread(swing, bobSwing) : undefined;
  },
];
export const bobShows = firstOf([hung]);
