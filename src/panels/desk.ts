import { signal, type Signal } from '@preact/signals-core';
import type { Level } from '../core/level/level';
import type { Mode } from '../core/level/mode';
import { rulesVersion } from '../core/order/version';
import type { Proof } from '../core/score/proof';
import type { Part, Score } from '../core/score/score';
import { weakestPart } from '../core/score/weakest';
import { replay } from '../core/hands/opened';
import type { Drawings, StageCorner, StageView } from '../present/stagePort';
import { catalogues, type Messages } from '../present/words/messages';
import type { Tool } from '../present/offers/toolset';
import { day, freshSite, isReturn } from '../session/jobState';
import { beginRun, type Session } from '../session/session';
import { saveSettings, type Settings } from '../session/settings';
import type { RunHead, Store } from '../session/store';

export type Screen = 'start' | 'talk' | 'site' | 'debrief' | 'proof';

/** Everything the screens look at and the few things they can ask for. Views follow; they never lead. */
export type Desk = {
  readonly levels: readonly Level[];
  readonly troubles: readonly string[];
  /** The last proof of the score, where there is one. */
  readonly proof: () => Proof | undefined;
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
  readonly view: Signal<StageView>;
  readonly corner: Signal<StageCorner>;
  /** Whether the load path and the exaggerated strip are shown; off whenever a site is entered. */
  readonly loads: Signal<boolean>;
  readonly strip: Signal<boolean>;
  readonly seed: Signal<number>;
  /** Which five jobs to ask for before the talk; undefined when nothing is asked. */
  readonly recall: Signal<number | undefined>;
};

export type DeskParts = Pick<Desk, 'levels' | 'troubles' | 'proof' | 'store' | 'drawings'> & {
  readonly settings: Settings;
  readonly heads: readonly RunHead[];
  readonly seed: number;
};

export const deskOf = ({ settings, heads, seed, ...given }: DeskParts): Desk => ({
  ...given,
  screen: signal<Screen>('start'),
  back: signal<Screen>('start'),
  level: signal(given.levels[0]),
  session: signal<Session | undefined>(undefined),
  settings: signal(settings),
  overlay: signal<'settings' | 'words' | undefined>(undefined),
  heads: signal(heads),
  tool: signal<Tool>('crew'),
  spot: signal<string | undefined>(undefined),
  view: signal<StageView>('overview'),
  corner: signal<StageCorner>('street'),
  loads: signal(false),
  strip: signal(false),
  seed: signal(seed),
  recall: signal<number | undefined>(undefined),
});

export const wordsOf = ({ settings }: Pick<Desk, 'settings'>): Messages => catalogues[settings.value.lang];

export const change = (desk: Desk, part: Partial<Settings>): void => {
  desk.settings.value = { ...desk.settings.value, ...part };
  void saveSettings(desk.store, desk.settings.value);
};

/** Goes to the talk about a job. Who comes back to it after a day is asked for its order first, once a day. */
export const openJob = async (desk: Desk, level: Level, now: number = Date.now()): Promise<void> => {
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

/** The part of a score that fell furthest under what the competent hand comes to on the level. */
export const weakestOn = (desk: Desk, level: string, parts: Score['parts']): Part | undefined => {
  const norm = provedOn(desk, level)?.competent;
  return norm && weakestPart(parts, norm);
};

const provedOn = (desk: Desk, level: string) => {
  const proof = desk.proof();
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
  desk.heads.value = await desk.store.runs().catch(() => desk.heads.value);
};

/** The run as it stood after so many of its acts. */
export const stoodAt = (session: Session, steps: number) => {
  const { level, seed, mode, steps: all, found } = session.attempt.value;
  return replay(
    { level, seed, mode },
    all.slice(found?.steps ?? 0, steps).map(({ action }) => action),
  );
};
