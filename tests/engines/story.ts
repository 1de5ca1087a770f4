import { siteDigest } from '../../src/content/canonical';
import type { Level } from '../../src/core/level/level';
import type { Action } from '../../src/core/site/action';
import { replay } from '../../src/core/hands/opened';

/** A run told again from its acts, as what every engine has to agree on: a digest of the whole site. */
export const tellRun = (level: string, seed: number, acts: string): string => {
  const { site } = replay(
    { level: JSON.parse(level) as Level, seed, mode: 'own' },
    JSON.parse(acts) as readonly Action[],
  );
  return `${siteDigest(site)} ${site.told} ${Object.keys(site.rests).length}`;
};

(globalThis as { tellRun?: typeof tellRun }).tellRun = tellRun;
