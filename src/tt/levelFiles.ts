import { existsSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { complaint, type Read } from '../content/complaint';
import { parseLevel } from '../content/readLevel';
import type { Level } from '../core/level/level';
import { readFile } from './readFile';

/** Where the course lies, seen from this file: the same wherever the command is started. */
const course = fileURLToPath(new URL('../../levels/', import.meta.url));

/** Every level file of the course, in the order of their paths. Schemas and roofs as examples lie beside them and are none. */
export const courseFiles = (): readonly string[] =>
  readdirSync(course, { recursive: true, encoding: 'utf8' })
    .filter(
      (name) => name.endsWith('.json') && !name.endsWith('.schema.json') && !name.startsWith('examples'),
    )
    .map((name) => relative(process.cwd(), join(course, name)))
    .sort();

/** A level by its id or by the path of its file. */
export const loadLevel = (idOrPath: string): Read<Level> => {
  const path = existsSync(idOrPath)
    ? idOrPath
    : courseFiles().find((file) => file.endsWith(`/${idOrPath}.json`));
  if (path === undefined)
    return {
      ok: false,
      complaints: [
        complaint('$', `there is no level ${idOrPath}`, `an id of the course, or the path of a level file`),
      ],
    };
  const text = readFile(path);
  return text.ok ? parseLevel(text.value) : text;
};
