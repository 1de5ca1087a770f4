import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { rulesVersion } from '../../src/core/order/version';
import { readProof } from '../../src/content/proofFile';
import { claimsOf, targetName } from '../../src/present/claims';
import { catalogues } from '../../src/present/words/messages';
import { proveVerb } from '../../src/tt/prove';
import type { ProofLine } from '../../src/core/score/proof';

const folder = mkdtempSync(join(tmpdir(), 'prove-'));
const keep = join(folder, 'kept.jsonl');
const last = join(folder, 'last.json');

afterEach(() => {
  vi.restoreAllMocks();
});

const prove = async (args: readonly string[]) => {
  const [out, err]: [string[], string[]] = [[], []];
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => out.push(String(text)) > 0);
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => err.push(String(text)) > 0);
  const code = await proveVerb(args);
  vi.restoreAllMocks();
  const lines = out.join('').split('\n').filter(Boolean);
  return { code, lines: lines.slice(0, -1).map((line) => JSON.parse(line) as ProofLine), err: err.join('') };
};

/** What even a few runs of the smallest job have to show; the rest of the lines needs more runs than a test has time for. */
const certain: readonly string[] = [
  'expert: mean',
  'expert: share that pass',
  'expert: lowest',
  'expert: from lowest to highest',
  'accepted orders: lowest',
  'accepted orders: from lowest to highest',
  'AUC: expert against novices',
  'AUC: competent against skips-checks',
  'Spearman: skill and score, one run',
  'random: mean',
  'random: passes',
  'idle: highest',
  'a decision put right: lowered by over half a point',
];

const quick = ['--quick', '--runs', '4', '--keep', keep, '--last', last];

describe('a quick proof on simulated hands', () => {
  let lines: readonly ProofLine[] = [];
  beforeAll(async () => {
    ({ lines } = await prove(quick));
  }, 300_000);

  it('prints value, target, N and whether it is reached, and reaches what few runs can show', () => {
    const open = lines.filter(({ reached }) => !reached).map(({ target }) => target);
    for (const target of certain) {
      expect(lines.map((one) => one.target)).toContain(target);
      expect(open).not.toContain(target);
    }
  });

  it('calls reached what lies inside what is wanted, and nothing else', () => {
    expect(lines.length).toBeGreaterThan(25);
    for (const { value, wanted, reached, n, target } of lines) {
      const bound = (sign: string): number | undefined => {
        const found = new RegExp(`${sign} (-?[\\d.]+)`).exec(wanted);
        return found ? Number(found[1]) : undefined;
      };
      const inside = value >= (bound('≥') ?? -Infinity) && value <= (bound('≤') ?? Infinity);
      expect(inside, target).toBe(reached);
      expect(n, target).toBeGreaterThan(0);
    }
  });

  it('has a claim and a name in both languages for every target', () => {
    const claims = claimsOf({ lines, runs: 4 });
    const claimed = claims.flatMap(({ inFull, others }) => [...inFull, ...others]);
    expect(claims.flatMap(({ others }) => others)).toEqual([]);
    expect(claimed).toHaveLength(lines.length);
    expect(new Set(claimed.map(({ target }) => target)).size).toBe(lines.length);
    for (const words of [catalogues.en, catalogues.es])
      for (const { target } of lines) {
        expect(targetName(words, target), target).not.toBe(target);
        expect(targetName(words, target)).not.toMatch(/-|undefined/);
      }
  });

  it('keeps its last figures with the rules they were made under', () => {
    const kept = JSON.parse(readFileSync(last, 'utf8')) as { rules: number; runs: number; lines: unknown[] };
    expect(kept).toMatchObject({ rules: rulesVersion, runs: 4 });
    expect(kept.lines).toHaveLength(lines.length);
    expect(readProof(readFileSync(last, 'utf8'))?.lines).toEqual(lines);
    expect(readProof('{}')).toBeUndefined();
  });

  it('goes on where it was stopped, and comes to the same', async () => {
    const all = readFileSync(keep, 'utf8').split('\n').filter(Boolean);
    writeFileSync(keep, `${all.slice(0, -3).join('\n')}\n`);
    const again = await prove(quick);
    expect(again.lines).toEqual(lines);
    expect(readFileSync(keep, 'utf8').split('\n').filter(Boolean)).toHaveLength(all.length);
  }, 60_000);
});

describe('asked for what it cannot do', () => {
  it.each([
    [['--runs', '3'], '4 to 100000'],
    [['--runs', 'many'], '4 to 100000'],
    [['--swift'], 'usage'],
    [['no-such-level'], 'no-such-level'],
  ] as const)('%j is refused with a sentence', async (args, part) => {
    const { code, err } = await prove(args);
    expect(code).toBe(2);
    expect(err.replace('(tt prove:', '(usage')).toContain(part);
  });
});
