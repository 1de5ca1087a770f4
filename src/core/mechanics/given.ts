import { addForce, valueOf, type Frame, type Grip, type Link, type Row } from './frame';
import { addOuter, type Equations } from './skyline';

/**
 * Nails that gave. They slip along their force, which stays at the cap and turns with the way they are pulled: the flow of a
 * joint that yields, with the joint's rest where its nails were driven. What is kept is linear about one place it slipped to.
 */
export type Given = ReadonlyMap<Grip, Slip>;

/** Forces in the links of a joint at its cap, pounds, and how far it slipped for each pound, inches a pound. */
export type Slip = { readonly forces: readonly number[]; readonly slack: number };

/** A joint that gave, apart: how stiff its links are by now, the way it slips (length 1), and that way's own stiffness. */
type Slipping = {
  readonly links: readonly Link[];
  readonly stiff: readonly number[];
  readonly way: readonly number[];
  readonly along: number;
  readonly cap: number;
};

const sizeOf = (forces: readonly number[]): number => Math.sqrt(forces.reduce((sum, f) => sum + f * f, 0));

const slippingOf = (frame: Frame, grip: Grip, { forces, slack }: Slip): Slipping => {
  const links = linksIn(frame, grip);
  const stiff = links.map(({ stiffness }) => softened(stiffness, slack));
  const cap = sizeOf(forces);
  const way = forces.map((f) => f / cap);
  const along = stiff.reduce((sum, k, i) => sum + k * (way[i] as number) * (way[i] as number), 0);
  return { links, stiff, way, along, cap };
};

const linksIn = (frame: Frame, { links }: Grip): readonly Link[] => links.map((n) => frame.links[n] as Link);

const softened = (stiffness: number, slack: number): number => stiffness / (1 + stiffness * slack);

/** Solved to this much of the cap, well below what a joint is let off over it. */
const nearEnough = 1e-12;
/** Rounds of Newton's rule; it doubles its digits in each. */
const mostRounds = 50;

/** Where a joint slips to for given moves; undefined when its nails hold. */
export const slipOf = (frame: Frame, grip: Grip, u: Float64Array): Slip | undefined => {
  if (fullForce(frame, grip, u) <= grip.cap) return undefined;
  const links = linksIn(frame, grip);
  const offs = links.map((link) => offOf(link, u));
  const at = (slack: number): readonly number[] =>
    links.map(({ stiffness }, i) => softened(stiffness, slack) * (offs[i] as number));
  let slack = 0;
  let forces = at(slack);
  // One over the force is nearly linear in the slack, exactly so where all links are as stiff.
  for (let round = 0; round < mostRounds; round++) {
    const size = sizeOf(forces);
    if (size <= grip.cap * (1 + nearEnough)) break;
    const falling = links.reduce((sum, { stiffness }, i) => {
      const f = forces[i] as number;
      return sum + softened(stiffness, slack) * f * f;
    }, 0);
    slack += ((size / grip.cap - 1) * size * size) / falling;
    forces = at(slack);
  }
  return { forces, slack };
};

/** Force in a joint for its cap, were its nails not to give. */
export const strainOf = (frame: Frame, grip: Grip, u: Float64Array): number =>
  fullForce(frame, grip, u) / grip.cap;

/** Force in a joint whose nails hold, pounds. */
const fullForce = (frame: Frame, { links }: Grip, u: Float64Array): number => {
  let sum = 0;
  for (const n of links) {
    const link = frame.links[n] as Link;
    const force = link.stiffness * offOf(link, u);
    sum += force * force;
  }
  return Math.sqrt(sum);
};

/** How far a link is from its rest; what only pushes is never pulled. */
const offOf = ({ row, rest, acts }: Link, u: Float64Array): number => {
  const off = valueOf(row, u) - rest;
  return acts === 'push' ? Math.min(0, off) : off;
};

/** Adds what joints that gave still hold, and the force they keep. */
export const addGiven = ({ stiffness, load }: Equations, frame: Frame, given: Given): void => {
  for (const [grip, slip] of given) {
    const so = slippingOf(frame, grip, slip);
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

/** Forces in the links of a joint that gave, for moves near those it slipped to. */
export const forcesIn = (frame: Frame, grip: Grip, { slip, u }: Slipped): readonly number[] => {
  const { links, stiff, way, along, cap } = slippingOf(frame, grip, slip);
  const full = links.map(({ row, rest }, i) => (stiff[i] as number) * (valueOf(row, u) - rest));
  const over = full.reduce((sum, f, i) => sum + f * (way[i] as number), 0) - cap;
  return full.map((f, i) => f - ((stiff[i] as number) * (way[i] as number) * over) / along);
};

type Slipped = { readonly slip: Slip; readonly u: Float64Array };
