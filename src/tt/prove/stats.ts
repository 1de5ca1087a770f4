/** The statistics the proofs use, and nothing else. Each is held against a published worked example in its test. */

export const mean = (values: readonly number[]): number => sum(values) / values.length;

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Of a sample: over n − 1. */
export const standardDeviation = (values: readonly number[]): number => {
  const middle = mean(values);
  return Math.sqrt(sum(values.map((v) => (v - middle) * (v - middle))) / (values.length - 1));
};

/** Ranks from 1, equals sharing the mean of theirs. */
export const ranks = (values: readonly number[]): readonly number[] => {
  const order = values.map((value, at) => ({ value, at })).sort((a, b) => a.value - b.value);
  const ranked = new Array<number>(values.length).fill(0);
  for (let from = 0; from < order.length;) {
    let to = from;
    while (to < order.length && order[to]?.value === order[from]?.value) to++;
    for (let i = from; i < to; i++) ranked[order[i]?.at ?? 0] = (from + 1 + to) / 2;
    from = to;
  }
  return ranked;
};

/** Product-moment correlation. */
export const pearson = (xs: readonly number[], ys: readonly number[]): number => {
  const [mx, my] = [mean(xs), mean(ys)];
  const products = sum(xs.map((x, i) => (x - mx) * ((ys[i] ?? 0) - my)));
  const squares = (values: readonly number[], middle: number): number =>
    sum(values.map((v) => (v - middle) * (v - middle)));
  return products / Math.sqrt(squares(xs, mx) * squares(ys, my));
};

/** Spearman's rank correlation, equals ranked alike. */
export const spearman = (xs: readonly number[], ys: readonly number[]): number =>
  pearson(ranks(xs), ranks(ys));

/** The chance that one of the first is over one of the second, equals counting half: Mann and Whitney's U over its most. */
export const aucOf = (higher: readonly number[], lower: readonly number[]): number => {
  const ranked = ranks([...higher, ...lower]).slice(0, higher.length);
  const u = sum(ranked) - (higher.length * (higher.length + 1)) / 2;
  return u / (higher.length * lower.length);
};

export type Agreement = {
  /** One rating, raters drawn from many, every subject rated by each: Shrout and Fleiss's ICC(2,1). */
  readonly single: number;
  /** The mean of as many ratings as there are raters: ICC(2,k). */
  readonly mean: number;
};

/** A row for each subject, a column for each rater, in two ways drawn at random. */
export const intraclass = (rows: readonly (readonly number[])[]): Agreement => {
  const n = rows.length;
  const k = rows[0]?.length ?? 0;
  const grand = mean(rows.flat());
  const columns = Array.from({ length: k }, (_, j) => mean(rows.map((row) => row[j] ?? 0)));
  const off = (values: readonly number[]): number => sum(values.map((v) => (v - grand) * (v - grand)));
  const between = k * off(rows.map(mean));
  const raters = n * off(columns);
  const rest = off(rows.flat()) - between - raters;
  const [bms, jms, ems] = [between / (n - 1), raters / (k - 1), rest / ((n - 1) * (k - 1))];
  return {
    single: (bms - ems) / (bms + (k - 1) * ems + (k * (jms - ems)) / n),
    mean: (bms - ems) / (bms + (jms - ems) / n),
  };
};

/** Standard error of measurement: how far one result lies from what the same person would get on the average. */
export const errorOfMeasurement = (deviation: number, reliability: number): number =>
  deviation * Math.sqrt(1 - reliability);
