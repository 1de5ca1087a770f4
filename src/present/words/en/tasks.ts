import type { TaskCode } from '../../../core/order/crew/task';

/** The lines of the crew list. */
export const tasks: Readonly<Record<TaskCode, string>> = {
  agree: 'Agree how to build it',
  braceWalls: 'Brace the walls',
  proveWalls: 'Prove the walls',
  lookOver: 'Look over every board',
  settleRidge: 'Settle the ridge length',
  tieWalls: 'Tie the walls',
  layOut: 'Mark plates and ridge',
  makeReady: 'Ready to go up',
  setPosts: 'Set the posts',
  landRidge: 'Land the ridge',
  proveEnds: 'End pairs tacked, height proved',
  nailEnds: 'Nail the end pairs',
  fixLedger: 'Nail the ledger at every stud',
  braceRidge: 'Brace the ridge both ways',
  lockMiddle: 'Lock a middle pair',
  letGo: 'Slack, look, unhook',
  string: 'Stretch the string',
  stack: 'Stack the side',
  heels: 'Read the string, nail the side',
  chalk: 'Snap the collar line',
  upper: 'Collars or straps',
  tails: 'Snap the tails, cut them',
  propsOut: 'Posts out',
  handOver: 'Punch list, hand over',
};
