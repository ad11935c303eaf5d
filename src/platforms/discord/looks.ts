/** Whose missed answers were looked for lately, so that not every ask of a person looks again. */

export interface Looks {
  /** Whether it is time to look, at the moment of an interaction; then it counts as looked. */
  due(account: string, at: number): boolean;
  /** There is something to be found. */
  again(account: string): void;
}

/** Another process may have noted something since. */
const LOOK_EVERY = 10 * 60 * 1000;
const REMEMBERED = 20_000;

export function looksFor(): Looks {
  const looked = new Map<string, number>();
  return {
    due(account, at) {
      const before = looked.get(account);
      if (before !== undefined && Math.abs(at - before) < LOOK_EVERY) return false;
      looked.delete(account);
      looked.set(account, at);
      const [oldest] = looked.keys();
      if (looked.size > REMEMBERED && oldest !== undefined) looked.delete(oldest);
      return true;
    },
    again: (account) => void looked.delete(account),
  };
}
