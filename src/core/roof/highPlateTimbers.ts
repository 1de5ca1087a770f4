import type { Vec2, Vec3 } from '../geometry/vector';
import { clearBays } from './bays';
import { eaveRows, type EaveRow } from './blocks';
import { frameOf, type Eave, type RoofForm } from './form';
import type { Framing } from './framing';
import { heightOver } from './heightOver';
import { highPlatesIn, highPlateTop } from './highPlate';
import { lineAt } from './pieces';
import type { RoofPlan } from './plan';
import { dot2, pointOn } from './surface';
import type { Timber } from './timber';

/** What stands on a high plate, and that itself, as solids. */

/** How far up its line a rafter goes, with the corners of its upper birdsmouth over the low plate; nothing where it has none. */
export const overHighPlate = (
  plan: RoofPlan,
  form: RoofForm,
  eave: Eave,
): { readonly till: number; readonly notch: Timber['outline'] } | undefined => {
  const { highPlate } = frameOf(form, eave.body);
  if (!highPlate) return undefined;
  const { run, m } = eave;
  const top = highPlateTop(plan, eave, highPlate) - eave.plane.base;
  const under = heightOver(plan.rafter.depth, eave) + run * m - plan.rafter.depth * Math.sqrt(1 + m * m);
  return {
    till: run + highPlate.past,
    notch: [
      [run + highPlate.seat, top],
      [run, top],
      [run, under],
    ],
  };
};

/** Plates are drawn 1 1/2 in thick, as nearly all are; no figure here depends on it. */
const plateThick = 1.5;

export const highPlateTimbers = (plan: RoofPlan, framing: Framing): readonly Timber[] => [
  ...eaveRows(framing).flatMap((row) => blocksOn(plan, framing.form, row)),
  ...highPlatesIn(framing.form).map(({ eave, plate }): Timber => {
    const top = highPlateTop(plan, eave, plate);
    return {
      id: 'plate.high',
      origin: pointOn(lineAt(eave, 0), eave.run + plate.width / 2),
      direction: [1, 0],
      outline: box([0, plan.length], [top - plateThick, top]),
      thickness: plate.width,
      cuts: [],
    };
  }),
];

const box = ([a, b]: Vec2, [low, high]: Vec2): Timber['outline'] => [
  [a, low],
  [b, low],
  [b, high],
  [a, high],
];

/** In the middle of their bays, their outer faces over the plate's; no length in a bay too tight. */
const blocksOn = (plan: RoofPlan, form: RoofForm, { eave, runs }: EaveRow): readonly Timber[] => {
  const { highPlate } = frameOf(form, eave.body);
  if (!highPlate || plan.blockStands !== 'plumb') return [];
  const top = highPlateTop(plan, eave, highPlate);
  const { m, plane, run } = eave;
  const { thickness, depth } = plan.rafter;
  const over = heightOver(depth, eave);
  const tall = 2 * (over + (run + highPlate.width) * m - top + plane.base) + depth;
  const bays = runs.flatMap((row) =>
    clearBays(row, thickness).map((clear, i) => ({
      clear,
      mid: (row[i] as number) + (clear + thickness) / 2,
    })),
  );
  const normal: Vec3 = [-m * plane.up[0], -m * plane.up[1], 1];
  return bays.flatMap(({ clear, mid }, i): readonly Timber[] => {
    const length = clear - plan.blockAllowance;
    if (length <= 0) return [];
    return [
      {
        id: `block.high.${i + 1}`,
        origin: pointOn(lineAt(eave, mid), run + highPlate.width - thickness / 2),
        direction: [1, 0],
        outline: box([-length / 2, length / 2], [top, top + tall]),
        thickness,
        cuts: [{ normal, reach: plane.base + over - m * dot2(plane.up, plane.foot) }],
      },
    ];
  });
};
