import { describe, expect, it } from 'vitest';
import { adviceOn, type AdviceAsked } from '../../src/core/advice/advice';
import { numberTwo } from '../../src/core/advice/designValues';
import { fastenings, wayText } from '../../src/core/advice/fastening';
import { boardPounds, peopleFor, weightLimit } from '../../src/core/advice/lifting';
import { ladderTo } from '../../src/core/advice/ladder';
import { durations } from '../../src/core/advice/rafterSpan';
import { sourceText } from '../../src/core/advice/source';
import { holesFit, holesFor, ventParts } from '../../src/core/advice/ventilation';
import { planOf, rafterOf, roofOf, type Changes } from '../roof/roofs';

const loads = {
  wood: numberTwo('HF', 'from2018'),
  live: 20,
  dead: 10,
  bendsTo: 180,
  duration: durations.roofLive,
} as const;

const roof = (changes: Changes = {}): AdviceAsked => ({
  roof: {
    plan: planOf(changes),
    cuts: rafterOf(changes),
    topHeight: roofOf(changes).ridges[0]!.topHeight,
  },
});

const scheme = { climateZone: 5, retarder: false, highShare: 0.5, underRidge: 36, lowInBottomThird: true };
const vents = (free: number, changes = {}): AdviceAsked => ({
  vents: { attic: 600, free, scheme: { ...scheme, ...changes } },
});
const ladder = (changes = {}): AdviceAsked => ({
  ladder: { landing: 240, foot: 62, railsAt: 276, ...changes },
});

const codes = (asked: AdviceAsked): readonly string[] => adviceOn(asked).map(({ code }) => code);

/** Code, the last case that is all right, the first that is not; what is told has to hold these words. */
const rows: readonly (readonly [string, AdviceAsked, AdviceAsked, readonly string[]])[] = [
  // A 2×8 of hem-fir at 24 in spans 14 ft 8 in at the most, which is run over span 24 ft to 29 ft 4 in.
  ['spanOver', { ...roof({ span: 352 }), loads }, { ...roof({ span: 354 }), loads }, [`14' 9"`, `14' 8"`]],
  [
    'spanRaised',
    { ...roof({ joists: { height: 14 } }), loads },
    { ...roof({ joists: { height: 25 } }), loads },
    ['25 in', `12'`],
  ],
  ['heelThrust', roof(), { ...roof(), loads }, ['720 lb', 'plans']],
  ['seatDeep', roof(), roof({ rafter: { thickness: 1.5, depth: 3.5 }, overhang: 0 }), ['1.935 in']],
  [
    'heelTall',
    roof(),
    roof({ rafter: { thickness: 1.5, depth: 16 }, ridge: { thickness: 1.5, depth: 18 } }),
    ['15.25 in'],
  ],
  ['ventsSmall', vents(576), vents(575), ['575', '576', 'Half of that may do']],
  ['ventsSmall', vents(576), vents(575, { highShare: 0.3 }), ['will not do']],
  ['ventsBlocked', roof(), vents(576), ['1 in']],
  [
    'liftHeavy',
    { lift: { pounds: 102, people: 2 } },
    { lift: { pounds: 103, people: 2 } },
    ['103 lb', '3 people'],
  ],
  ['ladderFoot', ladder(), ladder({ foot: 80 }), ['80 in', '62 in']],
  ['ladderFoot', ladder(), ladder({ foot: 40 }), ['40 in']],
  ['ladderShort', ladder(), ladder({ railsAt: 275 }), ['35 in', '36 in']],
];

describe('words of caution', () => {
  it.each(rows)('%s', (code, fine, unwise, words) => {
    expect(codes(fine)).not.toContain(code);
    const found = adviceOn(unwise).filter((one) => one.code === code);
    expect(found).toHaveLength(1);
    for (const word of words) expect(found[0]!.text).toContain(word);
    expect(found[0]!.source).toMatch(/\((read|reckoned anew)/);
  });

  it('are none where nothing is asked', () => {
    expect(adviceOn({})).toEqual([]);
  });

  it('give a heel no number of nails', () => {
    const told = adviceOn({ ...roof(), loads }).find(({ code }) => code === 'heelThrust');
    expect(told?.text).not.toMatch(/\d+ (nails|× )/);
    expect(fastenings.find(({ joint }) => joint === 'joistToRafter')?.ways).toEqual([]);
  });

  it('grow by as much as ties are apart', () => {
    const pull = (every: number): number => {
      const asked = { ...roof({ joists: { every } }), loads };
      const told = adviceOn(asked).find(({ code }) => code === 'heelThrust');
      return Number(/about (\d+) lb/.exec(told?.text ?? '')?.[1]);
    };
    expect(pull(2)).toBe(2 * pull(1));
  });
});

describe('what is from memory', () => {
  it('is told as such, way by way', () => {
    const all = fastenings.flatMap(({ ways }) => ways);
    const memory = all.filter(({ sure }) => sure === 'memory');
    expect(memory.length).toBeGreaterThan(0);
    for (const way of all) expect(wayText(way).includes('from memory')).toBe(way.sure === 'memory');
    expect(sourceText({ document: 'a', section: 'b', sure: 'memory' })).toContain('not checked');
  });

  it('lets a lesser share of vents be no surer than that', () => {
    expect(ventParts(scheme)).toEqual({ parts: 300, sure: 'memory' });
    for (const changes of [{ underRidge: 37 }, { lowInBottomThird: false }])
      expect(ventParts({ ...scheme, ...changes })).toEqual({ parts: 150, sure: 'secondHand' });
  });
});

describe('what people lift', () => {
  it('is less the farther out, the higher or lower, the farther up, and never more than at best', () => {
    const best = weightLimit({ reach: 5, height: 30, travel: 5 });
    expect(best).toBe(51);
    for (const change of [{ reach: 20 }, { height: 60 }, { height: 0 }, { travel: 40 }, { rest: 0.5 }])
      expect(weightLimit({ reach: 10, height: 30, travel: 10, ...change })).toBeLessThan(best);
    expect(weightLimit({ reach: 10, height: 200, travel: 10 })).toBe(0);
  });

  it('weighs by what it is made of, or by the density that is known', () => {
    const board = { thickness: 1.5, depth: 7.25, length: 144 };
    expect(boardPounds({ ...board, density: 70 })).toBeCloseTo(2 * boardPounds(board), 9);
    expect([1, 51, 51.1, 102.1].map((pounds) => peopleFor(pounds))).toEqual([1, 1, 2, 3]);
  });
});

it('a ladder stands on the ground it needs: foot, wall and ladder make a right angle', () => {
  for (const kind of ['bought', 'spliced'] as const) {
    const { working, foot } = ladderTo(240, kind);
    expect(foot * foot + 240 * 240).toBeCloseTo(working * working, 6);
  }
});

it('holes give the area with none to spare, and fit where a block is long enough', () => {
  const each = (Math.PI * 2.25 * 2.25) / 4;
  expect(holesFor(3 * each, 2.25)).toBe(3);
  expect(holesFor(3 * each + 0.01, 2.25)).toBe(4);
  expect(holesFit(4, 2, 13)).toBe(true);
  expect(holesFit(4, 2, 12.9)).toBe(false);
});
