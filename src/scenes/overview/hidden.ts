import { shared } from './bare';
import type { Overview } from './drawOverview';
import type { Area } from './fit';

/** What something laid over the drawing would hide. */

/** Samples left out between two that are looked at, device pixels. Ours. */
const stride = 4;
/** What hides the chosen member or an end's letter counts as much as so many samples of other work. Ours. */
const weights = { chosen: 40, letter: 200 };

/** Samples of work under a box of the picture, device pixels. What is not work (walls, ground, people) does not count. */
export const hiddenBy = ({ raster, letters }: Overview, box: Area, chosen: string | undefined): number => {
  const { surface, surfaces, width, height, fine } = raster;
  const [x0, y0] = [Math.max(0, Math.round(box.x * fine)), Math.max(0, Math.round(box.y * fine))];
  const x1 = Math.min(width, Math.round((box.x + box.width) * fine));
  const y1 = Math.min(height, Math.round((box.y + box.height) * fine));
  let hidden = letters.filter((letter) => shared(letter, box)).length * weights.letter;
  for (let y = y0; y < y1; y += stride * fine)
    for (let x = x0; x < x1; x += stride * fine) {
      const solid = surfaces[surface[y * width + x] as number]?.solid;
      if (solid?.selectable === true) hidden += solid.id === chosen ? weights.chosen : 1;
    }
  return hidden;
};
