import { addForce, valueOf, type Frame, type Grip, type Link, type Row } from './frame';
import { addOuter, type Equations } from './skyline';

/**
 * Nails that gave, each joint with the forces at its cap. They slip on along that force, which no longer grows, and hold
 * across it as before.
 */
export type Given = ReadonlyMap<Grip, readonly number[]>;

/** A joint that gave, apart: how stiff its links are, the way it slips (length 1), and that way's own stiffness. */
type Slipping = {
  readonly links: readonly Link[];
  readonly stiff: readonly number[];
  readonly way: readonly number[];
  readonly along: number;
  readonly cap: number;
};

const sizeOf = (forces: readonly number[]): number => Math.sqrt(forces.reduce((sum, f) => sum + f * f, 0));

const slippingOf = (frame: Frame, grip: Grip, caps: readonly number[]): Slipping => {
  const links = grip.links.map((n) => frame.links[n] as Link);
  const stiff = links.map(({ stiffness }) => stiffness);
  const cap = sizeOf(caps);
  const way = caps.map((f) => f / cap);
  const along = stiff.reduce((sum, k, i) => sum + k * (way[i] as number) * (way[i] as number), 0);
  return { links, stiff, way, along, cap };
};

/** Adds what joints that gave still hold, and the force they keep. */
export const addGiven = ({ stiffness, load }: Equations, frame: Frame, given: Given): void => {
  for (const [grip, caps] of given) {
    const so = slippingOf(frame, grip, caps);
    so.links.forEach(({ row }, i) => addForce(load, row, -keptIn(so, i)));
    for (const { row, rest } of heldAcross(so)) {
      addOuter(stiffness, row, { times: 1 });
      addForce(load, row, rest);
    }
  }
};

/** What link i keeps of the cap when nothing moves across the way it slips. */
const keptIn = ({ stiff, way, along, cap }: Slipping, i: number): number =>
  ((stiff[i] as number) * (way[i] as number) * cap) / along;

/** Rows of stiffness 1 that together hold what the slipping way does not: none with one link, two with three. */
const heldAcross = ({ links, stiff, way, along }: Slipping): readonly { row: Row; rest: number }[] => {
  if (links.length !== 3) return [];
  const roots = stiff.map(Math.sqrt);
  const m = roots.map((root, i) => (root * (way[i] as number)) / Math.sqrt(along));
  const p = acrossOf(m);
  const q = [1, 2, 0].map((j, i) => {
    const k = (i + 2) % 3;
    return (m[j] as number) * (p[k] as number) - (m[k] as number) * (p[j] as number);
  });
  return [p, q].map((part) => {
    const shares = roots.map((root, i) => root * (part[i] as number));
    return {
      row: sumOf(links.map(({ row }, i) => ({ row, times: shares[i] as number }))),
      rest: links.reduce((sum, { rest }, i) => sum + (shares[i] as number) * rest, 0),
    };
  });
};

/** A direction across another of length 1, from the axis that is most across it. */
const acrossOf = (m: readonly number[]): readonly number[] => {
  const least = m.reduce((best, part, i) => (Math.abs(part) < Math.abs(m[best] as number) ? i : best), 0);
  const part = m[least] as number;
  const across = m.map((other, i) => (i === least ? 1 : 0) - part * other);
  const size = sizeOf(across);
  return across.map((a) => a / size);
};

const sumOf = (parts: readonly { readonly row: Row; readonly times: number }[]): Row => ({
  dofs: parts.flatMap(({ row }) => Array.from(row.dofs)),
  coefs: Float64Array.from(parts.flatMap(({ row, times }) => Array.from(row.coefs, (c) => c * times))),
});

/** Forces in the links of a joint that gave, for given moves. */
export const forcesIn = (frame: Frame, grip: Grip, { caps, u }: Slipped): readonly number[] => {
  const { links, stiff, way, along, cap } = slippingOf(frame, grip, caps);
  const full = links.map(({ row, rest }, i) => (stiff[i] as number) * (valueOf(row, u) - rest));
  const over = full.reduce((sum, f, i) => sum + f * (way[i] as number), 0) - cap;
  return full.map((f, i) => f - ((stiff[i] as number) * (way[i] as number) * over) / along);
};

type Slipped = { readonly caps: readonly number[]; readonly u: Float64Array };
