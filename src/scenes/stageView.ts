import type { FiguredRoof } from '../core/roof/figured';
import type { Action } from '../core/site/action';
import type { Level } from '../core/level/level';
import type { Pose } from '../core/site/pose';
import type { SiteState } from '../core/site/state';
import type { Act } from '../present/model/actSeen';
import type { Corner } from './ink/camera';
import type { Theme } from './ink/palette';
import type { ReadingPicture } from './instruments/readingPicture';
import type { LoadDrawing } from './overview/drawLoads';
import type { DrawingWords } from './overview/words';
import type { Insets, ViewName } from './stageLayout';

/** All that the stage needs to draw a moment. Give the same objects again for what did not change: it compares them. */
export type StageView = {
  readonly level: Level;
  readonly site: SiteState;
  readonly pose: Pose;
  readonly figured: FiguredRoof;
  /** The last act that stands: what the people are at. */
  readonly lastAct?: Action | undefined;
  readonly view: ViewName;
  readonly corner: Corner;
  readonly selected: string | undefined;
  readonly theme: Theme;
  readonly words: DrawingWords;
  /** For view 'joint': a joint id such as `ridge:rafter.street.4`. */
  readonly joint?: string;
  /** For view 'reading'. */
  readonly reading?: ReadingPicture;
  /** What led here: shown as it happens where the moment before it was on the stage. */
  readonly act?: Act;
  /** Nothing moves: what happens is shown as it ended. */
  readonly still: boolean;
  /** How loads get down, over the overview. */
  readonly loads?: LoadDrawing;
  readonly insets: Insets;
  /** Station the section stands before; else the selected rafter's, else the last one placed. */
  readonly station?: number;
  /** Side the side view is seen from; street when absent. */
  readonly from?: 'street' | 'yard';
};
