import { add, lerp, scale, sub, type Vec3 } from '../../core/geometry/vector';
import { onItsWay } from '../../present/model/arrival';
import type { Act } from '../../present/model/actSeen';
import { between, changesOf, groupsOf } from '../../present/model/changes';
import { movedSolid, type Motion } from '../../present/model/fallen';
import type { Shown } from '../../present/model/scheme';
import type { Solid, Stroke as Line } from '../../present/model/solid';
import { onScreen } from '../ink/camera';
import { chalkLine } from '../ink/chalk';
import { palettes, type Theme } from '../ink/palette';
import { inkOn, sheetOf } from '../ink/pencil';
import type { Overview, Staged } from '../overview/drawOverview';
import { boxOf, boxRound } from './boxes';
import { drawInTheAir, type Air, type Placed } from './inTheAir';
import { without } from './without';

/** What is seen to happen between two pictures of the site: short, and true to what the act did. */

/** One of the two pictures, with what it was drawn from. */
export type Seen = { readonly shown: Shown; readonly overview: Overview; readonly staged: Staged };

export type Between = {
  readonly before: Seen;
  readonly after: Seen;
  readonly act: Act;
  readonly theme: Theme;
  readonly ratio: number;
  /** The picture after the act without some of its members: costly, asked for only where something moved far. */
  readonly plate: (ids: ReadonlySet<string>) => Overview;
};

/** A show of some length, ms. `scene` is what lies under what moves; `frame` gives what lies over it at a time, 0…1. */
export type Performance = {
  readonly length: number;
  readonly scene: HTMLCanvasElement | undefined;
  readonly frame: (t: number) => readonly Placed[];
};

/** Lengths, ms; ours: long enough to be followed, short enough not to be waited for. */
const lengths = { bring: 460, load: 900, next: 80, cross: 320, line: 420 };
/** More bodies than this change without a show. Ours. */
const mostBodies = 10;
/** A move shorter than this on the picture needs no scene without what moves, device pixels. Ours. */
const seenMove = 3;

const ease = (t: number): number => (t < 0.5 ? 2 * t * t : 1 - 2 * (1 - t) * (1 - t));
const within = (t: number): number => Math.max(0, Math.min(1, t));

export const performanceOf = (given: Between): Performance | undefined => {
  const { before, after, act } = given;
  if (!act.outcome.ok || after.shown.pose.fallen || before.shown.pose.fallen) return undefined;
  const bodies = bodiesShow(given);
  const line = lineShow(given);
  const told = [bodies, line].filter((show) => show !== undefined);
  // Where nothing but people changed, one picture gives way to the other.
  const shows = told.length > 0 ? told : [crossing];
  if (before.overview === after.overview) return undefined;
  const length = shows.reduce((sum, show) => sum + show.length, 0);
  let from = 0;
  const parts = shows.map((show) => {
    const start = from;
    from += show.length;
    return { show, start };
  });
  return {
    length,
    scene: bodies?.scene ?? line?.scene,
    frame: (t) =>
      parts.flatMap(({ show, start }) => {
        const own = (t * length - start) / show.length;
        return own < 0 ? [] : show.frame(within(own), own >= 1);
      }),
  };
};

type Show = {
  readonly length: number;
  readonly scene?: HTMLCanvasElement | undefined;
  /** `past`: its time is over, and it shows what stays. */
  readonly frame: (t: number, past: boolean) => readonly Placed[];
};

const crossing: Show = { length: lengths.cross, frame: () => [] };

type Way = (t: number) => readonly Solid[];

const bodiesShow = (given: Between): Show | undefined => {
  const { before, after, theme, ratio } = given;
  const { came, gone, moved } = changesOf(before.staged.model, after.staged.model);
  const far = moved.length <= mostBodies ? moved.filter((id) => movesFar(given, id)) : [];
  const count = came.length + gone.length + far.length;
  if (count === 0 || count > mostBodies) return undefined;
  const was = groupsOf(before.staged.model.solids);
  const is = groupsOf(after.staged.model.solids);
  const ids = new Set([...came, ...far]);
  // A ridge comes from where its board lay.
  const lay = came.includes('ridge') ? was.get(ridgeBoard) : undefined;
  const left = gone.filter((id) => lay === undefined || id !== ridgeBoard);
  const ways = [
    ...left.map(
      (id): Way =>
        (t) =>
          moveAll(was.get(id), (s) => movedSolid(s, onItsWay(before.shown, id, ease(t)))),
    ),
    ...came.map((id): Way => {
      const from = id === 'ridge' && lay ? carried(lay, is.get(id) ?? []) : undefined;
      const way = (t: number) => from?.(1 - ease(t)) ?? onItsWay(after.shown, id, 1 - ease(t));
      return (t) => moveAll(is.get(id), (s) => movedSolid(s, way(t)));
    }),
    ...far.map(
      (id): Way =>
        (t) =>
          moveAll(is.get(id), (s, i) => between(was.get(id)?.[i] ?? s, s, ease(t))),
    ),
  ];
  const plate = far.length > 0 ? given.plate(ids) : undefined;
  const air: Air = {
    scene: plate
      ? { raster: plate.raster, ids: new Set(), behind: undefined }
      : { raster: after.overview.raster, ids, behind: before.overview.raster },
    camera: after.overview.camera,
    picture: after.overview.canvas,
    theme,
    ratio,
    lights: after.staged.lights,
  };
  const each = ids.has('ridge') && after.shown.site.ridge?.on === 'machine' ? lengths.load : lengths.bring;
  const length = each + (count - 1) * lengths.next;
  return {
    length,
    scene: plate?.canvas ?? sceneWithout(given, came, ids),
    frame: (t) => {
      const all = ways.flatMap((way, k) => {
        const own = (t * length - k * lengths.next) / each;
        const leaves = k < left.length;
        return own < 0 && !leaves ? [] : leaves && own >= 1 ? [] : way(within(own));
      });
      const drawn = drawInTheAir(air, all);
      return drawn ? [drawn] : [];
    },
  };
};

/** The board that lies ready for the ridge. */
const ridgeBoard = 'board.ridge';

const middleOf = (solids: readonly Solid[]): Vec3 => {
  const points = solids.flatMap(({ faces }) => faces.flatMap((face) => face.points));
  const sum = points.reduce<Vec3>((all, p) => add(all, p), [0, 0, 0]);
  return scale(sum, 1 / Math.max(1, points.length));
};

/** Straight from one place to the other, in the lie it has at the end. */
const carried = (from: readonly Solid[], to: readonly Solid[]): ((left: number) => Motion) => {
  const by = sub(middleOf(from), middleOf(to));
  return (left) => ({ turn: (way) => way, move: (at) => add(at, scale(by, left)) });
};

const moveAll = (
  solids: readonly Solid[] | undefined,
  move: (solid: Solid, i: number) => Solid,
): readonly Solid[] => (solids ?? []).map(move);

const sceneWithout = (
  { before, after }: Between,
  came: readonly string[],
  ids: ReadonlySet<string>,
): HTMLCanvasElement | undefined => {
  const { camera, canvas } = after.overview;
  const bodies = after.staged.model.solids.filter(({ id }) => ids.has(id));
  const box = came.length > 0 ? boxOf(camera, bodies, canvas) : undefined;
  return box && without({ before: before.overview, after: after.overview }, ids, box);
};

const movesFar = ({ before, after }: Between, id: string): boolean => {
  const { camera } = after.overview;
  const from = before.staged.model.solids.filter((solid) => solid.id === id);
  const to = after.staged.model.solids.filter((solid) => solid.id === id);
  return from.some((solid, i) =>
    solid.edges.some(({ a }, k) => {
      const b = to[i]?.edges[k]?.a ?? a;
      const [p, q] = [onScreen(camera, a), onScreen(camera, b)];
      return Math.hypot(p[0] - q[0], p[1] - q[1]) > seenMove;
    }),
  );
};

/** A string or a chalk line runs from one end to the other. */
const lineShow = (given: Between): Show | undefined => {
  const { before, after, theme, ratio } = given;
  const known = new Set(before.staged.model.strokes.map(({ id }) => id));
  const lines = after.staged.model.strokes.filter(({ id, kind }) => kind !== 'mark' && !known.has(id));
  const [first, last] = [lines[0], lines[lines.length - 1]];
  const { camera, canvas } = after.overview;
  const box = first && last && boxRound(camera, [first.a, last.b], canvas);
  if (!box) return undefined;
  return {
    length: lengths.line,
    scene: before.overview.canvas,
    frame: (t) => {
      const sheet = sheetOf(box.width, box.height);
      const ink = inkOn(sheet);
      ink.translate(-box.x, -box.y);
      const style = { palette: palettes[theme], ratio, casing: 3.6, chalk: 1.7 };
      chalkLine(ink, style, () => {
        const ran = ranTo(lines, ease(t));
        ink.moveTo(...onScreen(camera, first.a));
        ink.lineTo(...onScreen(camera, ran));
      });
      return [{ canvas: sheet, at: { x: box.x, y: box.y } }];
    },
  };
};

const ranTo = (lines: readonly Line[], t: number): Vec3 =>
  lerp((lines[0] as Line).a, (lines[lines.length - 1] as Line).b, t);
