import { hair } from '../units/hair';
import type { RoofPlan } from './plan';

/** The space between two rafters and the block that fills it, inches. */
export type Bay = { readonly clear: number; readonly block: number };

/** Clear distances between neighbouring rafters, in order; inches. Their sum and the rafters make up the length. */
export const clearBays = (stations: readonly number[], thickness: number): readonly number[] =>
  stations.slice(1).map((x, i) => x - (stations[i] as number) - thickness);

/** Every bay in order from end A with the length of its block; 0 where a bay is too tight for one. */
export const baysOf = (
  stations: readonly number[],
  { rafter, blockAllowance }: Pick<RoofPlan, 'rafter' | 'blockAllowance'>,
): readonly Bay[] =>
  clearBays(stations, rafter.thickness).map((clear) => ({
    clear,
    block: clear - blockAllowance > hair ? clear - blockAllowance : 0,
  }));

/** Bays with the same block counted together, in the order they first come. */
export const differentBays = (bays: readonly Bay[]): readonly (Bay & { readonly count: number })[] => {
  const groups: { readonly bay: Bay; count: number }[] = [];
  for (const bay of bays) {
    const same = groups.find((group) => Math.abs(group.bay.clear - bay.clear) < hair);
    if (same) same.count += 1;
    else groups.push({ bay, count: 1 });
  }
  return groups.map(({ bay, count }) => ({ ...bay, count }));
};
