import { inch, type Inch } from './inch';

/** Rise over run, never an angle. Both in inches, run usually 12. */
export type Slope = { readonly rise: number; readonly run: number };

/** Rise for each inch of run. */
export const gradient = ({ rise, run }: Slope): number => rise / run;

/** Length along the slope over a level distance. */
export const along = ({ rise, run }: Slope, level: Inch): Inch =>
  inch((level * Math.sqrt(rise * rise + run * run)) / run);
