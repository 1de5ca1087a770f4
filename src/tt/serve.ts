import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { serveFolder } from './serve/siteServer';
import type { Verb } from './verbs';

/** Where the site is served unless told otherwise; any free port when this one is taken. Ours, of no meaning. */
const usualPort = 4180;

/** Where `npm run build` puts the site. */
const built = fileURLToPath(new URL('../../dist', import.meta.url));

const portAsked = (args: readonly string[]): number | undefined => {
  const { port } = parseArgs({ args: [...args], options: { port: { type: 'string' } } }).values;
  if (port === undefined) return usualPort;
  return /^\d{1,5}$/.test(port) && Number(port) <= 65_535 ? Number(port) : undefined;
};

const no = (line: string): 2 => {
  process.stderr.write(`tt serve: ${line}\n`);
  return 2;
};

const untilStopped = (): Promise<void> =>
  new Promise((stop) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => stop());
  });

/** `serve [--port N]`: serves the built site to this machine alone until stopped; the address is the only line on stdout. */
export const serveVerb: Verb = async (args) => {
  const port = portAsked(args);
  if (port === undefined) return no('--port: is not a port (0 to 65535; 0 takes any free one)');
  if (!existsSync(join(built, 'index.html'))) return no('dist: nothing is built there (npm run build)');
  const { base, close } = await serveFolder(built, port);
  process.stdout.write(`${base}\n`);
  await untilStopped();
  await close();
  return 0;
};
