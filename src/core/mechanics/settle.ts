import { lasting, pressedInto } from './assembly';
import { forceIn, loadOn, touching, type Rest } from './contacts';
import { solved, wayOf, type Factored } from './factor';
import { valueOf, type Frame, type Grip, type Link } from './frame';
import { forcesIn, type Given } from './given';
import { leaned } from './leaning';
import { emptyIn, type Equations } from './skyline';
import { givingOn } from './slips';

/** Where a frame comes to rest, or the way it goes. */
export type Settled = {
  readonly frame: Frame;
  /** Moves and turns of every unknown from the figured place. */
  readonly u: Float64Array;
  /** Pull (+) or push (−) in every link, pounds or inch-pounds. */
  readonly forces: Float64Array;
  /** Joints whose nails gave, and how far: the rest at which each of their links is free of what is over the cap. */
  readonly gave: readonly Gave[];
  /** Undefined when it stands; else the way it goes, as a direction over the unknowns, and the unknown that came loose. */
  readonly falls: { readonly way: Float64Array; readonly loose: number } | undefined;
  /** What was solved last for the moves before leaning, put together again for whoever checks the solution. */
  readonly equations: () => Equations;
  /** Contact passes it took, for whoever watches the cost. */
  readonly passes: number;
};

export type Gave = { readonly grip: Grip; readonly rests: readonly number[] };

export type SettleOptions = {
  /** Leaves out what an axial force does to a stick that leans, and the level push. */
  readonly firstOrder?: boolean;
  /** Multiplies what axial forces do: the factor at which a frame falls is how safe it stands. */
  readonly loadFactor?: number;
  /** Nails that never give. */
  readonly neverSlips?: boolean;
};

/** More joints than this do not give one after another: then it comes down. */
const mostSlips = 40;

/** Comes to rest from a cold start: contacts, then nails that give, then what leaning adds. Pure and the same on every engine. */
export const settle = (frame: Frame, options: SettleOptions = {}): Settled => {
  let given: Given = new Map();
  let rest = touching(frame, given);
  let passes = rest.passes;
  for (let round = 0; rest.factors.loose === undefined && !options.neverSlips; round++) {
    const giving = givingOn(frame, given, rest.u);
    if (!giving) break;
    if (round >= mostSlips) {
      const factors = { ...rest.factors, loose: 0 };
      return verdict(frame, { rest, given, passes, factors, upright: rest.u });
    }
    given = giving;
    rest = touching(frame, given);
    passes += rest.passes;
  }
  const so = { rest, given, passes, factors: rest.factors, upright: rest.u };
  if (rest.factors.loose !== undefined || options.firstOrder) return verdict(frame, so);
  const factors = leaned(frame, rest, options.loadFactor ?? 1);
  if (factors.loose !== undefined) return verdict(frame, { ...so, factors });
  const load = rest.load.slice();
  for (let i = 0; i < load.length; i++) load[i] = (load[i] as number) + (frame.push[i] as number);
  return verdict(frame, { ...so, factors, rest: { ...rest, u: solved(factors, load) } });
};

type Found = {
  readonly rest: Rest;
  readonly given: Given;
  readonly passes: number;
  readonly factors: Factored;
  /** Moves before leaning: what nails gave is told by these, so that posing it again finds it at rest. */
  readonly upright: Float64Array;
};

const verdict = (frame: Frame, { rest, given, passes, factors, upright }: Found): Settled => {
  const { u, closed } = rest;
  const forces = new Float64Array(frame.links.length);
  for (let i = 0; i < forces.length; i++) {
    const link = frame.links[i] as Link;
    if (link.acts === 'both' || closed[i] === 1) forces[i] = forceIn(link, u);
  }
  for (const [grip, slip] of given)
    forcesIn(frame, grip, { slip, u }).forEach((f, i) => (forces[grip.links[i] as number] = f));
  const gave = [...given].map(([grip, slip]) => {
    const so = forcesIn(frame, grip, { slip, u: upright });
    return {
      grip,
      rests: grip.links.map((n, i) => {
        const link = frame.links[n] as Link;
        return valueOf(link.row, upright) - (so[i] as number) / link.stiffness;
      }),
    };
  });
  const falls = factors.loose === undefined ? undefined : { way: wayOf(factors), loose: factors.loose };
  return {
    frame,
    u,
    forces,
    gave,
    falls,
    passes,
    equations: () => {
      const base = lasting(frame, given);
      const stiffness = pressedInto(emptyIn(base.stiffness), { frame, base, closed });
      return { stiffness, load: loadOn(frame, base, closed) };
    },
  };
};
