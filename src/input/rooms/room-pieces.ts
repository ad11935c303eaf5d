/** Splits a line of rooms into pieces, each with one shape, its name, and the sign that joins it to the previous piece. */

import {
  nameNeedsColon,
  nameOddSign,
  nameTooLong,
  negativeSide,
  roomsRunTogether,
  signsRunTogether,
  threeSides,
} from '../../text/room-problems-text.ts';
import { AREA, type Flaw } from './room-flaw.ts';
import { LETTER, pairPattern, SIDE, TIMES } from './room-text.ts';
import { ANGLE } from './walk-steps.ts';

/** A shape's position: two sides as typed (the same for a square), or a walk around the walls. */
export type RoomShape =
  | { readonly kind: 'sides'; readonly from: number; readonly to: number; readonly a: string; readonly b: string }
  | { readonly kind: 'walk'; readonly from: number; readonly to: number };

/**
 * `room` starts a room, `and` one that may belong to the previous room, `plus` adds an area to it, `minus` leaves out a
 * corner, `bay` puts a bay on a wall.
 */
type Sign = 'room' | 'and' | 'plus' | 'minus' | 'bay';

export interface RoomPiece {
  /** Where its sign starts. */
  readonly joint: number;
  readonly from: number;
  readonly to: number;
  readonly sign: Sign;
  readonly shape: RoomShape;
}

const SQUARE = new RegExp(
  `(?<![${LETTER}\\d./])(?<a>${SIDE}) ?-?square(?![${LETTER}])(?! ?-?(?:feet|foot|ft|met(?:er|re)s?|m|inch(?:es)?|in|yards?|yds?)(?![${LETTER}]))`,
  'g',
);
const WALK = new RegExp(
  `(?<![${LETTER}\\d])walk(?: (?:a?round|the|walls?|room)){0,4} ?[:=]? ?` +
    `(?=(?:turn )?(?:(?:right|left|r|l) ?)?${SIDE}(?!${TIMES}\\d))`,
);
const WORD = `(?<![${LETTER}])`;
const SIGN = new RegExp(
  `(?:, *)?(?:(?<strong>\\+|${WORD}(?:plus|minus|less|without)(?![${LETTER}])|${WORD}with(?<bay>(?= (?:an? )?(?:angled |slanted )?bay(?![${LETTER}]))))` +
    `|(?<dash>${WORD}-|-(?![${LETTER}]))|(?<and>&|${WORD}and(?![${LETTER}])))|(?<comma>,)`,
  'g',
);

/** The shapes in a range of `plain`, in order. A walk runs to the end, or to the sign before the next sides. */
function shapesIn(plain: string, from: number, to: number): RoomShape[] {
  const line = plain.slice(from, to);
  const walk = WALK.exec(line);
  const end = walk ? walkEnd(line, walk.index) : 0;
  const shapes: RoomShape[] = walk ? [{ kind: 'walk', from: from + walk.index, to: from + end }] : [];
  for (const pattern of [pairPattern(), SQUARE]) {
    for (const found of line.matchAll(pattern)) {
      if (walk && found.index >= walk.index && found.index < end) continue;
      const { a = '', b = a } = found.groups ?? {};
      shapes.push({ kind: 'sides', from: from + found.index, to: from + found.index + found[0].length, a, b });
    }
  }
  return shapes.sort((one, other) => one.from - other.from);
}

/** What comes before the two offsets of a slanted wall, which aren't the sides of a room. */
const OFFSETS = /(?:diagonal(?:ly)?|slant(?:ed|ing)?|bevel(?:led|ed)?)(?: (?:wall|of))* *$/;

function walkEnd(line: string, start: number): number {
  const walk = line.slice(start);
  const next = [...walk.matchAll(pairPattern())].find(({ index }) => !OFFSETS.test(walk.slice(0, index)));
  const sign = next ? [...walk.slice(0, next.index).matchAll(SIGN)].at(-1) : undefined;
  return start + walk.slice(0, sign?.index).trimEnd().length;
}

/** The pieces in a range of `plain`; none if it has no shape. */
export function piecesOf(plain: string, from: number, to: number): { pieces: RoomPiece[]; flaws: Flaw[] } {
  const shapes = shapesIn(plain, from, to);
  const pieces: RoomPiece[] = [];
  const flaws: Flaw[] = [];
  let [start, joint] = [from, from];
  let sign: Sign = 'room';
  shapes.forEach((shape, i) => {
    const next = shapes[i + 1];
    const found = next ? signIn(plain, shape, next) : { from: to, to, sign };
    if ('mends' in found) flaws.push(found);
    const cut = 'mends' in found ? { from: shape.to, to: found.to, sign: 'room' as const } : found;
    pieces.push({ joint, from: start, to: cut.from, sign, shape });
    joint = cut.from;
    start = cut.to;
    sign = cut.sign;
  });
  return { pieces, flaws };
}

/** The angle of a bay or a cut-off corner, right after its sides. */
const LEADING_ANGLE = new RegExp(`^ *(?:(?:at|of) )?${ANGLE}`, 'i');

/** The one sign between two shapes, or a flaw. */
function signIn(plain: string, shape: RoomShape, next: RoomShape): { from: number; to: number; sign: Sign } | Flaw {
  const between = plain.slice(shape.to, next.from);
  const signs = [...between.matchAll(SIGN)];
  const of = (kind: 'strong' | 'comma' | 'dash' | 'and') => signs.filter(({ groups }) => groups?.[kind] !== undefined);
  const touching = of('and').filter(
    ({ index, 0: { length } }) => !between.slice(0, index).trim() !== !between.slice(index + length).trim(),
  );
  const kinds = [of('strong'), of('comma'), of('dash'), of('and')];
  const loudest = kinds.find((found) => found.length > 0) ?? [];
  const one =
    loudest.length === 1 ? loudest[0] : loudest === kinds[3] && touching.length === 1 ? touching[0] : undefined;
  const doubtful = loudest === kinds[2] && of('and').length > 0;
  if (one && !doubtful) {
    const place = shape.to + one.index;
    return { from: place, to: place + one[0].length, sign: signOf(one) };
  }
  const shown = { from: shape.from, to: next.to };
  const expected = signs.length > 0 ? signsRunTogether() : roomsRunTogether();
  // An angle belongs to the shape before it.
  const angle = LEADING_ANGLE.exec(between)?.[0] ?? '';
  const name = between.slice(angle.length).replace(SIGN, ' ').replace(/\s+/g, ' ').trim();
  const mends = () => (name === '' ? [`${angle}; `] : [`${angle}; ${name} `, `${angle} ${name}; `]);
  return { from: shape.to, to: next.from, shown, expected, mends };
}

function signOf(found: RegExpExecArray): Sign {
  const { strong, dash, and, bay } = found.groups ?? {};
  if (and !== undefined) return 'and';
  if (dash !== undefined) return 'minus';
  if (strong === undefined) return 'room';
  if (bay !== undefined) return 'bay';
  return /(?:\+|plus)$/.test(strong) ? 'plus' : 'minus';
}

// A room's name: the text before or after its numbers, with its capitals and with spaces collapsed.

const LONGEST_NAME = 40;

const EDGES = /^[\s,:=()[\].~*•\p{Pd}]+|(?<![\s,:=()[\].~*•\p{Pd}])[\s,:=()[\].~*•\p{Pd}]+$/gu;
const FILLER = 'the|my|our|an?|about|approx(?:imately)?|roughly|circa|for|in|is|are|of|measures';
const FILLER_FIRST = new RegExp(`^(?:${FILLER})(?:\\s+|$)`, 'iu');
const FILLER_ALONE = new RegExp(`^(?:${FILLER})$`, 'iu');
const ODD = /(?!\u200d)[^\p{L}\p{M}\p{N}\p{Extended_Pictographic} '’._/#&+-]/u;
const AREAS = new RegExp(`\\(?~?${AREA}\\)?`, 'gi');

interface ReadName {
  readonly name: string;
  readonly flaws: readonly Flaw[];
}

/**
 * The name in a piece of `text`. It may contain a number only if a colon or equals sign separates it from the sides.
 */
export function readName(piece: RoomPiece, text: string): ReadName {
  const { from, to, shape } = piece;
  const before = text.slice(from, shape.from);
  const after = text.slice(shape.to, to);
  const figures = text.slice(shape.from, shape.to);
  const flaw = (expected: string, ...mends: string[]): ReadName => ({
    name: '',
    flaws: [{ from, to, expected, mends: () => [...mends, figures] }],
  });
  if (/^\s*\p{Pd}$|^\s*−$/u.test(before) && shape.kind === 'sides') return flaw(negativeSide());
  const left = divided(before, /^(?<name>[^:=]*)[:=](?<rest>[^:=]*)$/u);
  const right = divided(after, /^(?<rest>[\s)]*)[:=](?<name>[^:=]*)$/u);
  const name = [left.name, right.name].filter((part) => part !== '').join(' ');
  if (/^(?:x|by)$/i.test(name)) return flaw(threeSides());
  const odd = ODD.exec(name);
  if (odd) return flaw(nameOddSign(odd[0]), labelled(name.replace(new RegExp(ODD.source, 'gu'), ' '), figures));
  if (left.doubtful || right.doubtful) {
    const bare = [before, after].map((part) => tidy(part.replace(AREAS, ' '))).filter((part) => part !== '');
    return flaw(nameNeedsColon(name), labelled(bare.join(' '), figures));
  }
  const signs = [...name];
  if (signs.length > LONGEST_NAME) {
    return flaw(nameTooLong(LONGEST_NAME), labelled(signs.slice(0, LONGEST_NAME).join(''), figures));
  }
  return { name, flaws: [] };
}

function labelled(name: string, figures: string): string {
  return name.trim() === '' ? figures : `${name.trim()}: ${figures}`;
}

/** The name in one part; doubtful if it contains a number and nothing separates it from the sides. */
function divided(part: string, pattern: RegExp): { name: string; doubtful: boolean } {
  const { name, rest } = pattern.exec(part)?.groups ?? {};
  if (name !== undefined && tidy(rest ?? '') === '' && edged(name) !== '')
    return { name: edged(name), doubtful: false };
  const whole = tidy(part);
  return { name: whole, doubtful: /\p{N}/u.test(whole) };
}

function edged(text: string): string {
  return text.replace(EDGES, '').replace(/\s+/gu, ' ');
}

function tidy(text: string): string {
  return edged(withoutFillers(edged(text)));
}

/** Numbers repeated names; case is ignored. */
function distinctNames(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    let own = name;
    for (let n = 2; taken.has(own.toLowerCase()); n++) {
      const tail = ` ${n}`;
      own = `${[...name]
        .slice(0, LONGEST_NAME - tail.length)
        .join('')
        .trim()}${tail}`;
    }
    taken.add(own.toLowerCase());
    return own;
  });
}

/** Strips small words from the ends of a name one at a time, since a pattern for all of them at once backtracks. */
function withoutFillers(text: string): string {
  let name = text;
  for (let found = FILLER_FIRST.exec(name); found; found = FILLER_FIRST.exec(name)) name = name.slice(found[0].length);
  for (;;) {
    const last = name.slice(-20).split(/\s/).at(-1) ?? '';
    if (!FILLER_ALONE.test(last) || last.length === name.length || last.length === 20) return name;
    name = name.slice(0, -last.length).trimEnd();
  }
}

// Grouping pieces into regions: a shape with its omitted corners, and its name.

/** A piece with the name typed around it, empty if there is none. */
export interface NamedPiece extends RoomPiece {
  readonly name: string;
}

/** A region to be; `group` is the index of the room it was added to. */
export interface GatheredRooms {
  readonly name: string;
  readonly piece: NamedPiece;
  readonly notches: readonly NamedPiece[];
  readonly bays: readonly NamedPiece[];
  readonly group: number;
}

/** The regions in the order typed, each with a unique name. */
export function gathered(pieces: readonly NamedPiece[]): GatheredRooms[] {
  const regions: { piece: NamedPiece; notches: NamedPiece[]; bays: NamedPiece[]; group: number }[] = [];
  let group = -1;
  for (const piece of pieces) {
    const last = regions.at(-1);
    if (piece.sign === 'minus' && last) {
      last.notches.push(piece);
      continue;
    }
    if (piece.sign === 'bay' && last) {
      last.bays.push(piece);
      continue;
    }
    if (piece.sign !== 'plus') group++;
    regions.push({ piece, notches: [], bays: [], group });
  }
  const names = distinctNames(withDefaults(regions));
  return regions.map((region, i) => ({ ...region, name: names[i] ?? region.piece.name }));
}

/** Unnamed rooms are “room”, numbered if there are several; an added area is the room's name and “+ 1”. */
function withDefaults(regions: readonly { piece: NamedPiece }[]): string[] {
  const unnamed = regions.filter(({ piece }) => piece.sign !== 'plus' && piece.name === '').length;
  let [rooms, joined, base] = [0, 0, ''];
  return regions.map(({ piece }) => {
    if (piece.sign !== 'plus') {
      joined = 0;
      if (piece.name === '') rooms++;
      base = piece.name || (unnamed > 1 ? `room ${rooms}` : 'room');
      return base;
    }
    if (piece.name !== '') return piece.name;
    joined++;
    const tail = ` + ${joined}`;
    return `${[...base]
      .slice(0, LONGEST_NAME - tail.length)
      .join('')
      .trim()}${tail}`;
  });
}
