import type { Page } from 'playwright-core';

/** What is counted inside a page: the script of each frame, and draws of WebGL. */

type Counted = { readonly frames: number[]; draws: number };
type Counting = { readonly counted: Counted };

/** Given to a page before it loads. Script of a frame: all that is called back in it, ms. */
export const counting = (): void => {
  const counted: Counted = { frames: [], draws: 0 };
  Object.assign(window, { counted });
  const real = window.requestAnimationFrame.bind(window);
  let [last, spent] = [0, 0];
  window.requestAnimationFrame = (call) =>
    real((time) => {
      const began = performance.now();
      call(time);
      if (time !== last) {
        counted.frames.push(spent);
        [last, spent] = [time, 0];
      }
      spent += performance.now() - began;
    });
  for (const kind of ['WebGLRenderingContext', 'WebGL2RenderingContext'] as const)
    for (const name of ['drawArrays', 'drawElements'] as const) {
      const pen = window[kind].prototype as unknown as Record<string, (...given: unknown[]) => unknown>;
      const draw = pen[name] as (...given: unknown[]) => unknown;
      pen[name] = function (...given) {
        counted.draws++;
        return draw.apply(this, given);
      };
    }
};

export const countedIn = (page: Page): Promise<Counted> =>
  page.evaluate(() => (window as unknown as Counting).counted);

export const afresh = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const { counted } = window as unknown as Counting;
    counted.frames.length = 0;
    counted.draws = 0;
  });
