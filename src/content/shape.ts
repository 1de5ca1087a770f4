import * as z from 'zod/mini';
import { keysAt } from './schemaKeys';
import { complaint, pathText, type Complaint, type Read } from './complaint';
import type { Counted, Phrase, Said } from './phrase';

/** Puts a value through a schema and words what is wrong so that a person can mend it. */
export const readShape = <T>(schema: z.ZodMiniType<T>, value: unknown): Read<T> => {
  const parsed = z.safeParse(schema, value);
  if (parsed.success) return { ok: true, value: parsed.data };
  const issues = parsed.error.issues as readonly Issue[];
  return {
    ok: false,
    complaints: issues
      .flatMap(innermost)
      .flatMap((issue) => worded(issue, { value, keys: keysAt(schema, issue.path) })),
  };
};

type Issue = {
  readonly code: string;
  readonly path: readonly PropertyKey[];
  readonly keys?: readonly string[];
  readonly values?: readonly unknown[];
  readonly expected?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly inclusive?: boolean;
  readonly origin?: string;
  readonly pattern?: string;
  readonly errors?: readonly (readonly Issue[])[];
  /** What the key may be that tells several shapes apart. */
  readonly options?: readonly unknown[];
  readonly message?: string;
  readonly params?: { readonly accepted?: Phrase };
};

/** Where one choice of several fits but for something inside it, that is what is wrong. */
const innermost = (issue: Issue): readonly Issue[] => {
  const nearly = issue.errors?.find((all) => all.length > 0 && all.every(isInside));
  if (issue.code !== 'invalid_union' || !nearly) return [issue];
  return nearly.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })).flatMap(innermost);
};

const isInside = ({ path, code }: Issue): boolean => path.length > 0 || code === 'unrecognized_keys';

/** What plain data holds at a path, or undefined. */
export const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((inner, key) => {
    if (typeof inner !== 'object' || inner === null || !Object.hasOwn(inner, key)) return undefined;
    if (Array.isArray(inner) && typeof key !== 'number') return undefined;
    return (inner as Record<PropertyKey, unknown>)[key];
  }, value);

/** A path as complaints write it, in keys: `wings.0.at` is the first one's. */
export const keysOf = (path: string): readonly PropertyKey[] =>
  path.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key));

type Found = { readonly value: unknown; readonly keys: readonly string[] };

/** More keys than this are not listed: the line would be longer than anybody reads. */
const mostKeys = 60;

const worded = (issue: Issue, { value, keys }: Found): readonly Complaint[] => {
  if (issue.code === 'unrecognized_keys') {
    const known: Phrase =
      keys.length > 0 && keys.length <= mostKeys ? ['these', keys.join(', ')] : ['onlyKeys'];
    return (issue.keys ?? []).map((key) => complaint(pathText([...issue.path, key]), ['notAKey'], known));
  }
  const found = at(value, issue.path);
  const wrong: Phrase = found === undefined ? ['missing'] : ['found', said(found)];
  return [complaint(pathText(issue.path), wrong, acceptedBy(issue))];
};

/** What was found, short enough for a line. */
export const said = (value: unknown): string => {
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
};

const kinds = ['object', 'array', 'string', 'number', 'int', 'boolean', 'nonoptional'] as const;

/** What the schema library says when a schema brings no words of its own. */
const noWords = 'Invalid input';

const acceptedBy = (issue: Issue): Said => {
  const { message, params } = issue;
  if (params?.accepted) return params.accepted;
  if (message !== undefined && message !== noWords) return message;
  switch (issue.code) {
    case 'invalid_value':
      return ['these', (issue.values ?? []).map((v) => JSON.stringify(v)).join(', ')];
    case 'too_small':
      return [issue.inclusive === false ? 'moreThan' : 'atLeast', ...bound(issue, issue.minimum)];
    case 'too_big':
      return [issue.inclusive === false ? 'lessThan' : 'atMost', ...bound(issue, issue.maximum)];
    case 'invalid_union':
      return optionsOf(issue);
    case 'invalid_format':
      return issue.pattern ? ['textLike', issue.pattern] : ['otherText'];
    default:
      return kindOf(issue.expected);
  }
};

/** Each once. */
const optionsOf = ({ options, errors }: Issue): Phrase => {
  const all = (errors ?? []).flat().map(acceptedBy).flatMap(each);
  const keys = all.map((one) => JSON.stringify(one));
  return [
    'either',
    ...(options ?? []).map((v) => JSON.stringify(v)),
    ...all.filter((_, i) => keys.indexOf(keys[i] ?? '') === i),
  ];
};

const each = (said: Said) => {
  if (typeof said === 'string' || said[0] !== 'either') return [said];
  const [, ...all] = said;
  return all;
};

const kindOf = (expected: string | undefined): Phrase => {
  const kind = kinds.find((one) => one === expected);
  if (kind) return [kind];
  return expected === undefined ? ['otherValue'] : ['these', expected];
};

const bound = ({ origin }: Issue, limit = NaN): [limit: number, of?: Counted] => {
  if (origin === 'array') return [limit, 'entries'];
  return origin === 'string' ? [limit, 'characters'] : [limit];
};
