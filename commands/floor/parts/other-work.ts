/** Giving way: a long answer is worked out in short turns. */

/** Lets whatever waits for the event loop go first. */
export function otherWork(): Promise<void> {
  return new Promise((resolve) => {
    setImmediate(resolve);
  });
}
