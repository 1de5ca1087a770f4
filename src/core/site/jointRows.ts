import type { JointKind } from './ids';

/** One kind of joint: nails when finished and when tacked, and where the count is published. */
export type JointRow = {
  readonly kind: JointKind;
  /** Least nails that finish it. */
  readonly full: number;
  readonly tack: number;
  readonly source: string;
};

export const jointRows: Readonly<Record<JointKind, JointRow>> = {
  ridge: { kind: 'ridge', full: 2, tack: 2, source: 'IBC 2018 table 2304.10.1 item 7: 2-16d end nail' },
  ledger: { kind: 'ledger', full: 3, tack: 2, source: 'by the plans; three at a rafter is ours' },
  heel: { kind: 'heel', full: 3, tack: 2, source: 'IBC 2018 table 2304.10.1 item 6: 3-10d common toenail' },
  heelTie: { kind: 'heelTie', full: 4, tack: 2, source: 'by the plans; four is ours' },
  joistPlate: {
    kind: 'joistPlate',
    full: 3,
    tack: 1,
    source: 'IBC 2018 table 2304.10.1 item 2: 3-8d common toenail',
  },
  blockEnd: {
    kind: 'blockEnd',
    full: 2,
    tack: 1,
    source: 'IBC 2018 table 2304.10.1 item 1b: 2-16d end nail',
  },
  blockPlate: {
    kind: 'blockPlate',
    full: 3,
    tack: 1,
    source: 'IBC 2018 table 2304.10.1 item 1: 3-8d common toenail',
  },
  collarEnd: {
    kind: 'collarEnd',
    full: 3,
    tack: 1,
    source: 'IBC 2018 table 2304.10.1 item 5: 3-10d common face nail',
  },
  strap: {
    kind: 'strap',
    full: 6,
    tack: 1,
    source: '3-10d common each rafter, state residential code text, second hand',
  },
  postHead: { kind: 'postHead', full: 2, tack: 1, source: 'ours' },
  postFoot: { kind: 'postFoot', full: 2, tack: 1, source: 'ours' },
};

/** Faces farther apart than this have nothing to nail into, inches. Ours. */
export const reachOf = { tack: 0.5, nail: 0.25 } as const;
