import { opened } from '../../src/core/hands/opened';
import { crewList } from '../../src/core/order/crew/crewList';
import { crewStep } from '../../src/core/hands/crewStep';
import { openItems } from '../../src/core/site/punch';
import { observe } from '../../src/core/site/observe';
import { scoreOf } from '../../src/core/score/scored';
import { take, would } from '../../src/core/site/take';
import type { Attempt } from '../../src/core/site/attempt';
import type { PlannedAction } from '../../src/core/order/crew/view';
import { afterWork } from '../../src/present/afterWork';
import { captionFor, freshCaption, promptCaption, standingCaption } from '../../src/present/caption';
import { deedText } from '../../src/present/deed';
import { drawingWordsOf } from '../../src/present/drawingWords';
import { tracesOf, traceText } from '../../src/present/exaggerated';
import { tellFinding } from '../../src/present/findingWords';
import { loadLines, loadPathOf } from '../../src/present/loadPath';
import { spotsFor } from '../../src/present/offers/spots';
import type { Offer, Spot } from '../../src/present/offers/offer';
import { toolset } from '../../src/present/offers/toolset';
import { orderCost } from '../../src/present/orderCost';
import { groupName, roofGroups, roofSaid, thingSaid } from '../../src/present/roofTold';
import { stepText } from '../../src/present/stepText';
import { stripOf } from '../../src/present/strip';
import type { Messages } from '../../src/present/words/messages';
import { heldName, jointName, memberName, taskName } from '../../src/present/words/names';
import { seenAt, seenOn } from '../../src/present/words/seenAt';
import { scaleSaid } from '../../src/present/words/scaleSaid';
import { labelText, spotName } from '../../src/present/words/spotNames';

/** Everything that a run is told in, from its acts: what each screen would say at each moment. */

const nameOf = (words: Messages, at: string): string =>
  at.includes(':') ? jointName(words, at) : memberName(words, at);

/** An act before it is done and after. */
const ofStep = (words: Messages, attempt: Attempt): readonly string[] => {
  const step = attempt.steps.at(-1);
  if (!step) return [];
  const told = stepText(words, step.action as PlannedAction);
  const fresh = freshCaption(words, step, 'feet');
  return [
    told.thing,
    told.does,
    fresh.text,
    fresh.heard ?? '',
    deedText(words, step, 'feet'),
    promptCaption(words, attempt)?.text ?? '',
    standingCaption(words, attempt, 'feet').text,
  ];
};

/** What the crew would do next, and why. */
const ofCrew = (words: Messages, attempt: Attempt): readonly string[] => {
  const next = crewStep(attempt)?.planned;
  const rules = [...(next?.serves ?? []), ...(next?.closes ?? [])].flatMap((id) =>
    Object.values(words.rules[id] ?? {}),
  );
  return [
    ...crewList(attempt).map((row) => taskName(words, row)),
    ...rules,
    words.ui.watch.plain[next?.code ?? ''] ?? '',
  ];
};

const ofOffer = (
  words: Messages,
  attempt: Attempt,
  { label, picker, reading, act }: Offer,
): readonly string[] => {
  const options = picker?.kind === 'choice' ? picker.options : [];
  const picks =
    options.length > 0
      ? options.map(({ value }) => value)
      : [picker && 'start' in picker ? picker.start : ''];
  const shown = reading && observe(attempt).look(reading as never);
  return [
    labelText(words, label),
    ...(picker && 'label' in picker ? [labelText(words, picker.label)] : []),
    ...options.map((option) => labelText(words, option.label)),
    ...(reading ? [heldName(words, reading)] : []),
    ...(reading && shown !== undefined ? [scaleSaid(words, attempt, { reading, shown })] : []),
    ...picks.flatMap((picked) => {
      const action = act(picked);
      const outcome = would(attempt, action);
      return outcome.ok ? [] : [captionFor(words, { action, outcome }, 'feet').text];
    }),
  ];
};

/** Labels of a drawing, with the title of a close-up. */
const drawn = (words: Messages, joint: string | undefined): readonly string[] => {
  const { joint: close, ...labels } = { joint: undefined, ...drawingWordsOf(words, { station: 1, joint }) };
  return [...Object.values(labels), ...Object.values(close ?? {})];
};

const ofSpot = (words: Messages, attempt: Attempt, spot: Spot): readonly string[] => [
  spotName(words, spot),
  seenAt(words, attempt, { spot, units: 'feet' }),
  seenOn(words, attempt, spot),
  ...drawn(words, /:/.test(spot.id) ? spot.id.replace(/^.*@/, '') : undefined),
  ...spot.offers.flatMap((offer) => ofOffer(words, attempt, offer)),
];

/** Every place of every tool, with what would be refused there. */
const ofOffers = (words: Messages, attempt: Attempt): readonly string[] =>
  toolset.flatMap(({ tool }) => spotsFor(attempt, tool).flatMap((spot) => ofSpot(words, attempt, spot)));

/** The roof in words, its loads, its lines, and what is still open. */
const ofRoof = (words: Messages, attempt: Attempt): readonly string[] => {
  const seen = observe(attempt);
  const loads = loadPathOf(attempt, undefined);
  return [
    roofSaid(words, seen),
    ...roofGroups(seen).flatMap((group) => [
      groupName(words, seen, group),
      ...group.ids.flatMap((id) => [memberName(words, id), thingSaid(words, seen, id)]),
    ]),
    ...(loads ? loadLines(words, attempt, loads) : []),
    ...tracesOf(attempt).map((trace) => traceText(words, trace, 'feet')),
    ...openItems(attempt).map(({ at }) => nameOf(words, at)),
  ];
};

/** The talk after work. */
export const saidAfter = (words: Messages, attempt: Attempt): readonly string[] => {
  const { findings } = scoreOf(attempt);
  const { costly, good } = afterWork(attempt, findings);
  const order = orderCost(words, attempt);
  return [
    ...findings.flatMap((finding) => Object.values(tellFinding(words, finding, 'feet'))),
    ...[...costly, ...(good ? [good] : [])].flatMap(({ member }) =>
      member ? [memberName(words, member)] : [],
    ),
    ...(order ? [...order.sooner, ...order.later] : []),
    ...stripOf(attempt).map(({ stands }) => words.ui.debrief.stands[stands]),
  ];
};

/** Acts between two long looks round. */
const each = 12;

/** All that is said on the way through a run, each text once. */
export const saidInRun = (words: Messages, run: Attempt): ReadonlySet<string> => {
  const { level, seed, mode, steps, found } = run;
  const all = new Set<string>();
  const put = (texts: readonly string[]): void => texts.forEach((text) => all.add(text));
  let attempt = opened(level, seed, mode);
  steps.slice(found?.steps ?? 0).forEach(({ action }, i) => {
    if (i % each === 0) {
      put(ofCrew(words, attempt));
      put(ofRoof(words, attempt));
      put(ofOffers(words, attempt));
    }
    attempt = take(attempt, action);
    put(ofStep(words, attempt));
  });
  put(ofRoof(words, attempt));
  put(saidAfter(words, attempt));
  all.delete('');
  return all;
};
