/** Whether two values of plain data say the same: numbers to the last bit, lists in their order, records by their keys. */
export const sameData = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [one, other] = [a as Readonly<Record<string, unknown>>, b as Readonly<Record<string, unknown>>];
  let keys = 0;
  for (const key in one) {
    if (!(key in other) || !sameData(one[key], other[key])) return false;
    keys++;
  }
  return keys === Object.keys(other).length;
};
