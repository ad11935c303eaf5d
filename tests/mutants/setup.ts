/** Before each test file of a run of mutants: switches on the mutant, or counts which mutants the file reaches. */

import fc from 'fast-check';
import { afterAll, beforeAll, inject } from 'vitest';

/** What the instrumented code reads and writes, under a name that its maker chose. */
interface Switch {
  activeMutant?: string | undefined;
  hitCount?: number;
  hitLimit?: number;
  currentTestId?: string | undefined;
  mutantCoverage?: { static: Record<string, number>; perTest: Record<string, Record<string, number>> };
}

declare module 'vitest' {
  interface ProvidedContext {
    /** Empty when nothing is changed. */
    mutant: string;
    hitLimit: number;
  }
  interface TaskMeta {
    /** How often each mutant was reached, while the file loaded and while its tests ran. */
    reached?: { readonly loading: Record<string, number>; readonly running: Record<string, number> };
  }
}

const outer = globalThis as { __stryker__?: Switch };
const state = outer.__stryker__ ?? {};
outer.__stryker__ = state;

// One failure is enough: looking for a smaller one takes time.
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });

const mutant = inject('mutant');
if (mutant !== '') {
  state.activeMutant = mutant;
  state.hitCount ??= 0;
  state.hitLimit = inject('hitLimit');
} else {
  // The code keeps hold of this object, so it is emptied and never replaced.
  state.mutantCoverage ??= { static: {}, perTest: {} };
  const { perTest } = state.mutantCoverage;
  perTest.loading = {};
  perTest.running = {};
  state.currentTestId = 'loading';
  beforeAll(() => {
    state.currentTestId = 'running';
  });
  // biome-ignore lint/correctness/noEmptyPattern: Vitest insists on a pattern here.
  afterAll(({}, { meta }) => {
    meta.reached = { loading: perTest.loading ?? {}, running: perTest.running ?? {} };
    state.currentTestId = 'loading';
  });
}
