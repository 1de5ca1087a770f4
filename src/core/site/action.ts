import type { FaultId } from '../faults/fault';
import type { ToolId } from '../instruments/tool';
import type { End, Side } from '../roof/side';
import type { BoardId, JointId, MemberId } from './ids';
import type { Topic } from '../level/method';

/** Actions ask; events tell. Lengths are inches, snapped to 1/64 before they get here. Plain data that survives JSON. */
export type Action =
  | { readonly type: 'agree'; readonly topic: Topic; readonly value: string }
  | { readonly type: 'makeReady'; readonly what: Readiness; readonly at: AnchorPlace }
  | {
      readonly type: 'read';
      readonly tool: ToolId;
      readonly at: string;
      readonly from?: string;
      readonly said: number | string;
    }
  | { readonly type: 'judge'; readonly subject: string; readonly call: Call; readonly why?: FaultId }
  | {
      readonly type: 'mark';
      readonly on: MarkedOn;
      readonly datum: Datum;
      readonly spacing: number;
      readonly faces: 1 | 2;
    }
  | { readonly type: 'mendWall'; readonly wall: string; readonly how: WallMend; readonly by: number }
  | { readonly type: 'setTie'; readonly kind: 'joist' | 'rafterTie' | 'cross'; readonly station: number }
  | { readonly type: 'place'; readonly member: MemberId; readonly at: PlaceAt; readonly board?: BoardId }
  | { readonly type: 'tack'; readonly joint: JointId; readonly nails: number }
  | { readonly type: 'nailOff'; readonly joint: JointId }
  | { readonly type: 'draw'; readonly joint: JointId; readonly nails: number }
  | { readonly type: 'hookOn'; readonly hitch: 'twoPoint' | 'choked' | 'one'; readonly tagLine: boolean }
  | { readonly type: 'stand'; readonly who: Person; readonly where: Spot }
  | { readonly type: 'signal'; readonly sign: Sign; readonly by: number }
  | {
      readonly type: 'setPost';
      readonly at: number;
      readonly height: number;
      readonly fixed: 'head' | 'foot' | 'both';
    }
  | { readonly type: 'raise'; readonly end: End | 'both'; readonly by: number }
  | {
      readonly type: 'shift';
      readonly member: MemberId;
      readonly at: End | 'mid' | 'heel' | 'both';
      readonly by: number;
    }
  | {
      readonly type: 'brace';
      readonly kind: 'across' | 'along' | 'wall';
      readonly from: string;
      readonly to: string;
    }
  | { readonly type: 'letGo' }
  | {
      readonly type: 'line';
      readonly kind: 'string' | 'chalk' | 'tail';
      readonly from: string;
      readonly to: string;
      readonly off: number;
    }
  | { readonly type: 'trim'; readonly member: MemberId | BoardId; readonly cut: Cut; readonly by: number }
  | { readonly type: 'cutTail'; readonly member: MemberId }
  | { readonly type: 'swap'; readonly member: MemberId; readonly board: BoardId; readonly turn: boolean }
  | { readonly type: 'takeOut'; readonly member: MemberId | LineId }
  | { readonly type: 'carryOn'; readonly like: readonly [number, number]; readonly to: number }
  | { readonly type: 'handOver' }
  | { readonly type: 'undo'; readonly step: number };

export type Of<T extends Action['type']> = Extract<Action, { type: T }>;

export type Readiness = 'platform' | 'ladder' | 'openings' | 'anchor' | 'gear';
/** Where the anchor is tied; `site` for everything else. Ridge, load and tacked rafter are the places that kill. */
export type AnchorPlace = 'site' | 'wall' | 'joists' | 'ridge' | 'load' | 'rafter';
export type Call = 'sound' | 'turn' | 'swap' | 'mend';
export type MarkedOn = `plate.${Side}` | 'ridge';
/** Where the tape is held: the datum, or hop by hop from the last mark (which creeps). */
export type Datum = 'endA' | 'endB' | 'last';
export type WallMend = 'shim' | 'plane' | 'pull' | 'brace';
/** `mark`: on its layout mark. `block`: tight against the last block. Ridge: who or what carries it. Block: dropped in, or driven. */
export type PlaceAt = 'mark' | 'block' | 'machine' | 'posts' | 'hands' | 'drop' | 'drive' | 'line';
export type Person = 'lead' | 'helper';
export type Spot = 'clear' | 'beside' | 'path' | 'platform' | 'ladder' | 'plate';
export type Sign = 'hoist' | 'lower' | 'stop' | 'swing';
/** `plumb` shortens the body at the plumb cut; `wedge` takes a sliver off that cut, nothing at one corner: `by` at the top corner (+, closes a gap at the bottom) or at the bottom (−). */
export type Cut = 'plumb' | 'wedge' | 'seat' | 'heel' | 'end' | 'rip';
export type LineId = `string.${Side}` | `chalk.${Side}` | `tail.${Side}`;
