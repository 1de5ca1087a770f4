import { woodOf, type Wood } from './wood';

/** Dressed dry softwood, actual inches: American Softwood Lumber Standard PS 20, from a published reprint of its table (read). */
export type LumberRow = { readonly nominal: string; readonly thickness: number; readonly depth: number };

export const lumber: readonly LumberRow[] = [
  { nominal: '2×4', thickness: 1.5, depth: 3.5 },
  { nominal: '2×6', thickness: 1.5, depth: 5.5 },
  { nominal: '2×8', thickness: 1.5, depth: 7.25 },
  { nominal: '2×10', thickness: 1.5, depth: 9.25 },
  { nominal: '2×12', thickness: 1.5, depth: 11.25 },
];

/** What a section is called at the yard, or its size when it has no name. */
export const nominalOf = ({
  thickness,
  depth,
}: {
  readonly thickness: number;
  readonly depth: number;
}): string =>
  lumber.find((row) => row.thickness === thickness && row.depth === depth)?.nominal ??
  `${thickness}×${depth}`;

/** Weight of an inch of a stick, pounds; sizes in inches. */
export const poundsAnInch = (
  stick: { readonly thickness: number; readonly depth: number },
  { weight }: Wood = woodOf(stick),
): number => (stick.thickness * stick.depth * weight) / 1728;

/** Weight of a straight stick, pounds; sizes in inches. */
export const weightOf = (stick: {
  readonly thickness: number;
  readonly depth: number;
  readonly length: number;
}): number => poundsAnInch(stick) * stick.length;
