import { readRoofText } from '../content/readRoof';
import { figure } from '../core/roof/figure';
import type { FiguredBlock, FiguredRoof } from '../core/roof/figured';
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

/** The roof as printed: the core has no degrees, so a block's bevel is told in them here. */
const printed = ({ commonRafters, ridges, layout, blocks, ties, cautions }: FiguredRoof): unknown => ({
  commonRafters,
  ridges,
  layout,
  blocks: blocks.map(inDegrees),
  ties,
  cautions,
});

const inDegrees = ({ bevel, vent, ...block }: FiguredBlock): unknown => ({
  ...block,
  bevelDeg: degreesOf(bevel),
  ...(vent && { vent }),
});
