import { parseLength } from '../../core/units/lengthText';
import { lumber } from '../../core/stock/lumber';
import type { RoofPlan } from '../../core/roof/plan';
import { canonicalText } from '../canonical';
import { complaint, pathText, type Complaint, type Read } from '../complaint';
import { sizeOf, unitsOf, type Units } from '../fileLengths';
import { readRoof } from '../readRoof';
import { at, keysOf } from '../shape';
import { fields, putsOf, styleOf, type Field, type Puts, type Style } from './fields';

/**
 * A crew's own roof while it is typed: every answer as the text it was written in, so that nothing is lost or rounded on the
 * way to a file and back. A length without a mark is in the draft's units.
 */
export type RoofDraft = {
  readonly style: Style;
  readonly units: Units;
  readonly typed: Readonly<Record<string, string>>;
};

type Json = Readonly<Record<string, unknown>>;

/** The fields that are asked now: those of the style, and of what was answered. */
export const askedOf = ({ style, typed }: RoofDraft): readonly Field[] =>
  fields.filter(
    ({ styles, where }) =>
      styles.includes(style) && (where === undefined || where.is.includes(answerOf(typed, where.field))),
  );

/** The answer to a choice: the first of its options until another is picked. */
export const answerOf = (typed: RoofDraft['typed'], id: string): string => {
  const field = fields.find((one) => one.id === id);
  const usual = field?.kind === 'choice' ? Object.keys(field.options)[0] : undefined;
  return typed[id] ?? usual ?? '';
};

/** The roof file that the draft says, right or wrong. */
export const fileOf = (draft: RoofDraft): Json => {
  const puts = askedOf(draft).flatMap((field) => Object.entries(putBy(field, draft.typed)));
  const all: readonly (readonly [string, unknown])[] = [
    ['format', 'tack-and-true/roof@1'],
    ...Object.entries(putsOf[draft.style]),
    ...(draft.units === 'mm' ? ([['units', 'mm']] as const) : []),
    ...puts,
  ];
  return all.reduce<Json>((file, [path, value]) => placed(file, keysOf(path), value) as Json, {});
};

const putBy = (field: Field, typed: RoofDraft['typed']): Puts => {
  const text = (typed[field.id] ?? '').trim();
  if (field.kind === 'choice') return field.options[answerOf(typed, field.id)] ?? {};
  if (field.kind === 'stock') return stockPuts(field.id, typed);
  if (text === '') return {};
  if (field.kind === 'rise') return { [`${field.id}.rise`]: riseOf(text) ?? text, [`${field.id}.run`]: 12 };
  if (field.kind === 'places') return { [field.id]: text.split(/[,;]/).map((place) => place.trim()) };
  return { [field.id]: field.kind === 'count' || field.kind === 'load' ? numberIn(text) : text };
};

const numberIn = (text: string): unknown => (/^\d{1,9}(\.\d{1,3})?$/.test(text) ? Number(text) : text);

/** The 6 of 6 in 12, as a number: `6`, `6 1/2`, `6.5`. */
const riseOf = (text: string): number | undefined => parseLength(text.replace(/ ?(?:"|in\.?)$/, ''));

/** The name of stock that is not in the list. */
export const otherStock = 'other';

const stockPuts = (id: string, typed: RoofDraft['typed']): Puts => {
  const name = typed[id] ?? '';
  if (name === '') return {};
  const row = lumber.find(({ nominal }) => nominal === name);
  const size = (key: 'thickness' | 'depth'): string =>
    row ? `${row[key]}"` : (typed[`${id}.${key}`] ?? '').trim();
  return { [`${id}.thickness`]: size('thickness'), [`${id}.depth`]: size('depth') };
};

/** The same data with a value at the end of a path; lists grow by their items' numbers. */
const placed = (into: unknown, keys: readonly PropertyKey[], value: unknown): unknown => {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  const put = placed(at(into, [key]), rest, value);
  if (typeof key === 'number') return Object.assign(Array.isArray(into) ? [...into] : [], { [key]: put });
  return { ...(typeof into === 'object' && into !== null ? into : {}), [key]: put };
};

/** What is wrong with a draft, or the plan it says. */
export const planOfDraft = (draft: RoofDraft): Read<RoofPlan> => readRoof(fileOf(draft));

/** The field that a complaint is about; undefined where it is about the whole. */
export const fieldAt = (draft: RoofDraft, path: string): Field | undefined =>
  askedOf(draft)
    .filter(({ id }) => path === id || path.startsWith(`${id}.`) || id.startsWith(`${path}.`))
    .sort((a, b) => b.id.length - a.id.length)[0];

/** The draft of a roof file, or what in it this form has no field for. */
export const draftOf = (file: unknown): Read<RoofDraft> => {
  const read = readRoof(file);
  if (!read.ok) return read;
  const json = file as Json;
  const style = styleOf(json);
  if (!style) return no(complaint('kind', ['noForm'], ['askedFor']));
  const units = unitsOf(json);
  const draft = { style, units, typed: typedOf(json, { style, units }) };
  const back = fileOf(draft);
  const again = readRoof(back);
  if (again.ok && canonicalText(again.value) === canonicalText(read.value)) return { ok: true, value: draft };
  return no(complaint(strangerIn(json, back), ['noField'], ['ofTheForm']));
};

const no = (one: Complaint): Read<never> => ({ ok: false, complaints: [one] });

/** The first place of a file that did not come back. */
const strangerIn = (file: Json, back: Json): string => {
  const places = leavesOf(file, []);
  const lost = places.find((path) => at(back, path) === undefined);
  return pathText(lost ?? places.find((path) => at(back, path) !== at(file, path)) ?? []);
};

const leavesOf = (value: unknown, path: readonly PropertyKey[]): readonly (readonly PropertyKey[])[] =>
  typeof value === 'object' && value !== null && Object.keys(value).length > 0
    ? Object.entries(value).flatMap(([key, inner]) =>
        leavesOf(inner, [...path, Array.isArray(value) ? Number(key) : key]),
      )
    : [path];

const typedOf = (file: Json, { style, units }: Pick<RoofDraft, 'style' | 'units'>): RoofDraft['typed'] =>
  Object.fromEntries(
    fields
      .filter(({ styles }) => styles.includes(style))
      .flatMap((field): readonly (readonly [string, string])[] => {
        const value = at(file, keysOf(field.id));
        if (field.kind === 'choice') return [[field.id, optionIn(field.options, file)]];
        if (field.kind === 'stock') return stockTyped(field.id, value, units);
        if (value === undefined) return [];
        if (field.kind === 'rise') return [[field.id, riseIn(value, units)]];
        if (field.kind === 'places')
          return [[field.id, (value as readonly unknown[]).map(String).join(', ')]];
        return [[field.id, String(value)]];
      }),
  );

/** The option whose puts are all in the file; the first that puts nothing is the usual. */
const optionIn = (options: Readonly<Record<string, Puts>>, file: Json): string => {
  const holds = (puts: Puts): boolean =>
    Object.entries(puts).every(
      ([path, value]) => canonicalText(at(file, keysOf(path))) === canonicalText(value),
    );
  const names = Object.keys(options);
  return (
    names.find((name) => Object.keys(options[name] ?? {}).length > 0 && holds(options[name] ?? {})) ??
    names.find((name) => Object.keys(options[name] ?? {}).length === 0) ??
    names[0] ??
    ''
  );
};

const riseIn = (slope: unknown, units: Units): string => {
  const [rise, run] = [sizeOf(at(slope, ['rise']), units), sizeOf(at(slope, ['run']), units)];
  return String(rise === undefined || run === undefined ? '' : run === 12 ? rise : (rise * 12) / run);
};

const stockTyped = (id: string, value: unknown, units: Units): readonly (readonly [string, string])[] => {
  if (value === undefined) return [];
  const [thickness, depth] = (['thickness', 'depth'] as const).map((key) => sizeOf(at(value, [key]), units));
  const row = lumber.find((one) => one.thickness === thickness && one.depth === depth);
  if (row) return [[id, row.nominal]];
  return [
    [id, otherStock],
    [`${id}.thickness`, String(at(value, ['thickness']))],
    [`${id}.depth`, String(at(value, ['depth']))],
  ];
};
