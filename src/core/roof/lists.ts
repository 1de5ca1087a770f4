import { cutListOf } from './cutList';
import type { FiguredRoof } from './figured';
import type { FiguredLists } from './figuredLists';
import type { RoofPlan } from './plan';
import { sheetsOf } from './sheets';
import { sticksOf } from './sticks';
import { weightsOf } from './weights';

/** What a figured roof needs bought, lifted and marked. Apart from `figure`, which the site asks far more often. */
export const listsOf = (plan: RoofPlan, roof: FiguredRoof): FiguredLists => {
  const all = sticksOf(plan, roof);
  return { cutList: cutListOf(all), weights: weightsOf(all.sticks), sheets: sheetsOf(plan) };
};
