import { describe, expect, it } from 'vitest';
import { fastenings } from '../../src/core/advice/fastening';
import { footOut, ladderTo, railsOver } from '../../src/core/advice/ladder';
import { boardPounds, peopleFor, weightLimit } from '../../src/core/advice/lifting';
import { commonNails, poundsOfNails } from '../../src/core/advice/nails';
import { airSpace, holesFor, ventArea, ventParts, ventSplit } from '../../src/core/advice/ventilation';
import { strapSteel } from '../../src/core/mechanics/fasteners';
import { jointRows } from '../../src/core/site/jointRows';
import { shareLost, shrunkFromGreen } from '../../src/core/stock/drying';
import { loadConstant } from '../../src/core/stock/lift';
import { lumber } from '../../src/core/stock/lumber';

/** Published figures of vents, nails, lifting, ladders and drying, each held to its own rounding. */

describe('vents', () => {
  // A vent maker's page (read): 20 by 30 ft, 1/150: 4 sq ft, 576 sq in; half at the ridge, 144 an eave.
  it('of an attic of 600 sq ft', () => {
    const area = ventArea(600, 150);
    expect(area).toBeCloseTo(576, 9);
    expect(ventSplit(area)).toEqual({ ridge: 288, eave: 144 });
  });

  // Reckoned from it: 15 bays, 9.6 sq in each; four holes of 2 in or two of 2 1/2. At 1/300: 288, 72, 4.8.
  it('of its bays', () => {
    const bay = ventSplit(ventArea(600, 150)).eave / 15;
    expect(bay).toBeCloseTo(9.6, 9);
    expect(holesFor(bay, 2)).toBe(4);
    expect(holesFor(bay, 2.5)).toBe(2);
    const less = ventSplit(ventArea(600, 300));
    expect(less.eave).toBeCloseTo(72, 9);
    expect(less.eave / 15).toBeCloseTo(4.8, 9);
  });

  // IRC R806.2 (read second hand): 1/150; 1/300 with 40 to 50 % high and, in zones 6 to 8, a retarder of class I or II.
  it.each([
    [{ climateZone: 5, retarder: false, highShare: 0.4 }, 300],
    [{ climateZone: 5, retarder: false, highShare: 0.5 }, 300],
    [{ climateZone: 5, retarder: false, highShare: 0.39 }, 150],
    [{ climateZone: 5, retarder: false, highShare: 0.51 }, 150],
    [{ climateZone: 6, retarder: false, highShare: 0.45 }, 150],
    [{ climateZone: 6, retarder: true, highShare: 0.45 }, 300],
  ])('by scheme %o: 1/%i', (scheme, parts) => {
    expect(ventParts({ ...scheme, underRidge: 36, lowInBottomThird: true }).parts).toBe(parts);
  });

  // IRC R806.3 (read second hand).
  it('leave an inch over the insulation', () => {
    expect(airSpace).toBe(1);
  });
});

describe('IBC 2018 table 2304.10.1', () => {
  const read = (joint: string) =>
    fastenings
      .filter((row) => row.joint === joint && row.source.document === 'IBC 2018')
      .flatMap(({ ways }) => ways)
      .filter(({ sure }) => sure === 'read')
      .map(({ nails, nail, how }) => `${nails} ${nail}, ${how}`);

  // Roof rows as read in two copies.
  it.each([
    ['blockToPlate', ['3 8d common', '3 10d box', '3 3 in × 0.131', '3 3 in staple'], 'toenail'],
    ['joistToPlate', ['3 8d common', '3 10d box', '3 3 in × 0.131', '3 3 in staple'], 'toenail'],
    ['joistLap', ['3 16d common', '4 10d box', '4 3 in × 0.131', '4 3 in staple'], 'face nail'],
    ['collarToRafter', ['3 10d common', '4 10d box', '4 3 in × 0.131', '4 3 in staple'], 'face nail'],
    [
      'rafterToPlate',
      ['3 10d common', '3 16d box', '4 10d box', '4 3 in × 0.131', '4 3 in staple'],
      'toenail',
    ],
    ['rafterToRidge', ['2 16d common', '3 10d box', '3 3 in × 0.131', '3 3 in staple'], 'end nail'],
    ['joistToRafter', [], 'face nail'],
  ])('%s', (joint, ways, how) => {
    expect(read(joint)).toEqual(ways.map((way) => `${way}, ${how}`));
  });

  it('blocks between rafters, by toenails or end nails', () => {
    expect(read('blockToRafter')).toEqual([
      '2 8d common, toenail',
      '2 3 in × 0.131, toenail',
      '2 3 in staple, toenail',
      '2 16d common, end nail',
      '3 3 in × 0.131, end nail',
      '3 3 in staple, end nail',
    ]);
  });

  // What the site asks for before a joint counts as finished is a way of the table that was read.
  it.each([
    ['ridge', 'rafterToRidge', '16d common, end nail'],
    ['heel', 'rafterToPlate', '10d common, toenail'],
    ['joistPlate', 'joistToPlate', '8d common, toenail'],
    ['blockEnd', 'blockToRafter', '16d common, end nail'],
    ['blockPlate', 'blockToPlate', '8d common, toenail'],
    ['collarEnd', 'collarToRafter', '10d common, face nail'],
  ] as const)('and the site: %s', (kind, joint, nail) => {
    expect(read(joint)).toContain(`${jointRows[kind].full} ${nail}`);
  });

  // A state's residential code text (second hand): 1 1/4 in × 20 ga strap, three 10d common nails each rafter.
  it('and ridge straps', () => {
    expect(jointRows.strap.full / 2).toBe(3);
    expect(strapSteel.width).toBe(1.25);
  });

  // NAVEDTRA 14044 p. 2-38 (read): opposite rafter 2-10d, one each side; collar ties 3-8d each end; hips, jacks, valleys 10d.
  it('and the Navy’s manual', () => {
    const found = fastenings
      .filter(({ source }) => source.document === 'NAVEDTRA 14044')
      .map(({ joint, ways }) => [joint, ways[0]?.nails, ways[0]?.nail]);
    expect(found).toEqual([
      ['collarToRafter', 3, '8d'],
      ['oppositeRafterToRidge', 2, '10d'],
      ['hipToPlate', undefined, '10d'],
      ['jackToHip', undefined, '10d'],
      ['valley', undefined, '10d'],
    ]);
  });
});

// A university's open text, nail size chart (read): counts of a pound.
describe('common nails', () => {
  it.each([
    ['8d', 2.5, 0.131, 106],
    ['10d', 3, 0.148, 74],
    ['16d', 3.5, 0.162, 46],
    ['20d', 4, 0.192, 29],
  ])('%s: %f × %f, %i a pound', (size, length, diameter, perPound) => {
    expect(commonNails).toContainEqual({ size, length, diameter, perPound });
    expect([perPound, perPound + 1].map((count) => poundsOfNails(count, size))).toEqual([1, 2]);
  });

  it.each([
    ['6d', 2, 0.113],
    ['12d', 3.25, 0.148],
    ['40d', 5, 0.225],
    ['60d', 6, 0.262],
  ])('%s: %f × %f, no count read', (size, length, diameter) => {
    expect(commonNails).toContainEqual({ size, length, diameter });
    expect(poundsOfNails(100, size)).toBeUndefined();
  });
});

describe('lifting', () => {
  // NIOSH lifting equation (constant and these parts read). The fixture is reckoned: 51 · 0.667 · 1 · 0.865 = 29.4 lb.
  it('15 in out, from 30 in up, over 40 in', () => {
    expect(weightLimit({ reach: 15, height: 30, travel: 40 })).toBeCloseTo(29.4, 1);
  });

  it('at its best is the constant, 51 lb', () => {
    expect(loadConstant).toBe(51);
    expect(weightLimit({ reach: 10, height: 30, travel: 10 })).toBeCloseTo(51, 9);
  });

  // Reckoned: a 2×10 of 16 ft at 35 lb a cubic foot is about 54 lb, past 51 for one.
  it('a 2×10 of 16 ft takes two', () => {
    const pounds = boardPounds({ ...lumber[3]!, length: 192 });
    expect(Math.round(pounds)).toBe(54);
    expect(peopleFor(pounds)).toBe(2);
  });
});

// 29 CFR 1926.1053 (second hand): rails 3 ft over the landing, foot a quarter of the working length, spliced an eighth.
describe('ladders', () => {
  it('of 16 ft stand 4 ft out, spliced ones 2 ft', () => {
    expect(footOut(16)).toBe(4);
    expect(footOut(16, 'spliced')).toBe(2);
  });

  it('to an eave at 22 ft end at 25 ft or over', () => {
    expect(railsOver).toBe(36);
    expect(ladderTo(22 * 12).railsAt).toBe(25 * 12);
  });
});

// FPL-RP-489 (read): green to 15 % takes 2.80 % of the width and 2.35 % of the thickness; its equations say 2.806 and 2.347.
describe('drying', () => {
  it('to 15 %', () => {
    const at15 = shrunkFromGreen(15)!;
    expect(at15.width).toBeCloseTo(2.806, 3);
    expect(at15.thickness).toBeCloseTo(2.347, 3);
    expect(Math.abs(at15.width - 2.8)).toBeLessThan(0.01);
    expect(Math.abs(at15.thickness - 2.35)).toBeLessThan(0.005);
  });

  // Reckoned from them: 7.5 in green.
  it.each([
    [19, 7.354],
    [15, 7.29],
    [12, 7.241],
    [8, 7.177],
  ])('7 1/2 in green at %i %%: %f', (moisture, width) => {
    expect(7.5 * (1 - shrunkFromGreen(moisture)!.width / 100)).toBeCloseTo(width, 3);
  });

  it('9 1/2 in green at 15 % is the 9 1/4 of PS 20 within 1/32', () => {
    const width = 9.5 * (1 - shrunkFromGreen(15)!.width / 100);
    expect(width).toBeCloseTo(9.233, 3);
    expect(Math.abs(width - 9.25)).toBeLessThan(1 / 32);
  });

  // Reckoned: a piece dressed at 19 % loses so much on its way to 12 and to 8 %.
  it.each([
    [5.5, 0.084, 0.133],
    [7.25, 0.111, 0.175],
    [9.25, 0.142, 0.223],
    [11.25, 0.173, 0.271],
  ])('%f in at 19 %%: %f at 12, %f at 8', (width, to12, to8) => {
    expect(Math.abs(width * shareLost(19, 12)! - to12)).toBeLessThanOrEqual(0.0006);
    expect(Math.abs(width * shareLost(19, 8)! - to8)).toBeLessThanOrEqual(0.0006);
  });
});

// American Softwood Lumber Standard PS 20, a published reprint of its table (read): dry sizes.
it.each([
  ['2×4', 3.5],
  ['2×6', 5.5],
  ['2×8', 7.25],
  ['2×10', 9.25],
  ['2×12', 11.25],
])('a dry %s is 1 1/2 by %f', (nominal, depth) => {
  expect(lumber).toContainEqual({ nominal, thickness: 1.5, depth });
});
