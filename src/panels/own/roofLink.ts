import type { Desk } from '../desk';

/** Opens the roof that a fragment carries, or says why it cannot be read. False where it carries none. */
export const openRoofLink = async (desk: Desk, fragment: string): Promise<boolean> => {
  if (!fragment.startsWith('#roof=')) return false;
  const { loadDraft, openLink } = await import('./ownRoof');
  await loadDraft(desk);
  const read = openLink(desk, fragment);
  if (!read) return false;
  desk.unread.value = read.ok ? undefined : read;
  desk.screen.value = 'roof';
  return true;
};
