/** What a level may plant in a board, a plate or the ridge. One row each in `faults`. */
export type FaultId =
  | 'crownDown'
  | 'splitAtNotch'
  | 'knotAtNotch'
  | 'lowGrade'
  | 'plumbCutLong'
  | 'plumbCutShort'
  | 'plumbCutSteep'
  | 'twisted'
  | 'driedOut'
  | 'plateLow'
  | 'ridgeLong';

/** What only strays within a range: nobody judges it, but it shows, and it is put right like the others. */
export type DriftId =
  | 'plateOff'
  | 'plateOutOfLine'
  | 'wallsRacked'
  | 'ridgeBowed'
  | 'pileDried'
  | 'baysGrow'
  | 'blockOff'
  | 'levelOut'
  | 'hookBent'
  | 'airInHose'
  | 'squareOut'
  | 'lineSlack';
