/** Flatness input: straightedge readings, grids of depths, rules, ramps, and the yield of leveling compound. */

import {
  gapInFeet,
  gapTooWide,
  gridCount,
  gridDoubtful,
  gridFigure,
  gridRead,
  gridSpacing,
  gridTooDeep,
  gridUneven,
  notARamp,
  notARule,
  notAYield,
  notReadings,
  readingLow,
} from '../text/prep-problems-text.ts';
import { type Area, areaOf, type Length, TICKS_PER_INCH, TICKS_PER_MM, ticks } from '../units/length.ts';
import { type Found, NOTHING_FOUND, screened, together } from './parse-found.ts';
import { unitIn, unitsOf } from './parse-length.ts';
import { type LengthUnit, numeralAt, roundedRatio, UNIT_NAMES, UNITS, valued } from './parse-number.ts';
import { figureOf } from './parse-price.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';
import { pairPattern, plainSigns, readSide, SIDE, TIMES, withoutHidden } from './rooms/room-text.ts';

/** Depths in ticks, row by row, `dx` apart within a row and `dy` between rows; negative is above the line. */
interface ParsedGrid {
  readonly dx: Length;
  readonly dy: Length;
  readonly rows: readonly (readonly number[])[];
}

/** A grid, the system of its depths, and any hazards mentioned. */
interface GridRead {
  readonly grid: ParsedGrid;
  readonly units: Units;
  readonly found: Found;
}

const HEAD = new RegExp(
  `^grid(?: of| every| at)? ?(?<a>${SIDE})(?:${TIMES}(?<b>${SIDE}))?(?: apart| spacing)? ?[:,;] ?`,
);
const MOST = 60;
const DEEPEST = TICKS_PER_MM * 300;

/** `grid 2 ft: 0 1/8 1/4; 0 1/4 3/8`; commas between values allow `1 1/4`. Takes plain text. Never throws. */
function readGrid(plain: string, reading: Reading): Read<GridRead> {
  const metric = reading.preferences.units === 'metric';
  const got = { option: reading.option, got: plain };
  const head = HEAD.exec(plain);
  const a = head?.groups?.a;
  if (!head || a === undefined) return hazardOr(plain.replace(/^grid/, ''), reading, gridSpacing(got));
  const b = head.groups?.b ?? a;
  const bare = metric ? 'mm' : 'ft';
  const [dx, dy] = [readSide(a, unitIn(b) ?? bare, reading), readSide(b, unitIn(a) ?? bare, reading)];
  if (!dx.ok || !dy.ok) return unread(gridSpacing(got));
  // Depths are in the small unit of the system the spacing is given in.
  const spacing = unitIn(a) ?? unitIn(b);
  const inMetric = spacing ? unitsOf(spacing) === 'metric' : metric;
  const rows: number[][] = [];
  for (const line of plain.slice(head[0].length).split(/[;|\n]/)) {
    if (line.trim() === '') continue;
    const tokens = tokensOf(line, reading.preferences.decimal);
    const row: number[] = [];
    for (const [i, token] of tokens.entries()) {
      if (!line.includes(',') && /^-?[1-9]\d*$/.test(token) && /^\d+\/\d+$/.test(tokens[i + 1] ?? '')) {
        return unread(
          gridDoubtful(
            got,
            `${token} ${tokens[i + 1]}`,
            plain.replaceAll(`${token} ${tokens[i + 1]}`, `${token}-${tokens[i + 1]}`),
          ),
        );
      }
      const depth = depthOf(token, inMetric, reading);
      if (depth === undefined) return hazardOr(line, reading, gridFigure(got, token));
      if (Math.abs(depth) > DEEPEST) return unread(gridTooDeep(got, token));
      row.push(depth);
    }
    rows.push(row);
  }
  const [first] = rows;
  if (!first || rows.length < 2 || first.length < 2 || rows.length > MOST || first.length > MOST)
    return unread(gridCount(got, MOST));
  const uneven = rows.find((row) => row.length !== first.length);
  if (uneven) return unread(gridUneven(got, first.length, uneven.length));
  reading.note(gridRead(rows.length, first.length, inMetric ? 'mm' : 'inches'));
  return read({
    grid: { dx: dx.length, dy: dy.length, rows },
    units: inMetric ? 'metric' : 'imperial',
    found: NOTHING_FOUND,
  });
}

/** Values separated by spaces, or by commas where those aren't decimal marks. */
function tokensOf(line: string, decimal: '.' | ','): readonly string[] {
  const spaced = /,\s/.test(line);
  const commas = spaced || (line.includes(',') && decimal === '.');
  const tokens = line.split(spaced ? /,\s+/ : commas ? /,/ : /\s+/);
  return tokens.map((token) => token.trim()).filter((token) => token !== '');
}

/** A depth in ticks; a bare number is in inches or millimeters. Undefined if it isn't a depth. */
function depthOf(token: string, metric: boolean, reading: Reading): number | undefined {
  const match =
    /^(?<minus>[-+] ?)?(?<figure>\d[\d.,]*(?:[ -]\d+\/\d+|\/\d+)?|\.\d+) ?(?<unit>"|in|inch|inches|mm|cm)?$/.exec(
      token,
    );
  const figure = match?.groups?.figure;
  if (figure === undefined) return undefined;
  const numeral = numeralAt(figure, 0, true);
  if (!numeral || numeral.end !== figure.length) return undefined;
  const typed = match?.groups?.unit;
  const unit = UNIT_NAMES.find((name) => name === typed) ?? (typed !== undefined ? 'in' : metric ? 'mm' : 'in');
  const value = valued(numeral, unit, reading.preferences.decimal);
  if (!value || 'whole' in value) return undefined;
  const size = unit === 'in' ? BigInt(TICKS_PER_INCH) : UNITS[unit].ticks;
  // A number too large for any floor counts as too deep, however many digits it has.
  const depth = Math.min(Number(roundedRatio({ top: value.top * size, bottom: value.bottom })), 2 * DEEPEST);
  return match?.groups?.minus?.startsWith('-') && depth > 0 ? -depth : depth;
}

/** A hazard in the words, if there is one, or else the problem. */
function hazardOr(words: string, reading: Reading, problem: Parameters<typeof unread>[0]): Read<GridRead> {
  const found = screened(words.replace(/[\d./"'-]+/g, ' '), reading, problem.fix);
  if (!found.ok || found.value.hazards.length === 0) return unread(problem);
  const one = ticks(TICKS_PER_INCH);
  return read({ grid: { dx: one, dy: one, rows: [[0]] }, units: reading.preferences.units, found: found.value });
}

interface ParsedGap {
  readonly gap: Length;
  readonly over: Length;
  readonly spot: 'low' | 'high';
}

export type ParsedReadings =
  | { readonly kind: 'gaps'; readonly gaps: readonly ParsedGap[]; readonly units: Units; readonly found: Found }
  | { readonly kind: 'grid'; readonly grid: ParsedGrid; readonly units: Units; readonly found: Found }
  /** One depth to pour over a whole area, whatever a straightedge says. */
  | { readonly kind: 'pour'; readonly depth: Length; readonly units: Units; readonly found: Found };

const LONGEST_TEXT = 3000;
const MOST_GAPS = 200;
const OVER = '(?: ?(?:gap|deep|low|high|dip|hump)?,? ?(?:over|in|per|under|across|on|within|by) (?:a |an |any )?)';
const GAP = new RegExp(`(?<gap>${SIDE})${OVER}(?<over>${SIDE})`);
const HIGH = /(?<![a-z])(?:high|humps?|ridges?|crowns?|crowned|bumps?|proud|peaks?|up)(?![a-z])/;
const LOW = /(?<![a-z])(?:low|dips?|hollows?|valleys?|deep|down|gap|spots?|at|a|the|an)(?![a-z])/g;

const POUR = new RegExp(`^(?<depth>${SIDE})(?: deep| thick)?,? (?:all over|everywhere|on average)$`);

/** `3/16 in over 10 ft; high 1/4 in over 6 ft`, `grid 2 ft: 0 1/8 1/4; 0 1/4 3/8`, or `1/4 in all over`. Never throws. */
export function readReadings(text: string, reading: Reading): Read<ParsedReadings> {
  const typed = withoutHidden(text.trim(), ' ');
  const got = { option: reading.option, got: typed };
  if (typed.length > LONGEST_TEXT) return unread(notReadings(got));
  const plain = plainSigns(typed).replace(/[^\S\n]+/g, ' ');
  if (/^grid(?![a-z])/.test(plain)) {
    const grid = readGrid(plain, reading);
    return grid.ok ? read({ kind: 'grid', ...grid.value }) : grid;
  }
  const depth = POUR.exec(plain)?.groups?.depth;
  if (depth !== undefined) {
    const metric = reading.preferences.units === 'metric';
    const side = readSide(depth, metric ? 'mm' : 'in', reading);
    if (!side.ok || side.length > DEEPEST) return unread(notReadings(got));
    const unit = unitIn(depth);
    const units = unit === undefined ? reading.preferences.units : unitsOf(unit);
    return read({ kind: 'pour', depth: side.length, units, found: NOTHING_FOUND });
  }
  const parts = plain
    .split(/[;|\n]| and (?=[\d.])|, ?(?=(?:[a-z ]+)?\d[^,;]*? (?:over|in|per|under|across) )/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length > MOST_GAPS) return unread(notReadings(got));
  const gaps: ParsedGap[] = [];
  const found: Found[] = [];
  for (const part of parts) {
    const one = gapIn(part, reading, got);
    if (!one.ok) return one;
    found.push(one.value.found);
    if (one.value.gap) gaps.push(one.value.gap);
  }
  const all = together(...found);
  if (gaps.length === 0 && all.hazards.length === 0) return unread(notReadings(got));
  const named = unitIn(typed);
  const units = named === undefined ? reading.preferences.units : unitsOf(named);
  return read({ kind: 'gaps', gaps, units, found: all });
}

interface Part {
  readonly gap?: ParsedGap;
  readonly found: Found;
}

function gapIn(part: string, reading: Reading, got: { option: string; got: string }): Read<Part> {
  const match = GAP.exec(part);
  const rest = match ? `${part.slice(0, match.index)} ${part.slice(match.index + match[0].length)}` : part;
  const words = `${rest} ${match?.[0].replace(/[^a-z ]/g, ' ') ?? ''}`;
  const spot = HIGH.test(words) ? 'high' : 'low';
  const plainRest = rest.replace(HIGH, ' ').replace(LOW, ' ');
  // A fix must keep the words that weren't clear.
  const kept = match && `${spot === 'high' ? 'high ' : ''}${match[0]}, unsure`;
  const screen = screened(plainRest, reading, kept ?? undefined);
  if (!screen.ok) return match ? screen : unread(notReadings(got));
  if (screen.value.hazards.length > 0) return read({ found: screen.value });
  const { gap, over } = match?.groups ?? {};
  if (gap === undefined || over === undefined) return unread(notReadings(got));
  const metric = unitsOf(unitIn(over) ?? (reading.preferences.units === 'metric' ? 'm' : 'ft')) === 'metric';
  const [small, large]: readonly [LengthUnit, LengthUnit] = metric ? ['mm', 'm'] : ['in', 'ft'];
  const [depth, span] = [readSide(gap, small, reading), readSide(over, large, reading)];
  if (!depth.ok || !span.ok) return unread(notReadings(got));
  if (depth.length >= span.length) return unread(gapTooWide(got));
  if (unitIn(gap) === undefined) reading.note(gapInFeet(gap, small === 'in' ? 'inches' : 'mm'));
  if (spot === 'low' && !/(?:low|dip|hollow|valley|deep)/.test(words))
    reading.note(readingLow(match?.[0].trim() ?? ''));
  return read({ gap: { gap: depth.length, over: span.length, spot }, found: screen.value });
}

/** A rule by name, or the maker's own. */
export type ParsedRule =
  | { readonly name: 'floating' | 'nail-down' }
  | { readonly name: 'own'; readonly gap: Length; readonly over: Length };

const RULE = new RegExp(`^(?<gap>${SIDE}) (?:in|over|per|under) (?:a |an |any )?(?<over>${SIDE})$`);
const RAMP = new RegExp(
  `^${pairPattern().source}(?: ?[,;] ?| )(?:height |rise |by |at )?(?<height>${SIDE})(?: high| deep| rise)?$`,
);
const LONGEST_RULE = 120;

function plainOf(text: string): string {
  return plainSigns(withoutHidden(text.trim(), ' ')).slice(0, LONGEST_RULE).replace(/\s+/g, ' ');
}

/** `floating`, `nail-down`, or `1/8 in in 6 ft`. Never throws. */
export function readRule(text: string, reading: Reading): Read<ParsedRule> {
  const plain = plainOf(text);
  const name = /^(?:(float(?:ing)?|click|vinyl)|nail(?:ed)?[ -]?down|nailed)(?: floor| plank| wood)?$/.exec(plain);
  if (name) return read({ name: name[1] === undefined ? 'nail-down' : 'floating' });
  const match = RULE.exec(plain);
  const { gap, over } = match?.groups ?? {};
  const bad = unread(notARule({ option: reading.option, got: text }));
  if (gap === undefined || over === undefined) return bad;
  const metric = unitsOf(unitIn(over) ?? (reading.preferences.units === 'metric' ? 'm' : 'ft')) === 'metric';
  const [small, large] = [readSide(gap, metric ? 'mm' : 'in', reading), readSide(over, metric ? 'm' : 'ft', reading)];
  if (!small.ok || !large.ok || small.length * 10 > large.length) return bad;
  return read({ name: 'own', gap: small.length, over: large.length });
}

export interface ParsedRamp {
  readonly area: Area;
  readonly height: Length;
}

/** `3 x 4 ft, 1/2 in`: sides and height; or `none`. Never throws. */
export function readRamp(text: string, reading: Reading): Read<ParsedRamp> {
  const plain = plainOf(text);
  if (/^(?:none|no)$/.test(plain)) return read({ area: 0n, height: 0 as Length });
  const metric = reading.preferences.units === 'metric';
  const bad = unread(notARamp({ option: reading.option, got: text }));
  const match = RAMP.exec(plain);
  const { a, b, height } = match?.groups ?? {};
  if (a === undefined || b === undefined || height === undefined) return bad;
  const bare: LengthUnit = metric ? 'm' : 'ft';
  const [one, other, rise] = [
    readSide(a, unitIn(b) ?? bare, reading),
    readSide(b, unitIn(a) ?? bare, reading),
    readSide(height, metric ? 'mm' : 'in', reading),
  ];
  if (!one.ok || !other.ok || !rise.ok || rise.length > Math.min(one.length, other.length)) return bad;
  return read({ area: areaOf(one.length, other.length), height: rise.length });
}

/** Liters one bag fills, and its weight in kilograms. */
interface ParsedBag {
  readonly litres: number;
  readonly kilograms: number;
}

/** Exactly 0.3048³ m³ and 0.45359237 kg (NIST SP 811, from memory). */
const LITRES_PER_CUBIC_FOOT = 28.316846592;
const KILOGRAMS_PER_POUND = 0.45359237;

const NUMBER = '\\d+(?:[.,]\\d+)?|[.,]\\d+';
const WEIGHT = `(?<weight>${NUMBER}) ?(?<unit>lbs?|pounds?|kgs?|kilos?)(?: ?-?bags?)?`;
const VOLUME = new RegExp(
  `^(?<volume>${NUMBER}) ?(?<measure>cu(?:bic|\\.)? ?(?:ft|feet|foot)\\.?|ft ?(?:³|\\^?3)|cf|l|lit(?:re|er)s?) ?(?:per|a|/|,|from|in)? ?(?:a )?${WEIGHT}$`,
);
const RATE = new RegExp(
  `^(?<rate>${NUMBER}) ?kg(?: ?/ ?| per )m(?:²|\\^?2)(?: ?/ ?| per | and )mm ?(?:,|;|in)? ?${WEIGHT}$`,
);

const WEIGHT_ALONE = new RegExp(`^${WEIGHT}$`);

/**
 * `0.45 cu ft per 50 lb`, `13 L per 25 kg`, `1.7 kg/m²/mm, 25 kg` (1 m² × 1 mm is a liter), or `20 kg` alone, which
 * fills in proportion to a bag of `usual`. Never throws.
 */
export function readYield(text: string, reading: Reading, usual: ParsedBag): Read<ParsedBag> {
  const plain = plainOf(text);
  const alone = WEIGHT_ALONE.exec(plain)?.groups;
  const groups = (VOLUME.exec(plain) ?? RATE.exec(plain))?.groups ?? alone;
  const figure = (typed: string | undefined): number => {
    const ratio = typed === undefined ? undefined : figureOf(typed, reading.preferences);
    return ratio ? Number(ratio.top) / Number(ratio.bottom) : Number.NaN;
  };
  const kilograms = figure(groups?.weight) * (/^[lp]/.test(groups?.unit ?? '') ? KILOGRAMS_PER_POUND : 1);
  const cubicFeet = /f/.test(groups?.measure ?? '');
  const litres = alone
    ? (kilograms * usual.litres) / usual.kilograms
    : groups?.rate === undefined
      ? figure(groups?.volume) * (cubicFeet ? LITRES_PER_CUBIC_FOOT : 1)
      : kilograms / figure(groups.rate);
  // Cement-based powders take 1 to 2.5 kg per liter filled; outside that the numbers were swapped.
  const heavy = kilograms / litres;
  if (!(kilograms >= 1 && kilograms <= 1500 && heavy >= 0.5 && heavy <= 4))
    return unread(notAYield({ option: reading.option, got: text }));
  return read({ litres, kilograms });
}
