import type { Complaint } from '../content/complaint';
import { parseLevel } from '../content/readLevel';
import { complaintLine } from '../present/words/refusalMessages';
import { courseFiles } from './levelFiles';
import { provedComplaints } from './lint/proved';
import { writtenComplaints } from './lint/written';
import { readFile, refuseInput } from './readFile';
import type { Verb } from './verbs';

/** `lint [FILE…]`: checks levels, all of the course by default; a line for each complaint, then how many there were. */
export const lintVerb: Verb = (args) => {
  const option = args.find((arg) => arg.startsWith('-'));
  if (option !== undefined) {
    process.stderr.write(`tt lint: ${option}: there are no options (lint [FILE…])\n`);
    return 2;
  }
  const files = args.length > 0 ? args : courseFiles();
  const counts = files.map(lintOne);
  const complaints = counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
  process.stdout.write(`${JSON.stringify({ levels: files.length, complaints })}\n`);
  if (counts.some((count) => count === undefined)) return 2;
  return complaints === 0 ? 0 : 1;
};

/** How many complaints a file gives; undefined when it cannot be read at all. */
const lintOne = (file: string): number | undefined => {
  const text = readFile(file);
  if (!text.ok) {
    refuseInput(file, text.complaints);
    return undefined;
  }
  const level = parseLevel(text.value);
  const complaints: readonly Complaint[] = level.ok
    ? [...writtenComplaints(level.value), ...provedComplaints(level.value)]
    : level.complaints;
  for (const each of complaints) process.stderr.write(`${complaintLine(file, each)}\n`);
  return complaints.length;
};
