/** Writes of lmdb that a disk does not take: none of what they reject with is left for nobody to hear, which would end the process. */

/** The write itself. lmdb rejects it and tells the reason by another promise, which is rejected later. */
export function heard<T>(write: Promise<T>): Promise<T> {
  write.catch((cause: unknown) => {
    const reason =
      typeof cause === 'object' && cause !== null && 'commitError' in cause ? cause.commitError : undefined;
    if (reason instanceof Promise) reason.catch(() => {});
  });
  return write;
}
