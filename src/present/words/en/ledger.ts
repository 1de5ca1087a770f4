import type { OtherWords } from '../otherWords';

/** What is called otherwise where rafters lean on a ledger at a wall: no ridge, no pairs, one side that needs no name. */

const trade: OtherWords['trade'] = {
  side: { street: '', yard: 'wall' },
  wall: { street: 'low wall', A: 'end wall at A', B: 'end wall at B' },
  member: {
    ridge: 'Ledger',
    rafter: (n) => `Rafter ${n}`,
    block: (n) => `Block ${n}–${n + 1}`,
    board: (n) => (n === 'ridge' ? 'Ledger stock' : `Board ${n}`),
    plate: () => 'Plate',
    string: () => 'String',
    tail: () => 'Tail line',
  },
  joint: { ridge: 'at the ledger' },
  place: {
    width: (at) => `Plate to wall at ${at}`,
    diagonal1: 'Diagonal, plate at A to wall at B',
    diagonal2: 'Diagonal, wall at A to plate at B',
    height: (end) => `Ledger top above the plate, ${end}`,
    layout: (n) => `Datum to rafter ${n}`,
    bay: (n) => `Clear bay ${n}–${n + 1}`,
    ridgeLength: 'Length of the ledger',
    plateHeight: (_side, at) => `Plate height, ${at}`,
    ridgeStraight: 'Ledger against the string, its middle to the wall',
    plateStraight: () => 'Plate against the string',
    ridgeLevel: (end) => `Level on the ledger, its mark to ${end}`,
    ridgeLevelShort: (end) => `2 ft level on the ledger, its mark to ${end}`,
    plane: (n) => `String to rafter ${n}`,
    storyPole: (end) => `Story pole at the ledger, ${end}: top over its mark`,
    overThree: (n) => `Straightedge over three, rafter ${n} high`,
    sightRidge: 'Sight along the ledger, its middle to the wall',
    sightPlate: () => 'Sight along the plate, its middle out',
  },
  method: { hang: { name: 'The ledger goes up' }, ridgeLength: { name: 'Ledger length' } },
  anchor: { wall: 'tied to the wall that stands', ridge: 'tied to the ledger' },
  fault: { ridgeLong: 'Ledger long' },
  symptom: {
    width: 'a plate that runs off the wall',
    entering: 'a ledger that will not go in',
  },
  feature: {
    level: 'Ledger out of level',
    height: 'Ledger off its height',
    straight: 'Ledger not straight',
  },
};

const ui: OtherWords['ui'] = {
  talk: { figures: { ridgeTop: 'Ledger top above the plate' } },
  watch: { plain: { setPosts: 'Posts carry the ledger while the nails do not.' } },
  site: {
    goalSays:
      'One straight, level ledger, fast at every stud. Every rafter on its mark and in plane, nailed in full. Nothing on tacks at the end.',
    corner: { yard: 'From behind the wall', street: 'From the low side' },
    fell: {
      nothingCarriesTheRidge: 'Nothing carried the ledger.',
      alongTheRidge: 'The row fell over along its ledger.',
    },
  },
  drawing: { jointFrom: 'seen along the ledger, from end A' },
  axes: { ridge: 'ledger', ridgeTop: 'ledger top' },
  view: { side: 'Side along the ledger, from the low side' },
  act: {
    postFit: 'Set it under the ledger, cut to fit',
    postHeight: 'Height of its head above the plate',
  },
  debrief: { stands: { ridge: 'Ledger up', pairs: 'End rafters up', street: 'All rafters up' } },
};

const spoken: OtherWords['spoken'] = {
  topOver: (at) => `The top of the ledger lies ${at}, over the mark.`,
  topUnder: (at) => `The top of the ledger lies ${at}, under the mark.`,
  topOn: 'The top of the ledger lies right at the mark.',
  roof: {
    whole: 'Walls and ledger',
    bay: (n) => `Rafter ${n} and the bay after it`,
    lastBay: (n) => `Rafter ${n}`,
    notUp: 'The ledger is not up.',
    posts: 'The ledger is up on its posts.',
    hands: 'The ledger is up. People hold it.',
    rafters: 'The ledger is up. Its wall carries it.',
    pairs: (n, all) => `${n} of ${all} rafters stand.`,
    tacked: (_side, n) => `${n} ${n === 1 ? 'rafter hangs' : 'rafters hang'} on tacks.`,
    heldBy: { rafters: 'fast to its wall' },
  },
  help: {
    keys: 'Arrow keys go from member to member: left and right along the ledger, up and down in a bay. Enter picks. Escape goes back to the list.',
  },
};

const rules: OtherWords['rules'] = {
  O1: {
    name: 'Brace the walls before the ledger goes up',
    why: 'A wall that is not braced moves while you set the ledger. Then every height you found is wrong.',
  },
  O4: { name: 'Settle the ledger length before it goes up' },
  O5: {
    name: 'Tack, prove the height, then nail the ends',
    why: 'A tacked ledger moves with two nails, and its end rafters with it. A nailed one costs drawn nails and split ends.',
  },
  C2: {
    name: 'Prove the height of the ledger',
    why: 'If the rafters are cut right, the ledger is right when the birdsmouths sit. Find it while it is only tacked.',
  },
  C3: { name: 'Level the ledger, level turned end for end' },
  T2: { name: 'Every joint at its count, wall braces in' },
  S2: {
    name: 'A post comes out only when the ledger is held',
    why: 'The ledger nailed at its studs, and nobody under it.',
  },
  S4: { why: 'A nail goes through the ledger. Know where your mate’s hand is.' },
};

export const ledger: OtherWords = {
  trade,
  ui,
  spoken,
  rules,
  tasks: {
    settleRidge: 'Settle the ledger length',
    layOut: 'Mark plate and ledger',
    landRidge: 'Set the ledger',
    proveEnds: 'End rafters tacked, height proved',
    nailEnds: 'Nail the end rafters',
    stack: 'Set the rafters',
    heels: 'Read the string, nail the rafters',
  },
  heard: { ridge: 'ledger lands' },
  views: {
    loads: {
      rafter: (name, top, foot) => `${name}: ${top} at the ledger, ${foot} at the wall.`,
    },
    strip: {
      none: 'No ledger is up yet.',
      kind: { height: 'Ledger height', 'gap.street': 'String' },
    },
  },
  dangers: {
    underTheLoad: 'Stop. Somebody is under the ledger.',
    propWithSomeoneUnder: 'Stop. That post carries the ledger and somebody is under it.',
  },
  refusals: {
    noRidge: 'There is no ledger to lean it on.',
    ridgeNailed: 'The ledger is nailed. It does not move.',
    noFloor: 'A post needs a floor under it.',
    ridgeInTheWay: 'The ledger is up. Cut the post to fit under it.',
    wrongHeight: 'At that height the ledger would not lie on it.',
  },
  cautions: { anchor: 'Never tie to the ledger being set, to the load or to a tacked rafter.' },
};
