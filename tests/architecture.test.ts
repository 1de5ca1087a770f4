import { describe, expect, it } from 'vitest';
import { keptPaths, keptTexts, sourcesIn } from './architecture/files';
import { bannedIn } from './architecture/coreBans';
import { ringsIn } from './architecture/cycles';
import { importsOf } from './architecture/imports';
import { exceptions, judgeImports, layers } from './architecture/layers';
import { leaksIn } from './architecture/leaks';
import { emptyNamed, passingOn, strayAtTop } from './architecture/names';
import { budget, functionsOf, linesOf, median } from './architecture/sizes';

/** The rules of the house, held against every file of it. */

const code = sourcesIn('src', ['.ts', '.tsx']);
const styles = sourcesIn('src', ['.css', '.html']);
const tests = sourcesIn('tests', ['.ts', '.tsx', '.js']);
const core = code.filter(({ path }) => path.startsWith('src/core/'));
const imports = code.flatMap(importsOf);

describe('layers', () => {
  const { broken, stale } = judgeImports(imports, layers, exceptions);

  it('are imported downward only, types included', () => {
    expect(imports.length).toBeGreaterThan(code.length);
    expect(broken).toEqual([]);
  });

  it('have exceptions that only shrink', () => {
    expect(stale).toEqual([]);
    expect(exceptions.length).toBeLessThanOrEqual(0);
  });

  it('hold no ring of files', () => {
    expect(ringsIn(imports)).toEqual([]);
  });
});

describe('core', () => {
  it('uses nothing that differs between engines, days, places or runs', () => {
    expect(core.length).toBeGreaterThan(0);
    expect(core.flatMap(bannedIn)).toEqual([]);
  });
});

describe('sizes', () => {
  const functions = code.flatMap(functionsOf);

  it('of files', () => {
    const long = [...code, ...styles, ...tests].filter((file) => linesOf(file) > budget.fileLines);
    expect(long.map((file) => `${file.path}: ${linesOf(file)} lines`)).toEqual([]);
    expect(median(code.map(linesOf))).toBeLessThanOrEqual(budget.medianFileLines);
  });

  it('of functions', () => {
    const long = functions.filter(({ lines }) => lines > budget.functionLines);
    expect(long.map(({ place, lines }) => `${place}: ${lines} lines`)).toEqual([]);
    const named = functions.filter((one) => one.named).map(({ lines }) => lines);
    expect(median(named)).toBeLessThanOrEqual(budget.medianFunctionLines);
  });

  it('of parameter lists', () => {
    const wide = functions.filter(({ parameters }) => parameters > budget.positionalParameters);
    expect(wide.map(({ place }) => place)).toEqual([]);
  });
});

describe('names and places', () => {
  it('say what is inside, and no file only passes on others', () => {
    expect(emptyNamed([...code, ...tests].map(({ path }) => path))).toEqual([]);
    expect(code.flatMap(passingOn)).toEqual([]);
  });

  it('leave the top level as it is', () => {
    expect(strayAtTop(keptPaths())).toEqual([]);
  });

  it('tie the project to no machine', () => {
    expect(keptTexts().flatMap(leaksIn)).toEqual([]);
  });
});
