import { useMemo } from 'preact/hooks';
import type { Session } from '../../session/session';
import { memoryStore } from '../../session/store';
import { DebriefScreen } from '../debriefScreen';
import type { Desk } from '../desk';

type Props = { readonly desk: Desk; readonly session: Session };

/** The talk after work over somebody else's run: all of it to be seen, nothing of it to be gone on with or kept. */
export const ReadOnly = ({ desk, session }: Props) => {
  const reader = useMemo((): Desk => ({ ...desk, store: memoryStore(), readOnly: true }), [desk]);
  return <DebriefScreen desk={reader} session={session} key={session.attempt.value.seed} />;
};
