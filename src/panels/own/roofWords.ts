import { roofCatalogues, type RoofMessages } from '../../present/words/roofMessages';
import type { Desk } from '../desk';

/** The words of the screens for an own roof, in the language of the page. */
export const roofWordsOf = ({ settings }: Pick<Desk, 'settings'>): RoofMessages =>
  roofCatalogues[settings.value.lang];
