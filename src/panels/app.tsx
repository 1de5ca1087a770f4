import { useEffect, useLayoutEffect } from 'preact/hooks';
import { wordsOf, type Desk } from './desk';
import { Overlays } from './overlays';
import { LoadedScreen } from './loadedScreen';
import { SiteScreen } from './siteScreen';
import { StartScreen } from './startScreen';
import { useSignal } from './useSignal';

/** One screen at a time, and whatever lies over it. */
export const App = ({ desk }: { readonly desk: Desk }) => {
  const { lang, theme, text } = useSignal(desk.settings);
  const session = useSignal(desk.session);
  useEffect(() => {
    document.documentElement.lang = lang;
    document.documentElement.classList.toggle('night', theme === 'night');
    document.documentElement.style.setProperty('--size', String(Number(text) / 100));
    document.title = wordsOf(desk).ui.product;
  }, [lang, theme, text]);
  return (
    <>
      <CurrentScreen desk={desk} key={session?.id ?? ''} />
      <Overlays desk={desk} />
    </>
  );
};

const CurrentScreen = ({ desk }: { readonly desk: Desk }) => {
  const screen = useSignal(desk.screen);
  const level = useSignal(desk.level);
  const session = useSignal(desk.session);
  // Another screen begins at its head, however far down the last one was read.
  useLayoutEffect(() => scrollTo(0, 0), [screen]);
  if (screen === 'site' && session) return <SiteScreen desk={desk} session={session} />;
  const nothingYet = screen === 'site' || (screen === 'talk' && !level) || (screen === 'debrief' && !session);
  if (screen === 'start' || nothingYet) return <StartScreen desk={desk} />;
  return <LoadedScreen desk={desk} screen={screen} />;
};
