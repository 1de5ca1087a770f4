import { signal, type Signal } from '@preact/signals-core';
import type { Read } from '../content/complaint';
import type { RoofDraft } from '../content/draft/roofDraft';
import type { Trouble } from '../content/levelFiles';
import type { Level } from '../core/level/level';
import type { Mode } from '../core/level/mode';
import type { Attempt } from '../core/site/attempt';
import { isOver } from '../core/site/state';
import { rulesVersion } from '../core/order/version';
import type { Proof } from '../core/score/proof';
import type { Part, Score } from '../core/score/score';
import { weakestPart, type Norm } from '../core/score/weakest';
import { replay } from '../core/hands/opened';
import type { Drawings, StageCorner, StageView } from '../present/stagePort';
import { wordsOn } from '../present/words/jobWords';
import type { Messages } from '../present/words/messages';
import type { Tool } from '../present/offers/toolset';
import { day, freshSite, isReturn } from '../session/jobState';
import { beginRun, reopenRun, resumeRun, type Session } from '../session/session';
import { saveSettings, type Settings } from '../session/settings';
import type { RunHead, Store } from '../session/store';
import { noClasses, type Classes } from './classes/classState';

export type Screen = 'start' | 'talk' | 'site' | 'debrief' | 'proof' | OwnScreens | ClassScreens;
type OwnScreens = 'roof' | 'card';
type ClassScreens = 'assigned' | 'class' | 'reading';

/** Where the keyboard is among the members. In a list its element says what it is; on the drawing that has to be told. */
export type At = { readonly id: string; readonly on: 'drawing' | 'list' | 'tap' };

/** Everything the screens look at and the few things they can ask for. Views follow; they never lead. */
export type Desk = {
  readonly levels: readonly Level[];
  readonly troubles: readonly Trouble[];
  /** A link asked for a job that is not here. */
  readonly lost: Signal<boolean>;
  /** The last proof of the score, where there is one. */
  readonly proof: Signal<Proof | undefined>;
  readonly store: Store;
  readonly drawings: Drawings;
  readonly screen: Signal<Screen>;
  /** Where the way back from the proof leads. */
  readonly back: Signal<Screen>;
  readonly level: Signal<Level | undefined>;
  readonly session: Signal<Session | undefined>;
  readonly settings: Signal<Settings>;
  readonly overlay: Signal<'settings' | 'words' | undefined>;
  readonly heads: Signal<readonly RunHead[]>;
  readonly tool: Signal<Tool>;
  readonly spot: Signal<string | undefined>;
  /** What a hand on the page points at, while there is a drawing. */
  readonly aim: Signal<Aim | undefined>;
  /** The member the keyboard is on, in the drawing or in a list beside it, or that was tapped only to be named. */
  readonly at: Signal<At | undefined>;
  readonly view: Signal<StageView>;
  readonly corner: Signal<StageCorner>;
  /** Whether the load path and the exaggerated strip are shown; off whenever a site is entered. */
  readonly loads: Signal<boolean>;
  readonly strip: Signal<boolean>;
  readonly seed: Signal<number>;
  /** The crew's own roof as it is typed. */
  readonly draft: Signal<RoofDraft | undefined>;
  /** Why the roof of a link was not opened. */
  readonly unread: Signal<Read<unknown> | undefined>;
  /** Jobs on own roofs; they stand among the levels. */
  readonly own: Signal<readonly Level[]>;
  /** Which five jobs to ask for before the talk; undefined when nothing is asked. */
  readonly recall: Signal<number | undefined>;
  readonly classes: Classes;
  /** The run is only looked at: nothing of it is kept, and nobody goes on from it. */
  readonly readOnly?: true;
};

/** Client coordinates, CSS pixels: the member or open place there, and where one is or a joint of it. */
export type Aim = {
  readonly at: (x: number, y: number) => string | undefined;
  readonly placeOf: (id: string) => { readonly x: number; readonly y: number } | undefined;
  /** The hung ridge follows a held signal. */
  readonly lift: (by: number | undefined) => void;
};

export type DeskParts = Pick<Desk, 'levels' | 'troubles' | 'store' | 'drawings'> & {
  readonly settings: Settings;
  readonly heads: readonly RunHead[];
  readonly seed: number;
};

export const deskOf = ({ settings, heads, seed, levels, ...given }: DeskParts): Desk => {
  const own = signal<readonly Level[]>([]);
  return {
    ...given,
    own,
    proof: signal<Proof | undefined>(undefined),
    // The course's jobs and then those on own roofs, as many as there are at any time.
    get levels() {
      return [...levels, ...own.value];
    },
    draft: signal<RoofDraft | undefined>(undefined),
    unread: signal<Read<unknown> | undefined>(undefined),
    lost: signal(false),
    screen: signal<Screen>('start'),
    back: signal<Screen>('start'),
    level: signal(levels[0]),
    session: signal<Session | undefined>(undefined),
    settings: signal(settings),
    overlay: signal<'settings' | 'words' | undefined>(undefined),
    heads: signal(heads),
    tool: signal<Tool>('crew'),
    spot: signal<string | undefined>(undefined),
    aim: signal<Aim | undefined>(undefined),
    at: signal<At | undefined>(undefined),
    view: signal<StageView>('overview'),
    corner: signal<StageCorner>('street'),
    loads: signal(false),
    strip: signal(false),
    seed: signal(seed),
    recall: signal<number | undefined>(undefined),
    classes: noClasses(),
  };
};

/** Screens about one job are in that job's words. */
export const wordsOf = (desk: Pick<Desk, 'settings' | 'level' | 'screen'>): Messages =>
  wordsOn(desk.settings.value.lang, jobOf(desk));

/** The job that the screen is about. */
export const jobOf = ({ level, screen }: Pick<Desk, 'level' | 'screen'>): Level | undefined =>
  ofAJob.has(screen.peek()) ? level.peek() : undefined;
const ofAJob: ReadonlySet<Screen> = new Set<Screen>(['talk', 'site', 'debrief']);

export const change = (desk: Desk, part: Partial<Settings>): void => {
  desk.settings.value = { ...desk.settings.value, ...part };
  void saveSettings(desk.store, desk.settings.value);
};

/** Goes to the talk about a job. Who comes back to it after a day is asked for its order first, once a day. */
export const openJob = async (desk: Desk, level: Level, now: number = Date.now()): Promise<void> => {
  desk.lost.value = false;
  desk.classes.going.value = undefined;
  const key = `asked ${level.id}`;
  const asked = await desk.store.get(key).catch(() => undefined);
  const due = isReturn(runsOf(desk, level), typeof asked === 'number' ? asked : undefined, now);
  if (due) await desk.store.put(key, now).catch(() => undefined);
  desk.recall.value = due ? Math.floor(now / day) : undefined;
  desk.level.value = level;
  desk.screen.value = 'talk';
};

export const runsOf = (desk: Desk, level: Level): readonly RunHead[] =>
  desk.heads.value.filter((head) => head.level === level.id);

export const openProof = (desk: Desk): void => {
  desk.back.value = desk.screen.value;
  desk.screen.value = 'proof';
};

/** How far one run on a level may be off, points, under the rules that hold now; undefined where it is not known. */
export const errorOn = (desk: Desk, level: string): number | undefined =>
  provedOn(desk, level)?.errorOfOneRun ?? undefined;

/** What the competent hand comes to on a level; undefined where it is not known. */
export const normOn = (desk: Desk, level: string): Norm | undefined => provedOn(desk, level)?.competent;

/** The part of a score that fell furthest under what the competent hand comes to on the level. */
export const weakestOn = (desk: Desk, level: string, parts: Score['parts']): Part | undefined => {
  const norm = normOn(desk, level);
  return norm && weakestPart(parts, norm);
};

const provedOn = (desk: Desk, level: string) => {
  const proof = desk.proof.value;
  return proof?.rules === rulesVersion ? proof.levels.find((one) => one.level === level) : undefined;
};

/** Begins a fresh run and goes to the site. */
export const startRun = async (desk: Desk, level: Level, mode: Mode): Promise<void> => {
  const asked = desk.seed.value;
  const seed = mode === 'check-off' ? freshSite(runsOf(desk, level), asked) : asked;
  await enter(desk, await beginRun(desk.store, { level, seed, mode }));
};

/** A practice branch from a moment of the run: its acts so far, and on from there. */
export const goBackTo = async (desk: Desk, step: number): Promise<void> => {
  const attempt = desk.session.value?.attempt.value;
  if (!attempt) return;
  const { level, seed } = attempt;
  const actions = attempt.steps.slice(attempt.found?.steps ?? 0, step).map(({ action }) => action);
  await enter(desk, await beginRun(desk.store, { level, seed, mode: 'own' }, actions));
};

export const enter = async (desk: Desk, session: Session): Promise<void> => {
  desk.level.value = session.attempt.value.level;
  desk.session.value = session;
  desk.tool.value = 'crew';
  desk.spot.value = undefined;
  desk.view.value = 'overview';
  desk.loads.value = false;
  desk.strip.value = false;
  desk.screen.value = session.attempt.value.site.handedOver ? 'debrief' : 'site';
  if (!isOver(session.attempt.value.site)) keepDebrief(desk, undefined);
  desk.heads.value = await desk.store.runs().catch(() => desk.heads.value);
};

/** Which debrief is being looked at, for when the page is opened again; nothing once it is left. */
export const keepDebrief = (desk: Desk, run: string | undefined): void =>
  void desk.store.put(debriefKept, run ?? '').catch(() => undefined);
const debriefKept = 'debrief';

/** Back to the debrief of a run that has ended. */
export const openDebrief = async (desk: Desk, run: string): Promise<boolean> => {
  const session = await reopenRun(desk, run).catch(() => undefined);
  if (!session || !isOver(session.attempt.value.site)) return false;
  await enter(desk, session);
  desk.screen.value = 'debrief';
  return true;
};

/** Where the page was left: in a debrief, or in the middle of a run. */
export const openLeft = async (desk: Desk): Promise<void> => {
  const run = await desk.store.get(debriefKept).catch(() => undefined);
  if (typeof run === 'string' && run !== '' && (await openDebrief(desk, run))) return;
  const open = await resumeRun(desk.store, desk.levels).catch(() => undefined);
  if (open && open !== 'elsewhere') await enter(desk, open);
};

/** The run as it stood after so many of its acts, told again from its beginning. Slow for a long run. */
export const stoodAt = (session: Session, steps: number): Attempt => {
  const { level, seed, mode, steps: all, found } = session.attempt.value;
  return replay(
    { level, seed, mode },
    all.slice(found?.steps ?? 0, steps).map(({ action }) => action),
  );
};

/** The same job on a site that nobody here has seen: what was learned has to carry over. */
export const runElsewhere = (desk: Desk): void => {
  const attempt = desk.session.value?.attempt.value;
  if (!attempt) return;
  const seeds = runsOf(desk, attempt.level).map(({ seed }) => seed);
  desk.seed.value = Math.max(attempt.seed, ...seeds) + 1;
  void startRun(desk, attempt.level, attempt.mode);
};
