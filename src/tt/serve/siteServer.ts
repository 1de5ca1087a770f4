import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { createReadStream, realpathSync, statSync } from 'node:fs';
import { extname, join, sep } from 'node:path';

/** A small server of one folder, for this machine alone: files only, nothing outside the folder, nothing written. */

/** The only address it ever listens on. */
export const loopback = '127.0.0.1';

/** What browsers are told a file is, by its ending. Anything else is only bytes. */
const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.mp3': 'audio/mpeg',
  '.wasm': 'application/wasm',
};

/** The path a request asks for, or undefined when it is not one that can be meant. */
const askedPath = (url: string): string | undefined => {
  try {
    const path = decodeURIComponent(url.replace(/[?#].*$/s, ''));
    return path.startsWith('/') && !path.includes('\0') ? path : undefined;
  } catch {
    return undefined;
  }
};

/** The file a request asks for: inside the folder once every link is followed, or undefined. */
export const fileAsked = (folder: string, url: string): string | undefined => {
  const path = askedPath(url);
  if (path === undefined) return undefined;
  try {
    const file = realpathSync(join(folder, path.endsWith('/') ? `${path}index.html` : path));
    return file.startsWith(realpathSync(folder) + sep) && statSync(file).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
};

/** A page elsewhere may point its own name at this machine; only those who asked this machine are answered. */
const askedHere = ({ headers }: IncomingMessage): boolean =>
  /^(127\.0\.0\.1|localhost)(:\d+)?$/.test(headers.host ?? '');

const refuse = (response: ServerResponse, status: number): void => {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' });
  response.end(`${status}\n`);
};

const answer = (folder: string, request: IncomingMessage, response: ServerResponse): void => {
  const { method = '' } = request;
  if (method !== 'GET' && method !== 'HEAD') return refuse(response, 405);
  const file = askedHere(request) ? fileAsked(folder, request.url ?? '') : undefined;
  if (file === undefined) return refuse(response, 404);
  response.writeHead(200, {
    'content-type': kinds[extname(file)] ?? 'application/octet-stream',
    'content-length': statSync(file).size,
    'cache-control': 'no-cache',
    'x-content-type-options': 'nosniff',
  });
  if (method === 'HEAD') response.end();
  else
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response);
};

const portOf = (server: Server): number => {
  const address = server.address();
  return typeof address === 'object' && address !== null ? address.port : 0;
};

const listenOn = (server: Server, port: number): Promise<number> =>
  new Promise((listening, failed) => {
    server.once('error', failed);
    server.listen(port, loopback, () => {
      server.off('error', failed);
      listening(portOf(server));
    });
  });

const taken = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && (error.code === 'EADDRINUSE' || error.code === 'EACCES');

/** Serves a folder on the port, or on any free one when it is taken. Says where, and how to stop. */
export const serveFolder = async (
  folder: string,
  port: number,
): Promise<{ readonly base: string; readonly close: () => Promise<void> }> => {
  const server = createServer((request, response) => answer(folder, request, response));
  const heard = await listenOn(server, port).catch((error: unknown) => {
    if (taken(error)) return listenOn(server, 0);
    throw error;
  });
  const close = (): Promise<void> =>
    new Promise((closed) => {
      server.close(() => closed());
      server.closeAllConnections();
    });
  return { base: `http://${loopback}:${heard}/`, close };
};
