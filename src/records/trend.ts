/** How totals moved: the later half of the runs against the earlier half, and how far that difference may be off by chance. */
export type Trend = {
  /** Points. */
  readonly change: number;
  /** Standard error of the change, points. */
  readonly band: number;
  readonly says: 'better' | 'worse' | 'unclear';
};

/** One run in its turn: its total, and the standard error of one run on its level, points. */
export type Turn = { readonly total: number; readonly error: number | undefined };

/** Fewer runs say nothing of a person. */
export const leastRuns = 4;

/** Undefined for too few runs, or where the error of one run is not known. With an odd count the middle run is in neither half. */
export const trendOf = (turns: readonly Turn[]): Trend | undefined => {
  if (turns.length < leastRuns || turns.some(({ error }) => error === undefined)) return undefined;
  const half = Math.floor(turns.length / 2);
  const early = turns.slice(0, half);
  const late = turns.slice(-half);
  const change = meanOf(late.map(({ total }) => total)) - meanOf(early.map(({ total }) => total));
  const spread = [...early, ...late].reduce((sum, { error = 0 }) => sum + error * error, 0);
  const band = Math.sqrt(spread) / half;
  return { change, band, says: Math.abs(change) <= band ? 'unclear' : change > 0 ? 'better' : 'worse' };
};

/** The mean of one or more figures. */
export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
