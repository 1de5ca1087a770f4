import { waterStart } from '../../core/level/planted';
import { partsOfJoint, placeOf } from '../../core/site/ids';
import type { TaskCode } from '../../core/order/crew/task';
import type { End, Side, Wall } from '../../core/roof/side';
import type { Messages } from './messages';

/** What things are called, from their ids. */

export const memberName = (words: Messages, id: string): string => {
  const { member, side: sides, end, wall } = words.trade;
  const { station = 0, side } = placeOf(id);
  const [kind = '', second = '', third = ''] = id.split('.');
  const at = side ? sides[side] : '';
  switch (kind) {
    case 'ridge':
      return member.ridge;
    case 'rafter':
      return member.rafter(station, at);
    case 'block':
      return member.block(station, at);
    case 'joist':
    case 'rafterTie':
    case 'crossTie':
    case 'collar':
    case 'strap':
    case 'post':
      return member[kind](station);
    case 'brace':
      return second === 'along'
        ? member.braceAlong
        : second === 'wall'
          ? member.braceWall(wall[third as Wall])
          : member.braceAcross(end[third as End]);
    case 'board':
      return member.board(second);
    case 'plate':
      return member.plate(at);
    case 'string':
      return member.string(at);
    case 'chalk':
      return member.chalk(at);
    case 'tail':
      return member.tail(at);
    default:
      return member.site;
  }
};

/** A job of the crew list, with its side where there is more than one. */
export const taskName = (
  { tasks, trade }: Messages,
  { code, side }: { readonly code: TaskCode; readonly side?: Side | undefined },
): string => [tasks[code], ...(side && trade.side[side] ? [trade.side[side]] : [])].join(', ');

export const jointName = (words: Messages, joint: string): string => {
  const { kind, member } = partsOfJoint(joint);
  const { joint: names, side } = words.trade;
  const name = memberName(words, member);
  if (kind === 'blockEnd') return `${name}, ${joint.endsWith('.near') ? names.near : names.far}`;
  if (kind === 'ledger') return names.ledger(placeOf(joint).station ?? 0);
  if (kind === 'collarEnd')
    return `${name}, ${names.collarEnd(side[joint.endsWith('street') ? 'street' : 'yard'])}`;
  const plain: Readonly<Record<string, string>> = {
    ridge: names.ridge,
    heel: names.heel,
    heelTie: names.heelTie,
    joistPlate: names.joistPlate,
    blockPlate: names.blockPlate,
    strap: names.strap,
    postHead: names.postHead,
    postFoot: names.postFoot,
  };
  return `${name}, ${plain[kind] ?? ''}`;
};

type ReadAs = { readonly tool: string; readonly at: string; readonly from?: string };

/** What was read, and how the tool was held where that makes a difference. */
export const heldName = (words: Messages, reading: ReadAs): string => {
  const place = readingName(words, reading);
  const { hold } = words.trade;
  const { from } = reading;
  return from !== undefined && from in hold ? `${place}, ${hold[from as keyof typeof hold]}` : place;
};

/** What a place to read at is called. `from` is the end a level's mark lies toward. */
export const readingName = (words: Messages, { tool, at, from }: ReadAs): string => {
  const { place, side: sides, end } = words.trade;
  const parts = at.split('.');
  const { station = 0, side } = placeOf(at);
  const where = side ? sides[side] : '';
  const spot = (word: string): string => (word === 'mid' ? place.mid : word);
  if (at === 'punch') return place.punch;
  if (tool === 'eye') return sightName(words, at, where);
  if (tool === 'pattern' || tool === 'square') return place[tool](memberName(words, at));
  if (tool === 'bob' || tool === 'storyPole') return place[tool](end[parts[1] as End]);
  if (parts[2] === 'depth') return place.depth(memberName(words, at));
  if (tool === 'level')
    return place[at === 'ridge' ? 'ridgeLevel' : 'ridgeLevelShort'](end[from === 'B' ? 'B' : 'A']);
  if (at === 'board.ridge') return place.ridgeLength;
  if (at.includes(':')) return gapName(words, at);
  switch (parts[0]) {
    case 'width':
      return place.width(spot(parts[1] ?? ''));
    case 'diagonal':
      return parts[1] === '1' ? place.diagonal1 : place.diagonal2;
    case 'ridge':
      if (parts[1] === 'straight') return place.ridgeStraight;
      return parts[2] === 'height' ? place.height(end[parts[1] as End]) : place.centre(end[parts[1] as End]);
    case 'layout':
      return place.layout(station, where);
    case 'bay':
      return place.bay(station, where);
    case 'plane':
      return place[tool === 'straightedge' ? 'overThree' : 'plane'](station, where);
    default:
      if (tool === 'string') return place.plateStraight(where);
      return at === waterStart ? place.together : place.plateHeight(where, spot(parts[2] ?? ''));
  }
};

const sightName = (words: Messages, at: string, where: string): string => {
  const { place } = words.trade;
  if (at === 'ridge.straight') return place.sightRidge;
  if (at.startsWith('plate.')) return place.sightPlate(where);
  return place.eye(memberName(words, at));
};

const gapName = (words: Messages, at: string): string => {
  const { place } = words.trade;
  const [kind = '', rest = ''] = at.split(':');
  const name = memberName(words, rest.replace(/\.far$/, ''));
  const named: Readonly<Record<string, (name: string) => string>> = {
    heel: place.seatGap,
    heelCut: place.heelGap,
    ridge: place.plumbBottom,
    ridgeTop: place.plumbTop,
    blockEnd: place.blockGap,
  };
  return (named[kind] ?? place.seatGap)(name);
};
