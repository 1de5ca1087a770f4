/** The part of a schema's own description that leads from an object to the keys it accepts. */
type Def = {
  readonly type: string;
  readonly shape?: Readonly<Record<string, Described>>;
  readonly innerType?: Described;
  readonly element?: Described;
  readonly options?: readonly Described[];
};
type Described = { readonly _zod: { readonly def: unknown } };

/** Keys that a schema accepts at a path, for telling somebody whose key is not one of them. Empty where it has none. */
export const keysAt = (schema: Described, path: readonly PropertyKey[]): readonly string[] => {
  const { type, shape, innerType, element, options } = schema._zod.def as Def;
  const [first, ...rest] = path;
  if (innerType) return keysAt(innerType, path);
  if (options) return [...new Set(options.flatMap((option) => keysAt(option, path)))];
  if (type === 'array' && element && first !== undefined) return keysAt(element, rest);
  if (!shape) return [];
  if (first === undefined) return Object.keys(shape);
  const next = shape[String(first)];
  return next ? keysAt(next, rest) : [];
};
