import ts from 'typescript';
import type { Source } from './files';
import { nodesOf, parse, placeOf } from './syntax';

/** File names that say nothing about what is inside. */
const emptyNames = /(^|\/)(utils?|helpers?|types?|constants?|misc|index)\.[^/]*$/i;

/** Paths of code files that are named for nothing in particular. */
export const emptyNamed = (paths: readonly string[]): readonly string[] =>
  paths.filter((path) => /\.(ts|tsx|js)$/.test(path) && emptyNames.test(path));

/** Places where a file only passes on what another one has: the beginning of a barrel. */
export const passingOn = (source: Source): readonly string[] => {
  const file = parse(source);
  return nodesOf(file)
    .filter((node) => ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined)
    .map((node) => placeOf(file, node));
};

const topNames = new Set([
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'vite.config.ts',
  'src',
  'levels',
  'assets',
  'tests',
]);

/** What stands at the top level and has no place there. Dotfiles and dot folders do. */
export const strayAtTop = (paths: readonly string[]): readonly string[] => [
  ...new Set(
    paths
      .map((path) => path.split('/')[0] ?? '')
      .filter((name) => !topNames.has(name) && !name.startsWith('.')),
  ),
];
