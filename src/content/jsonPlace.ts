import { pathText } from './complaint';

const space = /[ \t\r\n]*/y;
const text = /"(?:[^"\\\u0000-\u001f]|\\.)*"/y;
const scalar = /"(?:[^"\\\u0000-\u001f]|\\.)*"|-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

/** No file of ours nests deeper. */
const deepest = 32;

type Scan = { readonly source: string; readonly begins: Map<string, number>; at: number };
type Path = readonly (string | number)[];

/** The line a complaint about a JSON text speaks of, from 1: of the value at the path, else of the nearest thing around it. */
export const lineOf = (source: string, path: string): number => {
  const scan: Scan = { source, begins: new Map(), at: source.startsWith('\uFEFF') ? 1 : 0 };
  const sound = value(scan, []) && rest(scan);
  const place = sound ? (nearest(scan.begins, path) ?? 0) : scan.at;
  return source.slice(0, place).split('\n').length;
};

const nearest = (begins: ReadonlyMap<string, number>, path: string): number | undefined => {
  const around = [...begins].filter(([one]) => one === path || path.startsWith(`${one}.`));
  return around.sort(([a], [b]) => b.length - a.length)[0]?.[1];
};

const take = (scan: Scan, what: RegExp): string | undefined => {
  what.lastIndex = scan.at;
  const found = what.exec(scan.source)?.[0];
  scan.at += found?.length ?? 0;
  return found;
};

/** Past a sign, if that is what comes next. */
const sign = (scan: Scan, one: string): boolean => {
  take(scan, space);
  if (scan.source[scan.at] !== one) return false;
  scan.at += 1;
  return true;
};

const rest = (scan: Scan): boolean => {
  take(scan, space);
  return scan.at === scan.source.length;
};

/** Past a value. False as soon as what stands there cannot stand there; `at` is then the place. */
const value = (scan: Scan, path: Path): boolean => {
  take(scan, space);
  if (!scan.begins.has(pathText(path))) scan.begins.set(pathText(path), scan.at);
  if (path.length > deepest) return false;
  if (sign(scan, '{')) return sign(scan, '}') || members(scan, path);
  if (sign(scan, '[')) return sign(scan, ']') || entries(scan, path);
  return take(scan, scalar) !== undefined;
};

const members = (scan: Scan, path: Path): boolean => {
  do {
    take(scan, space);
    const begin = scan.at;
    const key = take(scan, text);
    if (key === undefined || !sign(scan, ':')) return false;
    const here = [...path, named(key)];
    scan.begins.set(pathText(here), begin);
    if (!value(scan, here)) return false;
  } while (sign(scan, ','));
  return sign(scan, '}');
};

const named = (key: string): string => {
  try {
    return String(JSON.parse(key));
  } catch {
    return key;
  }
};

const entries = (scan: Scan, path: Path): boolean => {
  let i = 0;
  do {
    if (!value(scan, [...path, i])) return false;
    i += 1;
  } while (sign(scan, ','));
  return sign(scan, ']');
};
