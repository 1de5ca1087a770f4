/** Chance that keeps its place: every draw is keyed by (seed, place, purpose), so looking ahead or taking back shifts nothing. */

/**
 * 32-bit MurmurHash3 (Austin Appleby, public domain) of a text of characters below 256.
 * Checked against its published vectors in the tests.
 */
export const murmur3 = (text: string, seed: number): number => {
  let h = seed | 0;
  const blocks = text.length >> 2;
  for (let i = 0; i < blocks; i++) h = Math.imul(rotate(h ^ mixed(word(text, i * 4, 4)), 13), 5) + 0xe6546b64;
  const rest = text.length & 3;
  if (rest > 0) h ^= mixed(word(text, blocks * 4, rest));
  return finished(h ^ text.length);
};

const word = (text: string, at: number, bytes: number): number => {
  let k = 0;
  for (let i = bytes - 1; i >= 0; i--) k = (k << 8) | (text.charCodeAt(at + i) & 0xff);
  return k;
};
const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by));
const mixed = (k: number): number => Math.imul(rotate(Math.imul(k, 0xcc9e2d51), 15), 0x1b873593);
const finished = (start: number): number => {
  let h = start ^ (start >>> 16);
  h = Math.imul(h, 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
};

/** Even chance in [0, 1). */
export const uniform = (seed: number, place: string, purpose: string): number =>
  murmur3(`${place}|${purpose}`, seed) / 4294967296;

/** What a draw is for: the seed of the run, the place on the site, the purpose. */
export type Draw = { readonly seed: number; readonly place: string; readonly purpose: string };

/** Bell-shaped in (−range, range): the mean of three even draws, which needs no function that engines round differently. */
export const spread = ({ seed, place, purpose }: Draw, range: number): number => {
  const sum =
    uniform(seed, place, `${purpose}1`) +
    uniform(seed, place, `${purpose}2`) +
    uniform(seed, place, `${purpose}3`);
  return ((sum - 1.5) / 1.5) * range;
};
