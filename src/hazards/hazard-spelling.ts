/** Correcting misspelled hazard words: only non-English words, and only toward a word of the lexicons. */

import { TABLES } from './lexicon/all-hazards.ts';
import { NEAR_WORDS } from './near-words.ts';
import type { Token } from './tokens.ts';

// Everyday words of the trade that a typo may have been meant as; none of them belongs to a hazard.

export const HOUSE_WORDS: ReadonlySet<string> = new Set(
  `molding moldings moulding mouldings linen sewing silicone grass glass living dining floating plank planks board boards carton cartons level leveling leveled trim trims caulk grout stair stairs closet pantry bedroom kitchen hall hallway landing porch laundry office studio nursery
  shoe base quarter round reducer nosing threshold transition underlay underlayment subfloor plywood laminate hardwood carpet padding staple staples tack stagger pattern herringbone direction layout length width height depth inches square feet measure measured waste extra spare boxes pieces
  pine maple walnut hickory cherry birch bamboo cork marble slate granite beige ivory cream taupe gray grey white brown color colors shade sheen gloss satin matte texture grain bevel edge edges corner corners miter miters cope coped scribe undercut doorway doorways jamb casing frame frames
  hinge knob stool bench island cabinet cabinets counter fridge range stove sofa table chair shelf shelves window windows wall walls ceiling budget price prices cost costs delivery order orders return returns receipt store pickup truck lumber stock stick sticks sheet sheets roll rolls
  molly milly holly polly sally wally billy jilly bella becky betty marie maria clare claire clara gavin garry gary gail gwen leah leeds leigh lena sparky smokey stockton burton boston austin dallas denver fiona sasha dasha masha natasha trisha shane shawn wendy randy sandy brandy cindy lindy mindy
  sqft sqm lvp lvt spc wpc osb mdf diy hoa hvac faq pls plz thx idk btw tho gonna wanna gotta lemme kinda sorta alot aswell yall hows whats thats heres wheres theres dont cant wont isnt arent didnt doesnt havent hasnt couldnt shouldnt wouldnt youre theyre hes shes its ive ill im weve
  tmold tmolding wifey hubby fave vynil vinly vynl lamanate laminite flooor florr flor planck fuer`
    .split(/\s+/)
    .filter((word) => word !== ''),
);

export interface Mended extends Token {
  /** A harmless trade word it could be meant as instead. */
  readonly or?: string;
}

/**
 * The shortest word corrected toward, apart from the exceptions; and the shortest for which two typos are considered.
 */
const SHORTEST = 5;
const SHORT = new Set(
  'mold mould lead wire fire leak pipe burn hand foot eyes nail sand tile lino glue dust bled cuts arms legs mask floor shock rats mice'.split(
    ' ',
  ),
);
const LONGEST = 24;

const TWICE = new Set(
  'asbestos vermiculite chrysotile linoleum monoxide electrocuted electrical electricity electrician polyurethane unconscious hantavirus droppings silicosis vermiculite termites structural foundation insulation adhesive'.split(
    ' ',
  ),
);

/** Every lexicon word, indexed by its spellings with one letter missing, or two for some. */
const LACKING = lacking([...TABLES.words]);
const HOUSE_LACKING = lacking([...HOUSE_WORDS]);
const KNOWN = new Map<string, string | undefined>();

function lacking(words: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const all = new Map<string, string[]>();
  for (const word of words) {
    if ((word.length < SHORTEST && !SHORT.has(word)) || !/^[a-z]+$/.test(word)) continue;
    for (const less of [word, ...without(word, TWICE.has(word) ? 2 : 1)]) {
      const list = all.get(less);
      if (list) list.push(word);
      else all.set(less, [word]);
    }
  }
  return all;
}

/** Every way to leave that many letters out of a word. */
function without(word: string, letters: number): ReadonlySet<string> {
  let layer = new Set([word]);
  const all = new Set<string>();
  for (let n = 0; n < letters; n++) {
    layer = new Set([...layer].flatMap((one) => [...one].map((_, i) => one.slice(0, i) + one.slice(i + 1))));
    for (const one of layer) all.add(one);
  }
  return all;
}

/** The words of a text with typos in hazard words corrected and run-together words split. */
export function spellingMended(tokens: readonly Token[]): readonly Mended[] {
  return tokens.flatMap((token): readonly Mended[] => {
    const { word } = token;
    if (TABLES.words.has(word) || NEAR_WORDS.has(word) || HOUSE_WORDS.has(word) || !isSpelling(word)) return [token];
    const parts = apart(token);
    if (parts.length > 1) return parts;
    const right = nearest(word);
    if (right !== undefined) {
      const or = nearestIn(word, HOUSE_LACKING);
      return [or === undefined || or === right ? { ...token, word: right } : { ...token, word: right, or }];
    }
    return [token];
  });
}

/** Whether a word could be a misspelling of a lexicon word; only for words made of letters. */
function isSpelling(word: string): boolean {
  return word.length >= 3 && word.length <= LONGEST && /^[a-z]+$/.test(word);
}

/** The lexicon word that a word is a typo of, if any. */
export function nearest(word: string): string | undefined {
  return isSpelling(word) ? nearestIn(word, LACKING) : undefined;
}

function nearestIn(word: string, among: ReadonlyMap<string, readonly string[]>): string | undefined {
  const key = among === LACKING ? word : ` ${word}`;
  if (KNOWN.has(key)) return KNOWN.get(key);
  const candidates = new Set<string>();
  for (const less of [word, ...without(word, word.length >= 7 ? 2 : 1)])
    for (const one of among.get(less) ?? []) candidates.add(one);
  const near = [...candidates].filter((one) => isSlip(word, one));
  const [best] = near.sort(
    (a, b) => slips(word, a) - slips(word, b) || Number(b[0] === word[0]) - Number(a[0] === word[0]),
  );
  if (KNOWN.size > 20_000) KNOWN.clear();
  KNOWN.set(key, best);
  return best;
}

/**
 * One typo: a letter missing, doubled or changed, or two swapped; two typos in a long word. A short word must have its
 * first letter right.
 */
function isSlip(word: string, right: string): boolean {
  const most = TWICE.has(right) ? 2 : 1;
  if (right.length < 5 && word[0] !== right[0]) return false;
  return slips(word, right) <= most;
}

/** Edit distance up to three: insertions, deletions, changes and swapped neighbors (optimal string alignment). */
export function slips(one: string, other: string): number {
  if (Math.abs(one.length - other.length) > 2) return 3;
  let [before, last, row]: [number[], number[], number[]] = [
    [],
    [],
    Array.from({ length: other.length + 1 }, (_, j) => j),
  ];
  for (let i = 1; i <= one.length; i++) {
    before = last;
    last = row;
    row = [i];
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1;
      let least = Math.min((last[j] ?? 9) + 1, (row[j - 1] ?? 9) + 1, (last[j - 1] ?? 9) + same);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1])
        least = Math.min(least, (before[j - 2] ?? 9) + 1);
      row[j] = least;
    }
  }
  return Math.min(3, row[other.length] ?? 3);
}

/** Words that people run together (`gasleak`) without forming another English word. */
const RUN_TOGETHER = new Set(
  'gas smell smells leak leaks leaking pipe burst mold lead paint carbon monoxide raw sewage live wire wires asbestos tile tiles alarm detector'.split(
    ' ',
  ),
);

/** Splits two words run together; returns the word itself if it isn't such a pair. */
function apart(token: Token): readonly Mended[] {
  const { word, from, at } = token;
  for (let i = 3; i <= word.length - 3; i++) {
    const [one, other] = [word.slice(0, i), word.slice(i)];
    if (!RUN_TOGETHER.has(one) || !RUN_TOGETHER.has(other)) continue;
    return [
      { ...token, word: one, to: from + i, at },
      { ...token, word: other, from: from + i, at: at + 0.5 },
    ];
  }
  return [token];
}
