import { describe, expect, it } from 'vitest';
import { cutMembers } from '../../../src/present/roofs/cutMembers';
import {
  boxOf,
  segmentsOf,
  textsOf,
  type Box,
  type Drawing,
  type Segment,
} from '../../../src/present/roofs/draw';
import { cutDrawing } from '../../../src/present/roofs/drawCuts';
import { planDrawing } from '../../../src/present/roofs/drawPlan';
import { sectionDrawing } from '../../../src/present/roofs/drawSection';
import { drawingSvg } from '../../../src/present/roofs/drawSvg';
import type { SheetAsked } from '../../../src/present/roofs/sheetShape';
import { roofCatalogues } from '../../../src/present/words/roofMessages';
import { changedAsked, exampleAsked, exampleNames, langs } from './examples';

const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Whether any of a straight line lies in a box (Liang and Barsky 1984). */
const crosses = ({ from, to }: Segment, { left, right, top, bottom }: Box): boolean => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let [a, b] = [0, 1];
  const sides = [
    [-dx, from[0] - left],
    [dx, right - from[0]],
    [-dy, from[1] - top],
    [dy, bottom - from[1]],
  ] as const;
  for (const [p, q] of sides) {
    if (p === 0) {
      if (q <= 0) return false;
    } else if (p < 0) a = Math.max(a, q / p);
    else b = Math.min(b, q / p);
  }
  return a < b;
};

/** Texts that lie on a line, on each other, or past the edge. */
const clashes = (drawing: Drawing): readonly string[] => {
  const texts = textsOf(drawing).map((text) => ({ text: text.text, box: boxOf(text) }));
  const lines = segmentsOf(drawing);
  return texts.flatMap(({ text, box }, i) => [
    ...texts.slice(i + 1).flatMap((other) => (meets(box, other.box) ? [`${text} on ${other.text}`] : [])),
    ...(lines.some((line) => crosses(line, box)) ? [`${text} on a line`] : []),
    ...(box.left < 0 || box.top < 0 || box.right > drawing.width || box.bottom > drawing.height
      ? [`${text} past the edge`]
      : []),
  ]);
};

const size = { width: 560, height: 320, figure: 15, word: 13 };

const drawingsOf = (asked: SheetAsked): readonly Drawing[] => [
  planDrawing(asked, size),
  planDrawing(asked, { ...size, width: 340, height: 240 }),
  sectionDrawing(asked, size),
  sectionDrawing(asked, { ...size, width: 340, height: 200 }),
  ...cutMembers(asked).flatMap((member) => [
    cutDrawing(asked, member, { width: 560, figure: 15, word: 13, deep: 56 }),
    cutDrawing(asked, member, { width: 520, figure: 15, word: 12, deep: 30, low: true }),
  ]),
];

describe('texts of drawings lie on no line, on no other text and inside', () => {
  it.each(exampleNames)('%s', (name) => {
    for (const lang of langs)
      for (const units of ['feet', 'mm'] as const)
        for (const drawing of drawingsOf(exampleAsked(name, { lang, units })))
          expect(clashes(drawing), `${drawing.title}, ${units}`).toEqual([]);
  });

  it.each([
    ['steep', { slope: { rise: 24, run: 12 }, seat: 1.5, overhang: 6 }],
    ['low', { slope: { rise: 2, run: 12 }, overhang: 24 }],
    ['without a tail', { overhang: 0 }],
    ['a tail of an inch', { overhang: 1 }],
    ['narrow', { span: 60, length: 72, overhang: 6 }],
    ['deep rafters', { rafter: { thickness: 1.5, depth: 11.25 }, ridge: { thickness: 1.5, depth: 14 } }],
    ['long', { length: 6000 }],
  ])('%s', (_, changes) => {
    for (const drawing of drawingsOf(changedAsked(changes)))
      expect(clashes(drawing), drawing.title).toEqual([]);
  });

  it('is told by the measure when a text does lie on a line', () => {
    const text = {
      kind: 'text',
      at: [50, 50],
      text: 'body',
      size: 15,
      face: 'narrow',
      anchor: 'middle',
    } as const;
    const line = {
      kind: 'line',
      points: [
        [0, 46],
        [100, 46],
      ],
      role: 'thin',
    } as const;
    const bad = {
      title: '',
      width: 100,
      height: 100,
      shapes: [text, line, { ...text, at: [98, 80] as const }],
    };
    expect(clashes(bad)).toEqual(['body on a line', 'body past the edge']);
    expect(clashes({ ...bad, shapes: [text, { ...text, at: [55, 55] as const }] })).toEqual(['body on body']);
  });
});

describe('a drawing of cuts', () => {
  const asked = exampleAsked('hip-unequal');
  const texts = (id: string): string =>
    cutMembers(asked)
      .filter((one) => one.id === id)
      .flatMap((one) => textsOf(cutDrawing(asked, one, { width: 560, figure: 15, word: 13, deep: 56 })))
      .map(({ text }) => text)
      .join('\n');

  it('has every cut of a common with its length', () => {
    for (const text of [
      'body 160 3/16"',
      'tail 15 5/8"',
      'plumb cut 8 1/8"',
      'seat 3 1/2"',
      'heel 1 3/4"',
      '6 3/8" above plate',
    ])
      expect(texts('common.both')).toContain(text);
  });

  it('has cheeks and saw of a jack, and backing of a hip', () => {
    expect(texts('jack.1')).toContain('cheek 33.9°, saw 53.1°');
    expect(texts('hip.1')).toContain('backing 26.3°, 15.6°');
  });
});

it('draws every rafter of a plan once, and none of a roof of thousands', () => {
  const asked = exampleAsked('gable');
  const lines = planDrawing(asked, size).shapes.filter((shape) => shape.kind === 'line');
  // 28 commons and the ridge.
  expect(lines).toHaveLength(29);
  const long = planDrawing(changedAsked({ length: 60_000 }), size);
  expect(long.shapes.length).toBeLessThan(12);
  expect(textsOf(long).map(({ text }) => text)).toContain(roofCatalogues.en.roofs.draw.tooMany);
});

it('writes texts into SVG as text', () => {
  const text = {
    kind: 'text',
    at: [1, 1],
    text: `<script>"&'`,
    size: 15,
    face: 'word',
    anchor: 'start',
  } as const;
  const svg = drawingSvg({ title: '<b>"', width: 9, height: 9, shapes: [text] });
  expect(svg).toContain('&lt;script&gt;&quot;&amp;&#39;');
  expect(svg).toContain('aria-label="&lt;b&gt;&quot;"');
  expect(svg).not.toMatch(/<script|<b>/);
});
