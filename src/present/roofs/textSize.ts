/**
 * How wide a text will be before anybody has drawn it. Advances in hundredths of the size, from space to tilde, as our two
 * faces have them; an accent changes nothing. Other faces come near enough: whoever places texts leaves a little room.
 */

export type Face = 'word' | 'strong' | 'narrow';

const split = (text: string): readonly number[] => text.split(' ').map(Number);

const advances: Readonly<Record<Face, readonly number[]>> = {
  word: split(
    '24 25 43 60 66 90 71 25 30 31 39 56 24 38 23 35 61 41 60 63 63 64 62 60 65 63 23 24 55 56 55 52 83 71 67 69 69 62 59 73 77 28 39 68 58 89 75 73 64 75 68 67 59 70 67 95 69 61 64 30 35 30 47 52 22 55 60 54 60 57 40 62 58 25 26 56 30 87 58 57 60 60 39 51 39 58 51 78 57 54 48 33 26 33 57',
  ),
  strong: split(
    '23 28 48 62 68 94 78 26 33 34 47 59 28 39 27 38 65 43 64 67 66 68 66 63 67 66 27 28 58 59 58 54 83 73 69 72 72 64 61 76 77 31 40 72 58 92 78 76 65 77 70 69 62 72 70 97 72 67 67 34 38 34 48 55 26 57 61 55 61 58 40 63 59 27 29 58 33 90 59 58 61 61 41 53 42 60 52 79 59 56 50 39 27 38 61',
  ),
  narrow: split(
    '20 27 31 61 43 77 58 15 28 28 36 44 20 33 21 39 45 27 43 43 46 43 43 39 43 42 25 22 44 44 44 41 76 46 46 46 47 44 42 46 48 22 44 48 42 54 51 47 46 46 46 43 45 48 47 67 46 46 41 33 39 33 41 41 21 43 44 42 44 43 29 43 44 22 21 43 20 67 44 43 44 44 31 40 28 44 42 59 42 40 37 32 17 32 48',
  ),
};

/** Of what is not in the table: ×, °, · and dashes are no wider. */
const other = 0.58;

/** In the unit of `size`. */
export const textWidth = (text: string, size: number, face: Face = 'word'): number =>
  [
    ...text
      .normalize('NFD')
      .replace(/[\u0300-\u036f]/g, '')
      .replace(/\u00a0/g, ' '),
  ].reduce((sum, sign) => {
    const known = advances[face][sign.charCodeAt(0) - 32];
    return sum + (known === undefined ? other : known / 100) * size;
  }, 0);

/** A stretch of text in one size and face. */
export type Run = { readonly text: string; readonly size: number; readonly face: Face };

/** How many lines runs on one line after another break into at a width. */
export const lineCount = (runs: readonly Run[], width: number): number => {
  let lines = 1;
  let used = 0;
  for (const { text, size, face } of runs) {
    for (const word of text.split(' ').filter((one) => one !== '')) {
      const wide = textWidth(word, size, face);
      const gap = used > 0 ? textWidth(' ', size, face) : 0;
      if (used > 0 && used + gap + wide > width) {
        lines += 1;
        used = wide;
      } else used += gap + wide;
    }
  }
  return lines;
};
