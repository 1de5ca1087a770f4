import ts from 'typescript';
import type { Source } from './files';

/** The source parsed on its own, without types: enough to see imports, functions and names. */
export const parse = ({ path, text }: Source): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);

/** Every node of a tree, parents before children. */
export const nodesOf = (root: ts.Node): readonly ts.Node[] => {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    found.push(node);
    ts.forEachChild(node, visit);
  };
  visit(root);
  return found;
};

/** A place a person can jump to: path and line. */
export const placeOf = (file: ts.SourceFile, node: ts.Node): string =>
  `${file.fileName}:${file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1}`;
