/** What a suggested line owes to whoever typed: every figure and name of theirs, and no figure of ours; compared digit by digit, by nothing of the product's. */

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Rooms and parts of them, as they are called in what is tried. */
const NAMES = ['bedroom', 'living', 'hall', 'closet', 'bay', 'den', 'bath', 'kitchen', 'office', 'nook', 'landing'];

/** Runs of digits, without the zeros that stand before or behind a decimal mark. */
function runs(text: string): readonly string[] {
  const plain = text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign]}`)
    .replace(/[\uff10-\uff19]/g, (wide) => String.fromCodePoint((wide.codePointAt(0) ?? 0) - 0xfee0));
  return plain.match(/\d+/g) ?? [];
}

function missing(of: readonly string[], among: readonly string[]): readonly string[] {
  const left = [...among];
  return of.filter((one) => {
    const at = left.indexOf(one);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/** Figures of a line that stand in none of the texts. */
export function invented(line: string, texts: readonly string[]): readonly string[] {
  const typed = new Set(texts.flatMap(runs));
  return runs(line).filter((run) => !typed.has(run));
}

/** Figures, angles and names that were typed and that a line is without. */
export function lost(line: string, typed: string): readonly string[] {
  const degrees = (text: string): readonly string[] => text.match(/\d+(?= ?(?:°|deg))/g) ?? [];
  const words = (text: string): readonly string[] => text.toLowerCase().match(/[a-z]+/g) ?? [];
  const held = words(line);
  const names = words(typed).filter((word) => NAMES.includes(word) && !held.includes(word));
  return [...missing(runs(typed), runs(line)), ...missing(degrees(typed), degrees(line)), ...names];
}

/** What of an answer can be typed or pressed. */
interface Suggesting {
  readonly problems?: readonly { readonly fix?: string | undefined }[];
  readonly example?: string | undefined;
  readonly actions?: readonly { readonly ask: string }[];
}

/**
 * What is wrong with the lines that an answer to `typed` suggests; `answered` tells whether a line is answered, and `own` are texts
 * of the asker's project. Lines in place of what was typed hold all of it; lines that go on from an answer hold no other figure.
 */
export async function suggestionFlaws(
  typed: string,
  { problems = [], example, actions = [] }: Suggesting,
  answered: (line: string) => Promise<boolean>,
  own: readonly string[] = [],
): Promise<{ readonly lines: number; readonly flaws: readonly string[] }> {
  const mends = [...new Set([...problems.map(({ fix }) => fix), example].filter((line) => line !== undefined))];
  const next = actions.map(({ ask }) => ask);
  const flaws: string[] = [];
  for (const line of [...mends, ...next]) {
    const wrong = [
      ...((await answered(line)) ? [] : ['is not answered']),
      ...invented(line, [typed, ...own]).map((figure) => `makes up ${figure}`),
      ...(mends.includes(line) ? lost(line, typed).map((what) => `leaves out ${what}`) : []),
    ];
    flaws.push(...wrong.map((flaw) => `${JSON.stringify(typed)} → ${JSON.stringify(line)} ${flaw}`));
  }
  return { lines: mends.length + next.length, flaws };
}
