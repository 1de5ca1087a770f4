import { dimensionLines, type Drawing, type Point, type Segment, type Shape, type Text } from './draw';

/**
 * A drawing as SVG. Its looks are the style sheet's: classes `draw-wood`, `draw-stick`, `draw-thin`, `draw-dashed`, `draw-middle`,
 * `draw-dimension`, and texts `draw-word`, `draw-strong`, `draw-narrow`. Every text is escaped.
 */
export const drawingSvg = ({ title, width, height, shapes }: Drawing): string =>
  `<svg class="drawing" viewBox="0 0 ${short(width)} ${short(height)}" width="${short(width)}" height="${short(height)}" role="img" aria-label="${escaped(title)}">${shapes.map(shapeSvg).join('')}</svg>`;

/** The same, its measures kept on one line: `160 3/16"` and `2 × 8` do not break. */
export const set = (text: string): string => escaped(unbroken(text));

/** With spaces inside measures that do not break. */
export const unbroken = (text: string): string =>
  text
    .replace(/(\d) (\d+\/\d)/g, '$1\u00a0$2')
    .replace(/(\d|") × /g, '$1\u00a0×\u00a0')
    .replace(/(^|\s)(\d+) (?=\p{L})/gu, '$1$2\u00a0');

/** Text that can never become markup, between tags or in quotes. */
export const escaped = (text: string): string =>
  text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');

const short = (value: number): string => `${Math.round(value * 100) / 100}`;
const pointText = ([x, y]: Point): string => `${short(x)},${short(y)}`;

const shapeSvg = (shape: Shape): string => {
  switch (shape.kind) {
    case 'text':
      return textSvg(shape);
    case 'dimension':
      return `<g class="draw-dimension">${dimensionLines(shape).map(lineSvg).join('')}</g>${shape.label ? textSvg(shape.label) : ''}`;
    case 'outline':
      return `<polygon class="draw-${shape.role}" points="${shape.points.map(pointText).join(' ')}"/>`;
    case 'line': {
      const [end] = shape.points.slice(-1);
      const dot =
        shape.dot && end
          ? `<circle class="draw-dot" cx="${short(end[0])}" cy="${short(end[1])}" r="2"/>`
          : '';
      return `<polyline class="draw-${shape.role}" points="${shape.points.map(pointText).join(' ')}"/>${dot}`;
    }
  }
};

const lineSvg = ({ from, to }: Segment): string =>
  `<line x1="${short(from[0])}" y1="${short(from[1])}" x2="${short(to[0])}" y2="${short(to[1])}"/>`;

const textSvg = ({ at: [x, y], text, size, face, anchor }: Text): string =>
  `<text class="draw-${face}" x="${short(x)}" y="${short(y)}" font-size="${short(size)}" text-anchor="${anchor}">${escaped(text)}</text>`;
