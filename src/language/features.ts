/** What the reader sees of a sentence: words, pairs of words and pieces of words, with numbers by their kind. */

/** Words that the trade or another country calls otherwise, as one. */
const SAME: Readonly<Record<string, string>> = {
  carton: 'box',
  cartons: 'box',
  boxes: 'box',
  packs: 'box',
  pack: 'box',
  pkg: 'box',
  ctn: 'box',
  moulding: 'molding',
  mouldings: 'molding',
  skirting: 'baseboard',
  skirtings: 'baseboard',
  baseboards: 'baseboard',
  beading: 'shoe',
  scotia: 'shoe',
  underlayment: 'underlay',
  underpad: 'underlay',
  padding: 'pad',
  lino: 'linoleum',
  lvp: 'vinyl',
  lvt: 'vinyl',
  boards: 'plank',
  planks: 'plank',
  metre: 'meter',
  metres: 'meter',
  gray: 'grey',
  colour: 'color',
  levelling: 'leveling',
  leveller: 'leveler',
  mould: 'mold',
  mouldy: 'moldy',
  odour: 'odor',
  plywd: 'plywood',
  ply: 'plywood',
  cant: 'can not',
  wont: 'will not',
  dont: 'do not',
  doesnt: 'does not',
  isnt: 'is not',
  ur: 'your',
  u: 'you',
  w: 'with',
  sqft: 'sq ft',
  ft2: 'sq ft',
  sf: 'sq ft',
};

const ENDINGS = /(?:ings?|edly|ed|ies|es|s|ly)$/;

/** A word without its ending, so that “leveled” and “leveling” meet. */
function stem(word: string): string {
  if (word.length < 5 || /(?:ss|us)$/.test(word)) return word;
  const cut = word.replace(ENDINGS, (ending) => (ending === 'ies' ? 'y' : ''));
  const bare = cut.length < 3 ? word : cut;
  return bare.length > 4 ? bare.replace(/(.)\1$/, '$1').replace(/e$/, '') : bare;
}

/** What stands beyond is no question any more. */
const LONGEST = 1500;

/** Words in order, lowercase and without endings; numbers stand as what they measure. */
export function wordsOf(text: string): readonly string[] {
  const plain = text
    .slice(0, LONGEST)
    .toLowerCase()
    .replace(/\s{2,}/g, ' ')
    .replace(/[’‘`´]/g, "'")
    .replace(/[“”″]/g, '"')
    .replace(/(\d)\s*(?:'|ft\b|feet\b|foot\b)\s*(\d+(?:[\s-]\d+\/\d+)?)?\s*(?:"|in\b|inch(?:es)?\b)?/g, '$1 ft ')
    .replace(/[$€£]\s*\d[\d.,]*/g, ' #money ')
    .replace(/(?<![\d.,])\d[\d.,]{0,9} ?%/g, ' #percent ')
    .replace(
      /(?<![\d./-])\d[\d./-]{0,9}(?: \d{1,2}\/\d{1,2})? ?(?:ft|in|m|cm|mm|")? ?(?:x|×|by) ?\d[\d./-]{0,9}/g,
      ' #size ',
    )
    .replace(/\b(?:1[89]\d\d|20\d\d)s?\b/g, ' #year ')
    .replace(/\b\d+\/\d+\b/g, ' #fraction ')
    .replace(/\d[\d.,]*/g, ' #number ')
    .replace(/"/g, ' inch ')
    .replace(/'(?=[a-z])/g, '')
    .replace(/[^\p{L}#]+/gu, ' ')
    .trim();
  const words = plain === '' ? [] : plain.split(' ');
  return words.flatMap((word) => {
    if (word.startsWith('#')) return [word];
    const same = Object.hasOwn(SAME, word) ? (SAME[word] ?? word) : word;
    return same.split(' ').map(stem);
  });
}

const FEWEST = 4;

/** Features of a sentence by their number of times: words, neighbors, near neighbors, pieces of four letters. */
export function featuresOf(text: string): ReadonlyMap<string, number> {
  const words = wordsOf(text);
  const found = new Map<string, number>();
  const add = (feature: string): void => {
    found.set(feature, (found.get(feature) ?? 0) + 1);
  };
  const edged = ['^', ...words, '$'];
  for (const [i, word] of edged.entries()) {
    if (i > 0 && i <= words.length) add(word);
    const [next, after] = [edged[i + 1], edged[i + 2]];
    if (next !== undefined) add(`${word} ${next}`);
    if (after !== undefined) add(`${word} _ ${after}`);
    if (word.startsWith('#') || word.length < 3) continue;
    const padded = ` ${word} `;
    for (let at = 0; at + FEWEST <= padded.length; at++) add(`~${padded.slice(at, at + FEWEST)}`);
  }
  return found;
}
