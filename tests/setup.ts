/** Fixes fast-check's seed, so that a failure found in CI is found again at the desk. `FC_SEED` tries another. */

import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? 20_260) });
