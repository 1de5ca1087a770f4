import { rafterCuts, type RafterCuts } from './common';
import type { Eave, RoofForm } from './form';
import type { RoofPlan } from './plan';

/** One roof plane with the rafters that lie in it: all that ridges, blocks, ties and cautions are figured from. */
export type RoofPlane = { readonly eave: Eave; readonly cuts: RafterCuts };

/** Planes with the same numbers share their rafters and blocks, and are told once. */
export type PlaneGroup = RoofPlane & {
  readonly side: 'both' | 'street' | 'yard';
  readonly eaves: number;
};

export const planesOf = (form: RoofForm, plan: RoofPlan): readonly RoofPlane[] =>
  form.eaves.map((eave) => ({ eave, cuts: rafterCuts(eave, plan) }));

/** Longest rafter first. */
export const grouped = (planes: readonly RoofPlane[]): readonly PlaneGroup[] => {
  const groups = planes.reduce<readonly PlaneGroup[]>((all, plane) => {
    const same = all.find((group) => isSame(group.eave, plane.eave));
    if (!same) return [...all, { ...plane, side: plane.eave.side, eaves: 1 }];
    return all.map((group) => (group === same ? { ...group, side: 'both', eaves: group.eaves + 1 } : group));
  }, []);
  return [...groups].sort((a, b) => b.cuts.edgeLength - a.cuts.edgeLength);
};

const isSame = (a: Eave, b: Eave): boolean =>
  a.run === b.run && a.m === b.m && a.overhang === b.overhang && a.seat === b.seat && a.clad === b.clad;

/** Where the plane's top edges meet the ridge's face, above the plate. Inches. */
export const topOf = ({ eave, cuts }: RoofPlane): number =>
  cuts.heightAbovePlate + (eave.run - cuts.shortening) * eave.m;

/** Plumb, plate to plane at the outside of the plate itself, whatever face the rafter is cut to. Inches. */
export const planeOverPlate = ({ eave, cuts }: RoofPlane): number =>
  cuts.heightAbovePlate + eave.clad * eave.m;

/** Level, from the ridge's centre line to where the plane is `height` above the plate. Inches. */
export const reachAt = ({ eave, cuts }: RoofPlane, height: number): number =>
  eave.run + (cuts.heightAbovePlate - height) / eave.m;
