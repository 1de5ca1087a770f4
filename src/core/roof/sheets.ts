import { hair } from '../units/hair';
import type { FiguredSheets, SheetRow } from './figuredLists';
import { expand } from './expand';
import { frameOf, type Eave, type RoofForm } from './form';
import { cladOf } from './forms/common';
import { endRun } from './forms/hip';
import { sidesOf, wallsOf } from './planes';
import type { RoofPlan } from './plan';

/** Where sheets of sheathing meet on the planes of a roof. Inches. */

/** A sheet of 4 by 8 ft, the long way along the eave, each row half a sheet on from the last. Common practice, no source. */
const sheet = { width: 48, length: 96 } as const;

/** One entry for planes that are laid out and run alike. */
export const sheetsOf = (plan: RoofPlan): readonly FiguredSheets[] => {
  const groups: [Eave, ...Eave[]][] = [];
  const form = expand(plan);
  for (const eave of form.eaves) {
    const same = groups.find(([first]) => isAlike(first, eave));
    if (same) same.push(eave);
    else groups.push([eave]);
  }
  return groups.map((eaves) => ({
    ...standing(form, eaves),
    count: eaves.length,
    ...coursesOf(eaves[0]),
    rows: rowsOf(plan, form, eaves[0]),
  }));
};

const isAlike = (a: Eave, b: Eave): boolean =>
  a.stations === b.stations && a.m === b.m && a.run === b.run && a.overhang === b.overhang;

/** Whole courses up from the tails' plumb cut, and what is left to the ridge line. */
const coursesOf = ({
  run,
  overhang,
  m,
}: Eave): Pick<FiguredSheets, 'slopeLength' | 'marks' | 'lastCourse'> => {
  const slopeLength = (run + overhang) * Math.sqrt(1 + m * m);
  const many = Math.ceil((slopeLength - hair) / sheet.width) - 1;
  const marks = Array.from({ length: Math.max(0, many) }, (_, i) => (i + 1) * sheet.width);
  return { slopeLength, marks, lastCourse: slopeLength - (marks.at(-1) ?? 0) };
};

const standing = (
  form: RoofForm,
  eaves: readonly [Eave, ...Eave[]],
): Pick<FiguredSheets, 'side' | 'part'> => {
  const walls = eaves.map(({ side }) => side);
  const part = frameOf(form, eaves[0].body).name;
  return part === undefined ? { side: wallsOf(walls) } : { side: sidesOf(walls), part };
};

/**
 * Sheets begin at the layout's datum, so that their joints come where its marks do: on the ends of a hip roof in the middle,
 * on a wing at its gable.
 */
const rowsOf = (plan: RoofPlan, form: RoofForm, { plane, body, stations }: Eave): readonly SheetRow[] => {
  const gable = frameOf(form, body).wing && body.limits.find(({ id }) => id === 'gable');
  const from = gable ? gable.normal[1] * gable.reach : plane.up[1] === 0 ? 0 : datumOf(plan);
  return [from, from + sheet.length / 2].map((start) => rowFrom(start, stations));
};

/** The place along the long walls that stations are measured from, x from end A. */
const datumOf = (plan: RoofPlan): number => {
  switch (plan.datum) {
    case 'endA':
      return 0;
    case 'endB':
      return plan.length;
    case 'centre':
      return plan.length / 2;
    case 'ridgeEnd':
      return endRun(plan) - cladOf(plan);
  }
};

/** Joints every sheet's length both ways from a place, between the first rafter and the last. */
const rowFrom = (from: number, stations: readonly number[]): SheetRow => {
  const [first, last] = [stations[0] ?? 0, stations.at(-1) ?? 0];
  const begin = Math.floor((first + hair - from) / sheet.length) + 1;
  const end = Math.ceil((last - hair - from) / sheet.length) - 1;
  const misses: { readonly at: number; readonly by: number }[] = [];
  let next = 0;
  for (let k = begin; k <= end; k++) {
    const at = from + k * sheet.length;
    while ((stations[next + 1] ?? Infinity) <= at) next++;
    const [below, above] = [(stations[next] ?? at) - at, (stations[next + 1] ?? Infinity) - at];
    const by = above < -below ? above : below;
    if (Math.abs(by) > hair) misses.push({ at, by });
  }
  return { from, joints: Math.max(0, end - begin + 1), misses };
};
