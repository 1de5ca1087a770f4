import { featureWeights } from '../../src/core/score/fit';
import { partWeights, passLine } from '../../src/core/score/scored';
import { checkRules, orderRules } from '../../src/core/order/rules';
import { otherRules } from '../../src/core/order/stateRules';
import { rulesVersion } from '../../src/core/order/version';
import { dangers } from '../../src/core/site/dangers/rows';
import { jointRows } from '../../src/core/site/jointRows';
import { minutesRow } from '../../src/core/site/minutes';

/** RULES.md as the data has it: every rule with its id, what it wants, what it costs, and where it is published. */
export const rulesText = (): string =>
  [
    `# Rules, version ${rulesVersion}`,
    'Written by `npx tsx tests/score/writeRules.ts` from the rows in `src/core`; a test fails when it is behind. Crew-minutes, weights and caps are ours unless a source is named.',
    '## Order',
    table(
      ['rule', 'first', 'then', 'applies', 'rework, crew-minutes', 'shows', 'source'],
      orderRules.map(({ id, before, later, when, rework, how, shows, source }) => [
        id,
        before,
        later,
        when,
        `${rework} (${how})`,
        showsText(shows),
        source,
      ]),
    ),
    'Lost of a rule’s weight: 0 kept, 1 broken and left, 0.7 mended after a prompt (modes list and nudge), 0.4 mended unprompted. Part = max(0, 1 − lost / by luck), where by luck is the share broken over random complete orders (`chanceRows.ts`).',
    '## Checks',
    table(
      ['check', 'asks', 'weight', 'shows', 'source'],
      checkRules.map(({ id, asks, weight, shows, source }) => [
        id,
        asks,
        String(weight),
        showsText(shows),
        source,
      ]),
    ),
    'Credit: 1 in its window, read as shown, and right when the window closes; 0.5 read but not put right, or misread; 0.25 late; 0 not read, or read before the window. A check is the mean of its readings. Repeats add nothing.',
    '## End state and safety',
    table(
      ['rule', 'asks', 'source'],
      otherRules.map(({ id, asks, source }) => [id, asks, source]),
    ),
    table(
      ['danger', 'rule', 'caps the total at', 'source'],
      dangers.map(({ id, rule, cap, source }) => [id, rule, String(cap), source]),
    ),
    'A frame that comes down caps the total at 49 and ends the run.',
    '## Fit',
    table(
      ['feature', 'weight'],
      Object.entries(featureWeights).map(([feature, weight]) => [feature, String(weight)]),
    ),
    'r = max(0, |off| − 1/32 in) / tolerance; quality 1 − 0.2 r up to the tolerance, 0.8 − 1.6 (r − 1) beyond it, never under 0. A pair’s plumb cuts and seats are as good as the worse of its two rafters.',
    '## Total',
    table(
      ['part', 'weight', 'pass line'],
      Object.entries(partWeights).map(([part, weight]) => [part, String(weight), String(lineOf(part))]),
    ),
    `Total = 100 × share of the required work done × weighted mean of the parts there are, then the caps. Pass: Check-off, total at least ${passLine.total}, done at least ${passLine.done}, sound, no cap. Economy is par over crew-minutes used, and nothing under 0.6 of the checks.`,
    '## Joints',
    table(
      ['joint', 'nails', 'tack', 'source'],
      Object.values(jointRows).map(({ kind, full, tack, source }) => [
        kind,
        String(full),
        String(tack),
        source,
      ]),
    ),
    '## Crew-minutes',
    table(
      ['act', 'minutes'],
      Object.entries(minutesRow).map(([act, minutes]) => [act, String(minutes)]),
    ),
  ].join('\n\n') + '\n';

const showsText = (shows: 'now' | 'frame'): string =>
  shows === 'now' ? 'on the site' : 'cost only, not yet simulated';
const lineOf = (part: string): number | string => (passLine as Readonly<Record<string, number>>)[part] ?? '–';

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
