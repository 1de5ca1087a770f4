import { options } from 'preact';

/**
 * A key may come before the last one has been drawn. Drawing at once, what is shown is always what the next key acts
 * on. Effects are let run to their end first: a draw in the middle of them would begin them twice and end them once.
 */
export const drawAtOnce = (): void => {
  let amongEffects = false;
  options.debounceRendering = (draw) => (amongEffects ? queueMicrotask(draw) : draw());
  options.requestAnimationFrame = (effects) =>
    afterFrame(() => {
      amongEffects = true;
      try {
        effects();
      } finally {
        amongEffects = false;
      }
    });
};

/** Longest wait for a frame, ms; a page that is not looked at gets none. Ours. */
const longest = 35;

const afterFrame = (call: () => void): void => {
  const done = (): void => {
    clearTimeout(late);
    cancelAnimationFrame(frame);
    setTimeout(call);
  };
  const late = setTimeout(done, longest);
  const frame = requestAnimationFrame(done);
};
