import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { launchBrowser } from './support/browser';
import { browserPath } from './support/chromium';

/** `npx tsx tests/browser/icons.ts`: the icons of assets/site/ as pictures, from the one that is drawn by hand. */

const folder = fileURLToPath(new URL('../../assets/site/', import.meta.url));

/** A whole icon keeps its round corners; a full one runs out to the edges, for systems that cut their own shape. */
const icons = [
  { name: 'icon-192.png', size: 192, full: false },
  { name: 'icon-512.png', size: 512, full: false },
  { name: 'icon-full-512.png', size: 512, full: true },
  { name: 'icon-full-180.png', size: 180, full: true },
] as const;

/** A mask may cut away a tenth at each edge: what counts lies inside. */
const within = 0.8;

const main = async (): Promise<void> => {
  const browser = await launchBrowser(await browserPath());
  const drawing = readFileSync(`${folder}icon.svg`, 'utf8');
  for (const { name, size, full } of icons) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const scale = full ? within : 1;
    await page.setContent(
      `<style>html{background:${full ? '#d9cdb3' : 'transparent'}} body{margin:0;display:grid;place-items:center;height:100vh}
      svg{width:${size * scale}px;height:${size * scale}px}</style>${drawing}`,
    );
    writeFileSync(`${folder}${name}`, await page.screenshot({ omitBackground: true }));
    await page.close();
  }
  await browser.close();
};

await main();
