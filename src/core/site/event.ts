import type { End, Side } from '../roof/side';
import type {
  Action,
  AnchorPlace,
  Cut,
  Datum,
  LineId,
  MarkedOn,
  Person,
  PlaceAt,
  Readiness,
  Spot,
  WallMend,
} from './action';
import type { BoardId, JointId, MemberId, RafterId } from './ids';
import type { Topic } from '../level/method';
import type { DangerId } from './dangers/danger';

/** What happened. Every number in an event is settled: replaying events never draws again. */
export type SiteEvent =
  | { readonly type: 'agreed'; readonly topic: Topic; readonly value: string }
  | { readonly type: 'madeReady'; readonly what: Readiness; readonly at: AnchorPlace }
  | {
      readonly type: 'wasRead';
      readonly tool: string;
      readonly at: string;
      readonly from?: string;
      readonly shown: number | string;
      readonly said: number | string;
    }
  | { readonly type: 'judged'; readonly subject: string; readonly call: string; readonly why?: string }
  | {
      readonly type: 'marked';
      readonly on: MarkedOn;
      readonly datum: Datum;
      readonly marks: readonly number[];
    }
  | { readonly type: 'wallMended'; readonly wall: string; readonly how: WallMend; readonly by: number }
  | { readonly type: 'tieSet'; readonly member: MemberId }
  | {
      readonly type: 'placed';
      readonly member: MemberId;
      readonly at: PlaceAt;
      readonly board?: BoardId;
      readonly x: number;
      readonly off?: number;
    }
  | {
      readonly type: 'ridgeLanded';
      readonly on: 'machine' | 'posts' | 'hands';
      readonly high: Readonly<Record<End, number>>;
      readonly aside: Readonly<Record<End, number>>;
    }
  | { readonly type: 'tacked'; readonly joint: JointId; readonly nails: number }
  | { readonly type: 'nailed'; readonly joint: JointId; readonly nails: number }
  | { readonly type: 'drawn'; readonly joint: JointId; readonly nails: number; readonly split: boolean }
  | { readonly type: 'hookedOn'; readonly hitch: string; readonly tagLine: boolean }
  | { readonly type: 'stood'; readonly who: Person; readonly where: Spot }
  | { readonly type: 'signalled'; readonly sign: string }
  | {
      readonly type: 'ridgeMoved';
      readonly high: Readonly<Record<End, number>>;
      readonly aside: Readonly<Record<End, number>>;
    }
  /** Hands push the middle of the ridge to this far toward the yard (+) of the line of its ends and hold it. */
  | { readonly type: 'ridgePushed'; readonly to: number }
  /** They let go: a pair holds it there now, or it goes back to how it lies by itself. */
  | { readonly type: 'ridgeEased'; readonly locked: boolean }
  | {
      readonly type: 'heelMoved';
      readonly member: MemberId;
      readonly by: number;
      readonly why: 'shift' | 'block';
    }
  | {
      readonly type: 'postSet';
      readonly member: MemberId;
      readonly fixed: 'head' | 'foot' | 'both';
      readonly off: number;
      /** Where the ridge was when the post was fitted under it. */
      readonly high?: Readonly<Record<End, number>>;
    }
  | { readonly type: 'braced'; readonly member: MemberId }
  | { readonly type: 'unhooked' }
  | { readonly type: 'lined'; readonly line: LineId; readonly side: Side; readonly off: number }
  | { readonly type: 'trimmed'; readonly member: MemberId | BoardId; readonly cut: Cut; readonly by: number }
  | {
      readonly type: 'tailCut';
      readonly member: RafterId;
      readonly board: BoardId;
      readonly by: number;
    }
  | { readonly type: 'swapped'; readonly member: MemberId; readonly board: BoardId }
  | { readonly type: 'takenOut'; readonly member: MemberId | LineId }
  | { readonly type: 'stopped'; readonly danger: DangerId; readonly action: Action['type'] }
  /** Joints, ties and braces as they stood when they were fastened. */
  | { readonly type: 'rested'; readonly rests: Readonly<Record<string, readonly number[]>> }
  /** Nails gave: where these joints came to hold again. */
  | { readonly type: 'slipped'; readonly rests: Readonly<Record<string, readonly number[]>> }
  | { readonly type: 'cameDown'; readonly why: string }
  | { readonly type: 'handedOver' }
  | { readonly type: 'spent'; readonly minutes: number };
