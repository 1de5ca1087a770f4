import type { Level } from '../level/level';
import type { SiteState } from './state';

/** A site with what it follows from: enough to say where everything is and what a tool would show. An attempt is one. */
export type Standing = { readonly level: Level; readonly seed: number; readonly site: SiteState };
