import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'vite';
import { serveFolder } from '../../../src/tt/serve/siteServer';

const configFile = fileURLToPath(new URL('../../../vite.config.ts', import.meta.url));

/** The site built afresh, away from dist so that nobody's served copy changes under them, and served until closed. */
export const builtSite = async (
  plugins: readonly Plugin[] = [],
): Promise<{
  readonly base: string;
  /** Where its files are. */
  readonly folder: string;
  readonly close: () => Promise<void>;
}> => {
  const outDir = mkdtempSync(join(tmpdir(), 'tack-and-true-'));
  // The test runner sets this for itself; a site for people is built without it.
  const mode = process.env['NODE_ENV'];
  process.env['NODE_ENV'] = 'production';
  await build({
    configFile,
    logLevel: 'error',
    mode: 'production',
    build: { outDir },
    plugins: [...plugins],
  });
  if (mode !== undefined) process.env['NODE_ENV'] = mode;
  const { base, close } = await serveFolder(outDir, 0);
  return {
    base,
    folder: outDir,
    close: async () => {
      await close();
      rmSync(outDir, { recursive: true });
    },
  };
};
