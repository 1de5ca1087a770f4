import { useEffect, useRef, useState } from 'preact/hooks';
import type { Attempt } from '../core/site/attempt';

/** How long the joint that was just worked on stays in the close-up, ms: its nails are seen to go in. Ours. */
const linger = 1500;

/** The joint that was nailed a moment ago, where that is to be seen; undefined once its moment is over. */
export const useWorkedJoint = ({ steps }: Attempt, looks: boolean): string | undefined => {
  const known = useRef(steps.length);
  const worked = useRef<string | undefined>(undefined);
  const [, again] = useState(0);
  // Told while drawing, not after it: the next place of the list must not be seen first.
  if (steps.length !== known.current) {
    const last = steps.length === known.current + 1 ? steps[steps.length - 1] : undefined;
    known.current = steps.length;
    worked.current = looks && last?.outcome.ok && 'joint' in last.action ? last.action.joint : undefined;
  }
  useEffect(() => {
    if (worked.current === undefined) return;
    const over = setTimeout(() => {
      worked.current = undefined;
      again((n) => n + 1);
    }, linger);
    return () => clearTimeout(over);
  }, [steps.length]);
  return worked.current;
};
