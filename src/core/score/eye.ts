import { boardIds, plantedAt, plateSpots } from '../level/planted';
import type { Planted } from '../level/level';
import { before, wholeJob } from '../level/stages';
import { faultRow } from '../faults/rows';
import { sidesOf } from '../level/layout';
import { methodsOf } from '../site/required';
import type { Standing } from '../site/standing';

/** What could be judged on this site, and how it was. */
export type Looked = {
  readonly subject: string;
  readonly fault: Planted | undefined;
  readonly call: string | undefined;
  readonly right: boolean;
};

/** Every board and both plates. A ridge left to run wild need not be cut, so it is no fault then. */
export const lookedAt = (standing: Standing): readonly Looked[] => {
  const wild = methodsOf(standing.level, standing.site.agreed).ridgeLength === 'wild';
  const subjects = [
    ...boardIds(standing.level),
    ...(wild ? [] : ['board.ridge']),
    ...sidesOf(standing.level).map((side) => `plate.${side}`),
  ];
  return subjects.map((subject) => judgedAs(standing, subject));
};

const judgedAs = (standing: Standing, subject: string): Looked => {
  const fault = faultAt(standing, subject);
  const call = standing.site.judged[subject]?.call;
  const calls: readonly string[] = fault ? (faultRow(fault.fault)?.calls ?? []) : ['sound'];
  return { subject, fault, call, right: call !== undefined && calls.includes(call) };
};

const faultAt = (standing: Standing, subject: string): Planted | undefined => {
  if (!subject.startsWith('plate.')) return plantedAt(standing, subject);
  return plateSpots
    .map((spot) => plantedAt(standing, `${subject}.${spot}`))
    .find((planted) => planted !== undefined);
};

/**
 * Share of the faults found less share of the sound called faulty; refusing or accepting everything gets nothing. Undefined
 * where there is no fault, or the crew looked the pile over before the learner came.
 */
export const eyeOf = (standing: Standing): number | undefined => {
  if (before(standing.level.stages ?? wholeJob, 'ground')) return undefined;
  const all = lookedAt(standing);
  const faulty = all.filter(({ fault }) => fault !== undefined);
  const sound = all.filter(({ fault }) => fault === undefined);
  if (faulty.length === 0) return undefined;
  const found = faulty.filter(({ right }) => right).length / faulty.length;
  const alarms = sound.filter(({ call }) => call !== undefined && call !== 'sound').length / sound.length;
  return Math.max(0, found - alarms);
};
