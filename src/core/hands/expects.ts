import type { PlannedAction, View } from '../order/crew/view';
import { sidesOf, widthOf } from '../level/layout';
import { ends, type End } from '../roof/side';
import { rafterId } from '../site/ids';
import { gaugeBlock } from '../instruments/rows';

type Read = Extract<PlannedAction, { type: 'read' }>;

/**
 * What somebody who does not look takes a reading to be: the figure of the plan, nothing out of true, a clean board. An inch
 * more where the tape would have been held at its inch mark.
 */
export const expected = (view: View, { tool, at, from }: Read): number | string => {
  if (tool === 'eye') return at.startsWith('board.') ? 'clean' : 0;
  const burnt = tool === 'tape' && from === 'inch' ? 1 : 0;
  return (
    (tool === 'tape' ? figured(view, at) : tool === 'string' && at.startsWith('plane') ? gaugeBlock : 0) +
    burnt
  );
};

/** The plan's figure for a place that is taped, inches. */
const figured = (view: View, at: string): number => {
  const { plan } = view.seen.level;
  const [what = '', which = '', rest = ''] = at.split('.');
  switch (what) {
    case 'width':
      return widthOf(view.seen.level);
    case 'diagonal':
      return Math.sqrt(widthOf(view.seen.level) * widthOf(view.seen.level) + plan.length * plan.length);
    case 'ridge':
      return rest === 'height'
        ? (view.roof.ridges[0]?.topHeight ?? 0)
        : widthSaid(view, which as End) / 2 - plan.ridge.thickness / 2;
    case 'board':
      return which === 'ridge' ? (view.roof.ridges[0]?.length ?? 0) : plan.rafter.depth;
    case 'layout':
      return (view.stations[Number(rest) - 1] ?? 0) - plan.rafter.thickness / 2;
    case 'bay':
      return plan.spacing - plan.rafter.thickness;
    default:
      return 0;
  }
};

const widthSaid = (view: View, end: End): number => {
  const width = view.said('tape', `width.${end}`)?.value;
  return typeof width === 'number' ? width : view.seen.level.plan.span;
};

/** The readings that tell whether a thing that was moved is where it should be. */
export const toldBy = (view: View, act: PlannedAction): readonly Read[] => {
  if (act.type === 'mendWall') return [{ type: 'read', tool: 'waterLevel', at: act.wall }];
  if (act.type === 'trim') {
    if (act.member === 'board.ridge') return bothWays('board.ridge');
    return act.member.startsWith('board.') ? [{ type: 'read', tool: 'pattern', at: act.member }] : [];
  }
  if (act.type === 'shift' && act.member !== 'ridge') return bothWays(act.member.replace('rafter', 'layout'));
  if (act.type !== 'raise' && act.type !== 'shift') return [];
  if (act.type === 'shift' && act.at !== 'A' && act.at !== 'B')
    return [{ type: 'read', tool: 'string', at: 'ridge.straight' }];
  const end = (act.type === 'raise' ? act.end : act.at) as End;
  return [
    ...bothWays(`ridge.${end}.${act.type === 'raise' ? 'height' : 'centre'}`),
    ...lightAt(view, end),
    ...ends.map((from) => ({ type: 'read', tool: 'level', at: 'ridge', from }) as const),
  ];
};

const bothWays = (at: string): readonly Read[] => [
  { type: 'read', tool: 'tape', at },
  { type: 'read', tool: 'tape', at, from: 'inch' },
];

const lightAt = ({ last, seen }: View, end: End): readonly Read[] =>
  sidesOf(seen.level).flatMap((side) =>
    ['heel', 'heelCut'].map((face) => ({
      type: 'read' as const,
      tool: 'rule' as const,
      at: `${face}:${rafterId(side, end === 'A' ? 1 : last)}`,
    })),
  );
