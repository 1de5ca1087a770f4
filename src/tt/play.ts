import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { attemptFile, attemptText } from '../content/attemptFile';
import type { HandName } from '../core/hands/hand';
import { hands, play } from '../core/hands/play';
import { scoreOf } from '../core/score/scored';
import { modes, type Mode } from '../core/level/mode';
import { loadLevel } from './levelFiles';
import { refuseInput } from './readFile';
import type { Verb } from './verbs';

const usage = 'tt play: play LEVEL --hand NAME [--seed N] [--mode MODE] [--out ATTEMPT.json]';

type Asked = {
  readonly level: string;
  readonly hand: HandName;
  readonly seed: number;
  readonly mode: Mode;
  readonly out: string | undefined;
};

/** `play LEVEL --hand NAME`: a crew hand plays from the start to its end, and is scored. */
export const playVerb: Verb = (args) => {
  const asked = askedOf(args);
  if (typeof asked === 'string') {
    process.stderr.write(`${asked}\n`);
    return 2;
  }
  const level = loadLevel(asked.level);
  if (!level.ok) return refuseInput(asked.level, level.complaints);
  const attempt = play(level.value, asked.hand, { seed: asked.seed, mode: asked.mode });
  const score = scoreOf(attempt);
  const { total, pass, parts, done, sound, findings } = score;
  if (asked.out !== undefined) writeFileSync(asked.out, attemptText(attemptFile(attempt, score)));
  process.stdout.write(
    `${JSON.stringify({ level: level.value.id, hand: asked.hand, seed: asked.seed, total, pass, parts, done, sound, findings })}\n`,
  );
  return 0;
};

/** What was asked for, or the one line that says what is wrong with it. */
const askedOf = (args: readonly string[]): Asked | string => {
  const parsed = parsedOf(args);
  if (typeof parsed === 'string') return parsed;
  const { positionals, values } = parsed;
  const [level, ...more] = positionals;
  if (level === undefined || more.length > 0 || values.hand === undefined) return usage;
  const hand = hands.find(({ name }) => name === values.hand)?.name;
  if (!hand)
    return `tt play: --hand: ${values.hand} is no crew hand (${hands.map(({ name }) => name).join(', ')})`;
  const mode = modes.find((name) => name === (values.mode ?? 'check-off'));
  if (!mode) return `tt play: --mode: ${values.mode} is no mode (${modes.join(', ')})`;
  const seed = Number(values.seed ?? 1);
  if (!Number.isInteger(seed) || seed < 0 || seed > 4294967295)
    return `tt play: --seed: ${values.seed} is no seed (a whole number, 0 to 4294967295)`;
  return { level, hand, seed, mode, out: values.out };
};

const parsedOf = (args: readonly string[]) => {
  const text = { type: 'string' } as const;
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { hand: text, seed: text, mode: text, out: text },
    });
  } catch (error) {
    return `tt play: ${error instanceof Error ? error.message.split('. ')[0] : String(error)} (${usage})`;
  }
};
