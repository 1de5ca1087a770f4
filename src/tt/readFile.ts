import { closeSync, openSync, readSync } from 'node:fs';
import { complaint, type Complaint, type Read } from '../content/complaint';
import { largestFile } from '../content/readJson';
import { complaintLine } from '../present/words/refusalMessages';

/** A file's text, or why it cannot be used. Pipes and devices have no size, so no more than the limit is ever read. */
export const readFile = (path: string): Read<string> => {
  try {
    const bytes = firstBytes(path, largestFile + 1);
    if (bytes.length > largestFile) return no('the file is over 1 MB', 'a file of at most 1 MB');
    return { ok: true, value: bytes.toString('utf8') };
  } catch {
    return no('cannot be read', 'a file that is there and may be read');
  }
};

const firstBytes = (path: string, most: number): Buffer => {
  const file = openSync(path, 'r');
  try {
    const buffer = Buffer.alloc(most);
    let filled = 0;
    for (let got = 1; got > 0 && filled < most; filled += got)
      got = readSync(file, buffer, filled, most - filled, null);
    return buffer.subarray(0, filled);
  } finally {
    closeSync(file);
  }
};

const no = (wrong: string, accepted: string): Read<never> => ({
  ok: false,
  complaints: [complaint('$', wrong, accepted)],
});

/** One line a complaint on stderr; the exit code for input that cannot be used. */
export const refuseInput = (file: string, complaints: readonly Complaint[]): 2 => {
  process.stderr.write(complaints.map((c) => `${complaintLine(file, c)}\n`).join(''));
  return 2;
};
