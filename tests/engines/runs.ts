import { build } from 'esbuild';
import type { HandName } from '../../src/core/hands/hand';
import { play } from '../../src/core/hands/play';
import { levelOf } from '../site/levels';

/** Runs that every engine has to tell to the same bits, and the code that tells them as one script. */

export const bundled = async (): Promise<string> => {
  const { outputFiles } = await build({
    entryPoints: ['tests/engines/story.ts'],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    platform: 'neutral',
    mainFields: ['module', 'main'],
  });
  return outputFiles[0]?.text ?? '';
};

/** The language alone, without what a browser or a server adds; digests ask for this one thing more. */
export const encoder = `globalThis.TextEncoder = class {
  encode(text) { return Uint8Array.from(unescape(encodeURIComponent(text)), (c) => c.charCodeAt(0)); }
};`;

export type Run = {
  readonly id: 'garden-hut' | 'boathouse' | 'hay-barn';
  readonly hand: HandName;
  readonly seed: number;
};

/** Ten runs, clean and wild, on a short roof and on one that bends. */
export const runs: readonly Run[] = [
  { id: 'garden-hut', hand: 'expert', seed: 11 },
  { id: 'garden-hut', hand: 'reads-nothing', seed: 12 },
  { id: 'garden-hut', hand: 'nails-first', seed: 13 },
  { id: 'boathouse', hand: 'reads-nothing', seed: 14 },
  ...[21, 22, 23].map((seed): Run => ({ id: 'garden-hut', hand: 'random', seed })),
  ...[31, 32, 33].map((seed): Run => ({ id: 'boathouse', hand: 'random', seed })),
];

/** Acts that put something up, fasten it or move it, as many as give the frame work to do in an engine seventeen times slower. */
const heavyActs = ({ id, hand, seed }: Run): string => {
  const acts = play(levelOf(id), hand, { seed, mode: 'own' }).steps.map(({ action }) => action);
  return JSON.stringify(acts.filter(({ type }) => type !== 'read' && type !== 'judge').slice(0, 120));
};

/** A level, a seed and acts, as texts. */
export const story = (run: Run): readonly [string, number, string] => [
  JSON.stringify(levelOf(run.id)),
  run.seed,
  heavyActs(run),
];
