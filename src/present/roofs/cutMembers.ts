import type { CommonRafter, FiguredRoof } from '../../core/roof/figured';
import type { FiguredHip, FiguredJacks, Turn } from '../../core/roof/figuredSlants';
import type { RoofPlan } from '../../core/roof/plan';
import { shortInches } from '../../core/units/lengthText';
import type { CutMember } from './cutMember';
import type { Told } from './figures';
import { partOfId, whereText } from './where';

/** Every different member of a roof that has cuts worth drawing, in the order of the sheet, by its id in the figured roof. */

type Asked = Told & { readonly plan: RoofPlan; readonly roof: FiguredRoof };

export type DrawnMember = CutMember & { readonly id: string; readonly count: number };

export const cutMembers = (asked: Asked): readonly DrawnMember[] => {
  const { roof, words } = asked;
  const { member } = words.roofs;
  return [
    ...roof.commonRafters.map((one) => commonMember(asked, one)),
    ...(roof.hips ?? []).map((one) => slantMember(asked, one, member.hip)),
    ...(roof.valleys ?? []).map((one) => slantMember(asked, one, member.valley)),
    ...(roof.jacks ?? []).map((one) => jackMember(asked, one)),
  ];
};

export const commonMember = ({ plan, roof, words }: Asked, one: CommonRafter): DrawnMember => {
  const where = whereText(words, one.side, partOfId(one.id));
  const { common } = words.roofs.member;
  return {
    id: one.id,
    count: one.count,
    name: roof.commonRafters.length > 1 ? `${common}, ${where}` : common,
    ...plan.rafter,
    slope: one,
    body: one.bodyLength,
    tail: one.tailLength,
    plumbCut: one.plumbCutLength,
    seat: one.seat,
    overPlate: one.heightAbovePlate,
    ...(one.high && {
      high: { seat: one.high.seat, overPlate: one.high.heightAbovePlate, tail: one.high.tailLength },
    }),
    cheeks: [],
    square: [in12(one), '12'],
  };
};

const slantMember = ({ plan }: Asked, one: FiguredHip, name: string): DrawnMember => {
  const isHip = one.id.startsWith('hip');
  const number = /\.(\d+)$/.exec(one.id)?.[1];
  return {
    id: one.id,
    count: one.count,
    name: number === undefined ? name : `${name} ${number}`,
    ...one.section,
    slope: one.slope,
    body: one.bodyLength,
    tail: one.tailLength,
    plumbCut: one.section.depth * steep(one.slope),
    seat: one.seat,
    overPlate: one.heightAbovePlate,
    cheeks: one.cheeks,
    ...(isHip && { backing: one.backing }),
    square: squareOf(plan, one.slope),
  };
};

const jackMember = ({ plan, words }: Asked, one: FiguredJacks): DrawnMember => ({
  id: one.id,
  count: one.count,
  name: `${words.roofs.member[one.kind]}, ${whereText(words, one.side)}`,
  ...plan.rafter,
  slope: one.slope,
  body: one.bodyLength,
  tail: one.tailLength,
  plumbCut: plan.rafter.depth * steep(one.slope),
  seat: one.seat,
  overPlate: one.heightAbovePlate,
  cheeks: one.cheeks,
  ...(one.foot && { foot: one.foot }),
  square: [in12(one.slope), '12'],
});

/** Length along the slope for each inch of run. */
const steep = ({ rise, run }: Turn): number => Math.sqrt(rise * rise + run * run) / run;

const in12 = ({ rise, run }: Turn): string => shortInches(Math.round((12000 * rise) / run) / 1000);

/** Under equal slopes a hip runs 17 for each 12 of a common, near enough (NAVEDTRA 14044 p. 2-24); else its own slope is told. */
const squareOf = ({ slope }: RoofPlan, own: Turn): readonly [string, string] => {
  const equal = slope.rise / slope.run / Math.sqrt(2);
  return Math.abs(own.rise / own.run - equal) < 1e-6 ? [in12(slope), '17'] : [in12(own), '12'];
};
