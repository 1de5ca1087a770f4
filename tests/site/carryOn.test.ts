import { describe, expect, it } from 'vitest';
import { siteDigest } from '../../src/content/canonical';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { figuredPost } from '../../src/core/site/decidePost';
import type { JointId } from '../../src/core/site/ids';
import { replay } from '../../src/core/hands/opened';
import { begin, take } from '../../src/core/site/take';
import { trueLevel } from './levels';

const base = trueLevel('garden-hut');
// Bays grow and marks wander, so that the two sites are worth comparing; heights are true, so that every heel can be tacked.
const level = {
  ...base,
  asFound: {
    ...base.asFound,
    ranges: { ...base.asFound.ranges, growth: 1 / 16, markWander: 1 / 32, bodyLength: 1 / 32 },
  },
};
const all = (actions: readonly Action[]): Attempt => replay({ level, seed: 11, mode: 'own' }, actions);

const post = Math.round(figuredPost({ level }) * 16) / 16;
const ready: readonly Action[] = [
  ...(['platform', 'gear'] as const).map((what): Action => ({ type: 'makeReady', what, at: 'site' })),
  ...(['plate.street', 'plate.yard', 'ridge'] as const).map((on): Action => ({
    type: 'mark',
    on,
    datum: 'endA',
    spacing: 24,
    faces: 2,
  })),
  { type: 'setPost', at: 1, height: post, fixed: 'both' },
  { type: 'setPost', at: 2, height: post, fixed: 'both' },
  { type: 'place', member: 'ridge', at: 'posts' },
];

/** One rafter up, tacked at both ends, its block tried in behind it. */
const bay = (n: number): readonly Action[] => [
  { type: 'place', member: `rafter.yard.${n}`, at: 'mark' },
  { type: 'tack', joint: `ridge:rafter.yard.${n}`, nails: 2 },
  { type: 'tack', joint: `heel:rafter.yard.${n}`, nails: 2 },
];

const joist = (n: number): Action => ({ type: 'setTie', kind: 'joist', station: n });

describe('carry on like this', () => {
  it('is the same as doing it by hand, station by station', () => {
    const first = [...ready, ...bay(2)];
    const carried = all([...first, { type: 'carryOn', like: [ready.length, ready.length + 2], to: 8 }]);
    const single = all([...first, ...[3, 4, 5, 6, 7, 8].flatMap(bay)]);
    expect(Object.keys(carried.site.members).filter((id) => id.startsWith('rafter'))).toHaveLength(7);
    expect(siteDigest(carried.site)).toBe(siteDigest(single.site));
    expect(carried.site.minutes).toBe(single.site.minutes);
  });

  it('repeats by the stride of what was shown', () => {
    const carried = all([joist(1), joist(2), { type: 'carryOn', like: [0, 1], to: 9 }]);
    // Two joists shown; three more rounds of two fit up to 9, the ninth is left to be done.
    expect(Object.keys(carried.site.members)).toHaveLength(8);
  });

  it('stops where the work stops, and keeps what was done until then', () => {
    const carried = all([joist(1), joist(5), { type: 'carryOn', like: [0, 0], to: 9 }]);
    expect(Object.keys(carried.site.members)).toHaveLength(5);
    expect(carried.steps[2]?.outcome.ok).toBe(true);
  });

  it.each<[string, Action[], Action]>([
    ['nothing shown', [], { type: 'carryOn', like: [0, 0], to: 5 }],
    [
      'an act that names no station',
      [{ type: 'makeReady', what: 'ladder', at: 'site' }],
      { type: 'carryOn', like: [0, 0], to: 5 },
    ],
    ['a station that was passed', [joist(4)], { type: 'carryOn', like: [0, 0], to: 4 }],
    [
      'a reading, which has to be taken each time',
      [{ type: 'read', tool: 'tape', at: 'width.A', said: 144 }],
      { type: 'carryOn', like: [0, 0], to: 4 },
    ],
  ])('refuses %s', (_, before, act) => {
    const attempt = take(all(before), act);
    expect(attempt.steps.at(-1)?.outcome).toEqual({ ok: false, why: 'patternDoesNotFit' });
  });
});

describe('taking back', () => {
  it('tells the story again without the step and keeps it in the record', () => {
    const attempt = all([joist(1), joist(2), { type: 'undo', step: 0 }]);
    expect(Object.keys(attempt.site.members)).toEqual(['joist.2']);
    expect(attempt.steps).toHaveLength(3);
    expect(attempt.steps[0]?.undone).toBe(true);
  });

  it('refuses what stood on it in the telling', () => {
    const attempt = take(all([...ready, ...bay(2)]), { type: 'undo', step: ready.length });
    const joint: JointId = 'ridge:rafter.yard.2';
    expect(attempt.site.joints[joint]).toBeUndefined();
    expect(attempt.steps[ready.length + 1]?.outcome).toEqual({ ok: false, why: 'noSuchJoint' });
  });

  it('replays to the same site', () => {
    const attempt = take(all([...ready, ...bay(2), ...bay(3)]), { type: 'undo', step: ready.length + 4 });
    const again = all(attempt.steps.map(({ action }) => action));
    expect(siteDigest(again.site)).toBe(siteDigest(attempt.site));
  });
});

it('refuses everything once the job is handed over', () => {
  const attempt = all([{ type: 'handOver' }, joist(1)]);
  expect(attempt.steps[1]?.outcome).toEqual({ ok: false, why: 'over' });
});

it('never changes an attempt in place', () => {
  const start = begin(level, 1, 'own');
  const frozen = JSON.stringify(start.site);
  take(start, joist(3));
  expect(JSON.stringify(start.site)).toBe(frozen);
  expect(start.steps).toHaveLength(0);
});

it('draws the same site from the same seed, and another from another', () => {
  const one = all([...ready]);
  expect(siteDigest(one.site)).toBe(siteDigest(all([...ready]).site));
  const other = replay({ level, seed: 12, mode: 'own' }, ready);
  expect(siteDigest(other.site)).not.toBe(siteDigest(one.site));
});
