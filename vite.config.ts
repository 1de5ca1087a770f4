import { defineConfig } from 'vitest/config';

// One file for the site and for its tests: the top level of the repository holds no second one.
export default defineConfig({
  root: 'src',
  base: './',
  publicDir: false,
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 2000 },
  test: {
    projects: [
      {
        extends: false,
        test: {
          name: 'unit',
          root: '.',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'node_modules/**'],
        },
      },
      {
        extends: false,
        test: {
          name: 'browser',
          root: '.',
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
