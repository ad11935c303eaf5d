/** A sentence of which each reader claims what it understands; what nobody claims is asked about. */

/** Stands in the place of what is claimed; no word or figure matches it, and names do not reach across it. */
export const CLAIMED = '\u2588';

interface Found extends RegExpExecArray {
  readonly to: number;
}

export interface SentenceSheet {
  /** What is not claimed, every place where it was. */
  rest(): string;
  /** The first match of a pattern, which is then claimed. */
  claim(pattern: RegExp): Found | undefined;
  /** Every match of a pattern, in order, each claimed. */
  claimAll(pattern: RegExp): readonly Found[];
}

/** A sheet with nothing claimed. */
export function sentenceSheet(plain: string): SentenceSheet {
  let rest = plain;
  const claim = (pattern: RegExp): Found | undefined => {
    pattern.lastIndex = 0;
    const found = pattern.exec(rest);
    if (!found || found[0] === '') return undefined;
    const to = found.index + found[0].length;
    rest = rest.slice(0, found.index) + CLAIMED.repeat(found[0].length) + rest.slice(to);
    return Object.assign(found, { to });
  };
  return {
    rest: () => rest,
    claim,
    claimAll: (pattern) => {
      const all: Found[] = [];
      for (let found = claim(pattern); found; found = claim(pattern)) all.push(found);
      return all.sort((one, other) => one.index - other.index);
    },
  };
}
