import { classes as enClasses } from './en/classes';
import { classes as esClasses } from './es/classes';
import { catalogues, type Lang, type Messages } from './messages';

/** A language's whole catalogue with what is said of a class, which no page has to have to begin. */
export type ClassMessages = Messages & { readonly classes: typeof enClasses };

export const classCatalogues: Readonly<Record<Lang, ClassMessages>> = {
  en: { ...catalogues.en, classes: enClasses },
  es: { ...catalogues.es, classes: esClasses },
};
