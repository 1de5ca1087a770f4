import type { Vec3 } from '../../core/geometry/vector';
import type { Person as Who } from '../../core/site/action';
import { loadHangs } from '../../core/site/holding';
import { crewAtWork } from '../../present/model/crewAtWork';
import { box } from '../../present/model/prism';
import { schemeOf, type Scheme, type Shown } from '../../present/model/scheme';
import { innerFloor } from '../../present/model/wallSolids';
import type { Solid, Stroke } from '../../present/model/solid';
import { bulkOf, type Bulk } from '../../present/model/stickOf';
import type { CrewAtWork, Task } from '../../present/model/task';
import type { Mesh } from '../ink/mesh';
import { person, type Person, type Posture } from './figure';
import { fleshOf } from './flesh';
import { footingOf, plankThick, type Surface } from './footing';
import { poseAtWork, type Posed, type Room } from './posing';
import { atSpot } from './spots';
import { thingsDrawn } from './things';
import { toolIn } from './tools';

/** The crew at work: where the act and the site put them, on something that carries, with the tool in hand. */
export type Crew = {
  readonly meshes: readonly Mesh[];
  /** Sawhorses, planks, a level: what they use that is no part of the building. */
  readonly solids: readonly Solid[];
  readonly strokes: readonly Stroke[];
  /** Lifelines from a back to the anchor. */
  readonly lines: readonly (readonly [Vec3, Vec3])[];
  /** Where those stand who are on the ground. */
  readonly feet: readonly Vec3[];
  /** The hand that has the tag line. */
  readonly tagHand?: Vec3;
};

/** One of the two as drawn, with what the drawing was to reach. */
export type Worker = {
  readonly who: Who;
  readonly task: Task;
  readonly posture: Posture;
  readonly posed: Posed | undefined;
  readonly body: Person;
};

export const crewOf = (shown: Shown, solids: readonly Solid[]): Crew =>
  crewDrawn(shown, workersOf(shown, solids));

export const crewDrawn = (shown: Shown, { workers, things }: Workers): Crew => {
  const scheme = schemeOf(shown);
  const anchor = anchorAt(shown, scheme);
  const drawn = thingsDrawn(things);
  const guide = workers.find(({ task }) => task.doing === 'guide');
  return {
    meshes: [...workers.flatMap((worker) => [...worker.body.meshes, ...toolOf(worker)]), ...drawn.meshes],
    solids: [...drawn.solids, ...workers.flatMap((worker) => planksUnder(shown, scheme, worker))],
    strokes: drawn.strokes,
    feet: workers.filter((worker) => onGround(shown, worker)).map(({ posture }) => posture.at),
    lines: anchor
      ? workers.filter(({ posture }) => posture.harness).map(({ body }) => [body.back, anchor] as const)
      : [],
    ...(guide ? { tagHand: guide.body.hands.left } : {}),
  };
};

export type Workers = {
  readonly workers: readonly [Worker, Worker];
  readonly things: CrewAtWork['things'];
};

type Kept = Pick<Shown, 'site' | 'lastAct'> & { readonly found: Workers };
const kept = new WeakMap<Shown['pose'], Kept>();

/** Found once for a site and an act: turning or enlarging the drawing moves nobody. */
export const workersOf = (shown: Shown, solids: readonly Solid[]): Workers => {
  const known = kept.get(shown.pose);
  if (known?.site === shown.site && known.lastAct === shown.lastAct) return known.found;
  const found = workersFound(shown, solids);
  kept.set(shown.pose, { site: shown.site, lastAct: shown.lastAct, found });
  return found;
};

const workersFound = (shown: Shown, solids: readonly Solid[]): Workers => {
  const told = crewAtWork(shown, solids);
  const extra = thingsDrawn(told.things).solids.filter(({ role }) => role !== 'tool');
  const bulks = [...solids, ...extra].filter(inTheWay).map(bulkOf);
  const first: Who = told.helper.where.on === 'spot' || told.helper.tool !== undefined ? 'helper' : 'lead';
  const second: Who = first === 'lead' ? 'helper' : 'lead';
  const one = workerOf(shown, { who: first, task: told[first], bulks, others: [] });
  const others = fleshOf(one.posture).map(({ at }) => at);
  const two = workerOf(shown, { who: second, task: told[second], bulks, others });
  return { workers: first === 'lead' ? [one, two] : [two, one], things: told.things };
};

/** What is walked on is in nobody's way, nor is what is thin. */
const inTheWay = ({ role }: Solid): boolean => role !== 'panel' && role !== 'floor' && role !== 'strap';

type Asked = {
  readonly who: Who;
  readonly task: Task;
  readonly bulks: readonly Bulk[];
  readonly others: readonly Vec3[];
};

const workerOf = (shown: Shown, { who, task, bulks, others }: Asked): Worker => {
  const spot = shown.site.people[who];
  const hung = loadHangs(shown.site) && spot !== 'beside' && shown.pose.ridge !== undefined;
  const room: Room = {
    footing: footingOf(shown, schemeOf(shown)),
    bulks,
    others,
    load: hung ? { y: ((shown.pose.ridge?.A.y ?? 0) + (shown.pose.ridge?.B.y ?? 0)) / 2 } : undefined,
  };
  const dark = who === 'helper';
  const anchored = shown.site.ready.anchor !== undefined;
  const posed = poseAtWork(room, task, { dark, harness: false });
  const aloft = posed
    ? posed.surface.kind === 'floor' || posed.surface.kind === 'plank'
    : task.where.on === 'spot' && spot !== 'clear';
  const base = { dark, harness: anchored && aloft && !shown.pose.fallen };
  const posture: Posture = posed ? { ...posed.posture, ...base } : atSpot(shown, { who, task, base });
  return { who, task, posture, posed, body: person(who, posture) };
};

const onGround = (shown: Shown, { posed, task }: Worker): boolean => {
  if (posed) return posed.surface.kind === 'ground';
  return shown.pose.fallen !== undefined || task.where.on !== 'spot' || task.where.spot === 'clear';
};

const toolOf = ({ who, task, posed, body }: Worker): readonly Mesh[] =>
  task.tool && task.works && posed
    ? toolIn(
        task.tool,
        { id: who, hand: posed.hand === 'left' ? body.hands.left : body.hands.right, works: task.works },
        posed.toward,
      ).meshes
    : [];

/** Planks where one kneels or stands past the sheets: from one joist to the next, or on staging inside the walls. */
const planksUnder = (
  { site }: Shown,
  { stations, length, half, yard }: Scheme,
  { who, posed }: Worker,
): readonly Solid[] => {
  const surface: Surface | undefined = posed?.surface;
  if (!posed || !surface || (surface.kind !== 'plank' && surface.kind !== 'staging')) return [];
  const { at, yaw } = posed.posture;
  const a = (yaw * Math.PI) / 180;
  const spread = [posed.posture.left.foot, posed.posture.right.foot, [8, 0, 0] as Vec3].map(([f, l]) => [
    at[0] + f * Math.cos(a) - l * Math.sin(a),
    at[1] + f * Math.sin(a) + l * Math.cos(a),
  ]) as [number, number][];
  const xs = spread.map(([x]) => x);
  const ys = spread.map(([, y]) => y);
  const [x0, x1] = [Math.min(...xs) - 5, Math.max(...xs) + 5];
  const ties = 'joist.1' in site.members ? stations : [8, length - 8];
  const from = Math.max(3.6, Math.max(...ties.filter((x) => x <= x0), 2) - 2);
  const to = Math.min(length - 3.6, Math.min(...ties.filter((x) => x >= x1), length - 2) + 4);
  const [y0, y1] = [Math.max(4 - half, Math.min(...ys) - 5), Math.min(yard - 4, Math.max(...ys) + 5)];
  const count = Math.max(1, Math.round((y1 - y0) / 9.5));
  const planks = Array.from({ length: count }, (_, i) =>
    box(
      { id: `plank.${who}.${i}`, role: 'staging', seed: 700 + i },
      {
        from: [from, y0 + ((y1 - y0) * i) / count, surface.z - plankThick],
        to: [to, y0 + ((y1 - y0) * (i + 1)) / count - 0.3, surface.z],
      },
    ),
  );
  const under = { from: [from, y0, innerFloor], to: [to, y1, surface.z - plankThick] } as const;
  return surface.kind === 'staging' ? [...planks, ...bearersUnder(who, under)] : planks;
};

/** A plank of 2-inch lumber spans no more than this between bearers, inches. Common practice, no source. */
const plankSpan = 84;
/** Bearers stand in from the ends of the planks and reach past their sides, and are so thick, inches; ours. */
const bearer = { inFrom: 8, past: 3, thick: 3.5 } as const;

/** What low staging lies on: pieces across under the planks, on the floor inside the walls. */
const bearersUnder = (
  who: Who,
  { from, to }: { readonly from: Vec3; readonly to: Vec3 },
): readonly Solid[] => {
  const [x0, x1] = [from[0] + bearer.inFrom, to[0] - bearer.inFrom];
  const bays = Math.max(1, Math.ceil((x1 - x0) / plankSpan));
  return Array.from({ length: bays + 1 }, (_, i) => {
    const x = x0 + ((x1 - x0) * i) / bays;
    return box(
      { id: `bearer.${who}.${i}`, role: 'staging', seed: 720 + i },
      {
        from: [x - bearer.thick / 2, from[1] - bearer.past, from[2]],
        to: [x + bearer.thick / 2, to[1] + bearer.past, to[2]],
      },
    );
  });
};

const anchorAt = ({ site }: Shown, { length, yard, lane, floor }: Scheme): Vec3 | undefined => {
  if (site.ready.anchor === undefined) return undefined;
  return site.ready.anchor === 'wall'
    ? [length * 0.5, yard - 3, 0.5]
    : [length * 0.5, lane + 22, (floor ?? 0) + 0.5];
};
