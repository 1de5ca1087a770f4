/** Every word that stands on a drawing, in the language of the moment. Plain text, no markup. */
export type DrawingWords = {
  readonly ridge: string;
  readonly eave: string;
  readonly up: string;
  /** What a tick of the axis mark is: "ticks are 1 ft". */
  readonly ticks: string;
  readonly ridgeTop: string;
  readonly plate: string;
  /** Titles of the linked views; `section` says between which stations and toward which end. */
  readonly section: string;
  readonly side: string;
  readonly plan: string;
  readonly tack: string;
  readonly nail: string;
  /** Under a lens: "each tick is". */
  readonly eachTick: string;
  /** Beside a tape that was put from rafter to rafter: what it shows is a sum. */
  readonly sum: string;
  /** The side a bow is sighted to: of the ridge, of a plate. */
  readonly yard: string;
  readonly outward: string;
  /** A spot for a joint's name and how it is looked at. */
  readonly joint?: { readonly title: string; readonly from: string };
};
