import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { sample } from '../roof/roofs';

// Each test starts the command line afresh, which takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

/** The command line itself, as a script would call it. */
const tt = (...args: readonly string[]) => {
  const run = spawnSync(process.execPath, ['--import', 'tsx', 'src/tt/tt.ts', ...args], {
    encoding: 'utf8',
    maxBuffer: 64e6,
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
};

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'roofs-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const fileOf = (text: string): string => {
  const path = join(folder, 'roof.json');
  writeFileSync(path, text);
  return path;
};
const figured = (changes: object = {}) => tt('figure', fileOf(JSON.stringify({ ...sample, ...changes })));

describe('tt figure', () => {
  it('prints one figured roof, angles in degrees, and nothing else', () => {
    const { code, out, err } = figured();
    expect([code, err]).toEqual([0, '']);
    const roof = JSON.parse(out) as Record<string, readonly Record<string, unknown>[]>;
    const figures = ['commonRafters', 'ridges', 'layout', 'blocks', 'ties', 'cautions'];
    expect(Object.keys(roof)).toEqual([...figures, 'cutList', 'weights', 'sheets']);
    expect(roof.commonRafters?.[0]?.lineLength).toBeCloseTo(160.9969, 4);
    expect(roof.ridges?.[0]?.topHeight).toBeCloseTo(77.981, 3);
    expect(roof.blocks?.map(({ bevelDeg }) => bevelDeg)).toEqual([26.56505117707799, 26.56505117707799]);
    for (const block of roof.blocks ?? []) {
      expect(block).not.toHaveProperty('bevel');
      expect(block).not.toHaveProperty('vent');
    }
    for (const list of ['commonRafters', 'ridges', 'blocks', 'ties'])
      for (const member of roof[list] ?? [])
        expect(member).toMatchObject({
          id: expect.any(String),
          count: expect.any(Number),
          side: expect.any(String),
        });
  });

  it('prints a hip roof with its angles in degrees', () => {
    const { out } = figured({ kind: 'hip', length: 480 });
    const roof = JSON.parse(out) as Record<string, readonly Record<string, unknown>[]>;
    expect(Object.keys(roof).slice(-6, -3)).toEqual(['hips', 'jacks', 'cautions']);
    const [hip] = roof.hips ?? [];
    expect(hip?.slopeDeg).toBeCloseTo(19.4712, 4);
    expect((hip?.backingAngleDeg as number[]).map((angle) => angle.toFixed(4))).toEqual([
      '18.4349',
      '18.4349',
    ]);
    const [cheek] = roof.jacks?.[0]?.cheeks as Record<string, unknown>[];
    expect(cheek).toMatchObject({ end: 'top', sawBevelDeg: 45 });
    expect(cheek).not.toHaveProperty('cheekAngle');
    for (const member of [...(roof.hips ?? []), ...(roof.jacks ?? [])])
      expect(member).toMatchObject({
        id: expect.any(String),
        count: expect.any(Number),
        side: expect.any(String),
      });
  });

  it('prints what to buy, what it weighs and where its sheets meet, and says which boards to order', () => {
    const { out } = figured({ span: 500 });
    const { cutList, weights, sheets } = JSON.parse(out) as {
      cutList: { boards: { length: number; special?: string }[]; bought: { bought: number }[] };
      weights: { total: number; heaviest: { member: string } };
      sheets: { slopeLength: number }[];
    };
    for (const { length, special } of cutList.boards)
      expect(special).toBe(length > 288 ? 'longer than 24 ft: order special' : undefined);
    expect(cutList.boards.filter(({ special }) => special)).not.toEqual([]);
    expect(cutList.bought).toHaveLength(3);
    expect(weights.heaviest.member).toBe('joist');
    expect(sheets).toHaveLength(1);
  });

  it('prints rake rafters and lookouts before the cautions, where the plan has them', () => {
    const roof = JSON.parse(figured({ rakeOverhang: 16, rake: {} }).out) as Record<string, unknown>;
    expect(Object.keys(roof)).toEqual(expect.arrayContaining(['rakeRafters', 'lookouts']));
    expect(roof.rakeRafters).toMatchObject([{ id: 'rake', count: 4, side: 'both', past: 15.25 }]);
    expect(roof.lookouts).toMatchObject([{ id: 'lookout', count: 28, side: 'both', length: 37.75 }]);
  });

  it('prints a gambrel with both cuts of its break in degrees', () => {
    const gambrel = {
      kind: 'gambrel',
      slope: { rise: 24, run: 12 },
      upperSlope: { rise: 6, run: 12 },
      breakIn: 60,
      seat: 2,
    };
    const parts = (changes: object) =>
      JSON.parse(figured({ ...gambrel, ...changes }).out) as Record<
        string,
        readonly Record<string, unknown>[]
      >;
    const plumb = parts({ purlin: { thickness: 3.5, depth: 9.25 } });
    expect(Object.keys(plumb)).toEqual(expect.arrayContaining(['breaks', 'purlins']));
    // Slopes of 2 and 1/2 are 63.4349° and 26.5651°: plumb cuts are as far off square, a miter half of what lies between.
    expect(plumb.breaks?.[0]?.lowerCutDeg).toBeCloseTo(63.4349, 4);
    expect(plumb.breaks?.[0]?.upperCutDeg).toBeCloseTo(26.5651, 4);
    const miter = parts({ breakOn: 'gussets' });
    expect(Object.keys(miter)).toEqual(expect.arrayContaining(['breaks', 'gussets']));
    expect(miter.breaks?.[0]?.lowerCutDeg).toBeCloseTo(18.4349, 4);
    expect(miter.gussets?.[0]?.bendDeg).toBeCloseTo(18.4349, 4);
    for (const member of [plumb.breaks, plumb.purlins, miter.gussets].flat())
      expect(member).toMatchObject({
        id: expect.any(String),
        count: expect.any(Number),
        side: expect.any(String),
      });
  });

  it('keeps its arrays where nothing is in them, and vents and cautions where there are some', () => {
    const { code, out } = figured({
      joists: false,
      collars: false,
      blockStands: 'square',
      vents: { shape: 'notch', depth: 1, leave: 3.5 },
    });
    const roof = JSON.parse(out) as Record<string, readonly Record<string, unknown>[]>;
    expect(code).toBe(0);
    expect(roof.ties).toEqual([]);
    expect(roof.blocks?.[1]).toMatchObject({ bevelDeg: 0, vent: { area: 22.4375 - 7, shape: 'notch' } });
    expect(roof.cautions).toEqual([
      { code: 'tiesAbsent', at: 'joists', text: expect.stringMatching(/^Nothing ties the walls/) },
    ]);
  });

  it('figures the longest roof', () => {
    const { code, out } = figured({ length: 2_000_000, spacing: 6 });
    expect(code).toBe(0);
    const { layout } = JSON.parse(out) as { layout: { stations: readonly number[] } };
    expect(layout.stations).toHaveLength(333_334);
    expect(layout.stations[333_333]).toBe(1_999_999.25);
  });

  it('refuses a bad roof line by line, file first', () => {
    const path = fileOf(JSON.stringify({ ...sample, span: -1, colour: 'red', seat: undefined }));
    const { code, out, err } = tt('figure', path);
    expect([code, out]).toEqual([2, '']);
    const lines = err.trimEnd().split('\n');
    expect(lines).toHaveLength(3);
    for (const line of lines) expect(line.startsWith(`${path}: `)).toBe(true);
    expect(err).toContain(': seat: is missing (');
    expect(err).toContain(': colour: is not a key here (');
    expect(err).toContain(': span: is -1 (12 to 12000 in)');
  });

  it.each([
    ['', '$: the file is empty (a JSON object)'],
    [`[${'1,'.repeat(600_000)}1]`, '$: the file is over 1 MB (a file of at most 1 MB)'],
    ['{"__proto__": 1}', '__proto__: is not a key here (only the keys of the format)'],
  ])('refuses a file that is no roof: %.20s', (text, line) => {
    const path = fileOf(text);
    expect(tt('figure', path)).toEqual({ code: 2, out: '', err: `${path}: ${line}\n` });
  });

  it('refuses what cannot be read', () => {
    for (const path of [join(folder, 'nowhere.json'), folder])
      expect(tt('figure', path)).toEqual({
        code: 2,
        out: '',
        err: `${path}: $: cannot be read (a file that is there and may be read)\n`,
      });
  });

  it.each([[[]], [['a.json', 'b.json']]])('wants one file: %j', (files) => {
    const { code, out, err } = tt('figure', ...files);
    expect({ code, out, err }).toEqual({
      code: 2,
      out: '',
      err: 'tt figure: give one roof file (figure ROOF.json)\n',
    });
  });
});

describe('tt', () => {
  it.each([[[]], [['constructor']], [['__proto__']]])('lists its verbs for %j', (args) => {
    const { code, out, err } = tt(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^tt: .+ \(figure, .+\)\n$/);
  });

  it('does not mind a reader that has seen enough', () => {
    const path = fileOf(JSON.stringify({ ...sample, length: 2_000_000 }));
    const line = `"${process.execPath}" --import tsx src/tt/tt.ts figure "${path}" | head -c 10`;
    const run = spawnSync('sh', ['-c', line], { encoding: 'utf8' });
    expect([run.status, run.stdout, run.stderr]).toEqual([0, '{"commonRa', '']);
  });
});
