import type { Level } from '../core/level/level';
import { complaint, type Complaint } from './complaint';
import { lineOf } from './jsonPlace';
import { parseLevel } from './readLevel';

/** A level file that cannot be played: which, where in it, what is wrong first, and how much more there is. */
export type Trouble = {
  readonly file: string;
  readonly line: number;
  readonly complaint: Complaint;
  readonly more: number;
};

/** Reads level files by name. What cannot be read is told and left out; the others are there all the same. */
export const readLevels = (
  files: Readonly<Record<string, string>>,
): { readonly levels: readonly Level[]; readonly troubles: readonly Trouble[] } => {
  const levels: Level[] = [];
  const troubles: Trouble[] = [];
  for (const [file, text] of Object.entries(files)) {
    const read = parseLevel(text);
    if (read.ok) levels.push(read.value);
    else troubles.push(troubleOf(file, text, read.complaints));
  }
  return { levels, troubles };
};

const troubleOf = (file: string, text: string, complaints: readonly Complaint[]): Trouble => {
  const [first = complaint('$', ['cannotRead'], ['levelFile'])] = complaints;
  return {
    file,
    line: lineOf(text, first.path),
    complaint: first,
    more: Math.max(0, complaints.length - 1),
  };
};
