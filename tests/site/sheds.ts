import { readFileSync } from 'node:fs';
import { jobOn } from './beams';

/** A roof of one side on a ledger at a wall, as somebody would type it, and small enough for many runs: 10 ft of wall. */
export const shedFile = JSON.parse(readFileSync('levels/examples/shed.json', 'utf8')) as Readonly<
  Record<string, unknown>
>;

export const smallShed = jobOn({ ...shedFile, length: "10'" });
