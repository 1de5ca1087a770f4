import type { Action } from './action';

/** Crew-minutes an act takes. Ours, to be tuned; one home so that par and rework speak the same minutes. */
export const minutesRow = {
  agree: 1,
  makeReady: 5,
  read: 1,
  readDiagonal: 3,
  judge: 0.5,
  mark: 4,
  mendWall: 8,
  setTie: 3,
  place: 4,
  block: 2,
  lift: 15,
  collar: 3,
  tack: 0.5,
  nailOff: 1,
  drawNail: 0.5,
  hookOn: 5,
  stand: 0.5,
  signal: 1,
  setPost: 6,
  raise: 2,
  shift: 2,
  brace: 4,
  letGo: 1,
  line: 3,
  trim: 5,
  cutTail: 2,
  swap: 6,
  takeOut: 2,
  handOver: 2,
} as const;

/** What one act costs the crew; 0 for what is only bookkeeping. */
export const minutesOf = (action: Action): number => {
  switch (action.type) {
    case 'read':
      return action.at.startsWith('diagonal') ? minutesRow.readDiagonal : minutesRow.read;
    case 'place':
      return placing(action.member, action.at);
    case 'draw':
      return minutesRow.drawNail * action.nails;
    case 'carryOn':
    case 'undo':
      return 0;
    default:
      return minutesRow[action.type];
  }
};

const placing = (member: string, at: string): number => {
  if (member === 'ridge') return at === 'machine' ? minutesRow.lift : 2 * minutesRow.place;
  if (member.startsWith('block')) return minutesRow.block;
  return /^(collar|strap)/.test(member) ? minutesRow.collar : minutesRow.place;
};
