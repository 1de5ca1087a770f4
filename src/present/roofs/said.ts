import type { Lang } from '../words/messages';
import { sayings } from '../words/es/sayings';

/**
 * What the core and the readers of files say of a roof, which is English, in the language of the page. A saying that has no
 * Spanish yet stays as it is.
 */
export const roofSaid = (lang: Lang, english: string): string => {
  if (lang === 'en') return english;
  for (const { pattern, spanish } of patterns) {
    const found = pattern.exec(english);
    if (found) return spanish.replace(/\{(\d)\}/g, (_, i: string) => found[Number(i) + 1] ?? '');
  }
  return english;
};

/** `{0}` in a saying stands for whatever is there. */
const patterns = sayings.map(([english, spanish]) => ({
  pattern: new RegExp(
    `^${english
      .split(/\{\d\}/)
      .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
      .join('(.+?)')}$`,
  ),
  spanish,
}));
