import { createServer, type Server } from 'node:http';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { extname, join, normalize } from 'node:path';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';

/** Builds the site once, serves it on loopback, and unpacks one headless browser from its npm package. */

declare module 'vitest' {
  export interface ProvidedContext {
    base: string;
    browser: string;
  }
}

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
};

export const serveFolder = (folder: string): Promise<{ readonly server: Server; readonly base: string }> =>
  new Promise((done) => {
    const server = createServer((request, response) => {
      const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://x').pathname));
      const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
      const there = file.startsWith(folder) && existsSync(file) && statSync(file).isFile();
      response.writeHead(there ? 200 : 404, { 'content-type': kinds[extname(file)] ?? 'application/octet-stream' });
      response.end(there ? readFileSync(file) : undefined);
    }).listen(0, '127.0.0.1', () => {
      const address = server.address();
      done({ server, base: `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}/` });
    });
  });

/** The package unpacks its own system libraries only when it believes to run where they are missing. */
export const browserPath = async (): Promise<string> => {
  if (process.env['CHROMIUM']) return process.env['CHROMIUM'];
  process.env['AWS_LAMBDA_JS_RUNTIME'] = 'nodejs22.x';
  const { default: chromium } = await import('@sparticuz/chromium');
  return chromium.executablePath();
};

export default async (project: TestProject): Promise<() => Promise<void>> => {
  await build({ configFile: 'vite.config.ts', logLevel: 'error' });
  const { server, base } = await serveFolder(join(process.cwd(), 'dist'));
  project.provide('base', base);
  project.provide('browser', await browserPath());
  return async () => {
    await new Promise((closed) => server.close(closed));
  };
};
