/** Why each rule holds and what it costs, in the words of the lead. */
type Rule = { name: string; why: string };
const rule = (name: string, why: string): Rule => ({ name, why });

export const rules: Record<string, Rule> = {
  O1: rule(
    'Brace the walls before the ridge goes up',
    'A wall that is not braced moves while you set the ridge. Then every height you found is wrong.',
  ),
  O2: rule(
    'Tie the walls before the props come out',
    'Each pair pushes its walls apart. Only a tie down low holds them. Collars do not.',
  ),
  O3: rule(
    'Mark the layout before you stack',
    'With no marks each rafter lands by eye, half an inch off here and there. The sheets will miss it.',
  ),
  O4: rule(
    'Settle the ridge length before it goes up',
    'On the ground it is one cut. Up there it is a saw at arm’s length.',
  ),
  O5: rule(
    'Tack, prove the height, then nail the end pairs',
    'A tacked pair moves with two nails. A nailed pair costs drawn nails and split ends.',
  ),
  O6: rule(
    'Lock the middle before you stack one side',
    'A long ridge bows away from a one-sided stack. Then the mates do not fit.',
  ),
  O7: rule(
    'Brace along the ridge before you stack',
    'A half-stacked roof that falls, falls along its ridge. One brace holds the row.',
  ),
  O8: rule(
    'String the plane before you nail the heels',
    'A heel on tacks slides to the string in seconds. A nailed one does not.',
  ),
  O9: rule(
    'Snap the line before the collars',
    'Set one by one by eye, collars wander. One snapped line sets them all.',
  ),
  O10: rule(
    'Nail heels and collars before the posts come out',
    'Posts carry what nails do not yet hold. Take them last.',
  ),
  O11: rule(
    'Nail the heels and snap the tails before you cut one',
    'A rafter that still moves takes its cut along. With no line each tail ends where the eye says.',
  ),
  O12: rule(
    'Fix the ridge on all its posts before any rafter leans on it',
    'The ridge is a beam. Where a post is missing or loose it sags, and each rafter set on it sags too. Jacked up later, every joint has moved.',
  ),
  O13: rule(
    'Nail the ledger to every stud before rafters load it',
    'Tacks at its ends carry the ledger, not the row. Each rafter set on it pulls them down, and the plane with them. Then it is propped, raised and proved again.',
  ),
  C1: rule(
    'Prove the walls',
    'Width in three places, both diagonals, level, straight. A wrong wall is cheap to mend only while nothing stands on it.',
  ),
  C2: rule(
    'Prove ridge height and center',
    'If the rafters are cut right, the ridge is right when the birdsmouths sit. Find it while it is only tacked.',
  ),
  C3: rule(
    'Level the ridge, level turned end for end',
    'A level can lie. Turned round, it lies the other way, and the two readings tell you the truth.',
  ),
  C4: rule(
    'String the ridge straight',
    'A long ridge lies bowed. Push its middle to the string before a pair locks it: after that the bow is built in.',
  ),
  C5: rule(
    'Read the plane at the string',
    'The string shows which heel sits high or low before the sheets do.',
  ),
  C6: rule('Tape the layout from the datum', 'Bays grow a little each. It shows only from the datum.'),
  C7: rule('Walk it with the punch list', 'Find it before the inspector does.'),
  T1: rule('Nothing left on tacks', 'A tack holds for the day’s work, not for the night’s wind.'),
  T2: rule(
    'Every joint at its count, braces in',
    'A joint short of nails holds until the load it was meant for comes.',
  ),
  S1: rule('Nobody under a hung load', 'If it drops, there is no time to step away.'),
  S2: rule(
    'The machine lets go only when the ridge is held',
    'End pairs and middle pair nailed, posts fixed, braces in, everybody clear.',
  ),
  S3: rule(
    'Never on the top plate, never tied to what is not built',
    'The plate is where people fall from. A tacked rafter comes down with you.',
  ),
  S4: rule(
    'No nail toward a hand, no bump trigger',
    'A nail goes through the ridge. Know where your mate’s hand is.',
  ),
};

export const dangers: Record<string, string> = {
  underTheLoad: 'Stop. Somebody is under the hung ridge.',
  raiseUnderLoad:
    'Stop. Do not push up by hand under a hung load. Signal the machine, or set a post there first.',
  onePointHitch: 'Stop. One point lets the ridge tip. Use two, or choke it.',
  letGoTooSoon: 'Stop. The ridge is not held yet and somebody is near it.',
  propWithSomeoneUnder: 'Stop. That post carries the ridge and somebody is under it.',
  topPlate: 'Stop. Nobody works from the top plate.',
  tiedToUnbuilt: 'Stop. That anchor is not built yet. Tie to something complete.',
  handBehind: 'Stop. Your mate holds the rafter right behind that nail. Tack the mate’s side first.',
  bumpTrigger: 'Stop. Set the nailers to sequential trigger before you nail.',
};

export const refusals: Record<string, string> = {
  over: 'The job is over.',
  alreadyThere: 'It stands already.',
  noRidge: 'There is no ridge to lean it on.',
  noBoard: 'That board is not on the pile.',
  noSuchPlace: 'There is no such place on this roof.',
  nothingToHoldTo: 'There is no block or rafter to hold it to.',
  nothingToNailTo: 'There is nothing there to nail it to.',
  nothingToNailInto: 'The faces stand too far apart. A nail would not reach.',
  blockTooLong: 'The block does not go in. It is too long for its bay.',
  raftersNailed: 'The rafters there are nailed down.',
  raftersOnIt: 'Rafters lean on it.',
  nailedThere: 'It is fastened. Draw the nails first.',
  wallBehind: 'A ledger is against its wall. It moves up or down, not sideways.',
  ridgeLocked: 'A pair is nailed in the middle. The ridge does not move there.',
  ridgeNailed: 'The end pair is nailed. The ridge does not move.',
  notPlacedByHand: 'That is set another way.',
  raftersStand: 'Rafters are up already, with their tails as they are.',
  tailsAreCut: 'That tail is cut already.',
  moreThanItHas: 'There is not that much wood to take off.',
  noSuchPiece: 'There is no such piece here.',
  cutBoardCannotTurn: 'It is cut already. A birdsmouth turned over fits nothing.',
  noLine: 'Snap a line on both sides first, or set it by eye.',
  noNailsThere: 'There are no nails to draw.',
  noSuchJoint: 'There is no joint there yet.',
  alreadyNailed: 'It is fastened already.',
  oneToThreeTacks: 'Tack with one to three nails.',
  toolCannotShow: 'That tool shows nothing there.',
  notAReading: 'That is not a reading of this tool.',
  notLookedAt: 'Look at it or measure it first.',
  notToBeJudged: 'There is nothing to judge there.',
  nothingToAgree: 'There is nothing to agree there.',
  notBuiltThisWayHere: 'This job is not built that way.',
  notASignalCode: 'Agree on the standard signals.',
  anchorNeedsAPlace: 'Say what the anchor is tied to.',
  noPlatform: 'There is no platform yet.',
  noLadder: 'There is no ladder yet.',
  noSuchWall: 'There is no wall there.',
  beyondReach: 'That is farther than it goes in one move.',
  noBearing: 'There is no bearing for it there.',
  endsNotThere: 'A line needs a rafter at each end.',
  noFloor: 'A post needs a floor or joists under it.',
  ridgeInTheWay: 'The ridge is up. Cut the post to fit under it.',
  wrongHeight: 'At that height the ridge would not lie on it.',
  noPosts: 'Two posts have to stand first.',
  postsMissing: 'It would tip off. First set a post on each side of its middle.',
  notHooked: 'It does not hang on the machine.',
  tooHeavyForTwo: 'Two people cannot lift that.',
  noMachine: 'There is no machine on this job, or nothing hangs on it.',
  noSignals: 'Agree on signals with the operator first.',
  overTheChart: 'The chart does not allow that load at this reach.',
  nothingHangs: 'Nothing hangs there.',
  patternDoesNotFit: 'The crew cannot repeat that.',
  notASingleAct: 'That is not one act.',
  noUndoInCheckOff: 'In a Check-off work is undone as on site: draw the nails.',
  nothingToUndo: 'There is nothing to take back.',
};

export const cautions: Record<string, string> = {
  fall: 'Falls kill. Work from a platform, with a guard or a harness tied to something complete.',
  topPlate: 'Nobody sets rafters from the top plate.',
  ladder: 'The ladder is tied off and stands 3 ft past the landing.',
  openings: 'Cover every floor opening and mark it.',
  anchor: 'Never tie to the ridge being set, to the load or to a tacked rafter.',
  load: 'Nobody stands under a raised load or in its path.',
  signals: 'One person signals. Anyone may call stop.',
  powerLines: 'Keep the load and the boom clear of power lines.',
  nailGun: 'Sequential trigger. Keep your hand out of the line of the nail.',
  saw: 'Cut on the ground where you can. Guards stay on.',
  lifting: 'Two people, or a machine, for anything over 50 lb.',
  night: 'Leave nothing on tacks for the night.',
  localCode:
    'This is practice. Local code, the plans, the maker’s instructions and licensed people come first.',
};
