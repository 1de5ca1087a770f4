import { stiffnessOf, type Size } from '../mechanics/section';
import { cubeRoot } from '../units/cubeRoot';
import { isOver } from '../units/hair';
import { tableDepths, type DesignValues } from './designValues';
import type { Source, Sure } from './source';

/** How far a rafter may span, by the method that span tables are made with. */

export const spanSource: Source = {
  document: 'IBC 2018',
  section: 'table 2308.7.2(2), its method',
  sure: 'recalculated',
};

/** Load duration CD: a roof's live load, snow, and floors and joists. IBC span tables (reckoned anew from read cells). */
export const durations = { roofLive: 1.25, snow: 1.15, floor: 1 } as const;

/** Members that share a load, Cr. Same tables (reckoned anew). */
const repetitive = 1.15;

/** Tables end here, inches: 26 ft (read, IBC 2018 table 2308.7.2(2), note b). */
const longestSpan = 26 * 12;

export type SpanAsked = {
  readonly wood: DesignValues;
  readonly section: Size;
  /** Between rafters, inches. */
  readonly spacing: number;
  /** Pounds a square foot on the level. */
  readonly live: number;
  readonly dead: number;
  /** Span over this is the most it may bend under the live load: 180, or 240 with a ceiling on it. */
  readonly bendsTo: 180 | 240;
  readonly duration: number;
};

/** `span` is level, plate to ridge, to the whole inch; `past` when it is over 26 ft, where tables end and say no number. */
export type Span = {
  readonly span: number;
  readonly past: boolean;
  readonly governs: 'bending' | 'deflection';
};

/**
 * The lesser of √(8·Fb·CD·Cr·S/w) and ∛(384·E·I/(5·w_live·k)), to the nearest inch, and 26 ft at the most. Source:
 * `spanSource`. Undefined for a depth that has no row or a load that is none.
 */
export const rafterSpan = (asked: SpanAsked): Span | undefined => {
  const { wood, section, spacing, live, dead, bendsTo, duration } = asked;
  const bending = wood.bending[tableDepths.indexOf(section.depth)];
  if (bending === undefined || !(spacing > 0 && live > 0 && dead >= 0)) return undefined;
  const perInch = (psf: number): number => (psf * spacing) / 144;
  const modulus = (section.thickness * section.depth * section.depth) / 6;
  const { upright } = stiffnessOf(section, { stiffness: wood.stiffness, weight: 0 });
  const byBending = Math.sqrt((8 * bending * duration * repetitive * modulus) / perInch(live + dead));
  const byBend = cubeRoot((384 * upright) / (5 * perInch(live) * bendsTo));
  const exact = Math.min(byBending, byBend);
  const past = isOver(exact, longestSpan);
  return {
    span: past ? longestSpan : Math.round(exact),
    past,
    governs: byBending < byBend ? 'bending' : 'deflection',
  };
};

/**
 * What a tie set up from the plate leaves of a rafter's span: note a of IRC table 802.5.1, for the share of the ridge's height
 * the tie sits at. All read but the last row.
 */
const raisedRows: readonly { readonly upTo: number; readonly factor: number; readonly sure: Sure }[] = [
  { upTo: 2 / 15, factor: 1, sure: 'memory' },
  { upTo: 1 / 6, factor: 0.9, sure: 'read' },
  { upTo: 1 / 5, factor: 0.83, sure: 'read' },
  { upTo: 1 / 4, factor: 0.76, sure: 'read' },
  { upTo: 1 / 3, factor: 0.67, sure: 'read' },
];

/** By the next row up, so never too much. Undefined over a third, where the ridge has to be a beam. */
export const raisedTieFactor = (
  tie: number,
  ridge: number,
): { readonly factor: number; readonly sure: Sure } | undefined =>
  raisedRows.find(({ upTo }) => !isOver(tie, upTo * ridge));
