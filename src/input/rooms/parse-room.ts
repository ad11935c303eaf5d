/** Rooms as people type them: two sides, corners left out, areas added, or a walk around the walls. */

import type { Region } from '../../layout/floor.ts';
import {
  floorTooLarge,
  hiddenSignTyped,
  noRoom,
  partInWords,
  roomExample,
  sideTooLong,
  textTooLong,
  tooManyRooms,
} from '../../text/room-problems-text.ts';
import { boxOf, doubleArea } from '../../units/geometry.ts';
import { SQUARE_TICKS_PER_SQUARE_METRE, TICKS_PER_METRE } from '../../units/length.ts';
import { readInTime } from '../../workers/time-limits.ts';
import { unitIn, unitsOf } from '../parse-length.ts';
import { type ParsedRooms, type Read, type Reading, read, unread } from '../reading.ts';
import { type Flaw, problemsOf, shapelessFlaw } from './room-flaw.ts';
import { type GatheredRooms, gathered, type NamedPiece, piecesOf, readName } from './room-pieces.ts';
import { cornersLess, readOutline, withoutAngles } from './room-shape.ts';
import { hiddenSign, plainSigns, withoutHidden } from './room-text.ts';

const LONGEST_TEXT = 4000;
const MOST_ROOMS = 50;
/** Each of them with its four corners left out. */
const MOST_PIECES = MOST_ROOMS * 5;
const MOST_METRES = 100;
const MOST_SQUARE_METRES = 5000;

type Parsed =
  | { readonly ok: true; readonly value: ParsedRooms; readonly notes: readonly string[] }
  | { readonly ok: false; readonly flaws: readonly [Flaw, ...Flaw[]] };

/**
 * One or more rooms, separated by semicolons, newlines, or commas and “and” between sides. Each becomes regions in
 * ticks with their box at (0,0), the first side along x and the second along y. `12x14 - 3x4` leaves out the far right
 * corner, `+ 3x6 closet` adds an area that is laid on its own, `walk 12' right 10' …` describes any rectilinear shape,
 * with one wall optional. A number without a unit takes the nearest unit given, or else feet or meters, with a note.
 * Reports all problems of the text, each with a fix that parses. Never throws.
 */
export function readRooms(text: string, reading: Reading): Read<ParsedRooms> {
  return readInTime(() => roomsIn(text, reading));
}

function roomsIn(text: string, reading: Reading): Read<ParsedRooms> {
  const parsed = parse(text, reading);
  if (parsed.ok) {
    for (const note of parsed.notes) reading.note(note);
    return read(parsed.value);
  }
  const reads = (mended: string) => parse(mended, reading).ok;
  return unread(...problemsOf(parsed.flaws, text, reading.option, reads));
}

function exampleFor({ preferences }: Reading): string {
  return roomExample(preferences.units === 'metric', preferences.decimal);
}

function parse(text: string, { option, preferences }: Reading): Parsed {
  const notes: string[] = [];
  const reading: Reading = { option, preferences, note: (assumed) => notes.push(assumed) };
  const whole = (expected: string, ...mends: string[]): Parsed => ({
    ok: false,
    flaws: [{ from: 0, to: text.length, expected, mends: () => mends }],
  });
  if (text.length > LONGEST_TEXT) return whole(textTooLong(String(LONGEST_TEXT)));
  if (hiddenSign(text) !== undefined) return whole(hiddenSignTyped(), withoutHidden(text, ''));
  const plain = cornersLess(plainSigns(text));
  const [part, ...parts] = partsInWords(plain);
  if (part) return { ok: false, flaws: [part, ...parts] };
  const { pieces, flaws, beyond } = namedPieces(text, plain, exampleFor(reading));
  const regions = gathered(pieces);
  if (beyond !== undefined || regions.length > MOST_ROOMS) {
    return whole(tooManyRooms(MOST_ROOMS), text.slice(0, beyond ?? regions[MOST_ROOMS]?.piece.joint));
  }
  const given = statedIn(plain, regions);
  const rooms = regions.flatMap((region): Region[] => {
    const stated = statedIn(plain, [region]);
    const group =
      stated ??
      statedIn(
        plain,
        regions.filter((other) => other.group === region.group),
      );
    const unit = group ?? given ?? (preferences.units === 'metric' ? 'm' : 'ft');
    const outline = readOutline(text, plain, region, stated, unit, reading);
    if (!outline.ok) {
      flaws.push(...outline.flaws);
      return [];
    }
    const { maxX, maxY } = boxOf(outline.outline);
    if (Math.max(maxX, maxY) > MOST_METRES * TICKS_PER_METRE) {
      const { from, to } = region.piece.shape;
      flaws.push({ from, to, expected: sideTooLong(MOST_METRES), mends: () => [exampleFor(reading)] });
    }
    return [{ name: region.name, outline: outline.outline, holes: [], openings: [] }];
  });
  const [first, ...others] = flaws;
  if (first) return { ok: false, flaws: [first, ...others] };
  if (rooms.length === 0) return whole(noRoom(exampleFor(reading)));
  const doubled = rooms.reduce((sum, room) => sum + doubleArea(room.outline), 0n);
  if (doubled > 2n * BigInt(MOST_SQUARE_METRES) * SQUARE_TICKS_PER_SQUARE_METRE) {
    return whole(floorTooLarge(`${MOST_SQUARE_METRES} m²`));
  }
  return { ok: true, notes, value: { rooms, units: given ? unitsOf(given) : preferences.units } };
}

const PART_IN_WORDS =
  /(?<!\d)(\d+)( ?(?:ft|feet|foot|in|inch|inches|m|['"]))? and (?:a |one )?(half|quarter)(?![a-z])/g;

/** Halves and quarters spelled out, which could be mistaken for a name. */
function partsInWords(plain: string): Flaw[] {
  return [...plain.matchAll(PART_IN_WORDS)].map(({ index, 0: all, 1: whole = '', 2: unit = '', 3: part }) => ({
    from: index,
    to: index + all.length,
    expected: partInWords(),
    mends: () => [`${whole} ${part === 'half' ? '1/2' : '1/4'}${unit}`],
  }));
}

/** The largest unit in the shapes of some regions. */
function statedIn(plain: string, regions: readonly GatheredRooms[]) {
  const shapes = regions.flatMap(({ piece, notches, bays }) => [piece, ...notches, ...bays].map(({ shape }) => shape));
  return unitIn(shapes.map(({ from, to }) => plain.slice(from, to)).join(' ; '));
}

/**
 * The pieces of every line with their names, and flaws for lines without any. `beyond`: where the limit on lines is
 * exceeded.
 */
export function namedPieces(text: string, plain: string, example: string) {
  const pieces: NamedPiece[] = [];
  const flaws: Flaw[] = [];
  let lines = 0;
  for (const { index, 0: line } of plain.matchAll(/[^;\r\n]+/g)) {
    if (line.trim() === '') continue;
    if (lines++ === MOST_ROOMS) return { pieces, flaws, beyond: index };
    const to = index + line.trimEnd().length;
    const from = to - line.trim().length;
    const found = piecesOf(plain, from, to);
    if (found.pieces.length === 0) flaws.push(shapelessFlaw(text, plain, from, to, example));
    flaws.push(...found.flaws);
    const tooMany = found.pieces[MOST_PIECES];
    if (tooMany) return { pieces, flaws, beyond: tooMany.joint };
    for (const piece of found.pieces) {
      // The angle of a corner or bay isn't part of a name.
      const { name, flaws: wrong } = readName(piece, withoutAngles(text));
      flaws.push(...wrong);
      pieces.push({ ...piece, name });
    }
  }
  return { pieces, flaws, beyond: undefined };
}
