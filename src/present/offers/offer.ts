import type { Action } from '../../core/site/action';

/** What somebody may do at a place with a tool in hand. Nothing is left out for being out of order. */
export type Offer = {
  /** Stable key, for tests and for shortcuts. */
  readonly id: string;
  /** Path into the catalogue: see `offerLabel`. */
  readonly label: readonly string[];
  readonly picker?: Picker;
  /** The act, once what is open has been picked. */
  readonly act: (picked: Picked) => Action;
};

export type Picked = number | string;

/** How what is open gets picked: a length by eighths and sixteenths, one of a few, or what a tool shows. */
export type Picker =
  | {
      readonly kind: 'length';
      readonly from: number;
      readonly to: number;
      readonly start: number;
      readonly label: readonly string[];
    }
  | { readonly kind: 'choice'; readonly options: readonly Option[]; readonly label: readonly string[] }
  | { readonly kind: 'reading'; readonly start: number; readonly signed: boolean };

export type Option = { readonly value: string; readonly label: readonly string[] };

/** A place on the site that a tool can be put to, in document order. */
export type Spot = {
  readonly id: string;
  readonly member: string;
  readonly offers: readonly Offer[];
  readonly reading?: { readonly tool: string; readonly at: string; readonly from?: string };
};
