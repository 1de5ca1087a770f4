import { describe, expect, it } from 'vitest';
import { boardTruth } from '../../src/core/level/boardTruth';
import { stationsOf } from '../../src/core/level/layout';
import { play } from '../../src/core/hands/play';
import { replay } from '../../src/core/hands/opened';
import type { Attempt } from '../../src/core/site/attempt';
import { partsOfJoint, type JointId } from '../../src/core/site/ids';
import { observe } from '../../src/core/site/observe';
import { groupName, roofGroups, roofSaid, thingSaid, type Sight } from '../../src/present/roofTold';
import { catalogues } from '../../src/present/words/messages';
import { levelOf } from '../site/levels';

/** The roof in words says what is seen, of everything, and nothing of what nature drew. */

const level = levelOf('garden-hut');
const run = play(level, 'expert', { seed: 7, mode: 'own' });
const acts = run.steps.map(({ action }) => action);
/** The same acts on another site: what does not go there is refused, as on any site. */
const after = (seed: number, count: number): Attempt =>
  replay({ level, seed, mode: 'own' }, acts.slice(0, count));

/** Everything that is told, in one language. No tool can be put to anything meanwhile. */
const textOf = (attempt: Attempt, lang: 'en' | 'es'): string => {
  const words = catalogues[lang];
  const seen = observe(attempt);
  const blind: Sight = new Proxy(seen, {
    get: (target, key: keyof typeof seen) => {
      if (key === 'look' || key === 'would') throw new Error(`${key} was used`);
      return target[key];
    },
  });
  const things = roofGroups(blind).flatMap((group) => [
    groupName(words, blind, group),
    ...group.ids.map((id) => `${id}: ${thingSaid(words, blind, id)}`),
  ]);
  return [roofSaid(words, blind), ...things].join('\n');
};

/** All that somebody without a tool can see of an attempt. */
const sightOf = (attempt: Attempt): string => {
  const { members, ridgeOn, marked, site, open, said, seenApart } = observe(attempt);
  const { joints, lines, mends, people, sling, trims, down, agreed } = site;
  const rafters = Object.keys(members).filter((id) => /^(rafter|block)/.test(id));
  const apart = rafters.flatMap((id) =>
    ['heel', 'ridge', 'blockEnd'].map((kind) =>
      seenApart(`${kind}:${id}${kind === 'blockEnd' ? '.far' : ''}` as JointId),
    ),
  );
  const split = open.filter(({ what }) => what === 'split');
  return JSON.stringify([
    members,
    ridgeOn,
    marked,
    joints,
    lines,
    Object.keys(mends),
    people,
    sling,
    trims,
    down,
    agreed,
    apart,
    split,
    said,
  ]);
};

const truthOf = (seed: number): string =>
  JSON.stringify(observe(after(seed, 0)).boards.all.map((board) => boardTruth({ level, seed }, board)));

describe('the roof in words', () => {
  it('is the same wherever the same is seen, whatever nature drew', () => {
    const texts = new Map<string, { readonly text: string; readonly truth: string }>();
    let pairs = 0;
    for (const count of [0, 12, 40, 90])
      for (let seed = 1; seed <= 25; seed++) {
        const attempt = after(seed, count);
        const so = { text: textOf(attempt, 'en') + textOf(attempt, 'es'), truth: truthOf(seed) };
        const before = texts.get(sightOf(attempt));
        texts.set(sightOf(attempt), so);
        if (before === undefined) continue;
        if (before.truth !== so.truth) pairs += 1;
        expect(so.text, `seed ${seed}, ${count} acts`).toBe(before.text);
      }
    expect(pairs).toBeGreaterThan(20);
  });

  it('has every member that stands, once', () => {
    for (const count of [40, 120, 190, acts.length]) {
      const attempt = after(7, count);
      const told = roofGroups(observe(attempt)).flatMap(({ ids }) => ids);
      expect(new Set(told).size).toBe(told.length);
      for (const id of Object.keys(attempt.site.members)) expect(told).toContain(id);
    }
  });

  it('tells nails as they are driven, and what is not there', () => {
    const words = catalogues.en;
    const attempt = after(7, 190);
    const seen = observe(attempt);
    for (const [joint, so] of Object.entries(attempt.site.joints)) {
      const said = thingSaid(words, seen, partsOfJoint(joint).member);
      if (so && so.nails > 0) expect(said).toContain(words.ui.state.nails(so.nails));
      if (so && so.tacks > 0) expect(said).toContain(words.ui.state.tacks(so.tacks));
    }
    const missing = roofGroups(seen)
      .flatMap(({ ids }) => ids)
      .filter((id) => /^(rafter|block|collar)/.test(id) && !(id in attempt.site.members));
    expect(missing.length).toBeGreaterThan(0);
    for (const id of missing) expect(thingSaid(words, seen, id)).toMatch(/^not there/);
  });

  it('tells light at a heel where an eye sees it, in quarters', () => {
    const words = catalogues.en;
    const gaps = Array.from({ length: 30 }, (_, i) => after(i + 1, 120)).flatMap((attempt) => {
      const seen = observe(attempt);
      return Object.keys(attempt.site.members)
        .filter((id) => id.startsWith('rafter.'))
        .map((id) => ({ light: seen.seenApart(`heel:${id}` as JointId), said: thingSaid(words, seen, id) }));
    });
    expect(gaps.some(({ light }) => light > 0)).toBe(true);
    for (const { light, said } of gaps) if (light > 0) expect(said).toContain('light shows, about');
  });

  it('tells what was read at a thing, the last of each kind, as it was said', () => {
    const attempt = after(7, acts.length);
    const seen = observe(attempt);
    const told = roofGroups(seen).flatMap(({ ids }) => ids.map((id) => thingSaid(catalogues.en, seen, id)));
    const all = told
      .join('; ')
      .split('; ')
      .filter((part) => part.includes(' read as '));
    const kept = attempt.site.readings.filter(({ at }) =>
      /^(heel|ridge|heelCut|layout|plane|plate|bay)/.test(at),
    );
    const kinds = new Set(kept.map(({ tool, at, from }) => `${tool} ${at} ${from ?? ''}`));
    expect(all.length).toBe(kinds.size);
    expect(kinds.size).toBeGreaterThan(20);
  });

  it('sums up how many pairs stand', () => {
    const all = stationsOf(level).length;
    expect(roofSaid(catalogues.en, observe(after(7, 0)))).toContain(`0 of ${all} pairs stand.`);
    expect(roofSaid(catalogues.en, observe(run))).toContain(`${all} of ${all} pairs stand.`);
  });
});
