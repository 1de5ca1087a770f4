import { hair } from '../units/hair';

/** What a row of rafters is laid out from. Inches. */
export type Row = {
  readonly length: number;
  readonly spacing: number;
  readonly thickness: number;
  readonly datum: 'endA' | 'endB' | 'centre';
  /** Left free at both ends; nothing unless said. */
  readonly clearance?: number;
};

/**
 * Rafter centres from end A. The first and last sit flush with the gables; inner ones are measured from the datum, and one
 * that would stand closer than two thicknesses to a flush one, centre to centre, is left out.
 */
export const stations = (row: Row): readonly number[] => {
  const first = row.thickness / 2 + (row.clearance ?? 0);
  const last = row.length - first;
  const clear = 2 * row.thickness - hair;
  const inner = innerMarks(row).filter((x) => x - first >= clear && last - x >= clear);
  return last > first ? [first, ...inner, last] : [first];
};

/** Each mark is a multiple of the spacing from the datum, never a sum of bays: nothing adds up along a long roof. */
export const innerMarks = ({
  length,
  spacing,
  datum,
}: Pick<Row, 'length' | 'spacing' | 'datum'>): readonly number[] => {
  if (datum === 'centre') return fromCentre(length, spacing);
  const marks = Array.from({ length: Math.floor(length / spacing) }, (_, i) => (i + 1) * spacing);
  return datum === 'endA' ? marks : marks.map((x) => length - x).reverse();
};

const fromCentre = (length: number, spacing: number): readonly number[] => {
  const half = Math.floor(length / 2 / spacing);
  return Array.from({ length: 2 * half + 1 }, (_, i) => length / 2 + (i - half) * spacing);
};
