/** Scores a sentence against every intent: naive Bayes plus softmax regression over the same features, trained at build time. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export interface Model {
  readonly intents: readonly string[];
  /** Row of each feature in both tables. */
  readonly rows: ReadonlyMap<string, number>;
  /** Start of each feature's entries in the tables, plus the end. */
  readonly bayesAt: Uint32Array;
  readonly bayesIntents: Uint16Array;
  readonly bayesWeights: Float32Array;
  readonly regressionAt: Uint32Array;
  readonly regressionIntents: Uint16Array;
  readonly regressionWeights: Int8Array;
  /** Inverse document frequency of each feature. */
  readonly rarity: Float32Array;
  /** The intents' weights before any feature. */
  readonly bayesBase: Float32Array;
  /** What every known feature adds, whether or not an intent ever had it. */
  readonly bayesEach: Float32Array;
  readonly regressionBase: Float32Array;
  readonly regressionScale: number;
}

export interface Scored {
  readonly intent: string;
  /** From 0 to 1; they sum to 1. */
  readonly score: number;
}

/** Inverse temperature of the final softmax; tuned on held-out phrases. */
const SHARPNESS = 1.6;
/** Weight of the regression relative to naive Bayes. */
const REGRESSION_SHARE = 1;

/** Best first. All scores of an empty sentence are equal. */
export function scoreIntents(text: string, model: Model): readonly Scored[] {
  const { intents, rows, rarity } = model;
  const bayes = Float64Array.from(model.bayesBase);
  const regression = Float64Array.from(model.regressionBase);
  const known: (readonly [row: number, value: number])[] = [];
  let [square, features] = [0, 0];
  for (const [feature, times] of featuresOf(text)) {
    const row = rows.get(feature);
    if (row === undefined) continue;
    features += times;
    for (let at = model.bayesAt[row] ?? 0; at < (model.bayesAt[row + 1] ?? 0); at++) {
      const intent = model.bayesIntents[at] ?? 0;
      bayes[intent] = (bayes[intent] ?? 0) + times * (model.bayesWeights[at] ?? 0);
    }
    const value = (1 + Math.log(times)) * (rarity[row] ?? 0);
    known.push([row, value]);
    square += value * value;
  }
  for (const [intent, each] of model.bayesEach.entries()) bayes[intent] = (bayes[intent] ?? 0) + features * each;
  const length = Math.sqrt(square) || 1;
  for (const [row, value] of known) {
    const factor = (value / length) * model.regressionScale;
    for (let at = model.regressionAt[row] ?? 0; at < (model.regressionAt[row + 1] ?? 0); at++) {
      const intent = model.regressionIntents[at] ?? 0;
      regression[intent] = (regression[intent] ?? 0) + factor * (model.regressionWeights[at] ?? 0);
    }
  }
  const [first, second] = [standardized(bayes), standardized(regression)];
  const sums = intents.map((_, i) => SHARPNESS * ((first[i] ?? 0) + REGRESSION_SHARE * (second[i] ?? 0)));
  const most = Math.max(...sums);
  const shares = sums.map((sum) => Math.exp(sum - most));
  const total = shares.reduce((sum, share) => sum + share, 0);
  return intents
    .map((intent, i) => ({ intent, score: (shares[i] ?? 0) / total }))
    .sort((one, other) => other.score - one.score);
}

/** Mean 0 and deviation 1; all 0 if they are equal. */
function standardized(scores: Float64Array): Float64Array {
  const mean = scores.reduce((sum, score) => sum + score, 0) / scores.length;
  const deviation = Math.sqrt(scores.reduce((sum, score) => sum + (score - mean) ** 2, 0) / scores.length);
  return scores.map((score) => (deviation === 0 ? 0 : (score - mean) / deviation));
}

/** Written next to the built JavaScript; tests that run from TypeScript read it too. */
export const MODEL_FILE = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../../dist/src/language/model.json' : './model.json', import.meta.url),
);

const TABLES = {
  bayesAt: Uint32Array,
  bayesIntents: Uint16Array,
  bayesWeights: Float32Array,
  regressionAt: Uint32Array,
  regressionIntents: Uint16Array,
  regressionWeights: Int8Array,
  rarity: Float32Array,
  bayesBase: Float32Array,
  bayesEach: Float32Array,
  regressionBase: Float32Array,
} as const;

/** The same model always gives the same text. */
export function modelText(model: Model): string {
  const tables = Object.keys(TABLES).map((name) => {
    const { buffer, byteOffset, byteLength } = model[name as keyof typeof TABLES];
    return [name, Buffer.from(buffer, byteOffset, byteLength).toString('base64')];
  });
  return JSON.stringify({
    intents: model.intents,
    features: [...model.rows.keys()],
    regressionScale: model.regressionScale,
    ...Object.fromEntries(tables),
  });
}

/** Throws a SyntaxError or TypeError for text that `modelText` didn't write. */
export function modelFrom(text: string): Model {
  const { intents, features, regressionScale, ...tables } = JSON.parse(text);
  const table = <Name extends keyof typeof TABLES>(name: Name): InstanceType<(typeof TABLES)[Name]> => {
    // Copied because wider number types need an aligned start.
    const bytes = Uint8Array.from(Buffer.from(tables[name], 'base64'));
    return new TABLES[name](bytes.buffer) as InstanceType<(typeof TABLES)[Name]>;
  };
  return {
    intents,
    rows: new Map((features as readonly string[]).map((feature, row) => [feature, row])),
    regressionScale,
    bayesAt: table('bayesAt'),
    bayesIntents: table('bayesIntents'),
    bayesWeights: table('bayesWeights'),
    regressionAt: table('regressionAt'),
    regressionIntents: table('regressionIntents'),
    regressionWeights: table('regressionWeights'),
    rarity: table('rarity'),
    bayesBase: table('bayesBase'),
    bayesEach: table('bayesEach'),
    regressionBase: table('regressionBase'),
  };
}

let loaded: Model | undefined;

/** Throws if the build hasn't written it. */
export function trainedModel(): Model {
  loaded ??= modelFrom(readFileSync(MODEL_FILE, 'utf8'));
  return loaded;
}

/** Synonyms in the trade or in other countries, mapped to one word. */
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

/** Strips endings so that “leveled” and “leveling” match. */
function stem(word: string): string {
  if (word.length < 5 || /(?:ss|us)$/.test(word)) return word;
  const cut = word.replace(ENDINGS, (ending) => (ending === 'ies' ? 'y' : ''));
  const bare = cut.length < 3 ? word : cut;
  return bare.length > 4 ? bare.replace(/(.)\1$/, '$1').replace(/e$/, '') : bare;
}

/** Longer texts are cut off. */
const LONGEST = 1500;

/** Lowercase without endings; numbers become what they measure. */
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

/**
 * Words for things of one kind, in several countries: what a phrase teaches for one of them holds for all. Hazards have
 * lexicons of their own.
 */
const WORD_KINDS: readonly (readonly [kind: string, words: string])[] = [
  ['toilet', 'toilet loo wc commode lavatory throne john'],
  ['bathroom', 'bathroom bath washroom restroom ensuite powder shower tub bathtub'],
  ['cabinet', 'cabinet cupboard cabinetry units'],
  ['kitchen', 'kitchen kitchenette galley'],
  ['appliance', 'fridge refrigerator freezer stove range oven cooker hob'],
  ['washer', 'washer dryer laundry'],
  ['dishwasher', 'dishwasher dw'],
  ['stairs', 'stairs stair step steps staircase stairway flight tread treads riser risers'],
  ['nosing', 'nosing bullnose nosings'],
  ['door', 'door doors doorway doorways doorframe threshold'],
  ['outdoor', 'patio slider balcony deck porch'],
  ['casing', 'casing jamb jambs architrave doorframe doorframes frame'],
  ['baseboard', 'baseboard baseboards skirting skirtings base trim'],
  ['shoe', 'shoe beading scotia'],
  ['caulk', 'caulk caulking caulked sealant silicone'],
  ['paint', 'paint painted painting painter painters primer prime primed'],
  ['nail', 'nail nails brad brads pin pins nailed'],
  ['nailer', 'nailer nailgun compressor'],
  ['screw', 'screw screws screwed'],
  ['glue', 'glue glued adhesive goo gunk sticky tacky tar mastic cutback'],
  ['concrete', 'concrete slab cement screed'],
  ['plywood', 'plywood ply osb sheathing particleboard chipboard luan hardboard'],
  ['joist', 'joist joists beam beams girder'],
  ['leveler', 'leveler leveling leveller levelling skim patch'],
  ['hump', 'hump humps ridge lump bump bumps high crown'],
  ['dip', 'dip dips low hollow valley'],
  ['slope', 'slope slopes slant slanted tilt tilts lean leans sag sags sagging unlevel rolls marble ball'],
  ['soft', 'soft spongy squishy mushy bouncy springy give gives flex flexes bounce bounces trampoline'],
  ['rot', 'rot rotten rotted crumbly crumbles crumbling punky decayed'],
  ['wet', 'wet water leak leaks leaked leaking flood flooded soaked spill spilled burst overflowed puddle'],
  ['damp', 'damp moist moisture humid humidity sweat sweats sweating condensation'],
  ['mold', 'mold moldy mildew mould fuzz fuzzy fungus'],
  ['smell', 'smell smells odor stink stinks reek reeks stench musty fumes'],
  ['pet', 'dog dogs cat cats puppy pet pets kitten lab'],
  ['child', 'kid kids child children toddler toddlers baby boys girls infant'],
  ['elderly', 'grandma grandmother grandpa elderly mother'],
  ['urine', 'urine pee wee peed piss'],
  ['carpet', 'carpet carpets carpeting rug rugs berber'],
  ['pad', 'pad padding underlay underlayment foam underpad'],
  ['tack strip', 'gripper grippers tack tackstrip'],
  ['staple', 'staple staples'],
  ['vinyl', 'vinyl lino linoleum sheet lvp lvt'],
  ['laminate', 'laminate'],
  ['tile', 'tile tiles tiled ceramic porcelain'],
  ['wood', 'hardwood oak parquet pine maple bamboo'],
  [
    'remove',
    'remove removing rip ripping ripped pull pulling pulled pry prying tear tearing demo demolish chip chisel bust scrape strip lift peel',
  ],
  ['lay', 'lay laying install installing put putting'],
  ['over', 'over atop top'],
  ['click', 'click clicking lock locking locks snap'],
  ['cut', 'cut cutting saw sawing trim rip notch'],
  [
    'noise',
    'noise noisy click clicks tick ticks pop pops popping creak creaks creaking squeak squeaks squeaky crackle snap',
  ],
  ['sound', 'footsteps downstairs neighbor neighbors neighbours below'],
  ['gap', 'gap gaps space crack cracks opening open split splitting'],
  ['buckle', 'buckle buckled buckling tent tenting peak peaks peaking rising rise rose hump lifting lifted'],
  ['scratch', 'scratch scratched scratches scuff scuffs gouge dent dents'],
  ['clean', 'clean cleaning mop mopping wash washing cleaner steam'],
  ['sun', 'sun sunny sunlight window windows faded fade fading bleached'],
  ['cold', 'cold freezing icy chilly frozen unheated'],
  ['heat', 'heat heated heating radiant warm'],
  ['vent', 'vent vents register registers grate grille duct'],
  ['pipe', 'pipe pipes plumbing'],
  ['electric', 'wire wires wiring cable cables outlet socket plug'],
  ['fireplace', 'fireplace hearth chimney brick'],
  ['box', 'box boxes carton cartons pack packs case cases pallet'],
  ['store', 'store shop retailer seller supplier'],
  ['return', 'return returns refund refunded'],
  ['extra', 'extra waste overage spare allowance'],
  ['leftover', 'leftover leftovers remaining spare spares'],
  ['same', 'same identical alike twin matching'],
  ['batch', 'batch lot dye run'],
  [
    'price',
    'price prices cost costs rate quote quoted charge charges budget money bucks dollars pay paid cheap expensive',
  ],
  ['labor', 'labor labour labourer installer installers contractor contractors handyman pro guy guys crew'],
  ['rent', 'rent rental renter tenant tenants lease apartment flat'],
  ['landlord', 'landlord landlady'],
  ['condo', 'condo hoa strata association board'],
  ['permit', 'permit permits inspector city town council code'],
  ['insurance', 'insurance insurer adjuster policy claim deductible'],
  ['sell', 'sell selling sale buyer buyers listing realtor'],
  ['lead', 'lead leaded'],
  ['age', 'craftsman victorian bungalow century'],
  ['dust', 'dust dusty powder'],
  ['mask', 'mask masks respirator n95 p100'],
  ['injury', 'bleeding blood sliced stabbed hurt injured splinter'],
  ['body', 'knee knees back kneel kneeling shoulder'],
  ['heavy', 'heavy weight weigh weighs lb lbs pounds kg'],
  ['furniture', 'furniture sofa couch bed beds dresser piano table chair chairs bookcase'],
  ['closet', 'closet closets wardrobe pantry'],
  ['hall', 'hall hallway corridor passage landing foyer entry'],
  ['basement', 'basement cellar underground'],
  ['upstairs', 'upstairs loft attic'],
  ['crawl', 'crawlspace crawl piers dirt'],
  ['row', 'row rows line lines course'],
  ['first', 'first opening beginning start starting begin'],
  ['last', 'last final far end'],
  ['joint', 'joint joints seam seams ends butt'],
  ['stagger', 'stagger offset'],
  ['pattern', 'pattern random repeat repeating repeats brickwork'],
  ['wall', 'wall walls drywall sheetrock plaster plasterboard gypsum'],
  ['corner', 'corner corners'],
  ['angle', 'angle angles degree degrees'],
  ['miter', 'miter mitre mitered'],
  ['straight', 'straight square crooked parallel trapezoid tapered'],
  ['small', 'small tiny little tight narrow cramped'],
  ['direction', 'direction lengthwise crosswise sideways across'],
  ['wait', 'wait waiting dry cure cured drying'],
  ['acclimate', 'acclimate acclimation acclimatise'],
  ['time', 'hours days weekend weekends evenings'],
  ['measure', 'measure measuring measured sizes size dimensions'],
  ['film', 'film plastic poly polyethylene sheeting barrier'],
  ['bug', 'bug bugs termite termites ants beetles tunnels insects'],
  ['mobile', 'trailer rv camper caravan'],
  ['wheelchair', 'wheelchair walker scooter'],
  ['transition', 'transition reducer strip bar threshold ramp'],
  ['stop', 'stop pause interrupt halfway'],
  ['disposal', 'dump tip skip dumpster landfill haul bin trash'],
];

/** The kinds of each stem. */
const KINDS = new Map<string, string[]>();
for (const [kind, words] of WORD_KINDS) {
  for (const word of words.split(' ').flatMap((one) => wordsOf(one))) {
    const own = KINDS.get(word) ?? [];
    if (!own.includes(kind)) own.push(kind);
    KINDS.set(word, own);
  }
}

const FEWEST = 4;

/** Words, neighbors, near neighbors, pieces of four letters, kinds and pairs of kinds, each with its count. */
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
  const kinds = words.flatMap((word) => KINDS.get(word) ?? []);
  for (const kind of kinds) add(`=${kind}`);
  const sorted = [...new Set(kinds)].sort();
  for (const [i, kind] of sorted.entries()) for (const other of sorted.slice(i + 1)) add(`=${kind} & ${other}`);
  return found;
}

export type Heard =
  | (Likeness & { readonly kind: 'command'; readonly name: string })
  | (Likeness & { readonly kind: 'entry'; readonly id: string })
  | (Likeness & { readonly kind: 'talk'; readonly about: string });

interface Likeness {
  readonly score: number;
  /** Other possible meanings, likeliest first. */
  readonly others: readonly Option[];
  /** Handbook entries among the likeliest meanings, including the first. */
  readonly entries: readonly { readonly id: string; readonly score: number }[];
  /** Of all likelihood, so much lies with other trades and other matters. */
  readonly elsewhere: number;
}

export type Option = { readonly command: string } | { readonly entry: string };

/**
 * At or above this score an answer stands alone; below it, others are offered too. Tuned on held-out sentences: half of
 * them reach it, and fewer than 2 in 100 are wrong and reach it.
 */
export const SURE_SCORE = 0.9985;
/** Likelier than all other meanings together. */
export const PROBABLE_SCORE = 0.6;
/** The minimum for an answer. */
export const LIKELY_SCORE = 0.25;

/** How far down the list to look for entries. */
const MOST_ENTRIES = 6;

/** Deterministic. Throws if the model wasn't built. */
export function hear(text: string): Heard {
  const model = trainedModel();
  const [first, ...rest] = scoreIntents(text, model);
  if (!first) throw new Error('a model without intents');
  const { intent } = first;
  // If no word ever occurred in the training, the score is noise.
  const score = wordsOf(text).some((word) => model.rows.has(word)) ? first.score : 0;
  const like: Likeness = {
    score,
    others: rest.slice(0, 4).flatMap(optionOf).slice(0, 2),
    entries: [first, ...rest]
      .slice(0, MOST_ENTRIES)
      .flatMap((one) => (one.intent.startsWith('handbook ') ? [{ id: one.intent.slice(9), score: one.score }] : [])),
    elsewhere: rest.reduce((sum, one) => sum + (one.intent.startsWith('other ') ? one.score : 0), 0),
  };
  if (intent.startsWith('handbook ')) return { kind: 'entry', id: intent.slice(9), ...like };
  if (intent.startsWith('talk ')) return { kind: 'talk', about: intent.slice(5), ...like };
  if (intent.startsWith('other '))
    return { kind: 'talk', about: intent === 'other chat' ? 'chat' : 'other-trade', ...like };
  return { kind: 'command', name: intent, ...like };
}

function optionOf({ intent }: Scored): readonly Option[] {
  if (/^(?:talk|other) /.test(intent)) return [];
  return [intent.startsWith('handbook ') ? { entry: intent.slice(9) } : { command: intent }];
}
