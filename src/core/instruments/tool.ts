/** The things a reading is taken with. `pattern` is the proved rafter held to a cut; `eye` is a look, coarse. */
export type ToolId = 'eye' | 'tape' | 'rule' | 'level' | 'waterLevel' | 'string' | 'pattern' | 'square';
