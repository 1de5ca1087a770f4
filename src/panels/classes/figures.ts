import type { Lang } from '../../present/words/messages';

/** A day like `2031-04-30` as people say it. */
export const dayText = (lang: Lang, day: string): string =>
  new Intl.DateTimeFormat(lang, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }).format(
    new Date(`${day}T00:00:00Z`),
  );

/** Whether a day is over where the page is open. */
export const isPast = (day: string, now: Date = new Date()): boolean => {
  const two = (n: number): string => String(n).padStart(2, '0');
  return day < `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** Points as they are written everywhere on the desk: at most one decimal. */
export const pointsText = (points: number): string => String(Math.round(points * 10) / 10);

/** A share from 0 to 1 in whole hundredths; a dash where there is none. */
export const shareText = (share: number | undefined): string =>
  share === undefined ? '–' : String(Math.round(share * 100));
