import type { DangerId } from './danger';

/** One way of getting hurt: which safety rule it belongs to, how grave it is, where it is published. */
export type DangerRow = {
  readonly id: DangerId;
  readonly rule: 'S1' | 'S2' | 'S3' | 'S4';
  /** The most a run can score after it. */
  readonly cap: 49 | 69;
  readonly source: string;
};

const forks = '29 CFR 1910.178(m)(2), read: nobody under the raised part';

export const dangers: readonly DangerRow[] = [
  { id: 'underTheLoad', rule: 'S1', cap: 49, source: forks },
  { id: 'raiseUnderLoad', rule: 'S1', cap: 49, source: forks },
  { id: 'onePointHitch', rule: 'S1', cap: 49, source: 'common practice, no source' },
  { id: 'letGoTooSoon', rule: 'S2', cap: 49, source: 'common practice, no source' },
  { id: 'propWithSomeoneUnder', rule: 'S2', cap: 49, source: 'common practice, no source' },
  { id: 'topPlate', rule: 'S3', cap: 49, source: 'OSHA interpretation of 29 CFR 1926.501(b)(13), read' },
  { id: 'tiedToUnbuilt', rule: 'S3', cap: 49, source: 'OSHA interpretation of 29 CFR 1926.501(b)(13), read' },
  { id: 'handBehind', rule: 'S4', cap: 69, source: 'NIOSH 2011-202, read' },
  { id: 'bumpTrigger', rule: 'S4', cap: 69, source: 'NIOSH 2011-202, read' },
];

export const dangerRow = (id: DangerId): DangerRow | undefined => dangers.find((row) => row.id === id);
