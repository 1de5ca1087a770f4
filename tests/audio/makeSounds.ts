import { writeFileSync } from 'node:fs';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { format, resolveConfig } from 'prettier';
import { encoded, sixteenBits } from './encoded';
import { sprite } from './synth/everySound';

/** `npm run sounds`: makes every sound, the one file that holds them, and the table of where each lies in it. */

const from = (path: string): string => new URL(`../../${path}`, import.meta.url).pathname;

const milliseconds = (seconds: number): number => Math.round(seconds * 1000);

const main = async (): Promise<void> => {
  const { strip, places } = sprite();
  const file = await encoded(strip);
  const rows = [...places].map(
    ([name, { from: at, long }]) => `${name}: [${milliseconds(at)}, ${milliseconds(long)}],`,
  );
  const text = `import type { SoundName } from '../present/sounds';

/** Where each sound lies in assets/sounds/sprite.mp3: from, and how long, milliseconds. Made by \`npm run sounds\`. */
export const spriteTable: Readonly<Record<SoundName, readonly [from: number, long: number]>> = { ${rows.join('\n')} };

/** SHA-256 of the sounds before they are encoded, sixteen bits a sample: tells whether the file is of this make. */
export const madeFrom = '${bytesToHex(sha256(sixteenBits(strip)))}';
`;
  const table = from('src/audio/spriteTable.ts');
  writeFileSync(from('assets/sounds/sprite.mp3'), file);
  writeFileSync(table, await format(text, { ...(await resolveConfig(table)), parser: 'typescript' }));
  console.log(`${places.size} sounds, ${file.length} bytes`);
};

await main();
