import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoof } from '../../src/content/readRoof';
import { play } from '../../src/core/hands/play';
import { replay } from '../../src/core/hands/opened';
import { halfGable } from '../../src/core/level/halfGable';
import { stationsOf } from '../../src/core/level/layout';
import { figure } from '../../src/core/roof/figure';
import { scoreOf } from '../../src/core/score/scored';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { framed } from '../../src/core/site/framed';
import { ledgerJoint } from '../../src/core/site/ids';
import { pose } from '../../src/core/site/posed';
import { take } from '../../src/core/site/take';
import { weightOf } from '../../src/core/stock/lumber';
import { balanceOf } from './balanced';
import { shedLevel } from './sheds';

/** A roof of one side against a wall: half a gable in its geometry, a ledger on studs in its statics. */

const tenths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 10), max: Math.round(max * 10) }).map((n) => n / 10);

describe('a shed as half of a gable', () => {
  it('has the same rafters, stations and height where they lean', () => {
    fc.assert(
      fc.property(
        fc.record({
          rise: fc.integer({ min: 2, max: 12 }),
          span: tenths(60, 240),
          length: tenths(80, 300),
          overhang: tenths(0, 20),
          seat: tenths(1.6, 3.4),
          thick: tenths(1.5, 3.5),
          reference: fc.constantFrom('plate', 'sheathing'),
        }),
        ({ rise, thick, ...rest }) => {
          const read = readRoof({
            format: 'tack-and-true/roof@1',
            kind: 'shed',
            slope: { rise, run: 12 },
            spacing: 16,
            rafter: { thickness: 1.5, depth: 7.25 },
            plate: { width: 5.5 },
            ledger: { thickness: thick, depth: 11.25 },
            ...rest,
          });
          fc.pre(read.ok && read.value.kind === 'shed');
          if (!read.ok || read.value.kind !== 'shed' || !read.value.ledger) return;
          const [shed, half] = [
            figure(read.value),
            figure(halfGable({ ...read.value, ledger: read.value.ledger })),
          ];
          const [a, b] = [shed.commonRafters[0]!, half.commonRafters[0]!];
          for (const key of ['bodyLength', 'tailLength', 'edgeLength', 'plumbCutLength', 'seat'] as const)
            expect(b[key]).toBeCloseTo(a[key], 9);
          expect(b.heightAbovePlate).toBeCloseTo(a.heightAbovePlate, 9);
          expect(half.ridges[0]!.topHeight).toBeCloseTo(shed.ledgers![0]!.topHeight, 9);
          expect(half.layout.stations).toEqual(shed.layout.stations);
        },
      ),
    );
  });
});

const level = shedLevel();
const run = (hang: 'posts' | 'hand', seed: number): Attempt =>
  play(level, 'expert', { seed, mode: 'own', wanted: { hang } });
const acts = ({ steps }: Attempt): readonly Action[] => steps.map(({ action }) => action);

/** Upward force of the frame's links whose joint is named so, pounds. */
const up = (attempt: Attempt, named: RegExp): number => {
  const { frame, forces } = framed(attempt)!.settled;
  return frame.links.reduce(
    (sum, { joint, ground }, i) => (ground === 'z' && named.test(joint) ? sum - (forces[i] as number) : sum),
    0,
  );
};

describe('a ledger on its wall', () => {
  it('carries what its rafters bring, and the low plate the rest, at every step', () => {
    for (const hand of ['expert', 'naive-order'] as const) {
      const { frames, worst } = balanceOf(level, hand, 5);
      expect(frames).toBeGreaterThan(20);
      expect(worst).toBeLessThan(1e-9);
    }
  });

  it('has about half of the rafters between its studs, and the tails pull that down', () => {
    const done = run('posts', 2);
    const { plan } = level;
    const [rafter] = figure(level.shed!).commonRafters;
    // By hand: each rafter weighs on the ledger with what is inside the plate turned about the middle of its seat.
    const g = rafter!.bodyLength / (plan.span / 2 - plan.ridge.thickness / 2);
    const inside = plan.span / 2 - plan.ridge.thickness / 2 - rafter!.seat / 2;
    const outside = plan.overhang + rafter!.seat / 2;
    const pounds = weightOf({ ...plan.rafter, length: g });
    const each = (pounds * (inside * inside - outside * outside)) / 2 / inside;
    const board = weightOf({ ...plan.ridge, length: stationsOf(level).at(-1)! - stationsOf(level)[0]! });
    const ledger = up(done, /^ledger:/);
    expect(ledger).toBeGreaterThan(0.9 * (each * stationsOf(level).length + board));
    expect(ledger).toBeLessThan(1.1 * (each * stationsOf(level).length + board));
  });

  it('pushes no wall apart: what goes out at the low plate is next to nothing', () => {
    const { frame, forces } = framed(run('hand', 2))!.settled;
    const out = frame.links.reduce(
      (sum, { joint, ground }, i) =>
        joint === 'wall.street' && ground === 'y' ? sum + (forces[i] as number) : sum,
      0,
    );
    expect(Math.abs(out)).toBeLessThan(0.05 * up(run('hand', 2), /./));
  });

  it('sags in its middle where only its ends are fastened when rafters load it', () => {
    const whole = run('posts', 3);
    const loose = acts(whole).filter((act) => !(act.type === 'nailOff' && act.joint.startsWith('ledger:')));
    const other = replay({ level, seed: 3, mode: 'own' }, loose);
    const sag = (attempt: Attempt): number => {
      const { A, mid, B } = pose(attempt).ridge!;
      return (A.z + B.z) / 2 - mid.z;
    };
    expect(Math.abs(sag(whole))).toBeLessThan(1 / 32);
    expect(sag(other)).toBeGreaterThan(1 / 8);
    const broken = scoreOf(other).findings.map(({ code }) => code);
    expect(broken).toContain('O13');
    expect(scoreOf(whole).findings.map(({ code }) => code)).not.toContain('O13');
  });
});

describe('acts at a wall', () => {
  const after = (count: number): Attempt =>
    replay({ level, seed: 4, mode: 'own' }, acts(run('posts', 4)).slice(0, count));
  const why = (attempt: Attempt, action: Action): string => {
    const { outcome } = take(attempt, action).steps.at(-1)!;
    return outcome.ok ? 'done' : 'why' in outcome ? String(outcome.why) : JSON.stringify(outcome);
  };

  it('are refused where there is no second side, nothing to tie and nowhere to push', () => {
    const up = acts(run('posts', 4)).findIndex((act) => act.type === 'place' && act.member === 'ridge') + 1;
    const standing = after(up);
    const no: readonly Action[] = [
      { type: 'place', member: 'rafter.yard.1', at: 'mark' },
      { type: 'setTie', kind: 'joist', station: 1 },
      { type: 'brace', kind: 'along', from: 'ridge', to: 'floor' },
      { type: 'brace', kind: 'wall', from: 'yard', to: 'ground' },
      { type: 'shift', member: 'ridge', at: 'A', by: 0.25 },
      { type: 'mark', on: 'plate.yard', datum: 'endA', spacing: 16, faces: 2 },
      { type: 'mendWall', wall: 'plate.yard.A', how: 'shim', by: 0.25 },
      { type: 'read', tool: 'tape', at: 'ridge.A.centre', said: 0 },
      { type: 'tack', joint: ledgerJoint(99), nails: 2 },
    ];
    for (const act of no) expect(why(standing, act), JSON.stringify(act)).not.toBe('done');
    expect(why(standing, { type: 'tack', joint: ledgerJoint(1), nails: 2 })).toBe('done');
  });

  it('move a ledger up or down on its tacks, and not once it is nailed', () => {
    let at = acts(run('hand', 6)).findIndex((act) => act.type === 'nailOff');
    let standing = replay({ level, seed: 6, mode: 'own' }, acts(run('hand', 6)).slice(0, at));
    const high = pose(standing).ridge!.A.z;
    standing = take(standing, { type: 'raise', end: 'A', by: 0.25 });
    expect(pose(standing).ridge!.A.z).toBeGreaterThan(high + 0.15);
    at = acts(run('hand', 6)).findIndex((act) => act.type === 'nailOff' && act.joint.startsWith('ledger:'));
    const nailed = replay({ level, seed: 6, mode: 'own' }, acts(run('hand', 6)).slice(0, at + 1));
    expect(why(nailed, { type: 'raise', end: 'A', by: 0.25 })).not.toBe('done');
  });
});
