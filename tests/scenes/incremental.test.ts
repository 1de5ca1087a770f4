import { describe, expect, test } from 'vitest';
import { play } from '../../src/core/hands/play';
import { roofOf } from '../../src/core/level/layout';
import type { Attempt } from '../../src/core/site/attempt';
import { pose } from '../../src/core/site/posed';
import { begin, take } from '../../src/core/site/take';
import { lastActOf } from '../../src/present/lastAct';
import { schemeOf, type Shown } from '../../src/present/model/scheme';
import { corners, type Corner } from '../../src/scenes/ink/camera';
import { giveBack, addMesh, addSolid, rasterFor, type Raster } from '../../src/scenes/ink/raster';
import { rastersOf } from '../../src/scenes/ink/light';
import { colorsOf, type Shading } from '../../src/scenes/ink/shade';
import type { Colors } from '../../src/scenes/ink/staying';
import { stagedOf, type Staged } from '../../src/scenes/overview/drawOverview';
import { fittedCamera } from '../../src/scenes/overview/fit';
import { levelOf } from '../site/levels';

/** A picture that takes over what stayed the same is the picture that is drawn afresh, to the last bit. */

const size = { width: 300, height: 200 };
const pitch = 2;

type Drawn = { readonly staged: Staged; readonly raster: Raster; readonly colors: Colors };

const shadingBy = ({ lights }: Staged): Shading => ({
  theme: 'day',
  amount: 1,
  pitch,
  lighting: { kind: 'lit', lights },
});

const rasterOf = (shown: Shown, { model, crew, boom }: Staged, corner: Corner): Raster => {
  const area = { x: 0, y: 0, ...size };
  const { overhang } = shown.level.plan;
  const camera = fittedCamera({ scheme: schemeOf(shown), overhang, hook: 12, corner, area, ratio: 1 });
  const raster = rasterFor({ ...size, fine: 2 }, camera);
  for (const solid of [...model.solids, ...crew.solids, ...boom]) addSolid(raster, solid);
  for (const mesh of crew.meshes) addMesh(raster, mesh);
  return raster;
};

const drawn = (shown: Shown, corner: Corner, before?: Drawn): Drawn => {
  const staged = stagedOf(shown, corner, before?.staged);
  const raster = rasterOf(shown, staged, corner);
  const earlier = before && {
    raster: before.raster,
    lights: before.staged.lights,
    colors: before.colors.slice(),
  };
  return { staged, raster, colors: colorsOf(raster, shadingBy(staged), earlier) };
};

const letGo = ({ staged, raster }: Drawn, later?: Drawn): void => {
  giveBack([raster, ...rastersOf(staged.lights, later?.staged.lights)]);
};

const shownAt = ({ level, seed, site, steps }: Attempt): Shown => ({
  level,
  site,
  pose: pose({ level, seed, site }),
  figured: roofOf(level),
  lastAct: lastActOf({ steps }),
});

/** Moments one after the other from here and there in a whole job; ours: enough of each kind of act, in seconds. */
const every = 71;
const inARow = 3;

const differing = (a: Colors, b: Colors): number => {
  let count = 0;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) count++;
  return count;
};

describe.each([
  ['garden-hut', 7, {}],
  ['boathouse', 11, { hang: 'machine' }],
] as const)('over a job at %s', (name, seed, wanted) => {
  const level = levelOf(name);
  const acts = play(level, 'expert', { seed, mode: 'own', wanted }).steps.map(({ action }) => action);

  test('every picture after another is as if drawn afresh, from every corner', () => {
    const last = new Map<Corner, Drawn>();
    let at = begin(level, seed, 'own');
    let takenOver = 0;
    acts.forEach((act, i) => {
      at = take(at, act);
      if (i % every >= inARow) return;
      const corner = corners[Math.floor(i / every) % corners.length] as Corner;
      const shown = shownAt(at);
      const before = last.get(corner);
      const next = drawn(shown, corner, before);
      const fresh = drawn(shown, corner);
      expect(differing(next.colors, fresh.colors), `${act.type} at ${String(i)}`).toBe(0);
      if (before && next.staged.model === before.staged.model) takenOver++;
      letGo(fresh);
      if (before) letGo(before, next);
      last.set(corner, next);
    });
    expect(takenOver).toBeGreaterThan(0);
  }, 180_000);
});

test('a picture that took over the light of another moment would be seen to differ', () => {
  const level = levelOf('garden-hut');
  const acts = play(level, 'expert', { seed: 7, mode: 'own' }).steps.map(({ action }) => action);
  const set = acts.findIndex((act) => act.type === 'place');
  const before = acts.slice(0, set).reduce(take, begin(level, 7, 'own'));
  const one = drawn(shownAt(before), 'street');
  const two = drawn(shownAt(take(before, acts[set]!)), 'street', one);
  const same = { raster: one.raster, lights: two.staged.lights, colors: one.colors.slice() };
  const blind = colorsOf(two.raster, shadingBy(two.staged), same);
  expect(differing(blind, two.colors)).toBeGreaterThan(0);
});
