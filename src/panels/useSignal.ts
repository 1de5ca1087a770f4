import { effect, type ReadonlySignal } from '@preact/signals-core';
import { useEffect, useState } from 'preact/hooks';

/** The value of a signal, and a redraw when it changes. */
export const useSignal = <T>(signal: ReadonlySignal<T>): T => {
  const [value, set] = useState(signal.peek());
  useEffect(() => effect(() => set(() => signal.value)), [signal]);
  return value;
};
