import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Attempt } from '../core/site/attempt';
import type { Level } from '../core/level/level';
import type { SiteState } from '../core/site/state';

/** Canonical JSON (RFC 8785) and its SHA-256: the same bytes on every engine for the same content. */
export const canonicalText = (value: unknown): string => canonicalize(value) ?? 'null';

export const digestOf = (value: unknown): string => bytesToHex(sha256(utf8ToBytes(canonicalText(value))));

/** Every number in a state lies on a grid of a thousandth of an inch (or crew-minute) before it is digested. */
const grid = 1000;

const onGrid = (value: unknown): unknown => {
  if (typeof value === 'number') return Math.round(value * grid) / grid + 0;
  if (Array.isArray(value)) return value.map(onGrid);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, onGrid(inner)]));
};

/** Fingerprint of the site as it stands. */
export const siteDigest = (site: SiteState): string => digestOf(onGrid(site));

/** Fingerprint of a level, so that a run made on another one is noticed. */
export const levelDigest = (level: Level): string => {
  const known = levelDigests.get(level) ?? digestOf(level);
  levelDigests.set(level, known);
  return known;
};
const levelDigests = new WeakMap<Level, string>();

/** Fingerprint of a run: where it began and what was done. */
export const attemptDigest = ({ level, seed, mode, steps }: Attempt): string =>
  digestOf({ level: levelDigest(level), seed, mode, actions: steps.map(({ action }) => action) });
