import { effect } from '@preact/signals-core';
import { h, options, render } from 'preact';
import './panels/fonts.css';
import './panels/look.css';
import './panels/site.css';
import './panels/picker.css';
import './panels/tag.css';
import './panels/views.css';
import './panels/rooms.css';
import './panels/screens.css';
import './panels/recall.css';
import './panels/proof.css';
import { attemptDigest, siteDigest } from './content/canonical';
import { parseLevel } from './content/readLevel';
import { readProof } from './content/proofFile';
import type { Proof } from './core/score/proof';
import { complaintLine } from './content/complaint';
import { modesOf, type Level } from './core/level/level';
import type { Action } from './core/site/action';
import { App } from './panels/app';
import { deskOf, enter, startRun, type Desk } from './panels/desk';
import { resumeRun } from './session/session';
import { loadSettings, usualSettings, type Settings } from './session/settings';
import { idbStore } from './session/idbStore';
import { memoryStore, type Store } from './session/store';
import { deckPicture, drawings } from './scenes/drawings';
import { facesReady } from './scenes/ink/faces';

/** Wires the parts; the only file that knows them all. */

// A key may come before the last one has been drawn. Drawing at once, what is shown is always what the next key acts on.
options.debounceRendering = (draw) => draw();

const levelFiles = import.meta.glob<string>('../levels/*/*.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The last proof of the score; a checkout may have none. */
const proofFiles = import.meta.glob<string>('../tests/prove/last.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const proofText = Object.values(proofFiles)[0];
let proof: Proof | undefined;
/** Read when somebody first asks for it: nobody needs it to start. */
const provedLast = (): Proof | undefined =>
  (proof ??= proofText === undefined ? undefined : readProof(proofText));

/** The course's order of jobs. One that is not named comes last. */
const courseOrder = [
  'garden-hut',
  'pump-house',
  'seed-store',
  'sail-loft',
  'wood-store',
  'drying-shed',
  'ferry-shelter',
  'boathouse',
  'hay-barn',
  'harbor-office',
];

const readLevels = (): { readonly levels: readonly Level[]; readonly troubles: readonly string[] } => {
  const levels: Level[] = [];
  const troubles: string[] = [];
  for (const [file, text] of Object.entries(levelFiles)) {
    const read = parseLevel(text);
    if (read.ok) levels.push(read.value);
    else troubles.push(...read.complaints.map((c) => complaintLine(file.replace('../', ''), c)));
  }
  const place = ({ id }: Level): number =>
    (courseOrder.indexOf(id) + courseOrder.length + 1) % (courseOrder.length + 1);
  return { levels: levels.sort((a, b) => place(a) - place(b)), troubles };
};

const openStore = (): Promise<Store> => idbStore().catch(() => memoryStore());

/** What a link may ask for: language, light, text size, job, seed, way of playing, screen. Anything else is ignored. */
const fromLink = (query: URLSearchParams, settings: Settings): Settings => {
  const one = <T extends string>(key: string, options: readonly T[]): T | undefined =>
    options.find((option) => option === query.get(key));
  return {
    ...settings,
    lang: one('lang', ['en', 'es']) ?? settings.lang,
    theme: one('theme', ['day', 'night']) ?? settings.theme,
    text: one('text', ['100', '150', '200']) ?? settings.text,
  };
};

const start = async (): Promise<void> => {
  // Asked for now, so that the first drawing finds them and nothing is fetched once the page stands.
  void facesReady();
  const query = new URLSearchParams(location.search);
  const store = await openStore();
  const usual = usualSettings(navigator.language, matchMedia('(prefers-color-scheme: dark)').matches);
  const settings = fromLink(query, await loadSettings(store, usual));
  const heads = await store.runs().catch(() => []);
  const seed = Number(query.get('seed') ?? '') || 1 + (Date.now() % 9973);
  const desk = deskOf({
    ...readLevels(),
    proof: provedLast,
    store,
    drawings,
    settings,
    heads,
    seed: Math.round(seed),
  });
  effect(() =>
    document.documentElement.style.setProperty(
      '--deck-picture',
      `url(${deckPicture(desk.settings.value.theme)})`,
    ),
  );
  await openAsked(desk, query);
  render(h(App, { desk }), document.getElementById('app') as HTMLElement);
  window.__tt = hooks(desk);
};

const openAsked = async (desk: Desk, query: URLSearchParams): Promise<void> => {
  const asked = query.get('level');
  const level = desk.levels.find(({ id }) => id === asked);
  const screen = query.get('screen');
  if (asked !== null && !level) return;
  if (level) desk.level.value = level;
  if (screen === 'site' && level) {
    const mode = modesOf(level).find((one) => one === query.get('mode')) ?? 'own';
    await startRun(desk, level, mode);
  } else if (screen === 'proof') desk.screen.value = screen;
  else if (screen === 'talk' && level) desk.screen.value = 'talk';
  else if (asked === null && screen === null) {
    const open = await resumeRun(desk.store, desk.levels).catch(() => undefined);
    if (open) await enter(desk, open);
  }
};

/** For tests and for whoever scripts the page: the run as it is, and a way to act on it. */
const hooks = (desk: Desk): Window['__tt'] => ({
  attempt: () => desk.session.value?.attempt.value,
  do: (action) => desk.session.value?.do(action),
  digest: () => {
    const attempt = desk.session.value?.attempt.value;
    return (
      attempt && { site: siteDigest(attempt.site), run: attemptDigest(attempt), steps: attempt.steps.length }
    );
  },
  settled: () => desk.session.value?.settled() ?? Promise.resolve(),
  go: (screen) => {
    desk.screen.value = screen;
  },
  show: (what) => {
    if (what.tool) desk.tool.value = what.tool;
    if (what.spot) desk.spot.value = what.spot;
    if (what.view) desk.view.value = what.view;
    if (what.corner) desk.corner.value = what.corner;
  },
});

declare global {
  interface Window {
    __tt: {
      readonly attempt: () => unknown;
      readonly do: (action: Action) => unknown;
      readonly digest: () => unknown;
      readonly settled: () => Promise<void>;
      readonly go: (screen: Desk['screen']['value']) => void;
      readonly show: (what: {
        tool?: Desk['tool']['value'];
        spot?: string;
        view?: Desk['view']['value'];
        corner?: Desk['corner']['value'];
      }) => void;
    };
  }
}

void start();
