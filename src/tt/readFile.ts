import { readFileSync, statSync } from 'node:fs';
import { largestFile } from '../content/readJson';
import { complaint, complaintLine, type Complaint, type Read } from '../content/complaint';

/** A file's text, or why it cannot be used. A file over the limit is never read. */
export const readFile = (path: string): Read<string> => {
  try {
    const { size } = statSync(path);
    if (size > largestFile) return no('the file is over 1 MB', 'a file of at most 1 MB');
    return { ok: true, value: readFileSync(path, 'utf8') };
  } catch {
    return no('cannot be read', 'a file that is there and may be read');
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
