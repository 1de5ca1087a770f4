import type { Level } from '../core/level/level';
import { complaint, type Read } from './complaint';
import { levelSchema } from './levelSchema';
import { readJson } from './readJson';
import { readRoof } from './readRoof';
import { readShape, said } from './shape';

/** A level file's text to a level that can be played, or what is wrong with it. */
export const parseLevel = (text: string): Read<Level> => {
  const json = readJson(text);
  return json.ok ? readLevel(json.value) : json;
};

/** What the site, its order and its score know nothing of. */
const unplayed = ['yard', 'posts', 'wings', 'dormers', 'rake', 'standing'] as const;

/** The same from plain data. */
export const readLevel = (value: unknown): Read<Level> => {
  const shape = readShape(levelSchema, value);
  if (!shape.ok) return shape;
  const roof = readRoof(shape.value.roof, 'roof');
  if (!roof.ok) return roof;
  const plan = roof.value;
  if (plan.kind !== 'gable')
    return {
      ok: false,
      complaints: [
        complaint('roof.kind', `is ${said(plan.kind)}, which can be figured but not played yet`, '"gable"'),
      ],
    };
  const beyond = unplayed.filter((key) => plan[key] !== undefined);
  if (beyond.length > 0)
    return {
      ok: false,
      complaints: beyond.map((key) =>
        complaint(`roof.${key}`, 'can be figured but not played yet', 'a plain gable, without this key'),
      ),
    };
  const { format: _format, roof: _roof, machine, par, ...rest } = shape.value;
  return { ok: true, value: { ...rest, machine, par: par as Level['par'], plan } };
};
