import { addLink, lasting, type Equations, type Given } from './assembly';
import { factored, factoredAgain, solved, type Factored } from './factor';
import { valueOf, type Frame, type Link } from './frame';
import { copied } from './skyline';

/** A frame at rest on the faces that touch. */
export type Rest = Equations & {
  readonly u: Float64Array;
  /** 1 for every pushing link that is closed. */
  readonly closed: Uint8Array;
  readonly factors: Factored;
  readonly passes: number;
};

/** All contacts that are wrong switch together this often; from there on one by one, lowest first. */
const passesTogether = 20;
/** Passes one by one before a frame counts as never coming to rest. */
const passesAlone = 200;

/** Finds which faces touch: those that part let go, those that would pass through each other hold. */
export const touching = (frame: Frame, given: Given): Rest => {
  const base = lasting(frame, given);
  const faces = frame.links.flatMap(({ acts }, i) => (acts === 'push' ? [i] : []));
  let closed = new Uint8Array(frame.links.length);
  for (const i of faces) closed[i] = (frame.links[i] as Link).rest >= 0 ? 1 : 0;
  let before: Before | undefined;
  for (let pass = 1; ; pass++) {
    const rest = pressed(frame, base, { closed, before });
    const wrong =
      rest.factors.loose === undefined
        ? faces.filter((i) => opening(frame.links[i] as Link, rest.u) > 0 === (closed[i] === 1))
        : faces.filter((i) => closed[i] === 0);
    const over =
      pass >= passesTogether + passesAlone || (rest.factors.loose !== undefined && pass > passesTogether);
    if (wrong.length === 0 || over) return { ...rest, closed, passes: pass };
    closed = closed.slice();
    const turning = pass < passesTogether ? wrong : wrong.slice(0, 1);
    for (const i of turning) closed[i] = closed[i] === 1 ? 0 : 1;
    before = { factors: rest.factors, from: firstOf(frame, turning) };
  }
};

/** What was factored last, and the first unknown from which it no longer holds. */
type Before = { readonly factors: Factored; readonly from: number };

/** First unknown that any of some links touches. */
const firstOf = (frame: Frame, links: readonly number[]): number => {
  let first = frame.free;
  for (const i of links) {
    for (const dof of (frame.links[i] as Link).row.dofs) if (dof >= 0 && dof < first) first = dof;
  }
  return first;
};

/** How far a face stands off what it rests on; below 0 it presses. */
export const opening = ({ row, rest }: Link, u: Float64Array): number => valueOf(row, u) - rest;

const pressed = (
  frame: Frame,
  base: Equations,
  { closed, before }: { readonly closed: Uint8Array; readonly before: Before | undefined },
): Omit<Rest, 'closed' | 'passes'> => {
  const stiffness = copied(base.stiffness);
  const load = base.load.slice();
  closed.forEach((on, i) => {
    if (on === 1) addLink({ stiffness, load }, frame.links[i] as Link);
  });
  const work = copied(stiffness);
  const factors = before ? factoredAgain(work, before.factors, before.from) : factored(work);
  const u = factors.loose === undefined ? solved(factors, load) : new Float64Array(frame.free);
  return { u, load, stiffness, factors };
};

/** Pull (+) or push (−) in a link, pounds or inch-pounds. */
export const forceIn = (link: Link, u: Float64Array): number => link.stiffness * opening(link, u);
