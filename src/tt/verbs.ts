/** What the door understands. Each verb lives in a file of its own and is loaded only when it is called. */
export type Verb = (args: readonly string[]) => number | Promise<number>;

export const verbs: Readonly<Record<string, () => Promise<Verb>>> = {
  figure: async () => (await import('./figure')).figureVerb,
  card: async () => (await import('./card')).cardVerb,
  lint: async () => (await import('./lint')).lintVerb,
  play: async () => (await import('./play')).playVerb,
  prove: async () => (await import('./prove')).proveVerb,
  grade: async () => (await import('./grade')).gradeVerb,
  schemas: async () => (await import('./schemas')).schemasVerb,
  serve: async () => (await import('./serve')).serveVerb,
};
