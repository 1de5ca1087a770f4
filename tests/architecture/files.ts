import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's own folder, with a trailing slash. */
export const top = fileURLToPath(new URL('../../', import.meta.url));

/** One file of the project: its path from the top with forward slashes, and its text. */
export type Source = { readonly path: string; readonly text: string };

const notOurs = new Set(['node_modules', 'dist', 'coverage', '.git', '.cache']);

const walk = (folder: string): readonly string[] =>
  readdirSync(join(top, folder), { withFileTypes: true }).flatMap((entry) => {
    if (notOurs.has(entry.name)) return [];
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    return entry.isDirectory() ? walk(path) : [path];
  });

const readSource = (path: string): Source => ({ path, text: readFileSync(join(top, path), 'utf8') });

/** Every file under a folder whose name ends in one of the endings, committed or not. */
export const sourcesIn = (folder: string, endings: readonly string[]): readonly Source[] =>
  walk(folder)
    .filter((path) => endings.some((ending) => path.endsWith(ending)))
    .sort()
    .map(readSource);

/** What git keeps; where there is no git (an unpacked archive), everything that is not built or installed. */
export const keptPaths = (): readonly string[] => {
  if (!existsSync(join(top, '.git'))) return walk('').map((path) => path.split(sep).join('/'));
  const list = execFileSync('git', ['ls-files', '-z'], { cwd: top, encoding: 'utf8' });
  return list.split('\0').filter((path) => path !== '' && existsSync(join(top, path)));
};

const notText = /\.(png|jpg|woff2|ico|zip|mp3)$/;

/** The text files among what is kept. */
export const keptTexts = (): readonly Source[] =>
  keptPaths()
    .filter((path) => !notText.test(path))
    .map(readSource);
