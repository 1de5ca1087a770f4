/** A stretch of a scale, inches: what should be in sight, and where it is read. */
export type Span = { readonly low: number; readonly high: number; readonly read: number };

export type Scales = { readonly least: number; readonly most: number };

/** Pixels to an inch, and the reading at which the picture starts. */
export type Slid = { readonly k: number; readonly start: number };

/**
 * As large as lets all of a span be seen, within the scales. Where even the least is too large the picture slides along
 * the scale until the place that is read stands in its middle: a sixteenth can always be judged.
 */
export const slidTo = (pixels: number, { low, high, read }: Span, { least, most }: Scales): Slid => {
  const k = Math.min(most, Math.max(least, pixels / (high - low)));
  const seen = pixels / k;
  const start =
    seen >= high - low
      ? low - (seen - (high - low)) / 2
      : Math.min(high - seen, Math.max(low, read - seen / 2));
  return { k, start };
};
