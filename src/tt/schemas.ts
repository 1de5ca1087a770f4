import { writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { jsonSchemas } from '../content/jsonSchemas';
import type { Verb } from './verbs';

/** Where editors find the formats, seen from this file: the same wherever the command is started. */
const folder = new URL('../../levels/', import.meta.url);

/** `schemas`: writes the JSON Schemas of roofs and levels anew and names the files. */
export const schemasVerb: Verb = (args) => {
  if (args.length > 0) {
    process.stderr.write('tt schemas: takes nothing after it\n');
    return 2;
  }
  for (const [name, text] of Object.entries(jsonSchemas())) {
    const path = fileURLToPath(new URL(name, folder));
    writeFileSync(path, text);
    process.stdout.write(`${JSON.stringify({ wrote: relative(process.cwd(), path) })}\n`);
  }
  return 0;
};
