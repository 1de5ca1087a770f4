import type { Vec3 } from '../../core/geometry/vector';
import { againstWall } from '../../core/level/layout';
import { halfPost } from '../../core/roof/steps';
import { offLine } from '../../core/site/planPosts';
import { box, stick } from './prism';
import { ridgeUnderAt } from './roofSolids';
import { acrossFoot, bareFloor, type Scheme, type Shown } from './scheme';
import type { About, Solid } from './solid';
import { wallFade } from './wallSolids';

/** Posts under the ridge with their pads, scabs and cleats, and the braces that keep it from leaning. */
export const supportSolids = (shown: Shown, scheme: Scheme): readonly Solid[] => [
  ...scheme.posts.flatMap((_, i) =>
    shown.level.plan.posts ? stayingPost(shown, scheme, i + 1) : postSolids(shown, scheme, i + 1),
  ),
  ...braceSolids(shown, scheme),
];

/** Of a post of the plan: it goes on down to the ground, past the end of the drawing. Inches. */
const pastTheDrawing = -60;
/** The steel that holds a beam on its post: so thick, and so far over and under the joint. Ours. */
const saddle = { thick: 0.25, up: 5, down: 6 } as const;

/** On its footing under the drawing, in a saddle at its head; what broke off with the floor lies on it after a fall. */
const stayingPost = (shown: Shown, scheme: Scheme, n: number): readonly Solid[] => {
  const { posts, ridge } = shown.level.plan;
  const placed = shown.site.members[`post.${n}`];
  if (!placed || !posts) return [];
  const x = scheme.posts[n - 1] as number;
  const under = ridgeUnderAt(shown.pose, ridge.depth, x);
  // One that was cut short stands off the ridge.
  const head =
    under === undefined
      ? scheme.top - ridge.depth + (placed.off ?? 0)
      : under + Math.min(0, offLine(shown, x));
  const y = asideAt(shown, x);
  const foot = Math.max(-posts.below, pastTheDrawing);
  const about: About = { id: `post.${n}`, role: 'post', selectable: true, fade: wallFade };
  const half = halfPost;
  const wide = Math.max(half, ridge.thickness / 2);
  const post = (from: number, to: number): Solid =>
    box({ ...about, seed: 150 + 9 * n }, { from: [x - half, y - half, from], to: [x + half, y + half, to] });
  const plate = (k: 0 | 1): Solid => {
    const near = k === 0 ? y - wide - saddle.thick : y + wide;
    return box(
      { ...about, material: 'steel', seed: 151 + 9 * n + k },
      { from: [x - half, near, head - saddle.down], to: [x + half, near + saddle.thick, head + saddle.up] },
    );
  };
  const floor = scheme.floor ?? bareFloor;
  const stick = shown.pose.fallen ? [post(foot, floor), post(floor, head)] : [post(foot, head)];
  return placed.how === 'foot' ? stick : [...stick, plate(0), plate(1)];
};

const postSolids = (shown: Shown, scheme: Scheme, n: number): readonly Solid[] => {
  const placed = shown.site.members[`post.${n}`];
  if (!placed) return [];
  const { thickness: t, depth } = shown.level.plan.ridge;
  const x = scheme.posts[n - 1] as number;
  const foot = scheme.floor ?? bareFloor;
  const head = ridgeUnderAt(shown.pose, depth, x) ?? scheme.top - depth + (placed.off ?? 0);
  const aside = asideAt(shown, x);
  const about: About = { id: `post.${n}`, role: 'post', selectable: true };
  const part = (k: number, from: Vec3, to: Vec3): Solid =>
    box({ ...about, seed: 150 + 9 * n + k }, { from, to });
  // Its pad and cleats keep clear of the wall behind a ledger.
  const wall = againstWall(shown.level);
  const off = wall ? 2.75 - t / 2 : 0;
  const atHead = placed.how === 'head' || placed.how === 'both';
  const atFoot = placed.how === 'foot' || placed.how === 'both';
  return [
    part(0, [x - 15, aside - 2.75 - off, foot], [x + 15, aside + 2.75 - off, foot + 1.5]),
    part(1, [x - 1.75, aside - t / 2, foot + 1.5], [x + 1.75, aside + t / 2, head]),
    ...(atHead
      ? [
          part(2, [x - 1.75, aside - t, head - 9], [x + 1.75, aside - t / 2, head + depth - 1.5]),
          ...(wall
            ? []
            : [part(3, [x - 1.75, aside + t / 2, head - 9], [x + 1.75, aside + t, head + depth - 1.5])]),
        ]
      : []),
    ...(atFoot
      ? [
          part(4, [x + 1.75, aside - 1.75 - off, foot + 1.5], [x + 7, aside + 1.75 - off, foot + 3]),
          part(5, [x - 7, aside - 1.75 - off, foot + 1.5], [x - 1.75, aside + 1.75 - off, foot + 3]),
        ]
      : []),
  ];
};

const asideAt = ({ pose }: Shown, x: number): number => {
  const { ridge } = pose;
  if (!ridge) return 0;
  return ridge.A.y + ((ridge.B.y - ridge.A.y) * (x - ridge.A.x)) / (ridge.B.x - ridge.A.x);
};

const braceSolids = (shown: Shown, scheme: Scheme): readonly Solid[] => {
  const { members } = shown.site;
  return [
    ...('brace.across.A' in members ? acrossAt(shown, scheme, 'A') : []),
    ...('brace.across.B' in members ? acrossAt(shown, scheme, 'B') : []),
    ...('brace.along.1' in members ? alongRidge(shown, scheme) : []),
  ];
};

const acrossAt = (shown: Shown, scheme: Scheme, end: 'A' | 'B'): readonly Solid[] => {
  const about: About = { id: `brace.across.${end}`, role: 'brace', selectable: true };
  const x = scheme.braces[end === 'A' ? 0 : 1];
  const floor = scheme.floor ?? bareFloor;
  const top = ridgeTopAt(shown, scheme, x);
  const y = asideAt(shown, x);
  return [
    stick(about, {
      from: [x, y + 2.3, top - 5.2],
      to: [x, acrossFoot, floor + 0.5],
      wide: [0, 1, 0],
      width: 3.5,
      thickness: 1.5,
    }),
    box(about, { from: [x - 1.75, acrossFoot + 2.2, floor], to: [x + 1.75, acrossFoot + 9, floor + 1.5] }),
  ];
};

const ridgeTopAt = (shown: Shown, scheme: Scheme, x: number): number =>
  ridgeUnderAt(shown.pose, 0, x) ?? scheme.top;

/** Two sticks on the yard face of the ridge, each leaning along it to a cleat. */
const alongRidge = (shown: Shown, scheme: Scheme): readonly Solid[] => {
  const about: About = { id: 'brace.along.1', role: 'brace', selectable: true };
  const floor = scheme.floor ?? bareFloor;
  const [a, b] = scheme.alongs;
  const lean = Math.min(42, (b - a) * 0.38);
  const rows = [
    [b - 6, b - 6 - lean],
    [a + 7, a + 7 + lean],
  ] as const;
  return rows.flatMap(([head, foot]) => {
    const y = asideAt(shown, head) + 1.5;
    const way = Math.sign(foot - head);
    const cleat = [foot + way * 2.2, foot + way * 9.5].sort((p, q) => p - q) as [number, number];
    return [
      stick(about, {
        from: [head, y, ridgeTopAt(shown, scheme, head) - 3.2],
        to: [foot, y, floor + 0.6],
        wide: [1, 0, 0],
        width: 3.5,
        thickness: 1.5,
      }),
      box(about, { from: [cleat[0], y - 1.3, floor], to: [cleat[1], y + 2.2, floor + 1.5] }),
    ];
  });
};
