import type { Sure } from './source';

/**
 * What span tables take for the wood of a rafter: bending `Fb` for a 2×4, 2×6, 2×8, 2×10 and 2×12 with the size factor in
 * it, and stiffness `E`; both psi.
 */
export type DesignValues = {
  readonly bending: readonly number[];
  readonly stiffness: number;
  readonly sure: Sure;
};

/** Depths the values stand for, inches, in the order of `bending`. */
export const tableDepths: readonly number[] = [3.5, 5.5, 7.25, 9.25, 11.25];

/** Size factors CF of design tables for sawn lumber, for the same depths (reckoned anew: with them read cells come out). */
const sizeFactors: readonly number[] = [1.5, 1.3, 1.2, 1.1, 1.0];

/** Bending for each depth from one base value, psi. */
export const bySize = (base: number): readonly number[] => sizeFactors.map((factor) => base * factor);

/** Short names of the trade: hem-fir, spruce-pine-fir, southern pine, Douglas fir and larch. */
export type Species = 'HF' | 'SPF' | 'SP' | 'DF-L';

/**
 * Which rafter tables are meant. From 2018 on they have Douglas fir-larch No. 2 as if its bending were 875 psi (cells of IBC
 * 2018 table 2308.7.2(2), read); earlier ones, and the joist tables of 2018 too, take 900. The caller says which book counts.
 */
export type Edition = 'upTo2015' | 'from2018';

/** No. 2 lumber: IBC 2018 table 2308.7.2(2) comes out to the inch from these (reckoned anew). */
export const numberTwo = (species: Species, edition: Edition): DesignValues =>
  species === 'DF-L' && edition === 'from2018' ? { ...rows['DF-L'], bending: bySize(875) } : rows[species];

const rows: Readonly<Record<Species, DesignValues>> = {
  HF: { bending: bySize(850), stiffness: 1.3e6, sure: 'recalculated' },
  SPF: { bending: bySize(875), stiffness: 1.4e6, sure: 'recalculated' },
  SP: { bending: [1100, 1000, 925, 800, 750], stiffness: 1.4e6, sure: 'recalculated' },
  'DF-L': { bending: bySize(900), stiffness: 1.6e6, sure: 'recalculated' },
};
