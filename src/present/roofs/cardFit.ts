/** A card is one page: what is less needed gives way, part by part, until it fits, and the card says what it left out. */

export type Variant = {
  readonly html: string;
  /** Points. */
  readonly height: number;
  /** What has to be looked up elsewhere in this one, in words. */
  readonly left?: string;
};

export type Block = {
  readonly key: string;
  /** Best first. */
  readonly variants: readonly [Variant, ...Variant[]];
};

export type Fitted = {
  readonly blocks: readonly (Variant & { readonly key: string })[];
  readonly left: readonly string[];
  readonly height: number;
  readonly fits: boolean;
};

/** Blocks give way in the order of `ease`, one step for each time they are named there. */
export const fitted = (
  blocks: readonly Block[],
  { room, gap, ease }: { readonly room: number; readonly gap: number; readonly ease: readonly string[] },
): Fitted => {
  const steps = new Map(blocks.map(({ key }) => [key, 0]));
  const chosen = (): readonly (Variant & { readonly key: string })[] =>
    blocks.flatMap(({ key, variants }) => {
      const one = variants[steps.get(key) ?? 0];
      return one ? [{ ...one, key }] : [];
    });
  const height = (): number =>
    chosen().reduce((sum, one) => sum + (one.height > 0 ? one.height + gap : 0), -gap);
  for (const key of ease) {
    if (height() <= room) break;
    const block = blocks.find((one) => one.key === key);
    const step = steps.get(key) ?? 0;
    if (block && step + 1 < block.variants.length) steps.set(key, step + 1);
  }
  // One large step may have left room for what gave way before it, the most needed first.
  for (const key of [...ease].reverse()) {
    const step = steps.get(key) ?? 0;
    if (height() > room || step === 0) continue;
    steps.set(key, step - 1);
    if (height() > room) steps.set(key, step);
  }
  const all = chosen();
  return {
    blocks: all.filter(({ html }) => html !== ''),
    left: [...new Set(all.flatMap(({ left }) => (left === undefined ? [] : [left])))],
    height: height(),
    fits: height() <= room,
  };
};
