/** The headless browser that the tests drive: unpacked from its npm package, no root and no system packages needed. */

/** Where the browser is. `CHROMIUM` in the environment names another one to try. */
export const browserPath = async (): Promise<string> => {
  const other = process.env['CHROMIUM'];
  if (other !== undefined && other !== '') return other;
  // The package unpacks the system libraries it brings only where it believes them missing: in this run time.
  process.env['AWS_LAMBDA_JS_RUNTIME'] = 'nodejs22.x';
  const { default: chromium } = await import('@sparticuz/chromium');
  return chromium.executablePath();
};

/** The browser's own sandbox cannot start for root; nothing but our own pages is ever opened in it. */
export const browserArguments = (): readonly string[] => (process.getuid?.() === 0 ? ['--no-sandbox'] : []);
