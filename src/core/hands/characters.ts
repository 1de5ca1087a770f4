import { evenSkill, type Skill } from './skill';

/** Who a simulated learner is: how often it is right at each sort of decision, and what it does on principle. */
export type Character = {
  readonly skill: Skill;
  /** Every board, plate and ridge gets this call, whatever was seen at it. */
  readonly everything?: 'sound' | 'swap';
  /** Walks off once this share of the work is done. */
  readonly leavesAt?: number;
};

const always = 1;
const never = 0;
/** Right four times in five at each decision, but heeds every danger: who does not is unsafe, which is a fault of its own. */
const competence: Skill = { ...evenSkill(0.8), danger: always };

/** Hands between the expert and the idle one, by name. All but the beginner are as good as the competent but for one thing. */
export const characters = {
  competent: { skill: competence },
  'skips-checks': { skill: { ...competence, check: never } },
  'naive-order': { skill: { ...competence, order: never } },
  'careless-fit': { skill: { ...competence, fit: never } },
  'takes-any': { skill: competence, everything: 'sound' },
  'refuses-all': { skill: competence, everything: 'swap' },
  unsafe: { skill: { ...competence, danger: never } },
  quits: { skill: competence, leavesAt: 0.4 },
  beginner: { skill: evenSkill(0.5) },
} as const satisfies Record<string, Character>;

export type CharacterName = keyof typeof characters;

/** The ladder: hands whose only difference is the chance of the right decision, in tenths. */
export const rungs = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10] as const;

export type RungName = `ladder-${(typeof rungs)[number]}`;

export const rungName = (tenths: (typeof rungs)[number]): RungName => `ladder-${tenths}`;
