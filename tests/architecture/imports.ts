import { posix } from 'node:path';
import ts from 'typescript';
import type { Source } from './files';
import { nodesOf, parse } from './syntax';

/** One file asking for another, or for a package. Types count like values; `lazy` is asked for only when called. */
export type Import = { readonly from: string; readonly to: string; readonly lazy?: true };

const specifierOf = (node: ts.Node): ts.Expression | undefined => {
  if (ts.isImportDeclaration(node)) return node.moduleSpecifier;
  if (ts.isExportDeclaration(node)) return node.moduleSpecifier;
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    return node.arguments[0];
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
    const { literal } = node.argument;
    return ts.isStringLiteral(literal) ? literal : undefined;
  }
  return undefined;
};

/** Relative specifiers become paths from the top; packages and node: modules stay as they are written. */
const target = (from: string, specifier: string): string =>
  specifier.startsWith('.') ? posix.join(posix.dirname(from), specifier) : specifier;

/** Everything a file imports: statements, re-exports, `import()` and `import('…').Type`. */
export const importsOf = (source: Source): readonly Import[] =>
  nodesOf(parse(source)).flatMap((node) => {
    const specifier = specifierOf(node);
    return specifier && ts.isStringLiteralLike(specifier)
      ? [
          {
            from: source.path,
            to: target(source.path, specifier.text),
            ...(ts.isCallExpression(node) ? { lazy: true } : {}),
          },
        ]
      : [];
  });
