import { cardBody, type CardAsked } from './card';
import { cardStyle } from './cardStyle';
import { escaped } from './drawSvg';

/** Our faces as base64 of their woff2 files; the machine's own stand in where there are none. */
export type Fonts = { readonly word: string; readonly narrow: string };

/** A whole page that needs nothing beside itself. */
export const cardPage = (asked: CardAsked, fonts?: Fonts): string => {
  const { words, paper } = asked;
  const face = (family: string, weight: string, data: string): string =>
    `@font-face{font-family:"${family}";font-weight:${weight};src:url(data:font/woff2;base64,${data}) format("woff2")}`;
  const faces = fonts
    ? face('Public Sans Variable', '100 900', fonts.word) + face('Barlow Condensed', '600', fonts.narrow)
    : '';
  return `<!doctype html>
<html lang="${words.lang}">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escaped(words.roofs.card.title)}</title>
<style>${faces}@page{size:${paper === 'a4' ? 'A4' : 'letter'};margin:0}html,body{margin:0;background:#fff}${cardStyle}</style>
${cardBody(asked).html}
</html>
`;
};
