import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    // Processes, so that each measures its own time and memory; each loads the core once for all its files, since nothing in it keeps a state.
    pool: 'forks',
    isolate: false,
    globalSetup: ['test/run-folder.ts'],
  },
});
