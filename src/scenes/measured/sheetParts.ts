import type { Scheme } from '../../present/model/scheme';
import { css } from '../ink/color';
import { palettes } from '../ink/palette';
import type { Ink, Point } from '../ink/pencil';
import { drawingFont } from '../overview/axisMark';
import type { Hung, SheetInput } from './sheet';
import type { SheetLay, SheetZoom } from './sheetLay';

/** What the sheet of three views is drawn from, and how a word is set on it. Device pixels. */
export type ThirdAngleInput = Omit<SheetInput, 'views' | 'from'> & { readonly zoom: SheetZoom };

export type Inked = {
  readonly input: ThirdAngleInput;
  readonly scheme: Scheme;
  readonly lay: SheetLay;
  readonly hung: readonly Hung[];
};

type Text = {
  readonly text: string;
  readonly at: Point;
  readonly size: number;
  readonly align: CanvasTextAlign;
  readonly tone: 'ink' | 'ink2' | 'chalk';
  readonly chip?: boolean;
};

/** A word on the sheet, over a chip of the deck where lines run under it. Sizes in CSS pixels. */
export const letter = (ink: Ink, { input: { theme, ratio } }: Inked, text: Text): void => {
  const palette = palettes[theme];
  const size = text.size * ratio;
  ink.font = drawingFont(size, text.tone === 'ink2' ? 500 : 600);
  ink.textAlign = text.align;
  ink.textBaseline = 'middle';
  if (text.chip) {
    const wide = ink.measureText(text.text).width + 5 * ratio;
    const left =
      text.align === 'center' ? wide / 2 : text.align === 'right' ? wide - 2.5 * ratio : 2.5 * ratio;
    ink.fillStyle = css(palette.deck, 0.96);
    ink.fillRect(text.at[0] - left, text.at[1] - size * 0.56, wide, size * 1.1);
  }
  ink.fillStyle = css(palette[text.tone]);
  ink.fillText(text.text, text.at[0], text.at[1]);
};
