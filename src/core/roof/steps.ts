import type { Vec2 } from '../geometry/vector';
import { isOver } from '../units/hair';
import { inch } from '../units/inch';
import type { FiguredPosts, FiguredRoof, FiguredStuds } from './figured';
import type { FiguredStep, RidgeBears } from './figuredSteps';
import { platesOf, type Frame, type RoofForm } from './form';
import { postsUnder, sectionName, stepsOf, woodOverPocket, type Step } from './forms/stepped';
import type { RoofPlan, Section, SteppedPlan } from './plan';
import type { RoofPlane } from './planes';
import type { RidgeOn } from './ridges';
import { figuredStuds } from './studs';
import type { Timber } from './timber';

/** Where sections of a run meet: how the lower ridge ends there, and what carries its end. */

/** Both sides of a step as they are framed. */
export type StepOn = {
  readonly step: Step;
  readonly higher: RidgeOn;
  readonly lower: RidgeOn;
  readonly bearing: RidgeBears;
};

export const stepsOn = (plan: RoofPlan, ridges: readonly RidgeOn[]): readonly StepOn[] =>
  plan.kind !== 'stepped'
    ? []
    : stepsOf(plan).flatMap((step): readonly StepOn[] => {
        const [higher, lower] = [step.higher, step.lower].map((index) =>
          ridges.find(({ frame }) => frame.name === sectionName(index)),
        );
        if (!higher || !lower) return [];
        return [{ step, higher, lower, bearing: bearingAt(plan, { step, higher, lower }) }];
      });

type Sides = Omit<StepOn, 'bearing'>;

const bearingAt = (plan: SteppedPlan, sides: Sides): RidgeBears => {
  const { step, higher, lower } = sides;
  const under = plan.sections[step.lower] ?? plan.sections[0];
  const over = plan.sections[step.higher] ?? plan.sections[0];
  const { bearing } = under;
  const { topHeight, section } = lower.figured;
  const inWall = bearing.on === 'pocket';
  const way = (step.higher > step.lower ? 1 : -1) * (inWall ? 1 : -1);
  const ends: Vec2 = [step.at, step.at + way * bearing.length];
  const height = topHeight - section.depth;
  const overHigher = height - platesOf(higher.frame);
  const overLower = height - platesOf(lower.frame);
  const onHigher = inWall && overHigher >= 0;
  const length = onHigher ? overHigher : overLower + bearing.below;
  return {
    on: bearing.on,
    length: bearing.length,
    from: Math.min(...ends),
    to: Math.max(...ends),
    area: bearing.length * section.thickness,
    height,
    overLower,
    overHigher,
    ...(inWall && { clear: higher.figured.topHeight - woodOverPocket(plan, over, under) - topHeight }),
    ...(isOver(length, 0) && {
      stands: { on: onHigher ? 'higherPlates' : isOver(bearing.below, 0) ? 'below' : 'lowerPlates', length },
    }),
  };
};

/** The steps of a run, from end A. */
export const figuredSteps = (steps: readonly StepOn[]): Pick<FiguredRoof, 'steps'> =>
  steps.length === 0
    ? {}
    : {
        steps: steps.map(({ step, higher, lower, bearing }, i): FiguredStep => ({
          id: `step.${i + 1}`,
          at: step.at,
          higher: higher.frame.name ?? '',
          lower: lower.frame.name ?? '',
          rise: higher.figured.topHeight - lower.figured.topHeight,
          bearing,
        })),
      };

const sectionOfPost = ({ lower, bearing }: StepOn): Section => ({
  thickness: lower.figured.section.thickness,
  depth: inch(bearing.length),
});

/** What carries the ends of ridges: one at each step that leaves room for it. */
export const stepPosts = (steps: readonly StepOn[]): readonly FiguredPosts[] =>
  steps.flatMap((one, i): readonly FiguredPosts[] => {
    const { from, to, stands } = one.bearing;
    if (!stands) return [];
    const at = [(from + to) / 2];
    return [
      {
        id: `post.step${i + 1}`,
        count: 1,
        side: 'both',
        length: stands.length,
        at,
        section: sectionOfPost(one),
      },
    ];
  });

/** Half of a 4×4, as posts are set under ridges. Inches. */
export const halfPost = 1.75;

/** Of a run whose ridges carry as beams: those under each ridge, and apart those that stand on a lower one in its pocket. */
export const ridgePosts = (
  plan: RoofPlan,
  ridges: readonly RidgeOn[],
  steps: readonly StepOn[],
): readonly FiguredPosts[] => {
  if (plan.kind !== 'stepped' || !plan.posts) return [];
  const { posts } = plan;
  return plan.sections.flatMap((_, i) => {
    const ridge = ridges.find(({ frame }) => frame.name === sectionName(i))?.figured;
    if (!ridge) return [];
    const underside = ridge.topHeight - ridge.section.depth;
    const places = postsUnder(plan, i);
    const pocketOf = (at: number): number => steps.findIndex((one) => isInPocket(one, i, at));
    const id = `post.${sectionName(i)}`;
    const onFloor = {
      id,
      at: places.filter((at) => pocketOf(at) < 0),
      length: underside + posts.below,
    };
    const onRidge = places.flatMap((at) => {
      const step = pocketOf(at);
      const lower = steps[step]?.lower.figured;
      return lower ? [{ id: `${id}.onStep${step + 1}`, at: [at], length: underside - lower.topHeight }] : [];
    });
    return [onFloor, ...onRidge]
      .filter(({ at, length }) => at.length > 0 && isOver(length, 0))
      .map((post): FiguredPosts => ({ ...post, count: post.at.length, side: 'both' }));
  });
};

/** Whether a post under a higher ridge stands over the pocket of the lower one. */
const isInPocket = ({ step, bearing: { on, from, to } }: StepOn, section: number, at: number): boolean =>
  step.higher === section && on === 'pocket' && isOver(at, from - halfPost) && isOver(to + halfPost, at);

/** The same as solids. */
export const stepTimbers = (steps: readonly StepOn[]): readonly Timber[] =>
  steps.flatMap(({ lower, bearing: { from, to, height, stands } }, i): readonly Timber[] => {
    if (!stands) return [];
    const low = height - stands.length;
    return [
      {
        id: `post.step${i + 1}`,
        origin: [from, 0],
        direction: [1, 0],
        outline: [
          [0, low],
          [to - from, low],
          [to - from, height],
          [0, height],
        ],
        thickness: lower.figured.section.thickness,
        cuts: [],
      },
    ];
  });

type Studded = { readonly form: RoofForm; readonly planes: readonly RoofPlane[] };

/** Beside a higher section that is narrower, the lower one shows ends of a gable of its own: studs outside of the higher walls. */
export const outsideStuds = (plan: RoofPlan, { form, planes }: Studded): readonly FiguredStuds[] => {
  if (plan.kind !== 'stepped' || !plan.gableStuds) return [];
  const { gableStuds } = plan;
  return stepsOf(plan).flatMap((step, i) => {
    const [higher, lower] = [form.frames[step.higher], form.frames[step.lower]];
    if (!higher || !lower || !isOver(lower.span, higher.span)) return [];
    return figuredStuds(gableStuds, planes.filter(isIn(lower)).map(outsideOf(higher)), {
      gables: 1,
      name: `step${i + 1}`,
      foot: { at: platesOf(lower), least: 0 },
    });
  });
};

const isIn =
  ({ body }: Frame) =>
  ({ eave }: RoofPlane): boolean =>
    eave.body === body;

const outsideOf =
  ({ span }: Frame) =>
  (plane: RoofPlane): RoofPlane => {
    const { clad, run } = plane.eave;
    return { ...plane, eave: { ...plane.eave, open: [clad, run - span / 2 - clad] } };
  };
