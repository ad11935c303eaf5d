/** Doorways between rooms as people tell them: `hall to bedroom 32 in, 18 in from the left corner of wall 2; hall to living 5 ft, wall 3, stops`. */

import { type Doorway, type DoorwaySide, type JambPlace, USUAL_WALL } from '../../layout/doorways.ts';
import type { Problem } from '../../reply/reply.ts';
import { doorwayRunsOn, homeDoorwayUnread, wallTaken } from '../../text/floor-problems-text.ts';
import { inches, type Length, millimetres, ticks } from '../../units/length.ts';
import { readLength } from '../length.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';
import { Rest } from '../rest.ts';
import { sayLength } from '../say-length.ts';
import { plainSigns } from './room-plain.ts';
import { SIDE } from './room-side.ts';

export const MOST_DOORWAYS = 60;
const LEAST_WIDTH = inches(6);
const MOST_WIDTH = millimetres(10_000);
const LEAST_DEPTH = inches(1);
const MOST_DEPTH = inches(36);

const WORD = "[\\p{L}][\\p{L}'._&#+/ ]{0,60}?";
/** A figure belongs to a name where a sign or another figure follows it, as in “bedroom 2: 32 in”. */
const NAME = `${WORD}(?: (?:\\+ )?\\d{1,2}(?= ?(?:[:,>-]|$|wall|to |into |and |\\d)))?`;
const OWN_WALL = '(?:[ ,]+wall (?<%>\\d{1,3}))?';
const NAMES = new RegExp(
  `^(?:(?:the |an? )?(?:door(?:way)?|opening|arch(?:way)?)[ :]+)?(?:from |between )?(?:the )?(?<a>${NAME})${OWN_WALL.replace('%', 'wa')}` +
    ` ?(?:(?<![\\p{L}])(?:to|into|and|with)(?![\\p{L}])|->|=>|>|&|-) ?(?:the )?(?<b>${NAME})${OWN_WALL.replace('%', 'wb')}` +
    '(?= ?[:,]| \\d| ?$| (?:runs?|goes|stops?|ends?|through|transition|on|at|in|wall)(?![\\p{L}]))',
  'u',
);
const RUNS_ON =
  /(?<![a-z])(?:(?:the )?(?:floor )?(?:runs?|running|goes|going|carries|straight|flows?)(?: (?:on|right|straight))*(?: through)?|through|no (?:transition|strip|break)|continuous)(?![a-z])/;
const STOPS =
  /(?<![a-z])(?:(?:the )?(?:floor )?(?:stops?|(?<!(?:left|right|hand) )ends?)(?: (?:there|at|with|in)(?: an?)?)?(?: (?:transition|t-?strip|strip))?(?: strip)?|(?:with )?(?:an? )?(?:transition|t-?(?:bar|strip|moul?ding)|strip|threshold)(?: strip)?)(?![a-z])/;
const THICK = new RegExp(
  `(?:(?:in an? |(?:the )?wall (?:is )?|by )?(?<a>${SIDE})[ -]?(?:thick|deep)(?: wall)?|(?:the )?(?:wall )?thick(?:ness)?:? (?:of )?(?<b>${SIDE}))(?![a-z])`,
);
const WALL =
  /(?<![a-z])(?:(?:of|on|in|at|along) )?(?:the )?wall (?<wall>\d{1,3})(?: (?:of|in) (?:the )?(?<room>[\p{L}][\p{L}\p{N}'._&#+/ -]*?)(?=\s*(?:[:,;]|$)|\s{2}))?/u;
const FROM = new RegExp(
  `(?:(?:at|starting) )?(?<side>${SIDE}|0(?: ?(?:in|ft|mm|cm|m|"|'))?) ?(?:in )?from (?:the |its )?(?<end>left|right)(?:[ -]?(?:hand )?(?:corner|end|side|edge))?`,
);
const AT_END = /(?:at|in) the (?<end>left|right)(?:[ -]?(?:hand )?(?:corner|end|side|edge))?/;
const WIDTH = new RegExp(`(?<side>${SIDE})(?: ?-?(?:wide|clear|door(?:way)?|opening|cased opening|arch(?:way)?))*`);
const FILLER =
  /(?<![a-z])(?:wide|width|door(?:way)?s?|openings?|arch(?:way)?|cased|the|an?|is|of|on|at|and|in the middle|centred|centered|middle)(?![a-z])|[,:;.()\s-]/g;

/** A side being put together. */
interface Side {
  room: string;
  wall?: number;
  at?: JambPlace;
}

/** Doorways apart by `;` or a new line, none for `none`; a bare width is in inches or millimetres. All problems at once. */
export function readHomeDoorways(text: string, reading: Reading): Read<readonly Doorway[]> {
  if (/^\s*(?:(?:none|no|no doorways?|0)\s*)?$/i.test(text)) return read([]);
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const doorways: Doorway[] = [];
  const wrong: string[] = [];
  const metric = reading.habits.units === 'metric';
  const standard = metric ? 'hall to bedroom 800 mm, wall 2' : 'hall to bedroom 32 in, wall 2';
  let thickness = false;
  if (parts.length > MOST_DOORWAYS)
    return unread(homeDoorwayUnread({ option: reading.option, got: text }, MOST_DOORWAYS, standard));
  const mended = parts.map((part) => {
    const found = doorwayOf(part, reading);
    if (!found) {
      wrong.push(part);
      return standard;
    }
    doorways.push(found.doorway);
    thickness ||= !found.thick;
    if (!found.told) reading.note(doorwayRunsOn(found.doorway.sides[0].room, found.doorway.sides[1].room));
    return part;
  });
  if (parts.length === 0) wrong.push(text);
  const [first, ...more] = wrong.map(
    (got): Problem => homeDoorwayUnread({ option: reading.option, got }, MOST_DOORWAYS, mended.join('; ') || standard),
  );
  if (first) return unread(first, ...more);
  if (thickness) reading.note(wallTaken(sayLength(USUAL_WALL, reading.habits)));
  return read(doorways);
}

interface Found {
  readonly doorway: Doorway;
  /** Whether it was told that the floor runs on or stops, and how thick the wall is. */
  readonly told: boolean;
  readonly thick: boolean;
}

function doorwayOf(part: string, reading: Reading): Found | undefined {
  const plain = plainSigns(part).replace(/\s+/g, ' ').trim();
  const typed = part.replace(/\s+/g, ' ').trim();
  const rest = new Rest(plain);
  const names = rest.claim(NAMES);
  const { a, b, wa, wb } = names?.groups ?? {};
  if (!names || a === undefined || b === undefined) return undefined;
  // The name as typed, capitals kept: plain signs stand where the typed ones stood.
  const named = (name: string): string => {
    const from = plain.indexOf(name);
    return typed.length === plain.length ? typed.slice(from, from + name.length).trim() : name.trim();
  };
  const sides: [Side, Side] = [
    { room: named(a), ...(wa === undefined ? {} : { wall: Number(wa) }) },
    { room: named(b), ...(wb === undefined ? {} : { wall: Number(wb) }) },
  ];
  const on = rest.claim(/(?<![a-z])no (?:transition|strip|break)(?![a-z])/) ?? undefined;
  const stops = on ? undefined : rest.claim(STOPS);
  const runs = on ?? rest.claim(RUNS_ON);
  if (stops && runs) return undefined;
  const thick = rest.claim(THICK);
  const depth = thick ? lengthOf(thick.groups?.a ?? thick.groups?.b ?? '', reading) : USUAL_WALL;
  if (depth === undefined || depth < LEAST_DEPTH || depth > MOST_DEPTH) return undefined;
  if (!placed(rest, sides, reading)) return undefined;
  const wide = rest.claim(WIDTH)?.groups?.side;
  const width = wide === undefined ? undefined : lengthOf(wide, reading);
  if (width === undefined || width < LEAST_WIDTH || width > MOST_WIDTH) return undefined;
  if (rest.text.replace(FILLER, '') !== '') return undefined;
  const doorway = { sides: [sideOf(sides[0]), sideOf(sides[1])] as const, width, depth, runsOn: !stops };
  return { doorway, told: Boolean(stops ?? runs), thick: Boolean(thick) };
}

function sideOf({ room, wall, at }: Side): DoorwaySide {
  return { room, ...(wall === undefined ? {} : { wall }), ...(at === undefined ? {} : { at }) };
}

/** Puts walls and distances to the sides they belong to; false where one does not go with the rest. */
function placed(rest: Rest, sides: [Side, Side], reading: Reading): boolean {
  const jambs = [...rest.claimAll(FROM), ...rest.claimAll(AT_END)].sort((one, other) => one.index - other.index);
  const walls = rest.claimAll(WALL);
  const owners = walls.map((wall): Side | undefined => {
    const room = wall.groups?.room?.trim();
    const number = Number(wall.groups?.wall);
    const own =
      room === undefined
        ? sides.find((side) => side.wall === undefined)
        : sides.find((side) => side.room.toLowerCase() === room && side.wall === undefined);
    if (own) own.wall = number;
    return own;
  });
  if (owners.some((owner) => owner === undefined)) return false;
  return jambs.every((jamb) => {
    const end = jamb.index + jamb[0].length;
    const next = walls.findIndex(
      (wall) => wall.index >= end && wall.index - end <= 1 && /^(?:of|on|in|along) /.test(wall[0].trim()),
    );
    const before = walls.findLastIndex((wall) => wall.index < jamb.index);
    const side = owners[next >= 0 ? next : before] ?? sides.find(({ wall }) => wall !== undefined) ?? sides[0];
    if (side.at) return false;
    const { end: from, side: distance } = jamb.groups ?? {};
    const length = distance === undefined || /^0+\D*$/.test(distance) ? ticks(0) : lengthOf(distance, reading);
    if (length === undefined) return false;
    side.at = { from: from === 'right' ? 'right' : 'left', distance: length };
    return true;
  });
}

function lengthOf(text: string, reading: Reading): Length | undefined {
  const found = readLength(text, reading, reading.habits.units === 'metric' ? 'mm' : 'in');
  return found.ok ? found.value : undefined;
}
