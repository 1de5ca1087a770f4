import type { Messages } from './messages';

/** What a job says otherwise, in the shape of the catalogue: whatever is left out stays as it is. */
export type OtherWords = Others<Omit<Messages, 'lang'>>;
type Others<T> = {
  readonly [K in keyof T]?: T[K] extends string | ((...given: never[]) => string) ? T[K] : Others<T[K]>;
};
