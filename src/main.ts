import { effect } from '@preact/signals-core';
import { h, render } from 'preact';
import './panels/fonts.css';
import './panels/look.css';
import './panels/safeArea.css';
import './panels/site.css';
import './panels/spoken.css';
import './panels/picker.css';
import './panels/tag.css';
import './panels/views.css';
import './panels/rooms.css';
import './panels/shapes.css';
import './panels/screens.css';
import './panels/debrief.css';
import './panels/strip.css';
import './panels/print.css';
import './panels/recall.css';
import './panels/proof.css';
import './panels/states.css';
import './panels/classes/classes.css';
import { ears, type Ears } from './audio/ears';
import { attemptDigest, siteDigest } from './content/canonical';
import { readLevels } from './content/levelFiles';
import { fetchTalks } from './panels/loadedScreen';
import { readProof } from './content/proofFile';
import { modesOf, type Level } from './core/level/level';
import type { Action } from './core/site/action';
import { App } from './panels/app';
import { loadOwn } from './panels/own/ownJobList';
import { openRoofLink } from './panels/own/roofLink';
import { loadClasses, openLinked } from './panels/classes/takenActs';
import { deskOf, openLeft, startRun, type Desk } from './panels/desk';
import { isOver } from './core/site/state';
import { drawAtOnce } from './main/drawAtOnce';
import { keepForOffline, withFirst } from './main/offline';
import type { SoundPort } from './present/soundPort';
import { askToStay } from './session/stay';
import { loadSettings, usualSettings, type Settings } from './session/settings';
import { idbStore } from './session/idbStore';
import { memoryStore, type Store } from './session/store';
import { deckPicture, drawings } from './scenes/drawings';
import { facesReady } from './scenes/ink/faces';

/** Wires the parts; the only file that knows them all. */

drawAtOnce();

const levelFiles = import.meta.glob<string>(['../levels/*/*.json', '!../levels/examples/*'], {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The last proof of the score; a checkout may have none. */
const proofFiles = import.meta.glob<string>('../tests/prove/last.json', {
  query: '?raw',
  import: 'default',
});
/** Read once the page stands: nobody needs it to start, but who opens it by a link. */
const proved = async ({ proof }: Desk): Promise<void> => {
  const [load] = Object.values(proofFiles);
  if (load && !proof.value) proof.value = readProof(await load());
};

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

const course = (): ReturnType<typeof readLevels> => {
  const named = Object.entries(levelFiles).map(([file, text]) => [file.replace('../', ''), text]);
  const { levels, troubles } = readLevels(Object.fromEntries(named) as Record<string, string>);
  const place = ({ id }: Level): number =>
    (courseOrder.indexOf(id) + courseOrder.length + 1) % (courseOrder.length + 1);
  return { levels: [...levels].sort((a, b) => place(a) - place(b)), troubles };
};

const openStore = (): Promise<Store> => idbStore(navigator.locks).catch(() => memoryStore());

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
  const { drawings: shown, drawn } = withFirst(drawings);
  const query = new URLSearchParams(location.search);
  const store = await openStore();
  const usual = usualSettings(navigator.language, matchMedia('(prefers-color-scheme: dark)').matches);
  const settings = fromLink(query, await loadSettings(store, usual));
  const heads = await store.runs().catch(() => []);
  const seed = Number(query.get('seed') ?? '') || 1 + (Date.now() % 9973);
  const desk = deskOf({
    ...course(),
    store,
    drawings: shown,
    settings,
    heads,
    seed: Math.round(seed),
  });
  await Promise.all([loadClasses(desk), loadOwn(desk)]);
  await openAsked(desk, query);
  await openFragment(desk);
  if (desk.screen.value === 'proof') await proved(desk);
  document.dispatchEvent(new CustomEvent('come', { detail: 'runs' }));
  render(h(App, { desk }), document.getElementById('app') as HTMLElement);
  document.getElementById('loading')?.remove();
  window.__tt = hooks(desk, heardOn(desk));
  performance.mark('stands');
  stayOnce(desk);
  void grained(desk).then(fetchTalks);
  void proved(desk);
  await keepForOffline(drawn);
};

/** The grain of the deck comes over its color once the first screen is there: it takes longer to draw than all of that. */
const grained = async (desk: Desk): Promise<void> => {
  await new Promise((shown) => requestAnimationFrame(() => setTimeout(shown)));
  effect(() =>
    document.documentElement.style.setProperty(
      '--deck-picture',
      `url(${deckPicture(desk.settings.value.theme)})`,
    ),
  );
};

/** The library that plays comes with the first touch; until then nothing of sound is loaded but this. */
const heardOn = ({ session, settings }: Desk): Ears => {
  const open = (): Promise<SoundPort> => import('./audio/howlerPort').then(({ howlerPort }) => howlerPort());
  return ears({ session, settings, open, page: window });
};

/** The first run that is over is the first thing worth not losing. */
const stayOnce = (desk: Desk): void => {
  let asked = false;
  effect(() => {
    const attempt = desk.session.value?.attempt.value;
    if (asked || !attempt || !isOver(attempt.site)) return;
    asked = true;
    askToStay(desk.store, navigator.storage).catch(() => undefined);
  });
};

const openAsked = async (desk: Desk, query: URLSearchParams): Promise<void> => {
  const asked = query.get('level');
  const level = desk.levels.find(({ id }) => id === asked);
  const screen = query.get('screen');
  if (asked !== null && !level) {
    desk.lost.value = true;
    return;
  }
  if (level) desk.level.value = level;
  if (screen === 'site' && level) {
    const mode = modesOf(level).find((one) => one === query.get('mode')) ?? 'own';
    await startRun(desk, level, mode);
  } else if (screen === 'proof' || screen === 'class' || screen === 'roof' || screen === 'card')
    desk.screen.value = screen;
  else if (screen === 'talk' && level) desk.screen.value = 'talk';
  else if (asked === null && screen === null) await openLeft(desk);
};

/** A link that carries something with it. It is taken up once, so that the page opens where it was left the next time. */
const openFragment = async (desk: Desk): Promise<void> => {
  addEventListener('hashchange', () => void taken(desk));
  await taken(desk);
};
const taken = async (desk: Desk): Promise<void> => {
  if ((await openRoofLink(desk, location.hash)) || (await openLinked(desk, location.hash)))
    history.replaceState(null, '', location.pathname + location.search);
};

/** For tests and for whoever scripts the page: the run as it is, and a way to act on it. */
const hooks = (desk: Desk, { asked }: Ears): Window['__tt'] => ({
  heard: asked,
  attempt: () => desk.session.value?.attempt.value,
  do: (action) => desk.session.value?.do(action),
  digest: () => {
    const attempt = desk.session.value?.attempt.value;
    return (
      attempt && { site: siteDigest(attempt.site), run: attemptDigest(attempt), steps: attempt.steps.length }
    );
  },
  settled: () => desk.session.value?.settled() ?? Promise.resolve(),
  placeOf: (id) => desk.aim.value?.placeOf(id),
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
      /** Names of the sounds asked for so far, act by act. */
      readonly heard: Ears['asked'];
      readonly do: (action: Action) => unknown;
      readonly digest: () => unknown;
      readonly settled: () => Promise<void>;
      readonly placeOf: (id: string) => { readonly x: number; readonly y: number } | undefined;
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
