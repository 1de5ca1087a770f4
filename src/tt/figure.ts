import { readRoofText } from '../content/readRoof';
import { figure } from '../core/roof/figure';
import type {
  FiguredBlock,
  FiguredBreak,
  FiguredDormer,
  FiguredGussets,
  FiguredRoof,
  FiguredStanding,
  FiguredStuds,
} from '../core/roof/figured';
import type { Cheek, FiguredHip, FiguredJacks, FiguredSleeper, Turn } from '../core/roof/figuredSlants';
import type { FiguredBoards, FiguredLists } from '../core/roof/figuredLists';
import { listsOf } from '../core/roof/lists';
import { degreesOf } from '../present/degrees';
import { readFile, refuseInput } from './readFile';
import type { Verb } from './verbs';

/** `figure ROOF.json`: the figured roof as JSON, lengths in inches, angles in degrees, unrounded. */
export const figureVerb: Verb = ([file, ...more]) => {
  if (file === undefined || more.length > 0) {
    process.stderr.write('tt figure: give one roof file (figure ROOF.json)\n');
    return 2;
  }
  const text = readFile(file);
  if (!text.ok) return refuseInput(file, text.complaints);
  const plan = readRoofText(text.value);
  if (!plan.ok) return refuseInput(file, plan.complaints);
  const roof = figure(plan.value);
  const all = { ...printed(roof), ...listsPrinted(listsOf(plan.value, roof)) };
  process.stdout.write(`${JSON.stringify(all)}\n`);
  return 0;
};

/** The roof as printed: the core has no degrees, so what it turns is told in them here. Parts in one order, absent ones left out. */
const printed = (roof: FiguredRoof): object => {
  const {
    commonRafters,
    ridges,
    ledgers,
    headers,
    highPlates,
    standing,
    layout,
    blocks,
    ties,
    steps,
    posts,
    gableStuds,
    hips,
    valleys,
    jacks,
    sleepers,
    rakeRafters,
    lookouts,
    breaks,
    purlins,
    gussets,
    cutInPlace,
    dormers,
    cautions,
  } = roof;
  return {
    commonRafters,
    ridges,
    ...(ledgers && { ledgers }),
    ...(headers && { headers }),
    ...(highPlates && { highPlates }),
    ...(standing && { standing: standingPrinted(standing) }),
    layout,
    blocks: blocks.map(blockPrinted),
    ties,
    ...(steps && { steps }),
    ...(posts && { posts }),
    ...(gableStuds && { gableStuds: gableStuds.map(studsPrinted) }),
    ...(hips && { hips: hips.map(hipPrinted) }),
    ...(valleys && { valleys: valleys.map(hipPrinted) }),
    ...(sleepers && { sleepers: sleepers.map(sleeperPrinted) }),
    ...(jacks && { jacks: jacks.map(jackPrinted) }),
    ...(breaks && { breaks: breaks.map(breakPrinted) }),
    ...(purlins && { purlins }),
    ...(gussets && { gussets: gussets.map(gussetsPrinted) }),
    ...(rakeRafters && { rakeRafters }),
    ...(lookouts && { lookouts }),
    ...(cutInPlace && { cutInPlace }),
    ...(dormers && { dormers: dormers.map(dormerPrinted) }),
    cautions,
  };
};

const standingPrinted = ({ slope, ...standing }: FiguredStanding): unknown => ({
  ...standing,
  slopeDeg: degreesOf(slope),
  riseIn12: (12 * slope.rise) / slope.run,
});

const blockPrinted = ({ bevel, vent, ...block }: FiguredBlock): unknown => ({
  ...block,
  bevelDeg: degreesOf(bevel),
  ...(vent && { vent }),
});

const studsPrinted = ({ bevel, ...studs }: FiguredStuds): unknown => ({
  ...studs,
  bevelDeg: degreesOf(bevel),
});

const breakPrinted = ({ lowerCut, upperCut, ...rest }: FiguredBreak): unknown => ({
  ...rest,
  lowerCutDeg: degreesOf(lowerCut),
  upperCutDeg: degreesOf(upperCut),
});

const gussetsPrinted = ({ bend, ...gussets }: FiguredGussets): unknown => ({
  ...gussets,
  bendDeg: degreesOf(bend),
});

const slantPrinted = <T extends { readonly slope: Turn; readonly cheeks: readonly Cheek[] }>({
  slope,
  cheeks,
  ...rest
}: T): object => ({ ...rest, slopeDeg: degreesOf(slope), cheeks: cheeks.map(cheekPrinted) });

const cheekPrinted = ({ end, side, cheekAngle, sawBevel }: Cheek): unknown => ({
  end,
  side,
  cheekAngleDeg: degreesOf(cheekAngle),
  sawBevelDeg: degreesOf(sawBevel),
});

const jackPrinted = ({ foot, ...jacks }: FiguredJacks): unknown => ({
  ...slantPrinted(jacks),
  ...(foot && { foot: { levelDeg: degreesOf(foot.level), sawTiltDeg: degreesOf(foot.sawTilt) } }),
});

const sleeperPrinted = ({ planAngle, ...sleeper }: FiguredSleeper): unknown => ({
  ...sleeper,
  planAngleDeg: degreesOf(planAngle),
});

const hipPrinted = ({ backing, ...hip }: FiguredHip): unknown => ({
  ...slantPrinted(hip),
  backingAngleDeg: backing.map(degreesOf),
});

const dormerPrinted = (dormer: FiguredDormer): unknown => {
  const { slope, headers, endRafters, sideStuds, sidePlates, faceRafters, ...rest } = dormer;
  return {
    ...rest,
    slopeDeg: degreesOf(slope),
    headers: headers.map(({ bevel, ...header }) => ({
      ...header,
      ...(bevel && { bevelDeg: degreesOf(bevel) }),
    })),
    endRafters: endRafters.map(({ taper, ...rafter }) => ({ ...rafter, taperDeg: degreesOf(taper) })),
    sideStuds: sideStuds.map(({ topBevel, bottomBevel, ...studs }) => ({
      ...studs,
      topBevelDeg: degreesOf(topBevel),
      bottomBevelDeg: degreesOf(bottomBevel),
    })),
    ...(sidePlates && {
      sidePlates: sidePlates.map(({ bevel, ...plate }) => ({ ...plate, bevelDeg: degreesOf(bevel) })),
    }),
    ...(faceRafters && {
      faceRafters: faceRafters.map(({ foot, ...rafter }) => ({
        ...rafter,
        foot: { levelDeg: degreesOf(foot.level), sawTiltDeg: degreesOf(foot.sawTilt) },
      })),
    }),
  };
};

/** After the figures: boards that have to be ordered say so. */
const listsPrinted = ({ cutList, weights, sheets }: FiguredLists): object => ({
  cutList: { ...cutList, boards: cutList.boards.map(boardsPrinted) },
  weights,
  sheets,
});

const boardsPrinted = ({ special, ...boards }: FiguredBoards): unknown => ({
  ...boards,
  ...(special && { special: 'longer than 24 ft: order special' }),
});
