import { measureOf, lengthText, spokenLength, type Units } from '../present/words/numbers';
import type { Messages } from '../present/words/messages';

/** A length as a picture: whole inches and a stacked fraction, spoken as words. */
export const Measure = ({
  inches,
  units,
  words,
  feet = false,
}: {
  readonly inches: number;
  readonly units: Units;
  readonly words: Messages;
  readonly feet?: boolean;
}) => {
  const { feet: ft, fraction, plain } = measureOf(inches, { units, feet });
  if (plain !== undefined) return <span class="tn length">{plain}</span>;
  const { sign, whole, num, den } = fraction;
  return (
    <span class="tn length">
      <span class="hidden">{feet ? lengthText(inches, units) : spokenLength(words, inches)}</span>
      <span aria-hidden="true">
        {sign < 0 ? '−' : ''}
        {ft > 0 ? `${ft}' ` : ''}
        {whole > 0 || num === 0 ? whole : ''}
        {num > 0 && (
          <span class="frac">
            <span>{num}</span>
            <span>{den}</span>
          </span>
        )}
        {'"'}
      </span>
    </span>
  );
};
