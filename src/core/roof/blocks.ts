import { baysOf, differentBays } from './bays';
import { heightOver } from './heightOver';
import type { FiguredBlock } from './figured';
import type { RoofPlan } from './plan';
import { frameOf, type Eave, type RoofForm } from './form';
import type { Framing } from './framing';
import { startsAtEave } from './pieces';
import { sidesOf, wallsOf } from './planes';
import { ventOf } from './vents';

/** One block for each different bay and eave. A bay too tight for its block gets none. */
export const figuredBlocks = (plan: RoofPlan, framing: Framing): readonly FiguredBlock[] =>
  rowsOf(eaveRows(framing))
    .flatMap((rows) =>
      differentBays(rows[0].runs.flatMap((run) => baysOf(run, plan)))
        .filter(({ block }) => block > 0)
        .map(({ block, count }) => ({
          count: count * rows.length,
          side: sideOf(framing.form, rows),
          length: block,
          ...partIn(framing.form, rows[0].eave),
          ...standing(plan, rows[0].eave),
          ...ventOf(plan.vents, block),
        })),
    )
    .map((block, i) => ({ id: `block.${i + 1}`, ...block }));

/** Stations of an eave that rafters stand at, in runs without a gap: a wing leaves one in the wall it stands against. */
export type EaveRow = { readonly eave: Eave; readonly runs: readonly (readonly number[])[] };

export const eaveRows = ({
  form,
  pieces,
  inPlace = [],
}: Framing & { readonly inPlace?: Framing['pieces'] }): readonly EaveRow[] => {
  const standing = new Map<Eave, Set<number>>(form.eaves.map((eave) => [eave, new Set()]));
  // Beside a header one that is cut in place still stands on its plate.
  const beside = inPlace.filter(({ eave }) => frameOf(form, eave.body).header);
  for (const piece of [...pieces, ...beside])
    if (startsAtEave(piece)) standing.get(piece.eave)?.add(piece.at);
  return form.eaves.filter(isBearing).map((eave) => {
    const own = standing.get(eave);
    if (eave.standing === undefined) return { eave, runs: runsOf(eave.stations, own) };
    const all = [eave.standing, ...eave.stations].sort((a, b) => a - b);
    return { eave, runs: runsOf(all, new Set([eave.standing, ...(own ?? [])])) };
  });
};

/** Blocks stand on plates and purlins; over a mitered break there is nothing to stand on. */
const isBearing = ({ stands }: Eave): boolean => stands === undefined || stands.purlin !== undefined;

const runsOf = (
  stations: readonly number[],
  standing: ReadonlySet<number> | undefined,
): readonly (readonly number[])[] => {
  const runs: number[][] = [[]];
  for (const at of stations) {
    if (standing?.has(at)) runs.at(-1)?.push(at);
    else runs.push([]);
  }
  return runs.filter((run) => run.length > 1);
};

/** Told where one wall has several planes over it, or several sections of a run. */
const partIn = (form: RoofForm, { part, body }: Eave): Pick<FiguredBlock, 'part'> => {
  const { section, name } = frameOf(form, body);
  const told = part ?? (section && name);
  return told === undefined ? {} : { part: told };
};

const sideOf = (form: RoofForm, rows: readonly EaveRow[]): FiguredBlock['side'] => {
  const walls = rows.map(({ eave }) => eave.side);
  return rows.every(({ eave }) => frameOf(form, eave.body).name !== undefined)
    ? sidesOf(walls)
    : wallsOf(walls);
};

/** Eaves that are laid out and cut alike. */
const rowsOf = (all: readonly EaveRow[]): readonly (readonly [EaveRow, ...EaveRow[]])[] => {
  const rows: [EaveRow, ...EaveRow[]][] = [];
  for (const row of all) {
    const same = rows.find(([first]) => isAlike(first, row));
    if (same) same.push(row);
    else rows.push([row]);
  }
  return rows;
};

const isAlike = (a: EaveRow, b: EaveRow): boolean =>
  a.eave.stations === b.eave.stations &&
  a.eave.m === b.eave.m &&
  a.eave.seat === b.eave.seat &&
  a.runs.flat().length === b.runs.flat().length &&
  a.runs.length === b.runs.length;

/**
 * How a block meets the roof plane. Plumb, its outer face is over the plate's and its top edge is beveled to the plane;
 * square to the rafters, it leans out from the same edge of the plate and needs no bevel. Height is of the outer face.
 */
const standing = (
  { blockStands, rafter }: RoofPlan,
  eave: Eave,
): { readonly height: number; readonly bevel: FiguredBlock['bevel'] } => {
  const { m } = eave;
  const plumb = heightOver(rafter.depth, eave) + eave.clad * m;
  return blockStands === 'plumb'
    ? { height: plumb, bevel: { rise: m, run: 1 } }
    : { height: plumb / Math.sqrt(1 + m * m), bevel: { rise: 0, run: 1 } };
};
