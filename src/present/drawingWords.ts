import type { Messages } from './words/messages';
import { jointName } from './words/names';

/** Every word that stands on a drawing, in one language. `station` is where the section stands. */
export const drawingWordsOf = (
  words: Messages,
  { station, joint }: { readonly station: number; readonly joint: string | undefined },
) => {
  const { axes, view, drawing } = words.ui;
  const base = {
    ridge: axes.ridge,
    eave: axes.eave,
    up: axes.up,
    ticks: axes.ticks,
    ridgeTop: axes.ridgeTop,
    plate: axes.plate,
    section: view.section(station),
    side: view.side,
    plan: words.views.plan,
    tack: drawing.tack,
    nail: drawing.nail,
    eachTick: drawing.eachTick,
    sum: drawing.sum,
    yard: words.trade.side.yard,
    outward: drawing.outward,
  };
  return joint === undefined
    ? base
    : { ...base, joint: { title: jointName(words, joint), from: drawing.jointFrom } };
};
