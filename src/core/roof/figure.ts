import { breakCautions } from './breakCautions';
import { figuredBreaks } from './breaks';
import { figuredBlocks } from './blocks';
import { dormerCautions } from './dormerCautions';
import { figuredDormers } from './dormers';
import type { CommonRafter, FiguredPosts, FiguredRoof, Layout } from './figured';
import { frameOf, platesOf, type Eave, type Frame, type RoofForm } from './form';
import type { Framing } from './framing';
import { figuredHeaders, headersOn, type Header } from './headers';
import { figuredHighPlates, withHighBlocks } from './highPlate';
import { figuredSlants } from './hips';
import { openingCautions } from './openingCautions';
import { figuredJacks, jacksOf } from './jacks';
import type { GablePlan, RoofPlan } from './plan';
import { inch } from '../units/inch';
import { commonsOf, grouped, sidesOf, topOf, wallsOf, type PlaneGroup, type RoofPlane } from './planes';
import { isOver } from '../units/hair';
import { figuredRakes, ledgerPast } from './rake';
import { rakeCautions } from './rakeCautions';
import { eachSection, stepCautions } from './runCautions';
import { ridgesOn, type RidgeOn } from './ridges';
import { gabletCautions } from './gabletCautions';
import { settledFraming, type Settled } from './settled';
import { shedCautions } from './shedCautions';
import { slantCautions } from './slantCautions';
import { figuredSleepers } from './sleepers';
import { atStanding, figuredStanding, standingCautions } from './standing';
import { figuredSteps, outsideStuds, ridgePosts, stepPosts, stepsOn } from './steps';
import { figuredStuds } from './studs';
import { figuredTies } from './ties';

/** Figures a roof: every length, cut, height and mark the crew needs, in inches, unrounded. The plan is already checked. */
export const figure = (plan: RoofPlan): FiguredRoof => {
  const framing = settledFraming(plan);
  const { form } = framing;
  const planes = commonsOf(framing, plan);
  const groups = grouped(planes, form);
  const ridges = ridgesOn(plan, framing, planes);
  const topOn = (frame: Frame): number => topOver(ridges, frame);
  const slants = slanting(plan, framing);
  const dormers = figuredDormers(plan, framing);
  const mains = grouped(firstOfEach(on(planes, form.frames[0])), form);
  const headers = headersOn(framing, planes);
  const steps = stepsOn(plan, ridges);
  const ties = form.frames.flatMap((frame) =>
    tiesOf(plan, on(planes, frame), { frame, topHeight: topOn(frame) }),
  );
  return {
    commonRafters: commons(groups),
    ridges: ridges.map(({ figured }) => figured),
    ...ledgersOf(plan, form, groups),
    ...(headers.length > 0 && { headers: figuredHeaders(headers) }),
    ...figuredHighPlates(plan, form),
    ...standingOf(plan),
    layout: layoutOf(plan, form),
    blocks: withHighBlocks(plan, framing, figuredBlocks(plan, framing)),
    ties,
    ...figuredSteps(steps),
    ...postsOf(plan, topOn(form.frames[0]), [...ridgePosts(plan, ridges, steps), ...stepPosts(steps)]),
    ...studsOf(plan, { form, headers }, planes),
    ...figuredRakes(plan, mains),
    ...slants,
    ...figuredBreaks(plan, framing, planes),
    ...inPlaceOf(framing),
    ...(dormers.length > 0 && { dormers }),
    cautions: [
      ...atStanding(
        plan,
        eachSection(
          plan,
          groups
            .filter(isFirstOfDormer)
            .map((group) => ({ plan, ...group, topHeight: topOn(frameOf(form, group.eave.body)) })),
          (so) => breakCautions(so, groups),
        ),
      ),
      ...rakeCautions(plan, mains),
      ...gabletCautions(plan, headers, topOn(form.frames[0])),
      ...slantCautions({ plan, framing, groups, ...slants }),
      ...dormerCautions(plan, framing, dormers),
      ...openingCautions(plan, framing, dormers),
      ...standingCautions(plan),
      ...shedCautions(plan, groups),
      ...stepCautions(plan, steps, ties),
    ],
  };
};

/** Rafters of a gable dormer with and without tails are cautioned of once. */
const isFirstOfDormer = ({ eave: { opening } }: PlaneGroup, i: number, all: readonly PlaneGroup[]): boolean =>
  !opening || all.findIndex(({ eave }) => eave.opening === opening) === i;

const topOver = (ridges: readonly RidgeOn[], frame: Frame): number =>
  ridges.find((ridge) => ridge.frame === frame)?.figured.topHeight ?? 0;

const on = (planes: readonly RoofPlane[], { body }: Frame): readonly RoofPlane[] =>
  planes.filter(({ eave }) => eave.body === body);

/** Of planes with two kinds of tails the usual one. */
const firstOfEach = (planes: readonly RoofPlane[]): readonly RoofPlane[] =>
  planes.filter(({ eave }, i) => planes.findIndex((one) => one.eave.plane === eave.plane) === i);

type Under = { readonly frame: Frame; readonly topHeight: number };

const tiesOf = (
  plan: RoofPlan,
  planes: readonly RoofPlane[],
  { frame, topHeight }: Under,
): FiguredRoof['ties'] => {
  if (plan.kind === 'shed' || !frame.ridge) return [];
  const opening = frame.wing?.opening;
  const under = opening ? onPlates(plan) : plan;
  const opposite = frame.name
    ? planes
    : planes.filter(({ eave }) => eave.side === 'street' || eave.side === 'yard');
  const across = firstOfEach(opposite);
  const count = ({ eave }: RoofPlane): number =>
    opposite.reduce(
      (sum, one) => (one.eave.plane === eave.plane ? sum + one.count : sum),
      -(eave.through?.length ?? 0),
    );
  const pairs = Math.min(...across.map(count)) - (frame.twins ?? 0);
  return pairs > 0 ? figuredTies(under, { planes: across, topHeight, pairs, frame }) : [];
};

/** Across the plates of a dormer lie joists, whatever the main roof has, if it has any. */
const onPlates = <T extends Pick<GablePlan, 'joists' | 'collars'>>(plan: T): T => ({
  ...plan,
  joists: plan.joists && { ...plan.joists, every: 1, height: inch(0) },
  collars: false,
});

/** A ledger runs from one flush end rafter to the other. */
const ledgersOf = (
  plan: RoofPlan,
  { frames }: RoofForm,
  groups: readonly PlaneGroup[],
): Pick<FiguredRoof, 'ledgers'> => {
  const [group] = groups;
  const [{ ledger }] = frames;
  if (!ledger || !group) return {};
  const leastDepth = group.cuts.plumbCutLength;
  return {
    ledgers: [
      {
        id: 'ledger',
        count: 1,
        side: 'yard',
        section: ledger,
        length: plan.length + 2 * ledgerPast(plan),
        topHeight: topOf(group),
        leastDepth,
        bearsFully: !isOver(leastDepth, ledger.depth),
      },
    ],
  };
};

const standingOf = (plan: RoofPlan): Pick<FiguredRoof, 'standing'> => {
  const standing = figuredStanding(plan);
  return standing ? { standing } : {};
};

const postsOf = (
  plan: RoofPlan,
  topHeight: number,
  others: readonly FiguredPosts[],
): Pick<FiguredRoof, 'posts'> => {
  if (others.length > 0) return { posts: others };
  if (plan.kind !== 'gable' || !plan.posts) return {};
  const { at, below } = plan.posts;
  const length = topHeight - plan.ridge.depth + below;
  return { posts: [{ id: 'post', count: at.length, side: 'both', length, at }] };
};

const studsOf = (
  plan: RoofPlan,
  { form, headers: [header] }: { readonly form: RoofForm; readonly headers: readonly Header[] },
  planes: readonly RoofPlane[],
): Pick<FiguredRoof, 'gableStuds'> => {
  const { gableStuds } = plan;
  if (!gableStuds) return {};
  const foot = header && { at: header.topHeight - header.wood.depth, least: header.wood.depth };
  const long = planes.filter(({ eave }) => !header || eave.side === 'street' || eave.side === 'yard');
  const told = form.frames
    .filter(({ gables }) => gables > 0)
    .flatMap((frame) => {
      const own = on(long, frame);
      return [...new Set(own.map(({ eave }) => eave.part))].flatMap((part) =>
        figuredStuds(
          gableStuds,
          own.filter(({ eave }) => eave.part === part),
          {
            ...frame,
            ...(part !== undefined && { name: part }),
            foot: foot ?? { at: platesOf(frame), least: 0 },
          },
        ),
      );
    });
  return { gableStuds: [...told, ...outsideStuds(plan, { form, planes })] };
};

/** Told by what they are of where they differ; where that does not tell two apart, by a number too. */
const commons = (groups: readonly PlaneGroup[]): readonly CommonRafter[] => {
  const names = groups.map(({ part, side }) =>
    part === undefined ? `common.${side}` : side === 'both' ? `common.${part}` : `common.${part}.${side}`,
  );
  return groups.flatMap(({ side, count, cuts }, i): readonly CommonRafter[] => {
    if (count === 0) return [];
    const name = names[i] ?? '';
    const twice = names.indexOf(name) !== names.lastIndexOf(name);
    const id = groups.length === 1 ? 'common' : twice ? `${name}.${i + 1}` : name;
    return [{ id, count, side, ...cuts }];
  });
};

/** Stations of the first eave, and of those that are laid out otherwise. */
const layoutOf = (plan: RoofPlan, form: RoofForm): Layout => {
  const { spacing } = plan;
  const datum = plan.kind === 'gable' && plan.standing ? 'standing' : plan.datum;
  const [first] = form.eaves;
  const stations = first?.stations ?? [];
  const others = form.eaves.filter((eave) => eave.stations !== stations || frameOf(form, eave.body).section);
  const lists = [...new Set(others.map((eave) => eave.stations))];
  if (lists.length === 0) return { spacing, datum, stations };
  const told = lists.map((list) => ({
    ...partOf(
      form,
      others.filter((eave) => eave.stations === list),
    ),
    stations: list,
  }));
  return { spacing, datum, stations, eaves: told };
};

const partOf = (
  form: RoofForm,
  eaves: readonly Eave[],
): Pick<NonNullable<Layout['eaves']>[number], 'side' | 'part'> => {
  const walls = eaves.map(({ side }) => side);
  const part = eaves[0] && frameOf(form, eaves[0].body).name;
  return part === undefined ? { side: wallsOf(walls) } : { side: sidesOf(walls), part };
};

/** Those that come to where several lines meet. */
const inPlaceOf = ({ form, inPlace }: Settled): Pick<FiguredRoof, 'cutInPlace'> =>
  inPlace.length === 0
    ? {}
    : {
        cutInPlace: inPlace.map(({ eave, at, from, to }) => {
          const part = frameOf(form, eave.body).name;
          return { side: eave.side, ...(part !== undefined && { part }), at, run: to - from };
        }),
      };

type Slanting = Pick<FiguredRoof, 'hips' | 'valleys' | 'sleepers' | 'jacks'>;

const slanting = (plan: RoofPlan, framing: Framing): Slanting => {
  const hips = figuredSlants(plan, framing, 'hip');
  const valleys = figuredSlants(plan, framing, 'valley');
  const jacks = figuredJacks(plan, framing.form, jacksOf(plan, framing));
  const sleepers = figuredSleepers(framing);
  if (hips.length + valleys.length + sleepers.length === 0) return {};
  return {
    ...(sleepers.length > 0 && { sleepers }),
    ...(hips.length > 0 && { hips }),
    ...(valleys.length > 0 && { valleys }),
    jacks,
  };
};
