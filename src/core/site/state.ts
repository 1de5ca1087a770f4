import type { End } from '../roof/side';
import type { AnchorPlace, Cut, LineId, MarkedOn, Person, Readiness, Spot } from './action';
import type { BoardId, JointId, MemberId } from './ids';
import type { Methods } from '../level/method';
import type { DangerId } from './dangers/danger';

/** The site as the events have made it. What nature drew (as-found truth) is never in here: it follows from level and seed. */
export type SiteState = {
  readonly agreed: Partial<Methods> & { readonly signals?: string };
  readonly ready: Readonly<Partial<Record<Readiness, AnchorPlace>>>;
  readonly people: Readonly<Record<Person, Spot>>;
  readonly sling: { readonly hitch: string; readonly tagLine: boolean } | undefined;
  /** Inches added (+) or taken off the top of a plate at a corner or middle, and pulled outward (+). */
  readonly mends: Readonly<Record<string, { readonly up: number; readonly out: number }>>;
  readonly ridge: RidgeState | undefined;
  readonly members: Readonly<Partial<Record<MemberId, Placed>>>;
  readonly joints: Readonly<Partial<Record<JointId, Nailing>>>;
  /** How the two sides of a joint, tie or brace stood to each other when it was fastened, or since it slipped. Inches. */
  readonly rests: Readonly<Record<string, readonly number[]>>;
  readonly marks: Readonly<Partial<Record<MarkedOn, readonly number[]>>>;
  /** Lines that hang, how far off the work they are held, and how often they were pulled. */
  readonly lines: Readonly<Partial<Record<LineId, Line>>>;
  readonly judged: Readonly<Record<string, { readonly call: string; readonly why?: string }>>;
  readonly readings: readonly Reading[];
  /** Trims by board or member and cut, inches taken off so far. */
  readonly trims: Readonly<Record<string, Readonly<Partial<Record<Cut | 'tail', number>>>>>;
  readonly splits: readonly MemberId[];
  readonly stops: readonly { readonly danger: DangerId; readonly action: string }[];
  /** Crew-minutes spent so far. */
  readonly minutes: number;
  /** Number of events so far: readings and draws are keyed by it where a repeat may differ. */
  readonly told: number;
  readonly unhooked: boolean;
  readonly down: string | undefined;
  readonly handedOver: boolean;
};

/** Handed over, or down: nothing is left to do. */
export const isOver = ({ handedOver, down }: Pick<SiteState, 'handedOver' | 'down'>): boolean =>
  handedOver || down !== undefined;

export type RidgeState = {
  readonly on: 'machine' | 'posts' | 'hands';
  /** Top of the ridge above (+) its figured height, and aside of the centre line toward the yard (+), at each end. */
  readonly high: Readonly<Record<End, number>>;
  readonly aside: Readonly<Record<End, number>>;
  /** Where its middle was pushed to, toward the yard (+) of the line of its ends; its posts stand by that. */
  readonly pushed?: number;
  /** Hands have let go of its middle: a pair holds it there. */
  readonly eased?: true;
};

export type Placed = {
  readonly board?: BoardId;
  /** x of its centre, or of its near end for a block. */
  readonly x: number;
  /** A collar's or a post's height above (+) or below where it was figured. */
  readonly off?: number;
  /** A post: which ends are fixed. A block: whether it was driven in. */
  readonly how?: string;
};

export type Line = { readonly off: number; readonly pulls: number };

/** Tacks are proud and count toward nothing; nails are home. */
export type Nailing = { readonly tacks: number; readonly nails: number };

export type Reading = {
  readonly tool: string;
  readonly at: string;
  readonly from?: string;
  readonly shown: number | string;
  readonly said: number | string;
  readonly told: number;
};
