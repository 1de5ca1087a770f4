/** A length on a tape: whole inches and sixteenths in lowest terms. `num` 0 when it is on the inch. */
export type Fraction = {
  readonly sign: 1 | -1;
  readonly whole: number;
  readonly num: number;
  readonly den: number;
};

/** To the nearest division of a tape, sixteenths unless said. Halves go away from zero. */
export const toFraction = (inches: number, division = 16): Fraction => {
  const ticks = Math.round(Math.abs(inches) * division);
  const whole = Math.floor(ticks / division);
  const [num, den] = lowest(ticks - whole * division, division);
  return { sign: inches < 0 && ticks > 0 ? -1 : 1, whole, num, den };
};

const lowest = (num: number, den: number): readonly [number, number] =>
  num > 0 && num % 2 === 0 && den % 2 === 0 ? lowest(num / 2, den / 2) : [num, num === 0 ? 1 : den];

/** Back to inches. */
export const fromFraction = ({ sign, whole, num, den }: Fraction): number => sign * (whole + num / den);

/** As a carpenter writes it, without the inch mark: `5`, `1/2`, `12 3/16`. */
export const fractionText = ({ sign, whole, num, den }: Fraction): string => {
  const text = num === 0 ? `${whole}` : whole === 0 ? `${num}/${den}` : `${whole} ${num}/${den}`;
  return sign < 0 ? `-${text}` : text;
};
