import type { Import } from './imports';

const asked = (to: string): string => to.replace(/\.(tsx?|css)$/, '');

/** The first ring of files found from each file, as `a → b → a`; none when no file needs itself.
 * What is loaded only when called may close a ring. */
export const ringsIn = (imports: readonly Import[]): readonly string[] => {
  const next = new Map<string, string[]>();
  for (const { from, to, lazy } of imports) {
    if (!lazy) next.set(asked(from), [...(next.get(asked(from)) ?? []), asked(to)]);
  }
  const done = new Set<string>();
  const rings: string[] = [];
  const visit = (file: string, trail: readonly string[]): void => {
    const seen = trail.indexOf(file);
    if (seen >= 0) rings.push([...trail.slice(seen), file].join(' → '));
    if (seen >= 0 || done.has(file)) return;
    for (const other of next.get(file) ?? []) visit(other, [...trail, file]);
    done.add(file);
  };
  for (const file of next.keys()) visit(file, []);
  return rings;
};
