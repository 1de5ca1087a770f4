import type { Vec2 } from '../../core/geometry/vector';
import type { Placed } from '../../core/site/state';
import { placeOf } from '../../core/site/ids';
import { edgesOfRafter } from './rafterShape';
import { box, prism } from './prism';
import type { Scheme, Shown } from './scheme';
import type { Solid } from './solid';

type Named = readonly [string, Placed];

/** Everything that ties the two sides together: joists, rafter ties, cross ties, collars, straps. */
export const tieSolids = (shown: Shown, scheme: Scheme): readonly Solid[] =>
  (Object.entries(shown.site.members) as Named[]).flatMap((member) => {
    const kind = member[0].slice(0, member[0].indexOf('.'));
    return makers[kind]?.(shown, scheme, member) ?? [];
  });

type Maker = (shown: Shown, scheme: Scheme, member: Named) => readonly Solid[];

/** x where a tie starts that lies beside the rafter of its station, inside the building. */
export const besideRafter = (scheme: Scheme, id: string): number => {
  const station = placeOf(id).station ?? 1;
  const x = scheme.stations[station - 1] ?? 0;
  return station === scheme.stations.length ? x - 2.25 : x + 0.75;
};

/** Lies flat between the sides, its upper corners clipped to the roof plane. */
const levelTie = (
  scheme: Scheme,
  id: string,
  { low, depth, out }: { low: number; depth: number; out: number },
): Solid => {
  const { common, m, half } = scheme;
  const roof = (at: number): number => common.heightAbovePlate + (half - at) * m;
  const top = low + depth;
  const corner = Math.min(top, roof(out));
  const reach = corner < top ? half - (top - common.heightAbovePlate) / m : out;
  const right: readonly Vec2[] =
    corner < top
      ? [
          [out, corner],
          [reach, top],
        ]
      : [[out, top]];
  const x = besideRafter(scheme, id);
  return prism(
    { id, role: 'tie', selectable: true },
    {
      outline: [[-out, low], [out, low], ...right, ...right.map(([y, z]): Vec2 => [-y, z]).reverse()],
      place: ([y, z], k) => [x + 1.5 * k, y, z],
      frame: {
        origin: [x + 0.75, 0, low + depth / 2],
        along: [0, 1, 0],
        across: [0, 0, 1],
        through: [1, 0, 0],
      },
    },
  );
};

const joist: Maker = ({ figured }, scheme, [id]) => {
  const cut = figured.ties.find(({ behindBlocks }) => behindBlocks)?.behindBlocks;
  const out = (cut?.length ?? 2 * scheme.half) / 2;
  return [levelTie(scheme, id, { low: 0, depth: scheme.tieDepth, out })];
};

const crossTie: Maker = ({ level }, scheme, [id]) => {
  const x = besideRafter(scheme, id);
  const out = level.plan.span / 2;
  return [box({ id, role: 'tie', selectable: true }, { from: [x, -out, 0], to: [x + 3.5, out, 1.5] })];
};

const collarDepth = 3.5;

const collar: Maker = ({ pose, figured }, scheme, [id, placed]) => {
  const station = placeOf(id).station ?? 1;
  const tie = figured.ties.find((row) => row.kind === 'collar');
  const low = (tie?.height ?? scheme.top - scheme.common.rise * 0.28) + (placed.off ?? 0);
  const x = besideRafter(scheme, id);
  const edge = (side: 'street' | 'yard', z: number): number => {
    const rafter = pose.rafters[`rafter.${side}.${station}`];
    if (!rafter) return scheme.half + (scheme.common.heightAbovePlate - z) / scheme.m;
    return rafter.top.out + (rafter.top.z - z) / edgesOfRafter(rafter, 0).m;
  };
  return [
    prism(
      { id, role: 'collar', selectable: true, seed: 500 + station },
      {
        outline: [
          [-edge('street', low), low],
          [edge('yard', low), low],
          [edge('yard', low + collarDepth), low + collarDepth],
          [-edge('street', low + collarDepth), low + collarDepth],
        ],
        place: ([y, z], k) => [x + 1.5 * k, y, z],
        frame: {
          origin: [x, 0, low + 1.75],
          along: [0, 1, 0],
          across: [0, 0, 1],
          through: [1, 0, 0],
        },
      },
    ),
  ];
};

/** How far a strap runs down each rafter, level, and its width, inches. Common practice, no source. */
const strapReach = 9;
const strapWidth = 1.25;

const strap: Maker = ({ pose }, scheme, [id]) => {
  const station = placeOf(id).station ?? 1;
  const x = (scheme.stations[station - 1] ?? 0) - strapWidth / 2;
  const top = pose.rafters[`rafter.street.${station}`]?.top.z ?? scheme.top;
  const down = strapReach * scheme.m;
  const skin = 0.12;
  return [
    prism(
      { id, role: 'strap', material: 'steel', selectable: true },
      {
        outline: [
          [-strapReach, top - down],
          [0, top + 0.02],
          [strapReach, top - down],
          [strapReach, top - down + skin],
          [0, top + skin + 0.6],
          [-strapReach, top - down + skin],
        ],
        place: ([y, z], k) => [x + strapWidth * k, y, z],
      },
    ),
  ];
};

const makers: Readonly<Record<string, Maker>> = { joist, rafterTie: joist, crossTie, collar, strap };
