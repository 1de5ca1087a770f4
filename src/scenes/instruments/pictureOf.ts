import { gaugeBlock, levelAt, levelLength } from '../../core/instruments/rows';
import type { ToolId } from '../../core/instruments/tool';
import { roofOf } from '../../core/level/layout';
import { waterStart } from '../../core/level/planted';
import type { CommonRafter } from '../../core/roof/figured';
import type { Side } from '../../core/roof/side';
import type { Attempt } from '../../core/site/attempt';
import { placeOf } from '../../core/site/ids';
import { gradient } from '../../core/units/slope';
import type { ReadingPicture } from './readingPicture';

export type Read = {
  readonly tool: Exclude<ToolId, 'eye'>;
  readonly at: string;
  readonly from?: string;
  readonly shown: number;
};

/** What has to be drawn for a reading: what the tool shows, and what of the place belongs in the picture. */
export const pictureOf = ({ level, site }: Pick<Attempt, 'level' | 'site'>, read: Read): ReadingPicture => {
  const { tool, at, from, shown } = read;
  switch (tool) {
    case 'tape':
      return from === 'inch' || from === 'last' ? { tool, shown, from } : { tool, shown };
    case 'waterLevel':
      return { tool, shown, together: at === waterStart };
    case 'string': {
      // A ridge is held against its string as a plate is: the edge is read from where the blocks put it.
      const over = at.startsWith('plane.') ? 'rafter' : 'plate';
      const side = placeOf(at).side as Side;
      const held = over === 'rafter' ? site.lines[`string.${side}`]?.off : undefined;
      return { tool, over, shown, nominal: held ?? gaugeBlock };
    }
    case 'square': {
      const { plumbCutLength: plumb } = roofOf(level).commonRafters[0] as CommonRafter;
      return { tool, shown, turned: from === 'turned', slope: gradient(level.plan.slope), plumb };
    }
    case 'level':
      return { tool, shown, long: levelAt.get(at) ?? levelLength };
    case 'storyPole':
      return { tool, shown, plumb: from === 'plumb' };
    case 'bob':
      return { tool, shown, still: from === 'still' };
    case 'straightedge':
      return { tool, shown, station: placeOf(at).station ?? 2 };
    default:
      return { tool, shown };
  }
};
