import type { Desk } from '../desk';
import { PageHeader } from '../pageHeader';
import { useSignal } from '../useSignal';
import { classWordsOf } from './classWords';

/** The way back to the jobs, and the other language. */
export const ClassHeader = ({ desk }: { readonly desk: Desk }) => {
  useSignal(desk.settings);
  return <PageHeader desk={desk} id="toJobs" to="start" text={classWordsOf(desk).classes.back} />;
};
