import { boardTruth } from '../level/boardTruth';
import { roofOf } from '../level/layout';
import type { CommonRafter } from '../roof/figured';
import { driedCut, type Dried } from '../stock/drying';
import { gradient } from '../units/slope';
import type { BoardId } from './ids';
import type { Gaps } from './pose';
import type { Standing } from './standing';

/** One rafter as really cut: how it would lie with nothing forcing it. Inches. */
export type CutRafter = {
  /** Level and plumb distance from heel to plumb cut. */
  readonly out: number;
  readonly up: number;
  /** Top edge over its seat, plumb over the plate's outer face. */
  readonly overPlate: number;
  /** Plumb cut open at the bottom (+) or top (−). */
  readonly open: number;
  readonly plumb: number;
  readonly m: number;
  /** Body over (+) or under its figured length, along the slope; seat cut deeper than figured. */
  readonly long: number;
  readonly deep: number;
  /** Inner edge of the seat off a level plate while its outer edge bears. */
  readonly seatOpen: number;
  /** Heel cut eased: it stands that much farther out than figured. */
  readonly eased: number;
};

export const cutRafter = (standing: Standing, board: BoardId): CutRafter => {
  const { level, site } = standing;
  const common = roofOf(level).commonRafters[0] as CommonRafter;
  const m = gradient(level.plan.slope);
  const g = Math.sqrt(1 + m * m);
  const truth = boardTruth(standing, board);
  const trims = site.trims[board] ?? {};
  const dry = driedBy(standing, truth.dried);
  const body = common.bodyLength + truth.long + dry.long - (trims.plumb ?? 0);
  const wedge = trims.wedge ?? 0;
  // A deeper board stands higher: its notch was cut from its lower edge, as deep as figured.
  const deep = (trims.seat ?? 0) + dry.low - truth.depth * g;
  return {
    out: body / g - Math.max(0, wedge),
    up: (body * m) / g,
    overPlate: common.heightAbovePlate - deep,
    open: truth.open + dry.open - wedge,
    plumb: common.plumbCutLength,
    m,
    long: body - common.bodyLength - Math.max(0, wedge) * g,
    deep,
    seatOpen: dry.seat,
    eased: trims.heel ?? 0,
  };
};

/** Depth of a board as it is now. */
export const boardDepth = (standing: Standing, board: string): number => {
  const { depth, dried } = boardTruth(standing, board);
  return (standing.level.plan.rafter.depth + depth) * (1 - dried);
};

/** What drying does to the job's common rafter, as figured. */
const driedBy = ({ level }: Pick<Standing, 'level'>, share: number): Dried => {
  const { seat, heightAbovePlate } = roofOf(level).commonRafters[0] as CommonRafter;
  const { rafter, slope } = level.plan;
  return driedCut({ depth: rafter.depth, seat, heightAbovePlate, m: gradient(slope) }, share);
};

/** How a rafter hangs that a hand holds: its gaps, and how far its plumb cut falls short of the ridge. */
export type Hung = { readonly gaps: Gaps; readonly apart: number };

/**
 * Turns a rafter about its top, flush with the ridge's, until its seat bears or its heel cut is hard against the wall.
 * `level` and `height` are what there is from the ridge's face and top edge to the plate's outer top edge.
 */
export const hang = (cut: CutRafter, room: { readonly level: number; readonly height: number }): Hung => {
  const off = cut.out + cut.eased - room.level;
  const over = room.height - cut.overPlate - cut.up;
  const drop = over < 0 ? over : Math.min(over, Math.max(0, off) / cut.m);
  const heel = off - cut.m * drop;
  const apart = Math.max(0, -heel);
  const lean = cut.open - (drop / cut.out) * cut.plumb;
  return {
    apart,
    gaps: {
      seat: over - drop + cut.seatOpen,
      heelCut: Math.max(0, heel),
      plumbTop: apart + Math.max(0, -lean),
      plumbBottom: apart + Math.max(0, lean),
    },
  };
};
