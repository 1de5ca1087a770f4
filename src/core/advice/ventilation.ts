import { holesHeld, ventOf, webBetweenHoles } from '../roof/vents';
import { hair } from '../units/hair';
import { inch } from '../units/inch';
import type { Source, Sure } from './source';

/** Net free vent area of a roof space. Areas of attics in square feet, of openings in square inches. */

export const ventSource: Source = { document: 'IRC', section: 'R806.2', sure: 'secondHand' };
/** Air space between insulation and sheathing at a vent, inches. IRC R806.3 (read second hand). */
export const airSpace = 1;

/** What the lesser share of R806.2 hangs on. Zones are those of the energy code. */
export type VentScheme = {
  readonly climateZone: number;
  /** A vapor retarder of class I or II on the side that is warm in winter. */
  readonly retarder: boolean;
  /** Share of all vents that is near the ridge. */
  readonly highShare: number;
  /** Top of the upper vents under the ridge, plumb, inches; and whether all others are in the bottom third. */
  readonly underRidge: number;
  readonly lowInBottomThird: boolean;
};

/**
 * One part of vent in so many parts of attic: 150, or 300 when every condition of the exception is met. Classes and 40 to 50 %
 * are read second hand; 3 ft under the ridge and the bottom third are from memory, so a 300 is never surer than that.
 */
export const ventParts = (scheme: VentScheme): { readonly parts: 150 | 300; readonly sure: Sure } => {
  const { climateZone, retarder, highShare, underRidge, lowInBottomThird } = scheme;
  const warmSide = climateZone < 6 || retarder;
  const split = highShare >= 0.4 - hair && highShare <= 0.5 + hair;
  return warmSide && split && underRidge <= 36 + hair && lowInBottomThird
    ? { parts: 300, sure: 'memory' }
    : { parts: 150, sure: 'secondHand' };
};

/** Net free area an attic wants, square inches, from square feet of attic. */
export const ventArea = (attic: number, parts: 150 | 300): number => (attic / parts) * 144;

/** Shared out between ridge and two eaves, square inches. Half and half is the worked example of a vent maker's page (read). */
export const ventSplit = (
  area: number,
  highShare = 1 / 2,
): { readonly ridge: number; readonly eave: number } => ({
  ridge: area * highShare,
  eave: (area * (1 - highShare)) / 2,
});

/** Holes of a diameter that give a bay its area, before any mesh; whole holes, rounded up. Inches and square inches. */
export const holesFor = (area: number, diameter: number): number | undefined => {
  const one = ventOf(
    { shape: 'holes', count: 1, diameter: inch(diameter) },
    diameter + 2 * webBetweenHoles,
  ).vent;
  return one && Math.ceil(area / one.area - hair);
};

/** Whether a block of this length holds that many with wood between them. */
export const holesFit = (count: number, diameter: number, length: number): boolean =>
  holesHeld({ shape: 'holes', count, diameter: inch(diameter) }, length) === count;
