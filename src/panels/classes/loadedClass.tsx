import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Desk } from '../desk';

type Props = { readonly desk: Desk; readonly screen: 'class' | 'reading' };
type Loaded = FunctionComponent<{ readonly desk: Desk }>;

/** The instructor's screens come when they are first asked for: no learner's page waits for them. */
export const LoadedClass = ({ desk, screen }: Props) => {
  const [screens, set] = useState<Readonly<Record<Props['screen'], Loaded>>>();
  useEffect(() => {
    void import('./classScreen').then(({ ClassScreen, ReadingScreen }) =>
      set({ class: ClassScreen, reading: ReadingScreen }),
    );
  }, []);
  const Screen = screens?.[screen];
  return Screen ? <Screen desk={desk} /> : <div class="page" aria-busy="true" />;
};
