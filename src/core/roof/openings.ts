import { hair, isOver } from '../units/hair';
import { rafterCuts } from './common';
import type {
  CommonRafter,
  DormerHeader,
  FaceRafter,
  FiguredDormer,
  SidePlates,
  SideStuds,
  UpperRafter,
} from './figured';
import type { Eave, Frame, Opening, RoofForm } from './form';
import type { Framing } from './framing';
import { hipCuts, openingAt, woodOf } from './hips';
import { faceLimit, headerLimit, startsAtEave, startsAtLimit, type Piece } from './pieces';
import type { RoofPlan } from './plan';
import { shorteningAt } from './planes';
import { upperRafter } from './upperRafters';
import type { Side } from './side';
import { plateThick } from './timberParts';

/**
 * What a gable dormer takes besides its own ridge, valleys, commons and jacks, which are figured as those of wings are:
 * trimmers and headers, the main rafters it interrupts, and its side walls or the pair at its gable.
 */

/** An opening with its dormer's frame and eaves, and the eave of the main roof it is in. */
export type OpeningOn = {
  readonly opening: Opening;
  readonly frame: Frame;
  readonly name: string;
  readonly eaves: readonly Eave[];
  readonly host: Eave;
};

export const openingsOn = ({ frames, eaves }: RoofForm): readonly OpeningOn[] =>
  frames.flatMap((frame): readonly OpeningOn[] => {
    const { opening, host: main } = frame.wing ?? {};
    const host = eaves.find(({ body, side }) => body === main?.body && side === opening?.plan.side);
    if (!opening || !host) return [];
    const own = eaves.filter(({ body }) => body === frame.body);
    return [{ opening, frame, name: frame.name ?? 'dormer', eaves: own, host }];
  });

/** Main rafters that end at its lower header, and those that start at the upper one. */
export const piecesUnder = ({ pieces }: Framing, { opening, host }: OpeningOn): readonly Piece[] =>
  pieces.filter((piece) => piece.eave === host && opening.inner.includes(piece.at) && startsAtEave(piece));
export const piecesOver = ({ pieces }: Framing, { opening, host }: OpeningOn): readonly Piece[] =>
  pieces.filter(
    (piece) => piece.eave === host && opening.inner.includes(piece.at) && startsAtLimit(piece, headerLimit),
  );
/** Where its gable stands on the main rafters. */
export const facePieces = ({ pieces }: Framing, { frame }: OpeningOn): readonly Piece[] =>
  pieces.filter((piece) => piece.eave.body === frame.body && startsAtLimit(piece, faceLimit));

/** Top of the main rafters above the street's plate, so far in from the main reference face. Inches. */
export const topIn = ({ opening: { host } }: OpeningOn, inFrom: number): number =>
  host.base + host.over + host.m * inFrom;

const plumbOf = ({ rafter }: RoofPlan, m: number): number => rafter.depth * Math.sqrt(1 + m * m);

/** A lower one under the front; the upper one's inside member stands under where the ridge's line comes to the main roof. */
export const openingHeaders = (plan: RoofPlan, framing: Framing, on: OpeningOn): readonly DormerHeader[] => {
  const { opening, host, name } = on;
  const { header } = opening.plan;
  const plumb = plumbOf(plan, host.m);
  const made = (part: string, at: Pick<DormerHeader, 'from' | 'topHeight' | 'leastDepth'>): DormerHeader => ({
    id: `header.${name}.${part}`,
    count: 2,
    side: host.side as Side,
    section: header,
    length: opening.faces[1] - opening.faces[0],
    thickness: 2 * header.thickness,
    ...at,
    bearsFully: !isOver(at.leastDepth, header.depth),
  });
  const from = opening.meet - header.thickness / 2;
  const topHeight = topIn(on, from);
  const leastDepth = Math.max(plumb, topHeight - lowestAt(plan, framing, on));
  // What stands on it takes its whole top, beveled to the main roof.
  const beveled = opening.plates === undefined;
  const rises = beveled ? 2 * header.thickness * host.m : 0;
  const lower = {
    from: opening.front,
    topHeight: topIn(on, opening.front) + rises,
    leastDepth: plumb + rises,
    ...(beveled && { bevel: { rise: host.m, run: 1 } }),
  };
  return [
    ...(opening.plan.front > 0 ? [made('lower', lower)] : []),
    made('upper', { from, topHeight, leastDepth }),
  ];
};

/** Of the ridge and the valleys that come to the upper header, how low their cuts reach. Inches above the street's plate. */
const lowestAt = (plan: RoofPlan, framing: Framing, { opening, frame, eaves: [eave] }: OpeningOn): number => {
  const { m = 0 } = eave ?? {};
  const meet = opening.host.base + opening.host.over + opening.host.m * opening.meet;
  const { ridge } = frame;
  const under = ridge ? meet - (m * ridge.thickness) / 2 - ridge.depth : meet;
  const valleys = framing.edges
    .filter((edge) => openingAt(framing.form, edge) === opening)
    .map((edge) => {
      const cuts = hipCuts(plan, framing, edge);
      const depth = woodOf(framing.form, edge)?.depth ?? 0;
      return meet - edge.m * (cuts?.shorteningTop ?? 0) - depth * Math.sqrt(1 + edge.m * edge.m);
    });
  return Math.min(under, ...valleys);
};

const underRafters = (plan: RoofPlan, framing: Framing, on: OpeningOn): readonly CommonRafter[] => {
  const count = piecesUnder(framing, on).length;
  if (count === 0) return [];
  const cuts = rafterCuts({ ...on.host, run: on.opening.front }, { rafter: plan.rafter, shortening: 0 });
  return [{ id: `lower.${on.name}`, count, side: on.host.side, ...cuts }];
};

/** Level, from where its ridge's line comes down to the upper face of the header. Inches. */
export const overHeader = ({ opening: { plan } }: OpeningOn): number => 1.5 * plan.header.thickness;

const overRafters = (plan: RoofPlan, framing: Framing, on: OpeningOn): readonly UpperRafter[] =>
  upperRafter(plan, framing.form, {
    id: `upper.${on.name}`,
    pieces: piecesOver(framing, on),
    host: on.host,
    shorteningBottom: overHeader(on),
  });

const faceRafters = (plan: RoofPlan, framing: Framing, on: OpeningOn): readonly FaceRafter[] => {
  const [first, ...more] = facePieces(framing, on);
  if (!first) return [];
  const { m } = first.eave;
  const g = Math.sqrt(1 + m * m);
  const run = first.to - first.from;
  const shorteningTop = shorteningAt(plan, framing.form, { eave: first.eave, piece: first });
  const bodyLength = (run - shorteningTop) * g;
  // The tilt of the foot over half the thickness, at its long side.
  const aside = ((plan.rafter.thickness / 2) * on.host.m * g) / m;
  return [
    {
      id: `face.${on.name}`,
      count: 1 + more.length,
      side: 'both',
      run,
      lineLength: run * g,
      bodyLength,
      stockLength: bodyLength + aside + plan.rafter.depth * m,
      plumbCutLength: plan.rafter.depth * g,
      shorteningTop,
      foot: { level: { rise: m, run: 1 }, sawTilt: { rise: on.host.m, run: 1 } },
    },
  ];
};

/** Level, from the main reference face to the middles of its side studs: every so far from the front, clear of its corner. Inches. */
export const studsIn = (plan: RoofPlan, on: OpeningOn): readonly number[] => {
  const { walls } = on.opening.plan;
  if (!walls) return [];
  const { spacing, thickness } = walls.studs;
  const till = platesTill(on) - plateThick / on.host.m - thickness / 2 - hair;
  const many = Math.max(0, Math.floor((till - on.opening.front) / spacing));
  return Array.from({ length: many }, (_, k) => (k + 1) * spacing)
    .filter((from) => from - thickness / 2 >= plan.plate.width - hair)
    .map((from) => on.opening.front + from);
};

const platesTill = ({ opening }: OpeningOn): number => opening.plates ?? opening.front;

const sideStuds = (plan: RoofPlan, on: OpeningOn): readonly SideStuds[] => {
  const { walls } = on.opening.plan;
  const marks = studsIn(plan, on);
  if (!walls || marks.length === 0) return [];
  const { spacing, thickness } = walls.studs;
  const { m, side } = on.host;
  const lengths = marks.map((at) => (platesTill(on) - (at - thickness / 2)) * m - plateThick);
  return [
    {
      id: `stud.${on.name}`,
      count: 2 * lengths.length,
      side: side as Side,
      section: { thickness, depth: plan.plate.width },
      spacing,
      difference: spacing * m,
      topBevel: { rise: 0, run: 1 },
      bottomBevel: { rise: m, run: 1 },
      lengths,
      stockLengths: lengths,
    },
  ];
};

const sidePlates = ({ opening, host, name }: OpeningOn): readonly SidePlates[] =>
  opening.plates === undefined
    ? []
    : [
        {
          id: `plate.${name}`,
          count: 2,
          side: 'both',
          lineLength: opening.foot - opening.front,
          length: opening.plates - opening.front,
          bevel: { rise: host.m, run: 1 },
        },
      ];

export const figuredOpenings = (plan: RoofPlan, framing: Framing): readonly FiguredDormer[] =>
  openingsOn(framing.form).map((on): FiguredDormer => {
    const { opening, eaves, name } = on;
    const { plan: dormer, host } = opening;
    const faces = faceRafters(plan, framing, on);
    const plates = sidePlates(on);
    return {
      id: name,
      count: 1,
      side: dormer.side,
      kind: dormer.kind,
      meets: 'header',
      slope: { rise: eaves[0]?.m ?? 0, run: 1 },
      run: opening.meet - opening.front,
      meetHeight: topIn(on, opening.meet),
      frontHeight: dormer.walls ? host.base + dormer.walls.top - topIn(on, opening.front) : 0,
      trimmers: {
        id: `trimmer.${name}`,
        count: opening.trimmers.length,
        side: dormer.side,
        at: opening.trimmers,
      },
      headers: openingHeaders(plan, framing, on),
      lowerRafters: underRafters(plan, framing, on),
      upperRafters: overRafters(plan, framing, on),
      endRafters: [],
      sideStuds: sideStuds(plan, on),
      ...(plates.length > 0 && { sidePlates: plates }),
      ...(faces.length > 0 && { faceRafters: faces }),
    };
  });
