import { answerOf, type RoofDraft } from './roofDraft';

/** What a roof has where an answer is left out, as it would be typed: that of another field, or always the same. */
const likes: Readonly<Record<string, string>> = {
  'highPlate.width': 'plate.width',
  'yard.slope': 'slope',
  'yard.overhang': 'overhang',
  'yard.seat': 'seat',
  endSlope: 'slope',
  'wings.0.slope': 'slope',
  'dormers.0.slope': 'slope',
  'dormers.0.overhang': 'overhang',
  'sections.1.span': 'span',
  'sections.1.slope': 'slope',
};

const figures: Readonly<Record<string, string>> = {
  'between.clearance': '0',
  'yard.plateHeight': '0',
  'highPlate.overhang': '0',
  rakeOverhang: '0',
  sheathing: '1/2"',
  blockAllowance: '1/16"',
  'sections.0.stepOverhang': '0',
};

/** Undefined where leaving it out means something that no answer would. */
export const usualOf = (draft: RoofDraft, field: string): string | undefined => {
  // The rafters of a shed dormer then run to the main ridge, whatever slope that takes.
  if (field === 'dormers.0.slope' && answerOf(draft.typed, 'dormers.0.kind') === 'shed') return undefined;
  const like = likes[field];
  const answer = like === undefined ? figures[field] : draft.typed[like];
  return answer === '' ? undefined : answer;
};
