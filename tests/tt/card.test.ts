import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';

// Each test starts the command line afresh, which takes seconds on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

const tt = (...args: readonly string[]) => {
  const run = spawnSync(process.execPath, ['--import', 'tsx', 'src/tt/tt.ts', 'card', ...args], {
    encoding: 'utf8',
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
};

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'cards-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const gable = 'levels/examples/gable.json';

describe('tt card', () => {
  it('writes one page that asks for nothing from elsewhere, with our faces in it', () => {
    const out = join(folder, 'card.html');
    const { code, err } = tt(
      gable,
      '--lang',
      'es',
      '--paper',
      'a4',
      '--out',
      out,
      '--base',
      'https://roofs.example/',
    );
    expect([code, err]).toEqual([0, '']);
    const page = readFileSync(out, 'utf8');
    expect(page).toContain('<article class="set-card a4" lang="es">');
    expect(page).toContain('size:A4');
    expect(page).toContain('160 3/16&quot;'.replace(' ', ' '));
    expect(page.match(/src:url\(data:font\/woff2;base64,/g)).toHaveLength(2);
    expect(page).not.toMatch(/(?:src|href)="|url\((?!data:)|<script|@import/);
  });

  it.each([
    ['no file', ['--lang', 'en', '--paper', 'a4', '--out', 'x.html'], /give one roof file/],
    ['another language', [gable, '--lang', 'fr', '--paper', 'a4', '--out', 'x.html'], /--lang/],
    ['another paper', [gable, '--lang', 'en', '--paper', 'a3', '--out', 'x.html'], /--paper/],
    ['nowhere to put it', [gable, '--lang', 'en', '--paper', 'a4'], /--out/],
    [
      'a level instead of a roof',
      ['levels/level.schema.json', '--lang', 'en', '--paper', 'a4', '--out', 'x.html'],
      /\$/,
    ],
  ])('refuses %s, in one line, and writes nothing', (_, args, says) => {
    const { code, err } = tt(...args);
    expect(code).toBe(2);
    expect(err).toMatch(says);
    expect(existsSync('x.html')).toBe(false);
  });
});
