import type { FiguredBlock, FiguredTie } from '../../core/roof/figured';
import {
  angleFigure,
  lengthFigure,
  lengthsOf,
  listFigure,
  tapeText,
  textFigure,
  type Figure,
} from './figures';
import type { SheetAsked, SheetPart, SheetRow } from './sheetShape';
import { spliceNotes } from './sheetRafters';
import { partOfId, whereText } from './where';

/** What stands between rafters, ties them, carries them and fills their gables. */

export const blocksPart = (asked: SheetAsked): SheetPart => {
  const { roof, words, plan } = asked;
  const { note, part } = words.roofs;
  const stands = plan.blockStands === 'plumb' ? note.blocksPlumb : note.blocksSquare;
  return {
    key: 'blocks',
    title: part.blocks,
    rows: roof.blocks.map((block) => blockRow(asked, block)),
    notes: roof.blocks.length > 0 ? [stands] : [],
  };
};

const blockRow = (asked: SheetAsked, block: FiguredBlock): SheetRow => {
  const { words } = asked;
  const { member, note, unit, figure } = words.roofs;
  const { vent } = block;
  return {
    id: block.id,
    name: `${member.block}, ${whereText(words, block.side, block.part)}`,
    count: block.count,
    figures: [
      lengthFigure(asked, 'length', block.length),
      lengthFigure(asked, 'height', block.height),
      angleFigure(asked, 'bevel', block.bevel),
      ...(vent
        ? [
            {
              ...textFigure(asked, 'vent', `${vent.area.toFixed(1)} ${unit.squareInches}`),
              name: figure.vent,
            },
          ]
        : []),
    ],
    notes: vent ? [note.notch(note.shape[vent.shape])] : [],
  };
};

export const tiesPart = (asked: SheetAsked): SheetPart => ({
  key: 'ties',
  title: asked.words.roofs.part.ties,
  rows: asked.roof.ties.map((tie) => tieRow(asked, tie)),
  notes: [],
});

const tieRow = (asked: SheetAsked, tie: FiguredTie): SheetRow => {
  const { words, plan } = asked;
  const { member, note } = words.roofs;
  const part = partOfId(tie.id);
  const every = everyOf(plan, tie);
  const { behindBlocks: cut } = tie;
  const clip = (cut ?? tie).clip;
  return {
    id: tie.id,
    name: part ? `${member[tie.kind]}, ${whereText(words, 'all', part)}` : member[tie.kind],
    count: tie.count,
    figures: [
      lengthFigure(asked, 'tieHeight', tie.height),
      cut ? lengthFigure(asked, 'behindBlocks', cut.length) : lengthFigure(asked, 'length', tie.length),
      ...(clip > 0 ? [lengthFigure(asked, 'clip', clip)] : []),
      ...(cut ? [lengthFigure(asked, 'overPlates', tie.length)] : []),
    ],
    notes: [
      ...(every === undefined ? [] : [note.tieEvery(every)]),
      ...(cut ? [note.behindBlocks] : []),
      ...(tie.kind === 'collar' ? [note.collarHigh] : []),
      ...(isBesideGussets(plan, tie) ? [note.besideGussets] : []),
      ...spliceNotes(asked, tie.id),
    ],
  };
};

const isBesideGussets = (plan: SheetAsked['plan'], { kind }: FiguredTie): boolean =>
  kind === 'breakTie' && plan.kind === 'gambrel' && plan.breakOn.what === 'gussets';

const everyOf = (plan: SheetAsked['plan'], { kind }: FiguredTie): number | undefined => {
  if (!('joists' in plan)) return undefined;
  if (kind === 'collar') return plan.collars === false ? undefined : plan.collars.every;
  if (kind === 'breakTie')
    return plan.kind === 'gambrel' && plan.breakTies ? plan.breakTies.every : undefined;
  return plan.joists === false ? undefined : plan.joists.every;
};

export const gablesPart = (asked: SheetAsked): SheetPart => {
  const { roof, words } = asked;
  const { member, part, note } = words.roofs;
  const studs = (roof.gableStuds ?? []).map((one): SheetRow => ({
    id: one.id,
    name: `${member.stud}, ${whereText(words, one.side, partOfId(one.id))}`,
    count: one.count,
    figures: [
      listFigure(asked, 'lengths', one.lengths),
      lengthFigure(asked, 'difference', one.difference),
      angleFigure(asked, 'topBevel', one.bevel),
    ],
    notes: [note.bothGables],
  }));
  const rakes = (roof.rakeRafters ?? []).map((one): SheetRow => ({
    id: one.id,
    name: `${member.rake}, ${whereText(words, one.side)}`,
    count: one.count,
    figures: lengthsOf(asked, one, [
      ['plumbCut', 'plumbCutLength'],
      ['body', 'bodyLength'],
      ['tail', 'tailLength'],
      ['past', 'past'],
      ['stock', 'stockLength'],
    ]),
    notes: [note.noSeat],
  }));
  const lookouts = (roof.lookouts ?? []).map((one): SheetRow => {
    const notch = `${tapeText(one.notchWidth, asked.units)} × ${tapeText(one.notchDepth, asked.units)}`;
    return {
      id: one.id,
      name: `${member.lookout}, ${whereText(words, one.side)}`,
      count: one.count,
      figures: [
        lengthFigure(asked, 'length', one.length),
        textFigure(asked, 'notch', notch),
        listFigure(asked, 'marks', one.marks),
      ],
      notes: [],
    };
  });
  return { key: 'gables', title: part.gables, rows: [...rakes, ...lookouts, ...studs], notes: [] };
};

/** What carries: posts, ledgers, headers, purlins and what holds a break; and what stands already. */
export const carriesPart = (asked: SheetAsked): SheetPart => ({
  key: 'carries',
  title: asked.words.roofs.part.carries,
  rows: [...standingRows(asked), ...bearers(asked), ...breakRows(asked)],
  notes: [],
});

const standingRows = (asked: SheetAsked): readonly SheetRow[] => {
  const { standing } = asked.roof;
  if (!standing) return [];
  return [
    {
      id: 'standing',
      name: asked.words.roofs.member.standing,
      figures: [
        angleFigure(asked, 'slope', standing.slope),
        ...lengthsOf(asked, standing, [
          ['riseOff', 'riseOffNominal'],
          ['firstBay', 'firstBay'],
          ['underside', 'underside'],
        ]),
      ],
      notes: [],
    },
  ];
};

const bearers = (asked: SheetAsked): readonly SheetRow[] => {
  const { roof, words } = asked;
  const { member } = words.roofs;
  const row = (
    one: { readonly id: string; readonly count: number; readonly side: string },
    name: string,
    figures: readonly Figure[],
  ): SheetRow => ({
    id: one.id,
    name: one.side === 'both' ? name : `${name}, ${whereText(words, one.side)}`,
    count: one.count,
    figures,
    notes: spliceNotes(asked, one.id),
  });
  return [
    ...(roof.ledgers ?? []).map((one) => row(one, member.ledger, topAndLength(asked, one))),
    ...(roof.headers ?? []).map((one) =>
      row(one, member.header, [...topAndLength(asked, one), lengthFigure(asked, 'clip', one.clip)]),
    ),
    ...(roof.highPlates ?? []).map((one) =>
      row(
        one,
        member.highPlate,
        lengthsOf(asked, one, [
          ['ridgeTop', 'height'],
          ['length', 'length'],
        ]),
      ),
    ),
    ...(roof.posts ?? []).map((one) =>
      row(one, member.post, [lengthFigure(asked, 'length', one.length), listFigure(asked, 'at', one.at)]),
    ),
    ...(roof.purlins ?? []).map((one) => row(one, member.purlin, topAndLength(asked, one))),
  ];
};

const topAndLength = (
  asked: SheetAsked,
  one: { readonly topHeight: number; readonly length: number; readonly leastDepth: number },
): readonly Figure[] =>
  lengthsOf(asked, one, [
    ['ridgeTop', 'topHeight'],
    ['length', 'length'],
    ['most', 'leastDepth'],
  ]);

const breakRows = (asked: SheetAsked): readonly SheetRow[] => {
  const { roof, words } = asked;
  const { member } = words.roofs;
  return [
    ...(roof.breaks ?? []).map((one): SheetRow => ({
      id: one.id,
      name: member.break,
      figures: [
        ...lengthsOf(asked, one, [
          ['ridgeTop', 'height'],
          ['fromWall', 'run'],
          ['plumbCut', 'jointLength'],
        ]),
        angleFigure(asked, 'lowerCut', one.lowerCut),
        angleFigure(asked, 'upperCut', one.upperCut),
      ],
      notes: [],
    })),
    ...(roof.gussets ?? []).map((one): SheetRow => ({
      id: one.id,
      name: member.gusset,
      count: one.count,
      figures: [
        ...lengthsOf(asked, one, [
          ['length', 'length'],
          ['wide', 'width'],
          ['reach', 'reach'],
        ]),
        angleFigure(asked, 'bend', one.bend),
      ],
      notes: [],
    })),
  ];
};
