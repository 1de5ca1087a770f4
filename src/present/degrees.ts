/** Angle of a rise over a run, degrees. The core has none: these functions differ from engine to engine in the last bit. */
export const degreesOf = ({ rise, run }: { readonly rise: number; readonly run: number }): number =>
  (Math.atan2(rise, run) * 180) / Math.PI;
