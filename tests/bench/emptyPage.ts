import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { serveFolder } from '../../src/tt/serve/siteServer';

const configFile = fileURLToPath(new URL('../../vite.config.ts', import.meta.url));

/** The same engine with an empty scene and nothing else: what any page of it costs before a line of ours. */
const script = `
import { AUTO, Game, Scale, Scene } from 'phaser';
class Empty extends Scene { create() { requestAnimationFrame(() => { window.__tt = true; }); } }
new Game({ type: AUTO, parent: document.body, width: innerWidth, height: innerHeight,
  scale: { mode: Scale.NONE }, banner: false, audio: { noAudio: true }, scene: [new Empty('empty')],
  input: { mouse: false, touch: false, keyboard: false, gamepad: false } });
`;

/** Built with the site's own configuration, and served until closed. */
export const emptyPage = async (): Promise<{
  readonly base: string;
  readonly close: () => Promise<void>;
}> => {
  const [root, outDir] = ['page', 'built'].map((name) =>
    mkdtempSync(join(tmpdir(), `tack-and-true-${name}-`)),
  ) as [string, string];
  writeFileSync(join(root, 'main.js'), script);
  writeFileSync(
    join(root, 'index.html'),
    '<!doctype html>\n<html><head>\n<meta charset="utf-8">\n<title>-</title>\n</head>\n<body>\n<script type="module" src="./main.js"></script>\n</body></html>',
  );
  await build({
    configFile,
    root,
    publicDir: false,
    logLevel: 'error',
    mode: 'production',
    build: { outDir },
  });
  rmSync(root, { recursive: true });
  const { base, close } = await serveFolder(outDir, 0);
  return {
    base,
    close: async () => {
      await close();
      rmSync(outDir, { recursive: true });
    },
  };
};
