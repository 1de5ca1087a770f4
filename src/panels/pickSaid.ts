import type { Attempt } from '../core/site/attempt';
import { spotsFor } from '../present/offers/spots';
import { toolset } from '../present/offers/toolset';
import { memberName } from '../present/words/names';
import { wordsOf, type Desk } from './desk';
import { choosePicked } from './working';

/** Takes up a member as a touch on the drawing does. Where the tool in hand has no business there, says so and what has. */
export const pickSaid = (desk: Desk, attempt: Attempt, id: string): string | undefined => {
  const reaches = (tool: (typeof toolset)[number]['tool']): boolean =>
    spotsFor(attempt, tool).some((spot) => spot.id === id || spot.member === id);
  const tool = desk.tool.value;
  if (reaches(tool)) {
    choosePicked(desk, id);
    return undefined;
  }
  const words = wordsOf(desk);
  const { nothing, tools } = words.spoken.roof;
  const others = toolset.filter((row) => reaches(row.tool)).map((row) => words.trade.tool[row.tool]);
  return [
    nothing(memberName(words, id), words.trade.tool[tool]),
    ...(others.length > 0 ? [tools(others.join(', '))] : []),
  ].join(' ');
};

/** What a finger or the mouse touched is taken up; where the tool in hand has no business there, it is named all the same. */
export const tapped = (desk: Desk, id: string | undefined): void => {
  const attempt = desk.session.value?.attempt.value;
  const named = attempt && id !== undefined && pickSaid(desk, attempt, id) !== undefined;
  desk.at.value = named ? { id, on: 'tap' } : undefined;
};

/** Puts the keyboard on the work in hand: the list of places, or the one place that is shown where the list has no room. */
export const toTheWork = (): void => {
  setTimeout(() => {
    for (const at of ['.spots', '.stepper .here', '#main-act', '#watchNext', '#toDebrief']) {
      const found = document.querySelector<HTMLElement>(at);
      if (!found || found.offsetParent === null) continue;
      found.focus();
      return;
    }
  });
};
