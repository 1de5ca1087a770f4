import { sameData } from './sameData';
import type { Standing } from './standing';
import type { SiteState } from './state';

/** Frames that were solved: found again by the site, by the parts of it that count, or by what these parts make. */

/** What a site's frame is kept under. */
type Known = { readonly standing: Standing; readonly key: object };

type Solver<G, T> = {
  /** Plain data of all that a frame is made of. */
  readonly gableOf: (standing: Standing) => G;
  readonly solve: (gable: G) => T;
  readonly linksIn: (frame: T) => number;
};

/** Solves each frame once while it is kept: asking before the deed, doing it and scoring it cost one solution. */
export const keptFrames = <G, T>({ gableOf, solve, linksIn }: Solver<G, T>): ((standing: Standing) => T) => {
  const bySite = new WeakMap<SiteState, Known>();
  const byJoints = new WeakMap<SiteState['joints'], Known>();
  const frames = latestFrames<G, T>(linksIn);
  const knownBefore = (standing: Standing): Known | undefined => {
    const { site } = standing;
    const near = bySite.get(site);
    if (near && sameRoof(near.standing, standing)) return near;
    const alike = byJoints.get(site.joints);
    return alike && sameRoof(alike.standing, standing) && sameParts(alike.standing.site, site)
      ? alike
      : undefined;
  };
  const remember = (known: Known, site: SiteState): void => {
    bySite.set(site, known);
    byJoints.set(site.joints, known);
  };
  return (standing) => {
    const before = knownBefore(standing);
    const found = before && frames.get(before.key);
    if (found) {
      remember(before, standing.site);
      return found;
    }
    const { key, frame } = frames.of(gableOf(standing), solve);
    remember({ standing, key }, standing.site);
    return frame;
  };
};

type Kept<G, T> = { readonly key: object; readonly gable: G; readonly frame: T };

type Frames<G, T> = {
  readonly get: (key: object) => T | undefined;
  /** The frame of a gable: one of the latest, or a new one. */
  readonly of: (gable: G, solve: (gable: G) => T) => Kept<G, T>;
};

/** So many links of frames are kept and the oldest given up first: about what one whole run of a small roof makes. */
const mostLinks = 60_000;
/** So many of the latest are compared: what was asked about before a deed, and what stood before it. */
const compared = 3;

const latestFrames = <G, T>(linksIn: (frame: T) => number): Frames<G, T> => {
  const byKey = new Map<object, T>();
  const all: Kept<G, T>[] = [];
  let links = 0;
  // A rafter that is only laid up and a tie without nails change the site and not what stands.
  const alike = (gable: G): Kept<G, T> | undefined => {
    for (let i = all.length - 1; i >= Math.max(0, all.length - compared); i--)
      if (sameData(all[i]?.gable, gable)) return all[i];
    return undefined;
  };
  const add = (kept: Kept<G, T>): Kept<G, T> => {
    all.push(kept);
    byKey.set(kept.key, kept.frame);
    links += linksIn(kept.frame);
    while (links > mostLinks && all.length > 1) {
      const oldest = all.shift() as Kept<G, T>;
      byKey.delete(oldest.key);
      links -= linksIn(oldest.frame);
    }
    return kept;
  };
  return {
    get: (key) => byKey.get(key),
    of: (gable, solve) => alike(gable) ?? add({ key: {}, gable, frame: solve(gable) }),
  };
};

const sameRoof = (a: Standing, b: Standing): boolean => a.level === b.level && a.seed === b.seed;

const sameParts = (a: SiteState, b: SiteState): boolean =>
  a.members === b.members &&
  a.joints === b.joints &&
  a.rests === b.rests &&
  a.ridge === b.ridge &&
  a.mends === b.mends &&
  a.trims === b.trims &&
  a.splits === b.splits &&
  (a.sling === undefined) === (b.sling === undefined);
