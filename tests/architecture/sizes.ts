import ts from 'typescript';
import type { Source } from './files';
import { nodesOf, parse, placeOf } from './syntax';

/** Size budgets, in lines and in parameters. Ours: what a reader takes in at one look. */
export const budget = {
  fileLines: 400,
  medianFileLines: 100,
  functionLines: 60,
  medianFunctionLines: 10,
  positionalParameters: 3,
} as const;

/** A function with a body. `named` tells declared ones from callbacks. */
export type Sized = {
  readonly place: string;
  readonly lines: number;
  readonly parameters: number;
  readonly named: boolean;
};

/** Lines as an editor counts them: a final line break opens no further line. */
export const linesOf = ({ text }: Source): number => text.replace(/\n$/, '').split('\n').length;

const hasBody = (node: ts.Node): node is ts.FunctionLikeDeclaration =>
  ts.isFunctionLike(node) && 'body' in node && node.body !== undefined;

const isNamed = (node: ts.Node): boolean =>
  ts.isFunctionDeclaration(node) ||
  ts.isClassElement(node) ||
  ts.isVariableDeclaration(node.parent) ||
  ts.isPropertyAssignment(node.parent);

/** Every function of a file. */
export const functionsOf = (source: Source): readonly Sized[] => {
  const file = parse(source);
  const lineOf = (position: number): number => file.getLineAndCharacterOfPosition(position).line;
  return nodesOf(file)
    .filter(hasBody)
    .map((node) => ({
      place: placeOf(file, node),
      lines: lineOf(node.getEnd()) - lineOf(node.getStart(file)) + 1,
      parameters: node.parameters.filter(({ name }) => name.getText(file) !== 'this').length,
      named: isNamed(node),
    }));
};

/** The middle value; of an even number of values the lower middle. */
export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? 0;
