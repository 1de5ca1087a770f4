import { encode } from 'uqr';

/** A square code that holds a text, as SVG, in points. Undefined where it holds too much to be scanned from paper. */
export type Code = { readonly svg: string; readonly size: number };

/** Of one module, so that a phone at arm's length and an office printer can do with it; and the most a code may take. Ours. */
const module = 1.05;
const least = 84;
const most = 124;
/** Blank modules around it (ISO/IEC 18004). */
const quiet = 4;

export const codeOf = (text: string, title: string): Code | undefined => {
  const grid = gridOf(text);
  if (!grid) return undefined;
  const cells = grid.length + 2 * quiet;
  const size = Math.max(least, cells * module);
  if (size > most) return undefined;
  const dark = grid.flatMap((row, y) =>
    row.flatMap((on, x) => (on ? [`M${x + quiet} ${y + quiet}h1v1h-1z`] : [])),
  );
  return {
    size,
    svg: `<svg class="code" viewBox="0 0 ${cells} ${cells}" style="width:${size}pt;height:${size}pt" role="img" aria-label="${title}" shape-rendering="crispEdges"><path d="${dark.join('')}"/></svg>`,
  };
};

/** The library throws on more than the largest code holds. */
const gridOf = (text: string): readonly (readonly boolean[])[] | undefined => {
  try {
    return encode(text, { ecc: 'L', border: 0 }).data;
  } catch {
    return undefined;
  }
};
