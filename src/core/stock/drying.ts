/**
 * What drying does to sticks and to cuts made before it, and what a slope other than the one cut for does to them. Inches;
 * `m` is rise over run.
 */

/** Between these the equations hold: percent of moisture. FPL-RP-489 (read). */
const [driest, wettest] = [8, 19];

/**
 * Percent of its green width and thickness that a whole piece of framing lumber has lost at `moisture` percent. US Forest
 * Products Laboratory, research paper FPL-RP-489 (read): 6.031 − 0.215 M and 5.062 − 0.181 M, green at 28 %. Undefined
 * outside of 8 to 19 %, where the paper does not speak.
 */
export const shrunkFromGreen = (
  moisture: number,
): { readonly width: number; readonly thickness: number } | undefined =>
  moisture >= driest && moisture <= wettest
    ? { width: 6.031 - 0.215 * moisture, thickness: 5.062 - 0.181 * moisture }
    : undefined;

/** Share of its depth that a stick loses from one moisture to another, percent both; negative when it swells. Same paper. */
export const shareLost = (from: number, to: number): number | undefined => {
  const [was, is] = [shrunkFromGreen(from), shrunkFromGreen(to)];
  return was && is ? (is.width - was.width) / (100 - was.width) : undefined;
};

/** A cut rafter as drying sees it: depth of the stick, seat (level), height over the plate (plumb), rise over run. */
export type CutForDrying = {
  readonly depth: number;
  readonly seat: number;
  readonly heightAbovePlate: number;
  readonly m: number;
};

/** What drying does to a rafter that was cut before: see `driedCut`. Inches. */
export type Dried = {
  /** Level, at the bottom of the plumb cut. */
  readonly open: number;
  /** Top edge lower over the plate. */
  readonly low: number;
  /** Between seat and plate at the seat's inner edge. */
  readonly seat: number;
  /** Heel cut farther from the plumb cut, along the slope. */
  readonly long: number;
};

/**
 * A board that loses a share of its depth keeps the run of each cut along it: every corner moves square toward the top
 * edge. The plumb cut grows steeper and opens at the bottom by D·m·share/g, the top edge sits low by share·height above the
 * plate, the seat opens at its inner edge by s·m·share/g², and the heel cut moves out. Geometry, ours.
 */
export const driedCut = ({ depth, seat, heightAbovePlate, m }: CutForDrying, share: number): Dried => {
  const g = Math.sqrt(1 + m * m);
  return {
    open: (depth * m * share) / g,
    low: heightAbovePlate * share,
    seat: (seat * m * share) / (g * g),
    long: (heightAbovePlate * m * share) / g,
  };
};

/**
 * Level gap at the top (+) or bottom (−) of a plumb cut for slope `cut` on a rafter that lies at slope `lies`, over a depth:
 * D·(m′ − m)/√(1 + m′²), m′ where it lies. One that lies too steep touches with its lower corner and is open at the top; a
 * cut that dried is too steep for where its rafter lies, and open at the bottom. Geometry, ours.
 */
export const openOffSlope = (
  depth: number,
  { cut, lies }: { readonly cut: number; readonly lies: number },
): number => (depth * (lies - cut)) / Math.sqrt(1 + lies * lies);
