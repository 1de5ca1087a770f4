import { add, lerp, type Vec3 } from '../../core/geometry/vector';
import type { Action, Of, Person } from '../../core/site/action';
import { againstWall } from '../../core/level/layout';
import { fastened, loadHangs } from '../../core/site/holding';
import { ledgerJoint, partsOfJoint, placeOf, rafterId } from '../../core/site/ids';
import { ends, type End, type Side } from '../../core/roof/side';
import { atSpot, atSpots, atTheLoad, both, talking } from './crewSpots';
import { besides, measures, readingTasks, steadies } from './readingTasks';
import { atHorses, horses } from './sawhorses';
import { bareFloor, type Shown } from './scheme';
import type { Solid } from './solid';
import type { CrewAtWork, HandTool, Task } from './task';
import {
  endPlace,
  heelPlace,
  jointPlace,
  onRafter,
  platePlace,
  postPlace,
  rafterOf,
  ridgeAt,
  ridgePlace,
  ridgeSide,
  strapPlace,
  workOf,
  type Place,
  type Work,
} from './workPlaces';

/**
 * Who of the crew does what at this moment: told from the last act that stands and from what the site says. Where the act
 * was to stand somewhere, or a load travels, the places are the site's; else people are at the work.
 */
export const crewAtWork = (shown: Shown, solids: readonly Solid[]): CrewAtWork => {
  const work = workOf(shown, solids);
  const { lastAct: act, site, pose } = shown;
  if (pose.fallen || site.down !== undefined) return atSpots(work, 'look');
  if (!act) return talking(work);
  const told = tellers[act.type] as (work: Work, act: Action) => CrewAtWork | undefined;
  return keepsRidge(work, act, told(work, act) ?? atSpots(work, 'look'));
};

type Told = { readonly [T in Action['type']]: (work: Work, act: Of<T>) => CrewAtWork | undefined };

const nails = (place: Place | undefined, tool: HandTool): Task | undefined =>
  place && measures(place, tool, tool === 'puller' ? 'draw' : 'nail');

/** One fastens the joint; the other has hold of the same member where it could move. */
const fastening = (work: Work, joint: string, tool: HandTool): CrewAtWork | undefined => {
  const { kind, member } = partsOfJoint(joint);
  const place = jointPlace(work, joint);
  const { station = 1, side = placeOf(joint).side ?? 'street' } = placeOf(member);
  const rafter = rafterOf(work, `rafter.${side}.${station}`);
  const worker = nails(place, tool);
  if (!place || !worker) return undefined;
  const mate = mateAt(work, { kind, member, side }) ?? (rafter && besides(work, place, rafter));
  const other = mate ? steadies(mate) : atSpot(work, 'lead', 'look');
  const leads = kind === 'ridge' || kind === 'strap' || kind === 'postHead';
  return leads ? both(worker, other) : both(other, worker);
};

type Part = {
  readonly kind: string;
  readonly member: string;
  readonly side: Side;
};

const mateAt = (work: Work, { kind, member, side }: Part): Place | undefined => {
  if (kind === 'collarEnd') return endPlace(work, member, side === 'street' ? 0.8 : 0.2);
  if (kind === 'postHead') return postPlace(work, member, 'foot');
  if (kind === 'postFoot') return postPlace(work, member, 'head');
  if (kind === 'joistPlate') return endPlace(work, member, side === 'street' ? 0.92 : 0.08);
  return undefined;
};

/** Both hands on a member, at a place of it. */
const carrying = (place: Place): Task => ({
  doing: 'carry',
  where: { on: 'work', from: place.from },
  works: place.at,
  holds: place.grip,
  looks: place.at,
});

const carries = (place: Place | undefined): Task | undefined => place && carrying(place);

/** Where the two take hold of a member that was just set, or where one would be that is not there now. */
const atEnds = (work: Work, member: string): readonly [Place | undefined, Place | undefined] => {
  const rafter = rafterOf(work, member);
  if (rafter) {
    const { plumbCutLength } = work.scheme.common;
    const span = rafter.heel.out - rafter.top.out;
    const hold = (share: number, from: Place): Place => ({
      at: onRafter(work, rafter, { out: rafter.top.out + span * share, down: plumbCutLength * 0.45 }),
      grip: onRafter(work, rafter, { out: rafter.top.out + span * share + 10, down: plumbCutLength * 0.6 }),
      from: from.from,
    });
    return [hold(0.14, ridgePlace(work, rafter)), hold(0.7, heelPlace(work, rafter))];
  }
  if (member === 'ridge' && work.shown.pose.ridge)
    return [ridgeSide(work, 16, -1), ridgeSide(work, work.scheme.length - 16, -1)];
  if (member.startsWith('strap.')) {
    const { station = 1 } = placeOf(member);
    return [strapPlace(work, station, 'street'), strapPlace(work, station, 'yard')];
  }
  if (member.startsWith('post.') && work.bulks.has(member))
    return [postPlace(work, member, 'head'), postPlace(work, member, 'foot')];
  const reach = member.startsWith('brace.') ? 0.08 : 0.12;
  return [endPlace(work, member, 1 - reach), endPlace(work, member, reach)];
};

const setting = (work: Work, member: string): CrewAtWork | undefined => {
  if (member.startsWith('block.')) return blockSetting(work, member);
  const [lead, helper] = atEnds(work, member);
  return both(carries(lead), carries(helper));
};

const blockSetting = (work: Work, member: string, tool?: HandTool): CrewAtWork | undefined => {
  const { side = 'street', station = 1 } = placeOf(member);
  const rafter = rafterOf(work, `rafter.${side}.${station}`);
  const place = jointPlace(work, `blockPlate:${member}`) ?? bayPlace(work, side, station);
  const task = tool ? measures(place, tool, 'saw') : carries(place);
  return both(rafter ? steadies(besides(work, place, rafter)) : atSpot(work, 'lead', 'look'), task);
};

const bayPlace = (work: Work, side: Side, bay: number): Place => {
  const { stations } = work.scheme;
  const middle = ((stations[bay - 1] ?? 0) + (stations[bay] ?? 0)) / 2;
  const { at, from } = platePlace(work, side, middle);
  return { at: add(at, [-4, 0, 0.8]), grip: add(at, [4, 0, 0.8]), from: [0, from[1], 0] };
};

/** Unplaced boards are cut on the sawhorses; what stands is cut where it stands. */
const sawing = (work: Work, { member, cut }: Of<'trim'>): CrewAtWork | undefined => {
  if (member.startsWith('block.')) return blockSetting(work, member, 'saw');
  const rafter = rafterOf(work, member) ?? undefined;
  if (rafter) {
    const place = cut === 'seat' || cut === 'heel' ? heelPlace(work, rafter) : ridgePlace(work, rafter);
    return both(measures(place, 'saw', 'saw'), steadies(besides(work, place, rafter)));
  }
  const ridge = member === 'ridge' && work.shown.pose.ridge;
  if (ridge) {
    const end = ridgeSide(work, work.scheme.length - 3, -1);
    return both(measures(end, 'saw', 'saw'), steadies(ridgeSide(work, work.scheme.length - 40, -1)));
  }
  const lying = member === 'board.ridge' ? endPlace(work, member, 0.97) : undefined;
  if (lying) {
    const far = endPlace(work, member, 0.7);
    return both(measures(lying, 'saw', 'saw'), far && steadies(far));
  }
  return both(
    measures(atHorses('work', work.scheme.lane), 'saw', 'saw'),
    steadies(atHorses('end', work.scheme.lane)),
    horses(work.scheme.lane),
  );
};

const judging = (work: Work, { subject }: Of<'judge'>): CrewAtWork | undefined => {
  const side = placeOf(`${subject}.`).side;
  if (!subject.startsWith('plate.') && subject !== 'board.ridge')
    return {
      lead: {
        ...steadies(atHorses('work', work.scheme.lane), 'mark'),
        tool: 'pencil',
        holds: atHorses('work', work.scheme.lane).grip,
      },
      helper: steadies(atHorses('end', work.scheme.lane)),
      things: horses(work.scheme.lane),
    };
  const [a, b] = side
    ? [platePlace(work, side, 8), platePlace(work, side, work.scheme.length - 8)]
    : [endPlace(work, subject, 0.04), endPlace(work, subject, 0.96)];
  return a && b ? both({ ...steadies(a, 'sight'), looks: b.at }, steadies(b)) : undefined;
};

const marking = (work: Work, { on, datum }: Of<'mark'>): CrewAtWork | undefined => {
  const { length } = work.scheme;
  const xs = datum === 'endB' ? [6, length - 6] : [length - 6, 6];
  const at = (x: number): Place | undefined => {
    if (on !== 'ridge') return platePlace(work, on === 'plate.street' ? 'street' : 'yard', x);
    return work.shown.pose.ridge
      ? ridgeSide(work, x, -1)
      : endPlace(work, 'board.ridge', Math.min(0.97, Math.max(0.03, x / length)));
  };
  const [mark, start] = [at(xs[0] ?? 0), at(xs[1] ?? 0)];
  if (!mark || !start) return undefined;
  const up = (p: Vec3): Vec3 => add(p, [0, 0, 0.3]);
  return both(measures(mark, 'pencil', 'mark'), steadies(start), [
    { kind: 'tape', from: up(start.at), to: up(mark.at) },
  ]);
};

const lining = (work: Work, { from, to, kind }: Of<'line'>): CrewAtWork | undefined => {
  const at = (id: string): Place | undefined => {
    const rafter = rafterOf(work, id);
    if (!rafter) return endPlace(work, id, 0.5);
    if (kind === 'chalk') {
      const out = rafter.top.out + (rafter.heel.out - rafter.top.out) * 0.35;
      const hold = onRafter(work, rafter, { out, down: work.scheme.common.plumbCutLength });
      return { ...ridgePlace(work, rafter), at: hold, grip: hold };
    }
    const heel = heelPlace(work, rafter);
    const top = onRafter(work, rafter, { out: rafter.heel.out - 1, down: -0.8, off: 0.6 });
    return { ...heel, at: top };
  };
  const [a, b] = [at(from), at(to)];
  if (!a || !b) return undefined;
  return both(measures(b, 'reel', 'stretch'), steadies(a, 'stretch'));
};

/** A jack post under the ridge beside its own, turned by its handle; a ridge in hands or on the hook is pushed up. */
const raising = (work: Work, { end }: Of<'raise'>): CrewAtWork | undefined => {
  const { scheme, shown } = work;
  const { length, posts, floor = bareFloor } = scheme;
  const { depth } = shown.level.plan.ridge;
  const near = end === 'B' ? 1 : 0;
  const far = steadies(ridgeSide(work, near === 1 ? 14 : length - 14, -1));
  if (shown.site.ridge?.on !== 'posts') {
    const at = near === 1 ? length - 14 : 14;
    const side = ridgeSide(work, at, -1);
    const under = add(ridgeAt(work, at), [0, 0, -depth - 0.1]);
    return both(
      { ...steadies({ ...side, at: under }, 'pry'), holds: add(side.grip, [0, 0, -depth * 0.4]) },
      far,
    );
  }
  const post = posts[near === 1 ? posts.length - 1 : 0] ?? length / 2;
  const head = add(ridgeAt(work, post + (near === 1 ? -11 : 11)), [0, 0, -depth]);
  const foot: Vec3 = [head[0], head[1], floor];
  const turned = lerp(foot, head, Math.min(0.6, 40 / Math.max(1, head[2] - floor)));
  const [one, other] = [add(turned, [-8, 1.8, 0]), add(turned, [8, 1.8, 0])];
  return both({ ...carrying({ at: one, grip: other, from: [0, 1, 0] }), doing: 'pry', looks: head }, far, [
    { kind: 'jack', from: foot, to: head },
    { kind: 'handle', from: one, to: other },
  ]);
};

const shifting = (work: Work, { member, at }: Of<'shift'>): CrewAtWork | undefined => {
  const { length } = work.scheme;
  const rafter = rafterOf(work, member);
  if (rafter) {
    const place = at === 'heel' ? heelPlace(work, rafter) : ridgePlace(work, rafter);
    return both(steadies(besides(work, place, rafter)), measures(place, 'hammer', 'pry'));
  }
  if (member !== 'ridge') return setting(work, member);
  const x = at === 'mid' ? length / 2 + 12 : at === 'B' ? length - 14 : 14;
  const push = ridgeSide(work, x, -1);
  const other = ridgeSide(work, at === 'mid' ? length / 2 - 34 : length - x, -1);
  return both(carries(push), steadies(other));
};

const wallMending = (work: Work, { wall }: Of<'mendWall'>): CrewAtWork | undefined => {
  const side = placeOf(`${wall}.`).side ?? 'street';
  const { length } = work.scheme;
  const x = wall.endsWith('.A') ? 20 : wall.endsWith('.B') ? length - 20 : length / 2;
  const place = platePlace(work, side, x);
  const next = platePlace(work, side, x + (x > length / 2 ? -44 : 44));
  return both(measures(next, 'bar', 'pry'), measures(place, 'hammer', 'nail'));
};

const bracing = (work: Work, { kind, from }: Of<'brace'>): CrewAtWork | undefined => {
  const id =
    kind === 'wall' ? `brace.wall.${from}` : kind === 'along' ? 'brace.along.1' : `brace.across.${from}`;
  const [head, foot] = [endPlace(work, id, 0.94), endPlace(work, id, kind === 'wall' ? 0.5 : 0.12)];
  return both(nails(head, 'nailer'), foot && steadies(foot));
};

const readying = (work: Work, { what }: Of<'makeReady'>): CrewAtWork | undefined => {
  const { length, half, lane, yard, floor } = work.scheme;
  const way = yard === half ? 1 : -1;
  if (what === 'gear') return atSpots(work, 'talk');
  const z = (floor ?? 0) + 0.4;
  const at: Readonly<Record<string, Vec3>> = {
    platform: [length * 0.5, lane - 20, z],
    openings: [length * 0.6, lane + 24, z],
    anchor: [length * 0.5, yard - 4, 0.8],
    ladder: [length - 36, way * (half - 6), 30],
  };
  const point = at[what];
  if (!point) return undefined;
  const place = (dx: number, way: number): Place => ({
    at: add(point, [dx, 0, 0]),
    grip: add(point, [dx + way * 12, 0, 0]),
    from: [way * 0.3, point[1] > 0 ? -1 : 1, 0],
  });
  return what === 'ladder'
    ? both(
        steadies(place(7.5, -1), 'ready'),
        steadies({ ...place(-7.5, 1), at: add(point, [-7.5, 0, -4]) }, 'ready'),
      )
    : both(measures(place(-14, -1), 'hammer', 'nail'), steadies(place(14, 1), 'ready'));
};

const hooking = (work: Work): CrewAtWork | undefined => {
  const id = work.shown.pose.ridge ? 'ridge' : 'board.ridge';
  return both(carries(endPlace(work, id, 0.72)) ?? undefined, carries(endPlace(work, id, 0.32)) ?? undefined);
};

const swapping = (work: Work, { member }: Of<'swap'>): CrewAtWork | undefined =>
  setting(work, member) ??
  both(
    carries(atHorses('work', work.scheme.lane)),
    steadies(atHorses('end', work.scheme.lane)),
    horses(work.scheme.lane),
  );

const tailCutting = (work: Work, { member }: Of<'cutTail'>): CrewAtWork | undefined => {
  const rafter = rafterOf(work, member);
  if (!rafter) return undefined;
  const out = rafter.heel.out + work.shown.level.plan.overhang;
  const at = onRafter(work, rafter, { out: out - 0.5, down: 2 });
  const grip = onRafter(work, rafter, { out: out - 9, down: 3 });
  const from: Vec3 = [at[0] < work.scheme.length / 2 ? 1 : -1, Math.sign(at[1]) * 0.5, 0];
  return both(
    steadies(besides(work, heelPlace(work, rafter), rafter)),
    measures({ at, grip, from }, 'saw', 'saw'),
  );
};

const tellers: Told = {
  agree: talking,
  makeReady: readying,
  read: readingTasks,
  judge: judging,
  mark: marking,
  mendWall: wallMending,
  setTie: (work, { kind, station }) =>
    setting(work, kind === 'cross' ? `crossTie.${station}` : `${kind}.${station}`),
  place: (work, { member, at }) => (at === 'machine' ? atTheLoad(work, 'hoist') : setting(work, member)),
  tack: (work, { joint }) => fastening(work, joint, 'hammer'),
  nailOff: (work, { joint }) => fastening(work, joint, 'nailer'),
  draw: (work, { joint }) => fastening(work, joint, 'puller'),
  hookOn: hooking,
  stand: (work) => (loadHangs(work.shown.site) ? atTheLoad(work, undefined) : atSpots(work, 'stand')),
  signal: (work, { sign }) => atTheLoad(work, sign),
  setPost: (work, { at }) => {
    const [head, foot] = atEnds(work, `post.${at}`);
    return both(head && steadies(head), nails(foot, 'hammer'));
  },
  raise: raising,
  shift: shifting,
  brace: bracing,
  letGo: (work) => atTheLoad(work, 'lower'),
  line: lining,
  trim: sawing,
  cutTail: tailCutting,
  swap: swapping,
  takeOut: (work) => atSpots(work, 'look'),
  carryOn: (work) => atSpots(work, 'look'),
  handOver: (work) => handing(work),
  undo: (work) => atSpots(work, 'comeDown'),
};

/** Walks the ridge with the eyes, the list in mind. */
const handing = (work: Work): CrewAtWork | undefined => {
  const { length } = work.scheme;
  const walks = (x: number, look: number): Task => ({
    doing: 'walk',
    where: { on: 'work', from: [0, -1, 0] },
    looks: ridgeAt(work, look),
    works: ridgeSide(work, x, -1).at,
  });
  return both(walks(length * 0.3, length), walks(length * 0.62, length));
};

/** A ridge that hands carry is not let go: while an end has no pair that holds it, the mate has hold of that end. */
const keepsRidge = (work: Work, act: Action, told: CrewAtWork): CrewAtWork => {
  const { site } = work.shown;
  const loose = looseEnds(work);
  if (site.ridge?.on !== 'hands' || loose.length === 0 || act.type === 'stand') return told;
  if (act.type === 'place' && act.member === 'ridge') return told;
  const { length } = work.scheme;
  const worker: Person = told.lead.tool !== undefined || told.lead.doing === 'carry' ? 'lead' : 'helper';
  const at = told[worker].works?.[0] ?? 0;
  const end = loose.length === 1 ? loose[0] : at > length / 2 ? 'A' : 'B';
  const hold = steadies(ridgeSide(work, end === 'A' ? 12 : length - 12, -1));
  return worker === 'lead' ? { ...told, helper: hold } : { ...told, lead: hold };
};

/** Ends of the ridge where no end rafter is fastened to it yet. */
const looseEnds = ({ shown, scheme }: Work): readonly End[] =>
  ends.filter((end) => {
    const station = end === 'A' ? 1 : scheme.stations.length;
    const joints = againstWall(shown.level)
      ? [ledgerJoint(station)]
      : scheme.sides.map((side) => `ridge:${rafterId(side, station)}` as const);
    return !joints.some((joint) => fastened(shown.site, joint));
  });
