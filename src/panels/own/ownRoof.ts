import { canonicalText } from '../../content/canonical';
import type { Read } from '../../content/complaint';
import { draftOf, fileOf, planOfDraft, type RoofDraft } from '../../content/draft/roofDraft';
import { restyled, sampleOf } from '../../content/draft/samples';
import { styles, type Style } from '../../content/draft/fields';
import type { Units } from '../../content/fileLengths';
import { linkOf, readLink } from '../../content/link';
import { readJson } from '../../content/readJson';
import type { RoofPlan } from '../../core/roof/plan';
import { figure } from '../../core/roof/figure';
import type { FiguredRoof } from '../../core/roof/figured';
import { heedsOf, type Heed, type Loads } from '../../present/roofs/heeded';
import { at } from '../../content/shape';
import type { Units as MeasureUnits } from '../../present/words/numbers';
import type { Desk } from '../desk';

/** The crew's own roof while it is typed: kept on the device with every letter, and figured as far as it can be. */

const kept = 'own roof';

export const draftOn = ({ draft }: Desk): RoofDraft => draft.value ?? sampleOf('gable');

const put = (desk: Desk, draft: RoofDraft): void => {
  desk.draft.value = draft;
  inThisTab(draft);
  void desk.store.put(kept, draft).catch(() => undefined);
};

export const setTyped = (desk: Desk, typed: RoofDraft['typed']): void => {
  const draft = draftOn(desk);
  put(desk, { ...draft, typed: { ...draft.typed, ...typed } });
};
export const setStyle = (desk: Desk, style: Style): void => put(desk, restyled(draftOn(desk), style));
export const setUnits = (desk: Desk, units: Units): void => put(desk, { ...draftOn(desk), units });
export const startOver = (desk: Desk): void => put(desk, sampleOf(draftOn(desk).style));

/** Kept at once: a page that is loaded anew does not wait for the store. */
const inThisTab = (draft: RoofDraft): void => {
  try {
    sessionStorage.setItem(kept, JSON.stringify(draft));
  } catch {
    // The store still has it, a moment later.
  }
};

const ofThisTab = (): RoofDraft | undefined => {
  try {
    return draftIn(JSON.parse(sessionStorage.getItem(kept) ?? 'null'));
  } catch {
    return undefined;
  }
};

/** What was typed here last; a sample where nothing was, or where it cannot be read any more. */
export const loadDraft = async (desk: Desk): Promise<void> => {
  if (desk.draft.value) return;
  const value = await desk.store.get(kept).catch(() => undefined);
  desk.draft.value = ofThisTab() ?? draftIn(value) ?? sampleOf('gable');
};

const draftIn = (value: unknown): RoofDraft | undefined => {
  const [style, units, typed] = (['style', 'units', 'typed'] as const).map((key) => at(value, [key]));
  const known = typeof style === 'string' && isStyle(style) && (units === 'in' || units === 'mm');
  if (!known || typeof typed !== 'object' || typed === null) return undefined;
  const texts = Object.entries(typed).filter(
    (entry): entry is [string, string] => typeof entry[1] === 'string',
  );
  return { style, units, typed: Object.fromEntries(texts) };
};

const isStyle = (style: string): style is Style => (styles as readonly string[]).includes(style);

/** What stands in the form, figured where it can be. */
export type OwnRoof = {
  readonly draft: RoofDraft;
  readonly read: Read<RoofPlan>;
  readonly roof: FiguredRoof | undefined;
  readonly heeds: readonly Heed[];
};

export const ownRoofOf = (draft: RoofDraft): OwnRoof => {
  const read = planOfDraft(draft);
  if (!read.ok) return { draft, read, roof: undefined, heeds: [] };
  const roof = figure(read.value);
  return { draft, read, roof, heeds: heedsOf(read.value, roof, loadsIn(draft)) };
};

const loadsIn = (draft: RoofDraft): Loads => {
  const site = at(fileOf(draft), ['site']);
  return (typeof site === 'object' && site !== null ? site : {}) as Loads;
};

/** What is typed in millimeters is read in them; otherwise as the settings say. */
export const unitsFor = ({ settings }: Desk, { units }: RoofDraft): MeasureUnits =>
  units === 'mm' ? 'mm' : settings.value.units;

/** The file as it goes into a link or onto a disk. */
export const textOf = (draft: RoofDraft): string => canonicalText(fileOf(draft));

export const linkTo = (draft: RoofDraft, base: string): string =>
  `${base.replace(/[?#].*$/, '')}${linkOf({ kind: 'roof', text: textOf(draft) })}`;

/** Puts a file's or a link's roof into the form; what was there stays where it cannot be. */
export const openText = (desk: Desk, text: string): Read<RoofDraft> => {
  const json = readJson(text);
  const draft = json.ok ? draftOf(json.value) : json;
  if (draft.ok) put(desk, draft.value);
  return draft;
};

/** Undefined where the fragment carries no roof. */
export const openLink = (desk: Desk, fragment: string): Read<RoofDraft> | undefined => {
  const linked = readLink(fragment);
  if (!linked || (linked.ok && linked.value.kind !== 'roof')) return undefined;
  return linked.ok ? openText(desk, linked.value.text) : linked;
};
