import { describe, expect, it } from 'vitest';
import { gaugeBlock } from '../../src/core/instruments/rows';
import { stationsOf } from '../../src/core/level/layout';
import { figuredTop, pose } from '../../src/core/site/posed';
import { shows } from '../../src/core/site/shows';
import { laidOut, timesFor, traceText, tracesOf, type Trace } from '../../src/present/exaggerated';
import { catalogues } from '../../src/present/words/messages';
import { cleanActs, told, usual } from '../order/story';
import { levelOf } from '../site/levels';
import { shedDone } from '../site/shedRun';

const hut = levelOf('garden-hut');
const acts = cleanActs(hut, usual);
const room = { long: 400, half: 14, length: hut.plan.length };

describe('the enlarged strip', () => {
  it('stands where the pose has the ridge, to the pixel, at both ends and the middle, on several sites', () => {
    for (const seed of [1, 7, 23])
      for (const share of [0.45, 1]) {
        const attempt = told(hut, acts.slice(0, Math.round(acts.length * share)), { seed });
        const { ridge } = pose(attempt);
        const traces = tracesOf(attempt);
        const [height, straight] = traces;
        if (!ridge || !height || !straight) throw new Error('no ridge');
        const times = timesFor(traces, room);
        const scale = (times * room.long) / room.length;
        const stations = stationsOf(hut);
        const at = (trace: Trace, n: number): number => laidOut(trace, times, room)[n]?.[1] ?? NaN;
        for (const [n, place] of [
          [0, ridge.A],
          [(stations.length - 1) / 2, ridge.mid],
          [stations.length - 1, ridge.B],
        ] as const) {
          // The pose tells the ends of the ridge; the end stations stand three quarters of an inch in.
          expect(Math.abs(at(height, n) + (place.z - figuredTop(hut)) * scale)).toBeLessThan(1);
          expect(Math.abs(at(straight, n) + place.y * scale)).toBeLessThan(1);
        }
      }
  });

  it('shows at each rafter what the string shows there', () => {
    const attempt = told(hut, acts, { seed: 7 });
    const gaps = tracesOf(attempt).filter(({ kind }) => kind.startsWith('gap'));
    expect(gaps.length).toBeGreaterThan(0);
    for (const { kind, points } of gaps)
      for (const { station, off } of points)
        expect(gaugeBlock - off).toBe(
          shows(attempt, { tool: 'string', at: `plane.${kind.slice(4)}.${station}` }),
        );
  });

  it('is as many times larger as still keeps every line in its strip, and no more', () => {
    const trace = (off: number): Trace => ({ kind: 'height', points: [{ x: 0, off, station: 1 }] });
    for (const off of [0.01, 0.07, 0.2, 0.5, 1.3]) {
      const times = timesFor([trace(off)], room);
      const y = Math.abs(laidOut(trace(off), times, room)[0]?.[1] ?? 0);
      expect(y).toBeLessThanOrEqual(room.half);
      if (times < 200) expect(y * 2.5).toBeGreaterThan(room.half);
    }
    expect(timesFor([trace(0)], room)).toBe(200);
  });

  it('says where it is furthest off and which way, in both languages', () => {
    const low: Trace = {
      kind: 'height',
      points: [
        { x: 0, off: 0, station: 1 },
        { x: 24, off: -0.1875, station: 2 },
      ],
    };
    expect(traceText(catalogues.en, low, 'feet')).toBe('Ridge height: most at 2, 3/16" low.');
    expect(traceText(catalogues.es, low, 'feet')).toBe('Alto de cumbrera: lo más, en 2: 3/16" de menos.');
    const level: Trace = { kind: 'height', points: [{ x: 0, off: 0.001, station: 1 }] };
    expect(traceText(catalogues.en, level, 'feet')).toBe('Ridge height: on its line.');
  });

  it('of a shed has the height of its ledger and the one side it has', () => {
    const traces = tracesOf(shedDone);
    expect(traces.map(({ kind }) => kind)).toEqual(['height', 'gap.street']);
    const { ridge } = pose(shedDone);
    const { points = [] } = traces[0] ?? {};
    expect(points).toHaveLength(stationsOf(shedDone.level).length);
    expect(points[0]?.off).toBeCloseTo((ridge?.A.z ?? NaN) - figuredTop(shedDone.level), 2);
  });

  it('has nothing to show before there is a ridge', () => {
    expect(tracesOf(told(hut, []))).toEqual([]);
  });
});
