/** HiGHS, loaded once a thread (MIT, WebAssembly). */

import highsModule, { type Highs } from 'highs';

let loading: Promise<Highs> | undefined;

/** The solver of this thread. */
export function highs(): Promise<Highs> {
  // The package is CommonJS with a default of its own: Node gives the function, its types the namespace around it.
  const load = highsModule as unknown as () => Promise<Highs>;
  loading ??= load();
  return loading;
}
