/** The text of a plank, of which each reader claims what it understands; what nobody claims is told back to the asker. */

/** Stands in the place of what is claimed; no pattern matches it. */
const CLAIMED = '\u2588';

/** Plain text with what is claimed blanked out; every place stays where it was. */
export interface Unclaimed {
  /** The first match of a pattern in what is left, which is then claimed. */
  claim(pattern: RegExp): RegExpExecArray | undefined;
  /** As claim, with the first of the patterns that matches at all. */
  claimFirst(patterns: readonly RegExp[]): RegExpExecArray | undefined;
  /** Runs of what is left, with their places. */
  left(): readonly { readonly from: number; readonly to: number; readonly words: string }[];
}

/** A text of which nothing is claimed yet. */
export function unclaimed(plain: string): Unclaimed {
  let rest = plain.replaceAll(CLAIMED, '?');
  return {
    claim(pattern) {
      pattern.lastIndex = 0;
      const found = pattern.exec(rest) ?? undefined;
      if (found) {
        const to = found.index + found[0].length;
        rest = rest.slice(0, found.index) + CLAIMED.repeat(found[0].length) + rest.slice(to);
      }
      return found;
    },
    claimFirst(patterns) {
      for (const pattern of patterns) {
        const found = this.claim(pattern);
        if (found) return found;
      }
      return undefined;
    },
    left() {
      return [...rest.matchAll(/[^\u2588,;\r\n]+/g)].map(({ index, 0: run }) => {
        const from = index + (run.length - run.trimStart().length);
        return { from, to: from + run.trim().length, words: run.trim() };
      });
    },
  };
}
