/** How to lay a floor, as people type it: the pattern, and which way the rows run. */

import { closest, distance } from 'fastest-levenshtein';
import type { Direction, Heading } from '../layout/direction.ts';
import { notADirection, notAPattern, patternTaken } from '../text/length-problems-text.ts';
import type { Length } from '../units/length.ts';
import { readLength } from './parse-length.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { SIDE } from './rooms/room-text.ts';
import { type SentenceSheet, word } from './trade-words.ts';

// Herringbone, with or without a border: `herringbone`, `herringbone with a border of 2`.

/** `border`: courses of boards along the walls. */
export interface ParsedHerringbone {
  readonly name: 'herringbone';
  readonly border: number;
}

export const HERRINGBONE = 'herringbone';

const NUMBERS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4 };
const FORM =
  /^herring[- ]?bones?(?: pattern)?(?:[ ,:+]+(?:with |and |plus )?(?<no>no |without (?:a )?)?(?:an? )?(?:(?<before>one|two|three|four|[0-4])[ -]*)?(?:(?:boards?|courses?|rows?|planks?)[ -])?(?:wide )?border(?:,? (?:of |x )?(?<after>one|two|three|four|[0-4])(?: (?:boards?|courses?|rows?|planks?))?(?: wide)?)?)?$/;

/** Takes plain, lowercase text; undefined if it isn't a herringbone. */
export function readHerringbone(plain: string): ParsedHerringbone | undefined {
  const found = FORM.exec(plain);
  if (!found) return undefined;
  const { no, before, after } = found.groups ?? {};
  const given = after ?? before;
  if (no !== undefined || !plain.includes('border')) return { name: HERRINGBONE, border: 0 };
  return { name: HERRINGBONE, border: given === undefined ? 1 : (NUMBERS[given] ?? Number(given)) };
}

/** A pattern of rows; step and rows of a stair-step are optional. */
export type ParsedRows =
  | { readonly name: 'stair-step'; readonly step?: Length; readonly rows?: number }
  | { readonly name: 'half' | 'thirds' | 'offcut-first' | 'scattered' };

type ParsedPattern = ParsedRows | ParsedHerringbone;

export const PATTERN_NAMES = ['stair-step', 'half', 'thirds', 'offcut-first', 'scattered'] as const;

const SAME: ReadonlyMap<string, (typeof PATTERN_NAMES)[number]> = new Map([
  ['stairstep', 'stair-step'],
  ['stair', 'stair-step'],
  ['stairs', 'stair-step'],
  ['half-plank', 'half'],
  ['halves', 'half'],
  ['third', 'thirds'],
  ['1/3', 'thirds'],
  ['1/2', 'half'],
  ['brick', 'half'],
  ['bricks', 'half'],
  ['offcut', 'offcut-first'],
  ['offcuts', 'offcut-first'],
  ['scatter', 'scattered'],
  ['random', 'scattered'],
]);

/** A long word may have two letters wrong. */
const LONG_WORD = 7;
const SLIPS = 2;

/** `stair-step`, `stair-step 8 in x 4`, `stair-step 200 mm, 4 rows`, `half`, `thirds`, `offcut-first`, `scattered`. */
export function readPattern(text: string, reading: Reading): Read<ParsedPattern> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  const herringbone = readHerringbone(plain);
  if (herringbone) return read(herringbone);
  const match = /^(1\/[23]|[\p{L}]+(?:[- ](?:step|plank|first))?)(?:[ ,:]{1,9}(.+))?$/u.exec(plain);
  const word = (match?.[1] ?? '').replace(' ', '-');
  const name = PATTERN_NAMES.find((known) => known === word) ?? SAME.get(word);
  const rest = match?.[2];
  const got = { option: reading.option, got: text };
  if (!name) {
    const near = nearPattern(word.slice(0, 40));
    if (rest !== undefined || word.length < LONG_WORD || distance(word, near) > SLIPS)
      return unread(notAPattern(got, near));
    reading.note(patternTaken(text.trim(), near));
    return readPattern(near, reading);
  }
  if (name !== 'stair-step') return rest === undefined ? read({ name }) : unread(notAPattern(got, name));
  if (rest === undefined) return read({ name });
  const steps = /^(.*?)(?:(?<!\s)\s*(?:[x×,]|by)\s*([2-9]|1[0-9]|20)(?:\s*rows?)?)?$/.exec(rest);
  const step = readLength(steps?.[1] ?? '', reading, reading.preferences.units === 'metric' ? 'mm' : 'in');
  if (!step.ok) return unread(notAPattern(got, 'stair-step 6 in x 5'));
  return read({ name, step: step.value, ...(steps?.[2] ? { rows: Number(steps[2]) } : {}) });
}

/** The pattern closest to a misspelled word, or the default if none is close. */
function nearPattern(word: string): string {
  const near = closest(word, [...PATTERN_NAMES, HERRINGBONE]);
  return distance(word, near) <= near.length / 2 ? near : 'stair-step';
}

/** Enough for fifty rooms, each with its own direction. */
const LONGEST_DIRECTION = 1500;

/**
 * `long`, `short`, `diagonal`, `30°`, `wall 2`, `along wall 2 of living`, `living wall 2`; or per room: `hall long;
 * bedroom short; others wall 1`.
 */
export function readDirection(text: string, reading: Reading): Read<Direction> {
  const plain = text.trim().replace(/[^\S\n]+/g, ' ');
  if (plain.length > LONGEST_DIRECTION) return unread(notADirection({ option: reading.option, got: text }));
  const whole = headingOf(plain);
  if (whole) return read(whole);
  const parts = plain
    .split(/[;,\n]| and /i)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const rooms: { room: string; heading: Heading }[] = [];
  let others: Heading = { kind: 'side', side: 'long' };
  for (const part of parts) {
    const direct = headingOf(part);
    const named =
      /^(?:the )?(\p{L}.*?)(?<![ :=-])[ :=-]+((?:(?:along|runs?|the|way) )*(?:long|short|diagonal|\d{1,3} ?(?:°|deg)|wall \d).*)$/iu.exec(
        part,
      );
    if (direct) {
      if (direct.kind === 'wall' && direct.region !== undefined) rooms.push({ room: direct.region, heading: direct });
      else others = direct;
      continue;
    }
    const heading = headingOf(named?.[2] ?? '');
    const room = named?.[1] ?? '';
    if (!heading) return unread(notADirection({ option: reading.option, got: text }));
    if (OTHERS.test(room)) others = heading;
    else rooms.push({ room, heading });
  }
  if (rooms.length === 0) return unread(notADirection({ option: reading.option, got: text }));
  return read({ kind: 'each', rooms, others });
}

const OTHERS = /^(?:(?:all )?(?:the )?(?:others?|rest)|else|everything else)$/i;

function headingOf(text: string): Heading | undefined {
  const plain = text
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/^(?:runs? )?(?:along )?(?:the )?/i, '');
  const side = /^(long|short)(?:er|est)?(?:[ -](?:side|wall|way|ways))?$/i.exec(plain)?.[1]?.toLowerCase();
  if (side === 'long' || side === 'short') return { kind: 'side', side };
  if (/^(?:(?:on|at) (?:the |a )?)?diagon[a-z]*$/i.test(plain)) return { kind: 'turned', degrees: 45 };
  const degrees = /^(?:(?:at|turned|diagonal(?:ly)?),? ?(?:at |by )?)?(\d{1,3}) ?(?:°|º|˚|\*|deg(?:rees?)?)$/i.exec(
    plain,
  )?.[1];
  if (degrees && Number(degrees) < 180) return turnedBy(Number(degrees));
  // A bare two-digit number is an angle; a wall has to be called one.
  if (/^(?:[1-9]\d|1[0-7]\d)$/.test(plain)) return turnedBy(Number(plain));
  const wall = /^wall (\d{1,3})(?: (?:of|in) (?:the )?([^;,:]+))?$/i.exec(plain);
  if (wall) return { kind: 'wall', wall: Number(wall[1]), ...(wall[2] ? { region: wall[2] } : {}) };
  const named = /^([^;:]+?)(?<![ ,])[ ,]+wall (\d{1,3})$/i.exec(plain);
  const region = named?.[1]?.replace(/ (?:runs? )?along(?: the)?$/i, '');
  if (named && region && !/(?:^| )(?:long|short)(?:,| |$)/i.test(region))
    return { kind: 'wall', wall: Number(named[2]), region };
  return undefined;
}

/** Rows turned from the long side: 0° is long, a quarter turn is short. */
function turnedBy(degrees: number): Heading {
  if (degrees % 90 === 0) return { kind: 'side', side: degrees === 0 ? 'long' : 'short' };
  return { kind: 'turned', degrees };
}

/** An option as told, and what in it is in doubt. */
export interface LayoutFound {
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
export function findLayout(sheet: SentenceSheet): LayoutFound {
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
