/** Text as words for the screen: folded to plain letters, disguises undone, positions kept; and numbers that suggest a hazard. */

import { TABLES } from './lexicon/all-hazards.ts';

export interface Token {
  /** Lowercase, without accents. */
  readonly word: string;
  /** Position in the text, in UTF-16 units. */
  readonly from: number;
  readonly to: number;
  /** Distance coordinate: grows by one per word, and more across a comma, the end of a sentence or an option name. */
  readonly at: number;
  /** Number of its sentence or labeled value. */
  readonly part: number;
}

/** Extra distance across a comma, the end of a sentence, and before and after an option name. */
const GAP = { comma: 1, sentence: 6, label: 1000, value: 6 } as const;

/** Letters that look like Latin ones and are typed in their place. */
const LOOKS_LIKE: Readonly<Record<string, string>> = {
  а: 'a',
  в: 'b',
  е: 'e',
  ѕ: 's',
  і: 'i',
  ј: 'j',
  к: 'k',
  м: 'm',
  н: 'h',
  о: 'o',
  р: 'p',
  с: 'c',
  т: 't',
  у: 'y',
  х: 'x',
  ο: 'o',
  α: 'a',
  ε: 'e',
  ι: 'i',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
};

/** Characters that stand in for a letter inside a word. */
const SIGNS: Readonly<Record<string, string>> = { 0: 'o', 1: 'i', 3: 'e', 4: 'a', 5: 's', 7: 't', $: 's', '@': 'a' };

const folded = new Map<string, string>();

/** One character as plain lowercase letters; empty for marks and zero-width characters. */
function fold(char: string): string {
  if ((char >= 'a' && char <= 'z') || char === ' ') return char;
  const known = folded.get(char);
  if (known !== undefined) return known;
  const plain = char.normalize('NFKD').toLowerCase().normalize('NFKD');
  const bare = [...plain].map((one) => (/[\p{M}\p{Cf}]/u.test(one) ? '' : (LOOKS_LIKE[one] ?? one))).join('');
  if (folded.size < 4096) folded.set(char, bare);
  return bare;
}

interface Letter {
  readonly char: string;
  readonly from: number;
  readonly to: number;
}

/** Linear in the length of the text. */
export function tokensOf(text: string): readonly Token[] {
  const letters: Letter[] = [];
  let place = 0;
  for (const char of text) {
    const to = place + char.length;
    for (const one of fold(char)) letters.push({ char: one, from: place, to });
    place = to;
  }
  return placed(drawnTogether(words(letters)));
}

/** A word, or a character between words. */
type Piece = { readonly word: string; readonly from: number; readonly to: number } | { readonly sign: string };

/** Cached, because every letter is tested several times. */
const LETTERS = new Map<string, boolean>();

function isLetter(char: string | undefined): boolean {
  if (char === undefined) return false;
  if (char >= 'a' && char <= 'z') return true;
  const known = LETTERS.get(char);
  if (known !== undefined) return known;
  const letter = /\p{L}/u.test(char);
  if (LETTERS.size < 4096) LETTERS.set(char, letter);
  return letter;
}
const isDigit = (char: string | undefined): boolean => char !== undefined && char >= '0' && char <= '9';

function words(letters: readonly Letter[]): readonly Piece[] {
  const pieces: Piece[] = [];
  let i = 0;
  while (i < letters.length) {
    const { char = '', from = 0 } = letters[i] ?? {};
    if (isLetter(char)) {
      let word = '';
      let to = from;
      for (; i < letters.length; i++) {
        const one = letters[i];
        if (!one) break;
        const [before, after] = [letters[i - 1]?.char, letters[i + 1]?.char];
        const sign = SIGNS[one.char];
        if (isLetter(one.char)) word += one.char;
        else if (sign !== undefined && isLetter(before) && isLetter(after)) word += sign;
        else if (!(isApostrophe(one.char) && isLetter(before) && isLetter(after))) break;
        // `l’oeil`, `d’eau`: the article is a separate word.
        else if (ELIDED.has(word) && isLetter(letters[i + 2]?.char)) break;
        to = one.to;
      }
      pieces.push({ word, from, to });
    } else if (isDigit(char)) {
      let word = '';
      let to = from;
      for (; i < letters.length && (isDigit(letters[i]?.char) || isPoint(letters, i)); i++) {
        word += letters[i]?.char ?? '';
        to = letters[i]?.to ?? to;
      }
      // `’61`, a year of the last century.
      const short = isApostrophe(letters[i - word.length - 1]?.char ?? '') && word.length === 2 && word >= '20';
      pieces.push({ word: short ? `19${word}` : word, from, to });
    } else {
      // An inch mark reads as the word.
      if (/["″”]/.test(char) && isDigit(letters[i - 1]?.char))
        pieces.push({ word: 'in', from, to: letters[i]?.to ?? from });
      else if (char === '%') pieces.push({ word: 'percent', from, to: letters[i]?.to ?? from });
      else pieces.push({ sign: char });
      i += 1;
    }
  }
  return pieces;
}

const ELIDED = new Set(['l', 'd', 'j', 'm', 't', 's', 'n', 'c', 'qu']);

function isApostrophe(char: string): boolean {
  return char === "'" || char === '’' || char === '‘' || char === '`' || char === '´';
}

/** A decimal point, comma or fraction slash between digits. */
function isPoint(letters: readonly Letter[], i: number): boolean {
  const char = letters[i]?.char;
  return (
    (char === '.' || char === ',' || char === '/') && isDigit(letters[i - 1]?.char) && isDigit(letters[i + 1]?.char)
  );
}

/** Joins three or more single letters separated by the same character: `g a s`, `s.e.w.a.g.e`. */
function drawnTogether(pieces: readonly Piece[]): readonly Piece[] {
  const drawn: Piece[] = [];
  for (let i = 0; i < pieces.length; i++) {
    const first = pieces[i];
    const between = pieces[i + 1];
    if (!first || !isSingle(first) || !between || !('sign' in between) || !/[ .*_-]/.test(between.sign)) {
      if (first) drawn.push(first);
      continue;
    }
    let [word, to, last] = [first.word, first.to, i];
    for (let at = i + 2; ; at += 2) {
      const [next, sign] = [pieces[at], pieces[at - 1]];
      if (!next || !isSingle(next) || !sign || !('sign' in sign) || sign.sign !== between.sign) break;
      word += next.word;
      to = next.to;
      last = at;
    }
    if (word.length < 3) drawn.push(first);
    else {
      drawn.push({ word, from: first.from, to });
      i = last;
    }
  }
  return drawn;
}

function isSingle(piece: Piece): piece is Extract<Piece, { word: string }> {
  return 'word' in piece && piece.word.length === 1 && isLetter(piece.word);
}

const ENDS = new Set(['.', '!', '?', ';', '\n', '\r', '¡', '¿']);

function placed(pieces: readonly Piece[]): readonly Token[] {
  const tokens: Token[] = [];
  let [at, part] = [0, 0];
  pieces.forEach((piece, i) => {
    if ('word' in piece) {
      if (isLabel(pieces, i)) {
        at += GAP.label;
        part += 1;
      }
      at += 1;
      tokens.push({ ...piece, at, part });
      if (isLabel(pieces, i)) at += GAP.value;
    } else if (ENDS.has(piece.sign)) {
      if (tokens.length > 0 && tokens.at(-1)?.part === part) {
        at += GAP.sentence;
        part += 1;
      }
    } else if (piece.sign === ',') at += GAP.comma;
  });
  return tokens;
}

/** Whether a word is an option name, followed by a colon. */
function isLabel(pieces: readonly Piece[], i: number): boolean {
  const next = pieces[i + 1];
  if (!next || !('sign' in next) || next.sign !== ':') return false;
  // After a command name or a comma; elsewhere a colon is just punctuation.
  let before = i - 1;
  for (let piece = pieces[before]; piece && 'sign' in piece && piece.sign === ' '; piece = pieces[before]) before -= 1;
  const sign = pieces[before];
  return before < 3 || (sign !== undefined && 'sign' in sign);
}

// Numbers that suggest a hazard: years and decades by the age of a house or floor, and meter readings.

/** Floors laid up to this year are suspect unless more is known (margin over OSHA's 1980; a cautious default). */
const SUSPECT = 1989;
/** The last year whose houses fall under the US rule on lead paint (EPA, 40 CFR 745: before 1978). */
const LEAD = 1977;

/**
 * More humidity in a slab, and more moisture in wood, than most makers allow (common practice: 75 to 85 % RH, 12 %).
 */
const HUMIDITY = 85;
const MOISTURE = 12;
/** The strictest limit for a slab. */
const DRY_SLAB = 75;

const [OLD_YEAR, LEAD_YEAR, NEW_YEAR, HIGH_HUMIDITY, HIGH_MOISTURE, LOW_READING] = [
  'OLD_YEAR',
  'LEAD_YEAR',
  'NEW_YEAR',
  'HIGH_HUMIDITY',
  'HIGH_MOISTURE',
  'LOW_READING',
].map((name) => TABLES.classes.get(name) ?? -1);

const DECADES: Readonly<Record<string, number>> = {
  twenties: 1920,
  thirties: 1930,
  forties: 1940,
  fifties: 1950,
  sixties: 1960,
  seventies: 1970,
  eighties: 1980,
  nineties: 1990,
};

/** Words that keep a four-digit number from being a year: what it measures or counts. */
const MEASURED = new Set(
  'sq square sqft sf ft feet foot inch inches mm cm meters metres yd yards dollars bucks lb lbs kg psi rpm watt watts st street ave avenue rd road main blvd lane ln drive dr apt style look quilt boxes planks pieces grit degrees ml'.split(
    ' ',
  ),
);
const NUMBERED = new Set(
  'model code no number apt unit suite room sku lot po item order invoice size grit page'.split(' '),
);

const NONE: readonly number[] = [];

export function figureClasses(tokens: readonly Token[], i: number): readonly number[] {
  const token = tokens[i];
  if (!token) return NONE;
  const year = yearAt(tokens, i);
  if (year === undefined) return readingClasses(token.word);
  return [...(year <= SUSPECT ? [OLD_YEAR ?? -1] : [NEW_YEAR ?? -1]), ...(year <= LEAD ? [LEAD_YEAR ?? -1] : [])];
}

function readingClasses(word: string): readonly number[] {
  if (!/^\d{1,2}(?:\.\d)?$/.test(word)) return NONE;
  const figure = Number(word);
  const low = figure <= MOISTURE || (figure >= 40 && figure <= DRY_SLAB);
  return [
    ...(low ? [LOW_READING ?? -1] : []),
    ...(figure > MOISTURE ? [HIGH_MOISTURE ?? -1] : []),
    ...(figure > HUMIDITY ? [HIGH_HUMIDITY ?? -1] : []),
  ];
}

function yearAt(tokens: readonly Token[], i: number): number | undefined {
  const word = tokens[i]?.word ?? '';
  const decade = DECADES[word];
  if (decade !== undefined) return decade;
  if (!/^\d{2,4}$/.test(word)) return undefined;
  const [before, next] = [tokens[i - 1], tokens[i + 1]];
  // `50s`: the digits and the letter are two adjacent words; `’50s` has a mark before it.
  const plural = next?.word === 's' && next.from - (tokens[i]?.to ?? 0) <= 1;
  const figure = Number(word);
  if (word.length === 2 && !plural) {
    // `built in 64`
    const said = `${tokens[i - 2]?.word ?? ''} ${before?.word ?? ''}`;
    return /^(?:built in|built around|from about|dates from|house from|back in)$/.test(said) && figure >= 20
      ? 1900 + figure
      : undefined;
  }
  if (plural && word.length === 2) return figure % 10 === 0 && figure >= 20 ? 1900 + figure : undefined;
  if (word.length !== 4 || figure < 1850 || figure > 2100) return undefined;
  const behind = plural ? tokens[i + 2] : next;
  if (behind && MEASURED.has(behind.word) && behind.at - (tokens[i]?.at ?? 0) <= 2) return undefined;
  if (before && NUMBERED.has(before.word)) return undefined;
  return figure;
}
