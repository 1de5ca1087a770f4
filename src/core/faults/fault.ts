/** What can be wrong with a board or a wall. One row each in `faults`, with how it shows, what finds it, what mends it. */
export type FaultId =
  | 'crownDown'
  | 'splitAtNotch'
  | 'plumbCutLong'
  | 'plumbCutShort'
  | 'plumbCutSteep'
  | 'twisted'
  | 'plateLow'
  | 'ridgeLong';
