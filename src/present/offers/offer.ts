import type { ToolId } from '../../core/instruments/tool';
import type { Action } from '../../core/site/action';

/** What somebody may do at a place with a tool in hand. Nothing is left out for being out of order. */
export type Offer = {
  /** Stable key, for tests and for shortcuts. */
  readonly id: string;
  /** Path into the catalogue: see `offerLabel`. */
  readonly label: readonly string[];
  readonly picker?: Picker;
  /** What is read, and how the tool is held for it: the picture shows this. */
  readonly reading?: ReadAt;
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
  | {
      readonly kind: 'reading';
      readonly start: number;
      readonly signed: boolean;
      /** The finest an eye tells there, inches, where it is coarser than a sixteenth. */
      readonly coarse?: number;
    };

export type Option = { readonly value: string; readonly label: readonly string[] };

/** A tool, where it is put, and how it is held where that makes a difference. */
export type ReadAt = { readonly tool: ToolId; readonly at: string; readonly from?: string };

/** A place on the site that a tool can be put to, in document order. */
export type Spot = {
  readonly id: string;
  readonly member: string;
  readonly offers: readonly Offer[];
  /** Set where something is read; offers say how the tool may be held. */
  readonly reading?: ReadAt;
};
