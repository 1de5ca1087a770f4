import { hair, isOver } from '../units/hair';
import { deckOf, type Edge } from './edges';
import type { FiguredRidge } from './figured';
import { frameOf, type Frame, type RoofForm, type SectionEnd } from './form';
import { reachesHostRidge, reachIn, valleySides, type Framing } from './framing';
import { topOf, type RoofPlane } from './planes';
import { standingLimit } from './standing';
import type { RoofPlan } from './plan';
import type { Side } from './side';
import { halfAcross, skewOf } from './skew';
import type { Body, Of, Stop } from './surface';

/** A ridge with the line it stands on and how far its ends lie past that of the planes. */
export type RidgeOn = {
  readonly edge: Edge;
  readonly frame: Frame;
  /** Level, at the line's low and high end: less than 0 where the ridge stops short. Inches. */
  readonly ends: readonly [End, End];
  readonly figured: FiguredRidge;
};

/** What a ridge has past the end of its planes' line: `past` of the theoretical line, and `more` of the board alone. */
type End = { readonly past: number; readonly more: number };

/** Set so that the lower plane's rafters are flush with its top; it has to be as deep as the longest plumb cut. */
export const ridgesOn = (
  plan: RoofPlan,
  framing: Framing,
  planes: readonly RoofPlane[],
): readonly RidgeOn[] =>
  framing.edges
    .filter(({ kind }) => kind === 'ridge')
    .flatMap((edge) => {
      const frame = frameOf(framing.form, edge.planes[0].body);
      if (!frame.ridge) return [];
      const onBody = planes.filter(
        ({ eave, atBreak }) => eave.body === frame.body && !atBreak && !eave.plane.till,
      );
      const leastDepth = Math.max(...onBody.map(({ cuts }) => cuts.plumbCutLength));
      const onRidge = onBody.filter(({ eave }) => edge.planes.some(({ plane }) => plane === eave.plane));
      const at = (stops: readonly Stop[]): End => endOf(plan, framing, { edge, frame, stops, planes });
      const ends = [at(edge.low), at(edge.high)] as const;
      const lineLength = edge.run + ends[0].past + ends[1].past;
      const topHeight = Math.min(...onRidge.map(topOf));
      const figured = {
        id: frame.name ? `ridge.${frame.name}` : 'ridge',
        count: 1,
        side: 'both' as const,
        section: frame.ridge,
        lineLength,
        length: lineLength + ends[0].more + ends[1].more,
        topHeight,
        leastDepth,
        bearsFully: !isOver(leastDepth, frame.ridge.depth),
        ...inRun(edge, frame, topHeight),
        ...proudOf(onRidge),
      };
      return [{ edge, frame, ends, figured }];
    });

/** Where one of several along one line ends, with its gables' overhangs and what lies in pockets. */
const inRun = (
  { from, to }: Edge,
  { section, name = '', ridge }: Frame,
  topHeight: number,
): Pick<FiguredRidge, 'lies'> => {
  if (!section || !ridge) return {};
  const past = ({ past, more }: End): number => past + more;
  const underside = topHeight - ridge.depth;
  return {
    lies: {
      part: name,
      from: Math.min(from[0], to[0]) - past(endInRun(section.ends.A)),
      to: Math.max(from[0], to[0]) + past(endInRun(section.ends.B)),
      underside,
      overPlates: underside - section.plates,
    },
  };
};

/** Past a gable, or into the wall of a higher section. */
const endInRun = (end: SectionEnd): End =>
  end.what === 'gable' ? { past: end.past, more: 0 } : { past: 0, more: end.into };

/** Tops of unequal slopes come to the ridge at heights of their own: it is set to the lower. */
const proudOf = (planes: readonly RoofPlane[]): Pick<FiguredRidge, 'proud'> => {
  const [highest, lowest] = [...planes].sort((a, b) => topOf(b) - topOf(a));
  if (!highest || !lowest) return {};
  const by = topOf(highest) - topOf(lowest);
  return by > hair ? { proud: { side: highest.eave.side as Side, by } } : {};
};

type Ending = {
  readonly edge: Edge;
  readonly frame: Frame;
  readonly stops: readonly Stop[];
  readonly planes: readonly RoofPlane[];
};

const endOf = (plan: RoofPlan, { form, edges }: Framing, { edge, frame, stops, planes }: Ending): End => {
  const end = stops.flatMap((stop) => (stop.what === 'limit' ? [stop.limit.id] : []))[0];
  if (frame.section && (end === 'A' || end === 'B')) return endInRun(frame.section.ends[end]);
  const bodies = stops.flatMap((stop) => (stop.what === 'plane' ? [stop.body] : []));
  if (bodies.includes(frame.body)) return { past: 0, more: pastHips(plan, edge, { frame, edges }) };
  if (bodies.length > 0 || stops.some((stop) => stop.what === 'limit' && stop.limit.id === 'host'))
    return atHost(form, edges, { edge, frame, planes });
  if (stops.some((stop) => stop.what === 'limit' && stop.limit.id === standingLimit))
    return { past: 0, more: 0 };
  return { past: frame.past, more: 0 };
};

/**
 * How far a ridge runs past its theoretical end at the hips: to the outer face of the commons that stand there, or until
 * the whole cheek of a hip against its side bears. Inches.
 */
const pastHips = (
  { rafter }: RoofPlan,
  { line }: Edge,
  { frame: { body, hip, ridge }, edges }: { readonly frame: Frame; readonly edges: readonly Edge[] },
): number => {
  if (!hip || !ridge) return 0;
  if (hip.top === 'betweenCommons') return rafter.thickness / 2;
  const first = edges.find(({ kind, planes }) => kind === 'hip' && planes[0].body === body);
  if (!first) return 0;
  const skew = skewOf(first.line.way, line.way);
  return (ridge.thickness / 2) * (skew.cos / skew.sin) + halfAcross(hip.thickness, skew);
};

const ridgeTop = (planes: readonly RoofPlane[], body: Body): number =>
  Math.min(...planes.filter(({ eave }) => eave.body === body).map(topOf));

/**
 * A wing's ridge ends at the face of the host's ridge or of the long valley, or runs on under the host's ridge, or to its face
 * where it comes in too high to go under. At a header it ends against the inside member. */
const atHost = (
  form: RoofForm,
  edges: readonly Edge[],
  { edge, frame: { body, wing }, planes }: Omit<Ending, 'stops'>,
): End => {
  const valleys = edges.filter(
    ({ kind, planes }) => kind === 'valley' && planes.some((of) => of.body === body),
  );
  const [first] = valleys;
  if (wing?.over) return { past: 0, more: -onSlope(form, edges, body) };
  if (!wing || !first) return { past: 0, more: 0 };
  const { host } = valleySides(form, first);
  const { thickness = 0, depth = 0 } = wing.host.ridge ?? {};
  if (reachesHostRidge(first, host)) return { past: 0, more: -thickness / 2 };
  if (wing.opening) return { past: 0, more: -wing.opening.plan.header.thickness / 2 };
  const gap = toHostRidge(edge, host);
  if (wing.framing === 'suspendedRidge') {
    const hangs = ridgeTop(planes, body) <= ridgeTop(planes, host.body) - depth + hair;
    return { past: gap, more: hangs ? 0 : -thickness / 2 };
  }
  const long = valleys.find(({ parts }) => parts !== undefined);
  const across = long ? halfAcross(wing.valley.thickness, skewOf(edge.line.way, long.line.way)) : 0;
  return { past: 0, more: -Math.max(across, thickness / 2 - gap) };
};

/**
 * A ridge that ends on sleepers is cut to the slope under it. Its top is half its thickness down its own slope from the
 * planes' line: so much sooner it comes to them, measured to its long point. Inches.
 */
const onSlope = (form: RoofForm, edges: readonly Edge[], body: Body): number => {
  const foot = edges.find(({ kind, planes }) => kind === 'sleeper' && planes.some((of) => of.body === body));
  const deck = foot && deckOf(form, foot);
  const own = foot?.planes.find((of) => of !== deck);
  const half = (frameOf(form, body).ridge?.thickness ?? 0) / 2;
  return deck && own ? (half * own.plane.m) / deck.plane.m : 0;
};

/** Level, from where a wing's ridge meets the host's plane to the host's ridge line. Inches. */
const toHostRidge = ({ from, to }: Edge, host: Of): number => {
  const inside = [from, to].sort((a, b) => heightIn(host, b) - heightIn(host, a))[0] ?? from;
  return reachIn(host, { from: inside, way: host.plane.up });
};

const heightIn = ({ plane: { foot, up } }: Of, [x, y]: Edge['from']): number =>
  up[0] * (x - foot[0]) + up[1] * (y - foot[1]);
