import type { ToolId } from '../../instruments/tool';
import type { Standing } from '../standing';

/** Where and with what a reading is taken. `from` is how the tool is held, where that makes a difference: see `Hold`. */
export type Reach = { readonly tool: ToolId; readonly at: string; readonly from?: string };

/** What a tool shows at a place before its noise; undefined where it cannot show anything. */
export type Reader = (standing: Standing, at: string, from: string | undefined) => Shown;
export type Shown = number | string | undefined;

/** One kind of place: what its name looks like, and what is read there from the parts of the name. */
export type Row = readonly [
  RegExp,
  (standing: Standing, found: readonly string[], from: string | undefined) => Shown,
];

/** The first row whose pattern fits the place reads it. */
export const firstOf =
  (rows: readonly Row[]): Reader =>
  (standing, at, from) => {
    for (const [pattern, read] of rows) {
      const found = pattern.exec(at);
      if (found) return read(standing, found.slice(1), from);
    }
    return undefined;
  };

/** A row for a tool that is held one way only. */
export const plain = (
  pattern: RegExp,
  read: (standing: Standing, found: readonly string[]) => Shown,
): Row => [pattern, (standing, found, from) => (from === undefined ? read(standing, found) : undefined)];
