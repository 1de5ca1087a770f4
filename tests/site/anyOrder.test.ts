import { describe, expect, it } from 'vitest';
import { play } from '../../src/core/hands/play';
import { gableFrame } from '../../src/core/mechanics/gableFrame';
import { settle } from '../../src/core/mechanics/settle';
import { framed } from '../../src/core/site/framed';
import { initialSite } from '../../src/core/site/initial';
import { siteAfter } from '../../src/core/site/take';
import type { SiteState } from '../../src/core/site/state';
import { levelOf } from './levels';

/**
 * Frames are made of pieces of those before and faces begin from where they last came to rest. It must not show: each frame of
 * a run comes out bit for bit as one that nothing was kept for, in whatever order frames are asked for.
 */
describe.each([
  ['garden-hut', 'skips-checks'],
  ['garden-hut', 'naive-order'],
  ['hay-barn', 'naive-order'],
  ['boathouse', 'beginner'],
] as const)('frames of %s by hand %s', (id, hand) => {
  const level = levelOf(id);
  const run = play(level, hand, { seed: 11, mode: 'own' });
  const sites = run.steps.reduce<readonly SiteState[]>(
    (all, step) => [...all, siteAfter(all.at(-1) ?? initialSite, step)],
    [],
  );
  const standing = (site: SiteState) => ({ level, seed: run.seed, site });

  /** The same gable with nothing in it that any cache knows. */
  const unknownTo = (site: SiteState) => {
    const frame = framed(standing(site));
    return frame && settle(gableFrame(structuredClone(frame.gable)).frame);
  };

  it.each([
    ['as they were made', (all: readonly SiteState[]) => all],
    ['backward', (all: readonly SiteState[]) => [...all].reverse()],
    [
      'from both ends in turn',
      (all: readonly SiteState[]) => all.map((_, i) => all.at(i % 2 === 0 ? i : -i)),
    ],
  ])('are those of a frame alone, asked for %s', (_how, order) => {
    let stood = 0;
    for (const site of order(sites)) {
      const frame = site && framed(standing({ ...site }));
      if (!site || !frame) continue;
      const alone = unknownTo(site);
      stood++;
      expect(frame.settled.u).toEqual(alone?.u);
      expect(frame.settled.forces).toEqual(alone?.forces);
      expect(frame.settled.falls).toEqual(alone?.falls);
      expect(frame.settled.gave.map(({ rests }) => rests)).toEqual(alone?.gave.map(({ rests }) => rests));
    }
    expect(stood).toBeGreaterThan(40);
  });
});
