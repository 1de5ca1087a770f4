import { signOf } from '../../core/roof/side';
import { blockId, rafterId } from '../../core/site/ids';
import { plateAt } from '../../core/site/truePlate';
import { schemeOf, type Scheme, type Shown } from './scheme';
import type { OpenSpot } from './solid';

/** Places where a member of the job may go and does not stand yet: the drawing offers them to a finger. */
export const openSpotsOf = (shown: Shown): readonly OpenSpot[] => {
  const scheme = schemeOf(shown);
  const all = [...rafterSpots(shown, scheme), ...blockSpots(shown, scheme), ...middleSpots(scheme)];
  return all.filter(({ id }) => !(id in shown.site.members));
};

const rafterSpots = ({ pose, level }: Shown, { stations, top, sides }: Scheme): readonly OpenSpot[] =>
  sides.flatMap((side) =>
    stations.map((x, i) => {
      const { out, z } = plateAt(pose.plates[side], x);
      const sign = signOf(side);
      const high = pose.ridge ? [[x, sign * level.plan.ridge.thickness, top - 3] as const] : [];
      return { id: rafterId(side, i + 1), points: [[x, sign * (out - 1.5), z] as const, ...high] };
    }),
  );

const blockSpots = ({ pose }: Shown, { stations, sides }: Scheme): readonly OpenSpot[] =>
  sides.flatMap((side) =>
    stations.slice(1).map((x, i) => {
      const mid = (x + (stations[i] ?? 0)) / 2;
      const { out, z } = plateAt(pose.plates[side], mid);
      return { id: blockId(side, i + 1), points: [[mid, signOf(side) * (out - 1), z + 2.5] as const] };
    }),
  );

const middleSpots = ({ stations, sides, posts, floor, top, length }: Scheme): readonly OpenSpot[] => [
  ...(sides.length < 2 ? [] : stations).map((x, i) => ({
    id: `joist.${i + 1}`,
    points: [[x + 1.5, 0, 3] as const],
  })),
  ...posts.map((x, i) => ({ id: `post.${i + 1}`, points: [[x, 0, (floor ?? 0) + 3] as const] })),
  { id: 'ridge', points: [[length / 2, 0, top - 4] as const] },
];
