import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { jsonSchemas } from '../../src/content/jsonSchemas';

describe('the JSON Schemas beside the levels', () => {
  // Written by `npm run -s tt -- schemas`.
  it.each(Object.entries(jsonSchemas()))('%s is what the reader holds files to', (name, text) => {
    expect(JSON.parse(readFileSync(`levels/${name}`, 'utf8'))).toEqual(JSON.parse(text));
  });

  it('tells what every key of a roof is for', () => {
    const roof = JSON.parse(jsonSchemas()['roof.schema.json'] ?? '') as Described;
    const silent = (schema: Described, path: string): readonly string[] => [
      ...((schema.description ?? schema.properties) ? [] : [path]),
      ...Object.entries(schema.properties ?? {}).flatMap(([key, inner]) => silent(inner, `${path}.${key}`)),
    ];
    expect(silent(roof, '$')).toEqual([]);
  });
});

type Described = { readonly description?: string; readonly properties?: Readonly<Record<string, Described>> };
