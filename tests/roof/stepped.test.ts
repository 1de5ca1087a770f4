import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import { listsOf } from '../../src/core/roof/lists';
import type { RoofPlan } from '../../src/core/roof/plan';
import { inMm } from './roofs';
import { planFrom, ridgeIn, runFile, runRoof } from './runs';

/** Ridges at several heights in one run: a small one by hand, what it is warned of and what is refused. */

const complaints = (changes: object, sections?: readonly object[]) => {
  const read = readRoof(runFile({ ...changes }, sections));
  return read.ok ? [] : read.complaints;
};

describe('worked by hand', () => {
  // All at 9 in 12, so g = 5/4. Rafters 1 1/2 by 8 with a seat of 4: 8 x 5/4 - 4 x 3/4 = 7 over the plate, plumb cut 10.
  // Low: 10 ft long, 16 ft wide, plates 24 lower. High: 12 ft 6 in long, 24 ft wide. Ridges 1 1/2 by 12.
  const roof = runRoof(
    {
      slope: { rise: 9, run: 12 },
      span: 288,
      length: 270,
      overhang: 12,
      rakeOverhang: 8,
      rafter: { thickness: 1.5, depth: 8 },
      ridge: { thickness: 1.5, depth: 12 },
      seat: 4,
      gableStuds: {},
    },
    [{ length: 120, span: 192, plateHeight: -24 }, {}],
  );
  const [step] = roof.steps ?? [];

  it('ridges: 7 + (144 - 3/4) x 3/4, and -24 + 7 + (96 - 3/4) x 3/4', () => {
    expect(ridgeIn(roof, 2).topHeight).toBeCloseTo(114.4375, 9);
    expect(ridgeIn(roof, 1).topHeight).toBeCloseTo(54.4375, 9);
    expect(step?.rise).toBeCloseTo(60, 9);
  });

  it('the low one runs 8 past its gable and 5 1/2 into the wall, the high one from the wall to 8 past its gable', () => {
    expect(ridgeIn(roof, 1).lies).toMatchObject({ from: -8, to: 125.5 });
    expect(ridgeIn(roof, 1).length).toBeCloseTo(8 + 120 + 5.5, 9);
    expect(ridgeIn(roof, 1).lineLength).toBeCloseTo(8 + 120, 9);
    expect(ridgeIn(roof, 2).lies).toMatchObject({ from: 120, to: 278 });
  });

  it('its underside lies 54.4375 - 12 high, 24 more over its own plates, and bears 5 1/2 by 1 1/2', () => {
    expect(step).toMatchObject({ at: 120, higher: 'section2', lower: 'section1' });
    expect(step?.bearing).toMatchObject({ on: 'pocket', from: 120, to: 125.5, length: 5.5 });
    expect(step?.bearing.height).toBeCloseTo(42.4375, 9);
    expect(step?.bearing.overLower).toBeCloseTo(66.4375, 9);
    expect(step?.bearing.overHigher).toBeCloseTo(42.4375, 9);
    expect(step?.bearing.area).toBeCloseTo(8.25, 9);
    // The high ridge's underside is 114.4375 - 12 high.
    expect(step?.bearing.clear).toBeCloseTo(48, 9);
  });

  it('a post of 42 7/16 in the gable, on the plates of the high part', () => {
    expect(step?.bearing.stands?.on).toBe('higherPlates');
    expect(roof.posts).toMatchObject([
      { id: 'post.step1', count: 1, at: [122.75], section: { thickness: 1.5, depth: 5.5 } },
    ]);
    expect(roof.posts?.[0]?.length).toBeCloseTo(42.4375, 9);
  });

  it('rafters: bodies (144 - 3/4) x 5/4 and (96 - 3/4) x 5/4, tails 12 x 5/4', () => {
    const [high, low] = roof.commonRafters;
    expect([high?.id, low?.id]).toEqual(['common.section2', 'common.section1']);
    expect(high?.bodyLength).toBeCloseTo(179.0625, 9);
    expect(low?.bodyLength).toBeCloseTo(119.0625, 9);
    expect(low?.tailLength).toBeCloseTo(15, 9);
    expect([high?.count, low?.count]).toEqual([16, 12]);
  });

  it('one layout from end A, with end rafters of its own on both sides of the wall', () => {
    expect(roof.layout.stations).toEqual([0.75, 24, 48, 72, 96, 119.25]);
    expect(roof.layout.eaves).toEqual([
      { side: 'both', part: 'section1', stations: [0.75, 24, 48, 72, 96, 119.25] },
      { side: 'both', part: 'section2', stations: [120.75, 144, 168, 192, 216, 240, 264, 269.25] },
    ]);
  });

  it('studs 16 apart from the middle: 12 k - 3 + 9/16, in one gable of the low part and both of the high one', () => {
    const [low, high] = roof.gableStuds ?? [];
    expect(low).toMatchObject({ id: 'stud.section1.1', count: 10, difference: 12 });
    expect(low?.lengths).toEqual([1, 2, 3, 4, 5].map((k) => expect.closeTo(12 * k - 2.4375, 9)));
    expect(high).toMatchObject({ id: 'stud.section2.1', count: 32 });
    expect(high?.lengths.at(-1)).toBeCloseTo(12 * 8 - 2.4375, 9);
  });

  it('ties over the plates of their own part, collars at two thirds of the ridge over those', () => {
    const height = (id: string) => roof.ties.find((tie) => tie.id === id)?.height;
    expect(height('joist.section1')).toBe(0);
    expect(height('collar.section1')).toBeCloseTo(((54.4375 + 24) * 2) / 3, 9);
    expect(height('collar.section2')).toBeCloseTo((114.4375 * 2) / 3, 9);
    expect(roof.ties.find(({ id }) => id === 'joist.section1')?.length).toBe(192);
  });

  it('blocks add up to the bays: 4 and 6 on each side less their allowance', () => {
    // Low: 119.25 - 0.75 less 5 rafters of 1 1/2 and 5 allowances of 1/16. High: 148.5 less 7 of both.
    const sum = (part: string) =>
      roof.blocks
        .filter((block) => block.part === part)
        .reduce((all, { length, count }) => all + length * count, 0);
    expect(sum('section1')).toBeCloseTo(2 * (118.5 - 5 * 1.5625), 9);
    expect(sum('section2')).toBeCloseTo(2 * (148.5 - 7 * 1.5625), 9);
  });

  it('one caution, told once for both parts: a seat of 4 is notched 4 x 3/4 / (5/4) = 2.4 deep', () => {
    expect(roof.cautions.map(({ code, at }) => [code, at])).toEqual([['notchDeep', 'seat']]);
    expect(roof.cautions[0]?.text).toContain('2.4 in deep');
  });
});

describe('other ends', () => {
  it('on a wall the ridge ends at the face, and bears before it', () => {
    const bearing = { on: 'wall', below: 90 };
    const roof = runRoof({}, [{ length: 192, span: 216, plateHeight: -12, bearing }, {}]);
    expect(ridgeIn(roof, 1).lies?.to).toBe(192);
    const [step] = roof.steps ?? [];
    expect(step?.bearing).toMatchObject({ on: 'wall', from: 188.5, to: 192, length: 3.5 });
    expect(step?.bearing.stands).toMatchObject({ on: 'below' });
    expect(step?.bearing.stands?.length).toBeCloseTo((step?.bearing.overLower ?? 0) + 90, 9);
  });

  it('a pocket under the higher plates has its post on those of its own part', () => {
    const roof = runRoof({}, [{ length: 192, span: 216, plateHeight: -96 }, {}]);
    const [step] = roof.steps ?? [];
    expect(step?.bearing.overHigher).toBeLessThan(0);
    expect(step?.bearing.stands).toEqual({ on: 'lowerPlates', length: step?.bearing.overLower });
  });

  it('a low part between two high ones bears at both ends and has no gable of its own', () => {
    const roof = runRoof({ gableStuds: {} }, [
      { length: 160 },
      { length: 160, span: 216, plateHeight: -12 },
      {},
    ]);
    expect(ridgeIn(roof, 2).lies).toMatchObject({ from: 160 - 5.5, to: 320 + 5.5 });
    expect(roof.steps).toHaveLength(2);
    expect(roof.gableStuds?.map(({ id }) => id)).toEqual(['stud.section1.1', 'stud.section3.1']);
    expect(roof.posts?.map(({ id }) => id)).toEqual(['post.step1', 'post.step2']);
  });

  it('the higher ridge runs out over the lower roof where it is said to', () => {
    const roof = runRoof({}, [{ length: 192, span: 216, plateHeight: -12 }, { stepOverhang: 8 }]);
    expect(ridgeIn(roof, 2).lies?.from).toBe(184);
  });

  it('the end rafter stands clear of the sheathing of the higher wall', () => {
    const bearing = { clearance: 0.5 };
    const roof = runRoof({}, [{ length: 192, span: 216, plateHeight: -12, bearing }, {}]);
    expect(roof.layout.stations.at(-1)).toBe(192 - 0.75 - 0.5);
  });

  it('a wider low part has studs of its own outside of the higher walls', () => {
    // 30 ft wide at 4 in 12 beside 20 ft with plates 8 ft up: from 120 to 180 off the middle, 128, 144 and 160. At 176 the
    // rafter is on its seat before a stud is as wide as it is: a wedge, which nobody cuts.
    const roof = runRoof({ slope: { rise: 4, run: 12 }, span: 360, gableStuds: {} }, [
      { length: 192 },
      { span: 240, plateHeight: 96 },
    ]);
    const outside = roof.gableStuds?.find(({ id }) => id === 'stud.step1.1');
    const g = Math.sqrt(1 + 1 / 9);
    // Underside over the plate at x in from it: 7.25 g - 3.5 / 3 + x / 3 - 7.25 g, long points 1/4 in more.
    expect(outside?.count).toBe(2 * 3);
    expect(outside?.lengths).toEqual([20, 36, 52].map((x) => expect.closeTo((x - 3.5) / 3 + 0.25, 9)));
    expect(roof.commonRafters.find(({ id }) => id === 'common.section1')?.plumbCutLength).toBeCloseTo(
      7.25 * g,
      9,
    );
  });

  it('leaves out a stud that would touch the higher wall, in inches and in millimeters', () => {
    // Higher walls 254 1/2 in apart begin 127 1/4 off the middle, where a stud 128 off it ends; the next is at 144.
    const file = runFile({ gableStuds: {} }, [
      { length: 192, span: 320 },
      { span: 254.5, plateHeight: 96 },
    ]);
    for (const same of [file, inMm(file)]) {
      const roof = figure(planFrom(same) as RoofPlan);
      expect(roof.gableStuds?.find(({ id }) => id === 'stud.step1.1')?.lengths).toHaveLength(1);
    }
  });

  it('rafters of one length stand in the order of the run, in inches and in millimeters', () => {
    // At 12 in 12 half of 215.7 and 16.6 of overhang are as long as half of 219.5 and 14.7.
    const slope = { rise: 12, run: 12 };
    const file = runFile({ slope: { rise: 3, run: 12 }, span: 160, length: 120, seat: 2.5 }, [
      { length: 40, span: 215.7, overhang: 16.6, slope, plateHeight: 0 },
      { length: 40, span: 140, plateHeight: 0 },
      { span: 219.5, overhang: 14.7, slope, plateHeight: 0 },
    ]);
    for (const same of [file, inMm(file)]) {
      const { commonRafters } = figure(planFrom(same) as RoofPlan);
      expect(commonRafters.map(({ id }) => id)).toEqual([1, 3, 2].map((n) => `common.section${n}`));
    }
  });

  it('ridges that carry have posts, each under its own section', () => {
    const roof = runRoof({
      slope: { rise: 2, run: 12 },
      joists: false,
      posts: { at: [0, 100, 480], below: 90 },
    });
    const posts = roof.posts ?? [];
    expect(posts.map(({ id, at }) => [id, at])).toEqual([
      ['post.section1', [0, 100]],
      ['post.section2', [480]],
      ['post.step1', [194.75]],
    ]);
    const { topHeight, section } = ridgeIn(roof, 1);
    expect(posts[0]?.length).toBeCloseTo(topHeight - section.depth + 90, 9);
    const codes = roof.cautions.map(({ code }) => code);
    expect(codes).not.toContain('tiesAbsent');
    expect(codes).not.toContain('slopeLow');
    expect(roof.cautions.find(({ code }) => code === 'ridgeUnsupported')?.text).toContain('section 2');
  });
});

describe('a ridge longer than any board', () => {
  const joints = (changes: object) => {
    const plan = planFrom(runFile({ length: 720, rakeOverhang: 10, ...changes }, long));
    const { splices = [] } = plan ? listsOf(plan, figure(plan)).cutList : {};
    const [splice] = splices.filter(({ member }) => member === 'ridge.section2');
    const lengths = splice?.pieces.flatMap(({ length, count }) =>
      Array.from({ length: count }, () => length),
    );
    // It begins 5 1/2 in before its section, in the pocket.
    const ends = lengths?.reduce<readonly number[]>((all, one) => [...all, (all.at(-1) ?? 234.5) + one], []);
    return { kind: splice?.joints, at: ends?.slice(0, -1), end: ends?.at(-1) };
  };
  const long = [{ length: 240 }, { span: 216, plateHeight: -12 }];

  it("is spliced where a pair of its own section's rafters pinches it", () => {
    const { kind, at, end } = joints({});
    expect(kind).toBe('rafters');
    expect(end).toBeCloseTo(730, 9);
    expect(at?.length).toBeGreaterThan(0);
    for (const joint of at ?? []) expect(joint / 24).toBeCloseTo(Math.round(joint / 24), 9);
  });

  it('or over a post, where it carries', () => {
    expect(joints({ posts: { at: [0, 500, 720], below: 90 } })).toMatchObject({
      kind: 'posts',
      at: [expect.closeTo(500, 9)],
    });
  });
});

describe('a post over the pocket', () => {
  it('of the lower ridge stands on that, and the one beside it on the floor', () => {
    const roof = runRoof({ posts: { at: [194, 300, 480], below: 90 } });
    const [, onRidge] = roof.posts?.filter(({ id }) => id.startsWith('post.section2')) ?? [];
    expect(roof.posts?.find(({ id }) => id === 'post.section2')?.at).toEqual([300, 480]);
    expect(onRidge).toMatchObject({ id: 'post.section2.onStep1', count: 1, at: [194] });
    // Tops of 77.981 and 47.981, the upper ridge 9 1/4 deep.
    expect(onRidge?.length).toBeCloseTo(30 - 9.25, 9);
  });
});

describe('cautions', () => {
  const codes = (sections: readonly object[], changes: object = {}) =>
    runRoof({ ...changes }, sections).cautions.map(({ code, at }) => `${code} ${at}`);
  const low = { length: 192, span: 216, plateHeight: -12 };

  it.each([
    [[{ ...low, bearing: { length: 1.25 } }, {}], 'ridgeBearingShort sections.0.bearing.length'],
    // 48 - 36 = 12 over its plates, underside 38.7 less 48: plates of the high part at 0, ridge from -9.3 to -0.02.
    [[{ ...low, plateHeight: -60 }, {}], 'pocketCutsPlates sections.0.bearing'],
    [[{ ...low, plateHeight: -50 }, {}], 'pocketAtTie sections.0.bearing'],
    [[{ ...low, ridge: { thickness: 1.5, depth: 7.25 } }, {}], 'ridgeShallow sections.0.ridge.depth'],
    [[{ ...low, seat: 1 }, {}], 'bearingShort sections.0.seat'],
    [[{ ...low, slope: { rise: 2, run: 12 } }, {}], 'slopeLow sections.0.slope'],
    [[{ ...low, span: 240, plateHeight: 0 }, { stepOverhang: 8 }], 'stepOverhangLow sections.1.stepOverhang'],
  ])('%j: %s', (sections, caution) => {
    expect(codes([low, {}])).toEqual([]);
    expect(codes(sections)).toContain(caution);
  });

  it('what all sections have from the main keys is told there', () => {
    expect(codes([low, {}], { seat: 1 })).toContain('bearingShort seat');
  });

  it('ties too high are told of the section whose lower third they leave', () => {
    // Tops of 6.356 + 107.25 / 2 and 6.356 + 143.25 / 2: a third of them is 19.994 and 25.994.
    const { cautions } = runRoof({ joists: { height: 24 } }, [{ ...low, plateHeight: 0 }, {}]);
    const high = cautions.filter(({ code }) => code === 'tiesHigh');
    expect(high.map(({ at }) => at)).toEqual(['joists.height']);
    expect(high[0]?.text).toMatch(/^Section 1: .*the lower third, 19.99/);
  });
});

describe('refused', () => {
  const low = { length: 192, span: 216, plateHeight: -12 };

  it.each<[object, readonly object[], string, string]>([
    [{}, [{ length: 192 }], 'sections', '2 to 20 sections'],
    [{}, [{ span: 216 }, {}], 'sections.0.length', 'a length'],
    [{}, [low, { length: 300 }], 'sections.1.length', '288 in, or left out for that'],
    [{}, [low, { length: 480 }, {}], 'length', 'at least 675 in'],
    [{}, [low, { length: 480 }, { length: 24 }], 'sections.2.length', 'shorter sections before it'],
    [{}, [{ ...low, bearing: { length: 6 } }, {}], 'sections.0.bearing.length', 'at most 5.5 in'],
    [{}, [{ ...low, bearing: { length: 0.1 } }, {}], 'sections.0.bearing.length', '0.25 to 96 in'],
    // Ridges at one height: nothing to put a pocket under.
    [{}, [{ length: 192 }, {}], 'sections.1.bearing', 'a step of at least 9.25 in, or "on": "wall"'],
    // A step of 1/2 (288 - 276) / 2 = 3 in.
    [{}, [{ length: 192, span: 276 }, {}], 'sections.0.bearing', 'a step of at least 9.25 in'],
    // Plates 12 higher under a flat roof: it comes out over the walls of the steep one.
    [
      {},
      [{ length: 192, plateHeight: 12, slope: { rise: 3, run: 12 } }, {}],
      'sections.0.plateHeight',
      'at most 0 in',
    ],
    [
      {},
      [{ ...low, span: 276, plateHeight: 0, bearing: { on: 'wall' } }, { stepOverhang: 8 }],
      'sections.1.stepOverhang',
      '0, or',
    ],
    [
      {},
      [{ ...low, bearing: { clearance: 12 }, length: 14 }, {}],
      'sections.0.bearing.clearance',
      'at most 11 in',
    ],
    [{}, [{ ...low, seat: 9 }, {}], 'sections.0.seat', 'at most 5.5 in'],
    [{ sections: undefined }, [], 'sections', '2 to 20 sections'],
    [{ yard: {} }, [low, {}], 'yard', 'only with kind "gable"'],
    [{ kind: 'gable' }, [low, {}], 'sections', 'only with kind "stepped"'],
    [{ posts: { at: [500], below: 90 } }, [low, {}], 'posts.at', '0 to 480 in'],
    [{ datum: 'ridgeEnd' }, [low, {}], 'datum', '"endA"'],
  ])('%j with %j at %s', (changes, sections, path, accepted) => {
    const found = complaints(changes, sections);
    expect(found.map((one) => one.path)).toContain(path);
    expect(found.find((one) => one.path === path)?.accepted).toContain(accepted);
  });

  it('told in the units of the file', () => {
    const read = readRoof({
      ...(runFile({ units: 'mm', length: 12000, span: 7200, spacing: 600, seat: 90 }, [
        { length: 5000, span: 5400, bearing: { length: 150 } },
        {},
      ]) as object),
      overhang: 350,
      rafter: { thickness: 38, depth: 184 },
      ridge: { thickness: 38, depth: 235 },
      plate: { width: 140 },
    });
    expect(read.ok ? [] : read.complaints.map(({ accepted }) => accepted)).toEqual(['at most 140 mm']);
  });
});
