import { link as aLink, refusals as english } from './en/refusals';
import { link as unEnlace, refusals as spanish } from './es/refusals';
import type { Lang } from './messages';

/** A code of the catalogue and what it is filled with; or a sentence that is told as it stands. */
export type Said = string | Phrase;
type Phrase = readonly [
  code: keyof typeof english,
  ...values: readonly (string | number | readonly unknown[] | undefined)[],
];

/** One thing wrong with a file: where, what, and what is accepted instead. */
export type Refusal = { readonly path: string; readonly wrong: Said; readonly accepted: Said };

export const refusalCatalogues: Readonly<Record<Lang, typeof english>> = { en: english, es: spanish };

type Tell = (...values: readonly unknown[]) => string;

export const phraseTold = (lang: Lang, said: Said): string => {
  if (typeof said === 'string') return said;
  const [code, ...values] = said;
  const tell = refusalCatalogues[lang][code] as Tell;
  return tell(
    ...values.map((value) => (Array.isArray(value) ? phraseTold(lang, value as unknown as Phrase) : value)),
  );
};

/** A link is named in the language of the page; places in a file are named as the file has them. */
export const placeTold = (lang: Lang, { path, wrong }: Pick<Refusal, 'path' | 'wrong'>): string =>
  path === 'link' && (typeof wrong === 'string' || wrong[0] !== 'notAKey') ? linkNames[lang] : path;
export const linkNames: Readonly<Record<Lang, string>> = { en: aLink, es: unEnlace };

/** `file: path.to.key: what is wrong (what is accepted)`, on one line and without control characters whatever the file holds. */
export const complaintLine = (file: string, one: Refusal, lang: Lang = 'en'): string =>
  oneLine(
    `${file}: ${placeTold(lang, one)}: ${phraseTold(lang, one.wrong)} (${phraseTold(lang, one.accepted)})`,
  );

export const oneLine = (text: string): string => text.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ');
