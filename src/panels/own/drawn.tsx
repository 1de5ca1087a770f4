import type { Drawing } from '../../present/roofs/draw';
import { drawingSvg } from '../../present/roofs/drawSvg';

/** A drawing of ours as part of the page; every text in it was escaped where it was written. */
export const Drawn = ({ drawing }: { readonly drawing: Drawing }) => (
  <div class="ownDrawing" dangerouslySetInnerHTML={{ __html: drawingSvg(drawing) }} />
);
