import { faults } from '../../core/faults/rows';
import { tools } from '../../core/instruments/rows';
import type { Hold } from '../../core/instruments/tool';
import type { Observation } from '../../core/site/observe';
import type { Offer, Picker, ReadAt, Spot } from './offer';

/** A place where a tool shows something now: what cannot be reached or is not built yet is not there. */

type More = {
  readonly member: string;
  /** Where the number that is said starts, inches. */
  readonly start?: number;
  readonly signed?: boolean;
  /** Other ways to hold the tool there, and what the usual one is called beside them. */
  readonly holds?: { readonly usual: string; readonly others: readonly Hold[] };
};

/** One reading spot with an offer for each way the tool can be held, when the tool shows anything there. */
export const readAt = (seen: Observation, reading: ReadAt, more: More): readonly Spot[] => {
  if (seen.look(reading) === undefined) return [];
  const { member, holds } = more;
  const offers = holds
    ? [undefined, ...holds.others].map((from) => heldOffer(seen, { reading, from }, more))
    : [readOffer(seen, reading, more)];
  const id = `${reading.tool}@${reading.at}${reading.from === undefined ? '' : `@${reading.from}`}`;
  return [{ id, member, offers, reading }];
};

const readOffer = (seen: Observation, reading: ReadAt, more: More): Offer => ({
  id: 'read',
  label: ['act', 'read'],
  picker: pickerFor(seen, reading, more),
  reading,
  act: (said) => ({ type: 'read', ...reading, said }),
});

const heldOffer = (
  seen: Observation,
  { reading, from }: { readonly reading: ReadAt; readonly from: Hold | undefined },
  more: More,
): Offer => {
  const inch = from === 'inch' ? 1 : 0;
  const held = from === undefined ? reading : { ...reading, from };
  return {
    ...readOffer(seen, held, { ...more, start: (more.start ?? 0) + inch }),
    id: from === undefined ? 'read' : `read.${from}`,
    label: ['held', from ?? more.holds?.usual ?? ''],
  };
};

/** A look at a board is a word; a sight along a line is a number in quarters. */
const pickerFor = (seen: Observation, { tool, at }: ReadAt, { start = 0, signed = false }: More): Picker => {
  if (typeof seen.look({ tool, at }) === 'string')
    return {
      kind: 'choice',
      label: ['act', 'see'],
      options: ['clean', ...faults.flatMap(({ looks }) => looks ?? [])].map((value) => ({
        value,
        label: ['seen', value],
      })),
    };
  const coarse = tool === 'eye' && at !== 'punch' ? { coarse: tools.eye.division } : {};
  return { kind: 'reading', start, signed, ...coarse };
};
