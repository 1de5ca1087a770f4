/** The tools in the rail, in the order work reaches for them, with the key that picks each. */
export type Tool =
  | 'look'
  | 'tape'
  | 'level'
  | 'string'
  | 'rule'
  | 'pattern'
  | 'set'
  | 'tack'
  | 'nail'
  | 'draw'
  | 'trim'
  | 'mark'
  | 'move'
  | 'crew';

export const toolset: readonly { readonly tool: Tool; readonly key: string; readonly group: number }[] = [
  { tool: 'crew', key: 'c', group: 0 },
  { tool: 'look', key: 'l', group: 0 },
  { tool: 'tape', key: 'a', group: 1 },
  { tool: 'level', key: 'v', group: 1 },
  { tool: 'string', key: 'g', group: 1 },
  { tool: 'rule', key: 'r', group: 1 },
  { tool: 'pattern', key: 'p', group: 1 },
  { tool: 'mark', key: 'k', group: 2 },
  { tool: 'set', key: 's', group: 2 },
  { tool: 'move', key: 'm', group: 2 },
  { tool: 'tack', key: 't', group: 3 },
  { tool: 'nail', key: 'n', group: 3 },
  { tool: 'draw', key: 'd', group: 3 },
  { tool: 'trim', key: 'i', group: 3 },
];
