/** A text from which what was understood is taken out, so that nothing typed is lost unseen. */

/** A match with where it stood. */
export type Claimed = RegExpExecArray;

export class Rest {
  text: string;

  constructor(text: string) {
    this.text = text;
  }

  /** The first match, taken out: spaces stay in its place, so that later matches stand where they stood. */
  claim(pattern: RegExp): Claimed | undefined {
    const match = pattern.exec(this.text);
    if (!match) return undefined;
    const to = match.index + match[0].length;
    this.text = this.text.slice(0, match.index) + ' '.repeat(match[0].length) + this.text.slice(to);
    return match;
  }

  /** Every match, taken out, in order. */
  claimAll(pattern: RegExp): readonly Claimed[] {
    const all: Claimed[] = [];
    for (let found = this.claim(pattern); found; found = this.claim(pattern)) all.push(found);
    return all.sort((a, b) => a.index - b.index);
  }
}
