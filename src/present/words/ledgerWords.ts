import { ledger as en } from './en/ledger';
import { ledger as es } from './es/ledger';
import { catalogues, type Lang, type Messages } from './messages';

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

const merged = (words: unknown, others: unknown): unknown => {
  if (!isGroup(words) || !isGroup(others)) return others ?? words;
  const changed = Object.entries(others).map(([key, other]) => [key, merged(words[key], other)]);
  return { ...words, ...(Object.fromEntries(changed) as object) };
};

/** The whole catalogue of a roof of one side, on a ledger at a wall. */
export const ledgerCatalogues: Readonly<Record<Lang, Messages>> = {
  en: merged(catalogues.en, en) as Messages,
  es: merged(catalogues.es, es) as Messages,
};
