import ts from 'typescript';
import bans from './core-bans.json';
import type { Source } from './files';
import { nodesOf, parse, placeOf } from './syntax';

/** What core may not use: anything that differs between engines, days, places or runs. */

const powers: readonly ts.SyntaxKind[] = [
  ts.SyntaxKind.AsteriskAsteriskToken,
  ts.SyntaxKind.AsteriskAsteriskEqualsToken,
];

/** An identifier that reads a variable, rather than naming a property, a key, a type or a declaration. */
const readsVariable = (node: ts.Identifier): boolean => {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isQualifiedName(parent) || ts.isTypeReferenceNode(parent)) return true;
  return ts.isExpression(node) && !(isNaming(parent) && parent.name === node);
};

const isNaming = (node: ts.Node): node is ts.Node & { readonly name: ts.Node } =>
  'name' in node && !ts.isShorthandPropertyAssignment(node);

const bannedWord = (node: ts.Node): string | undefined => {
  if (ts.isBinaryExpression(node) && powers.includes(node.operatorToken.kind)) return '**';
  if (ts.isPropertyAccessExpression(node) && bans.members.includes(node.name.text)) return node.name.text;
  if (!ts.isIdentifier(node) || !readsVariable(node)) return undefined;
  if (node.text === 'Math') return mathWord(node);
  return bans.globals.includes(node.text) ? node.text : undefined;
};

/** Math is welcome for its exact operations, each named where it is used. */
const mathWord = ({ parent }: ts.Identifier): string | undefined => {
  if (!ts.isPropertyAccessExpression(parent)) return 'Math without a name';
  return bans.allowedMath.includes(parent.name.text) ? undefined : `Math.${parent.name.text}`;
};

/** Each banned word of a file with its place. */
export const bannedIn = (source: Source): readonly string[] => {
  const file = parse(source);
  return nodesOf(file).flatMap((node) => {
    const word = bannedWord(node);
    return word === undefined ? [] : [`${placeOf(file, node)} ${word}`];
  });
};
