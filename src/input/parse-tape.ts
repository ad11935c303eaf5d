/** Tape arithmetic: 12'6" + 2 x 3'4 1/2" - 5/8", half of 3.8 m, 12'6" to mm. */

import { createRequire } from 'node:module';
import Fraction from 'fraction.js';
import type * as MathModule from 'mathjs';
import type { MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
import type { Fact, Problem, Result } from '../reply/reply.ts';
import { TAPE } from '../text/answer-text.ts';
import {
  dividedByZero,
  type Got,
  hyphenRead,
  noSuchThing,
  notASum,
  nothingBetween,
  sumNotAboveZero,
  sumTooLarge,
  sumTooLong,
  typedSumExample,
  unlikeThings,
  wrongTarget,
} from '../text/length-problems-text.ts';
import { type Area, type Length, TICKS_PER_INCH, ticks } from '../units/length.ts';
import { type Saying, sayArea, sayCut, sayLength, sayNumber } from './format.ts';
import {
  noteBare,
  noteDecimalFeet,
  plainText,
  type Quantity,
  quantityAt,
  readLength,
  unitsOf,
} from './parse-length.ts';
import {
  type LengthUnit,
  MOST_TICKS,
  matchAt,
  roundedRatio,
  UNIT_PATTERN,
  UNIT_WORDS,
  UNITS,
  unitMatched,
} from './parse-number.ts';
import { type Preferences, type Read, type Reading, read, type Units, unread } from './reading.ts';
import { pairPattern } from './rooms/room-text.ts';

// The terms of a sum: each quantity is replaced by a symbol, so that only the structure is left to parse.

/** `structure` has only symbols (q0, q1 …), the four operators and parentheses; qN stands for quantities[N]. */
interface Terms {
  readonly structure: string;
  readonly quantities: readonly Quantity[];
}

const DEEPEST = 30;
const SIGN = /[+\-*/×·∙⋅÷]|(?:plus|minus|times|multiplied by|divided by|by|x)(?![a-z])/y;
const SHARE = /(?:(?:a|one) +)?(?<share>half|third|quarter)(?![a-z])(?: +of(?![a-z]))?|(?:twice|double)(?![a-z])/y;

const MULTIPLY = new Set(['*', '×', '·', '∙', '⋅', 'x', 'times', 'multiplied by', 'by']);
const DIVIDE = new Set(['/', '÷', 'divided by']);
const PARTS: Readonly<Record<string, bigint>> = { half: 2n, third: 3n, quarter: 4n };

/** The terms of a plain text, or a Problem that shows where parsing stopped. */
function termsOf(text: string, reading: Reading, got: Got, example: string): Terms | Problem {
  const quantities: Quantity[] = [];
  /** For each open parenthesis, the fractions ("half of") that end where it closes. */
  const open: number[] = [];
  let [structure, shares, signs, at, afterValue] = ['', 0, 0, 0, false];
  const close = (count: number): void => {
    structure += ')'.repeat(count);
    [shares, signs, afterValue] = [0, 0, true];
  };

  for (;;) {
    while (text[at] === ' ') at++;
    if (at >= text.length) break;
    if (open.length + signs + shares > DEEPEST)
      return sumTooLarge(got, `${DEEPEST} brackets inside each other`, example);
    const stuck = notASum(got, text.slice(at, at + 20), example);

    const quantity = quantityAt(text, at, { reading, sum: true });
    if (quantity && 'expected' in quantity) return quantity;
    const share = quantity ? undefined : matchAt(SHARE, text, at);
    const opens = text[at] === '(';
    if (afterValue && (quantity || share || opens)) return nothingBetween(got, example);

    if (quantity) {
      structure += `q${quantities.push(quantity) - 1}`;
      close(shares);
      at = quantity.end;
    } else if (share) {
      structure += `(q${quantities.push(shareOf(share, at)) - 1}*`;
      shares++;
      at += share[0].length;
    } else if (opens) {
      structure += '(';
      open.push(shares);
      [shares, at] = [0, at + 1];
    } else if (text[at] === ')') {
      const ending = open.pop();
      if (ending === undefined || !afterValue) return stuck;
      close(ending + 1);
      at++;
    } else {
      const sign = matchAt(SIGN, text, at)?.[0];
      if (sign === undefined) return stuck;
      const plain = MULTIPLY.has(sign) ? '*' : DIVIDE.has(sign) ? '/' : sign === 'plus' || sign === '+' ? '+' : '-';
      if (!afterValue && (plain === '*' || plain === '/')) return stuck;
      signs = afterValue ? 0 : signs + 1;
      structure += plain;
      [afterValue, at] = [false, at + sign.length];
    }
  }
  return afterValue && open.length === 0 ? { structure, quantities } : notASum(got, '', example);
}

/** "half of" as the number it multiplies by. */
function shareOf(match: RegExpExecArray, at: number): Quantity {
  const share = match.groups?.share;
  const bottom = share === undefined ? 1n : (PARTS[share] ?? 1n);
  return { power: 0, top: share === undefined ? 2n : 1n, bottom, typed: match[0], end: at + match[0].length };
}

// Evaluating a parsed sum exactly, with its dimension checked at every step.

/** An exact amount in ticks to the `power`: 0 a number, 1 a length, 2 an area. */
interface Value {
  readonly amount: Fraction;
  readonly power: number;
  /** The text, if it is only numbers without units added up: next to a length they are lengths. */
  readonly bare?: string;
}

interface Sum {
  readonly reading: Reading;
  readonly bare: LengthUnit;
  readonly got: Got;
  readonly example: string;
}

let parser: MathModule.MathJsInstance['parse'] | undefined;

/**
 * The tree of a sum, by the parser of mathjs. It is loaded with the first sum of several terms, and from the
 * single-file build, since the thousand module files take four times as long.
 */
function treeOf(structure: string): MathNode {
  if (!parser) {
    const { create, parseDependencies } = createRequire(import.meta.url)(
      'mathjs/lib/browser/math.js',
    ) as typeof MathModule;
    parser = create({ ...parseDependencies } as MathModule.FactoryFunctionMap).parse;
  }
  return parser(structure);
}

/**
 * The value of the terms, or the Problem that stops the evaluation. Throws an Error for a structure that is more than
 * arithmetic.
 */
function totalOf(terms: Terms, sum: Sum): Value | Problem {
  // A single length, the most common sum, needs no tree.
  return terms.structure === 'q0' ? quantityNamed('q0', terms) : valueAt(treeOf(terms.structure), terms, sum);
}

/** `value` as a length if it is numbers without units, with a note; anything else is unchanged. */
function asLength(value: Value, { bare, reading }: Sum): Value {
  if (value.bare === undefined) return value;
  noteBare(value.bare, bare, value.amount.abs().lte(1), reading);
  return { amount: value.amount.mul(UNITS[bare].ticks), power: 1 };
}

function valueAt(node: MathNode, terms: Terms, sum: Sum): Value | Problem {
  if (isParenthesis(node)) return valueAt(node.content, terms, sum);
  if (isSymbol(node)) return quantityNamed(node.name, terms);
  if (!isOperator(node)) throw new Error(`more than arithmetic: ${node.type}`);
  const [first, second] = node.args;
  const left = first && valueAt(first, terms, sum);
  if (!left || 'expected' in left) return left ?? missing(node.type);
  const sign: string = node.fn;
  if (sign === 'unaryPlus') return left;
  if (sign === 'unaryMinus') {
    return { ...left, amount: left.amount.neg(), ...(left.bare !== undefined && { bare: `-${left.bare}` }) };
  }
  const right = second && valueAt(second, terms, sum);
  if (!right || 'expected' in right) return right ?? missing(node.type);
  if (sign === 'add' || sign === 'subtract') return added(left, right, sign, sum);
  if (sign === 'multiply') return multiplied(left, right, sum);
  if (sign === 'divide') return divided(left, right, sum);
  throw new Error(`more than arithmetic: ${sign}`);
}

function quantityNamed(name: string, { quantities }: Terms): Value {
  const quantity = quantities[Number(name.slice(1))];
  if (!quantity) throw new Error(`no quantity for the symbol ${name}`);
  const { top, bottom, power, typed } = quantity;
  return { amount: new Fraction(top, bottom), power, ...(power === 0 && { bare: typed }) };
}

function added(left: Value, right: Value, sign: 'add' | 'subtract', sum: Sum): Value | Problem {
  const [from, by] = [right.power === 1 ? asLength(left, sum) : left, left.power === 1 ? asLength(right, sum) : right];
  if (from.power !== by.power) {
    const permission = sign === 'add' ? `adds ${kind(by)} to ${kind(from)}` : `takes ${kind(by)} from ${kind(from)}`;
    return unlikeThings(sum.got, permission, sum.example);
  }
  const amount = sign === 'add' ? from.amount.add(by.amount) : from.amount.sub(by.amount);
  if (from.bare === undefined || by.bare === undefined) return { amount, power: from.power };
  return { amount, power: 0, bare: `${from.bare} ${sign === 'add' ? '+' : '-'} ${by.bare}` };
}

function multiplied(left: Value, right: Value, sum: Sum): Value | Problem {
  const power = left.power + right.power;
  if (power > 2) return noSuchThing(sum.got, `multiplies ${kind(left)} by ${kind(right)}`, sum.example);
  return { amount: left.amount.mul(right.amount), power };
}

function divided(left: Value, right: Value, sum: Sum): Value | Problem {
  if (right.amount.equals(0)) return dividedByZero(sum.got, sum.example);
  const power = left.power - right.power;
  if (power < 0) return noSuchThing(sum.got, `divides ${kind(left)} by ${kind(right)}`, sum.example);
  return { amount: left.amount.div(right.amount), power };
}

function kind({ power }: Value): string {
  return power === 0 ? 'a number' : power === 1 ? 'a length' : 'an area';
}

function missing(type: string): never {
  throw new Error(`a sign without its values: ${type}`);
}

const isParenthesis = (node: MathNode): node is ParenthesisNode => node.type === 'ParenthesisNode';
const isSymbol = (node: MathNode): node is SymbolNode => node.type === 'SymbolNode';
const isOperator = (node: MathNode): node is OperatorNode => node.type === 'OperatorNode';

/**
 * The result of a sum. `exact` is false if it was rounded to a tick; `to` is the requested unit; `units` is its system,
 * or else that of the first typed unit.
 */
type Tape =
  | {
      readonly kind: 'length';
      readonly length: Length;
      readonly exact: boolean;
      readonly units: Units;
      readonly to?: LengthUnit;
    }
  | {
      readonly kind: 'area';
      readonly area: Area;
      readonly exact: boolean;
      readonly units: Units;
      readonly to?: LengthUnit;
    }
  | { readonly kind: 'number'; readonly value: number };

const LONGEST_TEXT = 300;
const MOST_SUM = MOST_TICKS * 100n;
const MOST_NUMBER = 1e15;
const TARGET = new RegExp(
  `(?<! ) +(?:in|to|into|as) +(?<square>(?:sq\\.?|square) *)?${UNIT_PATTERN}(?<two>²|2|\\^2)?\\.?(?<rest> and inches)?$`,
);

/**
 * The value of a sum, rounded once to a tick, positive. Numbers without a unit multiply and divide; added to a length,
 * or only to each other, they are lengths in `bare`, with a note. Length × length is an area, area ÷ length a length,
 * length ÷ length a number; anything else is a Problem, as is a result of zero or less. Never throws on any text.
 */
export function readTape(text: string, reading: Reading, bare: LengthUnit): Read<Tape> {
  const got = { option: reading.option, got: text.trim() };
  const example = typedSumExample(reading.preferences.units === 'metric', reading.preferences.decimal);
  if (text.length > LONGEST_TEXT) return unread(sumTooLarge(got, `${LONGEST_TEXT} characters`, example));
  const plain = plainText(text)
    .replace(/(?<![ =?])[ =?]+$/, '')
    .trim();
  if (plain === '') return unread(notASum(got, '', example));
  const target = targetOf(plain);
  const terms = termsOf(target ? plain.slice(0, target.start) : plain, reading, got, example);
  if ('expected' in terms) return unread({ ...terms, got: got.got });
  for (const quantity of terms.quantities) noteDoubts(quantity, reading);

  const sum: Sum = { reading, bare: unitAtEnd(terms) ?? bare, got, example };
  const value = totalOf(terms, sum);
  if ('expected' in value) return unread(value);
  const units = unitsOf(target?.unit ?? terms.quantities.find(({ unit }) => unit)?.unit ?? bare);
  const tape = tapeOf(asLength(value, sum), { units, decimal: reading.preferences.decimal }, sum, target);
  return 'expected' in tape ? unread(tape) : read(tape);
}

/**
 * The unit of lengths that are only added up, if only the last one has a unit, spelled in letters: 5 + 3 + 9 ft are
 * feet.
 */
function unitAtEnd({ structure, quantities }: Terms): LengthUnit | undefined {
  const last = quantities.at(-1);
  const others = quantities.slice(0, -1);
  // A smaller number next to feet with a mark is what a tape shows: inches.
  const alike = others.every(({ unit, power, top, bottom }) => unit === undefined && power === 0 && top >= bottom);
  const named = last?.power === 1 && /[a-z]\.?$/i.test(last.typed.trim());
  return alike && named && /^q0(?:[+-]q\d+)+$/.test(structure) ? last.unit : undefined;
}

interface Target {
  readonly unit: LengthUnit;
  readonly square: boolean;
  readonly start: number;
}

/** The unit a sum is requested in ("… to mm"), and where that starts. */
function targetOf(plain: string): Target | undefined {
  const match = TARGET.exec(plain);
  const unit = match && unitMatched(match);
  if (!match || !unit || (match.groups?.rest !== undefined && unit !== 'ft')) return undefined;
  const square = match.groups?.square !== undefined || match.groups?.two !== undefined;
  return { unit, square, start: match.index };
}

function noteDoubts(quantity: Quantity, reading: Reading): void {
  if (quantity.hyphen) reading.note(hyphenRead(quantity.typed, quantity.typed.replaceAll('-', ' ')));
  if (quantity.unit && quantity.power === 1 && quantity.top <= MOST_SUM * quantity.bottom) {
    noteDecimalFeet(quantity, quantity.unit, ticks(Number(roundedRatio(quantity))), reading);
  }
}

function tapeOf({ amount, power }: Value, saying: Saying, { got, example }: Sum, target?: Target): Tape | Problem {
  const whole = roundedRatio({ top: amount.n, bottom: amount.d });
  const figures = whole * amount.s;
  const exact = amount.d === 1n;
  const also = { units: saying.units, ...(target && { to: target.unit }) };
  if (power === 0) {
    const value = amount.valueOf();
    if (!(Math.abs(value) <= MOST_NUMBER)) return sumTooLong(got, sayNumber(MOST_NUMBER, saying), example);
    if (amount.s <= 0n || amount.n === 0n) return sumNotAboveZero(got, sayNumber(value, saying), example);
    return target ? wrongTarget(got, 'a number', example) : { kind: 'number', value };
  }
  if (power === 2) {
    if (whole > MOST_SUM * MOST_SUM) return sumTooLong(got, '100 km²', example);
    return figures <= 0n
      ? sumNotAboveZero(got, sayArea(figures, saying), example)
      : { kind: 'area', area: figures, exact, ...also };
  }
  if (whole > MOST_SUM) return sumTooLong(got, '10 km', example);
  const length = ticks(Number(figures));
  if (figures <= 0n) return sumNotAboveZero(got, sayLength(length, saying), example);
  return target?.square ? wrongTarget(got, 'a length', example) : { kind: 'length', length, exact, ...also };
}

// The result in both systems, and as result data.

const TICKS_PER_SIXTEENTH = TICKS_PER_INCH / 16;

/** Result data of kind tape: a length in ticks, an area in square ticks, or a plain number. */
type TapeResult = Result & { readonly kind: 'tape' } & (
    | { readonly length: number }
    | { readonly area: number }
    | { readonly number: number }
  );

/**
 * Headline, facts and data of a sum; `typed` is the sum as typed, whose own units come first unless it asks for others.
 */
export function sayTape(
  tape: Tape,
  typed: string,
  preferences: Preferences,
): { headline: string; facts: readonly Fact[]; data: TapeResult } {
  const { decimal } = preferences;
  const imperial = { units: 'imperial', decimal } as const;
  const metric = { units: 'metric', decimal } as const;
  if (tape.kind === 'number') {
    const value = sayNumber(tape.value, imperial, 6);
    return { headline: `${typed} = ${value}`, facts: [], data: { kind: 'tape', number: tape.value } };
  }
  const { units } = tape;
  if (tape.kind === 'area') {
    const said = units === 'metric' ? sayArea(tape.area, metric) : sayArea(tape.area, imperial);
    return {
      headline: `${typed} = ${said}`,
      facts: [
        { label: TAPE.squareFeet, value: sayArea(tape.area, imperial) },
        { label: TAPE.squareMetres, value: sayArea(tape.area, metric) },
      ],
      data: { kind: 'tape', area: Number(tape.area) },
    };
  }
  return {
    headline: `${typed} = ${tape.to ? sayIn(tape.length, tape.to, decimal) : sayLength(tape.length, { units, decimal })}`,
    facts: [
      { label: TAPE.imperial, value: sayLength(tape.length, imperial) },
      { label: TAPE.inches, value: sayCut(tape.length, imperial) },
      { label: TAPE.metric, value: sayLength(tape.length, metric) },
      { label: TAPE.millimetres, value: sayIn(tape.length, 'mm', decimal) },
    ],
    data: { kind: 'tape', length: tape.length },
  };
}

/** Useful decimals: a tenth of a millimeter, or finer if that is exact. */
const DECIMALS: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 2, m: 4, in: 4, ft: 4, yd: 4 };

/** A length in the one requested unit; feet and inches as on a tape, and both forms if that isn't exact. */
function sayIn(length: Length, unit: LengthUnit, decimal: Preferences['decimal']): string {
  const saying = { units: unitsOf(unit), decimal };
  const value = Number((length / Number(UNITS[unit].ticks)).toFixed(DECIMALS[unit]));
  // No thousands separator: 3,810 mm could be read as a decimal.
  const figure = `${String(value).replace('.', decimal)} ${unit}`;
  if (unit !== 'ft' && unit !== 'in') return figure;
  const onTape = unit === 'ft' ? sayLength(length, saying) : sayCut(length, saying);
  return length % TICKS_PER_SIXTEENTH === 0 ? onTape : TAPE.about(figure, onTape);
}

interface SentenceSum {
  readonly sum: string;
  /** Set when it is a sum by its words, and cannot be followed. */
  readonly problem?: Problem;
}

const BEFORE =
  /^(?:(?:hey|hi|hello|hallo|ok|okay|so|um|also|and|sorry|quick q(?:uestion)?|can (?:you|u|someone)(?: tell me)?|could you|(?:does )?any(?:one|body) know|do you know|tell me|i need to know|i (?:need|have|want) to cut|need|guys|please|pls)[ ,:.\-?]*)+/;
const PHRASE =
  /^(?:calculate|work out|compute|figure out|convert|what(?:'s| is|s| are| does| would)|how (?:much|long|big) (?:is|are|does)|the (?:sum|total) of)[ ,:]+/;
const AFTER =
  /(?<![ ,.?=!])[ ,.?=!]*(?:(?:please|pls|plz|thanks|thank you|thx|ty|danke|equals?|total|make|makes|come to)[ ,.?=!]*)*$/;
const UNIT = UNIT_PATTERN.replace(/\?<[a-z]+>/g, '?:');
const ANY = '(?:sq\\.? ?|square )?[a-z]{1,12}(?:²|2)?';

/** Orders of words that a sum has not, each put into that of a sum. */
const TURNED: readonly (readonly [RegExp, string])[] = [
  [new RegExp(`^how many (${ANY}) (?:is|are|are there|go|fit|make)?(?: ?in(?:to)?)? ?(.*\\d.*)$`), '$2 in $1'],
  [new RegExp(`^(\\D*\\d.*) (?:is|makes|equals|=) how many (${ANY})$`), '$1 in $2'],
  [new RegExp(`^what is (${ANY}) of (.*\\d.*)$`), '$2 in $1'],
  [/^(?:subtract|take|deduct) (.+) (?:from|off|away from) ([\s\S]+)$/, '$2 - $1'],
  [/^(?:divide|split|cut) (.+) (?:by|in|into) (\d+)(?: (?:equal )?(?:parts|pieces|sections))?$/, '$1 / $2'],
  [/^(.+) (?:split|divided|cut) (?:by|in|into) (\d+)(?: (?:equal )?(?:parts|pieces|sections))?$/, '$1 / $2'],
  [/^(\d+ ?\/ ?\d+) of (.+)$/, '$1 x $2'],
  [/^multiply (.+) by ([\s\S]+)$/, '$1 x $2'],
  [/^(.+) (?:take away|less) ([\s\S]+)$/, '$1 - $2'],
];
/** Signs one by one and whole words: no text fits it in two ways, so that one that does not fit is soon given up. */
const ALLOWED = new RegExp(
  `^(?:[\\d\\s.,'"()+*/x·÷½¼¾⅛⅜⅝⅞⅓⅔²^-]|(?<![a-z])(?:${UNIT_WORDS}|plus|minus|times|divided by|multiplied by|half|third|quarter|twice|double|of|to|into|as|and|a|one|by|sq|square)(?![a-z]))+$`,
);
/** Bare sides of which the square is asked: they are in the unit of the answer. */
const BARE_SQUARE = new RegExp(
  `^(\\d+(?:[.,]\\d+)?) ?(?:x|by|times) ?(\\d+(?:[.,]\\d+)?)( (?:in|to|into|as) (?:sq\\.?|square) ?(${UNIT}))$`,
);
const SIGN_OR_WORD =
  /[+*/÷·]| - |(?<![a-z])(?:plus|minus|times|divided by|multiplied by|half|third|quarter|twice|double)(?![a-z])/;
const UNIT_ASKED = new RegExp(` (?:in|to|into|as) (?:sq\\.? ?|square )?${UNIT}(?:²|2)?(?: and inches)?$`);

const ANY_UNIT = /\d ?(?:["'a-z](?<!x))/;
const MARKS = /(\d+ \d{1,2}\/(?:2|4|8|16|32))(?!\d)/g;

/** The sum in a plain sentence that is a sum and nothing else; undefined for anything else. */
export function sumInSentence(plain: string, preferences: Preferences): SentenceSum | undefined {
  const bare = plain.replace(BEFORE, '').replace(AFTER, '');
  const core = bare.replace(PHRASE, '');
  const requested = core !== bare;
  const adds = /^(?:add|sum)(?: up)? (.+)$/.exec(core);
  const turned = TURNED.find(([order]) => order.test(core));
  const given = (
    adds
      ? (adds[1] ?? '').replace(/,? (?:and|to|with) |, /g, ' + ')
      : turned
        ? core.replace(turned[0], turned[1])
        : core
  )
    .trim()
    .replace(BARE_SQUARE, '$1 $4 x $2 $4$3');
  // Only a tape has sixteenths: “half of 137 5/8” is of inches.
  const sum = ANY_UNIT.test(given) ? given : given.replace(MARKS, '$1 in');
  if (sum.length > 200 || !/\d|half|third|quarter/.test(sum) || !ALLOWED.test(sum)) return undefined;
  const signs = SIGN_OR_WORD.test(sum) || UNIT_ASKED.test(sum);
  // Sides side by side are a room unless somebody asks what they come to.
  if (pairPattern().exec(sum)?.index === 0 && !requested && !adds && !turned && !UNIT_ASKED.test(sum)) return undefined;
  if (!signs && !(requested && pairPattern().test(sum))) return undefined;
  const reading: Reading = { option: 'sum', preferences, note: () => undefined };
  const unit = preferences.units === 'metric' ? 'mm' : 'in';
  if (!requested && !adds && !turned && !UNIT_ASKED.test(sum) && readLength(sum, reading, unit).ok) return undefined;
  const tape = readTape(sum, reading, unit);
  if (tape.ok) return { sum };
  return requested || adds || turned || UNIT_ASKED.test(sum) ? { sum, problem: tape.problems[0] } : undefined;
}
