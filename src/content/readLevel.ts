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
  if (plan.standing)
    return {
      ok: false,
      complaints: [
        complaint('roof.standing', 'can be figured but not played yet', 'a gable with nothing beside it'),
      ],
    };
  const { format: _format, roof: _roof, machine, par, ...rest } = shape.value;
  return { ok: true, value: { ...rest, machine, par: par as Level['par'], plan } };
};
