import { readFileSync } from 'node:fs';
import { fileOf, type RoofDraft } from '../../src/content/draft/roofDraft';
import { sampleOf } from '../../src/content/draft/samples';
import { ownJob } from '../../src/content/ownJob';
import type { Level } from '../../src/core/level/level';
import { jobOn } from './beams';

/** The form's own shed on a ledger, 12 by 20 ft at 4 in 12, with other answers. */
export const shedFile = (typed: RoofDraft['typed'] = {}): unknown => {
  const draft = sampleOf('shed');
  return fileOf({ ...draft, typed: { ...draft.typed, ...typed } });
};

export const shedLevel = (typed: RoofDraft['typed'] = {}): Level => {
  const read = ownJob(shedFile(typed));
  if (!read.ok) throw new Error(read.complaints.map((c) => JSON.stringify(c)).join('\n'));
  return read.value;
};

/** The same kind of roof as somebody would type it into a file, and small enough for many runs: 10 ft of wall. */
export const smallShed = jobOn({
  ...(JSON.parse(readFileSync('levels/examples/shed.json', 'utf8')) as Readonly<Record<string, unknown>>),
  length: "10'",
});
