import type { Vec3 } from '../../core/geometry/vector';
import type { Person, Sign, Spot } from '../../core/site/action';

/** What one person does at a moment, said by what is touched: posture and place follow from it. Building axes, inches. */
export type Task = {
  readonly doing: Doing;
  readonly where: Where;
  /** What the tool in the working hand touches, or the hand itself where it holds none. */
  readonly works?: Vec3;
  readonly tool?: HandTool;
  /** What the other hand has hold of. */
  readonly holds?: Vec3;
  readonly looks: Vec3;
  readonly sign?: Sign;
};

export type Doing =
  | 'talk'
  | 'stand'
  | 'signal'
  | 'guide'
  | 'walk'
  | 'carry'
  | 'steady'
  | 'nail'
  | 'draw'
  | 'measure'
  | 'level'
  | 'sight'
  | 'look'
  | 'mark'
  | 'stretch'
  | 'saw'
  | 'pry'
  | 'hook'
  | 'ready'
  | 'comeDown';

export type HandTool =
  | 'hammer'
  | 'nailer'
  | 'puller'
  | 'tape'
  | 'rule'
  | 'level'
  | 'square'
  | 'reel'
  | 'saw'
  | 'pencil'
  | 'bar'
  | 'tagLine';

/** At a spot the site names, or at the work: about which point, and from which way one comes to it. */
export type Where =
  { readonly on: 'spot'; readonly spot: Spot } | { readonly on: 'work'; readonly from: Vec3 };

/** What lies or runs between hands and is no part of the building. */
export type Thing = {
  readonly kind: 'tape' | 'string' | 'hose' | 'level' | 'pole' | 'board' | 'horse' | 'jack' | 'handle';
  readonly from: Vec3;
  readonly to: Vec3;
};

export type CrewAtWork = Readonly<Record<Person, Task>> & { readonly things: readonly Thing[] };
