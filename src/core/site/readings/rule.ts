import { rafterId, type BlockId } from '../ids';
import type { Gaps } from '../pose';
import { blockGap, gapsAt } from '../posed';
import type { Standing } from '../standing';
import { firstOf, plain, type Row } from './reach';
import type { Side } from '../../roof/side';

/** The rule held to a gap. */

const face = (kind: string, gap: keyof Gaps): Row =>
  plain(
    new RegExp(`^${kind}:rafter\\.(street|yard)\\.(\\d+)$`),
    (s: Standing, [which, n]) => gapsAt(s, rafterId(which as Side, Number(n)))?.[gap],
  );

export const ruleShows = firstOf([
  face('heel', 'seat'),
  face('heelCut', 'heelCut'),
  face('ridge', 'plumbBottom'),
  face('ridgeTop', 'plumbTop'),
  plain(/^blockEnd:(block\.(?:street|yard)\.\d+)\.far$/, (s, [id]) => blockGap(s, id as BlockId)),
]);
