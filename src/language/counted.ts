/** Counts, amounts and shares in a message: boxes at a price, tax, what an insurer pays, two offers, rows done. */

/** What is counted, by the word that answers use. */
const UNITS = [
  ['boxes', 'box(?:es)?|cartons?|packs?|cases?|packages?'],
  ['sticks', 'sticks?'],
  ['rolls', 'rolls?'],
  ['bags', 'bags?'],
  ['tubes', 'tubes?'],
  ['buckets', 'buckets?|pails?|tubs?'],
  ['sheets', 'sheets?'],
  ['strips', 'strips?'],
  ['planks', 'planks?|boards?'],
  ['pieces', 'pieces?|pcs'],
  ['rows', 'rows?'],
  ['rooms', 'rooms?'],
  ['stairs', 'stairs?|steps?'],
] as const;
export type Unit = (typeof UNITS)[number][0];

const UNIT = `(?:${UNITS.map(([, words]) => words).join('|')})(?![a-z])`;
const BOUGHT = `(?:${UNITS.slice(0, 8)
  .map(([, words]) => words)
  .join('|')})(?![a-z])`;
const MONEY = '\\d{1,3}(?:,\\d{3})+(?:\\.\\d{2})?|\\d{1,6}(?:\\.\\d{1,2})?';

export function unitNamed(word: string): Unit | undefined {
  return UNITS.find(([, words]) => new RegExp(`^(?:${words})$`).test(word))?.[0];
}

/** One of something, as answers say it. */
export function oneOf(unit: Unit): string {
  return unit === 'boxes' ? 'box' : unit.slice(0, -1);
}

const AT_PRICE = new RegExp(
  `(?<![\\d.,$/x])(?<count>\\d{1,4}) (?:more |extra )?(?<unit>${BOUGHT})(?:,? (?:of [a-z ]{1,20}|at|for|each|x|times|that(?:'s| are| cost)?|which are|costing|are|is|priced at|@)){1,3} ?(?<mark>[$€£])? ?(?<price>${MONEY})(?![\\d.,]*\\d|/\\d| ?(?:sq|sf|%|x|by|ft|feet|m2|m²|lbs?|pounds?|kg|kilos?|in(?![a-z])))(?<word> ?(?:dollars|bucks|usd|euros?|gbp))?`,
);
const PRICE_FIRST = new RegExp(
  `(?<mark>[$€£])? ?(?<price>${MONEY}) ?(?<word>dollars|bucks)? ?(?:a|an|per|each|/) ?(?<unit>${BOUGHT}),? (?:[a-z']+ ){0,5}(?<count>\\d{1,4})(?: (?:of (?:them|those)|${BOUGHT}))?(?![\\d.,x]| ?(?:x|by|sq|sf|%|ft|m2))`,
);
const MONEY_WORDS =
  /(?<![a-z])(?:cost|costs|price|priced|pay|paid|total|spend|money|tax|how much|much is|bill)(?![a-z])|[$€£]/;
/** No box of planks covers more square feet. */
const MOST_A_BOX = 45;

export interface PricedCount {
  readonly count: number;
  readonly unit: Unit;
  /** With its sign. */
  readonly price: string;
}

/** “7 boxes at 64.99”: a count and what one costs. */
export function pricedCount(plain: string): PricedCount | undefined {
  const { count, unit = '', mark, price = '', word } = (AT_PRICE.exec(plain) ?? PRICE_FIRST.exec(plain))?.groups ?? {};
  const named = unitNamed(unit);
  if (count === undefined || named === undefined) return undefined;
  const sure = (mark ?? word) !== undefined || MONEY_WORDS.test(plain);
  // A bare figure beside boxes may be what one covers.
  if (!sure && named === 'boxes' && Number(price.replace(',', '')) <= MOST_A_BOX) return undefined;
  return { count: Number(count), unit: named, price: `${mark ?? '$'}${price}` };
}

const COVERING =
  /(?<![\d.,$/x])(?<count>\d{1,4}) (?:more |full |unopened |left ?over )?(?:box(?:es)?|cartons?|packs?|cases?)(?![a-z])(?:[a-z ,']{0,24}?)(?:,| at| of| each| with| that are| which are| x| \()? ?(?<value>\d{1,2}(?:[.,]\d{1,3})?) ?(?<square>sq(?:uare)?\.? ?(?:ft|feet|foot|m|meters?|metres?)|sqft|sf|sqm|m2|m²|feet|foot|ft)?(?: (?:each|a ?piece|apiece|per box|a box|in each|per pack|a pack))?(?![\d.,/]*\d| ?(?:x|by|%|lbs?|pounds?|kg|kilos?)|[a-z])/;

/** “18 boxes, 23.4 each”: how many, and what one covers. */
export function coveringCount(plain: string): { readonly have: string; readonly box: string } | undefined {
  const { count, value = '', square } = COVERING.exec(plain)?.groups ?? {};
  if (count === undefined || pricedCount(plain)) return undefined;
  const figure = Number(value.replace(',', '.'));
  const each = /(?<![a-z])(?:each|a ?piece|apiece|per (?:box|pack)|a (?:box|pack)|covers?)(?![a-z])/.test(plain);
  if (square === undefined && !each && !value.includes('.')) return undefined;
  const metric = square !== undefined && /m/.test(square.replace(/^sq(?:uare)?\.? ?/, ''));
  if (figure < (metric ? 1 : 8) || figure > (metric ? 6 : MOST_A_BOX)) return undefined;
  return { have: `${count} boxes`, box: `${value} ${metric ? 'm²' : 'sq ft'}` };
}

const TAX =
  /(?<![\d.,])(\d{1,2}(?:[.,]\d{1,3})?) ?(?:%|percent)? (?:sales )?tax|(?:sales )?tax(?: is| of| at| here is|:)? (\d{1,2}(?:[.,]\d{1,3})?) ?(?:%|percent)?(?!\d|\.\d|x| x)/;

export function taxIn(plain: string): string | undefined {
  const [, before, behind] = TAX.exec(plain) ?? [];
  const figure = before ?? behind;
  return figure === undefined ? undefined : `${figure}%`;
}

const PAYER =
  '(?:insurance|insurer|the insurance (?:company|co)|landlord|hoa|warranty|seller|builder|mom|dad|parents|adjuster|they|he|she)';
const PAYS = `(?:(?:is |will |would |only |are |'ll |has |have )*(?:pay(?:s|ing)?|cover(?:s|ing|ed)?|gives?|giving|gave|paid|approved|allow(?:s|ed)?|reimburs(?:es?|ing)|sent|chips? in))`;
const PAID = [
  new RegExp(
    `${PAYER} ${PAYS}(?: (?:me|us|for|only|about|up to|back|a|the|of|check))* (?:(?<mark>[$€£]) ?(?<money>${MONEY})|(?<share>\\d{1,2}) ?(?:%|percent)|(?<plain>${MONEY})(?! ?(?:%|percent|box|carton|pack|x|by|sq|ft))|(?<half>half))`,
  ),
  new RegExp(
    `(?:(?<mark>[$€£]) ?)?(?<money>${MONEY}) (?:dollars |bucks )?(?:of (?:it|that) )?(?:from|by|comes from) (?:the |my )?${PAYER}`,
  ),
  /(?<![\d.,])(?<share>\d{1,2}) ?(?:%|percent) (?:of (?:it|that) )?(?:is |comes |paid )?(?:from|by|covered by|paid by) (?:the |my )?(?:insurance|insurer|landlord|hoa|seller|builder)/,
];

/** What somebody else pays: an amount with its sign, or a share. */
export function paidIn(plain: string): string | undefined {
  for (const pattern of PAID) {
    const { mark = '$', money, plain: bare, share, half } = pattern.exec(plain)?.groups ?? {};
    if (share !== undefined) return `${share}%`;
    if (half !== undefined) return '50%';
    const amount = money ?? bare;
    if (amount !== undefined) return `${mark}${amount}`;
  }
  return undefined;
}

const DEDUCTIBLE = new RegExp(
  `(?:(?<mark>[$€£]) ?)?(?<money>${MONEY}) (?:dollars? )?deductible|deductible (?:is |of |was )?(?:(?<sign>[$€£]) ?)?(?<amount>${MONEY})`,
);

/** What somebody insured pays first, with its sign. */
export function deductibleIn(plain: string): string | undefined {
  const { mark, money, sign, amount } = DEDUCTIBLE.exec(plain)?.groups ?? {};
  const figure = money ?? amount;
  return figure === undefined ? undefined : `${mark ?? sign ?? '$'}${figure}`;
}

const STATED = new RegExp(
  `^(?:(?:so|ok|the|my|our|all|grand|it|that) )*(?:total|bill|quote|estimate|materials?|cost|it|that|flooring|job)(?: cost| price| bill)?(?: is|'s| comes to| came to| was| will be| runs?| ran me| are|:)? (?:about )?(?:(?<mark>[$€£]) ?(?<money>${MONEY})|(?<plain>\\d{1,3}(?:,\\d{3})+(?:\\.\\d{2})?|\\d{2,5}\\.\\d{2}))(?: (?:in all|total|altogether))?[.!]*$`,
);

/** A sum of money and nothing else: “total is 2,340”. */
export function statedSum(plain: string): string | undefined {
  const { mark = '$', money, plain: bare } = STATED.exec(plain)?.groups ?? {};
  const figure = money ?? bare;
  return figure === undefined ? undefined : `${mark}${figure}`;
}

const HAD_USED = new RegExp(
  `(?<![a-z])(?:bought|had|got|started with|ordered|have|of) (?:about )?(?<all>\\d{1,4})(?: (?<unit>${UNIT}))?,? (?:and |but )?(?:i |we |i've |ive )?(?:only )?(?:used|needed|opened|went through|laid) (?:up )?(?<some>\\d{1,4})(?: (?<other>${UNIT}))?(?: of (?:them|those))?[.!?]*$`,
);

/** “bought 11 used 9”; boxes where nothing else is said. */
export function hadAndUsed(
  plain: string,
): { readonly all: number; readonly some: number; readonly unit: Unit } | undefined {
  const { all, some, unit, other } = HAD_USED.exec(plain)?.groups ?? {};
  const named = unitNamed(unit ?? other ?? 'boxes');
  if (all === undefined || some === undefined || named === undefined) return undefined;
  return { all: Number(all), some: Number(some), unit: named };
}

const SHARE_OF =
  /^(?:and |so |what(?:'s| is) |whats |how much is )*(\d{1,2}(?:\.\d{1,2})?) ?(?:%|percent) of (?:it|that|the total|this)[?.!]*$/;

/** “25 % of it”. */
export function shareOf(plain: string): string | undefined {
  const share = SHARE_OF.exec(plain)?.[1];
  return share === undefined ? undefined : `${share}%`;
}

const SQUARE_WORD = '(?:sq(?:uare)?\\.? ?(?:ft|feet|foot|m|meters?|metres?)|sqft|sf|sqm|m2|m²|feet|ft)';
const OFFER = new RegExp(
  `(?<mark>[$€£])? ?(?<price>\\d{1,4}(?:\\.\\d{1,2})?) ?(?<word>dollars|bucks)?(?: (?:a|an|per) (?:box|carton|pack|case))?,? (?:and |for |covers |gets (?:you )?|with |a box (?:is|has|covers) |each box (?:is|has|covers) |it(?:'s| has) |(?:of|at|per|/) )*(?:a (?:box|pack) (?:of|is|has|covers) )?(?<area>\\d{1,3}(?:\\.\\d{1,3})?) ?(?<square>${SQUARE_WORD})(?![a-z])`,
  'g',
);
const AREA_FIRST = new RegExp(
  `(?<area>\\d{1,3}(?:\\.\\d{1,3})?) ?(?<square>${SQUARE_WORD})(?: (?:a|per) (?:box|pack))?,? (?:for|at|costs?|is|priced at) (?<mark>[$€£])? ?(?<price>\\d{1,4}(?:\\.\\d{1,2})?)(?! ?(?:${SQUARE_WORD}|x|by|%))`,
  'g',
);

const BARE_OFFER =
  /(?:is|at|for|or|,) \$?(\d{1,4}(?:\.\d{1,2})?) for (\d{1,2}\.\d{1,3})(?![\d.]| ?(?:sq|m|ft|feet|x|by|%))/g;

/** Prices of a box with what it covers: “54.99 for 20 sq ft”. */
export function offersIn(plain: string): readonly string[] {
  const found = [...plain.matchAll(OFFER), ...plain.matchAll(AREA_FIRST)]
    .sort((one, other) => one.index - other.index)
    .map(({ groups = {} }) => {
      const metric = /m/.test((groups.square ?? '').replace(/^sq(?:uare)?\.? ?/, ''));
      return `${groups.mark ?? '$'}${groups.price} for ${groups.area} ${metric ? 'm²' : 'sq ft'}`;
    });
  const unit = / (?:m²|sq ft)$/.exec(found[0] ?? '')?.[0];
  // The second of two may leave the unit out.
  const more =
    unit === undefined ? [] : [...plain.matchAll(BARE_OFFER)].map(([, price, area]) => `$${price} for ${area}${unit}`);
  return [...new Set([...found, ...more])];
}

/** The whole first: “20 rows in the room and i've done 13”. */
const ALL_FIRST = new RegExp(
  `(?<![\\d.,x])(?<all>\\d{1,4}) (?<unit>${UNIT})(?: [a-z']+){0,6}?,? (?:and |but )?(?:i |we |i've |we've |ive |i'm |im )?(?:have |'ve )?(?:done|laid|finished|put down|got|am on|on|did)(?: about| the first| row)? (?<some>\\d{1,4})(?: (?:of (?:them|those)|so far|done|down))?[?.!]*$`,
);
const OF_ALL = new RegExp(
  `(?<![\\d.,x])(?<some>\\d{1,4}) (?:(?<first>${UNIT}) )?(?:(?:done|laid|down|finished|in) )?(?:out )?of (?:the |my )?(?<all>\\d{1,4}) (?<unit>${UNIT})`,
);

/** “8 of 20 rows”. */
export function partDone(
  plain: string,
): { readonly some: number; readonly all: number; readonly unit: Unit } | undefined {
  const { some, all, unit = '', first } = (OF_ALL.exec(plain) ?? ALL_FIRST.exec(plain))?.groups ?? {};
  const named = unitNamed(unit);
  if (some === undefined || all === undefined || named === undefined) return undefined;
  if (first !== undefined && unitNamed(first) !== named) return undefined;
  return Number(some) <= Number(all) ? { some: Number(some), all: Number(all), unit: named } : undefined;
}

const USED = new RegExp(
  `(?<![a-z])(?:used|use|used up|gone through|went through|opened|laid|put down|installed|burned through|down)(?: up| about| already| like| so far| around)* (?<count>\\d{1,4}) (?:of (?:the |my )?(?:\\d{1,4} )?)?(?<unit>${UNIT})`,
);
const GONE = new RegExp(
  `(?<![\\d.,])(?<count>\\d{1,4}) (?<unit>${UNIT}) (?:are |is )?(?:gone|used|used up|down|laid|in|done)(?![a-z])`,
);

/** “used 6 boxes so far”. */
export function usedIn(plain: string): { readonly count: number; readonly unit: Unit } | undefined {
  const { count, unit = '' } = (USED.exec(plain) ?? GONE.exec(plain))?.groups ?? {};
  const named = unitNamed(unit);
  return count === undefined || named === undefined ? undefined : { count: Number(count), unit: named };
}

const CLAIM = new RegExp(
  `^(?:(?:ok(?:ay)?|oh|so|and|then|alright|right|yeah|wait|hm+|cool|great|got it),? ){0,4}(?:(?:so|then|is|it'?s|that'?s|that is|that makes|so i need|i need|that'?d be|it is|makes|just|only|still|about|we(?:'re| are) at|call it|basically|is it|would) ){0,5}(?<mark>[$€£])? ?(?<figure>\\d{1,4}(?:\\.\\d{2})?) ?(?<unit>${UNIT})?(?<tail>[a-z' ,]{0,40})(?<asks>\\?+)?[.!]*$`,
);
const CLAIM_TAIL =
  /^[ ,]*(?:(?:then|right|correct|yes|yeah|in all|in total|total|altogether|all together|together|for (?:both|all|everything|the (?:lot|whole thing))|all in|all up|enough|is (?:enough|plenty|fine|right|good|ok|it)|should (?:do|be (?:enough|fine|good))|will do|would do|do it|ok|for (?:that|it|this)|huh|or so|and (?:i'?m|we'?re) good|i (?:need|guess|buy|get))(?![a-z])[ ,]*)*$/;
const CLAIM_HEAD =
  /^(?:(?:ok(?:ay)?|oh|and|then|alright|right|yeah|wait|hm+|cool|great|got it),? )*(?:so|is|that'?s|that makes|then|call it|that is|makes|basically)(?![a-z])/;

export interface Claim {
  readonly figure: number;
  readonly unit?: Unit;
  readonly money: boolean;
  /** Whether it speaks of several answers: “in all”. */
  readonly inAll: boolean;
}

/** “would 6 not be sufficient”, “i have 4 more”. */
const SHORT_CLAIM = new RegExp(
  `^(?:(?:and|but|so|ok|well|hm+|then),? )*(?:(?:would|wouldn't|will|won't|could|is|are|isn't|can|do) )?(?:i (?:have|got|only have|only got|bought) |we (?:have|got|only have) |just |only )?(?<figure>\\d{1,4}) ?(?<unit>${UNIT})?(?: (?:not|be|do|work|cover|more|left|here|already|then|now|too|it|get me there|have been))*(?<ask> (?:enough|sufficient|plenty|ok|fine|do|work|too (?:many|few|much|little)|more|left|cut it|suffice))(?: (?:it|then|now|here|left|for (?:it|that|this)))*[?.!]*$`,
);

/** A figure of an answer said back for a yes or a no: “so 8?”, “that’s 14 in all?”. */
export function claimIn(plain: string): Claim | undefined {
  const { mark, figure, unit = '', tail = '', asks } = CLAIM.exec(plain)?.groups ?? {};
  if (figure === undefined || !CLAIM_TAIL.test(tail.trimEnd())) {
    const short = SHORT_CLAIM.exec(plain)?.groups;
    const of = unitNamed(short?.unit ?? '');
    return short?.figure === undefined
      ? undefined
      : { figure: Number(short.figure), ...(of === undefined ? {} : { unit: of }), money: false, inAll: false };
  }
  if (asks === undefined && !CLAIM_HEAD.test(plain) && !/right|correct|enough/.test(tail)) return undefined;
  const named = unitNamed(unit);
  return {
    figure: Number(figure),
    ...(named === undefined ? {} : { unit: named }),
    money: mark !== undefined || figure.includes('.'),
    inAll: /in all|total|together|both|for all|everything|the lot|all in|all up/.test(tail),
  };
}

const IN_ALL =
  /^(?:(?:ok(?:ay)?|so|and|then|what(?:'s| is|s)|how (?:much|many)(?: is (?:it|that)| boxes| do i need| would (?:it|that) be)?|the|my|give me|grand|whole|that'?s|just|for|now) )*(?:total|in all|all together|altogether|together|combined|in total|all up|all in|for (?:both|all)(?: (?:of them|rooms|together|three|of those))?|both(?: (?:of them|rooms|together|combined))?|all (?:of it|of them|three|rooms|of the rooms)|everything|the whole thing|sum|(?:total|all)(?: number| count)?(?: of)? (?:the )?(?:boxes|cartons|packs|sticks|planks|cost))(?: (?:cost|price|then|now|count|for everything|together|combined))*[?.!]*$/;

/** “how much altogether”, “both rooms”. */
export function asksInAll(plain: string): boolean {
  return IN_ALL.test(plain);
}

const MINE =
  /(?<![a-z])(?:out[ -]of[ -](?:my )?pocket|my (?:share|part|cost|end|half)|(?:do|will|would) i (?:have to )?(?:pay|owe)|left (?:for me )?to pay|i(?:'d| would|'ll)? (?:pay|owe)|on me|my own pocket|what'?s left for me|my side)(?![a-z])/;

/** “what’s my share then”. */
export function asksMine(plain: string): boolean {
  return MINE.test(plain);
}

const EACH = new RegExp(
  `^(?:(?:they(?:'re| are)|it'?s|those are|and|at|they cost|each (?:is|one is)|for|about|theyre|that'?s|the price is|price is|boxes are|a box is|costs?|i pay|how much (?:is (?:it|that) |would (?:it|that) be )?(?:if|when|at)|what if|so|if|sticks are|bags are|rolls are) )*(?<mark>[$€£])? ?(?<price>\\d{1,4}(?:\\.\\d{1,2})?) ?(?<word>dollars|bucks)? ?(?:each|apiece|a ?piece|per (?<unit>${BOUGHT}|one)|an? (?<other>${BOUGHT}|one)|/ ?(?<third>${BOUGHT})|a pop)[?.!]*$`,
);

/** “6.48 apiece”: what one of the things costs that the last answer counted. */
export function priceEach(plain: string): { readonly price: string; readonly unit?: Unit } | undefined {
  const { mark, price, word, unit, other, third } = EACH.exec(plain)?.groups ?? {};
  if (price === undefined) return undefined;
  const named = unitNamed(unit ?? other ?? third ?? '');
  if (
    (mark ?? word) === undefined &&
    !price.includes('.') &&
    named === undefined &&
    !/each|apiece|a ?piece|pop/.test(plain)
  )
    return undefined;
  return { price: `${mark ?? '$'}${price}`, ...(named === undefined ? {} : { unit: named }) };
}

/** How many a store has, without the word for a box. */
const STOCKED =
  /(?<![a-z])(?:has|have|had|got|carries|are|is|there(?:'s| are| is)) (?:only |just )?(\d{1,3}) (?:boxes |cartons |packs )?(?:of (?:that|this|the same|my|the) (?:lot|batch|run|dye lot|number|code)|left(?: in stock)?|in stock|on the shelf|available)(?![a-z])/;

/** “Only has 14 boxes of that lot”: the boxes, as a figure. */
export function stockedIn(plain: string): string | undefined {
  return STOCKED.exec(plain)?.[1];
}

/** A length of trim in all: longer than a stick, or said to be of trim. */
const TRIM_RUN =
  /(?<![\d.,/x×-])(?<run>(?:\d{1,3},)?\d{1,4}(?:\.\d{1,2})?) ?(?<unit>'|ft|feet|foot|m|met(?:er|re)s?)(?! ?(?:x|×|by|sticks?|lengths?|footers?|pieces?|boards?|stock|wide|high|tall|sq)(?![a-z]))(?![a-z])(?<of> (?:of|worth of) (?:new |the )?(?:base(?:boards?)?|trim|walls?|quarter|shoe|mou?lding|skirting|casing|running))?/g;
const LONGER_THAN_A_STICK = { ft: 20, m: 6 };

export function trimRun(plain: string): string | undefined {
  const runs = [...plain.matchAll(TRIM_RUN)].flatMap(({ groups = {} }) => {
    const figure = Number(groups.run?.replace(',', ''));
    const unit = groups.unit?.startsWith('m') ? 'm' : 'ft';
    return groups.of !== undefined || figure > LONGER_THAN_A_STICK[unit] ? [`${figure} ${unit}`] : [];
  });
  return runs.length === 1 ? runs[0] : undefined;
}

/** How far a floor is laid: rows, or what is left or broken. */
export const SAYS_ROWS =
  /(?<![a-z])(?:rows?|left|broke|broken|offcuts?|done|laid|finished|ended|half|part|so far)(?![a-z])/;

const RH_BEFORE = /(?:rh|humidity)(?: of| is| at| reads| kind| one| test| probes?| method|,){0,3} $/;
const RH_BEHIND = /^ ?(?:%|percent)? ?(?:(?:with|on|from|by|using) (?:the |an? )?)?(?:rh|relative humidity|humidity)/;
const METHODS = [
  ['wood', (_before: string, behind: string) => /^ ?(?:%|percent)(?! ?(?:rh|humidity|relative))/.test(behind)],
  ['rh', (before: string, behind: string) => RH_BEHIND.test(behind) || RH_BEFORE.test(before)],
  ['chloride', (_before: string, behind: string) => /^ ?(?:lbs?|pounds?)(?![a-z])/.test(behind)],
] as const;
/** What a pin meter says, without the sign. */
const METERED =
  /(?:says?|said|reads?|reading|readings|showed|shows|got|is|are|was|were|from|to|at|,|and|:|meter|pin|wood|subfloor|ply(?:wood)?|osb) $/;
/** A figure of something else: a time, a place, a size, a test's whole number over 100. */
const OTHER_FIGURE =
  /^ ?(?:weeks?|days?|hours?|years?|spots?|places?|rooms?|readings?|points?|ft|feet|x|by(?= ?\d)|o\.?c|on center|apart|in(?! (?:the|an?|my|our|one|each|every|that|this|some|places?|spots?|most|all)(?![a-z]))|inch(?:es)?|mil|mm|sq|°|degrees?|f|c|"|'|\/|-|oak|pine)(?![a-z%])|^[\d.,]*\d/;
const READING = /(?<![\d.,/'"x-])\d{1,3}(?:[.,]\d)?(?![\d/]| \d\/\d)/g;
const BOARDS =
  /(?<![a-z])(?:boards?|(?:new |wood |strip |hardwood |oak )?flooring|oak|maple|hickory|walnut|hardwoods?|engineered)(?![a-z])/g;
const BELOW =
  /(?<![a-z])(?:subfloors?|ply(?:wood)?|osb|joists?|panels?|slab|concrete|chip ?board|particle ?board)(?![a-z])/g;
const WIDE_BOARDS = /(?<![\d./])[3-9](?:[ -]\d\/\d{1,2})? ?(?:"|in(?:ch(?:es)?)?)|(?<![a-z])wide(?![a-z])/;

interface MeterReadings {
  /** Of what is below, or of all where nothing is said of boards. */
  readonly readings: string;
  readonly method?: 'wood' | 'rh' | 'chloride';
  /** Of the wood that will be nailed down. */
  readonly flooring?: string;
  readonly boards?: 'wide';
}

interface Figure {
  readonly value: string;
  readonly from: number;
  readonly to: number;
}

/**
 * Figures that are readings by `is`, and with them every other one that can be: “15, 14 and 10 %”, “12 at the door and
 * 17 by the window”. One left out could be the one that says to wait.
 */
function listOf(plain: string, is: (before: string, behind: string) => boolean): readonly Figure[] {
  const figures = [...plain.matchAll(READING)]
    .map((one) => ({ value: one[0], from: one.index, to: one.index + one[0].length }))
    .filter(({ to }) => !OTHER_FIGURE.test(plain.slice(to)) && !EARLIER.test(plain.slice(to)));
  const sure = figures.filter(({ from, to }) => is(plain.slice(0, from), plain.slice(to)));
  if (sure.length === 0) return [];
  const values = sure.map(({ value }) => Number.parseFloat(value));
  const [least, most] = [Math.min(...values) / NEAR, Math.max(...values) * NEAR];
  const near = ({ value }: Figure): boolean => Number.parseFloat(value) >= least && Number.parseFloat(value) <= most;
  return figures.filter((one) => sure.includes(one) || near(one));
}

/** Readings of one floor are not further apart than so many times. */
const NEAR = 3;
const EARLIER =
  /^ ?(?:%|percent)? ?(?:before|earlier|yesterday|at first|(?:last|a|one|two|three|\d) (?:days?|weeks?|months?))(?![a-z])/;

/** Whether a figure is of the boards: by the words behind it in its clause, or else by those nearest before it. */
function isOfBoards(plain: string, { from, to }: Figure): boolean {
  const [behind = ''] = plain.slice(to).split(/[,;]| and | but /, 1);
  const places = (words: RegExp, text: string): readonly number[] =>
    [...text.matchAll(words)].map(({ index }) => index);
  const [below = Infinity] = places(BELOW, behind);
  const [boards = Infinity] = places(BOARDS, behind);
  if (below !== boards) return boards < below;
  const before = plain.slice(0, from);
  return (places(BOARDS, before).at(-1) ?? -1) > (places(BELOW, before).at(-1) ?? -1);
}

/** Wood below and wood on top: the two must be near each other. */
function withBoards(plain: string, figures: readonly Figure[]): Omit<MeterReadings, 'method'> | undefined {
  const boards = figures.filter((figure) => isOfBoards(plain, figure));
  const below = figures.filter((figure) => !boards.includes(figure));
  if (boards.length === 0 || below.length === 0) return undefined;
  const mean = below.reduce((sum, { value }) => sum + Number.parseFloat(value), 0) / below.length;
  const apart = ({ value }: Figure): number => Math.abs(Number.parseFloat(value) - mean);
  const [farthest] = [...boards].sort((one, other) => apart(other) - apart(one));
  return {
    readings: below.map(({ value }) => value).join(' '),
    flooring: `${farthest?.value} %`,
    ...(WIDE_BOARDS.test(plain) ? { boards: 'wide' } : {}),
  };
}

const MOST_IN_WOOD = 40;

/** Readings of a meter or a test, and of which kind. */
export function meterReadings(plain: string): MeterReadings | undefined {
  const concrete = /concrete|slab|basement/.test(plain);
  const wood = /(?<![a-z])(?:wood|ply(?:wood)?|osb|subfloor|joists?|boards?)(?![a-z])/.test(plain);
  for (const [method, is] of METHODS) {
    const figures = listOf(plain, is);
    const moist = figures.every(({ value }) => Number.parseFloat(value) <= MOST_IN_WOOD);
    // Beside the moisture of wood a humidity is the air's.
    if (method === 'wood' && (concrete || (/(?:rh|humidity)/.test(plain) && !(wood && moist)))) continue;
    const readings = figures.map(({ value }) => value).join(' ');
    if (readings !== '') return { readings, method, ...(method === 'wood' ? withBoards(plain, figures) : {}) };
  }
  const figures = listOf(plain, (before) => METERED.test(before));
  const bare = figures.map(({ value }) => value).join(' ');
  // Which test it was on concrete is asked back.
  if (concrete) return bare === '' ? undefined : { readings: bare };
  return wood && bare !== '' ? { readings: bare, method: 'wood', ...withBoards(plain, figures) } : undefined;
}
