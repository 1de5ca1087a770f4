import { roofOf } from '../core/level/layout';
import { placeOf, rafterId } from '../core/site/ids';
import { pose } from '../core/site/posed';
import type { Attempt } from '../core/site/attempt';
import { keyPounds, labeled, loadPathOf } from '../present/loadPath';
import { drawingWordsOf } from '../present/drawingWords';
import { lastActOf, sameWork } from '../present/lastAct';
import type { Drawings, StageShow } from '../present/stagePort';
import { wordsOn } from '../present/words/jobWords';
import type { Messages } from '../present/words/messages';
import { drawEye } from './instruments/drawEye';
import { drawReading } from './instruments/drawReading';
import { drawSight } from './instruments/drawSight';
import { pictureOf } from './instruments/pictureOf';
import { deckTile } from './ink/deck';
import type { Theme } from './ink/palette';
import { rastersOf } from './ink/light';
import { giveBack } from './ink/raster';
import { drawOverview, drawSelection, stagedOf } from './overview/drawOverview';
import { drawThumb } from './overview/drawThumb';
import { createStage } from './stage';
import type { StageView } from './stageView';

/** The drawings as the panels ask for them: the stage, the small pictures of a site, the pictures of readings. */

/** The same objects for the same attempt: what is shown again has not changed. */
const shownOf = (attempt: Attempt) => {
  const known = shownKept.get(attempt);
  if (known) return known;
  const { level, seed, site } = attempt;
  const shown = { level, site, pose: pose({ level, seed, site }), figured: figuredFor(level) };
  shownKept.set(attempt, shown);
  return shown;
};
const shownKept = new WeakMap<Attempt, Pick<StageView, 'level' | 'site' | 'pose' | 'figured'>>();

/** The figured roof, the same object for the same level. */
const figuredFor = (level: Attempt['level']) => {
  const known = figuredKept.get(level) ?? roofOf(level);
  figuredKept.set(level, known);
  return known;
};
const figuredKept = new WeakMap<Attempt['level'], ReturnType<typeof roofOf>>();

/** What lies over the drawing on the stage, CSS pixels: the names of the views at its head. */
const insets = { top: 44, right: 0, bottom: 0, left: 0 };

/** Words of a drawing, the same object for the same words: the stage draws anew only what is given anew. */
const wordsFor = (
  words: Messages,
  { station, joint }: { readonly station: number; readonly joint: string | undefined },
) => {
  const kept = wordsKept.get(words) ?? new Map<string, ReturnType<typeof drawingWordsOf>>();
  wordsKept.set(words, kept);
  const key = `${station} ${joint ?? ''}`;
  const known = kept.get(key) ?? drawingWordsOf(words, { station, joint });
  kept.set(key, known);
  return known;
};
const wordsKept = new WeakMap<Messages, Map<string, ReturnType<typeof drawingWordsOf>>>();

/** Parts of a site that a drawing shows. Nails show in the close-up alone; readings and calls nowhere. */
const drawn = [
  'members',
  'ridge',
  'marks',
  'lines',
  'ready',
  'people',
  'sling',
  'mends',
  'trims',
  'down',
] as const;

/** Keeps the last moment as long as nothing that is drawn has changed and nobody went to other work. */
const steadyMoments = () => {
  let last: Attempt | undefined;
  return ({ attempt, view, loads }: StageShow): Attempt => {
    const before = last;
    const same =
      before !== undefined &&
      before.level === attempt.level &&
      before.seed === attempt.seed &&
      drawn.every((key) => before.site[key] === attempt.site[key]) &&
      (view !== 'overview' || sameWork(lastActOf(before), lastActOf(attempt))) &&
      ((view !== 'joint' && !loads) || before.site.joints === attempt.site.joints);
    last = same ? before : attempt;
    return last;
  };
};

/** The last thing done, whatever came of it. */
const actOf = ({ steps }: Attempt): Pick<StageView, 'act'> => {
  const last = steps[steps.length - 1];
  return last ? { act: { step: steps.length, action: last.action, outcome: last.outcome } } : {};
};

const viewOf = (show: StageShow): StageView => {
  const { attempt, view, corner, selected, theme, lang, joint, still } = show;
  const station = placeOf(selected ?? '').station ?? 1;
  const own = view === 'reading' ? 'overview' : view;
  // Nothing of a joint is as it was once the frame is down.
  const close = own === 'joint' && attempt.site.down === undefined;
  const looked = close ? (closeUpOf(attempt, joint) ?? anyJoint(attempt, selected)) : undefined;
  return {
    ...shownOf(attempt),
    lastAct: lastActOf(attempt),
    view: own === 'joint' && looked === undefined ? 'overview' : own,
    corner,
    selected,
    theme,
    words: wordsFor(wordsOn(lang, attempt.level), { station, joint: looked }),
    still,
    insets,
    station,
    from: 'street',
    ...loadsFor(show),
    ...(looked === undefined ? {} : { joint: looked }),
  };
};

/** The load path, the same object for the same moment. */
const loadsFor = ({ attempt, selected, lang, loads }: StageShow): Pick<StageView, 'loads'> => {
  if (!loads) return {};
  const station = placeOf(selected ?? '').station;
  const key = `${lang} ${station ?? ''}`;
  const known = loadsKept.get(attempt.site);
  if (known?.key === key) return known.drawing;
  const path = loadPathOf(attempt, selected);
  const words = wordsOn(lang, attempt.level);
  const pounds = keyPounds(Math.max(...(path?.arrows ?? []).map((arrow) => arrow.pounds)));
  const drawing = path
    ? {
        loads: {
          arrows: labeled(words, path.arrows),
          key: { pounds, label: words.views.loads.key(pounds) },
        },
      }
    : {};
  loadsKept.set(attempt.site, { key, drawing });
  return drawing;
};
const loadsKept = new WeakMap<object, { readonly key: string; readonly drawing: Pick<StageView, 'loads'> }>();

/** A ledger's nails into a stud are looked at through the rafter there. */
const closeUpOf = ({ site }: Attempt, asked: string | undefined): string | undefined => {
  const joint = asked?.replace(/^.*@/, '');
  const station = /^ledger:ridge\.(\d+)$/.exec(joint ?? '')?.[1];
  if (station === undefined) return joint;
  const rafter = rafterId('street', Number(station));
  return site.members[rafter] ? `ridge:${rafter}` : undefined;
};

/** The joint a close-up falls back to: the selected rafter's plumb cut, else the first rafter's that stands. */
const anyJoint = ({ site }: Attempt, selected: string | undefined): string | undefined => {
  const up = Object.keys(site.members).filter((id) => id.startsWith('rafter.'));
  const id = selected !== undefined && up.includes(selected) ? selected : up[0];
  return id === undefined ? undefined : `ridge:${id}`;
};

const stage: Drawings['stage'] = async (host) => {
  const made = createStage(host);
  const steady = steadyMoments();
  return {
    show: (show) => made.show({ ...viewOf({ ...show, attempt: steady(show) }), ...actOf(show.attempt) }),
    placeOf: made.placeOf,
    pickAt: made.pickAt,
    lift: made.lift,
    hides: made.hides,
    zoomBy: made.zoomBy,
    panBy: made.panBy,
    resetZoom: made.resetZoom,
    onPick: (pick) => void made.onPick(pick),
    destroy: made.destroy,
  };
};

const whole = (canvas: HTMLCanvasElement) => ({ x: 0, y: 0, width: canvas.width, height: canvas.height });

const thumb: Drawings['thumb'] = (canvas, { attempt, corner, theme }) => {
  const ratio = canvas.width / Math.max(1, canvas.clientWidth);
  const size = { width: canvas.width / ratio, height: canvas.height / ratio, ratio };
  const drawnSmall = drawThumb({ shown: shownOf(attempt), theme, corner, ...size });
  canvas.getContext('2d')?.drawImage(drawnSmall, 0, 0);
};

const reading: Drawings['reading'] = (canvas, { attempt, tool, at, from, shown, theme, lang }) => {
  const ratio = canvas.width / Math.max(1, canvas.clientWidth);
  if (typeof shown === 'string') return drawEye({ canvas, ratio, theme }, shown);
  const words = drawingWordsOf(wordsOn(lang, attempt.level), { station: 1, joint: undefined });
  if (tool === 'eye') {
    const toward = at.startsWith('plate.') ? words.outward : words.yard;
    return drawSight({ canvas, ratio, theme }, { shown, toward });
  }
  const picture = pictureOf(attempt, { tool, at, shown, ...(from === undefined ? {} : { from }) });
  drawReading({ canvas, area: whole(canvas), ratio, theme, words }, picture);
};

/** Room round the roof in a large picture of one state, CSS pixels. */
const clear = 10;

const standing: Drawings['standing'] = (
  { attempt, corner, selected, theme, lang },
  { width, height, ratio },
) => {
  const shown = shownOf(attempt);
  const staged = stagedOf(shown, corner);
  const drawn = drawOverview(
    {
      shown,
      corner,
      theme,
      words: wordsFor(wordsOn(lang, attempt.level), { station: 1, joint: undefined }),
      width: Math.round(width * ratio),
      height: Math.round(height * ratio),
      area: {
        x: clear * ratio,
        y: clear * ratio,
        width: (width - 2 * clear) * ratio,
        height: (height - 2 * clear) * ratio,
      },
      ratio,
    },
    staged,
  );
  if (selected !== undefined)
    drawn.canvas.getContext('2d')?.drawImage(drawSelection(drawn, { id: selected, theme, ratio }), 0, 0);
  giveBack([drawn.raster, ...rastersOf(staged.lights)]);
  return drawn.canvas;
};

export const drawings: Drawings = { stage, thumb, standing, reading };

/** The deck under everything, as a picture the style sheet can lay. */
export const deckPicture = (theme: Theme): string => deckTile(theme, 1).toDataURL('image/png');
