import { classCatalogues, type ClassMessages } from '../../present/words/classMessages';
import type { Desk } from '../desk';

/** The words of a class, in the language of the page. */
export const classWordsOf = ({ settings }: Pick<Desk, 'settings'>): ClassMessages =>
  classCatalogues[settings.value.lang];
