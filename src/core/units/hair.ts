/**
 * Two lengths nearer than this are one length: what rounding leaves behind on a roof of the longest allowed length.
 * Inches; ours. Far under a saw's reach and far over the last bit of 2,000,000.
 */
export const hair = 1e-6;

/** `a` is truly more than `b`, not just by rounding. */
export const isOver = (a: number, b: number): boolean => a > b + hair;

/** Whole hairs in a length: what to put lengths in order by, so that equal ones stay in theirs whatever the last bit says. */
export const hairsIn = (length: number): number => Math.round(length / hair);
