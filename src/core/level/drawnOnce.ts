import type { Level } from './level';
import type { Drawn } from './planted';

/** The same draw, kept for the seed asked for last: a run asks for each place thousands of times. */
export const drawnOnce = <T>(
  draw: (drawn: Drawn, place: string) => T,
): ((drawn: Drawn, place: string) => T) => {
  const kept = new WeakMap<Level, { readonly seed: number; readonly places: Map<string, T> }>();
  const placesOf = ({ level, seed }: Drawn): Map<string, T> => {
    const known = kept.get(level);
    if (known?.seed === seed) return known.places;
    const places = new Map<string, T>();
    kept.set(level, { seed, places });
    return places;
  };
  return (drawn, place) => {
    const places = placesOf(drawn);
    const known = places.get(place);
    if (known !== undefined) return known;
    const fresh = draw(drawn, place);
    places.set(place, fresh);
    return fresh;
  };
};
