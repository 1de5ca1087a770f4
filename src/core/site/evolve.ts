import type { SiteEvent } from './event';
import type { JointId, MemberId } from './ids';
import { partsOfJoint } from './ids';
import type { Nailing, Placed, RidgeState, SiteState } from './state';

type Told<T extends SiteEvent['type']> = Extract<SiteEvent, { type: T }>;
type Tellers = { readonly [T in SiteEvent['type']]: (site: SiteState, event: Told<T>) => SiteState };

/**
 * The site after one more event. Pure; draws nothing, decides nothing. Told again of the same site it is the same one, so that
 * what was found out about it is found again.
 */
export const evolve = (site: SiteState, event: SiteEvent): SiteState => {
  const last = lastTold.get(event);
  if (last?.from === site) return last.to;
  const tell = tellers[event.type] as (site: SiteState, event: SiteEvent) => SiteState;
  const to = { ...tell(site, event), told: site.told + 1 };
  lastTold.set(event, { from: site, to });
  return to;
};
const lastTold = new WeakMap<SiteEvent, { readonly from: SiteState; readonly to: SiteState }>();

const bare: Nailing = { tacks: 0, nails: 0 };
const nailing = (site: SiteState, joint: JointId): Nailing => site.joints[joint] ?? bare;

const withJoint = (site: SiteState, joint: JointId, to: Nailing): SiteState => ({
  ...site,
  joints: { ...site.joints, [joint]: to },
});

const withMember = (site: SiteState, member: MemberId, to: Placed): SiteState => ({
  ...site,
  members: { ...site.members, [member]: to },
});

/** A member that leaves takes its joints along. */
const without = (site: SiteState, gone: string): SiteState => {
  const { [gone as MemberId]: _out, ...members } = site.members;
  const joints = Object.fromEntries(
    Object.entries(site.joints).filter(([joint]) => partsOfJoint(joint).member !== gone),
  );
  return { ...site, members, joints, ridge: gone === 'ridge' ? undefined : site.ridge };
};

const trimmed = (site: SiteState, { member, cut, by }: Told<'trimmed'>): SiteState => {
  const so = site.trims[member] ?? {};
  return { ...site, trims: { ...site.trims, [member]: { ...so, [cut]: (so[cut] ?? 0) + by } } };
};

const mended = (site: SiteState, { wall, how, by }: Told<'wallMended'>): SiteState => {
  const so = site.mends[wall] ?? { up: 0, out: 0 };
  const up = how === 'shim' ? by : how === 'plane' ? -by : 0;
  const out = how === 'pull' ? by : 0;
  return { ...site, mends: { ...site.mends, [wall]: { up: so.up + up, out: so.out + out } } };
};

const drawn = (site: SiteState, { joint, nails, split }: Told<'drawn'>): SiteState => {
  const so = nailing(site, joint);
  const tacks = Math.max(0, so.tacks - nails);
  const home = Math.max(0, so.nails - Math.max(0, nails - so.tacks));
  const member = partsOfJoint(joint).member;
  const next = withJoint(site, joint, { tacks, nails: home });
  return split && !site.splits.includes(member) ? { ...next, splits: [...site.splits, member] } : next;
};

const withRidge = (site: SiteState, to: (ridge: RidgeState) => RidgeState): SiteState => ({
  ...site,
  ridge: site.ridge && to(site.ridge),
});

/** As it lies by itself. */
const lying = ({ on, high, aside }: RidgeState): RidgeState => ({ on, high, aside });

/** Nobody holds its middle any more; what a pair keeps stays. */
const letGo = (ridge: RidgeState): RidgeState => (ridge.eased ? ridge : lying(ridge));

const heelMoved = (site: SiteState, { member, by }: Told<'heelMoved'>): SiteState => {
  const placed = site.members[member];
  return placed ? withMember(site, member, { ...placed, x: placed.x + by }) : site;
};

const swapped = (site: SiteState, { member, board }: Told<'swapped'>): SiteState => {
  const placed = site.members[member];
  if (!placed) return site;
  const cleared = without(site, member);
  return {
    ...withMember(cleared, member, { ...placed, board }),
    splits: site.splits.filter((m) => m !== member),
  };
};

const takenOut = (site: SiteState, { member }: Told<'takenOut'>): SiteState => {
  if (!/^(string|chalk)\./.test(member)) return without(site, member);
  const { [member as 'string.street']: _out, ...lines } = site.lines;
  return { ...site, lines };
};

const placed = (site: SiteState, { member, at, x, board, off }: Told<'placed'>): SiteState =>
  withMember(site, member, {
    x,
    how: at,
    ...(board === undefined ? {} : { board }),
    ...(off === undefined ? {} : { off }),
  });

const read = (site: SiteState, { type: _type, ...reading }: Told<'wasRead'>): SiteState => ({
  ...site,
  readings: [...site.readings, { ...reading, told: site.told }],
});

const tellers: Tellers = {
  agreed: (site, { topic, value }) => ({ ...site, agreed: { ...site.agreed, [topic]: value } }),
  madeReady: (site, { what, at }) => ({ ...site, ready: { ...site.ready, [what]: at } }),
  wasRead: read,
  judged: (site, { subject, call, why }) => ({
    ...site,
    judged: { ...site.judged, [subject]: why === undefined ? { call } : { call, why } },
  }),
  marked: (site, { on, marks }) => ({ ...site, marks: { ...site.marks, [on]: marks } }),
  wallMended: mended,
  tieSet: (site, { member }) => tieSet(site, member),
  placed,
  ridgeLanded: (site, { on, high, aside }) =>
    withMember({ ...site, ridge: { on, high, aside } }, 'ridge', { x: 0, board: 'board.ridge', how: on }),
  tacked: (site, { joint, nails }) => withJoint(site, joint, { ...nailing(site, joint), tacks: nails }),
  nailed: (site, { joint, nails }) => withJoint(site, joint, { tacks: 0, nails }),
  drawn,
  hookedOn: (site, { hitch, tagLine }) => ({ ...site, sling: { hitch, tagLine }, unhooked: false }),
  stood: (site, { who, where }) => ({ ...site, people: { ...site.people, [who]: where } }),
  signalled: (site) => site,
  ridgeMoved: (site, { high, aside }) => withRidge(site, (ridge) => ({ ...letGo(ridge), high, aside })),
  ridgePushed: (site, { to }) => withRidge(site, (ridge) => ({ ...lying(ridge), pushed: to })),
  ridgeEased: (site, { locked }) =>
    withRidge(site, (ridge) => (locked ? { ...ridge, eased: true } : lying(ridge))),
  heelMoved,
  postSet: (site, { member, fixed, off, high }) => {
    const ridge = site.ridge && high ? { ...site.ridge, high } : site.ridge;
    return withMember({ ...site, ridge }, member, { x: 0, how: fixed, off });
  },
  braced: (site, { member }) => withMember(site, member, { x: 0 }),
  unhooked: (site) => ({ ...site, sling: undefined, unhooked: true }),
  lined: (site, { line, off }) => {
    const pulls = (site.lines[line]?.pulls ?? 0) + 1;
    return { ...site, lines: { ...site.lines, [line]: { off, pulls } } };
  },
  trimmed,
  tailCut: (site, { board, by }) => ({
    ...site,
    trims: { ...site.trims, [board]: { ...site.trims[board], tail: by } },
  }),
  swapped,
  takenOut,
  stopped: (site, { danger, action }) => ({ ...site, stops: [...site.stops, { danger, action }] }),
  rested: (site, { rests }) => ({ ...site, rests: { ...site.rests, ...rests } }),
  slipped: (site, { rests }) => ({ ...site, rests: { ...site.rests, ...rests } }),
  cameDown: (site, { why }) => ({ ...site, down: why }),
  handedOver: (site) => ({ ...site, handedOver: true }),
  spent: (site, { minutes }) => ({ ...site, minutes: site.minutes + minutes }),
};

/** A tie is set and nailed to both plates in one go. */
const tieSet = (site: SiteState, member: MemberId): SiteState => {
  const seated = withMember(site, member, { x: 0 });
  const nails = { tacks: 0, nails: 3 };
  return {
    ...seated,
    joints: {
      ...seated.joints,
      [`joistPlate:${member}.street`]: nails,
      [`joistPlate:${member}.yard`]: nails,
    },
  };
};
