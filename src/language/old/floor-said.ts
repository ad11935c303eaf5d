/** A floor as a sentence tells it, put into the options of the planks ask, or the one fact that is missing from it. */

import { unitIn } from '../../input/parse-length.ts';
import { readPlank } from '../../input/parse-plank.ts';
import { PRICE_SQUARE_FOOT, SQUARE_METRE } from '../../input/parse-plank-price.ts';
import { FIGURE, FIGURE_START, markOf } from '../../input/parse-price.ts';
import type { Preferences, Read, Reading } from '../../input/reading.ts';
import { readRooms } from '../../input/rooms/parse-room.ts';
import {
  areaNote,
  laterNote,
  layoutUnknown,
  plankByNoWord,
  plankNotGiven,
  plankRole,
  plankTwice,
  plankUnit,
  repeatedNote,
  roomCounts,
  roomEither,
  roomNotGiven,
  roomRole,
  roomTurned,
  roomUnsized,
  unplacedFigure,
  unusedNote,
  wasteNote,
} from '../../text/language-text.ts';
import { priceMark } from '../../text/plank-problems-text.ts';
import { areaAlone, oneSide } from '../../text/room-problems-text.ts';
import { TICKS_PER_INCH } from '../../units/length.ts';
import { figureIn, turnIn } from './leftover.ts';
import type { MeasuresInText } from './measures.ts';
import type { Plain } from './said.ts';
import { laterTopic } from './topic.ts';

/** A fact that is missing or in doubt; `mend` is what was told of it as it may be meant. */
interface Missing {
  readonly option: string;
  readonly got: string;
  readonly why: string;
  readonly mend?: string | undefined;
}

/** The ask for planks that a sentence makes, or its missing fact. */
export function floorSaid(
  plain: string,
  measures: MeasuresInText,
  preferences: Preferences,
  notes: readonly string[],
): Plain {
  const optionTexts = new Map<string, string>();
  const silent = (option: string): Reading => ({ option, preferences, note: () => undefined });
  const assumed = [...notes, ...notesOf(plain, measures)];
  const { rooms, layout } = measures;
  const read = rooms.given === '' ? undefined : readRooms(rooms.given, silent('room'));
  const roomMissing = missingRoom(measures, read);
  const plankText = plankOf(measures, assumed);
  const plankMissing = missingPlank(measures, plankText, silent('plank'));
  if (!roomMissing) optionTexts.set('room', rooms.given);
  if (!plankMissing) optionTexts.set('plank', plankText);
  const doubts = layout.doubts.map(({ option }) => option);
  for (const [option, value] of layout.options) if (!doubts.includes(option)) optionTexts.set(option, value);
  const loose = unmarkedPrice(measures, plankText, preferences) ?? unplaced(measures);
  const missing = roomMissing ?? plankMissing ?? missingLayout(measures) ?? loose;
  if (!missing) return { kind: 'ask', topic: 'planks', optionTexts, assumed };
  const lacking = [roomMissing, plankMissing, missingLayout(measures), loose].filter((one) => one !== undefined);
  const mends = new Map(lacking.flatMap(({ option, mend }) => (mend === undefined ? [] : [[option, mend] as const])));
  return {
    kind: 'ask-back',
    topic: 'planks',
    optionTexts,
    assumed,
    missing: missing.option,
    got: missing.got,
    why: missing.why,
    said: new Map([
      ...(rooms.given === '' ? [] : [['room', rooms.given] as const]),
      ...(plankText === '' ? [] : [['plank', plankText] as const]),
      ...optionTexts,
    ]),
    mends: mends.size === lacking.length ? mends : undefined,
    notGiven: lacking.every((one) => one.got === '') ? lacking.map(({ option }) => option) : undefined,
  };
}

function missingRoom(measures: MeasuresInText, read: Read<unknown> | undefined): Missing | undefined {
  const { rooms, doubtful, carton, rest } = measures;
  const missing = (why: string, got = '', mend?: string): Missing => ({ option: 'room', got, why, mend });
  if (rooms.given === '') {
    const [doubt] = doubtful;
    if (doubt) return missing(roomRole(doubt.typed), doubt.typed);
    const [area] = carton.areas;
    if (area) return missing(areaAlone(), area.got);
    const side = figureIn(rest);
    return side?.side ? missing(oneSide(), side.got) : missing(roomNotGiven());
  }
  if (read && !read.ok) return missing(read.problems[0].expected, rooms.given, read.problems[0].fix);
  if (measures.either) return missing(roomEither(), rooms.given);
  if (rooms.doubt) {
    const { why, got } = rooms.doubt;
    return missing(why === 'rooms counted' ? roomCounts(got) : roomUnsized(got), got);
  }
  const turn = turnIn(rest);
  return turn === undefined ? undefined : missing(roomTurned(turn), turn, rooms.given);
}

/** What is told of the plank, in the words of its reader. An area behind the size is what a carton covers, and that is noted. */
function plankOf({ planks, carton, roomPairs }: MeasuresInText, assumed: string[]): string {
  const [plank] = planks;
  const behind =
    plank && !carton.carton
      ? carton.areas.find(({ at }) => at > plank.to && !roomPairs.some(({ from }) => from > plank.to && from < at))
      : undefined;
  if (behind) assumed.push(areaNote(behind.got));
  return [plank?.typed, ...(behind ? [`${behind.got} per carton`] : []), ...carton.parts]
    .filter((part) => part !== undefined)
    .join(', ');
}

function missingPlank(measures: MeasuresInText, text: string, reading: Reading): Missing | undefined {
  const { planks, doubtful, roomPairs } = measures;
  const missing = (why: string, got: string, mend?: string): Missing => ({ option: 'plank', got, why, mend });
  const [plank, other] = planks;
  if (!plank && doubtful.length > 0 && roomPairs.length > 0)
    return missing(plankRole(doubtful[0]?.typed ?? ''), doubtful[0]?.typed ?? '');
  if (plank && other && plank.typed.replace(/\s/g, '') !== other.typed.replace(/\s/g, '')) {
    return missing(plankTwice(plank.typed, other.typed), `${plank.typed} … ${other.typed}`);
  }
  if (text === '') return missing(plankNotGiven(), '');
  const read = readPlank(text, reading);
  if (read.ok)
    return plank && unitless(plank.typed, read.value.plank)
      ? missing(plankUnit(plank.typed), plank.typed, text.replace(plank.typed, `${plank.typed} cm`))
      : undefined;
  const [problem] = read.problems;
  return plank ? missing(problem.expected, text, problem.fix) : missing(plankNotGiven(), text);
}

function missingLayout({ layout }: MeasuresInText): Missing | undefined {
  const [doubt] = layout.doubts;
  if (!doubt) return undefined;
  return { option: doubt.option, got: doubt.got, why: layoutUnknown(doubt.option, doubt.got) };
}

/** A figure for an area that nobody claimed is probably a price without its mark. */
const UNMARKED = new RegExp(
  `${FIGURE_START}${FIGURE} ?(?:per|/|an?(?![a-z])) ?(?:${PRICE_SQUARE_FOOT}|${SQUARE_METRE})`,
);

function unmarkedPrice(
  { rest, carton }: MeasuresInText,
  plankText: string,
  { currency }: Preferences,
): Missing | undefined {
  const got = carton.price ? undefined : UNMARKED.exec(rest)?.[0];
  if (got === undefined) return undefined;
  return { option: 'plank', got, why: priceMark(), mend: `${plankText}, ${markOf(currency)}${got}` };
}

/** A figure or a pair that nobody claimed: it may change the answer, so it is asked about. */
function unplaced({ rest, doubtful }: MeasuresInText): Missing | undefined {
  const [pair] = doubtful;
  const figure = pair ? pair.typed : figureIn(rest)?.got;
  return figure === undefined ? undefined : { option: 'ask', got: figure, why: unplacedFigure(figure) };
}

function notesOf(plain: string, measures: MeasuresInText): string[] {
  const { layout, leftover, carton, rooms, things, planks } = measures;
  const areas =
    measures.roomPairs.length > 0 && (carton.carton || planks.length === 0) ? carton.areas.map(({ got }) => got) : [];
  const unused = [
    ...leftover.unused,
    ...leftover.doors,
    ...carton.unused,
    ...things.map(({ typed }) => typed),
    ...areas,
    ...rooms.passed,
  ];
  const later = laterTopic(plain);
  return [
    ...planks.filter(({ bySize }) => bySize).map(({ typed }) => plankByNoWord(typed)),
    ...rooms.repeated.map(repeatedNote),
    ...layout.waste.map(wasteNote),
    ...(unused.length > 0 ? [unusedNote(unused)] : []),
    ...(later && later !== 'tear-out' ? [laterNote(later)] : []),
  ];
}

/** Whether a size without a unit, read as inches, is larger than any plank: over 13 in or 8 ft, by custom of the trade. */
function unitless(typed: string, { width, length }: { width: number; length: number }): boolean {
  return unitIn(typed) === undefined && (width > 13 * TICKS_PER_INCH || length > 96 * TICKS_PER_INCH);
}
