import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser } from 'playwright-core';

const { resolve } = createRequire(import.meta.url);
const text = (path: string): string => readFileSync(resolve(path), 'utf8');

type Size = readonly [width: number, height: number];

/** A reader of PDFs in a page of its own, which tells width and height of each page in whole points. */
export const pdfReader = async (browser: Browser): Promise<(pdf: Buffer) => Promise<readonly Size[]>> => {
  const page = await browser.newPage();
  const parts = [text('pdfjs-dist/build/pdf.min.mjs'), text('pdfjs-dist/build/pdf.worker.min.mjs')];
  await page.evaluate(
    `(async ([library, worker]) => {
      const url = (text) => URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
      window.pdf = await import(url(library));
      window.pdf.GlobalWorkerOptions.workerSrc = url(worker);
    })(${JSON.stringify(parts)})`,
  );
  return (pdf) =>
    page.evaluate(
      `(async (data) => {
        const bytes = Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0));
        const read = await window.pdf.getDocument({ data: bytes }).promise;
        const sizes = [];
        for (let i = 1; i <= read.numPages; i += 1) {
          const [, , wide, high] = (await read.getPage(i)).view;
          sizes.push([Math.round(wide), Math.round(high)]);
        }
        return sizes;
      })(${JSON.stringify(pdf.toString('base64'))})`,
    );
};
