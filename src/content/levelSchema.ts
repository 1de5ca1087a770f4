import * as z from 'zod/mini';
import { modes } from '../core/level/mode';
import { stages } from '../core/level/stages';

/** What a level file holds, besides its roof, which has a schema of its own. Plain text only; lengths in inches. */

const words = z.strictObject({ en: z.string().check(z.minLength(1)), es: z.string().check(z.minLength(1)) });
const length = z.number().check(z.gte(0), z.lte(12));
const id = z.string().check(z.regex(/^[a-z][a-z0-9-]{1,40}$/));
const few = <T extends string>(...options: readonly [T, ...T[]]) =>
  z.array(z.enum(options)).check(z.minLength(1), z.maxLength(options.length));

export const faultIds = [
  'crownDown',
  'splitAtNotch',
  'plumbCutLong',
  'plumbCutShort',
  'plumbCutSteep',
  'twisted',
  'driedOut',
  'knotAtNotch',
  'lowGrade',
  'plateLow',
  'ridgeLong',
] as const;

export const cautionIds = [
  'fall',
  'topPlate',
  'ladder',
  'openings',
  'anchor',
  'load',
  'signals',
  'powerLines',
  'nailGun',
  'saw',
  'lifting',
  'night',
  'localCode',
] as const;

const planted = z.strictObject({
  fault: z.enum(faultIds),
  at: z.string().check(z.regex(/^(board\.(any|ridge|[1-9]\d{0,2})|plate\.(any|(street|yard)\.(A|mid|B)))$/)),
  by: z.number().check(z.gt(0), z.lte(6)),
});

const ranges = z.strictObject({
  plateHeight: length,
  plateLine: length,
  bodyLength: length,
  cutOpen: length,
  crown: length,
  markWander: length,
  blockLength: length,
  growth: length,
  levelBias: length,
  landing: length,
  ridgeBow: z._default(length, 0),
  ridgeCrown: z._default(length, 0),
  twist: z._default(length, 0),
  boardDepth: z._default(length, 0),
  tapeHook: z._default(length, 0),
  waterBias: z._default(length, 0),
  squareBias: z._default(length, 0),
  lineSlack: z._default(z.number().check(z.gte(0), z.lte(0.95)), 0),
});

const tolerance = z.number().check(z.gt(0), z.lte(2));

const par = z.strictObject({
  machine: z.optional(z.number().check(z.gt(0))),
  posts: z.optional(z.number().check(z.gt(0))),
  hand: z.optional(z.number().check(z.gt(0))),
});

export const levelSchema = z.strictObject({
  format: z.literal('tack-and-true/level@1'),
  id,
  version: z.int().check(z.gte(1)),
  title: words,
  summary: words,
  briefing: z.array(words).check(z.minLength(1), z.maxLength(8)),
  roof: z.unknown(),
  methods: z.strictObject({
    hang: few('machine', 'posts', 'hand'),
    ties: few('joistsFirst', 'byPair'),
    stack: few('oneSide', 'alternate'),
    upper: few('collars', 'straps'),
    ridgeLength: few('cut', 'wild'),
    tails: z._default(few('first', 'snapped'), ['first']),
  }),
  modes: z.optional(few(...modes)),
  stages: z.optional(z.strictObject({ from: z.enum(stages), to: z.enum(stages) })),
  machine: z.optional(
    z.strictObject({
      reach: z.number().check(z.gt(0)),
      chart: z.number().check(z.gt(0)),
      steady: z.number().check(z.gte(0), z.lte(2)),
    }),
  ),
  asFound: z.strictObject({
    planted: z.array(planted).check(z.maxLength(40)),
    spareBoards: z.int().check(z.gte(0), z.lte(20)),
    dried: z._default(z.number().check(z.gte(0), z.lte(0.1)), 0),
    ranges,
  }),
  tolerances: z.strictObject({
    ridgeLevelIn10ft: tolerance,
    ridgeHeight: tolerance,
    ridgeCentre: tolerance,
    ridgeStraight: z._default(tolerance, 0.25),
    plane: tolerance,
    plumbCut: tolerance,
    seat: tolerance,
    layout: tolerance,
    block: tolerance,
    tie: tolerance,
  }),
  introduces: z.array(z.string()).check(z.maxLength(4)),
  cautions: z.array(z.enum(cautionIds)).check(z.minLength(1)),
  par,
});
