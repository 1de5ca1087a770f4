import { sameData } from './sameData';
import type { Standing } from './standing';
import type { SiteState } from './state';

/** Frames that were solved: found again by the site, by the parts of it that count, or by what these parts make. */

/** What a site's frame was kept under. A frame that was given up is solved again. */
type Known<T> = { readonly standing: Standing; readonly kept: Kept<T> };
type Kept<T> = { readonly gable: unknown; frame: T | undefined };

type Solver<G, T> = {
  /** Plain data of all that a frame is made of. */
  readonly gableOf: (standing: Standing) => G;
  readonly solve: (gable: G) => T;
  readonly linksIn: (frame: T) => number;
};

/** Solves each frame once while it is kept: asking before the deed, doing it and scoring it cost one solution. */
export const keptFrames = <G, T>({
  gableOf,
  solve,
  linksIn,
}: Solver<G, T>): ((standing: Standing) => T) => {
  const bySite = new WeakMap<SiteState, Known<T>>();
  const byJoints = new WeakMap<SiteState['joints'], Known<T>>();
  const frames = latestFrames(linksIn);
  const solvedAs = (gable: G): Kept<T> => {
    const last = frames.madeOf(gable);
    if (last) return last;
    const kept = { gable, frame: solve(gable) };
    frames.add(kept);
    return kept;
  };
  const keptFor = (standing: Standing): Kept<T> => {
    const { site } = standing;
    const near = bySite.get(site);
    if (near && holds(near, standing)) return near.kept;
    const alike = byJoints.get(site.joints);
    const same = alike && holds(alike, standing) && sameParts(alike.standing.site, site);
    const known = same ? alike : { standing, kept: solvedAs(gableOf(standing)) };
    bySite.set(site, known);
    byJoints.set(site.joints, known);
    return known.kept;
  };
  return (standing) => keptFor(standing).frame as T;
};

type Frames<G, T> = {
  readonly madeOf: (gable: G) => Kept<T> | undefined;
  readonly add: (kept: Kept<T>) => void;
};

/** So many links of frames are kept and the oldest given up first: about what one whole run of a small roof makes. */
const mostLinks = 60_000;
/** So many of the latest are compared: what was asked about before a deed, and what stood before it. */
const compared = 3;

const latestFrames = <G, T>(linksIn: (frame: T) => number): Frames<G, T> => {
  const all: Kept<T>[] = [];
  let links = 0;
  const countOf = ({ frame }: Kept<T>): number => (frame ? linksIn(frame) : 0);
  return {
    // A rafter that is only laid up and a tie without nails change the site and not what stands.
    madeOf: (gable) => {
      for (let i = all.length - 1; i >= Math.max(0, all.length - compared); i--)
        if (sameData(all[i]?.gable, gable)) return all[i];
      return undefined;
    },
    add: (kept) => {
      all.push(kept);
      links += countOf(kept);
      while (links > mostLinks && all.length > 1) {
        const oldest = all.shift() as Kept<T>;
        links -= countOf(oldest);
        oldest.frame = undefined;
      }
    },
  };
};

const holds = <T>({ standing, kept }: Known<T>, asked: Standing): boolean =>
  kept.frame !== undefined && standing.level === asked.level && standing.seed === asked.seed;

const sameParts = (a: SiteState, b: SiteState): boolean =>
  a.members === b.members &&
  a.joints === b.joints &&
  a.rests === b.rests &&
  a.ridge === b.ridge &&
  a.mends === b.mends &&
  a.trims === b.trims &&
  a.splits === b.splits &&
  (a.sling === undefined) === (b.sling === undefined);
