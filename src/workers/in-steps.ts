/** Work that stops now and then, so that it never holds the event loop for long: others have it in between. */

/** Milliseconds of one stretch: a stop sooner than this is passed over. */
const STRETCH = 8;

/** Works to the end, others let in where the work stops (`yield`). Rejects with what the work throws. */
export async function inSteps<T>(work: Generator<undefined, T>): Promise<T> {
  let begun = performance.now();
  for (;;) {
    const step = work.next();
    if (step.done === true) return step.value;
    if (performance.now() - begun < STRETCH) continue;
    await new Promise<void>((resolve) => setImmediate(resolve));
    begun = performance.now();
  }
}
