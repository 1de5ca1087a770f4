import { fileOf, type RoofDraft } from '../../src/content/draft/roofDraft';
import { sampleOf } from '../../src/content/draft/samples';
import { ownJob } from '../../src/content/ownJob';
import type { Level } from '../../src/core/level/level';

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
