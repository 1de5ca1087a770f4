import type { RoofPlan } from '../core/roof/plan';
import { complaint, type Complaint, type Read } from './complaint';
import { readJson } from './readJson';
import { misfits } from './roofFits';
import { roofSchema, type RoofFile } from './roofSchema';
import { lengthWanted, roofKinds } from './roofSchemaParts';
import { planOf, wrongSizes } from './roofSizes';
import { at, readShape, said } from './shape';
import { shedKeys } from './shedFits';
import { dormerKeys } from './dormerSizes';
import { besideStanding } from './standingFits';
import { missingSections } from './steppedFits';

/** A roof file's text to a plan in inches that can be figured, or what is wrong with it. */
export const readRoofText = (text: string): Read<RoofPlan> => {
  const json = readJson(text);
  return json.ok ? readRoof(json.value) : json;
};

/** The same from plain data. `base` goes before every path, for a roof that sits inside another file. */
export const readRoof = (value: unknown, base = ''): Read<RoofPlan> => {
  const read = readPlain(value);
  return read.ok || base === '' ? read : no(read.complaints.map((c) => under(base, c)));
};

const under = (base: string, c: Complaint): Complaint => ({
  ...c,
  path: c.path === '$' ? base : `${base}.${c.path}`,
});

const no = (complaints: readonly Complaint[]): Read<never> => ({ ok: false, complaints });

/** Everything wrong with the shape and the sizes is told at once; what does not go together only when they are right. */
const readPlain = (value: unknown): Read<RoofPlan> => {
  const stranger = strangeKind(value);
  if (stranger) return no([stranger]);
  const shape = readShape(roofSchema, value);
  const sizes = wrongSizes(value);
  if (!shape.ok) return no([...shape.complaints, ...missingSeat(value), ...sizes]);
  if (sizes.length > 0) return no(sizes);
  const stray = strayKeys(shape.value);
  if (stray.length > 0) return no(stray);
  const plan = planOf(shape.value);
  const wrong = misfits(plan, shape.value.units ?? 'in');
  return wrong.length > 0 ? no(wrong) : { ok: true, value: plan };
};

/** Another kind of roof has other keys, so nothing more can be said of the file. */
const strangeKind = (value: unknown): Complaint | undefined => {
  const kind = at(value, ['kind']);
  if (typeof kind !== 'string' || (roofKinds as readonly string[]).includes(kind)) return undefined;
  return complaint('kind', `is ${said(kind)}, which cannot be figured yet`, roofKinds.map(said).join(', '));
};

/** Keys that only mean something on another kind of roof; unread, they would be a plan that is not the one figured. */
const belongs: Readonly<Record<string, readonly RoofFile['kind'][]>> = {
  rakeOverhang: ['gable', 'hip', 'shed', 'gambrel', 'stepped'],
  rake: ['gable', 'shed'],
  ridge: ['gable', 'hip', 'gambrel', 'stepped'],
  joists: ['gable', 'hip', 'gambrel', 'stepped'],
  collars: ['gable', 'hip', 'gambrel', 'stepped'],
  yard: ['gable'],
  posts: ['gable', 'stepped'],
  wings: ['gable'],
  dormers: ['gable'],
  gableStuds: ['gable', 'hip', 'shed', 'gambrel', 'stepped'],
  sections: ['stepped'],
  ledger: ['shed'],
  highPlate: ['shed'],
  between: ['shed'],
  standing: ['gable'],
  endSlope: ['hip'],
  hip: ['hip'],
  hipTop: ['hip'],
  hipFit: ['hip'],
  gablet: ['hip'],
  upperSlope: ['gambrel'],
  breakIn: ['gambrel'],
  halfCircle: ['gambrel'],
  breakOn: ['gambrel'],
  purlin: ['gambrel'],
  gussets: ['gambrel'],
  breakTies: ['gambrel'],
};

const strayKeys = (file: RoofFile): readonly Complaint[] => [
  ...Object.entries(belongs).flatMap(([key, kinds]) =>
    at(file, [key]) === undefined || kinds.includes(file.kind)
      ? []
      : [
          complaint(
            key,
            `means nothing on a ${file.kind} roof`,
            `only with kind ${kinds.map(said).join(', ')}`,
          ),
        ],
  ),
  ...withGablet(file),
  ...datumFor(file),
  ...missing(file),
  ...otherBreak(file),
  ...shedKeys(file),
  ...dormerKeys(file),
  ...besideStanding(file),
];

/** On a hip roof these are of its small gables. */
const withGablet = (file: RoofFile): readonly Complaint[] =>
  file.kind !== 'hip' || file.gablet
    ? []
    : (['rakeOverhang', 'gableStuds'] as const).flatMap((key) =>
        file[key] === undefined
          ? []
          : [complaint(key, 'means nothing on a hip roof without a small gable', 'only with gablet')],
      );

/** A roof that goes on from another has its seat from that. */
const missingSeat = (file: unknown): readonly Complaint[] =>
  typeof file === 'object' &&
  file !== null &&
  !Array.isArray(file) &&
  at(file, ['seat']) === undefined &&
  at(file, ['standing']) === undefined
    ? [complaint('seat', 'is missing', lengthWanted)]
    : [];

const missing = (file: RoofFile): readonly Complaint[] => [
  ...(file.kind !== 'shed' && file.ridge === undefined
    ? [complaint('ridge', 'is missing', '{"thickness", "depth"}')]
    : []),
  ...missingSeat(file),
  ...(file.kind === 'gambrel' ? missingBreak(file) : []),
  ...(file.kind === 'stepped' ? missingSections(file) : []),
];

const missingBreak = ({ halfCircle, upperSlope, breakIn }: RoofFile): readonly Complaint[] => {
  const one = (key: string, value: unknown, wanted: string): readonly Complaint[] => {
    if (halfCircle === undefined) return value === undefined ? [complaint(key, 'is missing', wanted)] : [];
    return value === undefined
      ? []
      : [complaint(key, 'follows from the slope in a half circle', 'without it, or without halfCircle')];
  };
  return [
    ...one('upperSlope', upperSlope, '{"rise", "run"}, flatter than the slope below'),
    ...one('breakIn', breakIn, lengthWanted),
  ];
};

/** Sizes of the other way to frame a break would be read by nobody. */
const otherBreak = ({ kind, breakOn = 'purlin', ...file }: RoofFile): readonly Complaint[] => {
  const other = breakOn === 'purlin' ? 'gussets' : 'purlin';
  return kind === 'gambrel' && file[other] !== undefined
    ? [complaint(other, `means nothing with breakOn "${breakOn}"`, `only with breakOn "${other}"`)]
    : [];
};

const datumFor = ({ kind, datum }: RoofFile): readonly Complaint[] => {
  if (datum === undefined || (datum === 'ridgeEnd') === (kind === 'hip')) return [];
  const accepted = kind === 'hip' ? '"ridgeEnd"' : '"endA", "endB", "centre"';
  return [complaint('datum', `is ${said(datum)} on a ${kind} roof`, accepted)];
};
