/** What is said of roofs, English beside Spanish; `{0}` stands for what is filled in. */
export type Saying = readonly [english: string, spanish: string];
