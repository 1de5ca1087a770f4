/** Whether two values of plain data say the same: numbers to the last bit, lists in their order, records by their keys. */
export const sameData = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a)) return Array.isArray(b) && sameList(a, b);
  return !Array.isArray(b) && sameRecord(a as Fields, b as Fields);
};

type Fields = Readonly<Record<string, unknown>>;

const sameList = (a: readonly unknown[], b: readonly unknown[]): boolean => {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!sameData(a[i], b[i])) return false;
  return true;
};

const sameRecord = (a: Fields, b: Fields): boolean => {
  let keys = 0;
  for (const key in a) {
    if (!(key in b) || !sameData(a[key], b[key])) return false;
    keys++;
  }
  return keys === Object.keys(b).length;
};
