import { chromium, type Browser, type Page } from 'playwright-core';
import { browserArguments } from './chromium';

/** The screen sizes that count, in CSS pixels: a desk, a phone upright, the same phone on its side. */
export const sizes = {
  desk: { width: 1280, height: 800 },
  phone: { width: 390, height: 844 },
  side: { width: 844, height: 390 },
} as const;

export type SizeName = keyof typeof sizes;

/** More that people have: a small phone, a tablet, large screens, and a desk zoomed to 400 % (WCAG 2.2, 1.4.10). */
export const moreSizes = {
  small: { width: 360, height: 640 },
  tablet: { width: 768, height: 1024 },
  full: { width: 1920, height: 1080 },
  huge: { width: 3840, height: 2160 },
  zoomed: { width: 320, height: 256 },
} as const;

export type AnySize = SizeName | keyof typeof moreSizes;

/** How a page is opened: which screen, and what light the machine prefers. */
export type Opening = {
  readonly size?: AnySize;
  readonly theme?: 'day' | 'night';
};

/** A page, and what should not happen on it, collected while it is open. */
export type Opened = {
  readonly page: Page;
  /** Errors on the console and errors nobody caught. */
  readonly errors: readonly string[];
  /** Addresses asked for so far, in order; data and blob addresses never leave the page and are left out. */
  readonly requests: readonly string[];
  readonly close: () => Promise<void>;
};

export const launchBrowser = (executablePath: string): Promise<Browser> =>
  chromium.launch({ executablePath, args: [...browserArguments()], headless: true });

const touched: readonly AnySize[] = ['phone', 'side', 'small', 'tablet'];

const leavesThePage = (url: string): boolean => !/^(data|blob):/.test(url);

/** Opens an address in a context of its own, so that nothing stored by one test is found by another. */
export const openPage = async (browser: Browser, url: string, opening: Opening = {}): Promise<Opened> => {
  const { size = 'desk', theme = 'day' } = opening;
  const context = await browser.newContext({
    viewport: { ...sizes, ...moreSizes }[size],
    hasTouch: touched.includes(size),
    reducedMotion: 'reduce',
    colorScheme: theme === 'day' ? 'light' : 'dark',
  });
  const page = await context.newPage();
  const errors: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => void (message.type() === 'error' && errors.push(message.text())));
  page.on('pageerror', (error) => void errors.push(error.message));
  page.on('request', (request) => void (leavesThePage(request.url()) && requests.push(request.url())));
  await page.goto(url);
  await ready(page);
  return { page, errors, requests, close: () => context.close() };
};

/** Waits until the page says that it can be used, its fonts are there, and nothing more is being fetched. */
export const ready = async (page: Page): Promise<void> => {
  await page.waitForFunction(() => '__tt' in window);
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await page.waitForLoadState('networkidle');
};
