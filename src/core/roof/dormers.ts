import { hair, isOver } from '../units/hair';
import { rafterCuts } from './common';
import type { CommonRafter, FiguredDormer, DormerHeader, SideStuds, TaperedRafter } from './figured';
import { frameOf, type DormerShape, type Eave, type RoofForm } from './form';
import type { Framing } from './framing';
import { figuredOpenings } from './openings';
import { upperRafter } from './upperRafters';
import { startsAtEave, type Piece } from './pieces';
import type { RoofPlan } from './plan';
import type { Side } from './side';

/** What a dormer takes besides its own commons: headers, the main rafters it interrupts, tapered rafters, side studs. */

/** A dormer's eave and that of the main roof it stands in. */
export type DormerOn = {
  readonly eave: Eave;
  readonly shape: DormerShape;
  readonly host: Eave;
  readonly name: string;
};

export const dormersOn = (form: RoofForm): readonly DormerOn[] =>
  form.eaves.flatMap((eave): readonly DormerOn[] => {
    const { dormer: shape } = eave;
    const host = form.eaves.find((one) => one.body === form.frames[0].body && one.side === eave.side);
    return shape && host ? [{ eave, shape, host, name: frameOf(form, eave.body).name ?? 'dormer' }] : [];
  });

/** Main rafters that end at its front wall, and those that start over it. */
export const lowerPieces = ({ pieces }: Framing, { eave, host }: DormerOn): readonly Piece[] =>
  pieces.filter(
    (piece) =>
      piece.eave === host &&
      startsAtEave(piece) &&
      piece.high.some((stop) => stop.what === 'eave' && stop.plane === eave.plane),
  );

export const upperPieces = ({ pieces }: Framing, { eave, host, shape }: DormerOn): readonly Piece[] =>
  shape.toRidge
    ? []
    : pieces.filter(
        (piece) =>
          piece.eave === host && piece.low.some((stop) => stop.what === 'plane' && stop.plane === eave.plane),
      );

/** Level, from the main reference face to the outer face of its front wall's plate, where the lower header stands. Inches. */
export const frontIn = ({ shape: { plan }, eave }: DormerOn): number => plan.front + eave.clad;

/** Top of the main rafters above the street's plate, so far in from the main reference face. Inches. */
export const mainTop = ({ shape: { host } }: DormerOn, inFrom: number): number =>
  host.base + host.over + host.m * inFrom;

export const dormerHeaders = (plan: RoofPlan, on: DormerOn): readonly DormerHeader[] => {
  const { shape, host, name, eave } = on;
  const { header, front, width } = shape.plan;
  const thickness = 2 * header.thickness;
  const plumb = (m: number): number => plan.rafter.depth * Math.sqrt(1 + m * m);
  const meet = front + shape.run;
  const flush = mainTop(on, meet) - shape.m * header.thickness;
  const made = (part: string, at: Pick<DormerHeader, 'from' | 'topHeight' | 'leastDepth'>): DormerHeader => ({
    id: `header.${name}.${part}`,
    count: 2,
    side: host.side as Side,
    section: header,
    length: width - 4 * plan.rafter.thickness,
    thickness,
    ...at,
    bearsFully: !isOver(at.leastDepth, header.depth),
  });
  const lower = { from: frontIn(on), topHeight: mainTop(on, frontIn(on)), leastDepth: plumb(host.m) };
  const under = Math.max(plumb(eave.m), plumb(host.m) - (host.m + eave.m) * header.thickness);
  const upper = { from: meet - header.thickness, topHeight: flush, leastDepth: under };
  return [...(front > 0 ? [made('lower', lower)] : []), ...(shape.toRidge ? [] : [made('upper', upper)])];
};

const lowerRafter = (plan: RoofPlan, framing: Framing, on: DormerOn): readonly CommonRafter[] => {
  const count = lowerPieces(framing, on).length;
  if (count === 0) return [];
  const cuts = rafterCuts({ ...on.host, run: frontIn(on) }, { rafter: plan.rafter, shortening: 0 });
  return [{ id: `lower.${on.name}`, count, side: on.host.side, ...cuts }];
};

/** Level, in from its reference face, to where the lower edges of its rafters would come to the main rafters' tops. Inches. */
const underMeets = (plan: RoofPlan, { shape: { host, m, gap } }: DormerOn): number =>
  (gap - plan.rafter.depth * Math.sqrt(1 + m * m)) / (host.m - m);

/** Level, how far short of the meeting an end rafter is cut: at a header it runs out to nothing. Inches. */
export const endShortening = ({ shape }: DormerOn): number => (shape.toRidge ? shape.shortening : 0);

/** The same to where the taper starts: at a thick ridge under a steep roof there may be none. */
const taperStart = (plan: RoofPlan, on: DormerOn): number =>
  Math.min(underMeets(plan, on), on.shape.run - endShortening(on));

const endRafter = (plan: RoofPlan, on: DormerOn): TaperedRafter => {
  const { eave, shape, name } = on;
  const shortening = endShortening(on);
  const taperFrom = taperStart(plan, on);
  const [m, main] = [eave.m, shape.host.m];
  return {
    id: `common.${name}.end`,
    count: 2,
    side: eave.side,
    ...rafterCuts(eave, { rafter: plan.rafter, shortening }),
    taperFrom,
    taperLength: (eave.run - shortening - taperFrom) * Math.sqrt(1 + main * main),
    taper: { rise: main - m, run: 1 + main * m },
  };
};

/** Level, from its reference face to the middles of its side studs: every so far from the front wall, clear of its corner. Inches. */
export const sideStudsAt = (plan: RoofPlan, on: DormerOn): readonly number[] => {
  const { spacing, thickness } = on.shape.plan.studs;
  const { clad } = on.eave;
  const end = taperStart(plan, on) - thickness / 2 - hair;
  const many = Math.max(0, Math.floor((end - clad) / spacing));
  return Array.from({ length: many }, (_, k) => (k + 1) * spacing)
    .filter((from) => from - thickness / 2 >= plan.plate.width - hair)
    .map((from) => clad + from);
};

const sideStuds = (plan: RoofPlan, on: DormerOn): readonly SideStuds[] => {
  const { shape, eave, name } = on;
  const { spacing, thickness } = shape.plan.studs;
  const steeper = shape.host.m - eave.m;
  const lengths = sideStudsAt(plan, on).map((at) => (underMeets(plan, on) - (at - thickness / 2)) * steeper);
  if (lengths.length === 0) return [];
  return [
    {
      id: `stud.${name}`,
      count: 2 * lengths.length,
      side: eave.side as Side,
      section: { thickness, depth: plan.plate.width },
      spacing,
      difference: spacing * steeper,
      topBevel: { rise: eave.m, run: 1 },
      bottomBevel: { rise: shape.host.m, run: 1 },
      lengths,
      stockLengths: lengths.map((length) => length + eave.m * thickness),
    },
  ];
};

/** All of a roof in the order of its plan. */
export const figuredDormers = (plan: RoofPlan, framing: Framing): readonly FiguredDormer[] => {
  const named = new Map(
    [...figuredSheds(plan, framing), ...figuredOpenings(plan, framing)].map((one) => [one.id, one]),
  );
  return framing.form.frames.flatMap(({ name }) => named.get(name ?? '') ?? []);
};

const figuredSheds = (plan: RoofPlan, framing: Framing): readonly FiguredDormer[] =>
  dormersOn(framing.form).map((on): FiguredDormer => {
    const { shape, eave, name } = on;
    const { plan: dormer, host } = shape;
    const uppers = {
      id: `upper.${name}`,
      pieces: upperPieces(framing, on),
      host: on.host,
      shorteningBottom: on.shape.plan.header.thickness,
    };
    return {
      id: name,
      count: 1,
      side: dormer.side,
      kind: dormer.kind,
      meets: shape.toRidge ? 'ridge' : 'header',
      slope: { rise: eave.m, run: 1 },
      run: shape.run,
      meetHeight: mainTop(on, dormer.front + shape.run),
      frontHeight: host.base + dormer.wall - mainTop(on, frontIn(on)),
      trimmers: {
        id: `trimmer.${name}`,
        count: shape.trimmers.length,
        side: dormer.side,
        at: shape.trimmers,
      },
      headers: dormerHeaders(plan, on),
      lowerRafters: lowerRafter(plan, framing, on),
      upperRafters: upperRafter(plan, framing.form, uppers),
      endRafters: [endRafter(plan, on)],
      sideStuds: sideStuds(plan, on),
    };
  });
