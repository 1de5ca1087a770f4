import type { Vec3 } from '../../core/geometry/vector';
import { signOf } from '../../core/roof/side';
import { box, prism, stick } from './prism';
import { sheetThickness, type Scheme, type Shown } from './scheme';
import type { About, Solid } from './solid';
import { wallFade } from './wallSolids';

/** What stands about on a site: staging, ladder, spare boards, gauge blocks. Each only when it is there. */
export const scenery = (shown: Shown, scheme: Scheme): readonly Solid[] => [
  ...stagingSolids(shown, scheme),
  ...ladderSolids(shown, scheme),
  ...leaningBoards(shown, scheme),
  ...waitingRidge(shown, scheme),
  ...spareBlocks(shown, scheme),
  ...gaugeBlocks(shown, scheme),
];

/** Sheets laid on the joists to walk on; without joists, planks on a frame inside the walls. */
const stagingSolids = (shown: Shown, scheme: Scheme): readonly Solid[] => {
  if (shown.site.ready.platform === undefined) return [];
  const joists = 'joist.1' in shown.site.members;
  return joists ? sheetsOnJoists(shown, scheme) : trestle(scheme);
};

const sheetsOnJoists = ({ site }: Shown, { length, half, tieDepth }: Scheme): readonly Solid[] => {
  const z: readonly [number, number] = [tieDepth, tieDepth + sheetThickness];
  const reach = Math.min(half - 20, 60);
  const cover = site.ready.openings !== undefined;
  const mid = length / 2;
  const hole = { x0: mid + 8, x1: mid + 40, y0: reach - 26 };
  const sheet = (id: string, from: readonly [number, number], to: readonly [number, number]): Solid =>
    box(
      { id, role: 'panel', material: 'panel' },
      { from: [from[0], from[1], z[0]], to: [to[0], to[1], z[1]] },
    );
  const far = cover
    ? [sheet('panel.4', [mid + 0.06, 0.06], [length - 3.2, reach - 8])]
    : [
        sheet('panel.4', [mid + 0.06, 0.06], [length - 3.2, hole.y0]),
        sheet('panel.5', [mid + 0.06, hole.y0 + 0.01], [hole.x0, reach - 8]),
        sheet('panel.6', [hole.x1, hole.y0 + 0.01], [length - 3.2, reach - 8]),
      ];
  return [
    sheet('panel.1', [3.2, -reach], [mid - 0.06, -0.06]),
    sheet('panel.2', [mid + 0.06, -reach], [length - 3.2, -0.06]),
    sheet('panel.3', [3.2, 0.06], [mid - 0.06, reach - 8]),
    ...far,
  ];
};

const trestle = ({ length, lane, tieDepth }: Scheme): readonly Solid[] => {
  const top = tieDepth + sheetThickness;
  const legs = [14, length / 2, length - 14].flatMap((x) =>
    [lane - 22, lane + 22].map((y) =>
      box(
        { id: `staging.leg.${x}.${y}`, role: 'staging', fade: wallFade },
        { from: [x - 1.75, y - 0.75, -60], to: [x + 1.75, y + 0.75, top - 1.5] },
      ),
    ),
  );
  const bearers = [14, length / 2, length - 14].map((x) =>
    box(
      { id: `staging.bearer.${x}`, role: 'staging' },
      { from: [x - 1.75, lane - 26, top - 5], to: [x - 0.25, lane + 26, top - 1.5] },
    ),
  );
  const planks = [-24, -14.5, -5, 4.5, 14]
    .map((off) => lane + off)
    .map((y) =>
      box(
        { id: `staging.plank.${y}`, role: 'staging' },
        { from: [6, y, top - 1.5], to: [length - 6, y + 9.25, top] },
      ),
    );
  return [...legs, ...bearers, ...planks];
};

/** A ladder against the yard plate, or the only one: one out for four up, and well past the landing (29 CFR 1926.1053: 3 ft). */
const ladderSolids = ({ site }: Shown, { length, half, sides }: Scheme): readonly Solid[] => {
  if (site.ready.ladder === undefined) return [];
  const x = length - 36;
  const way = sides.includes('yard') ? 1 : -1;
  const y = (z: number): number => way * (half + 1.9 - z * 0.25);
  const about: About = { id: 'ladder', role: 'ladder', material: 'steel', seed: 9, fade: wallFade };
  const rails = [-7.5, 7.5].map((dx) =>
    stick(about, {
      from: [x + dx, y(-60), -60],
      to: [x + dx, y(44), 44],
      wide: [0, 1, 0],
      width: 2.6,
      thickness: 1.1,
    }),
  );
  const rungs = Array.from({ length: 9 }, (_, i) => -56 + 12 * i).map((z) =>
    stick(about, {
      from: [x - 7.5, y(z), z],
      to: [x + 7.5, y(z), z],
      wide: [0, 1, 0],
      width: 1.3,
      thickness: 1.3,
    }),
  );
  return [...rails, ...rungs];
};

/** Cut rafters not up yet lean on the wall of end B, flat on each other, at most two short stacks of them. */
const leaningBoards = (
  { level, site, figured }: Shown,
  { length, lane, sides, stations }: Scheme,
): readonly Solid[] => {
  const up = Object.keys(site.members).filter((id) => id.startsWith('rafter.')).length;
  const left = sides.length * stations.length + level.asFound.spareBoards - up;
  const stock = Math.min(figured.commonRafters[0]?.stockLength ?? 96, 96);
  const depth = level.plan.rafter.depth;
  return [-1, 1].flatMap((way) =>
    Array.from({ length: Math.min(7, Math.max(0, Math.ceil(left / 2 - (way > 0 ? 0 : 0.5)))) }, (_, i) => {
      const y = lane + way * (14 + 2 * ((i * 7) % 3));
      const foot: Vec3 = [length + 30 + 1.5 * i, y, -stock * 0.9];
      const head: Vec3 = [length + 2 + 1.5 * i, y + 1.5 * way, 5 + ((i * 5) % 4)];
      return stick(
        { id: `pile.${way}.${i}`, role: 'board', fade: { full: -12, gone: -46 }, seed: 60 + i + 9 * way },
        { from: foot, to: head, wide: [0, 1, 0], width: depth, thickness: 1.5 },
      );
    }),
  );
};

/** Until it is up, the ridge lies flat on what spans the walls. */
const waitingRidge = (
  { level, pose, site }: Shown,
  { length, half, sides, floor }: Scheme,
): readonly Solid[] => {
  if (pose.ridge) return [];
  const { thickness, depth } = level.plan.ridge;
  const z = floor ?? 0;
  const y = half * (sides.includes('yard') ? 0.42 : -0.7);
  const trimmed = site.trims['board.ridge']?.end ?? 0;
  return [
    box(
      { id: 'board.ridge', role: 'board', selectable: true, seed: 7 },
      { from: [0, y, z], to: [length + Math.max(0, 8 - trimmed), y + depth, z + thickness] },
    ),
  ];
};

const spareBlocks = ({ site }: Shown, scheme: Scheme): readonly Solid[] => {
  const { stations, sides, lane, half, length, floor, tieDepth } = scheme;
  const left =
    sides.length * (stations.length - 1) -
    Object.keys(site.members).filter((id) => id.startsWith('block.')).length;
  if (site.ready.platform === undefined || floor === undefined) return [];
  const rows = [
    [0.72, -40],
    [0.735, -37.8],
    [0.71, -34],
  ] as const;
  const put = (y: number): number => Math.max(14 - half, lane + y);
  return rows.slice(0, left).map(([share, y], i) =>
    box(
      { id: `spare.${i}`, role: 'board', seed: 400 + i },
      {
        from: [length * share - 11, put(y) - 0.75, floor],
        to: [length * share + 11, put(y) + 0.75, floor + tieDepth],
      },
    ),
  );
};

/** The little blocks that hold a string clear of the work at its two ends. */
const gaugeBlocks = ({ site, pose }: Shown, { stations, sides, m }: Scheme): readonly Solid[] =>
  sides.flatMap((side) => {
    if (!site.lines[`string.${side}`]) return [];
    return [1, stations.length].flatMap((n) => {
      const rafter = pose.rafters[`rafter.${side}.${n}`];
      if (!rafter) return [];
      const { out, z } = rafter.heel;
      const w = 1.6;
      return [
        prism(
          { id: `gauge.${side}.${n}`, role: 'gauge', seed: 55 },
          {
            outline: [
              [out + w, z - w * m],
              [out - w, z + w * m],
              [out - w + 0.45, z + w * m + 0.6],
              [out + w + 0.45, z - w * m + 0.6],
            ],
            place: ([o, h], k) => [rafter.x.heel - 0.6 + 1.2 * k, signOf(side) * o, h],
          },
        ),
      ];
    });
  });
