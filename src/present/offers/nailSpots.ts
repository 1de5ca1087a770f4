import { againstWall, sidesOf, stationsOf, upperStations } from '../../core/level/layout';
import { ledgerJoint, partsOfJoint, rafterId, type JointId, type MemberId } from '../../core/site/ids';
import { jointRows } from '../../core/site/jointRows';
import type { Observation } from '../../core/site/observe';
import { methodsOf } from '../../core/site/required';
import type { Offer, Spot } from './offer';

/** Every joint whose member stands, in walking order: what a hammer, a nailer or a cat's paw can be put to. */
export const jointsThere = (seen: Observation): readonly JointId[] => {
  const count = stationsOf(seen.level).length;
  const upper = methodsOf(seen.level, seen.site.agreed).upper;
  const stations = Array.from({ length: count }, (_, i) => i + 1);
  const sides = sidesOf(seen.level);
  const wall = againstWall(seen.level);
  const behind = wall ? stations.map(ledgerJoint) : [];
  const rows = sides.flatMap((side) =>
    stations.flatMap((n): readonly JointId[] => {
      const rafter = rafterId(side, n);
      const block = `block.${side}.${n}` as const;
      return [
        `ridge:${rafter}`,
        `heel:${rafter}`,
        ...(wall ? [] : [`heelTie:${rafter}` as const]),
        `blockEnd:${block}.near`,
        `blockEnd:${block}.far`,
        `blockPlate:${block}`,
      ];
    }),
  );
  const tops = upperStations(seen.level).flatMap((n): readonly JointId[] =>
    upper === 'straps' ? [`strap:strap.${n}`] : sides.map((side) => `collarEnd:collar.${n}.${side}` as const),
  );
  return [...behind, ...rows, ...tops].filter(
    (joint) => seen.members[partsOfJoint(joint).member] !== undefined,
  );
};

const nailsIn = (seen: Observation, joint: JointId): { readonly tacks: number; readonly nails: number } =>
  seen.site.joints[joint] ?? { tacks: 0, nails: 0 };

const jointSpot = (joint: JointId, offers: readonly Offer[]): Spot => ({
  id: joint,
  member: partsOfJoint(joint).member as MemberId,
  offers,
});

export const tackSpots = (seen: Observation): readonly Spot[] =>
  jointsThere(seen)
    .filter((joint) => nailsIn(seen, joint).tacks + nailsIn(seen, joint).nails === 0)
    .map((joint) =>
      jointSpot(joint, [
        {
          id: 'tack',
          label: ['act', 'tack'],
          act: () => ({ type: 'tack', joint, nails: jointRows[partsOfJoint(joint).kind].tack }),
        },
      ]),
    );

export const nailSpots = (seen: Observation): readonly Spot[] =>
  jointsThere(seen)
    .filter((joint) => nailsIn(seen, joint).nails < jointRows[partsOfJoint(joint).kind].full)
    .map((joint) =>
      jointSpot(joint, [{ id: 'nail', label: ['act', 'nail'], act: () => ({ type: 'nailOff', joint }) }]),
    );

export const drawSpots = (seen: Observation): readonly Spot[] =>
  jointsThere(seen)
    .filter((joint) => nailsIn(seen, joint).tacks + nailsIn(seen, joint).nails > 0)
    .map((joint) => {
      const all = nailsIn(seen, joint).tacks + nailsIn(seen, joint).nails;
      const draw = (id: string, nails: number): Offer => ({
        id,
        label: ['act', id],
        act: () => ({ type: 'draw', joint, nails }),
      });
      return jointSpot(joint, all > 1 ? [draw('drawAll', all), draw('draw', 1)] : [draw('draw', 1)]);
    });
