import { lasting, linksOf, pressedInto } from './assembly';
import { factored, solved, type Factored } from './factor';
import { addForce, valueOf, type Frame, type Link } from './frame';
import type { Given } from './given';
import { copied, openRoom, type Equations } from './skyline';

/** A frame at rest on the faces that touch. */
export type Rest = {
  readonly u: Float64Array;
  readonly load: Float64Array;
  /** What always acts; faces that touch come on top. */
  readonly base: Equations;
  /** 1 for every pushing link that is closed. */
  readonly closed: Uint8Array;
  readonly factors: Factored;
  readonly passes: number;
};

/** All contacts that are wrong switch together this often; from there on one by one, lowest first. */
const passesTogether = 20;
/** Passes one by one before a frame counts as never coming to rest. */
const passesAlone = 200;

/**
 * Finds which faces touch: those that part let go, those that would pass through each other hold. Where all faces clearly
 * touch or clearly do not, there is only one such rest (a strictly convex problem), so the search may begin from where the
 * same faces last came to rest; else it begins from the frame alone, and ends the same whatever was solved before.
 */
export const touching = (frame: Frame, given: Given): Rest => {
  const base = lasting(frame, given, roomOfBase);
  const search = { frame, base, faces: facesOf(frame, linksOf(given)) };
  const { faces } = search;
  const known = faces.some((i) => touchedLast(frame.links[i] as Link) !== undefined);
  const warm = known ? cameToRest(search, (link) => touchedLast(link) ?? touchesAtFirst(link)) : undefined;
  const rest = warm && isClear(search, warm) ? warm : cameToRest(search, touchesAtFirst);
  for (const i of faces) remember(frame.links[i] as Link, rest.closed[i] === 1);
  return rest;
};

/** What one search leaves in them is used up before the next begins. */
const roomOfBase = openRoom();
const roomOfMatrix = openRoom();

/** Whether the face of that name touched when a frame last came to rest. */
const touchedLast = ({ joint, what }: Link): boolean | undefined => lastClosed.get(joint)?.get(what);

const remember = ({ joint, what }: Link, closed: boolean): void => {
  const known = lastClosed.get(joint);
  if (known) known.set(what, closed);
  else lastClosed.set(joint, new Map([[what, closed]]));
};
const lastClosed = new Map<string, Map<string, boolean>>();

/** Links that only push, by number, but for those of joints that gave. */
const facesOf = ({ links }: Frame, gave: ReadonlySet<number>): readonly number[] => {
  const faces: number[] = [];
  for (let i = 0; i < links.length; i++) if (links[i]?.acts === 'push' && !gave.has(i)) faces.push(i);
  return faces;
};

type Search = { readonly frame: Frame; readonly base: Equations; readonly faces: readonly number[] };

const cameToRest = ({ frame, base, faces }: Search, touchesFirst: (link: Link) => boolean): Rest => {
  const closed = new Uint8Array(frame.links.length);
  for (const i of faces) closed[i] = touchesFirst(frame.links[i] as Link) ? 1 : 0;
  const matrix = copied(base.stiffness, roomOfMatrix);
  let from = 0;
  for (let pass = 1; ; pass++) {
    pressedInto(matrix, { frame, base, closed, from });
    const factors = factored(matrix, from);
    const { loose } = factors;
    const load = loadOn(frame, base, closed);
    const u = loose === undefined ? solved(factors, load) : new Float64Array(frame.free);
    const wrong =
      loose === undefined
        ? faces.filter((i) => opening(frame.links[i] as Link, u) > 0 === (closed[i] === 1))
        : faces.filter((i) => closed[i] === 0);
    const over = pass >= passesTogether + passesAlone || (loose !== undefined && pass > passesTogether);
    if (wrong.length === 0 || over) return { u, load, base, factors, closed, passes: pass };
    const turning = pass < passesTogether ? wrong : wrong.slice(0, 1);
    for (const i of turning) closed[i] = closed[i] === 1 ? 0 : 1;
    from = Math.min(firstOf(frame, turning), loose ?? frame.free);
  }
};

/** A face this near to touching could be told either way, inches. Ours: far above what rounding does. */
const doubtful = 1e-6;

const isClear = ({ frame, faces }: Search, { u, factors, closed, passes }: Rest): boolean =>
  factors.loose === undefined &&
  passes < passesTogether &&
  faces.every((i) => {
    const off = opening(frame.links[i] as Link, u);
    return closed[i] === 1 ? off < -doubtful : off > doubtful;
  });

/** A face that stands off no more than this is taken to be pressed home at first, inches. Ours: it only saves passes. */
const littleApart = 0.004;

const touchesAtFirst = ({ apart, rest }: Link): boolean => (apart ?? -rest) <= littleApart;

/** First unknown that any of some links touches: what is factored before it still holds. */
const firstOf = (frame: Frame, links: readonly number[]): number => {
  let first = frame.free;
  for (const i of links) {
    const { dofs } = (frame.links[i] as Link).row;
    for (let k = 0; k < dofs.length; k++) {
      const dof = dofs[k] as number;
      if (dof >= 0 && dof < first) first = dof;
    }
  }
  return first;
};

/** How far a face stands off what it rests on; below 0 it presses. */
export const opening = ({ row, rest }: Link, u: Float64Array): number => valueOf(row, u) - rest;

/** What always acts as a load, and what faces that touch add to it where they rest off the figured place. */
export const loadOn = (frame: Frame, base: Equations, closed: Uint8Array): Float64Array => {
  const load = base.load.slice();
  for (let i = 0; i < closed.length; i++) {
    if (closed[i] !== 1) continue;
    const { row, stiffness, rest } = frame.links[i] as Link;
    if (rest !== 0) addForce(load, row, stiffness * rest);
  }
  return load;
};

/** Pull (+) or push (−) in a link, pounds or inch-pounds. */
export const forceIn = (link: Link, u: Float64Array): number => link.stiffness * opening(link, u);
