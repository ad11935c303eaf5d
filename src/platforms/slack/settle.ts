/** Better answers waited for a moment: what stands then is shown at once, and the last one in its place. */

/** An answer to show; `final` when no other follows. */
export interface Settled<T> {
  readonly value: T;
  readonly final: boolean;
}

/** The last value alone where it comes within the patience; else the one that stands then, and the last. None of none. */
export async function* settled<T>(values: AsyncIterable<T>, patience: () => Promise<void>): AsyncGenerator<Settled<T>> {
  const coming = values[Symbol.asyncIterator]();
  const late = patience().then(() => 'late' as const);
  let standing: { readonly value: T } | undefined;
  let shown = false;
  for (;;) {
    const next = coming.next();
    let came = standing && !shown ? await Promise.race([next, late]) : await next;
    if (came === 'late') {
      if (standing) yield { value: standing.value, final: false };
      shown = true;
      came = await next;
    }
    if (came.done === true) break;
    standing = { value: came.value };
  }
  if (standing) yield { value: standing.value, final: true };
}
