import * as z from 'zod/mini';
import { methodTopics } from '../core/level/method';
import type { Action } from '../core/site/action';

/** What an act may look like in a file. Numbers are inches on a grid of 1/64 or counts; ids are checked by the site itself. */

const id = z.string().check(z.maxLength(64));
const inches = z.number().check(z.gte(-2000), z.lte(2000));
const count = z.int().check(z.gte(0), z.lte(2_000_000));
const end = z.enum(['A', 'B', 'both']);

const acts = {
  agree: { topic: z.enum(['signals', ...methodTopics]), value: id },
  makeReady: {
    what: z.enum(['platform', 'ladder', 'openings', 'anchor', 'gear']),
    at: z.enum(['site', 'wall', 'joists', 'ridge', 'load', 'rafter']),
  },
  read: {
    tool: z.enum([
      'eye',
      'tape',
      'rule',
      'level',
      'waterLevel',
      'string',
      'pattern',
      'square',
      'bob',
      'straightedge',
      'storyPole',
    ]),
    at: id,
    from: z.optional(id),
    said: z.union([inches, z.string().check(z.maxLength(24))]),
  },
  judge: { subject: id, call: z.enum(['sound', 'turn', 'swap', 'mend']), why: z.optional(id) },
  mark: {
    on: z.enum(['plate.street', 'plate.yard', 'ridge']),
    datum: z.enum(['endA', 'endB', 'last']),
    spacing: z.number().check(z.gt(0), z.lte(120)),
    faces: z.union([z.literal(1), z.literal(2)]),
  },
  mendWall: { wall: id, how: z.enum(['shim', 'plane', 'pull', 'brace']), by: inches },
  setTie: { kind: z.enum(['joist', 'rafterTie', 'cross']), station: count },
  place: {
    member: id,
    at: z.enum(['mark', 'block', 'machine', 'posts', 'hands', 'drop', 'drive', 'line']),
    board: z.optional(id),
  },
  tack: { joint: id, nails: count },
  nailOff: { joint: id },
  draw: { joint: id, nails: count },
  hookOn: { hitch: z.enum(['twoPoint', 'choked', 'one']), tagLine: z.boolean() },
  stand: {
    who: z.enum(['lead', 'helper']),
    where: z.enum(['clear', 'beside', 'path', 'platform', 'ladder', 'plate']),
  },
  signal: { sign: z.enum(['hoist', 'lower', 'stop', 'swing']), by: inches },
  setPost: { at: count, height: inches, fixed: z.enum(['head', 'foot', 'both']) },
  raise: { end, by: inches },
  shift: { member: id, at: z.enum(['A', 'B', 'mid', 'heel', 'both']), by: inches },
  brace: { kind: z.enum(['across', 'along', 'wall']), from: id, to: id },
  letGo: {},
  line: { kind: z.enum(['string', 'chalk', 'tail']), from: id, to: id, off: inches },
  trim: { member: id, cut: z.enum(['plumb', 'wedge', 'seat', 'heel', 'end', 'rip']), by: inches },
  cutTail: { member: id },
  swap: { member: id, board: id, turn: z.boolean() },
  takeOut: { member: id },
  carryOn: { like: z.tuple([count, count]), to: count },
  handOver: {},
  undo: { step: count },
} satisfies Record<Action['type'], Record<string, z.ZodMiniType>>;

const one = <T extends string>(type: T, fields: Record<string, z.ZodMiniType>) =>
  z.strictObject({ type: z.literal(type), ...fields });

const all = Object.entries(acts).map(([type, fields]) => one(type, fields));

/** Any act, told apart by its type. */
export const actionSchema = z.discriminatedUnion(
  'type',
  all as unknown as [ReturnType<typeof one>, ...ReturnType<typeof one>[]],
);
