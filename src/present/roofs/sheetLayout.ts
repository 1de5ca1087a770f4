import { timbersOf } from '../../core/roof/timbers';
import type { RoofPlan } from '../../core/roof/plan';
import { hair } from '../../core/units/hair';
import { tapeText, type Figure } from './figures';
import type { SheetAsked, SheetPart, SheetRow } from './sheetShape';
import { whereText } from './where';

/**
 * Where a tape hooked at the datum reads each rafter's near edge. Stations are centers, so half a thickness comes off; a crew
 * marks the line and an X on the side the rafter goes.
 */
export const layoutPart = (asked: SheetAsked): SheetPart => {
  const { roof, words } = asked;
  const { part } = words.roofs;
  const { stations, eaves = [] } = roof.layout;
  const rows = [
    // Every part of a run has its own.
    ...(asked.plan.kind === 'stepped'
      ? []
      : [row(asked, { id: 'layout', marks: mainMarks(asked.plan, stations), side: 'both' })]),
    ...eaves.map(({ side, part: of, stations: own }) =>
      row(asked, {
        id: `layout.${of ?? side}`,
        marks: ownMarks(asked.plan, { side, of, own }),
        side,
        ...(of !== undefined && { of }),
      }),
    ),
  ];
  const notes = eaves.some(({ side, part: of }) => of === undefined && isEnd(side))
    ? [words.roofs.tape.fromStreet]
    : [];
  const wing = eaves.some(({ part: of }) => of?.startsWith('wing')) ? [words.roofs.tape.fromGable] : [];
  return {
    key: 'layout',
    title: part.layout,
    rows,
    notes: [hookText(asked), ...ridgeText(asked), ...notes, ...wing],
  };
};

const isEnd = (side: string): boolean => side === 'ends' || side === 'A' || side === 'B';

type Row = {
  readonly id: string;
  readonly marks: readonly number[];
  readonly side: string;
  readonly of?: string;
};

const row = (asked: SheetAsked, { id, marks, side, of }: Row): SheetRow => {
  const { words } = asked;
  const elsewhere = (asked.roof.layout.eaves ?? []).length > 0;
  const main = id === 'layout';
  const where = main
    ? elsewhere
      ? whereText(words, otherSides(asked))
      : words.roofs.where.both
    : whereText(words, of === undefined ? side : 'all', of);
  return {
    id,
    name: words.roofs.tape.sides(where),
    count: marks.length,
    figures: [marksFigure(asked, marks)],
    notes: [],
  };
};

/** Eaves of the main roof that have no marks of their own. */
const otherSides = ({ roof, plan }: SheetAsked): string => {
  const own = (roof.layout.eaves ?? []).filter(({ part }) => part === undefined).map(({ side }) => side);
  if (plan.kind === 'shed' || own.includes('yard')) return 'street';
  return own.includes('street') ? 'yard' : 'both';
};

const marksFigure = ({ words, units, plan }: SheetAsked, list: readonly number[]): Figure => {
  const { middle } = words.roofs.tape;
  const text = list
    .map((one) => (plan.kind !== 'hip' && plan.datum === 'centre' && one < 0 ? middle : tapeText(one, units)))
    .join(' · ');
  return { key: 'marks', name: words.roofs.figure.marks, text, list };
};

/** Near edges, from the end the tape is hooked at. From the middle: below nothing where the rafter stands over it. */
const mainMarks = (plan: RoofPlan, stations: readonly number[]): readonly number[] => {
  const half = plan.rafter.thickness / 2;
  if (isFromB(plan)) return [...stations].reverse().map((x) => clean(plan.length - x - half));
  if (plan.datum === 'centre') {
    return stations.map((x) => clean(Math.abs(x - plan.length / 2) - half));
  }
  return stations.map((x) => clean(x - half));
};

/** Of a roof that goes on from one that stands at B the joint is there. */
const isFromB = (plan: RoofPlan): boolean =>
  plan.kind === 'gable' && plan.standing ? plan.standing.end === 'B' : plan.datum === 'endB';

/** What rounding left of nothing. */
const clean = (value: number): number => (Math.abs(value) < hair ? 0 : value);

type Own = { readonly side: string; readonly of?: string | undefined; readonly own: readonly number[] };

const ownMarks = (plan: RoofPlan, { side, of, own }: Own): readonly number[] => {
  const half = plan.rafter.thickness / 2;
  if (of?.startsWith('wing')) {
    const wing = plan.kind === 'gable' ? plan.wings?.[wingOf(of)] : undefined;
    const gable = plan.span / 2 + (wing?.length ?? 0);
    return own.map((y) => clean(gable - Math.abs(y) - half)).sort((a, b) => a - b);
  }
  if (isEnd(side)) return own.map((y) => clean(y + plan.span / 2 - half));
  return mainMarks(plan, own);
};

/** `wing2` is the second; one alone has no number. */
const wingOf = (part: string): number => Math.max(0, Number(/\d+/.exec(part)?.[0] ?? 1) - 1);

const hookText = ({ plan, words }: SheetAsked): string => {
  const { tape } = words.roofs;
  if (plan.kind === 'gable' && plan.standing) return tape.fromJoint;
  if (plan.datum === 'endB') return tape.fromB;
  if (plan.datum === 'centre') return tape.fromMiddle;
  return plan.datum === 'ridgeEnd' ? tape.fromCorner : tape.fromA;
};

/** Where the ridge's own end lies against the plates', for it is marked from there. */
const ridgeText = ({ plan, roof, words, units }: SheetAsked): readonly string[] => {
  const [ridge] = roof.ridges;
  if (!ridge || plan.datum === 'centre') return [];
  const start = ridgeStart(plan, ridge.lineLength);
  const { tape } = words.roofs;
  if (Math.abs(start) < hair) return [tape.ridgeAlike];
  const text = tapeText(Math.abs(start), units);
  return [start < 0 ? tape.ridgeMore(text) : tape.ridgeStarts(text)];
};

/** From the end the tape is hooked at to the ridge's end; below nothing where the ridge runs past it. */
const ridgeStart = (plan: RoofPlan, lineLength: number): number => {
  if (plan.kind !== 'hip') {
    // What stands ends the new ridge at the joint.
    return plan.kind === 'gable' && plan.standing ? 0 : (plan.length - lineLength) / 2;
  }
  const ridge = timbersOf(plan).find(({ id }) => id === 'ridge');
  if (!ridge) return 0;
  return Math.min(...ridge.outline.map(([along]) => ridge.origin[0] + ridge.direction[0] * along));
};
