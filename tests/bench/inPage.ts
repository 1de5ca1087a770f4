import type { Page } from 'playwright-core';

/** Draws of WebGL, counted inside a page. */

type Counting = { counted: number };

/** Given to a page before it loads. */
export const counting = (): void => {
  const page = window as unknown as Counting;
  page.counted = 0;
  for (const kind of ['WebGLRenderingContext', 'WebGL2RenderingContext'] as const)
    for (const name of ['drawArrays', 'drawElements'] as const) {
      const pen = window[kind].prototype as unknown as Record<string, (...given: unknown[]) => unknown>;
      const draw = pen[name] as (...given: unknown[]) => unknown;
      pen[name] = function (...given) {
        page.counted++;
        return draw.apply(this, given);
      };
    }
};

export const drawsIn = (page: Page): Promise<number> =>
  page.evaluate(() => (window as unknown as Counting).counted);

export const afresh = (page: Page): Promise<void> =>
  page.evaluate(() => {
    (window as unknown as Counting).counted = 0;
  });
