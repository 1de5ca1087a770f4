/** Ways to play a level. All but the last are practice. */
export const modes = ['watch', 'list', 'nudge', 'own', 'check-off'] as const;
export type Mode = (typeof modes)[number];
