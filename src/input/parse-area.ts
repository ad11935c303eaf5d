/** Areas as people type them: `168 sq ft`, `20 square yards`, `15,5 m²`, or rooms by their sides. */

import { areaExample, notAnArea } from '../text/length-problems-text.ts';
import { doubleArea } from '../units/geometry.ts';
import { type Area, areaOf, SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../units/length.ts';
import { readPlank } from './parse-plank.ts';
import { figureOf } from './parse-price.ts';
import { type Preferences, type Read, type Reading, read, type Units, unread } from './reading.ts';
import { readRooms } from './rooms/parse-room.ts';
import { plainSigns } from './rooms/room-text.ts';

/** An area in square ticks, and the units that it was typed in. */
export interface ParsedArea {
  readonly area: Area;
  readonly units: Units;
}

const SQUARE_YARD = 9n * SQUARE_TICKS_PER_SQUARE_FOOT;

const FIGURE = '\\d[\\d.,]*';
const UNIT =
  '(?<foot>sq(?:uare)?\\.? ?(?:ft|feet|foot)|sqft|sf|ft ?\\^?[2²])|(?<yard>sq(?:uare)?\\.? ?(?:yds?|yards?)|sqyds?|sy|yd ?\\^?[2²])|(?<meter>sq(?:uare)?\\.? ?(?:m|met(?:er|re)s?)|sqm|qm|m ?\\^?[2²])';
const AREA = new RegExp(`^(?<figure>${FIGURE}) ?(?:${UNIT})?\\.?$`);

/** Undefined where the text is no figure with a unit of area, or none at all. */
function figuredArea(text: string, preferences: Preferences): ParsedArea | undefined {
  const found = AREA.exec(plainSigns(text).trim());
  const { figure, foot, yard, meter } = found?.groups ?? {};
  const value = figure === undefined ? undefined : figureOf(figure.replace(/[.,]$/, ''), preferences);
  if (!value || value.top <= 0n) return undefined;
  const metric = meter !== undefined || (foot === undefined && yard === undefined && preferences.units === 'metric');
  const unit = metric ? SQUARE_TICKS_PER_SQUARE_METRE : yard === undefined ? SQUARE_TICKS_PER_SQUARE_FOOT : SQUARE_YARD;
  // Rounded up, so that a box never covers less than is printed on it.
  return { area: (value.top * unit + value.bottom - 1n) / value.bottom, units: metric ? 'metric' : 'imperial' };
}

/** The area of a floor: a figure, several with `+`, or rooms by their sides. Never throws. */
export function readFloorArea(text: string, reading: Reading): Read<ParsedArea> {
  const parts = text.split(/\+|;|\band\b/).map((part) => figuredArea(part, reading.preferences));
  const figures = parts.filter((part) => part !== undefined);
  if (figures.length === parts.length && figures[0]) {
    return read({ area: figures.reduce((sum, { area }) => sum + area, 0n), units: figures[0].units });
  }
  const rooms = readRooms(text, reading);
  if (!rooms.ok) return rooms;
  const doubled = rooms.value.rooms.reduce((sum, { outline }) => sum + doubleArea(outline), 0n);
  return read({ area: doubled / 2n, units: rooms.value.units });
}

/** What a carton covers: a figure, or a plank's size and how many a carton holds; `none` is undefined. Never throws. */
export function readCartonArea(text: string, reading: Reading): Read<Carton | undefined> {
  if (/^(?:none|no)$/i.test(text.trim())) return read(undefined);
  const bare = withoutBox(text);
  const figure = figuredArea(bare, reading.preferences);
  if (figure) return read({ area: figure.area, units: figure.units });
  const plank = readPlank(text, reading);
  if (!plank.ok)
    return unread({
      option: reading.option,
      got: text,
      expected: notAnArea(),
      fix: areaExample(reading.preferences.units),
    });
  const { cartonArea, plank: board, units } = plank.value;
  return read({ area: cartonArea, units, board: areaOf(board.width, board.length), perCarton: board.perCarton });
}

/** What is said of a box without the words for the box. */
export function withoutBox(text: string): string {
  return plainSigns(text)
    .replace(/ {2,}/g, ' ')
    .trim()
    .replace(/ ?(?:in a|per|each|an|a|\/) ?(?:carton|box|pack|case|roll)\.?$/, '');
}

/** One carton; its board where that was told. */
export interface Carton {
  readonly area: Area;
  readonly units: Units;
  readonly board?: Area;
  readonly perCarton?: number;
}
