import { hair } from '../units/hair';
import { deckOf, type Edge } from './edges';
import type { FiguredSleeper } from './figuredSlants';
import { frameOf, type RoofForm } from './form';
import type { Framing } from './framing';
import { eaveOf } from './hips';
import { sidesOf } from './planes';
import type { Wall } from './side';
import { skewOf } from './skew';
import { inFrom } from './surface';

/** Boards on the sheathing of the main roof, where a wing framed over it comes down. */
export const figuredSleepers = ({ form, edges }: Framing): readonly FiguredSleeper[] => {
  const groups: { readonly told: Told; readonly edges: Edge[] }[] = [];
  for (const edge of edges.filter(({ kind }) => kind === 'sleeper')) {
    const told = toldOf(form, edge);
    if (!told) continue;
    const same = groups.find((group) => isSame(group.told, told));
    if (same) same.edges.push(edge);
    else groups.push({ told, edges: [edge] });
  }
  return groups.map(({ told, edges: all }, i) => ({
    id: groups.length === 1 ? 'sleeper' : `sleeper.${i + 1}`,
    count: all.length,
    side: sidesOf([...new Set(all.flatMap((edge) => wingSide(form, edge)))]),
    ...told,
  }));
};

type Told = Omit<FiguredSleeper, 'id' | 'count' | 'side'>;

const toldOf = (form: RoofForm, edge: Edge): Told | undefined => {
  const deck = deckOf(form, edge) ?? edge.planes[0];
  const { cos, sin } = skewOf(edge.line.way, deck.plane.up);
  const own = edge.planes.find((of) => of !== deck);
  const section = own && frameOf(form, own.body).wing?.over?.sleeper;
  if (!section) return undefined;
  return {
    section,
    run: edge.run,
    lineLength: edge.run * Math.sqrt(1 + edge.m * edge.m),
    planAngle: { rise: cos, run: sin },
    intrusion: inFrom(deck.plane, edge.to),
  };
};

const wingSide = (form: RoofForm, { planes }: Edge): readonly Wall[] =>
  planes.filter(({ body }) => form.bodies.includes(body)).map(({ plane }) => eaveOf(form, plane).side);

const isSame = (a: Told, b: Told): boolean =>
  Math.abs(a.run - b.run) < hair && Math.abs(a.lineLength - b.lineLength) < hair;
