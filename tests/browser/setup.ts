import type { TestProject } from 'vitest/node';
import { builtSite } from './support/builtSite';
import { browserPath } from './support/chromium';

/** Once before all browser tests: the site is built and served on loopback, and one browser is unpacked. */

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the served site, with a trailing slash. */
    readonly base: string;
    /** Path of the browser to drive. */
    readonly browser: string;
  }
}

let close: () => Promise<void> = () => Promise.resolve();

/** Called by the test runner before the first test; two workers unpacking at once would get in each other's way. */
export const setup = async (project: TestProject): Promise<void> => {
  project.provide('browser', await browserPath());
  const site = await builtSite();
  close = site.close;
  project.provide('base', site.base);
};

/** Called by the test runner after the last test. */
export const teardown = (): Promise<void> => close();
