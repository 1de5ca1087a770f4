/** Something on a page that a person could not read, reach or hit. */
export type Misfit = {
  readonly kind:
    'cut text' | 'small text' | 'covered' | 'out of reach' | 'overlap' | 'small target' | 'sideways';
  /** What it is, in words a person can find on the screen. */
  readonly what: string;
  /** By what, or by how much. */
  readonly why: string;
};
