import { defineConfig } from 'vitest/config';

export default defineConfig({
  // The language that the build is compiled to: for an older one patterns are made anew at every call.
  esbuild: { target: 'es2023' },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 120_000,
    maxWorkers: 2,
    hookTimeout: 120_000,
    isolate: false,
    setupFiles: ['tests/setup.ts'],
    // What was compiled before and has not changed since is not compiled again.
    experimental: { fsModuleCache: true, fsModuleCachePath: 'node_modules/.vitest-es2023' },
  },
});
