// The tests that mutants meet: quick ones that run the exact code in their own process, as a worker would load dist/.

import { defineConfig } from 'vitest/config';

export default defineConfig({
  esbuild: { target: 'es2023' },
  test: {
    include: [
      'tests/{units,layout,outside}/*.test.ts',
      'tests/laws/{subfloor,tearout}.test.ts',
      'tests/input/say*.test.ts',
    ],
    exclude: ['tests/outside/worked-examples.test.ts'],
    setupFiles: ['tests/setup.ts'],
  },
});
