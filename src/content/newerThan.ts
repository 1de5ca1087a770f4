import { complaint, type Read } from './complaint';
import { at, said } from './shape';

/** A file of a later version of a format, told so; undefined where it is not one. */
export const newerThan = (known: string, value: unknown): Read<never> | undefined => {
  const found = at(value, ['format']);
  const [name, version] = known.split('@');
  if (typeof found !== 'string' || !found.startsWith(`${name}@`)) return undefined;
  const made = found.slice(`${name}@`.length);
  return /^\d{1,6}$/.test(made) && Number(made) > Number(version)
    ? {
        ok: false,
        complaints: [complaint('format', ['newer', said(found)], ['these', `"${known}"`])],
      }
    : undefined;
};
