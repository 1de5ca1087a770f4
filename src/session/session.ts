import { isOver } from '../core/site/state';
import { signal, type Signal } from '@preact/signals-core';
import type { Handed } from '../content/attemptFile';
import { levelDigest } from '../content/canonical';
import { rulesVersion } from '../core/order/version';
import { doneAndSound, scoreOf, toStandard } from '../core/score/scored';
import type { Level } from '../core/level/level';
import type { Action } from '../core/site/action';
import type { Attempt, Decision } from '../core/site/attempt';
import type { Mode } from '../core/level/mode';
import { replay } from '../core/hands/opened';
import { take, would } from '../core/site/take';
import type { RunHead, Store } from './store';

export type Start = {
  readonly level: Level;
  readonly seed: number;
  readonly mode: Mode;
  /** For whom it is made; nobody where it is absent. */
  readonly handed?: Handed;
};

/** One learner at one level. Every act goes into the attempt at once and into the journal right behind it. */
export class Session {
  readonly attempt: Signal<Attempt>;
  /** False while the device keeps less than was done; the run goes on all the same, and each act tries again. */
  readonly keeps: Signal<boolean>;
  private queue: Promise<void> = Promise.resolve();

  /** `kept`: how many of the learner's acts are in the store; undefined when not even the run itself is. */
  constructor(
    private readonly store: Store,
    { head, attempt }: { readonly head: RunHead; readonly attempt: Attempt },
    private kept: number | undefined,
  ) {
    this.head = head;
    this.attempt = signal(attempt);
    this.keeps = signal(store.lasts && kept !== undefined);
  }
  private head: RunHead;

  get id(): string {
    return this.head.id;
  }

  /** For which assignment it is made, and under which code. */
  get handed(): Handed {
    return handedIn(this.head);
  }

  /** Does an act, and says what came of it. */
  do(action: Action): Decision {
    const step = this.attempt.value.steps.length;
    const next = take(this.attempt.value, action);
    this.attempt.value = next;
    if (isOver(next.site)) this.finish();
    this.queue = this.queue.then(() => this.keep());
    return next.steps[step]?.outcome ?? { ok: false, why: 'over' };
  }

  /** What would come of it, before the deed. */
  would(action: Action): Decision {
    return would(this.attempt.value, action);
  }

  /** Takes back the last act that still stands; undefined when there is none or the mode does not allow it. */
  undo(): Decision | undefined {
    const { steps, found } = this.attempt.value;
    const step = steps.findLastIndex(
      ({ outcome, undone, action }) => outcome.ok && !undone && action.type !== 'undo',
    );
    return step < (found?.steps ?? 0) || step < 0 ? undefined : this.do({ type: 'undo', step });
  }

  /** Resolves when everything so far has been kept, or refused. */
  settled(): Promise<void> {
    return this.queue;
  }

  private finish(): void {
    this.head = { ...this.head, state: 'done', ended: Date.now(), ...cameTo(this.attempt.value) };
    this.headKept = false;
  }
  private headKept = true;

  /** Whatever is not in the store yet. After a refusal the journal has no hole: the next act brings what is missing. */
  private async keep(): Promise<void> {
    const acts = ownActs(this.attempt.value);
    const missing = acts.slice(this.kept ?? 0);
    const headMissing = this.kept === undefined || !this.headKept;
    try {
      if (missing.length > 0) await this.store.append(this.head.id, this.kept ?? 0, missing);
      if (headMissing) await this.store.putRun(this.head);
      this.kept = acts.length;
      this.headKept = true;
      this.keeps.value = this.store.lasts;
    } catch {
      this.keeps.value = false;
    }
  }
}

/** What the learner did, without what the crew had done before. */
const ownActs = ({ steps, found }: Attempt): readonly Action[] =>
  steps.slice(found?.steps ?? 0).map(({ action }) => action);

/** What an attempt file says of whom a run was made for. */
export const handedIn = ({ assignment, learner }: RunHead): Handed => ({
  ...(assignment === undefined ? {} : { assignment }),
  ...(learner === undefined ? {} : { learner }),
});

/** What a run came to, as its head keeps it. A part of a job is short: it counts as framed when it is done to standard. */
const cameTo = (attempt: Attempt): Pick<RunHead, 'total' | 'framed' | 'pass'> => {
  const score = scoreOf(attempt);
  const enough = attempt.level.stages ? toStandard(score) : doneAndSound(score);
  return { total: score.total, framed: attempt.site.handedOver && enough, pass: score.pass };
};

/** A fresh run, its head kept before its first act. `actions` begins it somewhere: a practice branch. */
export const beginRun = async (
  store: Store,
  { level, seed, mode, handed }: Start,
  actions: readonly Action[] = [],
): Promise<Session> => {
  const heads = await store.runs().catch((): readonly RunHead[] => []);
  let order = 1 + Math.max(0, ...heads.map((head) => head.order));
  // Another tab may still be on a run that was deleted here: it would write into this one.
  while (!(await store.hold(`run-${order}`))) order += 1;
  const head: RunHead = {
    id: `run-${order}`,
    level: level.id,
    levelDigest: levelDigest(level),
    rules: rulesVersion,
    seed,
    mode,
    state: 'open',
    order,
    ...handed,
    ...(actions.length > 0 ? { branch: true as const } : {}),
  };
  const attempt = replay({ level, seed, mode }, actions);
  const kept = await keepAll(store, head, actions);
  return new Session(store, { head, attempt }, kept ? actions.length : undefined);
};

const keepAll = async (store: Store, head: RunHead, actions: readonly Action[]): Promise<boolean> => {
  try {
    await store.append(head.id, 0, actions);
    await store.putRun(head);
    return true;
  } catch {
    return false;
  }
};

/** Why a run that was left open cannot go on. */
export type Stopped = 'rules' | 'changed' | 'gone' | 'unreadable';

/** The run that was begun last and is not over. */
export const openRun = (heads: readonly RunHead[]): RunHead | undefined =>
  heads.filter(({ state }) => state === 'open').sort((a, b) => b.order - a.order)[0];

/** Why it cannot go on, from its head alone; undefined when it can. */
export const stopped = (head: RunHead, levels: readonly Level[]): Stopped | undefined => {
  const level = levels.find(({ id }) => id === head.level);
  if (!level) return 'gone';
  if (head.rules !== rulesVersion) return 'rules';
  return levelDigest(level) === head.levelDigest ? undefined : 'changed';
};

/**
 * The run this device was in the middle of, at the very act it stopped. Another level text or other rules end it; none
 * goes on here that another page works on.
 */
export const resumeRun = async (
  store: Store,
  levels: readonly Level[],
): Promise<Session | 'elsewhere' | undefined> => {
  const head = openRun(await store.runs().catch((): readonly RunHead[] => []));
  if (!head || stopped(head, levels)) return undefined;
  return (await store.hold(head.id)) ? toldAgain(store, head, levels) : 'elsewhere';
};

/** One run by its id, as far as it went; undefined where its level or the rules are not those it was made under. */
export const reopenRun = async (
  { store, levels }: { readonly store: Store; readonly levels: readonly Level[] },
  id: string,
): Promise<Session | undefined> => {
  const head = (await store.runs()).find((one) => one.id === id);
  return head && toldAgain(store, head, levels);
};

const toldAgain = async (
  store: Store,
  head: RunHead,
  levels: readonly Level[],
): Promise<Session | undefined> => {
  const level = levels.find(({ id }) => id === head.level);
  if (!level || stopped(head, levels)) return undefined;
  const actions = await store.actions(head.id);
  const attempt = replay({ level, seed: head.seed, mode: head.mode }, actions);
  return new Session(store, { head, attempt }, actions.length);
};

/** Made with this very text of the level and under the rules that hold now. */
export const isReadable = (level: Level, head: RunHead): boolean => stopped(head, [level]) === undefined;
