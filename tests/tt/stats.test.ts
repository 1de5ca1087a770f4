import { describe, expect, it } from 'vitest';
import {
  aucOf,
  errorOfMeasurement,
  intraclass,
  mean,
  ranks,
  spearman,
  standardDeviation,
} from '../../src/tt/prove/stats';

describe('the statistics of the proofs', () => {
  // Shrout and Fleiss, Psychological Bulletin 86 (1979), tables 2 to 4 (from memory): six subjects, four judges.
  const judged = [
    [9, 2, 5, 8],
    [6, 1, 3, 2],
    [8, 4, 6, 8],
    [7, 1, 2, 6],
    [10, 5, 6, 9],
    [6, 2, 4, 7],
  ];

  it('agree with the published intraclass correlations, 0.29 and 0.62', () => {
    expect(intraclass(judged).single).toBeCloseTo(0.29, 2);
    expect(intraclass(judged).mean).toBeCloseTo(0.62, 2);
  });

  // Their mean squares to more places, from the sums: BMS 11.2417, JMS 32.4861, EMS 1.0194.
  it('agree with them by hand', () => {
    const [bms, jms, ems] = [56.208333 / 5, 97.458333 / 3, 15.291667 / 15];
    expect(intraclass(judged).single).toBeCloseTo((bms - ems) / (bms + 3 * ems + (4 * (jms - ems)) / 6), 6);
    expect(intraclass(judged).mean).toBeCloseTo((bms - ems) / (bms + (jms - ems) / 6), 6);
  });

  it('find perfect agreement where every judge says the same', () => {
    const same = [1, 4, 9].map((v) => [v, v, v]);
    expect(intraclass(same).single).toBeCloseTo(1, 12);
    expect(intraclass(same).mean).toBeCloseTo(1, 12);
  });

  // Judges who differ only in how strict they are do not agree: BMS 3, JMS 75, EMS 0, n = k = 3: 3/(3 + 3·75/3).
  it('count strictness as disagreement', () => {
    const strict = [
      [1, 6, 11],
      [2, 7, 12],
      [3, 8, 13],
    ];
    expect(intraclass(strict).single).toBeCloseTo(3 / 78, 12);
    expect(intraclass(strict).mean).toBeCloseTo(3 / (3 + 75 / 3), 12);
  });

  // A textbook's example, ten people's test scores and hours of television (from memory): −29/165.
  it('agree with the published rank correlation', () => {
    const iq = [106, 86, 100, 101, 99, 103, 97, 113, 112, 110];
    const hours = [7, 0, 27, 50, 28, 29, 20, 12, 6, 17];
    expect(spearman(iq, hours)).toBeCloseTo(-29 / 165, 12);
  });

  it('give equals the mean of their ranks', () => {
    expect(ranks([10, 20, 10, 5])).toEqual([2.5, 4, 2.5, 1]);
    expect(ranks([7, 7, 7])).toEqual([2, 2, 2]);
  });

  // The textbook's race of six tortoises and six hares (from memory): they come in T H H H H H T T T T T H. Hares that a
  // tortoise beat, added up, are 11 of 36; the other way round 25.
  it('agree with the published U', () => {
    const finish = [...'THHHHHTTTTTH'];
    const places = (who: string): readonly number[] => finish.flatMap((one, i) => (one === who ? [-i] : []));
    expect(aucOf(places('T'), places('H'))).toBeCloseTo(11 / 36, 12);
    expect(aucOf(places('H'), places('T'))).toBeCloseTo(25 / 36, 12);
  });

  // Pairs by hand: of 3 × 2, 3 beats 1 and 2, 2 beats 1 and ties 2, 1 ties 1: 2 + 1.5 + 0.5.
  it('count an equal pair as half', () => {
    expect(aucOf([3, 2, 1], [1, 2])).toBeCloseTo(4 / 6, 12);
    expect(aucOf([5, 5], [5, 5])).toBe(0.5);
  });

  // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, squares 32; over n − 1 = 7.
  it('take the deviation of a sample', () => {
    const eight = [2, 4, 4, 4, 5, 5, 7, 9];
    expect(mean(eight)).toBe(5);
    expect(standardDeviation(eight)).toBeCloseTo(Math.sqrt(32 / 7), 12);
  });

  // The usual example of test manuals: SD 15 and reliability 0.91 give 4.5.
  it('take the error of measurement', () => {
    expect(errorOfMeasurement(15, 0.91)).toBeCloseTo(4.5, 12);
  });
});
