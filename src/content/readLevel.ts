import type { Level } from '../core/level/level';
import type { GablePlan } from '../core/roof/plan';
import { complaint, type Complaint, type Read } from './complaint';
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
const unplayed = ['yard', 'wings', 'dormers', 'rake', 'standing'] as const;

/** A ridge that is laid on its posts lies there by itself. */
const unbalanced = ({ posts, length }: GablePlan): Complaint | undefined => {
  if (!posts) return undefined;
  const [first, last] = [Math.min(...posts.at), Math.max(...posts.at)];
  if (posts.at.length >= 2 && first < length / 2 && last > length / 2) return undefined;
  return complaint('roof.posts.at', ['oneSided'], ['postEachSide']);
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
      complaints: [complaint('roof.kind', ['kindNotPlayed', said(plan.kind)], ['these', '"gable"'])],
    };
  const beyond = unplayed.filter((key) => plan[key] !== undefined);
  if (beyond.length > 0)
    return {
      ok: false,
      complaints: beyond.map((key) => complaint(`roof.${key}`, ['notPlayed'], ['plainGable'])),
    };
  const off = unbalanced(plan);
  if (off) return { ok: false, complaints: [off] };
  const { format: _format, roof: _roof, machine, par, ...rest } = shape.value;
  return { ok: true, value: { ...rest, machine, par: par as Level['par'], plan } };
};
