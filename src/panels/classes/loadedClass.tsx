import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Desk } from '../desk';

type Screens = 'assigned' | 'class' | 'reading';
type Shown = FunctionComponent<{ readonly desk: Desk }>;

const loaded: Readonly<Record<Screens, () => Promise<Shown>>> = {
  assigned: () => import('./assignedScreen').then(({ AssignedScreen }) => AssignedScreen),
  class: () => import('./classScreen').then(({ ClassScreen }) => ClassScreen),
  reading: () => import('./classScreen').then(({ ReadingScreen }) => ReadingScreen),
};

/** Screens of a class come when they are first asked for: the page of the jobs does not wait for them. */
export const LoadedClass = ({ desk, screen }: { readonly desk: Desk; readonly screen: Screens }) => {
  const [shown, show] = useState<{ readonly screen: Screens; readonly Shown: Shown }>();
  useEffect(() => void loaded[screen]().then((Shown) => show({ screen, Shown })), [screen]);
  return shown?.screen === screen ? <shown.Shown desk={desk} /> : <div class="page" aria-busy="true" />;
};
