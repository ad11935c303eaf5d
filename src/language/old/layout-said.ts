/** What a sentence tells of the laying: pattern, direction, gap, stagger and the other options, in the grammar's own words. */

import { SIDE } from '../../input/rooms/room-text.ts';
import { word } from '../../input/trade-words.ts';
import type { SentenceSheet } from './sheet.ts';

/** An option as told, and what in it is in doubt. */
export interface LayoutSaid {
  readonly options: ReadonlyMap<string, string>;
  /** Options that were asked for in a way that is not known here, with what was typed. */
  readonly doubts: readonly { readonly option: string; readonly got: string }[];
  /** Percentages read as planks on top, as typed. */
  readonly waste: readonly string[];
}

const LINK = '(?: ?(?:of|is|=|:|at|about|should be|to be)(?![a-z]))? ?';
const PERCENT = '\\d+(?:[.,]\\d+)? ?(?:%|percent|per cent|pct|prozent)';
const WASTE = '(?:waste|wastage|extra|overage|mistakes?|spare|more|cuts|cutting|offcuts|breakage|on top|allowance)';
const TAX = '(?:(?:sales )?tax|vat|gst|hst|mwst\\.?)';
const LITTLE = '(?:(?:for|as|of|the|my|some|an?|cut|cutting|added|to allow for|allow for) ){0,3}';

const LENGTHS = [
  ['narrowest-strip', '(?:narrowest|thinnest|smallest) (?:strip|rip|row)'],
  ['shortest-end', '(?:shortest|smallest|minimum|min) (?:end|ends|end piece|piece|start)'],
  ['stagger', 'stagger(?:ed)?(?: by)?|joint offset'],
  ['kerf', '(?:saw )?kerf'],
  ['gap', '(?:expansion |wall )?gaps?'],
].map(([option = '', name = '']) => ({
  option,
  patterns: [
    word(`(?:${name})${LINK}(?<value>${SIDE})`),
    word(`(?<value>${SIDE})[ -]?(?:of |for the |for )?(?:${name})`),
    word(`(?:no|0|zero) (?:${name})`),
  ],
}));

const PATTERNS = [
  ['offcut-first', word('off ?cuts?[- ]first(?: pattern)?|start with (?:the )?off ?cuts?')],
  [
    'thirds',
    word(
      '(?:1/3|third)s?[- ](?:offset|pattern|stagger|bond)|(?:pattern )?(?:in |of )?thirds(?: pattern)?|one[- ]thirds?(?: pattern| offset)?',
    ),
  ],
  [
    'half',
    word(
      '(?:1/2|half)[- ](?:offset|pattern|plank pattern|plank offset|bond)|brick(?:work)?[- ](?:pattern|bond)|pattern half|running bond',
    ),
  ],
  ['stair-step', word('stair[- ]?steps?(?: pattern)?')],
  ['herringbone', word('herring[- ]?bone(?: pattern)?')],
  ['scattered', word('(?:random(?:ly)?|scattered)(?: (?:pattern|stagger(?:ed)?|joints?|offset|lengths?|look))?')],
] as const;
const UNKNOWN_PATTERN = word('chevron|basket ?weave|parquet squares?');

const WAY = '(?:run |running |going |lay |laid |rows |them |it |on (?:a|the) )*';
const DIRECTIONS = [
  ['45°', word(`${WAY}(?:at )?(?:an? )?45(?: ?°|[- ]degrees?)(?: angle)?`)],
  ['diagonal', word(`${WAY}diagonal(?:ly)?`)],
  [
    'long',
    word(
      '(?:run |running |going |lay |rows |them |it )*(?:(?:the |in the )?long(?:er|est)? (?:way|wall|side|direction)|length ?(?:wise|ways)|long ?ways)',
    ),
  ],
  [
    'short',
    word(
      '(?:run |running |going |lay |rows |them |it )*(?:(?:the |in the |across the )?short(?:er|est)? (?:way|wall|side|direction)|width ?(?:wise|ways)|short ?ways)',
    ),
  ],
] as const;

const SPARES = word(
  '(?:(?:keep|with|plus|want|and) )?(?<value>\\d{1,3}) (?:spare|extra)(?: (?:planks?|boards?|pieces?))?(?: to keep| for repairs| for later)?(?! (?:box|carton|pack))|(?<after>\\d{1,3}) spares',
);

const NO_WASTE = word('(?:no|zero|without(?: any)?) (?:waste|wastage|extra|extras|allowance)');
/** Options named without a value. */
const NAMED = [
  ['gap', word('gaps?')],
  ['kerf', word('kerf')],
  ['stagger', word('stagger(?:ed)?')],
  ['mistakes', word('waste|wastage|overage')],
  ['tax', word('tax|vat|gst|mwst')],
  ['pattern', word('patterns?')],
] as const;

/** Claims what is told of the laying. */
export function claimLayout(sheet: SentenceSheet): LayoutSaid {
  const options = new Map<string, string>();
  const doubts: { option: string; got: string }[] = [];
  const waste: string[] = [];
  const tell = (option: string, value: string): void => {
    const before = options.get(option);
    if (before !== undefined && before !== value) doubts.push({ option, got: `${before} … ${value}` });
    options.set(option, value);
  };
  for (const [option, name] of [
    ['tax', TAX],
    ['mistakes', WASTE],
  ] as const) {
    for (const pattern of percents(name)) {
      for (const found of sheet.claimAll(pattern)) {
        tell(option, found.groups?.value ?? '');
        if (option === 'mistakes') waste.push(found.groups?.value ?? '');
      }
    }
  }
  if (sheet.claim(NO_WASTE)) tell('mistakes', '0 %');
  for (const { option, patterns } of LENGTHS) {
    for (const pattern of patterns)
      for (const found of sheet.claimAll(pattern)) tell(option, found.groups?.value ?? '0');
  }
  for (const [name, pattern] of PATTERNS) if (sheet.claimAll(pattern).length > 0) tell('pattern', name);
  for (const found of sheet.claimAll(UNKNOWN_PATTERN)) doubts.push({ option: 'pattern', got: found[0] });
  for (const [way, pattern] of DIRECTIONS) if (sheet.claimAll(pattern).length > 0) tell('direction', way);
  for (const found of sheet.claimAll(SPARES)) tell('spares', found.groups?.value ?? found.groups?.after ?? '');
  for (const [option, pattern] of NAMED) {
    const found = options.has(option) ? undefined : pattern.exec(sheet.rest());
    if (found) doubts.push({ option, got: found[0] });
  }
  return { options, doubts, waste };
}

/** A percentage before its name or behind it, a word or two between them. */
function percents(name: string): readonly RegExp[] {
  return [
    new RegExp(`(?<![\\w.,])(?<value>${PERCENT}) ?${LITTLE}${name}(?![a-z])`),
    new RegExp(`(?<![a-z])${name}${LINK}(?<value>${PERCENT})`),
  ];
}
