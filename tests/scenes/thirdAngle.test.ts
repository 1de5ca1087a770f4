import { describe, expect, it } from 'vitest';
import { roofOf, widthOf } from '../../src/core/level/layout';
import type { Vec3 } from '../../src/core/geometry/vector';
import type { Attempt } from '../../src/core/site/attempt';
import { pose } from '../../src/core/site/posed';
import { drawingWordsOf } from '../../src/present/drawingWords';
import { schemeOf } from '../../src/present/model/scheme';
import { modelOf } from '../../src/present/model/solidsOf';
import { catalogues } from '../../src/present/words/messages';
import { onScreen } from '../../src/scenes/ink/camera';
import { seenFlat } from '../../src/scenes/measured/drawFlat';
import type { Ink } from '../../src/scenes/ink/pencil';
import { inkChosen, outlineOf } from '../../src/scenes/measured/sheetChosen';
import { carriedAcross, centerLines, hiddenDash, longShort } from '../../src/scenes/measured/sheetInk';
import { sheetLay, standsOn, type SheetView } from '../../src/scenes/measured/sheetLay';
import { dimensionsOf } from '../../src/scenes/measured/sheetMeasures';
import { partOf } from '../../src/scenes/measured/thirdAngle';
import { memberAt } from '../../src/scenes/overview/pick';
import { cleanActs, told, usual } from '../order/story';
import { levelOf } from '../site/levels';
import { shedDone } from '../site/shedRun';

const hut = levelOf('garden-hut');
const acts = cleanActs(hut, usual);
const desk = { x: 0, y: 0, width: 892, height: 640 };

const sheetFor = (attempt: Attempt, { area = desk, station = 4, zoom = { scale: 1, x: 0, y: 0 } } = {}) => {
  const { level, site } = attempt;
  const shown = { level, site, pose: pose(attempt), figured: roofOf(level) };
  const scheme = schemeOf(shown);
  const words = drawingWordsOf(catalogues.en, { station, joint: undefined });
  const lay = sheetLay({ scheme, overhang: level.plan.overhang, area, ratio: 1, zoom });
  const model = modelOf(shown);
  const input = { shown, model, theme: 'day', words, area, ratio: 1, station, zoom } as const;
  const views = Object.values(lay.views).flatMap((one) => {
    const part = partOf(input, { scheme, lay, one });
    return part ? [{ view: one.view, at: part.at, ...seenFlat(part.flat) }] : [];
  });
  return { input, scheme, lay, model, views };
};

const done = told(hut, acts, { seed: 7 });

describe('plan, section and side on one sheet', () => {
  it.each([
    ['whole', { scale: 1, x: 0, y: 0 }],
    ['moved and scaled', { scale: 1.37, x: -90.7, y: -130.2 }],
  ])('every corner of every member stands in line from view to view, %s', (_, zoom) => {
    const { lay, model, views } = sheetFor(done, { zoom });
    const on = (view: SheetView, p: Vec3): readonly [number, number] => {
      const hung = views.find((one) => one.view === view);
      if (!hung) throw new Error(`no ${view}`);
      const [x, y] = onScreen(hung.camera, p);
      return [x + hung.at[0], y + hung.at[1]];
    };
    let corners = 0;
    for (const { faces } of model.solids)
      for (const p of faces.flatMap(({ points }) => points)) {
        corners++;
        const [plan, section, side] = [on('plan', p), on('section', p), on('side', p)];
        expect(side[0]).toBeCloseTo(plan[0], 6);
        expect(section[1]).toBeCloseTo(side[1], 6);
        // What lies across the plan meets the miter line where it meets what comes up from the section.
        const [mx, my] = lay.miter ?? [0, 0];
        expect(section[0] - mx).toBeCloseTo(plan[1] - my, 6);
        expect(standsOn(lay, 'plan', p)).toEqual(plan.map((v) => expect.closeTo(v, 6)));
      }
    expect(corners).toBeGreaterThan(500);
  });

  it('lies inside its area with its views apart, on a desk; on a narrow stage plan over side as wide as it', () => {
    for (const id of ['garden-hut', 'hay-barn']) {
      const { lay } = sheetFor(told(levelOf(id), []));
      const { plan, section, side } = lay.views;
      if (!plan || !section || !side) throw new Error('not all views');
      for (const { box } of [plan, section, side]) {
        expect(box.x).toBeGreaterThan(0);
        expect(box.y).toBeGreaterThan(0);
        expect(box.x + box.width).toBeLessThan(desk.width);
        expect(box.y + box.height).toBeLessThan(desk.height);
      }
      expect(section.box.x + section.box.width).toBeLessThan(side.box.x);
      expect(plan.box.y + plan.box.height).toBeLessThan(side.box.y);
    }
    const { lay } = sheetFor(done, { area: { x: 0, y: 0, width: 390, height: 240 } });
    expect(lay.views.section).toBeUndefined();
    expect(lay.views.plan?.box.width).toBeGreaterThan(300);
  });

  it('a finger finds every standing member somewhere on it, half built and done', () => {
    for (const attempt of [told(hut, acts.slice(0, Math.round(acts.length / 2)), { seed: 7 }), done]) {
      const { views, model } = sheetFor(attempt, { station: 1 });
      const found = new Set<string>();
      for (const { raster, camera } of views)
        for (let y = 0; y < raster.height / raster.fine; y += 2)
          for (let x = 0; x < raster.width / raster.fine; x += 2) {
            const id = memberAt({ raster, camera, spots: [], ratio: 0 }, [x + 0.5, y + 0.5]);
            if (id) found.add(id);
          }
      const standing = new Set(model.solids.filter(({ selectable }) => selectable).map(({ id }) => id));
      const onPile = /^(board|pile|spare)/;
      expect([...standing].filter((id) => !found.has(id) && !onPile.test(id))).toEqual([]);
      expect(standing.size).toBeGreaterThan(20);
    }
  });

  it('a layout line for each station and a center line in plan and section; each carried straight down', () => {
    const so = sheetFor(done);
    const lines = centerLines(so);
    expect(lines).toHaveLength(so.scheme.stations.length + 2);
    for (const { from, to } of lines.slice(2)) expect(from[0]).toBeCloseTo(to[0], 6);
    const [across, down] = carriedAcross(so.lay, { y: 30, x: 0, z: 60 });
    expect(across?.from[1]).toBeCloseTo(across?.to[1] ?? 0, 6);
    expect(down?.from[0]).toBeCloseTo(down?.to[0] ?? 0, 6);
  });

  it('a rafter on the far side lies behind from the street and open in the plan', () => {
    const { views } = sheetFor(done);
    const lengthOf = (lines: ReturnType<typeof outlineOf>['seen']): number =>
      lines.reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0);
    const outline = (view: SheetView) => {
      const one = views.find((hung) => hung.view === view);
      if (!one) throw new Error(view);
      const { seen, hidden } = outlineOf(one, 'rafter.yard.4');
      return { seen: lengthOf(seen), hidden: lengthOf(hidden) };
    };
    const [side, plan] = [outline('side'), outline('plan')];
    expect(side.hidden).toBeGreaterThan(100);
    expect(side.hidden / side.seen).toBeGreaterThan(4 * (plan.hidden / plan.seen));
  });

  it('a chosen member is outlined in full where it is seen, dashed where it lies behind, carried long and short', () => {
    const { lay, views } = sheetFor(done);
    const hung = views.map(({ view, at, ...flat }) => ({ view, at, flat }));
    const strokes: (readonly number[])[] = [];
    let dash: readonly number[] = [];
    const pen = {
      setLineDash: (next: readonly number[]) => void (dash = next),
      stroke: () => void strokes.push(dash),
      createLinearGradient: () => ({ addColorStop: () => undefined }),
    };
    const ink = new Proxy(pen, { get: (own, key) => own[key as keyof typeof own] ?? (() => undefined) });
    inkChosen(ink as unknown as Ink, { lay, hung }, { id: 'rafter.yard.4', theme: 'day', ratio: 1 });
    const ruled = (pattern: readonly number[]): number =>
      strokes.filter((one) => one.join() === pattern.join()).length;
    const behind = hung.reduce((sum, { flat }) => sum + outlineOf(flat, 'rafter.yard.4').hidden.length, 0);
    expect(behind).toBeGreaterThan(0);
    expect(ruled(hiddenDash)).toBe(behind);
    // One line down to the side; two across the miter line and two level to it, each two lines or one.
    expect(ruled(longShort)).toBe(1 + 2 * 2 + 2);
    expect(ruled([])).toBeGreaterThan(0);
  });

  it("figures measure the line they stand on, at the sheet's one scale", () => {
    const so = sheetFor(done);
    const all = dimensionsOf(so);
    for (const { from, to, inches } of all)
      expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(inches * so.lay.scale, 6);
    const { span, length } = hut.plan;
    expect(all.map(({ inches }) => inches)).toEqual(expect.arrayContaining([span, length, so.scheme.top]));
  });

  it('of a shed is one side and the cut of its wall: no center line, and figures that begin and end on what is drawn', () => {
    const so = sheetFor(shedDone);
    const { lay, scheme } = so;
    expect(centerLines(so)).toHaveLength(scheme.stations.length);
    const all = dimensionsOf(so);
    const { length, overhang } = shedDone.level.plan;
    expect(all.map(({ inches }) => inches)).toEqual(
      expect.arrayContaining([widthOf(shedDone.level), length, scheme.top]),
    );
    expect(all.filter(({ inches }) => inches === overhang)).toHaveLength(1);
    const boxes = Object.values(lay.views).map(({ box }) => box);
    for (const { from, to, inches, off } of all) {
      expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(inches * lay.scale, 6);
      for (const [x, y] of off ?? [from, to])
        expect(
          boxes.some((b) => x >= b.x && x <= b.x + b.width && y >= b.y && y <= b.y + b.height),
          `${String(inches)} at ${String(x)}, ${String(y)}`,
        ).toBe(true);
    }
    // The wall goes on over the ledger, and nothing hangs where the other half of a gable would.
    const { section, plan } = lay.views;
    if (!section || !plan) throw new Error('not all views');
    expect(section.origin[1] - section.box.y).toBeCloseTo((scheme.top + 30) * lay.scale, 6);
    expect(plan.box.height).toBeLessThan((scheme.half + overhang + 20) * lay.scale);
    for (const { view, solids } of so.views)
      if (view !== 'side')
        for (const { id, faces } of solids)
          expect(
            faces.some(({ points }) => points.some((p) => p[1] < scheme.yard)),
            id,
          ).toBe(true);
  });
});
