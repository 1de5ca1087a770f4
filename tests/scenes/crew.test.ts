import { beforeAll, describe, expect, test } from 'vitest';
import { lengthOf, lerp, sub, type Vec3 } from '../../src/core/geometry/vector';
import { play } from '../../src/core/hands/play';
import { roofOf } from '../../src/core/level/layout';
import type { Action } from '../../src/core/site/action';
import { loadHangs } from '../../src/core/site/holding';
import { pose } from '../../src/core/site/posed';
import { siteAfter } from '../../src/core/site/take';
import { initialSite } from '../../src/core/site/initial';
import { lastActOf, sameWork } from '../../src/present/lastAct';
import type { Shown } from '../../src/present/model/scheme';
import { modelOf } from '../../src/present/model/solidsOf';
import { apart, bulkOf } from '../../src/present/model/stickOf';
import type { Solid } from '../../src/present/model/solid';
import { crewDrawn, workersOf, type Worker } from '../../src/scenes/overview/crew';
import { bonesOf } from '../../src/scenes/overview/figure';
import { gripOf, toolIn } from '../../src/scenes/overview/tools';
import { levelOf } from '../site/levels';

/** What every drawing of the crew keeps, act by act, over whole jobs. */

type Moment = {
  readonly name: string;
  readonly act: Action;
  readonly shown: Shown;
  readonly workers: readonly [Worker, Worker];
  /** What stands, and what the crew uses besides. */
  readonly solids: readonly Solid[];
  readonly used: readonly Solid[];
};

const momentsOf = (job: string, seed: number, hang: 'hand' | 'machine'): readonly Moment[] => {
  const level = levelOf(job);
  const run = play(level, 'expert', { seed, mode: 'own', wanted: { hang } });
  let site = initialSite;
  const moments: Moment[] = [];
  run.steps.forEach((step, i) => {
    site = siteAfter(site, step);
    const act = lastActOf({ steps: run.steps.slice(0, i + 1) });
    if (!act || sameWork(act, moments.at(-1)?.act)) return;
    const shown: Shown = {
      level,
      site,
      pose: pose({ level, seed, site }),
      figured: roofOf(level),
      lastAct: act,
    };
    const { solids } = modelOf(shown);
    const at = workersOf(shown, solids);
    const used = crewDrawn(shown, at).solids;
    moments.push({ name: `${i} ${JSON.stringify(act)}`, act, shown, workers: at.workers, solids, used });
  });
  return moments;
};

type Wrong = string;

/** Everything wrong at any moment, so that a failure tells which act and who. */
const wrongIn = (
  moments: readonly Moment[],
  check: (worker: Worker, moment: Moment) => string | undefined,
): readonly Wrong[] =>
  moments.flatMap((moment) =>
    moment.workers.flatMap((worker) => {
      const wrong = check(worker, moment);
      return wrong === undefined ? [] : [`${moment.name} ${worker.who} (${worker.task.doing}): ${wrong}`];
    }),
  );

const apartFrom = (a: Vec3, b: Vec3): number => lengthOf(sub(a, b));

const handsOf = ({ posed, body }: Worker): { readonly main: Vec3; readonly other: Vec3 } =>
  posed?.hand === 'left'
    ? { main: body.hands.left, other: body.hands.right }
    : { main: body.hands.right, other: body.hands.left };

/** Highest drawn face under a point that a boot at this height could stand on, inches. */
const carriedBy = (solids: readonly Solid[], [x, y, z]: Vec3): boolean =>
  solids.some(({ faces }) =>
    faces.some(({ points, normal }) => {
      if (normal[2] < 0.99 || Math.abs((points[0]?.[2] ?? 0) - z) > 0.1) return false;
      const xs = points.map((p) => p[0]);
      const ys = points.map((p) => p[1]);
      return (
        x > Math.min(...xs) - 1.5 &&
        x < Math.max(...xs) + 1.5 &&
        y > Math.min(...ys) - 1.5 &&
        y < Math.max(...ys) + 1.5
      );
    }),
  );

const groundLevel = -66;

const feetOf = ({ posture }: Worker): readonly Vec3[] => {
  const a = (posture.yaw * Math.PI) / 180;
  const [c, s] = [Math.cos(a), Math.sin(a)];
  return [posture.left.foot, posture.right.foot].map(([f, l, u]): Vec3 => [
    posture.at[0] + f * c - l * s,
    posture.at[1] + f * s + l * c,
    posture.at[2] + u,
  ]);
};

const jobs = [
  ['garden-hut', 7, 'hand'],
  ['garden-hut', 23, 'hand'],
  ['boathouse', 7, 'machine'],
] as const;

describe.each(jobs)('the crew of %s on site %i, hung by %s', (job, seed, hang) => {
  let moments: readonly Moment[] = [];
  beforeAll(() => {
    moments = momentsOf(job, seed, hang);
  }, 240_000);

  test('touches with its hands and tools what it works at', () => {
    const wrong = wrongIn(moments, (worker) => {
      const { task, posed } = worker;
      if (!posed || !task.works) return undefined;
      const { main, other } = handsOf(worker);
      const grip = apartFrom(main, gripOf(task.tool, task.works, posed.toward));
      if (grip > 1) return `hand ${grip.toFixed(1)} in off`;
      if (posed.holds && apartFrom(other, posed.holds) > 1) return 'the other hand is off';
      if (!task.tool) return undefined;
      const { tip } = toolIn(task.tool, { id: 'x', hand: main, works: task.works }, posed.toward);
      return apartFrom(tip, task.works) > 1 ? 'the tool is off' : undefined;
    });
    expect(wrong).toEqual([]);
  });

  test('reaches no farther than its bones', () => {
    const wrong = wrongIn(moments, ({ posture }) => {
      const { arms, legs } = bonesOf(posture);
      const short = Math.max(arms.left.short, arms.right.short, legs.left.short, legs.right.short);
      return short > 0.15 ? `${short.toFixed(2)} in too far` : undefined;
    });
    expect(wrong).toEqual([]);
  });

  test('stands on something that is drawn, or on the ground', () => {
    const wrong = wrongIn(moments, (worker, { solids, used }) => {
      const { task } = worker;
      if (task.where.on === 'spot' && task.where.spot === 'ladder') return undefined;
      const afloat = feetOf(worker).filter(
        (foot) => Math.abs(foot[2] - groundLevel) > 0.1 && !carriedBy([...solids, ...used], foot),
      );
      return afloat.length > 0 ? `${afloat.length} feet in the air at ${String(afloat[0])}` : undefined;
    });
    expect(wrong).toEqual([]);
  });

  test('has nobody inside of what stands', () => {
    const wrong = wrongIn(moments, ({ posture }, { solids }) => {
      const { pelvis, chest, head, legs } = bonesOf(posture);
      const lines: readonly (readonly [Vec3, Vec3])[] = [
        [pelvis, chest],
        [chest, head],
        ...[legs.left, legs.right].flatMap((leg) => [
          [leg.from, leg.joint] as const,
          [leg.joint, leg.end] as const,
        ]),
      ];
      const points = lines.flatMap(([a, b]) => [0, 0.2, 0.4, 0.6, 0.8, 1].map((t) => lerp(a, b, t)));
      const hit = solids.find((solid) => {
        if (solid.role === 'floor' || solid.role === 'panel') return false;
        const bulk = bulkOf(solid);
        return points.some((p) => apart(bulk, p) < 1);
      });
      return hit ? `inside ${hit.id}` : undefined;
    });
    expect(wrong).toEqual([]);
  });

  test('works at the joint that the act names', () => {
    const wrong = moments.flatMap(({ act, workers, solids, name }) => {
      if (act.type !== 'tack' && act.type !== 'nailOff') return [];
      const at = workers.find(({ task }) => task.doing === 'nail')?.task.works;
      if (!at) return [`${name}: nobody nails`];
      const member = act.joint.slice(act.joint.indexOf(':') + 1).replace(/\.(near|far)$/, '');
      const id = member.startsWith('collar') ? member.replace(/\.(street|yard)$/, '') : member;
      const tied = act.joint.startsWith('heelTie') ? member.replace(/rafter\.\w+/, 'joist') : id;
      const own = solids.filter((solid) => tied.startsWith(solid.id) && solid.id.includes('.'));
      const gap = Math.min(...own.map((solid) => apart(bulkOf(solid), at)));
      return gap <= 1.6 ? [] : [`${name}: ${gap.toFixed(1)} in from ${tied}`];
    });
    expect(wrong).toEqual([]);
  });

  test('keeps clear of the line of a hung load', () => {
    const hung = moments.filter(({ shown }) => loadHangs(shown.site));
    expect(hung.length > 0).toBe(hang === 'machine');
    const wrong = wrongIn(hung, ({ posture, who }, { shown }) => {
      if (shown.site.people[who] !== 'clear') return undefined;
      const { pelvis, chest, head } = bonesOf(posture);
      const y = shown.pose.ridge?.mid.y ?? 0;
      const under = [pelvis, chest, head].some(
        (p) => p[0] > 0 && p[0] < shown.level.plan.length && Math.abs(p[1] - y) < 3,
      );
      return under ? 'under the ridge' : undefined;
    });
    expect(wrong).toEqual([]);
  });
});
