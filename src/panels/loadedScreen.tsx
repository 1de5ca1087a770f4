import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Desk } from './desk';

export type LoadedScreens = 'assigned' | 'class' | 'reading' | 'roof' | 'card' | 'talk' | 'debrief' | 'proof';
type Shown = FunctionComponent<{ readonly desk: Desk }>;

const loaded = {
  assigned: () => import('./classes/assignedScreen').then(({ AssignedScreen }) => AssignedScreen),
  class: () => import('./classes/classScreen').then(({ ClassScreen }) => ClassScreen),
  reading: () => import('./classes/classScreen').then(({ ReadingScreen }) => ReadingScreen),
  talk: () => import('./talkScreen').then(({ TalkPage }) => TalkPage),
  debrief: () => import('./debriefScreen').then(({ DebriefPage }) => DebriefPage),
  proof: () => import('./proofScreen').then(({ ProofScreen }) => ProofScreen),
  roof: (desk: Desk) => ownScreens(desk).then(({ RoofScreen }) => RoofScreen),
  card: (desk: Desk) => ownScreens(desk).then(({ CardScreen }) => CardScreen),
} satisfies Readonly<Record<LoadedScreens, (desk: Desk) => Promise<Shown>>>;

/** With what was typed there last. */
const ownScreens = async (desk: Desk) => {
  const { ownScreens: own } = await import('./own/ownScreens');
  await own.loadDraft(desk);
  return own;
};

/** The talks before and after the work: every job has them, so they come right behind the first screen. */
export const fetchTalks = async (): Promise<void> => {
  await Promise.all([loaded.talk, loaded.debrief].map((load) => load()));
};

/** These screens come when they are first asked for: the page of the jobs does not wait for them. */
export const LoadedScreen = ({ desk, screen }: { readonly desk: Desk; readonly screen: LoadedScreens }) => {
  const [shown, show] = useState<{ readonly screen: LoadedScreens; readonly Shown: Shown }>();
  useEffect(() => void loaded[screen](desk).then((Shown) => show({ screen, Shown })), [screen]);
  return shown?.screen === screen ? <shown.Shown desk={desk} /> : <div class="page" aria-busy="true" />;
};
