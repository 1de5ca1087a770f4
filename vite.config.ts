import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

// One file for the site and for its tests: the top level of the repository holds no second one.

const from = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

// The engine does not shake: this entry of its own leaves out physics, tile maps, sound and most game objects.
// Its switches are set as its authors' own core build sets them, except that drawing without WebGL stays.
const engineSwitches = {
  'typeof WEBGL_RENDERER': JSON.stringify(true),
  'typeof CANVAS_RENDERER': JSON.stringify(true),
  'typeof WEBGL_DEBUG': JSON.stringify(false),
  'typeof FEATURE_SOUND': JSON.stringify(false),
  'typeof PLUGIN_FBINSTANT': JSON.stringify(false),
  global: 'globalThis',
};

// Tests that play whole jobs by the dozen, ask another engine or library, or take seconds: not part of the quick check.
const wholeJobs = [
  'tests/audio/sprite.test.ts',
  'tests/content/{hostileRoofs,ownTroubles,roofDraft}.test.ts',
  'tests/engines/**/*.test.ts',
  'tests/hands/**/*.test.ts',
  'tests/kernel/!(kernel).test.ts',
  'tests/levels/**/*.test.ts',
  'tests/mechanics/laws.test.ts',
  'tests/order/chance.test.ts',
  'tests/outside/vectors.test.ts',
  'tests/order/crewList.test.ts',
  'tests/order/judged.test.ts',
  'tests/order/recall.test.ts',
  'tests/present/afterWork.test.ts',
  'tests/present/crewAtWork.test.ts',
  'tests/present/exaggerated.test.ts',
  'tests/present/model/fallen.test.ts',
  'tests/present/orderCost.test.ts',
  'tests/present/reach.test.ts',
  'tests/present/roofs/{anyAnswers,card,drawings}.test.ts',
  'tests/records/{marked,tampered}.test.ts',
  'tests/present/{roofSaid,roofTold}.test.ts',
  'tests/present/scaleSaid.test.ts',
  'tests/present/sounds.test.ts',
  'tests/present/screenRandom.test.ts',
  'tests/present/strip.test.ts',
  'tests/scenes/crew.test.ts',
  'tests/roof/{dormerLaws,gableDormerLaws,gablets,gambrelLaws,hips,lists,properties,rafterOutline,rake,standing,stations,steppedLaws,wildRoofs,wings}.test.ts',
  'tests/scenes/incremental.test.ts',
  'tests/scenes/instruments/pictures.test.ts',
  'tests/scenes/{lifted,staging}.test.ts',
  'tests/scenes/thirdAngle.test.ts',
  'tests/score/checked.test.ts',
  'tests/score/costs.test.ts',
  'tests/score/safety.test.ts',
  'tests/score/scored.test.ts',
  'tests/session/{beamJobs,ownJobs}.test.ts',
  'tests/site/{anyOrder,balance}.test.ts',
  'tests/site/{driftLessons,ledger}.test.ts',
  'tests/site/frameHolds.test.ts',
  'tests/site/frameLessons.test.ts',
  'tests/site/loads.test.ts',
  'tests/site/pairLoads.test.ts',
  'tests/site/ridgeBeam.test.ts',
  'tests/site/ruleConsequences.test.ts',
  'tests/site/straightened.test.ts',
  'tests/site/tails.test.ts',
  'tests/tt/**/*.test.ts',
];

/** Style and scripts go behind the page that says what is loading, so that it is seen while they come. */
const loadedLast: Plugin = {
  name: 'loaded-last',
  transformIndexHtml: {
    order: 'post',
    handler: (html) => {
      const tags = /^\s*(?:<script type="module"|<link rel="(?:modulepreload|stylesheet)").*$\n/gm;
      const moved = html.match(tags) ?? [];
      return html.replace(tags, '').replace(/^(\s*)<\/body>/m, (end) => `${moved.join('')}${end}`);
    },
  },
};

// Once it was opened the site opens without a network: everything is kept, nothing is fetched elsewhere. A new version
// waits until every page of the old one is closed, so no run is ever moved under somebody's hands.
const offline = VitePWA({
  registerType: 'prompt',
  injectRegister: false,
  filename: 'offline.js',
  manifestFilename: 'tack-and-true.webmanifest',
  includeManifestIcons: false,
  manifest: {
    id: './',
    name: 'Tack & True',
    short_name: 'Tack & True',
    description: 'Practice framing a roof: the order, the checks and the dangers, on the ground.',
    lang: 'en',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#d9cdb3',
    theme_color: '#d9cdb3',
    icons: [
      { src: './icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: './icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: './icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: './icon-full-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
  workbox: {
    globPatterns: ['**/*.{html,js,css,json,svg,png,woff2,mp3,webm,wasm,txt}'],
    // Only who installs the site needs those, and then has them.
    globIgnores: ['icon-*.png'],
    navigateFallback: 'index.html',
    inlineWorkboxRuntime: true,
    sourcemap: false,
    cleanupOutdatedCaches: true,
    clientsClaim: false,
    skipWaiting: false,
    maximumFileSizeToCacheInBytes: 8_000_000,
  },
});

export default defineConfig({
  root: from('src'),
  base: './',
  cacheDir: from('node_modules/.vite'),
  publicDir: from('assets/site'),
  plugins: [loadedLast, offline],
  define: engineSwitches,
  resolve: {
    alias: [
      { find: /^phaser$/, replacement: from('node_modules/phaser/src/phaser-core.js') },
      // Without sound in space, which nothing here asks for.
      { find: /^howler$/, replacement: from('node_modules/howler/dist/howler.core.min.js') },
    ],
  },
  build: {
    outDir: from('dist'),
    emptyOutDir: true,
    target: 'es2022',
    chunkSizeWarningLimit: 1000,
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: 'engine', test: /node_modules[\\/]phaser/ }] } },
    },
  },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          root: from('.'),
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', ...wholeJobs, 'node_modules/**'],
          setupFiles: ['tests/draws.ts'],
          // One, in a group of its own: two would each load most of the house, beside types and lint on the same two cores.
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
          // Files share their modules: nothing here changes what a module holds, and loading them anew takes most of the time.
          isolate: false,
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'jobs',
          root: from('.'),
          include: wholeJobs,
          setupFiles: ['tests/draws.ts'],
          maxWorkers: 2,
          isolate: false,
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          root: from('.'),
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/setup.ts'],
          fileParallelism: false,
          testTimeout: 240_000,
          hookTimeout: 240_000,
        },
      },
    ],
  },
});
