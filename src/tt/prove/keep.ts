import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { rulesVersion } from '../../core/order/version';
import type { Told } from './job';

/** Raw totals on the way to a proof, a line each, so that a long one can be stopped and taken up again. */

const head = (): string => JSON.stringify({ format: 'tack-and-true/proof@1', rules: rulesVersion });

/** What was kept before; a file of other rules is not mixed in. */
export const keptIn = (file: string): readonly Told[] => {
  if (!existsSync(file)) {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, `${head()}\n`);
    return [];
  }
  const [first, ...lines] = readFileSync(file, 'utf8').split('\n');
  if (first !== head())
    throw new Error(`${file}: was not kept under rules version ${rulesVersion} (give another file)`);
  return lines.flatMap(toldIn);
};

/** The last line may be cut off where it was stopped. */
const toldIn = (text: string): readonly Told[] => {
  try {
    return [JSON.parse(text) as Told];
  } catch {
    return [];
  }
};

export const keep = (file: string, told: readonly Told[]): void => {
  appendFileSync(file, told.map((one) => `${JSON.stringify(one)}\n`).join(''));
};
