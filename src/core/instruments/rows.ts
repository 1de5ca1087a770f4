import type { ToolId } from './tool';

/** What a tool can tell and how finely. Divisions and noise in inches. */
export type ToolRow = {
  readonly id: ToolId;
  /** Smallest division marked on it; the learner reads to this. */
  readonly division: number;
  /** How far one honest reading strays. Ours. */
  readonly noise: number;
  /** How many crew can reach it from: everything here is reached from the ground, the ladder or the platform. */
  readonly source: string;
};

const ours = 'ours';

export const tools: Readonly<Record<ToolId, ToolRow>> = {
  eye: { id: 'eye', division: 0.25, noise: 0, source: ours },
  tape: { id: 'tape', division: 1 / 16, noise: 1 / 64, source: ours },
  rule: { id: 'rule', division: 1 / 16, noise: 0, source: ours },
  level: {
    id: 'level',
    division: 1 / 16,
    noise: 0,
    source: '0.5 mm in 1 m is the usual rating (from memory); division ours',
  },
  waterLevel: { id: 'waterLevel', division: 1 / 16, noise: 1 / 64, source: ours },
  string: { id: 'string', division: 1 / 16, noise: 0, source: ours },
  pattern: { id: 'pattern', division: 1 / 16, noise: 0, source: ours },
  square: { id: 'square', division: 1 / 16, noise: 0, source: ours },
};

/** Length of the spirit level, inches. */
export const levelLength = 48;
/** Thickness of the gauge blocks that hold a string clear of the work, inches. */
export const gaugeBlock = 0.75;
