/** Published limits that a plan may break and still be figured, with a caution. Inches unless said. */
export const limits = {
  /** Share of the rafter's depth a notch at its bearing may take. IRC R802.7.1, read second hand. */
  notchShare: 1 / 4,
  /** Share of the depth a notch away from the ends may take, and not in the middle third. IRC R802.7.1, read second hand. */
  notchInside: 1 / 6,
  /** Wood left over the overhang. IRC R802.7.1.1, read second hand. */
  tailDepth: 3.5,
  /** Level reach of a cantilevered tail. IRC R802.7.1.1, read second hand. */
  tailReach: 24,
  /** Bearing on wood. IRC R802.6, read. */
  bearing: 1.5,
  /** Rise over run: under it the ridge is designed as a beam. IRC R802.4.4, read second hand. */
  boardSlope: 3 / 12,
  /** Actual thickness of a nominal 1 in board, the least a ridge may be. IRC R802.3, read second hand. */
  ridgeThickness: 0.75,
  /** Share of the ridge's height that ties stay under. IRC R802.5.2, read second hand. */
  tieShare: 1 / 3,
  /** Between ties, along the ridge. IRC R802.3.1 up to 2015, read second hand; later editions are said to ask for 24. */
  tieSpacing: 48,
  /** Between collars, along the ridge. IRC R802.4.6, read second hand. */
  collarSpacing: 48,
  /** Depth of a nominal 1×4, the least a collar may be. IRC R802.4.6, read second hand. */
  collarDepth: 3.5,
} as const;
