import type { Act } from '../../present/model/actSeen';
import type { Camera } from '../ink/camera';
import type { Theme } from '../ink/palette';
import type { Overview } from '../overview/drawOverview';
import type { StageScene } from '../stageScene';
import { playOn } from './onStage';
import { performanceOf, type Seen } from './performance';

/** Shows the act between two moments that were on the stage one after the other. */

/** A moment as it is on the stage. `lie`: everything that puts a picture where it is; two alike lie on each other. */
export type OnStage = Seen & {
  readonly act: Act | undefined;
  readonly lie: readonly unknown[];
};

export type Asked = {
  readonly scene: StageScene;
  readonly before: OnStage | undefined;
  readonly after: OnStage;
  readonly at: { readonly x: number; readonly y: number };
  readonly theme: Theme;
  readonly ratio: number;
  readonly plate: (ids: ReadonlySet<string>) => Overview;
};

export const showAct = ({ scene, before, after, at, theme, ratio, plate }: Asked): void => {
  const { act } = after;
  if (!act || !before?.act || !follows(before, after)) return;
  const show = performanceOf({ before, after, act, theme, ratio, plate });
  if (show) playOn({ scene, end: after.overview.canvas, before: before.overview.canvas, at }, show);
};

/** The very next act of the same job, from the same place. */
const follows = (before: OnStage, after: OnStage): boolean =>
  after.act?.step === (before.act?.step ?? 0) + 1 &&
  before.shown.level === after.shown.level &&
  sameSight(before.overview.camera, after.overview.camera) &&
  before.lie.length === after.lie.length &&
  before.lie.every((value, i) => Object.is(value, after.lie[i]));

/** What stands may change how the whole is fitted into the drawing. */
const sameSight = (a: Camera, b: Camera): boolean =>
  a.scale === b.scale && a.middle[0] === b.middle[0] && a.middle[1] === b.middle[1];
