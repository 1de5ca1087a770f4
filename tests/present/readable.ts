/** How hard a text is to read. Syllables are counted by vowel groups: good to a few per cent over a page. */

const sentencesOf = (texts: readonly string[]): number =>
  texts.reduce((sum, text) => sum + Math.max(1, (text.match(/[.!?](\s|$)/g) ?? []).length), 0);

const wordsOf = (texts: readonly string[]): readonly string[] =>
  texts.flatMap((text) => text.toLowerCase().match(/[a-záéíóúüñ’']+/g) ?? []);

const englishSyllables = (word: string): number => {
  const clean = word.replace(/[’']/g, '').replace(/(?<![lr])e$|(?<![td])ed$|(?<![scxzg]|ch|sh)es$/, '');
  return Math.max(1, (clean.match(/[aeiouy]+/g) ?? []).length);
};

/** Weak vowels join their neighbour unless they carry an accent. */
const spanishSyllables = (word: string): number => {
  const groups = word.match(/[aeiouáéíóúü]+/g) ?? [];
  const inGroup = (group: string): number => {
    const strong = (group.match(/[aeoáéóíú]/g) ?? []).length;
    return Math.max(1, strong);
  };
  return Math.max(
    1,
    groups.reduce((sum, group) => sum + inGroup(group), 0),
  );
};

/** Flesch-Kincaid grade (Kincaid 1975): 0.39 words a sentence + 11.8 syllables a word − 15.59. */
export const fleschKincaid = (texts: readonly string[]): number => {
  const words = wordsOf(texts);
  const syllables = words.reduce((sum, word) => sum + englishSyllables(word), 0);
  return 0.39 * (words.length / sentencesOf(texts)) + 11.8 * (syllables / words.length) - 15.59;
};

/** Flesch-Szigriszt (1993), read on the INFLESZ scale (Barrio 2008): 206.835 − 62.3 syllables a word − words a sentence. */
export const inflesz = (texts: readonly string[]): number => {
  const words = wordsOf(texts);
  const syllables = words.reduce((sum, word) => sum + spanishSyllables(word), 0);
  return 206.835 - 62.3 * (syllables / words.length) - words.length / sentencesOf(texts);
};
