import type { FiguredDormer } from '../../core/roof/figured';
import { angleFigure, lengthFigure, lengthsOf, listFigure } from './figures';
import type { SheetAsked, SheetPart, SheetRow } from './sheetShape';
import { commonFigures } from './sheetRafters';

/** What is cut for dormers besides their commons. */
export const dormerPart = (asked: SheetAsked): SheetPart => ({
  key: 'dormers',
  title: asked.words.roofs.part.dormers,
  rows: (asked.roof.dormers ?? []).flatMap((one) => [...frameRows(asked, one), ...cutRows(asked, one)]),
  notes: [],
});

const frameRows = (asked: SheetAsked, dormer: FiguredDormer): readonly SheetRow[] => {
  const { member, part } = asked.words.roofs;
  const { trimmers } = dormer;
  return [
    {
      id: dormer.id,
      name: part.dormers,
      figures: [
        angleFigure(asked, 'slope', dormer.slope),
        lengthFigure(asked, 'frontHeight', dormer.frontHeight),
      ],
      notes: [],
    },
    {
      id: trimmers.id,
      name: member.trimmer,
      count: trimmers.count,
      figures: [listFigure(asked, 'at', trimmers.at)],
      notes: [],
    },
    ...dormer.headers.map((one): SheetRow => ({
      id: one.id,
      name: member.header,
      count: one.count,
      figures: lengthsOf(asked, one, [
        ['ridgeTop', 'topHeight'],
        ['fromWall', 'from'],
        ['length', 'length'],
        ['most', 'leastDepth'],
      ]),
      notes: [],
    })),
  ];
};

const cutRows = (asked: SheetAsked, dormer: FiguredDormer): readonly SheetRow[] => {
  const { member, note } = asked.words.roofs;
  return [
    ...dormer.lowerRafters.map((one): SheetRow => ({
      id: one.id,
      name: member.lowerRafter,
      count: one.count,
      figures: commonFigures(asked, one),
      notes: [],
    })),
    ...dormer.upperRafters.map((one): SheetRow => ({
      id: one.id,
      name: member.upperRafter,
      count: one.count,
      figures: lengthsOf(asked, one, [
        ['plumbCut', 'plumbCutLength'],
        ['body', 'bodyLength'],
        ['stock', 'stockLength'],
      ]),
      notes: [note.noSeat],
    })),
    ...dormer.endRafters.map((one): SheetRow => ({
      id: one.id,
      name: member.endRafter,
      count: one.count,
      figures: [
        ...commonFigures(asked, one),
        lengthFigure(asked, 'taperLength', one.taperLength),
        angleFigure(asked, 'taper', one.taper),
      ],
      notes: [],
    })),
    ...dormer.sideStuds.map((one): SheetRow => ({
      id: one.id,
      name: member.sideStud,
      count: one.count,
      figures: [
        listFigure(asked, 'lengths', one.lengths),
        angleFigure(asked, 'topBevel', one.topBevel),
        angleFigure(asked, 'bottomBevel', one.bottomBevel),
      ],
      notes: [],
    })),
  ];
};
