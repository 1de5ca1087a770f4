import { describe, expect, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import type { Level } from '../../src/core/level/level';
import { stationsOf } from '../../src/core/level/layout';
import { growth } from '../../src/core/level/asFound';
import type { Action } from '../../src/core/site/action';
import { blockLength, pose } from '../../src/core/site/posed';
import { replay } from '../../src/core/hands/opened';
import { shows } from '../../src/core/site/shows';
import { cleanActs, told, usual } from '../order/story';
import { inch } from '../../src/core/units/inch';
import { trueLevel } from './levels';

/** Whole attempts on sites where one thing has moved: bays that grow, boards that dried since they were cut. */

const patience = 120_000;
const sixteenth = 1 / 16;

describe('bays that grow by a sixteenth', { timeout: patience }, () => {
  const base = trueLevel('hay-barn');
  // Seed 1 draws this share of the range: the range is set so that the growth comes to a sixteenth.
  const share = growth({
    level: { ...base, asFound: { ...base.asFound, ranges: { ...base.asFound.ranges, growth: 1 } } },
    seed: 1,
  });
  const level: Level = {
    ...base,
    plan: { ...base.plan, blockAllowance: inch(0) },
    asFound: { ...base.asFound, ranges: { ...base.asFound.ranges, growth: sixteenth / share } },
  };
  /** What a clean crew does where nothing grows, but for each rafter held tight to the block before it, not to its mark. */
  const tight = cleanActs(base, usual).map((act): Action =>
    act.type === 'place' && /^rafter\.street\.[2-8]$/.test(act.member) ? { ...act, at: 'block' } : act,
  );
  const attempt = told(level, tight);
  const figured = stationsOf(level);

  it('look right bay by bay', () => {
    for (const n of [2, 3, 4, 5, 6, 7]) {
      const clear = Number(shows(attempt, { tool: 'tape', at: `bay.street.${n}` }));
      expect(Math.abs(clear - blockLength(attempt, `block.street.${n}`)), `bay ${n}`).toBeLessThan(
        sixteenth / 2,
      );
    }
  });

  it('and stand off from the datum by all of them together', () => {
    for (const n of [3, 5, 8]) {
      const face = Number(shows(attempt, { tool: 'tape', at: `layout.street.${n}` }));
      const off = face + level.plan.rafter.thickness / 2 - (figured[n - 1] as number);
      expect(Math.abs(off - (n - 1) * sixteenth), `rafter ${n}`).toBeLessThan(sixteenth / 2);
    }
    // On its mark from the datum the other side is where it belongs.
    const yard = Number(shows(attempt, { tool: 'tape', at: 'layout.yard.8' }));
    expect(Math.abs(yard + level.plan.rafter.thickness / 2 - (figured[7] as number))).toBeLessThan(sixteenth);
  });
});

describe('boards that dried since they were cut', { timeout: patience }, () => {
  const dried = 0.03;
  const base = trueLevel('hay-barn');
  const level: Level = { ...base, asFound: { ...base.asFound, dried } };
  const attempt = replay(
    { level, seed: 1, mode: 'own' },
    play(level, 'expert', { seed: 1, mode: 'own', wanted: { hang: 'posts' } }).steps.map(
      ({ action }) => action,
    ),
  );
  const { depth } = level.plan.rafter;
  const m = level.plan.slope.rise / level.plan.slope.run;
  const g = Math.sqrt(1 + m * m);
  // Height above the plate of a 2×8 at 6 in 12 with a 3½ in seat: D·g − s·m.
  const over = depth * g - 3.5 * m;
  const rafters = Object.values(pose(attempt).rafters);

  it('sit low over the plates by (1 − k) of the height above the plate, less what light the crew left under the seats', () => {
    expect(rafters.length).toBe(36);
    const figured = dried * over;
    // A seat that bears at its outer edge is open by s·m·(1 − k)/g² at its inner edge; more light than that is under all of it.
    const inner = (3.5 * m * dried) / (g * g);
    for (const { heel, gaps } of rafters) {
      const low = over - heel.z;
      expect(Math.abs(low + (gaps.seat - inner) - figured)).toBeLessThan(1 / 64);
      expect(low).toBeGreaterThan(0.7 * figured);
    }
  });

  it('open at the bottom of the plumb cut by D·m·(1 − k)/g', () => {
    const open = rafters.map(({ gaps }) => gaps.plumbBottom - gaps.plumbTop);
    const mean = open.reduce((a, b) => a + b, 0) / open.length;
    const figured = (depth * m * dried) / g;
    expect(mean).toBeGreaterThan(0.8 * figured);
    expect(mean).toBeLessThan(1.2 * figured);
    // A square on the pile tells it before anything is up, and a tape across the board why.
    expect(Number(shows(attempt, { tool: 'square', at: 'board.1' }))).toBeCloseTo(figured, 2);
    expect(Number(shows(attempt, { tool: 'tape', at: 'board.1.depth' }))).toBeCloseTo(depth * (1 - dried), 1);
  });
});
