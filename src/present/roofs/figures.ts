import type { Turn } from '../../core/roof/figuredSlants';
import { fractionText } from '../../core/units/fraction';
import { degreesOf } from '../degrees';
import type { RoofMessages } from '../words/roofMessages';
import { lengthText, measureOf, type Units } from '../words/numbers';

/** Figures of a roof with their names: exact in inches or degrees, rounded only in their text. */

export type FigureKey = keyof RoofMessages['roofs']['figure'];

export type Figure = {
  readonly key: FigureKey;
  readonly name: string;
  /** As a tape reads it: inches and sixteenths, or millimeters. */
  readonly text: string;
  /** The same in feet and inches, from 24 in up. */
  readonly feet?: string;
  /** Exact: one length, or several. */
  readonly inches?: number;
  readonly list?: readonly number[];
  readonly degrees?: number;
};

/** What a text is told in. */
export type Told = { readonly words: RoofMessages; readonly units: Units };

/** `160 3/16"`: whole inches without feet, as they are marked with a tape. */
export const tapeText = (inches: number, units: Units): string => {
  const { fraction, plain } = measureOf(inches, { units });
  return plain ?? `${fractionText(fraction)}"`;
};

/** What the core says in decimal inches, as a tape reads it: `1.962 in deep` → `1 15/16" deep`. Slopes in 12 stay. */
export const tapedText = (text: string, units: Units): string =>
  text.replace(/(\d+(?:\.\d+)?) (?:in|pulg)(?! \d)(?=[\s,;:.)]|$)/g, (_, inches: string) =>
    tapeText(Number(inches), units),
  );

/** `26.6°`. Which way it turns is for its name to say. */
export const degreesText = (turn: Turn): string =>
  `${(Math.round(Math.abs(degreesOf(turn)) * 10) / 10).toFixed(1)}°`;

export const lengthFigure = ({ words, units }: Told, key: FigureKey, inches: number): Figure => ({
  key,
  name: words.roofs.figure[key],
  text: tapeText(inches, units),
  ...(units === 'feet' && Math.abs(inches) >= 24 && { feet: lengthText(inches, units) }),
  inches,
});

export const listFigure = ({ words, units }: Told, key: FigureKey, list: readonly number[]): Figure => ({
  key,
  name: words.roofs.figure[key],
  text: list.map((one) => tapeText(one, units)).join(' · '),
  list,
});

export const angleFigure = ({ words }: Told, key: FigureKey, turn: Turn): Figure => ({
  key,
  name: words.roofs.figure[key],
  text: degreesText(turn),
  degrees: degreesOf(turn),
});

export const textFigure = ({ words }: Told, key: FigureKey, text: string): Figure => ({
  key,
  name: words.roofs.figure[key],
  text,
});

/** Lengths of an object's keys, those that it has and that are more or less than nothing. */
export const lengthsOf = <K extends string>(
  told: Told,
  from: Readonly<Partial<Record<K, number>>>,
  keys: readonly (readonly [FigureKey, K])[],
): readonly Figure[] =>
  keys.flatMap(([key, name]) => {
    const inches = from[name];
    return inches === undefined || inches === 0 ? [] : [lengthFigure(told, key, inches)];
  });
