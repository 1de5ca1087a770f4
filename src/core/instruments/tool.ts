/** The things a reading is taken with. `pattern` is the proved rafter held to a cut; `eye` is a look, coarse. */
export type ToolId =
  | 'eye'
  | 'tape'
  | 'rule'
  | 'level'
  | 'waterLevel'
  | 'string'
  | 'pattern'
  | 'square'
  | 'bob'
  | 'straightedge'
  | 'storyPole';

/**
 * How a tool is held, where that makes a difference. `A` and `B`: which end the level's mark lies toward. `inch`: the tape
 * from its one-inch mark, so that it shows an inch more and its hook has no say. `last`: the tape from rafter to rafter,
 * sixteenths added up. `turned`: the square's blade the other way round. `still`: the bob brought to rest.
 * `plumb`: the pole held plumb. `tail`: the pattern flush with the board's tail, not in its notch.
 */
export type Hold = 'A' | 'B' | 'inch' | 'last' | 'turned' | 'still' | 'plumb' | 'tail';
