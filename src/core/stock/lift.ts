/** The most the NIOSH lifting equation ever lets one person lift, in the best of places: its load constant, 51 lb (read). */
export const loadConstant = 51;
