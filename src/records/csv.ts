/**
 * A table as RFC 4180 has it: commas, lines that end in CR LF, quotes where a cell needs them. A cell that a spreadsheet
 * would take for a formula (it begins with = + - @, a tab or a line break) gets an apostrophe before it and so stays text;
 * a plain number is left as it is.
 */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(cellOf).join(',')}\r\n`).join('');

const cellOf = (text: string): string => {
  const safe = guarded(text);
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
};

/** What a cell of the file holds for a cell of the screen. */
export const guarded = (text: string): string =>
  /^[=+\-@\t\r\n]/.test(text) && !/^-?\d+(\.\d+)?$/.test(text) ? `'${text}` : text;
