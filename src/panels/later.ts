/** Small pictures wait until the page stands, and come one after the other, so that a press between two is not kept waiting. */

const queue: (() => void)[] = [];

/** What is large, or has to be there first, comes before them, ms. */
const afterLarge = 30;

/** Draws when there is nothing before it. Returns how to take it back. */
export const later = (draw: () => void): (() => void) => {
  queue.push(draw);
  if (queue.length === 1) setTimeout(drain, afterLarge);
  return () => {
    const i = queue.indexOf(draw);
    if (i >= 0) queue.splice(i, 1);
  };
};

const drain = (): void => {
  queue.shift()?.();
  if (queue.length > 0) setTimeout(drain);
};

/** The same once the thing is in sight, or nearly. */
export const inSight = (thing: Element, draw: () => void): (() => void) => {
  let back = (): void => undefined;
  const watch = new IntersectionObserver(
    (seen) => {
      if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
      watch.disconnect();
      back = later(draw);
    },
    { rootMargin: nearly },
  );
  watch.observe(thing);
  return () => {
    watch.disconnect();
    back();
  };
};

/** Drawn before it is scrolled to. */
const nearly = '300px';
