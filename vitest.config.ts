import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 120_000,
    maxWorkers: 2,
    hookTimeout: 120_000,
    isolate: false,
    setupFiles: ['tests/setup.ts'],
    // What was compiled before and has not changed since is not compiled again.
    experimental: { fsModuleCache: true },
  },
});
