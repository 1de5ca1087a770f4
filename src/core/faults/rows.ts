import type { ToolId } from '../instruments/tool';
import type { FaultId } from './fault';

/** One thing that can be wrong: where, what an eye calls it, what finds it, which calls answer it, and what mends it. */
export type FaultRow = {
  readonly id: FaultId;
  readonly where: 'board' | 'plate' | 'ridge';
  /** The word an eye puts to it, or undefined when no eye sees it. */
  readonly looks: string | undefined;
  readonly finds: readonly ToolId[];
  readonly calls: readonly ('turn' | 'swap' | 'mend')[];
  readonly mends: readonly string[];
  /** Common practice, no source, unless a source is named. */
  readonly source: string;
};

const common = 'common practice, no source';

export const faults: readonly FaultRow[] = [
  {
    id: 'crownDown',
    where: 'board',
    looks: 'crownDown',
    finds: ['eye'],
    calls: ['swap', 'turn'],
    mends: ['swap'],
    source: common,
  },
  {
    id: 'splitAtNotch',
    where: 'board',
    looks: 'split',
    finds: ['eye'],
    calls: ['swap'],
    mends: ['swap'],
    source: common,
  },
  {
    id: 'twisted',
    where: 'board',
    looks: 'twist',
    finds: ['eye'],
    calls: ['swap'],
    mends: ['swap'],
    source: common,
  },
  {
    id: 'plumbCutLong',
    where: 'board',
    looks: undefined,
    finds: ['pattern'],
    calls: ['mend', 'swap'],
    mends: ['trim', 'swap'],
    source: common,
  },
  {
    id: 'plumbCutShort',
    where: 'board',
    looks: undefined,
    finds: ['pattern'],
    calls: ['swap'],
    mends: ['swap'],
    source: common,
  },
  {
    id: 'plumbCutSteep',
    where: 'board',
    looks: undefined,
    finds: ['pattern'],
    calls: ['mend', 'swap'],
    mends: ['trim', 'swap'],
    source: common,
  },
  {
    id: 'plateLow',
    where: 'plate',
    looks: undefined,
    finds: ['waterLevel'],
    calls: ['mend'],
    mends: ['mendWall'],
    source: common,
  },
  {
    id: 'ridgeLong',
    where: 'ridge',
    looks: undefined,
    finds: ['tape'],
    calls: ['mend'],
    mends: ['trim'],
    source: common,
  },
];

export const faultRow = (id: FaultId): FaultRow | undefined => faults.find((row) => row.id === id);
