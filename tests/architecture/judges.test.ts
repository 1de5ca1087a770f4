import { describe, expect, it } from 'vitest';
import { bannedIn } from './coreBans';
import { ringsIn } from './cycles';
import type { Source } from './files';
import { importsOf } from './imports';
import { exceptions, judgeImports, layers } from './layers';
import { leaksIn } from './leaks';
import { emptyNamed, passingOn, strayAtTop } from './names';
import { functionsOf, linesOf, median } from './sizes';

/** The judges of the architecture can fail: each is shown something it must refuse, and something it must not. */

const source = (path: string, ...lines: readonly string[]): Source => ({
  path,
  text: `${lines.join('\n')}\n`,
});
const file = (...lines: readonly string[]): Source => source('src/core/site/made.ts', ...lines);

const broken = (from: string, to: string): boolean =>
  judgeImports([{ from, to }], layers, exceptions).broken.length > 0;

describe('layers', () => {
  it.each([
    ['src/core/level/level.ts', 'src/core/site/method'],
    ['src/core/units/inch.ts', 'src/core/geometry/vector'],
    ['src/core/order/rules.ts', 'src/core/score/score'],
    ['src/core/site/take.ts', 'src/content/canonical'],
    ['src/core/site/take.ts', 'zod/mini'],
    ['src/core/site/take.ts', 'node:fs'],
    ['src/content/readLevel.ts', 'src/session/session'],
    ['src/present/caption.ts', 'src/content/readLevel'],
    ['src/present/caption.ts', 'preact'],
    ['src/scenes/stage.ts', 'src/panels/desk'],
    ['src/panels/desk.ts', 'src/scenes/stage'],
    ['src/panels/desk.ts', 'phaser'],
    ['src/tt/play.ts', 'src/panels/desk'],
    ['src/panels/desk.ts', 'src/main'],
    ['src/panels/desk.ts', 'src/tt/verbs'],
    ['src/main.ts', 'src/tt/verbs'],
    ['src/main.ts', 'src/dev/inspector'],
    ['src/session/session.ts', 'tests/site/levels'],
    ['src/nowhere/one.ts', 'src/core/units/inch'],
  ])('refuse %s → %s', (from, to) => {
    expect(broken(from, to)).toBe(true);
  });

  it.each([
    ['src/core/level/level.ts', 'src/core/units/inch'],
    ['src/core/level/level.ts', 'src/core/level/method'],
    ['src/core/order/crew/view.ts', 'src/core/site/state'],
    ['src/content/readLevel.ts', 'zod/mini'],
    ['src/panels/desk.ts', 'src/core/site/take'],
    ['src/panels/app.tsx', 'preact/hooks'],
    ['src/scenes/stageGame.ts', 'phaser'],
    ['src/tt/play.ts', 'node:fs'],
    ['src/main.ts', 'src/panels/look.css'],
  ])('allow %s → %s', (from, to) => {
    expect(broken(from, to)).toBe(false);
  });

  it('pass an exception, and refuse it once it no longer breaks', () => {
    const up = { from: 'src/core/level/level.ts', to: 'src/core/site/method' };
    const excepted = ['src/core/level/level.ts → src/core/site/method'];
    expect(judgeImports([up], layers, excepted)).toEqual({ broken: [], stale: [] });
    expect(judgeImports([], layers, excepted)).toEqual({ broken: [], stale: excepted });
  });
});

describe('imports', () => {
  it('are found in every form, types included', () => {
    const found = importsOf(
      file(
        "import { a } from '../units/a';",
        "import type { B } from '../units/b';",
        "import './look.css';",
        "export { c } from './c';",
        "export type D = import('../roof/d').D;",
        "const e = () => import('./e');",
        "const said = 'from ./not';",
      ),
    ).map(({ to }) => to);
    const site = 'src/core/site';
    expect(found).toEqual([
      'src/core/units/a',
      'src/core/units/b',
      `${site}/look.css`,
      `${site}/c`,
      'src/core/roof/d',
      `${site}/e`,
    ]);
  });

  it('that close a ring are told, unless one link is loaded only when called', () => {
    const there = { from: 'src/tt/a.ts', to: 'src/tt/b' };
    const back = { from: 'src/tt/b.ts', to: 'src/tt/a' };
    expect(ringsIn([there, back])).toEqual(['src/tt/a → src/tt/b → src/tt/a']);
    expect(ringsIn([there, { ...back, lazy: true }])).toEqual([]);
    expect(ringsIn([there])).toEqual([]);
  });
});

describe('core bans', () => {
  it.each([
    'export const a = Math.sin(1);',
    'export const a = Math.random();',
    'const { hypot } = Math;',
    'export const a = 2 ** 3;',
    'let a = 2; a **= 3;',
    'export const a = Date.now();',
    'export const a = new Date();',
    'export const a = performance.now();',
    "console.log('a');",
    "export const a = new Intl.NumberFormat('en');",
    'export const a = (1).toLocaleString();',
    "export const a = 'a'.localeCompare('b');",
    'export const a = { Date };',
    'export const a = globalThis;',
  ])('refuse %s', (line) => {
    expect(bannedIn(file(line))).toHaveLength(1);
  });

  it.each([
    'export const a = Math.sqrt(2) + Math.sign(-1) * Math.trunc(2.5);',
    'export type Kept = { readonly Date: string };',
    'export const a = { console: 1 }.console;',
    "// Date, Math.sin and 2 ** 3 are only spoken of here\nexport const said = 'Date.now()';",
  ])('allow %s', (line) => {
    expect(bannedIn(file(line))).toEqual([]);
  });
});

describe('sizes', () => {
  it('are counted as an editor counts them', () => {
    expect(linesOf(file('a', 'b', 'c'))).toBe(3);
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2);
  });

  it('of functions hold every kind of function, and tell declared ones from callbacks', () => {
    const found = functionsOf(
      file(
        'export const wide = (a: 1, b: 2, c: 3, d: 4) => {',
        '  return [a, b, c, d].map((one) => one);',
        '};',
        'class Kept { go(): void {} }',
        'function plain() {',
        '}',
        'declare const only: (a: 1, b: 2, c: 3, d: 4) => void;',
      ),
    );
    expect(found.map(({ lines, parameters, named }) => [lines, parameters, named])).toEqual([
      [3, 4, true],
      [1, 1, false],
      [1, 0, true],
      [2, 0, true],
    ]);
  });
});

describe('names, places and leaks', () => {
  it('are told', () => {
    const empty = ['src/core/utils.ts', 'src/panels/index.ts', 'src/core/roof/types.ts', 'tests/helpers.ts'];
    expect(emptyNamed([...empty, 'src/core/roof/plan.ts', 'src/index.html'])).toEqual(empty);
    expect(passingOn(file("export * from './a';", "export { b } from './b';"))).toHaveLength(2);
    expect(passingOn(file('const a = 1;', 'export { a };'))).toEqual([]);
    expect(strayAtTop(['src/main.ts', '.ci/run', 'docs/a.md', 'docs/b.md', 'eslint.config.js'])).toEqual([
      'docs',
      'eslint.config.js',
    ]);
  });

  it('of one machine are told, and web paths are not', () => {
    const slash = '/';
    const host = ['registry', 'npmjs', 'org'].join('.');
    const told = [
      `cd ${slash}home/anna/roof`,
      `'${slash}tmp/site'`,
      `https://${host}/zod`,
      ['C:', 'roofs'].join('\\'),
    ];
    expect(leaksIn(file(...told))).toHaveLength(told.length);
    const fine = ['../offers/offer', './present/offers/spots', 'https://127.0.0.1:4180/', 'src/main.ts'];
    expect(leaksIn(file(...fine))).toEqual([]);
  });
});
