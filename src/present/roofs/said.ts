import type { Lang } from '../words/messages';
import { sayings } from '../words/es/sayings';

/**
 * What the core and the readers of files say of a roof, which is English, as the page says it: in its language, and with
 * lengths as people write them. A saying that has no Spanish yet stays as it is.
 */
export const roofSaid = (lang: Lang, english: string): string => {
  const part = ofPart.exec(english);
  if (part && lang === 'es') return `Parte ${part[1]}: ${roofSaid(lang, part[2] ?? '')}`;
  const plain = unquoted(english);
  if (lang === 'en') return plain;
  for (const { pattern, spanish } of patterns) {
    const found = pattern.exec(plain);
    if (found) return spanish.replace(/\{(\d)\}/g, (_, i: string) => inSpanish(found[Number(i) + 1] ?? ''));
  }
  return plain;
};

/** What is said of one part of a run alone. */
const ofPart = /^Section (\d+): (.*)$/;

/** A text in a file has its quotes and its slashes; on a page it is what was typed. */
const unquoted = (text: string): string =>
  text.replace(/"((?:[^"\\]|\\.)*)"/g, (whole, inner: string) =>
    inner.includes('\\') ? inner.replace(/\\(.)/g, '$1') : whole,
  );

const inSpanish = (filled: string): string =>
  filled
    .replace(/^(-?\d+(?:\.\d+)?) in$/, '$1 pulg.')
    .replace(/^(-?\d+(?:\.\d+)?) in to (-?\d+(?:\.\d+)?) in$/, '$1 a $2 pulg.')
    .replace(/ or /g, ' o ');

/** `{0}` in a saying stands for whatever is there. */
const patterns = sayings.map(([english, spanish]) => ({
  pattern: new RegExp(
    `^${english
      .split(/\{\d\}/)
      .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
      .join('(.+?)')}$`,
    'u',
  ),
  spanish,
}));
