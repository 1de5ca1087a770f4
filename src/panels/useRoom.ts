import { useEffect, useState } from 'preact/hooks';

/** How much room the words have: the page's size over the size of the text, so that large text is laid out as on a small page. */
export type Room = {
  readonly width: 'wide' | 'middle' | 'small' | 'narrow';
  readonly low: boolean;
  readonly tag: boolean;
  /** Narrow only because the text is large: the page itself is broad. */
  readonly broad: boolean;
  /** Narrow and too low to be divided, as a page zoomed to 400 % is: all of it scrolls as one column. */
  readonly short: boolean;
  /** Higher than wide, a tablet upright: the drawing has the whole width, and the sheet lies below it. */
  readonly tall: boolean;
};

/** From the look's layouts, CSS pixels at text of 100 %. `small` and `low` are ours. */
const widths = { wide: 1100, middle: 900, small: 700 } as const;
const lowUnder = 520;
/** A tag needs the drawing to be this high, page and all. */
const tagFrom = 620;
const shortUnder = 420;

const roomNow = (text: number): Room => {
  const across = (innerWidth * 100) / text;
  const high = (innerHeight * 100) / text;
  const width =
    across >= widths.wide
      ? 'wide'
      : across >= widths.middle
        ? 'middle'
        : across >= widths.small
          ? 'small'
          : 'narrow';
  const broad = width === 'narrow' && innerWidth >= widths.small && innerWidth > innerHeight;
  return {
    width,
    low: width !== 'narrow' && high <= lowUnder,
    tag: width === 'wide' && high >= tagFrom,
    broad,
    tall: (width === 'middle' || width === 'small') && innerHeight > innerWidth,
    short: width === 'narrow' && !broad && innerHeight < shortUnder,
  };
};

export const useRoom = (text: string): Room => {
  const [, set] = useState(0);
  useEffect(() => {
    const onSize = (): void => set((n) => n + 1);
    addEventListener('resize', onSize);
    return () => removeEventListener('resize', onSize);
  }, []);
  return roomNow(Number(text));
};
