/** One line of rooms cut into pieces: each has one shape, the name round it, and the sign that joins it to the piece before. */

import { roomsRunTogether, signsRunTogether } from '../../text/room-problems-text.ts';
import type { Flaw } from './room-flaw.ts';
import { LETTER } from './room-plain.ts';
import { pairPattern, SIDE, TIMES } from './room-side.ts';
import { ANGLE } from './walk-steps.ts';

/** Where a shape stands: two sides as typed (a square's are the same), or a walk round the walls. */
export type Shape =
  | { readonly kind: 'sides'; readonly from: number; readonly to: number; readonly a: string; readonly b: string }
  | { readonly kind: 'walk'; readonly from: number; readonly to: number };

/** `room` begins a room, `and` one that may belong to the room before, `plus` joins an area to it, `minus` leaves a corner out, `bay` puts a bay on a wall. */
export type Sign = 'room' | 'and' | 'plus' | 'minus' | 'bay';

export interface Piece {
  /** Where the sign before it begins. */
  readonly joint: number;
  readonly from: number;
  readonly to: number;
  readonly sign: Sign;
  readonly shape: Shape;
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

/** The shapes of `plain` between two places, in order. A walk runs to the end, or to the sign before the next sides. */
function shapesIn(plain: string, from: number, to: number): Shape[] {
  const line = plain.slice(from, to);
  const walk = WALK.exec(line);
  const end = walk ? walkEnd(line, walk.index) : 0;
  const shapes: Shape[] = walk ? [{ kind: 'walk', from: from + walk.index, to: from + end }] : [];
  for (const pattern of [pairPattern(), SQUARE]) {
    for (const found of line.matchAll(pattern)) {
      if (walk && found.index >= walk.index && found.index < end) continue;
      const { a = '', b = a } = found.groups ?? {};
      shapes.push({ kind: 'sides', from: from + found.index, to: from + found.index + found[0].length, a, b });
    }
  }
  return shapes.sort((one, other) => one.from - other.from);
}

/** What stands before the two offsets of a slanted wall: no sides of a room. */
const OFFSETS = /(?:diagonal(?:ly)?|slant(?:ed|ing)?|bevel(?:led|ed)?)(?: (?:wall|of))* *$/;

function walkEnd(line: string, start: number): number {
  const walk = line.slice(start);
  const next = [...walk.matchAll(pairPattern())].find(({ index }) => !OFFSETS.test(walk.slice(0, index)));
  const sign = next ? [...walk.slice(0, next.index).matchAll(SIGN)].at(-1) : undefined;
  return start + walk.slice(0, sign?.index).trimEnd().length;
}

/** The pieces of `plain` between two places; none when no shape is found there. */
export function piecesOf(plain: string, from: number, to: number): { pieces: Piece[]; flaws: Flaw[] } {
  const shapes = shapesIn(plain, from, to);
  const pieces: Piece[] = [];
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

/** The angle of a bay or of a corner cut off, right behind its sides. */
const LEADING_ANGLE = new RegExp(`^ *(?:(?:at|of) )?${ANGLE}`, 'i');

/** The one sign that divides two shapes, or a flaw. */
function signIn(plain: string, shape: Shape, next: Shape): { from: number; to: number; sign: Sign } | Flaw {
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
