import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    maxWorkers: 2,
    hookTimeout: 60_000,
    isolate: false,
    setupFiles: ['tests/setup.ts'],
  },
});
