import { isOver } from '../core/site/state';
import { signal, type Signal } from '@preact/signals-core';
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

export type Start = { readonly level: Level; readonly seed: number; readonly mode: Mode };

/** One learner at one level. Every act goes into the attempt at once and into the journal right behind it. */
export class Session {
  readonly attempt: Signal<Attempt>;
  /** False once the device has refused to keep an act; the run goes on all the same. */
  readonly keeps: Signal<boolean> = signal(true);
  private queue: Promise<void> = Promise.resolve();

  constructor(
    private readonly store: Store,
    private head: RunHead,
    attempt: Attempt,
  ) {
    this.attempt = signal(attempt);
  }

  get id(): string {
    return this.head.id;
  }

  /** Does an act, and says what came of it. */
  do(action: Action): Decision {
    const step = this.attempt.value.steps.length;
    const next = take(this.attempt.value, action);
    this.attempt.value = next;
    this.keep(() => this.store.append(this.head.id, step, action));
    if (isOver(next.site)) this.finish();
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
    this.keep(() => this.store.putRun(this.head));
  }

  private keep(write: () => Promise<void>): void {
    this.queue = this.queue.then(write).catch(() => {
      this.keeps.value = false;
    });
  }
}

/** What a run came to, as its head keeps it. A part of a job is short: it counts as framed when it is done to standard. */
const cameTo = (attempt: Attempt): Pick<RunHead, 'total' | 'framed' | 'pass'> => {
  const score = scoreOf(attempt);
  const enough = attempt.level.stages ? toStandard(score) : doneAndSound(score);
  return { total: score.total, framed: attempt.site.handedOver && enough, pass: score.pass };
};

/** A fresh run, its head kept before its first act. `actions` begins it somewhere: a practice branch. */
export const beginRun = async (
  store: Store,
  { level, seed, mode }: Start,
  actions: readonly Action[] = [],
): Promise<Session> => {
  const heads = await store.runs().catch((): readonly RunHead[] => []);
  const order = 1 + Math.max(0, ...heads.map((head) => head.order));
  const head: RunHead = {
    id: `run-${order}`,
    level: level.id,
    levelDigest: levelDigest(level),
    rules: rulesVersion,
    seed,
    mode,
    state: 'open',
    order,
    ...(actions.length > 0 ? { branch: true as const } : {}),
  };
  const session = new Session(store, head, replay({ level, seed, mode }, actions));
  const kept = await keepAll(store, head, actions);
  if (!kept) session.keeps.value = false;
  return session;
};

const keepAll = async (store: Store, head: RunHead, actions: readonly Action[]): Promise<boolean> => {
  try {
    await store.putRun(head);
    // All at once: each has its own place, and a journal with a hole is good up to the hole.
    await Promise.all(actions.map((action, step) => store.append(head.id, step, action)));
    return true;
  } catch {
    return false;
  }
};

/** The run this device was in the middle of, at the very act it stopped. Another level text or other rules end it. */
export const resumeRun = async (store: Store, levels: readonly Level[]): Promise<Session | undefined> => {
  const heads = await store.runs().catch((): readonly RunHead[] => []);
  const open = heads.filter(({ state }) => state === 'open').sort((a, b) => b.order - a.order)[0];
  return open && toldAgain({ store, levels }, open);
};

/** One run by its id, as far as it went; undefined where its level or the rules are not those it was made under. */
export const reopenRun = async (kept: Kept, id: string): Promise<Session | undefined> => {
  const heads = await kept.store.runs();
  const head = heads.find((one) => one.id === id);
  return head && toldAgain(kept, head);
};

type Kept = { readonly store: Store; readonly levels: readonly Level[] };

const toldAgain = async ({ store, levels }: Kept, head: RunHead): Promise<Session | undefined> => {
  const level = levels.find(({ id }) => id === head.level);
  if (!level || !isReadable(level, head)) return undefined;
  const actions = await store.actions(head.id);
  return new Session(store, head, replay({ level, seed: head.seed, mode: head.mode }, actions));
};

/** Made with this very text of the level and under the rules that hold now. */
export const isReadable = (level: Level, head: RunHead): boolean =>
  levelDigest(level) === head.levelDigest && head.rules === rulesVersion;
