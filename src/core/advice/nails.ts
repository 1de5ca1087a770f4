/** Nails of fastening tables, inches. */
export type NailName =
  | '8d common'
  | '10d common'
  | '16d common'
  | '8d box'
  | '10d box'
  | '16d box'
  | '3 in × 0.131'
  | '3 in staple'
  | '8d'
  | '10d';

export type NailSize = {
  readonly size: string;
  readonly length: number;
  readonly diameter: number;
  readonly perPound?: number;
};

/** Common nails: a university's open text on building, nail size chart (read). Count is of a pound; some were not told. */
export const commonNails: readonly NailSize[] = [
  { size: '6d', length: 2, diameter: 0.113 },
  { size: '8d', length: 2.5, diameter: 0.131, perPound: 106 },
  { size: '10d', length: 3, diameter: 0.148, perPound: 74 },
  { size: '12d', length: 3.25, diameter: 0.148 },
  { size: '16d', length: 3.5, diameter: 0.162, perPound: 46 },
  { size: '20d', length: 4, diameter: 0.192, perPound: 29 },
  { size: '40d', length: 5, diameter: 0.225 },
  { size: '60d', length: 6, diameter: 0.262 },
];

/** Whole pounds to buy for so many common nails. Undefined where no count of a pound was read. */
export const poundsOfNails = (count: number, size: string): number | undefined => {
  const row = commonNails.find((nail) => nail.size === size);
  return row?.perPound === undefined ? undefined : Math.ceil(count / row.perPound);
};
