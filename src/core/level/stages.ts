/** Stages of the job, in the order in which a crew comes to them. */
export const stages = ['ground', 'ridge', 'hold', 'stack', 'close'] as const;
export type Stage = (typeof stages)[number];

/** What of the job a level is about: the crew has done what comes before `from`; it is handed over after `to`. */
export type StageRange = { readonly from: Stage; readonly to: Stage };

export const wholeJob: StageRange = { from: 'ground', to: 'close' };

const rank = (stage: Stage): number => stages.indexOf(stage);

export const within = ({ from, to }: StageRange, stage: Stage): boolean =>
  rank(stage) >= rank(from) && rank(stage) <= rank(to);

/** Whether a stage comes before the first one of a level: the crew has done it. */
export const before = ({ from }: StageRange, stage: Stage): boolean => rank(stage) < rank(from);

/** Whether a stage comes after the last one of a level: others will do it. */
export const beyond = ({ to }: StageRange, stage: Stage): boolean => rank(stage) > rank(to);

/** The stages the crew did before the learner came; undefined where the learner begins on the ground. */
export const crewDid = ({ from }: StageRange): StageRange | undefined => {
  const to = stages[rank(from) - 1];
  return to && { from: 'ground', to };
};
