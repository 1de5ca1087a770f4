/** Clear distances between neighbouring rafters, in order; inches. Their sum and the rafters make up the length. */
export const clearBays = (stations: readonly number[], thickness: number): readonly number[] =>
  stations.slice(1).map((x, i) => x - (stations[i] as number) - thickness);

/** Equal bays counted together, in the order they first come. Told apart at a millionth of an inch: finer is rounding. */
export const differentBays = (
  bays: readonly number[],
): readonly { readonly clear: number; readonly count: number }[] => {
  const groups = new Map<number, { clear: number; count: number }>();
  for (const clear of bays) {
    const key = Math.round(clear * 1e6);
    const so = groups.get(key);
    groups.set(key, { clear: so?.clear ?? clear, count: (so?.count ?? 0) + 1 });
  }
  return [...groups.values()];
};
