/** Splits several rooms into separate ones, each with a name and a text that parses the same on its own, for any user. */

import { roomExample, roomOnlyAmongOthers } from '../../text/room-problems-text.ts';
import { readInTime } from '../../workers/time-limits.ts';
import { unitIn } from '../parse-length.ts';
import { type Read, type Reading, read, type Units, unread } from '../reading.ts';
import { namedPieces, readRooms } from './parse-room.ts';
import { gathered } from './room-pieces.ts';
import { cornersLess } from './room-shape.ts';
import { plainSigns } from './room-text.ts';

/** One room: its name, and its shape without the name. `named` is whether the name was typed. */
interface RoomApart {
  readonly name: string;
  readonly text: string;
  readonly named: boolean;
}

/** A room as the parser takes it; a name with a digit is set off. */
export function roomGiven({ name, text }: Pick<RoomApart, 'name' | 'text'>): string {
  // An equals sign rather than a colon, because a colon after an option name would start that option.
  return /\d/.test(name) ? `${name} = ${text}` : `${name} ${text}`;
}

/**
 * The rooms of a text; areas added to a room stay in its text. Units assumed from the user's preferences are written
 * out. Problems as in `readRooms`.
 */
export function readRoomsApart(text: string, reading: Reading): Read<readonly RoomApart[]> {
  return readInTime(() => roomsApart(text, reading));
}

function roomsApart(text: string, reading: Reading): Read<readonly RoomApart[]> {
  const whole = readRooms(text, reading);
  if (!whole.ok) return whole;
  const regions = gathered(namedPieces(text, cornersLess(plainSigns(text)), '').pieces);
  const groups = new Map<number, { from: number; to: number; shapes: string[]; name: string; named: boolean }>();
  regions.forEach(({ group, name, piece, notches, bays }, i) => {
    const shape = outlineOf(whole.value.rooms[i]);
    const to = Math.max(...[piece, ...notches, ...bays].map((part) => part.to));
    const before = groups.get(group);
    if (!before) groups.set(group, { from: piece.from, to, shapes: [shape], name, named: piece.name !== '' });
    else groups.set(group, { ...before, to, shapes: [...before.shapes, shape] });
  });
  const unit = unitIn(text) ?? (whole.value.units === 'metric' ? 'm' : 'ft');
  const apart = [...groups.values()].map(({ from, to, shapes, name, named }) => {
    const typed = tidy(text.slice(from, to));
    const bare = named ? withoutName(typed, name) : typed;
    const candidates = [bare, `${bare} ${unit}`, withUnits(bare, unit), typed, `${typed} ${unit}`];
    const same = (candidate: string, units: readonly Units[]): boolean =>
      units.every((one) => sameShapes(roomGiven({ name, text: candidate }), shapes, one, reading));
    const found =
      candidates.find((candidate) => same(candidate, ['imperial', 'metric'])) ??
      candidates.find((candidate) => same(candidate, [reading.preferences.units]));
    return { name, text: found, typed, named };
  });
  // A room saved differently from what was typed would be wrong in every later answer.
  const [lost] = apart.filter(({ text: found }) => found === undefined);
  if (lost) {
    const { units, decimal } = reading.preferences;
    const example = roomExample(units === 'metric', decimal);
    return unread({ option: reading.option, got: lost.typed, expected: roomOnlyAmongOthers(example) });
  }
  return read(apart.map(({ name, text: found = '', named }) => ({ name, text: found, named })));
}

/** The areas of a text by name, each with the room it belongs to; empty if the text can't be parsed. */
export function roomOfArea(text: string, reading: Reading): ReadonlyMap<string, string> {
  return readInTime(() => roomsOfAreas(text, reading));
}

function roomsOfAreas(text: string, reading: Reading): ReadonlyMap<string, string> {
  const whole = readRooms(text, reading);
  if (!whole.ok) return new Map();
  const areas = gathered(namedPieces(text, cornersLess(plainSigns(text)), '').pieces);
  const names = new Map<number, string>();
  for (const { group, name } of areas) if (!names.has(group)) names.set(group, name);
  return new Map(
    areas.flatMap(({ group, name }, i) => {
      const area = whole.value.rooms[i]?.name ?? name;
      return [[area, names.get(group) ?? area] as const];
    }),
  );
}

function sameShapes(text: string, shapes: readonly string[], units: Units, reading: Reading): boolean {
  const again = readRooms(text, { ...reading, preferences: { ...reading.preferences, units }, note: () => undefined });
  return again.ok && again.value.rooms.map(outlineOf).join(' ') === shapes.join(' ');
}

function outlineOf(region: { readonly name: string; readonly outline: unknown } | undefined): string {
  return JSON.stringify([region?.name, region?.outline]);
}

function withoutName(typed: string, name: string): string {
  const words = name.split(' ').map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const said = new RegExp(
    `(?<![\\p{L}\\d])(?:the |my |our )?${words.join('\\s+')}(?![\\p{L}\\d])(?:\\s+(?:is|measures))?\\s*[:=,]?\\s*`,
    'iu',
  );
  return tidy(typed.replace(said, ' '));
}

const NO_UNIT = `(?![\\d.,/°]| ?(?:deg|ft|in|cm|mm|yd|m\\b|['"′″]))`;
const BARE_PAIRS = new RegExp(`(?<![\\d.,/])(\\d+(?:[.,]\\d+)?) ?(x|×|by) ?(\\d+(?:[.,]\\d+)?)${NO_UNIT}`, 'gi');
const BARE_SINGLES = new RegExp(`(?<![\\d.,/])(?<!(?:x|×|by) ?)(\\d+(?:[.,]\\d+)?)${NO_UNIT}(?! ?(?:x|×|by))`, 'gi');

/** Adds a unit to every pair of sides, and every number of a walk, that has none. */
function withUnits(text: string, unit: string): string {
  return text.replace(BARE_PAIRS, `$1 $2 $3 ${unit}`).replace(BARE_SINGLES, `$1 ${unit}`);
}

function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').replace(/^[\s,;:=]+|(?<![\s,;:=])[\s,;:=]+$/g, '');
}
