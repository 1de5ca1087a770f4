import { own as enOwn } from './en/own';
import { roofs as enRoofs } from './en/roofs';
import { own as esOwn } from './es/own';
import { roofs as esRoofs } from './es/roofs';
import { catalogues, type Lang, type Messages } from './messages';

/** A language's whole catalogue with what is said of an own roof, which no page has to have to begin. */
export type RoofMessages = Messages & {
  readonly own: typeof enOwn;
  readonly roofs: typeof enRoofs;
};

export const roofCatalogues: Readonly<Record<Lang, RoofMessages>> = {
  en: { ...catalogues.en, own: enOwn, roofs: enRoofs },
  es: { ...catalogues.es, own: esOwn, roofs: esRoofs },
};
