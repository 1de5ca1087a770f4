import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import type { Vec3 } from '../../src/core/geometry/vector';
import { figure } from '../../src/core/roof/figure';
import type { DormerHeader, FiguredDormer, FiguredRoof } from '../../src/core/roof/figured';
import { bearingOf, type Eave } from '../../src/core/roof/form';
import { heightOver } from '../../src/core/roof/heightOver';
import { openingAt, woodOf } from '../../src/core/roof/hips';
import { jacksOf } from '../../src/core/roof/jacks';
import { openingsOn, type OpeningOn } from '../../src/core/roof/openings';
import type { RoofPlan } from '../../src/core/roof/plan';
import { isCommon } from '../../src/core/roof/planes';
import { settledFraming, type Settled } from '../../src/core/roof/settled';
import type { Timber } from '../../src/core/roof/timber';
import { planeCut, plateThick } from '../../src/core/roof/timberParts';
import { timbersOf } from '../../src/core/roof/timbers';
import { roofsWith, someDormer } from '../roof/gableDormers';
import { contact, freeSolids, heightsAbovePlane, solidOf } from './support/kernel';
import { clashesOf, overlapsOf } from './support/overlaps';

/** Gables with gable dormers as solids, judged by the kernel. */

/** Of each sort for each law; `SOLIDS=200 npx vitest run --project jobs tests/kernel` asks for more. */
const plans = Number(process.env['SOLIDS'] ?? 10);

afterEach(freeSolids);

const sorts = [
  ['without side walls', someDormer.bare],
  ['with side walls', someDormer.walled],
] as const;

type So = {
  readonly plan: RoofPlan;
  readonly framing: Settled;
  readonly roof: FiguredRoof;
  readonly on: OpeningOn;
  readonly told: FiguredDormer;
  readonly timbers: readonly Timber[];
};

const every = (dormer: fc.Arbitrary<object>, holds: (plan: RoofPlan) => void, most = 1): void =>
  fc.assert(
    fc.property(roofsWith(dormer, most), (file) => {
      const read = readRoof(file);
      fc.pre(read.ok);
      holds(read.value);
      freeSolids();
    }),
    { numRuns: plans },
  );

const everyDormer = (dormer: fc.Arbitrary<object>, holds: (so: So) => void): void =>
  every(dormer, (plan) => {
    const [timbers, framing, roof] = [timbersOf(plan), settledFraming(plan), figure(plan)];
    const all = openingsOn(framing.form);
    expect(all).toHaveLength(1);
    const [told] = roof.dormers ?? [];
    holds({ plan, framing, roof, timbers, on: all[0] as OpeningOn, told: told as FiguredDormer });
  });

/** Square inches: a push of 1/10,000 in makes wedges at the edges of a face, and the kernel rounds. */
const slack = 0.01;
const down: Vec3 = [0, 0, -1];
const upward: Vec3 = [0, 0, 1];

const startingWith = (timbers: readonly Timber[], start: string): readonly Timber[] =>
  timbers.filter(({ id }) => id.startsWith(start));
const named = (timbers: readonly Timber[], id: string): Timber => {
  const [found, ...more] = timbers.filter((one) => one.id === id);
  expect(more).toEqual([]);
  expect(found, id).toBeDefined();
  return found as Timber;
};

/** Of all it is pushed against together. */
const bearing = (a: Timber, onto: readonly Timber[], toward: Vec3): number =>
  onto.reduce((sum, b) => sum + contact(solidOf(a), solidOf(b), { toward }), 0);
const bears = (found: number, told: number, id: string): void =>
  expect(Math.abs(found - told), `${id}: ${found} for ${told}`).toBeLessThan(slack);

/** Level, up the plane of an eave, and down it. */
const up = ({ plane }: Eave): Vec3 => [plane.up[0], plane.up[1], 0];
const back = ({ plane }: Eave): Vec3 => [-plane.up[0], -plane.up[1], 0];

const plumbOf = ({ rafter }: RoofPlan, m: number): number => rafter.depth * Math.sqrt(1 + m * m);

/** Plumb height of the face that something cut plumb shares with a header. */
const shared = (top: number, long: number, header: DormerHeader): number =>
  Math.max(
    0,
    Math.min(top, header.topHeight) - Math.max(top - long, header.topHeight - header.section.depth),
  );

const trimmersOf = ({ timbers, on }: So): readonly Timber[] =>
  on.opening.trimmers.map((at) => named(timbers, `rafter.${on.host.side}.${at}`));

describe.each(sorts)('a gable dormer %s, as solids', (_, dormer) => {
  it('has no two members in the same place', () => {
    every(dormer, (plan) => expect(clashesOf(overlapsOf(timbersOf(plan)), 1e-6)).toEqual([]), 2);
  });

  it('has the top edges of all its rafters in its planes, and of those it interrupts in the main one', () => {
    everyDormer(dormer, ({ plan, on, timbers, told }) => {
      const flush = (all: readonly Timber[], eave: Eave): void => {
        const top = planeCut(eave.plane, heightOver(plan.rafter.depth, eave));
        for (const timber of all)
          for (const height of heightsAbovePlane(timber, top))
            expect(Math.abs(height), timber.id).toBeLessThan(1e-6);
      };
      for (const eave of on.eaves)
        flush(
          [
            ...startingWith(timbers, `rafter.dormer.${eave.side}.`),
            ...timbers.filter(({ id }) => id === `face.dormer.${eave.side}`),
          ],
          eave,
        );
      const cut = [...startingWith(timbers, 'lower.dormer.'), ...startingWith(timbers, 'upper.dormer.')];
      expect(cut).toHaveLength((on.opening.plan.front > 0 ? 2 : 1) * on.opening.inner.length);
      flush([...cut, ...startingWith(timbers, `rafter.${on.host.side}.`)], on.host);
      expect(told.upperRafters[0]?.count ?? 0).toBe(on.opening.inner.length);
    });
  });

  it('has every jack bear on its valley with the whole cut, and on the header', () => {
    everyDormer(dormer, (so) => {
      const { plan, framing, timbers, told, on } = so;
      const header = told.headers.at(-1) as DormerHeader;
      // Away from the ends of the valleys no main rafter is left to be cut in place.
      const { foot, meet } = on.opening;
      const left = framing.inPlace.filter(
        ({ eave, from, to }) => eave === on.host && from > foot + 12 && to - from > 12 && to < meet + 1,
      );
      expect(left).toEqual([]);
      for (const jack of jacksOf(plan, framing)) {
        const { piece, bottom } = jack;
        if (!bottom) continue;
        const { edge, skew } = bottom;
        const { eave, at, from } = piece;
        const part = eave.body === on.frame.body ? 'dormer.' : '';
        const timber = named(timbers, `rafter.${part}${eave.side}.${at}.${Math.round(from)}`);
        const { m, plane } = eave;
        if (eave === on.host) {
          const face = named(timbers, header.id);
          const high = shared(header.topHeight, plumbOf(plan, m), header);
          bears(bearing(timber, [face], up(eave)), high * plan.rafter.thickness, timber.id);
        }
        const [x, y] =
          eave === on.host
            ? [at, plane.foot[1] + plane.up[1] * from]
            : [plane.foot[0] + plane.up[0] * from, at];
        const along = Math.sqrt((x - edge.from[0]) ** 2 + (y - edge.from[1]) ** 2);
        // Where the valley's own ends are cut no whole cheek is left to bear on.
        if (along < 14 || edge.run - along < 12) continue;
        const wood = woodOf(framing.form, edge);
        const fall = ((wood?.thickness ?? 0) / 2) * m * skew.sin;
        const high = Math.min(plumbOf(plan, m) - fall, (wood?.depth ?? 0) * Math.sqrt(1 + edge.m * edge.m));
        const [wx, wy] = edge.line.way;
        const out: Vec3 = -wy * plane.up[0] + wx * plane.up[1] < 0 ? [-wy, wx, 0] : [wy, -wx, 0];
        const valleys = startingWith(timbers, 'valley.');
        bears(bearing(timber, valleys, out), (plan.rafter.thickness / skew.sin) * high, timber.id);
      }
    });
  });

  it('has its ridge and the rafters it interrupts against the headers as figured', () => {
    everyDormer(dormer, ({ plan, on, timbers, told, roof }) => {
      const { thickness } = plan.rafter;
      const upper = told.headers.at(-1) as DormerHeader;
      const lower = told.headers.length > 1 ? told.headers[0] : undefined;
      const long = plumbOf(plan, on.host.m);
      const ridge = roof.ridges.find(({ id }) => id === 'ridge.dormer');
      const wood = ridge?.section ?? { thickness: 0, depth: 0 };
      const high = shared(ridge?.topHeight ?? 0, wood.depth, upper);
      const face = named(timbers, upper.id);
      bears(bearing(named(timbers, 'ridge.dormer'), [face], up(on.host)), high * wood.thickness, 'ridge');
      for (const rafter of startingWith(timbers, 'upper.dormer.')) {
        const top = upper.topHeight + on.host.m * upper.thickness;
        bears(bearing(rafter, [face], back(on.host)), shared(top, long, upper) * thickness, rafter.id);
      }
      for (const rafter of lower ? startingWith(timbers, 'lower.dormer.') : []) {
        const top = (lower?.topHeight ?? 0) - (lower?.bevel ? on.host.m * lower.thickness : 0);
        const met = bearing(rafter, [named(timbers, lower?.id ?? '')], up(on.host));
        bears(met, shared(top, long, lower as DormerHeader) * thickness, rafter.id);
      }
    });
  });

  it('has its valleys against the header, the ridge and what is at their feet, and headers against the trimmers', () => {
    everyDormer(dormer, (so) => {
      const { on, timbers, framing, told } = so;
      const ridge = named(timbers, 'ridge.dormer');
      const valleys = startingWith(timbers, 'valley.');
      expect(valleys).toHaveLength(2);
      const edges = framing.edges.filter((edge) => openingAt(framing.form, edge));
      expect(edges).toHaveLength(2);
      for (const valley of valleys) {
        const side: Vec3 = [valley.direction[0] > 0 ? 1 : -1, 0, 0];
        const top = [named(timbers, told.headers.at(-1)?.id ?? ''), ridge];
        expect(bearing(valley, top, up(on.host)) + bearing(valley, top, side)).toBeGreaterThan(0.5);
        const lower = told.headers.length > 1 ? [named(timbers, told.headers[0]?.id ?? '')] : [];
        const feet = [...trimmersOf(so), ...lower];
        const away: Vec3 = [-side[0], 0, 0];
        expect(bearing(valley, feet, back(on.host)) + bearing(valley, feet, away)).toBeGreaterThan(0.5);
      }
      for (const { id } of told.headers)
        for (const trimmer of trimmersOf(so).slice(1, 3)) {
          const toward: Vec3 = [trimmer.origin[0] < on.opening.plan.at ? -1 : 1, 0, 0];
          expect(bearing(named(timbers, id), [trimmer], toward)).toBeGreaterThan(1);
        }
    });
  });
});

it('has its pair at the gable on trimmers and lower header with the whole foot', () => {
  everyDormer(someDormer.bare, (so) => {
    const { plan, on, timbers, told } = so;
    const pair = startingWith(timbers, 'face.dormer.');
    expect(pair).toHaveLength(2);
    const [face] = told.faceRafters ?? [];
    expect(face?.count).toBe(2);
    const { m = 1 } = on.eaves[0] ?? {};
    const { thickness } = plan.rafter;
    const foot = plumbOf(plan, m) / m;
    const half = on.opening.plan.width / 2 - (face?.shorteningTop ?? 0);
    // Its far edge is where the tilt of the foot has it over the whole thickness.
    fc.pre(foot + (thickness * on.host.m) / m < half);
    const under = [...trimmersOf(so), named(timbers, told.headers[0]?.id ?? '')];
    for (const rafter of pair) bears(bearing(rafter, under, down), foot * thickness, rafter.id);
  });
});

it('has its commons on the side plates, these and the studs under them on the trimmers', () => {
  everyDormer(someDormer.walled, (so) => {
    const { plan, framing, on, timbers, told } = so;
    const trimmers = trimmersOf(so);
    const { thickness, depth } = plan.rafter;
    expect(depth).toBeGreaterThan(0);
    for (const eave of on.eaves) {
      const plate = named(timbers, `plate.dormer.${eave.side}`);
      for (const { at } of framing.pieces.filter((piece) => piece.eave === eave && isCommon(piece)))
        bears(
          bearing(named(timbers, `rafter.dormer.${eave.side}.${at}`), [plate], down),
          bearingOf(eave) * thickness,
          `${at}`,
        );
      const wide = Math.min(plan.plate.width, 2 * thickness);
      bears(bearing(plate, trimmers, down), (plateThick / on.host.m) * wide, plate.id);
    }
    const studs = startingWith(timbers, 'stud.dormer.');
    expect(studs).toHaveLength(told.sideStuds[0]?.count ?? 0);
    for (const stud of studs) {
      const area = (on.opening.plan.walls?.studs.thickness ?? 0) * thickness;
      bears(bearing(stud, trimmers, down), area, stud.id);
      bears(bearing(stud, startingWith(timbers, 'plate.dormer.'), upward), area, stud.id);
    }
  });
});
