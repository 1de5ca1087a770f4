import { describe, expect, it } from 'vitest';
import { eyeOf, lookedAt } from '../../src/core/score/eye';
import { scoreOf } from '../../src/core/score/scored';
import type { Action } from '../../src/core/site/action';
import { replay } from '../../src/core/hands/opened';
import { begin } from '../../src/core/site/take';
import { levelOf } from '../site/levels';

const level = levelOf('garden-hut');
const subjects = lookedAt(begin(level, 7, 'own'));
const looks: readonly Action[] = [
  ...subjects
    .filter(({ subject }) => subject !== 'board.ridge' && subject.startsWith('board'))
    .map(({ subject }): Action => ({ type: 'read', tool: 'eye', at: subject, said: 'clean' })),
  { type: 'read', tool: 'tape', at: 'board.ridge', said: 192 },
  { type: 'read', tool: 'waterLevel', at: 'plate.street.mid', said: 0 },
  { type: 'read', tool: 'waterLevel', at: 'plate.yard.mid', said: 0 },
];
const judging = (call: (subject: string, faulty: boolean) => 'sound' | 'swap' | 'mend' | 'turn') =>
  replay({ level, seed: 7, mode: 'own' }, [
    ...looks,
    ...subjects.map(({ subject, fault }): Action => ({
      type: 'judge',
      subject,
      call: call(subject, fault !== undefined),
    })),
  ]);
const rightCall = (subject: string): 'swap' | 'mend' =>
  subject.startsWith('plate') || subject === 'board.ridge' ? 'mend' : 'swap';

describe('eye', () => {
  it('has enough to find and enough that is sound', () => {
    expect(subjects.filter(({ fault }) => fault).length).toBeGreaterThanOrEqual(4);
    expect(subjects.filter(({ fault }) => !fault).length).toBeGreaterThanOrEqual(8);
  });

  it('is nothing for taking everything', () => {
    expect(eyeOf(judging(() => 'sound'))).toBe(0);
  });

  it.each(['swap', 'turn', 'mend'] as const)('is nothing for calling everything %s', (call) => {
    expect(eyeOf(judging(() => call))).toBe(0);
  });

  it('is 1 for calling each thing what it is', () => {
    expect(eyeOf(judging((subject, faulty) => (faulty ? rightCall(subject) : 'sound')))).toBe(1);
  });

  // Five faults and 18 sound: one false alarm takes 1/18, one fault missed 1/5.
  it('loses by false alarms and by what it misses', () => {
    const sound = subjects.find(({ fault }) => !fault)?.subject;
    const faulty = subjects.find(({ fault }) => fault)?.subject;
    expect(
      eyeOf(judging((subject, bad) => (subject === sound ? 'swap' : bad ? rightCall(subject) : 'sound'))),
    ).toBeCloseTo(1 - 1 / 18, 12);
    expect(
      eyeOf(judging((subject, bad) => (bad && subject !== faulty ? rightCall(subject) : 'sound'))),
    ).toBeCloseTo(1 - 1 / 5, 12);
  });

  it('gains nothing by judging twice', () => {
    const once = judging((subject, faulty) => (faulty ? rightCall(subject) : 'sound'));
    const again = replay(
      { level, seed: 7, mode: 'own' },
      [...once.steps, ...once.steps].map(({ action }) => action),
    );
    expect(eyeOf(again)).toBe(eyeOf(once));
  });

  it('names what was missed and what was called faulty for nothing', () => {
    const { findings } = scoreOf(judging(() => 'sound'));
    expect(
      findings
        .filter(({ kind }) => kind === 'eye')
        .map(({ code }) => code)
        .sort(),
    ).toEqual(['crownDown', 'plateLow', 'plumbCutLong', 'ridgeLong', 'splitAtNotch']);
    const alarms = scoreOf(judging(() => 'swap')).findings.filter(({ code }) => code === 'falseAlarm');
    expect(alarms).toHaveLength(subjects.filter(({ fault }) => !fault).length);
  });
});
