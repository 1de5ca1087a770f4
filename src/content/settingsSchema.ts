import * as z from 'zod/mini';
import { readShape } from './shape';

const looks = z.array(z.int().check(z.gte(1), z.lte(3650))).check(z.minLength(1), z.maxLength(8));

/** Parts of a hundred. */
const volume = z.int().check(z.gte(0), z.lte(100));

/** How it sounds to who never said how it should. */
export const usualSound = { sound: true, workVolume: 70, machineVolume: 50 } as const;

const schema = z.strictObject({
  lang: z.enum(['en', 'es']),
  theme: z.enum(['day', 'night']),
  units: z.enum(['feet', 'decimal', 'mm']),
  hand: z.enum(['left', 'right']),
  text: z.enum(['100', '150', '200']),
  keys: z.boolean(),
  /** What moves on the drawing: as the device asks for, always, or nothing. */
  motion: z._default(z.enum(['device', 'full', 'still']), 'device'),
  // Settings kept before there was sound have none of these.
  sound: z._default(z.boolean(), usualSound.sound),
  workVolume: z._default(volume, usualSound.workVolume),
  machineVolume: z._default(volume, usualSound.machineVolume),
  /** Days from one look at a job to the next, where they are not the usual ones. */
  looks: z.optional(looks),
});

/** How somebody likes to work. Kept on the device, never asked for twice. */
export type Settings = z.infer<typeof schema>;

/** Days as somebody typed them, with commas between; undefined when they cannot be used. */
export const readLooks = (typed: string): readonly number[] | undefined => {
  const read = readShape(
    looks,
    typed.split(',').map((part) => (part.trim() === '' ? NaN : Number(part))),
  );
  return read.ok ? read.value : undefined;
};

/** Settings from whatever was kept; undefined when it cannot be used. */
export const readSettings = (kept: unknown): Settings | undefined => {
  const read = readShape(schema, kept);
  return read.ok ? read.value : undefined;
};
