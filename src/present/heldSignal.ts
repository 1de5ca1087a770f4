/** How a load follows a signal that is held: it gathers way, runs on when the signal ends, and comes to rest. */

/** Inches, and inches a second. */
export type Following = { readonly by: number; readonly speed: number };

export const atRest: Following = { by: 0, speed: 0 };

/** A careful operator's creep, and how soon the machine has it and loses it: inches, seconds. Ours. */
const creep = 1.2;
const gathers = 2;
const loses = 3;
/** The machine is followed in steps this short, so that it moves alike on fast and slow screens. Seconds. */
const stride = 1 / 240;

/** The same after so many seconds with the signal held or ended; never past the most one signal may move. */
export const follow = (
  from: Following,
  seconds: number,
  { held, most }: { readonly held: boolean; readonly most: number },
): Following => {
  let { by, speed } = from;
  for (let left = seconds; left > 1e-9; left -= stride) {
    const step = Math.min(stride, left);
    const next = held ? Math.min(creep, speed + gathers * step) : Math.max(0, speed - loses * step);
    by += ((speed + next) / 2) * step;
    speed = next;
    if (by >= most) return { by: most, speed: 0 };
  }
  return { by, speed };
};

/** What is asked for in the end, inches: acts know sixty-fourths. At least the least that may be asked for. */
export const askedBy = ({ by }: Following, least: number): number =>
  Math.max(least, Math.round(by * 64) / 64);
