import { lerp, type Vec2, type Vec3 } from '../../core/geometry/vector';
import type { PlatePose } from '../../core/site/pose';
import { againstWall } from '../../core/level/layout';
import { signOf, type Side } from '../../core/roof/side';
import { box, prism, stick } from './prism';
import { plateThickness, wallSheet, type Scheme, type Shown } from './scheme';
import type { Solid } from './solid';

/** Walls are not the work: below the plates they run out into the deck between these heights, inches; ours. */
export const wallFade = { full: -15, gone: -50 };
const wallFoot = -60;
/** Top of the floor inside, as deep as the drawing shows: low staging stands on it. Inches; ours. */
export const innerFloor = -29;
/** Sheets stand a little below the plates so that heels stay clear, inches; ours. */
const sheetTop = -2.2;
const sheetWidth = 48;

/** Plates of all four walls, their sheets, the floor far below, and wall braces where they stand. */
export const wallSolids = (shown: Shown, scheme: Scheme): readonly Solid[] => [
  ...scheme.sides.flatMap((side) => eavePlates(shown, side)),
  ...houseWall(shown, scheme),
  ...rakePlates(shown),
  ...sheets(scheme),
  ...wallBraces(shown, scheme),
  box(
    { id: 'floor', role: 'floor', material: 'panel', seed: 3, shadowless: true },
    {
      from: [3.5, -scheme.half + 3.5, innerFloor - 1],
      to: [scheme.length - 3.5, scheme.yard - (againstWall(shown.level) ? 0 : 3.5), innerFloor],
    },
  ),
];

type Span = { readonly from: Vec3; readonly to: Vec3 };

const spans = (plate: PlatePose): readonly Span[] => {
  const at = (end: 'A' | 'mid' | 'B'): Vec3 => [plate[end].x, plate[end].y, plate[end].z];
  return [
    { from: at('A'), to: at('mid') },
    { from: at('mid'), to: at('B') },
  ];
};

const twoPlates = [
  [0, 'plate'],
  [-plateThickness, 'plate2'],
] as const;

/** A double plate, as straight or wavy as it really is. */
const eavePlates = ({ pose, level }: Shown, side: Side): readonly Solid[] => {
  const { width } = level.plan.plate;
  return spans(pose.plates[side]).flatMap((span, i) =>
    twoPlates.map(([top, name], k) =>
      prism(
        { id: `${name}.${side}.${i}`, role: 'plate', seed: 11 + 3 * k + signOf(side) },
        {
          outline: plateOutline(width, top),
          place: ([inward, z], k2) => {
            const p = k2 === 0 ? span.from : span.to;
            return [p[0], p[1] - signOf(side) * inward, p[2] + z];
          },
        },
      ),
    ),
  );
};

const plateOutline = (width: number, top: number): readonly Vec2[] => [
  [0, top - plateThickness],
  [width, top - plateThickness],
  [width, top],
  [0, top],
];

/** Plates of the gable walls, between the ends of the eave plates. */
const rakePlates = ({ pose, level }: Shown): readonly Solid[] => {
  const { width } = level.plan.plate;
  return (['A', 'B'] as const).flatMap((end) => {
    const street = pose.plates.street[end];
    const yard = pose.plates.yard[end];
    const inward = end === 'A' ? 1 : -1;
    const from: Vec3 = [street.x, street.y + width, street.z];
    const to: Vec3 = [yard.x, yard.y - (againstWall(level) ? 0 : width), yard.z];
    return twoPlates.map(([top, name], k) =>
      prism(
        { id: `${name}.${end}`, role: 'plate', seed: 21 + k + inward },
        {
          outline: plateOutline(width, top),
          place: ([into, z], k2) => {
            const p = k2 === 0 ? from : to;
            return [p[0] + inward * into, p[1], p[2] + z];
          },
        },
      ),
    );
  });
};

const sheets = ({ half, yard, sides, length }: Scheme): readonly Solid[] => {
  const about = (id: string): Parameters<typeof box>[0] => ({
    id,
    role: 'wall',
    material: 'sheath',
    fade: wallFade,
  });
  const eave = sides.flatMap((side) =>
    steps(0, length).map(([x0, x1]) => {
      const y = side === 'street' ? -half - wallSheet : half;
      return box(about(`wallsheet.${side}.${x0}`), {
        from: [x0 + 0.06, y, wallFoot],
        to: [x1 - 0.06, y + wallSheet, sheetTop],
      });
    }),
  );
  const rake = (['A', 'B'] as const).flatMap((end) =>
    steps(-half, yard).map(([y0, y1]) => {
      const x = end === 'A' ? -wallSheet : length;
      return box(about(`wallsheet.${end}.${y0}`), {
        from: [x, y0 + 0.06, wallFoot],
        to: [x + wallSheet, y1 - 0.06, sheetTop],
      });
    }),
  );
  return [...eave, ...rake];
};

const steps = (from: number, to: number): readonly (readonly [number, number])[] =>
  Array.from({ length: Math.ceil((to - from) / sheetWidth) }, (_, i) => [
    from + i * sheetWidth,
    Math.min(to, from + (i + 1) * sheetWidth),
  ]);

/** How far the wall behind a ledger shows past the building's ends and over the ledger, inches; ours. */
const houseShown = { past: 14, over: 30 } as const;

/** What a ledger is nailed to: a wall of the house, sheathed, from below the plates up past the roof. */
const houseWall = ({ level }: Shown, { yard, length, top }: Scheme): readonly Solid[] =>
  againstWall(level)
    ? steps(-houseShown.past, length + houseShown.past).map(([x0, x1]) =>
        box(
          { id: `house.${x0}`, role: 'wall', material: 'sheath', fade: wallFade },
          { from: [x0 + 0.06, yard, wallFoot], to: [x1 - 0.06, yard + wallSheet, top + houseShown.over] },
        ),
      )
    : [];

/** A two-by-four nailed on the slant across the outside of a wall. */
const wallBraces = ({ site }: Shown, { half, yard, length }: Scheme): readonly Solid[] => {
  const off = wallSheet + 0.76;
  const rows: readonly (readonly [string, Vec3, Vec3, Vec3])[] = [
    ['brace.wall.street', [10, -half - off, -3.4], [72, -half - off, -60], [1, 0, 1]],
    ['brace.wall.yard', [length - 10, half + off, -3.4], [length - 72, half + off, -60], [-1, 0, 1]],
    ['brace.wall.A', [-off, yard - 8, -3.4], [-off, yard - 68, -60], [0, -1, 1]],
    ['brace.wall.B', [length + off, -half + 8, -3.4], [length + off, -half + 68, -60], [0, 1, 1]],
  ];
  return rows
    .filter(([id]) => id in site.members)
    .map(([id, from, to, wide]) =>
      stick(
        { id, role: 'brace', selectable: true, fade: wallFade },
        { from, to: lerp(from, to, 1), wide, width: 3.5, thickness: 1.5 },
      ),
    );
};
