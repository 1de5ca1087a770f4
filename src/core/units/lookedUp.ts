/** A function of a word, looked up once it was told. Forgets everything when there are more words than a site has names. */
export const lookedUp = <T>(tell: (word: string) => T, most = 4096): ((word: string) => T) => {
  const known = new Map<string, T>();
  return (word) => {
    const told = known.get(word);
    if (told !== undefined) return told;
    const fresh = tell(word);
    if (known.size >= most) known.clear();
    known.set(word, fresh);
    return fresh;
  };
};
