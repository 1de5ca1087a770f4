import type { BlockId } from '../ids';
import type { Gaps } from '../pose';
import { pose } from '../posed';
import type { Standing } from '../standing';
import { firstOf, plain, type Row } from './reach';
import type { Side } from '../../roof/side';

/** The rule held to a gap. */

const face = (kind: string, gap: keyof Gaps): Row =>
  plain(
    new RegExp(`^${kind}:rafter\\.(street|yard)\\.(\\d+)$`),
    (s: Standing, [which, n]) => pose(s).rafters[`rafter.${which as Side}.${Number(n)}`]?.gaps[gap],
  );

export const ruleShows = firstOf([
  face('heel', 'seat'),
  face('heelCut', 'heelCut'),
  face('ridge', 'plumbBottom'),
  face('ridgeTop', 'plumbTop'),
  plain(/^blockEnd:(block\.(?:street|yard)\.\d+)\.far$/, (s, [id]) => pose(s).blocks[id as BlockId]?.gap),
]);
