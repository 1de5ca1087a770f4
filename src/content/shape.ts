import * as z from 'zod/mini';
import { complaint, type Complaint, type Read } from './complaint';

/** Puts a value through a schema and words what is wrong so that a person can mend it. */
export const readShape = <T>(schema: z.ZodMiniType<T>, value: unknown): Read<T> => {
  const parsed = z.safeParse(schema, value);
  if (parsed.success) return { ok: true, value: parsed.data };
  return { ok: false, complaints: parsed.error.issues.flatMap((issue) => worded(issue as Issue, value)) };
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
};

const pathText = (path: readonly PropertyKey[]): string =>
  path.length === 0 ? '$' : path.map(String).join('.');

const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (inner, key) =>
      typeof inner === 'object' && inner !== null ? (inner as Record<PropertyKey, unknown>)[key] : undefined,
    value,
  );

const worded = (issue: Issue, value: unknown): readonly Complaint[] => {
  if (issue.code === 'unrecognized_keys')
    return (issue.keys ?? []).map((key) =>
      complaint(pathText([...issue.path, key]), 'is not a key here', 'only the keys of the format'),
    );
  const found = at(value, issue.path);
  const wrong = found === undefined ? 'is missing' : `is ${said(found)}`;
  return [complaint(pathText(issue.path), wrong, acceptedBy(issue))];
};

/** What was found, short enough for a line. */
export const said = (value: unknown): string => {
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
};

const names: Readonly<Record<string, string>> = {
  object: 'an object',
  array: 'a list',
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
};

const acceptedBy = (issue: Issue): string => {
  switch (issue.code) {
    case 'invalid_value':
      return (issue.values ?? []).map((v) => JSON.stringify(v)).join(', ');
    case 'too_small':
      return bound(issue, 'at least', issue.minimum);
    case 'too_big':
      return bound(issue, 'at most', issue.maximum);
    case 'invalid_union':
      return [...new Set((issue.errors ?? []).flat().map(acceptedBy))].join(' or ');
    case 'invalid_format':
      return issue.pattern ? `a text like ${issue.pattern}` : 'another form of text';
    default:
      return names[issue.expected ?? ''] ?? issue.expected ?? 'another value';
  }
};

const bound = ({ inclusive, origin }: Issue, word: string, limit: number | undefined): string => {
  const what = origin === 'array' ? ' entries' : origin === 'string' ? ' characters' : '';
  return inclusive === false
    ? `${word === 'at least' ? 'more than' : 'less than'} ${limit}${what}`
    : `${word} ${limit}${what}`;
};
