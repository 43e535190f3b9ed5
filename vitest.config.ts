import { configDefaults, defineConfig } from 'vitest/config';

/** These measure memory or processor time of the process that they run in, so each has a fresh one. */
const ALONE = ['test/cli/listen.test.ts', 'test/sound/bad-input.test.ts', 'test/survey-file/bad-input.test.ts'];

export default defineConfig({
  test: {
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    pool: 'forks',
    projects: [
      // Each of the two processes loads the core once for all its files; nothing in it keeps a state.
      { extends: true, test: { name: 'together', include: ['test/**/*.test.ts'], exclude: [...configDefaults.exclude, ...ALONE], isolate: false, globalSetup: ['test/run-folder.ts'] } },
      { extends: true, test: { name: 'alone', include: ALONE } },
    ],
  },
});
