import type { CommonRafter } from '../roof/figured';
import type { GablePlan } from '../roof/plan';
import { isOver } from '../units/hair';
import { feetInches, shortInches } from '../units/lengthText';
import { gradient } from '../units/slope';
import { ladderSource, ladderTo, railsOver } from './ladder';
import { liftSource, peopleFor } from './lifting';
import { raisedTieFactor, rafterSpan, spanSource, type SpanAsked } from './rafterSpan';
import { sourceText, type Source, type Sure } from './source';
import { raisedTiePull, thrustAtHeel, thrustSource } from './thrust';
import { airSpace, ventArea, ventParts, ventSource, type VentScheme } from './ventilation';

/** Words of caution with where they come from. What `core/roof/cautions.ts` tells of a plan is not told here again. */

/** What is known of the job; each part that is left out is not spoken of. Inches, pounds and pounds a square foot. */
export type AdviceAsked = {
  readonly roof?: { readonly plan: GablePlan; readonly cuts: CommonRafter; readonly topHeight: number };
  readonly loads?: Omit<SpanAsked, 'section' | 'spacing'>;
  /** Attic in square feet, what its vents let through in square inches, and how they lie. */
  readonly vents?: { readonly attic: number; readonly free: number; readonly scheme: VentScheme };
  readonly lift?: { readonly pounds: number; readonly people: number };
  readonly ladder?: { readonly landing: number; readonly foot: number; readonly railsAt: number };
};

export type Advice = {
  readonly code: string;
  readonly text: string;
  readonly source: string;
  readonly sure: Sure;
};

export const adviceOn = (asked: AdviceAsked): readonly Advice[] =>
  rows.flatMap(({ code, source, check }) => {
    const text = check(asked);
    return text === false ? [] : [{ code, text, source: sourceText(source), sure: source.sure }];
  });

type Check = (asked: AdviceAsked) => string | false;

const show = (value: number): string => `${shortInches(value)} in`;
const whole = (value: number): string => `${Math.round(value)}`;

const spanOf = ({ roof, loads }: AdviceAsked) =>
  roof && loads && rafterSpan({ ...loads, section: roof.plan.rafter, spacing: roof.plan.spacing });

/** Height of ties over the plate where they are raised. */
const tieOf = ({ roof }: AdviceAsked): number => (roof?.plan.joists ? roof.plan.joists.height : 0);

const spanOver: Check = (asked) => {
  const most = spanOf(asked);
  const run = asked.roof?.cuts.run ?? 0;
  return (
    most !== undefined &&
    isOver(run, most.span) &&
    `The rafters span ${feetInches(run)} on the level. The tables stop at ${feetInches(most.span)} for this wood, spacing and load.`
  );
};

const spanRaised: Check = (asked) => {
  const most = spanOf(asked);
  const { roof } = asked;
  const tie = tieOf(asked);
  if (!most || !roof || tie <= 0) return false;
  const raised = raisedTieFactor(tie, roof.topHeight);
  if (!raised || raised.sure === 'memory') return false;
  return (
    isOver(roof.cuts.run, most.span * raised.factor) &&
    `The ties are ${show(tie)} up from the plate. That leaves ${feetInches(most.span * raised.factor)} of the span in the tables, and the rafters span ${feetInches(roof.cuts.run)}.`
  );
};

const heelThrust: Check = (asked) => {
  const { roof, loads } = asked;
  if (!roof || !loads || roof.plan.joists === false) return false;
  const { plan } = roof;
  const { every } = roof.plan.joists;
  const raised = raisedTiePull(tieOf(asked) / roof.topHeight);
  if (raised === undefined) return false;
  const load = ((loads.live + loads.dead) * plan.spacing) / 12;
  const span = plan.span / 12;
  const rise = (span / 2) * gradient(plan.slope);
  const pull = thrustAtHeel(load, span, rise) * raised * every;
  return `Under full load each tie holds about ${whole(pull)} lb. The nails at the heel have to hold that: take their number from the plans.`;
};

/** Wood left over the seat, inches. NAVEDTRA 14044 p. 2-11. */
const overSeat = 2;

const seatDeep: Check = ({ roof }) =>
  roof !== undefined &&
  isOver(overSeat, roof.plan.rafter.depth - roof.cuts.notchDepth) &&
  `${show(roof.plan.rafter.depth - roof.cuts.notchDepth)} of wood is left over the seat; ${show(overSeat)} is the least.`;

/** From plate to top of rafter, inches, past which blocks over a braced wall do not do. IRC R602.10.8.2. */
const tallHeel = 15.25;

const heelTall: Check = ({ roof }) =>
  roof !== undefined &&
  isOver(roof.cuts.heightAbovePlate, tallHeel) &&
  `The rafters stand ${show(roof.cuts.heightAbovePlate)} over the plate. Over ${show(tallHeel)}, blocks on a braced wall are not enough: it needs a brace of its own.`;

const ventsSmall: Check = ({ vents }) => {
  if (!vents) return false;
  // The lesser share hangs on words known from memory only, so it never quiets this.
  const wanted = ventArea(vents.attic, 150);
  const less = ventParts(vents.scheme).parts === 300;
  return (
    isOver(wanted, vents.free) &&
    `The vents let through ${whole(vents.free)} sq in; 1/150 of the attic is ${whole(wanted)}. ${less ? 'Half of that may do here: ask the plans.' : 'Half of that will not do on this roof.'}`
  );
};

const ventsBlocked: Check = ({ vents }) =>
  vents !== undefined && `Keep ${show(airSpace)} clear between insulation and sheathing at each vent.`;

const liftHeavy: Check = ({ lift }) =>
  lift !== undefined &&
  peopleFor(lift.pounds) > lift.people &&
  `It weighs ${whole(lift.pounds)} lb. At ${whole(lift.pounds / lift.people)} lb each that is too much even where lifting is easy: take ${peopleFor(lift.pounds)} people or a machine.`;

const ladderFoot: Check = ({ ladder }) => {
  if (!ladder) return false;
  const { foot } = ladderTo(ladder.landing);
  return (
    (ladder.foot < foot - footGrace || ladder.foot > foot + footGrace) &&
    `The foot of the ladder stands ${show(ladder.foot)} out; one in four is ${whole(foot)} in.`
  );
};

/** A foot set by eye to this is as told, inches. Ours. */
const footGrace = 6;

const ladderShort: Check = ({ ladder }) =>
  ladder !== undefined &&
  isOver(ladder.landing + railsOver, ladder.railsAt) &&
  `The rails end ${show(Math.max(0, ladder.railsAt - ladder.landing))} over the landing; ${railsOver} in is the least, or tie the top and give a grab rail.`;

const rows: readonly { readonly code: string; readonly source: Source; readonly check: Check }[] = [
  { code: 'spanOver', source: spanSource, check: spanOver },
  {
    code: 'spanRaised',
    source: { document: 'IRC', section: 'table 802.5.1 note a', sure: 'read' },
    check: spanRaised,
  },
  { code: 'heelThrust', source: thrustSource, check: heelThrust },
  {
    code: 'seatDeep',
    source: { document: 'NAVEDTRA 14044', section: 'p. 2-11', sure: 'read' },
    check: seatDeep,
  },
  {
    code: 'heelTall',
    source: { document: 'IRC', section: 'R602.10.8.2', sure: 'secondHand' },
    check: heelTall,
  },
  { code: 'ventsSmall', source: ventSource, check: ventsSmall },
  { code: 'ventsBlocked', source: { ...ventSource, section: 'R806.3' }, check: ventsBlocked },
  { code: 'liftHeavy', source: liftSource, check: liftHeavy },
  { code: 'ladderFoot', source: ladderSource, check: ladderFoot },
  { code: 'ladderShort', source: ladderSource, check: ladderShort },
];
