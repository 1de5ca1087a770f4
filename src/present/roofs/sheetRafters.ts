import type { CommonRafter, FiguredRidge } from '../../core/roof/figured';
import type { Cheek, FiguredHip, FiguredJacks, FiguredSleeper, Turn } from '../../core/roof/figuredSlants';
import { hair } from '../../core/units/hair';
import {
  angleFigure,
  lengthFigure,
  lengthsOf,
  listFigure,
  tapeText,
  type Figure,
  type Told,
} from './figures';
import type { SheetAsked, SheetPart, SheetRow } from './sheetShape';
import { partOfId, whereText } from './where';

/** Ridges, rafters, hips, valleys and jacks as the sheet has them, each in the order they are cut. */

export const ridgePart = (asked: SheetAsked): SheetPart => ({
  key: 'ridge',
  title: asked.words.roofs.part.ridge,
  rows: asked.roof.ridges.map((ridge) => ridgeRow(asked, ridge)),
  notes: [],
});

const ridgeRow = (asked: SheetAsked, ridge: FiguredRidge): SheetRow => {
  const { words, roof, units } = asked;
  const { member, note, where } = words.roofs;
  // In a run the height over the plates of its own part is what somebody measures there.
  const under = ridge.lies ? ridge.lies.overPlates : ridge.topHeight - ridge.section.depth;
  const part = partOfId(ridge.id);
  const joists = part ? undefined : joistTop(asked);
  const post = part ? undefined : roof.posts?.[0];
  const name = roof.posts && (!part || ridge.lies) ? member.beam : member.ridge;
  return {
    id: ridge.id,
    name: part ? `${name}, ${whereText(words, 'all', part)}` : name,
    count: ridge.count,
    figures: [
      lengthFigure(asked, 'ridgeTop', under + ridge.section.depth),
      lengthFigure(asked, 'ridgeUnder', under),
      ...(joists === undefined ? [] : [lengthFigure(asked, 'ridgeOverJoists', under - joists)]),
      ...(post ? [lengthFigure(asked, 'ridgeOverFloor', post.length)] : []),
      lengthFigure(asked, 'length', ridge.length),
      lengthFigure(asked, 'most', ridge.leastDepth),
    ],
    notes: [
      ...(ridge.bearsFully ? [] : [note.ridgeShallow]),
      ...(ridge.proud ? [note.proud(where[ridge.proud.side], tapeText(ridge.proud.by, units))] : []),
      ...bearingNotes(asked, ridge),
      ...spliceNotes(asked, ridge.id),
    ],
  };
};

/** What the lower ridge of a run rests on at each step, and what stands under it there. */
const bearingNotes = ({ words, roof, units }: SheetAsked, { lies }: FiguredRidge): readonly string[] =>
  (roof.steps ?? [])
    .filter(({ lower }) => lower === lies?.part)
    .map(({ at, bearing }) =>
      words.roofs.note.bears[bearing.on](
        tapeText(at, units),
        tapeText(bearing.length, units),
        bearing.stands ? tapeText(bearing.stands.length, units) : undefined,
      ),
    );

/** Top of the joists that lie on the plates, over the plates: what a post under the ridge stands on. */
const joistTop = ({ plan, roof, lists }: SheetAsked): number | undefined => {
  const joist = roof.ties.find(({ kind, height }) => kind === 'joist' && height === 0);
  const stick = joist && lists.cutList.sticks.find(({ member }) => member === joist.id);
  return joist && (stick?.stock.depth ?? plan.rafter.depth);
};

/** The pieces of a member that no board is long enough for. */
export const spliceNotes = ({ words, lists, units }: SheetAsked, id: string): readonly string[] => {
  const splice = lists.cutList.splices?.find(({ member }) => member === id);
  if (!splice) return [];
  const pieces = splice.pieces.map(({ count, length }) => `${count} × ${tapeText(length, units)}`);
  return [words.roofs.note.splice(pieces.join(', '))];
};

export const raftersPart = (asked: SheetAsked): SheetPart => {
  const { roof, words } = asked;
  const { member, part } = words.roofs;
  const cut = (roof.cutInPlace ?? []).map(({ side, part: of, at }, i): SheetRow => ({
    id: `cutInPlace.${i + 1}`,
    name: `${member.cutInPlace}, ${whereText(words, side, of)}`,
    count: 1,
    figures: [lengthFigure(asked, 'at', at)],
    notes: [words.roofs.note.notFigured],
  }));
  const several = roof.commonRafters.length > 1;
  const rows = roof.commonRafters.map((one): SheetRow => ({
    id: one.id,
    name: several ? `${member.common}, ${whereText(words, one.side, partOfId(one.id))}` : member.common,
    count: one.count,
    figures: commonFigures(asked, one),
    notes: one.seat > 0 ? [] : [words.roofs.note.noSeat],
  }));
  return { key: 'rafters', title: part.rafters, rows: [...rows, ...cut], notes: [] };
};

export const commonFigures = (told: Told, one: CommonRafter): readonly Figure[] => [
  ...lengthsOf(told, one, [
    ['plumbCut', 'plumbCutLength'],
    ['body', 'bodyLength'],
    ['seat', 'seat'],
    ['heel', 'heelCut'],
    ['tail', 'tailLength'],
    ['edge', 'edgeLength'],
    ['overPlate', 'heightAbovePlate'],
  ]),
  ...(one.high
    ? lengthsOf(told, one.high, [
        ['upperSeat', 'seat'],
        ['upperHeel', 'heelCut'],
        ['upperTail', 'tailLength'],
        ['upperOver', 'heightAbovePlate'],
      ])
    : []),
  lengthFigure(told, 'stock', one.stockLength),
];

export const slantsPart = (asked: SheetAsked): SheetPart => {
  const { roof, words } = asked;
  const { member, part } = words.roofs;
  return {
    key: 'slants',
    title: part.slants,
    rows: [
      ...(roof.hips ?? []).map((hip) => slantRow(asked, hip, member.hip)),
      ...(roof.valleys ?? []).map((valley) => slantRow(asked, valley, member.valley)),
      ...(roof.sleepers ?? []).map((sleeper) => sleeperRow(asked, sleeper)),
    ],
    notes: [],
  };
};

const slantRow = (asked: SheetAsked, one: FiguredHip, name: string): SheetRow => {
  const { words, plan } = asked;
  const { note } = words.roofs;
  const isHip = one.id.startsWith('hip');
  const dropped = plan.kind === 'hip' && plan.hipFit === 'dropped';
  const end = one.end ? `, ${words.roofs.where[one.end]}` : '';
  const number = /\.(\d+)$/.exec(one.id)?.[1];
  return {
    id: one.id,
    name: `${name}${number === undefined ? '' : ` ${number}`}${end}`,
    count: one.count,
    figures: [
      lengthFigure(asked, 'body', one.bodyLength),
      ...lengthsOf(asked, one, [
        ['seat', 'seat'],
        ['tail', 'tailLength'],
        ['overPlate', 'heightAbovePlate'],
      ]),
      ...backingFigures(asked, one.backing),
      ...lengthsOf(asked, one, [
        ['drop', 'drop'],
        ['shorten', 'shorteningTop'],
      ]),
      angleFigure(asked, 'slope', one.slope),
      ...cheekFigures(asked, one.cheeks),
      ...stockFigure(asked, one.id),
    ],
    notes: [
      isHip ? (dropped ? note.dropped : note.backed) : note.valleySquare,
      ...spliceNotes(asked, one.id),
    ],
  };
};

const backingFigures = (told: Told, [left, right]: readonly [Turn, Turn]): readonly Figure[] => {
  const same = Math.abs(left.rise * right.run - right.rise * left.run) < hair;
  const one = angleFigure(told, 'backing', left);
  if (same) return [one];
  const other = angleFigure(told, 'backing', right);
  return [
    { ...one, key: 'backings', name: told.words.roofs.figure.backings, text: `${one.text}, ${other.text}` },
  ];
};

/** Each cut with its end and hand, once where both hands are alike. */
export const cheekFigures = (told: Told, cheeks: readonly Cheek[]): readonly Figure[] => {
  const { figure, note } = told.words.roofs;
  const seen = new Set<string>();
  return cheeks.flatMap(({ end, side, cheekAngle, sawBevel }) => {
    const cheek = angleFigure(told, 'cheek', cheekAngle);
    const saw = angleFigure(told, 'saw', sawBevel);
    const twin = cheeks.some((one) => one.end === end && one.side !== side);
    const hand = twin ? '' : `, ${note.hand[side]}`;
    const key = `${end}${hand}${cheek.text}`;
    if (seen.has(key)) return [];
    seen.add(key);
    return [
      { ...cheek, name: `${figure.cheek}, ${note[end]}${hand}` },
      { ...saw, name: `${figure.saw}, ${note[end]}` },
    ];
  });
};

const stockFigure = (asked: SheetAsked, id: string): readonly Figure[] => {
  const own = asked.lists.cutList.sticks.filter(({ member }) => member === id).map(({ length }) => length);
  return own.length === 0 ? [] : [lengthFigure(asked, 'stock', Math.max(...own))];
};

const sleeperRow = (asked: SheetAsked, one: FiguredSleeper): SheetRow => ({
  id: one.id,
  name: asked.words.roofs.member.sleeper,
  count: one.count,
  figures: [
    lengthFigure(asked, 'length', one.lineLength),
    lengthFigure(asked, 'intrusion', one.intrusion),
    angleFigure(asked, 'planAngle', one.planAngle),
  ],
  notes: spliceNotes(asked, one.id),
});

export const jacksPart = (asked: SheetAsked): SheetPart => ({
  key: 'jacks',
  title: asked.words.roofs.part.jacks,
  rows: (asked.roof.jacks ?? []).map((jacks) => jackRow(asked, jacks)),
  notes: [],
});

const jackRow = (asked: SheetAsked, one: FiguredJacks): SheetRow => {
  const { words } = asked;
  const { member, note } = words.roofs;
  const hand = one.hipSide ?? one.valleySide;
  const handed = hand === undefined ? '' : `, ${note.hand[hand]}`;
  return {
    id: one.id,
    name: `${member[one.kind]}, ${whereText(words, one.side)}${handed}`,
    count: one.count,
    figures: [
      listFigure(asked, 'lengths', one.lengths),
      ...(one.lengths.length > 1 ? [lengthFigure(asked, 'difference', one.difference)] : []),
      ...cheekFigures(asked, one.cheeks),
      ...(one.foot
        ? [angleFigure(asked, 'footLevel', one.foot.level), angleFigure(asked, 'footTilt', one.foot.sawTilt)]
        : []),
      ...lengthsOf(asked, one, [
        ['shorten', 'shorteningTop'],
        ['shortenBottom', 'shorteningBottom'],
      ]).filter(({ inches = 0 }) => inches > 0),
      ...(one.seat > 0
        ? lengthsOf(asked, one, [
            ['seat', 'seat'],
            ['tail', 'tailLength'],
            ['overPlate', 'heightAbovePlate'],
          ])
        : []),
    ],
    notes: one.seat > 0 ? [] : [note.noSeat],
  };
};
