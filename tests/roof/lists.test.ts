import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoofText } from '../../src/content/readRoof';
import { figure } from '../../src/core/roof/figure';
import type { FiguredRoof } from '../../src/core/roof/figured';
import type { FiguredLists, FiguredStick } from '../../src/core/roof/figuredLists';
import { listsOf } from '../../src/core/roof/lists';
import type { RoofPlan } from '../../src/core/roof/plan';
import { hipPlan } from './hips';
import { planOf, type Changes } from './roofs';

const listed = (plan: RoofPlan): FiguredLists => listsOf(plan, figure(plan));
const listsFor = (changes: Changes = {}): FiguredLists => listed(planOf(changes));
const cutListFor = (changes: Changes = {}) => listsFor(changes).cutList;
const sticksOf = ({ cutList }: FiguredLists, kind: FiguredStick['kind']): readonly FiguredStick[] =>
  cutList.sticks.filter((stick) => stick.kind === kind);
const feetOf = ({ cutList }: FiguredLists): number =>
  cutList.bought.reduce((sum, { bought }) => sum + bought / 12, 0);

const folder = 'levels/examples/';
const examples = readdirSync(folder);
const example = (file: string): RoofPlan => {
  const read = readRoofText(readFileSync(folder + file, 'utf8'));
  if (!read.ok) throw new Error(file);
  return read.value;
};

describe('the cut list of the sample roof', () => {
  const { cutList } = listsFor();

  it('has its boards, worked by hand', () => {
    // Rafters 179.436 in from 16 ft. Joists 284 7/8 in, behind the blocks, from 24 ft. Blocks of 22 7/16: four and three kerfs are 90 1/8 in, from
    // 8 ft, or six are 135 1/4, from 12 ft, 2 ft of board a block either way: 22 of them take 44 ft. Four of 21 11/16 take 8 ft.
    const ofTwoByEight = cutList.boards.filter(({ stock }) => stock.nominal === '2×8');
    expect(ofTwoByEight[0]).toMatchObject({ length: 288, count: 14, kerfs: 0.125, waste: 3 });
    expect(ofTwoByEight[1]).toMatchObject({ length: 192, count: 28, kerfs: 0.125 });
    expect(ofTwoByEight[1]?.cuts).toEqual([{ length: expect.closeTo(179.436, 3), count: 1, of: ['common'] }]);
    expect(ofTwoByEight[1]?.waste).toBeCloseTo(192 - 179.43584 - 0.125, 4);
    expect(ofTwoByEight[1]?.wasteShare).toBeCloseTo(12.43916 / 192, 6);
    expect(cutList.bought.map(({ stock, bought }) => [stock.nominal, bought / 12])).toEqual([
      ['2×8', 14 * 24 + 28 * 16 + 44 + 8],
      // The ridge: 14 and 12 ft.
      ['2×10', 26],
      // Collars of 105.474 in, two from 18 ft.
      ['2×4', 4 * 18],
    ]);
  });

  it('splices the ridge where a pair of rafters pinches it', () => {
    expect(cutList.splices).toEqual([
      {
        member: 'ridge',
        length: 312,
        joints: 'rafters',
        pieces: [
          { length: 168, count: 1 },
          { length: 144, count: 1 },
        ],
      },
    ]);
    // A rake overhang moves the ridge's end, not the rafters: 12 in of it before end A.
    expect(cutListFor({ rakeOverhang: 12 }).splices?.[0]?.pieces.map(({ length }) => length)).toEqual([
      180, 156,
    ]);
    expect(cutListFor({ length: 288 })).not.toHaveProperty('splices');
  });

  it('names collars of their own 2×4, and joists and blocks of rafter stock', () => {
    const nominal = (kind: FiguredStick['kind']) =>
      new Set(cutList.sticks.filter((stick) => stick.kind === kind).map(({ stock }) => stock.nominal));
    expect(nominal('collar')).toEqual(new Set(['2×4']));
    expect(nominal('joist')).toEqual(new Set(['2×8']));
    expect(nominal('block')).toEqual(new Set(['2×8']));
  });
});

describe('members of other roofs', () => {
  it('rips blocks from a deeper board where rafter stock leaves too little of the bevel', () => {
    // 12 in 12, seat 1 1/2: 8.753 in at the outer face and 1 1/2 more at the inner; half of that is 9.503 in, over a 2×10.
    const lists = listsFor({ slope: { rise: 12, run: 12 }, seat: 1.5 });
    expect(sticksOf(lists, 'block').map(({ stock }) => stock.nominal)).toEqual(['2×12', '2×12']);
    // Square to the rafters 6.189 in and no bevel.
    const square = listsFor({ slope: { rise: 12, run: 12 }, seat: 1.5, blockStands: 'square' });
    expect(sticksOf(square, 'block').map(({ stock }) => stock.nominal)).toEqual(['2×8', '2×8']);
  });

  it('tells what no board is long enough for', () => {
    const { boards } = cutListFor({ span: 500, joists: false });
    const [rafters] = boards;
    // 250 − 3/4 + 14 in level, by √1.25, and 7 1/4 · 1/2: 297.947 in.
    expect(rafters).toMatchObject({ length: 312, special: true });
    expect(rafters?.cuts).toEqual([{ length: expect.closeTo(297.947, 3), count: 1, of: ['common'] }]);
    expect(boards.filter(({ special }) => special)).toHaveLength(1);
  });

  it('splices a ridge that carries on its posts, and a ledger between rafters', () => {
    const beam = listed(example('gable-on-posts.json')).cutList;
    expect(beam.splices?.[0]).toMatchObject({ joints: 'posts' });
    expect(beam.splices?.[0]?.pieces).toEqual([{ length: 156, count: 2 }]);
    const ledger = listed(example('shed.json')).cutList;
    // Rafters stand at 144 and 168.
    expect(ledger.splices).toEqual([
      { member: 'ledger', length: 312, joints: 'bays', pieces: [{ length: 156, count: 2 }] },
    ]);
  });

  it('counts every gable stud, as deep as the plate is wide', () => {
    const lists = listed(example('gable.json'));
    const studs = sticksOf(lists, 'stud');
    expect(studs.map(({ count }) => count)).toEqual(Array.from({ length: 8 }, () => 4));
    expect(studs[0]).toMatchObject({ length: 6.625, stock: { nominal: '2×6' } });
  });

  it('has the sticks of hips and jacks, worked by hand', () => {
    // Page figures of the hip at 6 in 12: body 214.875, tail 14·1.5 = 21, and a 2×12 (11 1/4 deep) at 6 in 16.97: 3.977 in.
    const plan = hipPlan({ hip: { thickness: 1.5, depth: 11.25 } });
    const lists = listed(plan);
    const [hip] = sticksOf(lists, 'hip');
    expect(hip?.length).toBeCloseTo(214.875 + 21 + 11.25 / (2 * Math.SQRT2), 6);
    expect(hip).toMatchObject({ count: 4, stock: { nominal: '2×12' } });
    // The longest jack: 132.978 to the middle of its cheek, half its thickness by √1.25 to the long point, tail and depth.
    const jacks = sticksOf(lists, 'jack');
    const longest = Math.max(...jacks.map(({ length }) => length));
    expect(longest).toBeCloseTo(132.97822 + 0.75 * Math.sqrt(1.25) + 15.65248 + 3.625, 4);
    expect(jacks.reduce((sum, { count }) => sum + count, 0)).toBe(40);
    expect(jacks).toHaveLength(20);
  });

  it('takes valleys for what they are, and jacks that say how many have each length', () => {
    const plan = hipPlan();
    const roof = figure(plan);
    const [hip, jacks] = [roof.hips?.[0], roof.jacks?.[0]];
    if (!hip || !jacks) throw new Error('no hips');
    const counts = jacks.lengths.map((_, i) => i + 1);
    const other: FiguredRoof = {
      ...roof,
      valleys: [{ ...hip, id: 'valley' }],
      jacks: [{ ...jacks, counts }],
    };
    const lists = listsOf(plan, other);
    const [valley] = sticksOf(lists, 'valley');
    // The corners of its notched tail stand out past the middle: half its thickness, and what the slope adds.
    const [own] = sticksOf(lists, 'hip');
    expect((valley?.length ?? 0) - (own?.length ?? 0)).toBeCloseTo(0.75 * Math.sqrt(1 + 1 / 8), 9);
    expect(sticksOf(lists, 'jack').map(({ count }) => count)).toEqual(counts);
    const cut = lists.cutList.boards.flatMap(({ cuts }) => cuts.flatMap(({ of }) => of));
    expect(cut).toContain('valley');
  });
});

const some = fc.record({
  kind: fc.constantFrom('gable' as const, 'hip' as const),
  rise: fc.integer({ min: 2, max: 14 }),
  span: fc.integer({ min: 120, max: 560 }),
  more: fc.integer({ min: 8, max: 900 }),
  overhang: fc.integer({ min: 0, max: 24 }),
  spacing: fc.constantFrom(12, 16, 19.2, 24, 30),
});
const planFor = ({
  kind,
  rise,
  more,
  ...rest
}: typeof some extends fc.Arbitrary<infer T> ? T : never): RoofPlan => {
  const changes = {
    ...rest,
    length: rest.span + more,
    slope: { rise, run: 12 },
    seat: 1.5,
    rafter: { thickness: 1.5, depth: 9.25 },
  };
  return kind === 'hip' ? hipPlan(changes) : planOf({ ...changes, gableStuds: {} });
};

describe('what holds for the lists of every roof', () => {
  it('every stick is cut from a board of its section, and every board is cut for some', () => {
    fc.assert(
      fc.property(some, (so) => {
        const { sticks, boards } = listed(planFor(so)).cutList;
        const tallied = (all: readonly (readonly [string, number])[]): readonly string[] => {
          const sums = new Map<string, number>();
          for (const [key, count] of all) sums.set(key, (sums.get(key) ?? 0) + count);
          return [...sums].map(([key, count]) => `${count} of ${key}`).sort();
        };
        const keyOf = (nominal: string, length: number): string => `${nominal} ${length.toFixed(4)}`;
        const cut = boards.flatMap(({ stock, count, cuts }) =>
          cuts.map((one) => [keyOf(stock.nominal, one.length), one.count * count] as const),
        );
        const wanted = sticks.map(
          ({ stock, length, count }) => [keyOf(stock.nominal, length), count] as const,
        );
        expect(tallied(cut)).toEqual(tallied(wanted));
      }),
    );
  });

  it('has all its members as sticks', () => {
    fc.assert(
      fc.property(some, (so) => {
        const plan = planFor(so);
        const roof = figure(plan);
        const { cutList } = listsOf(plan, roof);
        const whole = [
          ...roof.commonRafters,
          ...roof.blocks,
          ...roof.ties,
          ...(roof.gableStuds ?? []),
          ...(roof.hips ?? []),
          ...(roof.jacks ?? []),
        ];
        const countOf = (member: string): number =>
          cutList.sticks.reduce((sum, stick) => sum + (stick.member === member ? stick.count : 0), 0);
        for (const { id, count } of whole) expect([id, countOf(id)]).toEqual([id, count]);
        const ridge = cutList.sticks.filter(({ kind }) => kind === 'ridge');
        expect(ridge.reduce((sum, { length, count }) => sum + length * count, 0)).toBeCloseTo(
          roof.ridges[0]?.length ?? 0,
          6,
        );
        let at = (plan.length - (roof.ridges[0]?.length ?? 0)) / 2;
        const joints = (cutList.splices?.[0]?.pieces ?? []).flatMap(({ length, count }) =>
          Array.from({ length: count }, () => (at += length)),
        );
        for (const joint of joints.slice(0, -1))
          expect(Math.min(...roof.layout.stations.map((x) => Math.abs(x - joint)))).toBeLessThan(1e-6);
      }),
    );
  });

  it('what is bought is what is used, sawn away and wasted', () => {
    fc.assert(
      fc.property(some, (so) => {
        const { sticks, bought } = listed(planFor(so)).cutList;
        for (const sum of bought) {
          const own = sticks.filter(({ stock }) => stock.nominal === sum.stock.nominal);
          const used = own.reduce((all, { length, count }) => all + length * count, 0);
          expect(sum.used).toBeCloseTo(used, 3);
          expect(sum.bought).toBeCloseTo(sum.used + sum.kerfs + sum.waste, 6);
          expect(sum.wasteShare * sum.bought).toBeCloseTo(sum.waste, 6);
          expect(sum.bought).toBeGreaterThanOrEqual(sum.used);
        }
      }),
    );
  });

  it.each(examples)('a longer %s never takes less wood or weighs less', (file) => {
    const plan = example(file);
    const longer = Array.from({ length: 20 }, (_, bays) => ({
      ...plan,
      length: plan.length + bays * plan.spacing,
    }));
    const all = longer.map((one) => listed(one as RoofPlan));
    all.slice(1).forEach((lists, i) => {
      const shorter = all[i] as FiguredLists;
      expect(feetOf(lists)).toBeGreaterThanOrEqual(feetOf(shorter));
      expect(lists.weights.total).toBeGreaterThan(shorter.weights.total);
    });
  });

  it('weighs eight times as much at twice the size', () => {
    fc.assert(
      fc.property(some, (so) => {
        const half = (n: number): number => n / 2;
        const { span, overhang, spacing } = so;
        const shared = { slope: { rise: so.rise, run: 12 }, collars: false };
        const length = span + so.more;
        const whole = { ...shared, span, length, overhang, spacing, seat: 3, blockAllowance: 0.125 };
        const small = {
          ...shared,
          span: half(span),
          length: half(length),
          overhang: half(overhang),
          spacing: half(spacing),
          seat: 1.5,
          blockAllowance: 0.0625,
          rafter: { thickness: 0.75, depth: 4.625 },
          ridge: { thickness: 0.75, depth: 5.625 },
          plate: { width: 2.75 },
        };
        const large = {
          ...whole,
          rafter: { thickness: 1.5, depth: 9.25 },
          ridge: { thickness: 1.5, depth: 11.25 },
        };
        const made = so.kind === 'hip' ? hipPlan : planOf;
        const weigh = (changes: Changes): number => listed(made(changes)).weights.total;
        expect(weigh(large) / weigh(small)).toBeCloseTo(8, 6);
      }),
    );
  });

  it('weighs what its sticks weigh, and names the heaviest', () => {
    fc.assert(
      fc.property(some, (so) => {
        const { weights, cutList } = listed(planFor(so));
        expect(weights.sticks.map(({ member, count }) => [member, count])).toEqual(
          cutList.sticks.map(({ member, count }) => [member, count]),
        );
        const total = weights.sticks.reduce((sum, { each, count }) => sum + each * count, 0);
        expect(weights.total).toBeCloseTo(total, 6);
        expect(weights.heaviest.each).toBe(Math.max(...weights.sticks.map(({ each }) => each)));
        expect(weights.sticks).toContainEqual(expect.objectContaining(weights.heaviest));
        for (const { each } of weights.sticks) expect(each).toBeGreaterThan(0);
      }),
    );
  });

  it('sheets it in courses that make up the slope, and knows every joint that no rafter is under', () => {
    fc.assert(
      fc.property(some, (so) => {
        const plan = planFor(so);
        const { layout } = figure(plan);
        for (const { side, slopeLength, marks, lastCourse, rows } of listed(plan).sheets) {
          marks.forEach((mark, i) => expect(mark).toBe((i + 1) * 48));
          expect(marks.length * 48 + lastCourse).toBeCloseTo(slopeLength, 9);
          expect(lastCourse).toBeGreaterThan(0);
          expect(lastCourse).toBeLessThanOrEqual(48 + 1e-6);
          const stations = side === 'ends' ? layout.eaves?.[0]?.stations : layout.stations;
          if (!stations) continue;
          for (const { from, joints, misses } of rows) {
            const [first, last] = [stations[0] as number, stations.at(-1) as number];
            const all = Array.from({ length: 200 }, (_, k) => from + (k - 100) * 96).filter(
              (at) => at > first + 1e-6 && at < last - 1e-6,
            );
            expect(joints).toBe(all.length);
            const off = (at: number): number => Math.min(...stations.map((x) => Math.abs(x - at)));
            expect(misses.map(({ at }) => at)).toEqual(all.filter((at) => off(at) > 1e-6));
            for (const { at, by } of misses) {
              expect(Math.abs(by)).toBeCloseTo(off(at), 9);
              expect(Math.min(...stations.map((x) => Math.abs(x - at - by)))).toBeLessThan(1e-9);
            }
          }
        }
      }),
    );
  });
});

describe('sheets of the sample roof', () => {
  it('are laid in four courses, all joints on rafters, worked by hand', () => {
    // (144 + 14) · √1.25 = 176.649 in up the slope; joints at 96, 192, 288 and 48, 144, 240.
    expect(listsFor().sheets).toEqual([
      {
        side: 'both',
        count: 2,
        slopeLength: expect.closeTo(176.649, 3),
        marks: [48, 96, 144],
        lastCourse: expect.closeTo(32.649, 3),
        rows: [
          { from: 0, joints: 3, misses: [] },
          { from: 48, joints: 3, misses: [] },
        ],
      },
    ]);
  });

  it('miss every rafter of 19.2 in spacing in the row that begins with half a sheet', () => {
    // Five bays make a sheet; half a sheet ends in the middle of a bay.
    const [plane] = listsFor({ spacing: 19.2 }).sheets;
    expect(plane?.rows[0]?.misses).toEqual([]);
    expect(plane?.rows[1]?.misses.map(({ at }) => at)).toEqual([48, 144, 240]);
    for (const { by } of plane?.rows[1]?.misses ?? []) expect(Math.abs(by)).toBeCloseTo(9.6, 9);
  });

  it('are counted from the layout’s own datum', () => {
    const from = (plan: RoofPlan) => listed(plan).sheets.map(({ rows }) => rows.map((row) => row.from));
    expect(from(planOf({ datum: 'endB' }))).toEqual([[312, 360]]);
    expect(from(planOf({ datum: 'centre' }))).toEqual([[156, 204]]);
    // A hip roof's ridge begins half a span in from end A; its ends are laid out from their middle.
    expect(from(hipPlan())).toEqual([
      [144, 192],
      [0, 48],
    ]);
  });
});
