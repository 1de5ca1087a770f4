import { useLayoutEffect } from 'preact/hooks';
import { toolset } from '../present/offers/toolset';
import type { Desk } from './desk';

/** Where Enter does the act: in the list of places, on what is open in an act, or from nowhere in particular. */
const enterActs = (target: HTMLElement): boolean =>
  target === document.body ||
  target.matches('.spots, .drawing, .work [role="radio"], .tag [role="radio"], [role="spinbutton"], .typed');

/** Enter acts. Letters pick tools and U takes back, unless somebody types or the settings say no. */
export const useKeys = (desk: Desk, undo: () => void): void => {
  // Before the first picture: a key pressed at once must not be lost.
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey || desk.overlay.value) return;
      const target = event.target as HTMLElement;
      const acts = event.key === 'Enter' && enterActs(target);
      if (acts) document.getElementById('main-act')?.click();
      const letters = !acts && desk.settings.value.keys && !typesIn(target);
      if (acts || (letters && letter(desk, event.key.toLowerCase(), undo))) event.preventDefault();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
};

const typesIn = ({ tagName }: HTMLElement): boolean => ['INPUT', 'TEXTAREA', 'SELECT'].includes(tagName);

/** True when the letter meant something. */
const letter = (desk: Desk, key: string, undo: () => void): boolean => {
  const row = toolset.find((one) => one.key === key);
  if (key === 'u') undo();
  else if (row) {
    // The key of the tool already in hand only goes back to its list, at the place one was.
    if (desk.tool.value !== row.tool) desk.spot.value = undefined;
    desk.tool.value = row.tool;
    setTimeout(() => document.querySelector<HTMLElement>('.spots')?.focus());
  } else return false;
  return true;
};
