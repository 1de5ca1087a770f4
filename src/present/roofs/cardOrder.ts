import type { RoofPlan } from '../../core/roof/plan';
import type { TaskCode } from '../../core/order/crew/task';
import type { RoofMessages } from '../words/roofMessages';

/** The order of work of a roof in the words of the crew's own list; a point of no return stands between two of its steps. */
export type OrderLine = { readonly step: string } | { readonly noReturn: string };

type Own = keyof RoofMessages['roofs']['order'];
type Stop = keyof RoofMessages['roofs']['noReturn'];
/** What is done in one go; or what there is no cheap way back from. */
type Row = readonly (TaskCode | `own.${Own}`)[] | Stop;

/** Without a machine nothing lets go. */
export const orderOf = (
  plan: RoofPlan,
  { tasks, roofs }: RoofMessages,
  machine = true,
): readonly OrderLine[] =>
  (machine ? rowsOf(plan) : rowsOf(plan).flatMap(byHand)).map((row) => {
    if (typeof row === 'string') return { noReturn: roofs.noReturn[row] };
    const words = row.map((code) =>
      code.startsWith('own.') ? roofs.order[code.slice(4) as Own] : tasks[code as TaskCode],
    );
    return { step: `${words.join('. ')}.` };
  });

const byHand = (row: Row): readonly Row[] => {
  if (typeof row === 'string') return row === 'letGo' ? [] : [row];
  const left = row.filter((code) => code !== 'letGo');
  return left.length === 0 ? [] : [left];
};

const walls: Row = ['braceWalls', 'proveWalls'];
const marked: Row = ['lookOver', 'layOut'];
const shedMarked: Row = ['lookOver', 'own.mark'];
const before: readonly Row[] = [walls, ['lookOver', 'settleRidge'], ['tieWalls', 'layOut']];
const raised: readonly Row[] = ['ridgeUp', ['setPosts', 'landRidge']];
const held: readonly Row[] = [['braceRidge'], ['lockMiddle'], 'letGo', ['letGo']];
const planed: readonly Row[] = [['string', 'stack'], ['heels'], 'nailed'];
const end: readonly Row[] = [
  ['chalk', 'upper'],
  ['propsOut', 'handOver'],
];

const rowsOf = (plan: RoofPlan): readonly Row[] => {
  switch (plan.kind) {
    case 'shed':
      return [
        walls,
        shedMarked,
        ...(plan.ledger ? ([['own.ledger']] as const) : []),
        ['own.shedEnds'],
        ...(plan.ledger ? ([['fixLedger'], 'ledgerUp'] as const) : []),
        ['own.shedMiddle'],
        ...planed,
        ['own.blocks'],
        ['handOver'],
      ];
    case 'hip':
      return [
        ...before,
        ...raised,
        ['own.ridgeEnds'],
        ...held,
        ['own.endCommons'],
        ['own.hips'],
        ['own.jacks'],
        ['heels'],
        'nailed',
        ...end,
      ];
    case 'gambrel':
      return plan.breakOn.what === 'purlin'
        ? [...before, ['own.purlins'], ...planed, ...raised, ['own.upper'], ...held, ...end]
        : [...before, ['own.gussets'], ...raised, ['proveEnds'], ['nailEnds'], ...held, ...planed, ...end];
    case 'stepped':
      return [
        ...before,
        ...raised,
        ['proveEnds'],
        ['nailEnds'],
        ...held,
        ['own.lowerRidges'],
        ...planed,
        ...end,
      ];
    case 'gable':
      return gableRows(plan);
  }
};

const gableRows = (plan: Extract<RoofPlan, { kind: 'gable' }>): readonly Row[] => {
  if (plan.posts) {
    return [
      walls,
      marked,
      'ridgeUp',
      ['own.beam'],
      ['braceRidge'],
      'letGo',
      ['letGo', 'proveEnds'],
      ...planed,
      ['handOver'],
    ];
  }
  const over = plan.wings?.some(({ framing }) => framing === 'overSheathing');
  const wing: readonly Row[] = over ? [['own.over'], ['own.overWing']] : [['own.valleys'], ['own.wing']];
  return [
    ...before,
    ...raised,
    ['proveEnds'],
    ['nailEnds'],
    ...(plan.standing ? [['own.joint'] as const] : []),
    ...(plan.dormers?.length ? [['own.trimmers'] as const] : []),
    ...held,
    ...planed,
    ...(plan.wings?.length ? wing : []),
    ...(plan.dormers?.length ? [['own.dormer'] as const] : []),
    ...end,
  ];
};

/** What is read and written down: rules of the product, each with room for a reading. */
export const checksOf = (plan: RoofPlan, { rules }: RoofMessages): readonly string[] => {
  const ids =
    plan.kind === 'shed' ? ['C1', 'C5', 'C6', 'C7', 'T1'] : ['C1', 'C2', 'C3', 'C4', 'C5', 'C6', 'C7', 'T1'];
  return ids.flatMap((id) => rules[id]?.name ?? []);
};
