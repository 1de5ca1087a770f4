import { readRoofText } from '../content/readRoof';
import { figure } from '../core/roof/figure';
import type {
  Cheek,
  FiguredBlock,
  FiguredHip,
  FiguredRoof,
  FiguredStanding,
  FiguredStuds,
  Turn,
} from '../core/roof/figured';
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
  process.stdout.write(`${JSON.stringify(printed(figure(plan.value)))}\n`);
  return 0;
};

/** The roof as printed: the core has no degrees, so what it turns is told in them here. Parts in one order, absent ones left out. */
const printed = (roof: FiguredRoof): unknown => {
  const {
    commonRafters,
    ridges,
    ledgers,
    highPlates,
    standing,
    layout,
    blocks,
    ties,
    posts,
    gableStuds,
    hips,
    valleys,
    jacks,
    cutInPlace,
    cautions,
  } = roof;
  return {
    commonRafters,
    ridges,
    ...(ledgers && { ledgers }),
    ...(highPlates && { highPlates }),
    ...(standing && { standing: standingPrinted(standing) }),
    layout,
    blocks: blocks.map(blockPrinted),
    ties,
    ...(posts && { posts }),
    ...(gableStuds && { gableStuds: gableStuds.map(studsPrinted) }),
    ...(hips && { hips: hips.map(hipPrinted) }),
    ...(valleys && { valleys: valleys.map(hipPrinted) }),
    ...(jacks && { jacks: jacks.map(slantPrinted) }),
    ...(cutInPlace && { cutInPlace }),
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

const hipPrinted = ({ backing, ...hip }: FiguredHip): unknown => ({
  ...slantPrinted(hip),
  backingAngleDeg: backing.map(degreesOf),
});
