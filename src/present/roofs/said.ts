import type { Lang } from '../words/messages';
import { sayings } from '../words/es/sayings';
import { oneLine, phraseTold, type Refusal, type Said } from '../words/refusalMessages';

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

/** Why an answer or a file is refused, or what is accepted, as the page says it. */
export const refusalSaid = (lang: Lang, said: Said): string =>
  typeof said === 'string' ? roofSaid(lang, said) : unquoted(phraseTold(lang, said));

/** The place, what is wrong there and what is accepted, on one line whatever the file holds. */
export const reasonSaid = (lang: Lang, { path, wrong, accepted }: Refusal): string => {
  const tell = lang === 'en' ? phraseTold : refusalSaid;
  return oneLine(`${path === '$' ? '' : `${path} `}${tell(lang, wrong)} (${tell(lang, accepted)})`);
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
