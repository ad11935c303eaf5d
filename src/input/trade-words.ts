/** The vocabulary of plain sentences: rooms, planks, cartons, topics and filler. */

/** Rooms and parts of rooms as people name them, as a regular expression source for plain text; longer names first. */
const ROOM_NAMES = [
  '(?:living|dining|family|guest|laundry|utility|play|rec|sun|mud|box|bed|bath|store|spare|sitting|great|bonus|craft) ?rooms?',
  'walk[- ]in(?: closets?)?|home office|hall ?ways?|en ?suite',
  '(?:master|primary)(?= ?(?:is(?![a-z])|[:=(\\u2588]))',
  'living(?= ?(?:is|[:=(\\u2588]))|dining|kitchens?|kitchenettes?|halls?|closets?|offices?|dens?|landings?|nurser(?:y|ies)|lounges?|bays?|alcoves?|nooks?',
  'entry|entrance|foyer|pantr(?:y|ies)|laundry|basements?|attics?|lofts?|study|studio|corridors?|passage|cupboards?|wardrobes?|parlou?r|conservatory|bath|toilet|cloakroom|garage|porch|stairs|staircase|vestibule',
  '(?:schlaf|wohn|kinder|arbeits|ess|bade|gäste)?zimmer|flur|diele|küche|bad|abstellraum|wohnung|büro|keller',
  'rooms?|floor area|area|space',
];
const ADJECTIVES =
  '(?:master|guest|main|front|back|spare|upstairs|downstairs|kids|second|first|other|middle|linen|coat|walk[- ]in|east|west|north|south|children)';

const LETTER = 'a-z\\u00c0-\\u1fff\\u2c00-\\uffff';
const START = `(?<![${LETTER}\\d])`;
const END = `(?![${LETTER}])`;

/** A room by name, with the adjectives that are part of it; only the plural of a shared name ends in s. */
export const ROOM = new RegExp(`${START}(?:${ADJECTIVES}(?:'?s)? ){0,2}(?:${ROOM_NAMES.join('|')})${END}`, 'g');

/** A room without a name of its own. */
export const NAMELESS = /^(?:rooms?|area|space|floor area)$/;

export function word(source: string, flags = ''): RegExp {
  return new RegExp(`${START}(?:${source})${END}`, flags);
}

/** Nouns that mean an adjacent pair of sides is their size. */
export const PLANK_NOUN = 'planks?|boards?|pieces?|pcs|tiles?|strips?|lvp|lvt|spc|laminate|vinyl|flooring';

/** Words for a floor to buy; on their own they request nothing. */
export const FLOOR_WORDS = word(`${PLANK_NOUN}|floor|box|boxes|cartons?|packs?|packets?|packages?|cases`);
export const CARTON_WORDS = word('boxes|cartons?|packs|packets|packages|cases');

/** What turns a remark into a request. */
export const REQUEST =
  /\?|(?<![a-z])(?:how (?:many|much)|need(?:ed|s)?|calculate|work out|figure out|estimate|quantity|order|buy|want|pls|plz|please|what (?:if|about)|tell me|looking for|get for|required?)(?![a-z])/;

/** Things that have sides and aren't floors. */
export const THINGS = word(
  'couch|sofa|rug|tv|tvs|television|table|desk|bed|beds|window|windows|fridge|truck|van|car|shelf|shelves|bookcase|dresser|mirror|photo|picture|frame|poster|screen|monitor|pool|garden|lumber|stud|studs|joists?|2x4s?|trailer|crate|mattress|dumpster|skip',
);

/** Topics with words of their own, most specific first. */
const LATER_TOPICS = [
  ['finish', word('paint(?:ing)?|caulk(?:ing)?|wood filler|nail holes?')],
  [
    'trim',
    word(
      'base ?boards?|skirting(?: boards?)?|trim|quarter[- ]?round|shoe mou?lding|mou?ldings?|architrave|sockelleisten?',
    ),
  ],
  ['squeaks', word('squeak(?:s|y|ing|ed)?|creak(?:s|y|ing)?')],
  ['level', word('(?:self[- ]?)?level(?:l?er|l?ing)?|unlevel|uneven|humps?|dips?|low spots?|not flat')],
  ['moisture', word('moisture|damp(?:ness)?|humidity|moist')],
  ['patch', word('patch(?:ing)?|rot|rotten|rotted|hole in (?:the|my) (?:sub)?floor|replace (?:the|a|some) subfloor')],
  [
    'tear-out',
    word(
      'tear[- ]?out|tear(?:ing)? (?:out|up)|rip(?:ping)? (?:out|up)|pull(?:ing)? (?:out|up)|get(?:ting)? rid of|haul(?:ing)?|dispos(?:e|al|ing)|old carpet|remov(?:e|al|ing)(?: the)?(?: old)? carpet|tack ?strips?|carpet',
    ),
  ],
] as const;

/** The first topic that is not worked out yet and that a word of the sentence names. */
export function laterTopic(plain: string): (typeof LATER_TOPICS)[number][0] | undefined {
  return LATER_TOPICS.find(([, words]) => words.test(plain))?.[0];
}

export const SAFETY_WORDS = word(
  'safe|safely|safety|unsafe|danger|dangerous|hazards?|hazardous|asbestos|lead paint|toxic|harmful|dust mask|mask|respirator|goggles|glasses|hurt|injur(?:y|e|ed|ies)|knee ?pads|silica',
);
export const SAFETY_IDIOMS = word(
  'to be (?:on the )?safe(?: side)?|safe to (?:say|assume)|better safe than sorry|play it safe',
  'g',
);
export const QUESTION = /\?|(?:^|[.,!\s])(?:is|are|can|could|should|what|how|do i|does|will|would|any|need)(?![a-z])/;

/** Tasks of the safety command, most specific first. */
export const TASK_WORDS = [
  ['leak', word('(?<!gas )leak(?:s|ed|ing|age)?|flood(?:s|ed|ing)?|sewage|burst pipes?|mou?ld|mildew')],
  ['sanding', word('sand(?:ing|er|ed)?')],
  ['nailing', word('nail(?:ing|er|ers|s|ed)?|nail ?guns?|bradd?(?:er)?s?|stapler')],
  ['subfloor', word('sub ?floors?|plywood|joists?|osb')],
  [
    'tear-out',
    word(
      'tear(?:[ -]?out|ing)?|tore|rip(?:ping|ped)?|pull(?:ing)?|remov(?:e|al|ing)|carpet|old|asbestos|lead|tack ?strips?|staples?|scrap(?:e|ing)',
    ),
  ],
  ['levelling', word('self[ -]?level(?:l?ing|l?er)?|level(?:l?ing|l?er)')],
  ['painting', word('paint(?:s|ed|ing)?|caulk(?:s|ed|ing)?|varnish')],
  ['lifting', word('lift(?:s|ed|ing)?|carry(?:ing)?|heavy')],
  ['cutting', word('saws?|sawing|miters?|mitres?|cut(?:s|ting)?(?! ?outs?)')],
  ['laying', word('lay(?:ing)?|install(?:ing)?|put(?:ting)? down|planks?|boards?|laminate|vinyl|knees?|kneel(?:ing)?')],
] as const;

export const HELP_WORDS =
  /(?<![a-z])(?:what (?:can|do|could) (?:you|u|it|this|this bot)(?: all)? do|what(?:'s| is) this(?: bot)?(?: for)?|how (?:do|can) i (?:use|talk to|ask)(?: (?:you|u|this|it|the bot))?|how (?:does|do) (?:this|it|you|the bot)(?: thing| bot)? work|what can i ask|(?:list|show)(?: me)?(?: (?:all|the|your))? commands|was kannst du|hilfe)(?![a-z])/;
export const SOURCE_WORDS =
  /(?<![a-z])(?:where (?:does|do|did|is|are) [a-z0-9/" -]{1,60} (?:come|comes|came|get|from|got)(?: from)?|(?:what(?:'s| is| are)|any|your) (?:the |your )?sources?|sources? (?:for|of)|says who|who says|according to (?:who|whom|what)|citations?|why (?:a|an|the|is the|is there an?|do i need an?) [a-z0-9/" -]{0,30}(?:gap|stagger))(?![a-z])/;
/** Words a figure can be looked up by. */
export const FIGURE_WORDS = word('gap|stagger|kerf|mistakes|strip|inch|foot|asbestos|lead|dust|noise|silica|lifting');

/** Words that start a remark and aren't a misspelled command. */
export const TALK =
  /^(?:thanks?|thank|thx|cheers|danke|hello|hallo|hey|hi|hiya|yo|ok|okay|cool|nice|great|lol|haha|yes|no|nope|yep|yeah|sure|good|morning|evening|bye|sorry|wow|the|that|this|these|take|tapes|plant|plants|heap|held|hell|hero|safe|never|ever|now|just|then|still|maybe|well)$/;

// Number words up to ninety-nine and by the dozen.

const ONES: ReadonlyMap<string, number> = new Map(
  [
    'zero',
    'one',
    'two',
    'three',
    'four',
    'five',
    'six',
    'seven',
    'eight',
    'nine',
    'ten',
    'eleven',
    'twelve',
    'thirteen',
    'fourteen',
    'fifteen',
    'sixteen',
    'seventeen',
    'eighteen',
    'nineteen',
  ].map((name, value) => [name, value]),
);
const TENS: ReadonlyMap<string, number> = new Map(
  ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'].map((name, i) => [name, 20 + 10 * i]),
);
const GERMAN: ReadonlyMap<string, number> = new Map([
  ['zwei', 2],
  ['drei', 3],
  ['vier', 4],
  ['fünf', 5],
  ['sechs', 6],
  ['sieben', 7],
  ['acht', 8],
  ['neun', 9],
  ['zehn', 10],
  ['zwölf', 12],
]);

const UNDER_TWENTY = [...ONES.keys()].filter((name) => ONES.get(name) !== 0 && name !== 'one').join('|');
const NUMBER = new RegExp(
  `(?<![\\p{L}\\d])(?:(${[...TENS.keys()].join('|')})(?:[ -]?(one|${UNDER_TWENTY}))?|(${UNDER_TWENTY})|(${[...GERMAN.keys()].join('|')}))(?![\\p{L}]|-?(?:thirds?|way))`,
  'giu',
);
/** A lone “one” is a number only if something is measured or counted by it. */
const ONE =
  /(?<![\p{L}\d])one (?=(?:inch|foot|feet|ft|in|metre|meter|m|cm|mm|spare|door|doorway|bedroom|closet|room|hall)(?!\p{L}))/giu;

export function withFigures(text: string): string {
  return text
    .replace(/(?<!\p{L})half a dozen(?!\p{L})/giu, '6')
    .replace(/(?<!\p{L})(?:a |one )?dozen(?!\p{L})/giu, '12')
    .replace(
      /(?<!\d ?|(?<!\p{L})and (?:an? )?)(?<!\p{L})(?:a )?half[ -](?:an? )?(?=inch|in(?!\p{L})|foot|ft)/giu,
      '1/2 ',
    )
    .replace(
      /(?<!\d ?|(?<!\p{L})and (?:an? )?|\p{L}+-)(?<!\p{L})(?:a )?quarter[ -](?:of an? )?(?=inch|in(?!\p{L}))/giu,
      '1/4 ',
    )
    .replace(ONE, '1 ')
    .replace(NUMBER, (_, ten?: string, unit?: string, low?: string, german?: string) => {
      const of = (known: ReadonlyMap<string, number>, name: string | undefined) =>
        known.get(name?.toLowerCase() ?? '') ?? 0;
      return String(of(TENS, ten) + of(ONES, unit) + of(ONES, low) + of(GERMAN, german));
    });
}

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
