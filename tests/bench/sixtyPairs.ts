import { readFileSync } from 'node:fs';
import { parseLevel } from '../../src/content/readLevel';
import { stationsOf } from '../../src/core/level/layout';
import type { Level } from '../../src/core/level/level';
import { sides } from '../../src/core/roof/side';
import type { Action } from '../../src/core/site/action';
import type { Attempt } from '../../src/core/site/attempt';
import { figuredPost } from '../../src/core/site/decidePost';
import { rafterId } from '../../src/core/site/ids';
import { begin, take } from '../../src/core/site/take';

/** A roof of 60 pairs, far more than any job of the course has: 29 1/2 ft at 6 on center, nothing out of true. */

export const sixtyPairs = (): string => {
  const file = JSON.parse(readFileSync('levels/first-gable/garden-hut.json', 'utf8')) as {
    roof: object;
    asFound: { ranges: object };
  };
  const ranges = Object.fromEntries(Object.keys(file.asFound.ranges).map((key) => [key, 0]));
  return JSON.stringify({
    ...file,
    roof: { ...file.roof, length: 354, spacing: 6 },
    asFound: { ...file.asFound, planted: [], ranges },
  });
};

/** Acts that put up its ridge and all its rafters, tacked; only those that the site takes. */
export const actsForSixty = (text: string, seed: number): readonly Action[] => {
  const read = parseLevel(text);
  if (!read.ok) throw new Error(JSON.stringify(read.complaints));
  let attempt = begin(read.value, seed, 'own');
  for (const act of actsOf(read.value)) {
    const next = take(attempt, act);
    if (next.steps.at(-1)?.outcome.ok) attempt = next;
  }
  return done(attempt);
};

const done = (attempt: Attempt): readonly Action[] => {
  const up = Object.keys(attempt.site.members).filter((id) => id.startsWith('rafter.')).length;
  if (up !== 120 || attempt.site.down)
    throw new Error(`${up} rafters stand, ${JSON.stringify(attempt.site.down)}`);
  return attempt.steps.map(({ action }) => action);
};

const actsOf = (level: Level): readonly Action[] => {
  const last = stationsOf(level).length;
  const post = Math.round(figuredPost({ level }) * 16) / 16;
  const rafters = stationsOf(level).flatMap((_, i) =>
    sides.map((side, k): readonly [string, string] => [rafterId(side, i + 1), `board.${2 * i + k + 1}`]),
  );
  return [
    ...(['street', 'yard', 'A', 'B'] as const).map((from): Action => ({
      type: 'brace',
      kind: 'wall',
      from,
      to: 'ground',
    })),
    { type: 'setTie', kind: 'joist', station: 1 },
    { type: 'carryOn', like: [4, 4], to: last },
    ...(['plate.street', 'plate.yard', 'ridge'] as const).map((on): Action => ({
      type: 'mark',
      on,
      datum: 'endA',
      spacing: level.plan.spacing,
      faces: 2,
    })),
    ...(['platform', 'ladder', 'openings', 'gear'] as const).map((what): Action => ({
      type: 'makeReady',
      what,
      at: 'site',
    })),
    ...([1, 2] as const).map((at): Action => ({ type: 'setPost', at, height: post, fixed: 'both' })),
    { type: 'place', member: 'ridge', at: 'posts', board: 'board.ridge' },
    ...rafters.flatMap(([id, board]): readonly Action[] => [
      { type: 'place', member: id, at: 'mark', board } as Action,
      ...(['ridge', 'heel'] as const).map(
        (kind) => ({ type: 'tack', joint: `${kind}:${id}`, nails: 2 }) as Action,
      ),
    ]),
  ];
};
