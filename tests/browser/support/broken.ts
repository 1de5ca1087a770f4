import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/** Level files as people break them: cut short, a comma lost, a number that cannot be. */
export const brokenLevels: Readonly<Record<string, (text: string) => string>> = {
  'pump-house.json': (text) => text.slice(0, text.length / 2),
  'seed-store.json': (text) => text.replace('"id":', '"version" "id":'),
  'sail-loft.json': (text) => text.replace(/("span": )[^,]+/, '$1"wide"'),
};

/** Builds those files into the site in place of the sound ones. */
export const breaking: Plugin = {
  name: 'breaking',
  enforce: 'pre',
  load: (id) => {
    const [path = '', query] = id.split('?');
    const change = brokenLevels[path.split('/').at(-1) ?? ''];
    if (query !== 'raw' || !change) return undefined;
    return `export default ${JSON.stringify(change(readFileSync(path, 'utf8')))}`;
  },
};
