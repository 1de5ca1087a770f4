import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileAsked, serveFolder } from '../../src/tt/serve/siteServer';

/** The folder server: what it gives, what it refuses, and where it can be heard. */

type Served = Awaited<ReturnType<typeof serveFolder>>;
type Reply = { readonly status: number; readonly kind: string; readonly body: string };

const top = realpathSync(mkdtempSync(join(tmpdir(), 'served-')));
const folder = join(top, 'site');
let served: Served;

beforeAll(async () => {
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(folder, 'index.html'), '<p>page</p>');
  writeFileSync(join(folder, 'assets', 'a.js'), 'export {};');
  writeFileSync(join(folder, 'assets', 'b.woff2'), 'font');
  writeFileSync(join(folder, 'assets', 'c.css'), 'p{}');
  writeFileSync(join(folder, 'assets', 'd.odd'), 'odd');
  writeFileSync(join(top, 'secret.txt'), 'secret');
  mkdirSync(join(top, 'site-next'));
  writeFileSync(join(top, 'site-next', 'e.txt'), 'secret');
  symlinkSync(join(top, 'secret.txt'), join(folder, 'link.txt'));
  served = await serveFolder(folder, 0);
});
afterAll(async () => {
  await served.close();
  rmSync(top, { recursive: true });
});

/** Sends the path just as it is written: a URL object would tidy it first. */
const ask = (
  path: string,
  options: { readonly method?: string; readonly host?: string } = {},
): Promise<Reply> =>
  new Promise((done, failed) => {
    const { hostname, port } = new URL(served.base);
    const headers = options.host === undefined ? {} : { host: options.host };
    const sent = request({ hostname, port, path, method: options.method ?? 'GET', headers }, (reply) => {
      let body = '';
      reply.on('data', (chunk: Buffer) => (body += chunk.toString()));
      reply.on('end', () =>
        done({ status: reply.statusCode ?? 0, kind: reply.headers['content-type'] ?? '', body }),
      );
    });
    sent.on('error', failed).end();
  });

describe('the folder server', () => {
  it.each([
    ['/', 'text/html; charset=utf-8', '<p>page</p>'],
    ['/index.html?lang=es', 'text/html; charset=utf-8', '<p>page</p>'],
    ['/assets/a.js', 'text/javascript; charset=utf-8', 'export {};'],
    ['/assets/b.woff2', 'font/woff2', 'font'],
    ['/assets/c.css', 'text/css; charset=utf-8', 'p{}'],
    ['/assets/d.odd', 'application/octet-stream', 'odd'],
    ['/assets/../index.html', 'text/html; charset=utf-8', '<p>page</p>'],
  ])('gives %s as %s', async (path, kind, body) => {
    expect(await ask(path)).toEqual({ status: 200, kind, body });
  });

  it.each([
    ['up', '/../secret.txt'],
    ['up, coded', '/%2e%2e/secret.txt'],
    ['up, slash coded', '/..%2fsecret.txt'],
    ['up from within', '/assets/../../secret.txt'],
    ['backslash', '/..%5csecret.txt'],
    ['a folder whose name only begins alike', '/../site-next/e.txt'],
    ['a link that leads out', '/link.txt'],
    ['a folder', '/assets'],
    ['a folder without a page', '/assets/'],
    ['nothing there', '/none.js'],
    ['broken coding', '/%e0%a4%a'],
    ['a zero byte', '/index.html%00.js'],
    ['a whole address', 'http://example.com/index.html'],
  ])('refuses %s: %s', async (_, path) => {
    const { status, body } = await ask(path);
    expect({ status, body }).toEqual({ status: 404, body: '404\n' });
  });

  it('answers no write, and HEAD without a body', async () => {
    expect((await ask('/', { method: 'POST' })).status).toBe(405);
    expect(await ask('/', { method: 'HEAD' })).toEqual({
      status: 200,
      kind: 'text/html; charset=utf-8',
      body: '',
    });
  });

  it('answers nobody who asked for another host', async () => {
    expect((await ask('/', { host: 'roofs.example' })).status).toBe(404);
    expect((await ask('/', { host: 'localhost:1234' })).status).toBe(200);
  });

  it('takes another port when its own is taken', async () => {
    const port = Number(new URL(served.base).port);
    const second = await serveFolder(folder, port);
    expect(new URL(second.base).port).not.toBe(String(port));
    expect(await (await fetch(second.base)).text()).toBe('<p>page</p>');
    await second.close();
    await expect(fetch(second.base)).rejects.toThrow();
  });

  it('listens on loopback and nowhere else', async () => {
    const port = Number(new URL(served.base).port);
    const heard = await new Promise<boolean>((done) => {
      const socket = connect({ host: '127.0.0.2', port }, () => done(true)).on('error', () => done(false));
      socket.on('close', () => socket.destroy());
    });
    expect(heard).toBe(false);
  });

  it('finds files without a server too', () => {
    expect(fileAsked(folder, '/assets/a.js')).toBe(join(folder, 'assets', 'a.js'));
    expect(fileAsked(folder, '/../secret.txt')).toBeUndefined();
  });
});
