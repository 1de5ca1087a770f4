/** What is said of roofs, English beside Spanish, from the narrowest to the widest; `{0}` stands for what is filled in. */
export const sayings: readonly (readonly [english: string, spanish: string])[] = [['is missing', 'falta']];
