import type { Level } from '../core/level/level';
import { halfGable } from '../core/level/halfGable';
import type { GablePlan, RoofPlan } from '../core/roof/plan';
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
const unplayed: readonly string[] = ['yard', 'wings', 'dormers', 'rake', 'standing', 'highPlate', 'between'];

/** A ridge that is laid on its posts lies there by itself. */
const unbalanced = ({ posts, length }: GablePlan): Complaint | undefined => {
  if (!posts) return undefined;
  const [first, last] = [Math.min(...posts.at), Math.max(...posts.at)];
  if (posts.at.length >= 2 && first < length / 2 && last > length / 2) return undefined;
  return complaint('roof.posts.at', ['oneSided'], ['postEachSide']);
};

/** A ledger goes up by hand or onto props, and is cut to its wall. */
const wallWays = ({ hang, ridgeLength }: Level['methods']): Complaint | undefined => {
  if (hang.includes('machine'))
    return complaint('methods.hang', ['ledgerLifted'], ['these', '"posts", "hand"']);
  return ridgeLength.includes('wild')
    ? complaint('methods.ridgeLength', ['ledgerWild'], ['these', '"cut"'])
    : undefined;
};

/** The same from plain data. */
export const readLevel = (value: unknown): Read<Level> => {
  const shape = readShape(levelSchema, value);
  if (!shape.ok) return shape;
  const roof = readRoof(shape.value.roof, 'roof');
  if (!roof.ok) return roof;
  const plan = roof.value;
  if (plan.kind !== 'gable' && plan.kind !== 'shed')
    return {
      ok: false,
      complaints: [complaint('roof.kind', ['kindNotPlayed', said(plan.kind)], ['these', '"gable", "shed"'])],
    };
  const beyond = Object.keys(plan).filter(
    (key) => unplayed.includes(key) && plan[key as keyof RoofPlan] !== undefined,
  );
  if (beyond.length > 0)
    return {
      ok: false,
      complaints: beyond.map((key) => complaint(`roof.${key}`, ['notPlayed'], ['plainRoof'])),
    };
  const { format: _format, roof: _roof, machine, par, ...rest } = shape.value;
  const level = { ...rest, machine, par: par as Level['par'] };
  if (plan.kind === 'shed') {
    const { ledger } = plan;
    if (!ledger) throw new Error('a shed without a high plate has a ledger');
    const off = wallWays(rest.methods);
    return off
      ? { ok: false, complaints: [off] }
      : { ok: true, value: { ...level, plan: halfGable({ ...plan, ledger }), shed: plan } };
  }
  const off = unbalanced(plan);
  return off ? { ok: false, complaints: [off] } : { ok: true, value: { ...level, plan } };
};
