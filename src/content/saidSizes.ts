import type { Complaint } from './complaint';

/** A length in the units of the file it was read from, as a complaint says it. */
export type Show = (inches: number) => string;

export const when = (bad: boolean, found: () => Complaint): readonly Complaint[] => (bad ? [found()] : []);
