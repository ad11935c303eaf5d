/** Doorways and stairs: between rooms (`hall to bedroom 32 in, 18 in from the left corner of wall 2`), in walls, and at floor edges. */

import { type Doorway, type DoorwaySide, type JambPlace, USUAL_WALL } from '../../layout/doorways.ts';
import type { Problem } from '../../reply/reply.ts';
import { doorwayRunsOn, homeDoorwayUnread, wallTaken } from '../../text/floor-problems-text.ts';
import { notDoorways } from '../../text/prep-problems-text.ts';
import { beyondTaken, doorwayUnread, stairsUnread } from '../../text/trim-problems-text.ts';
import type { Beyond, EdgeDoorway } from '../../trim/pieces.ts';
import { inches, type Length, millimetres, ticks } from '../../units/length.ts';
import { sayLength } from '../format.ts';
import { readLength } from '../parse-length.ts';
import { Rest } from '../parse-plank.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';
import { plainSigns, SIDE } from './room-text.ts';

const MOST_DOORWAYS = 60;
const LEAST_WIDTH = inches(6);
const MOST_WIDTH = millimetres(10_000);
const LEAST_DEPTH = inches(1);
const MOST_DEPTH = inches(36);

const WORD = "[\\p{L}][\\p{L}'._&#+/ ]{0,60}?";
/** A number belongs to a name if a sign or another number follows, as in “bedroom 2: 32 in”. */
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

interface Side {
  room: string;
  wall?: number;
  at?: JambPlace;
}

/**
 * Doorways separated by `;` or a newline, none for `none`; a bare width is in inches or millimeters. Reports all
 * problems at once.
 */
export function readHomeDoorways(text: string, reading: Reading): Read<readonly Doorway[]> {
  if (/^\s*(?:(?:none|no|no doorways?|0)\s*)?$/i.test(text)) return read([]);
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const doorways: Doorway[] = [];
  const wrong: string[] = [];
  const metric = reading.preferences.units === 'metric';
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
    if (!found.given) reading.note(doorwayRunsOn(found.doorway.sides[0].room, found.doorway.sides[1].room));
    return part;
  });
  if (parts.length === 0) wrong.push(text);
  const [first, ...more] = wrong.map(
    (got): Problem => homeDoorwayUnread({ option: reading.option, got }, MOST_DOORWAYS, mended.join('; ') || standard),
  );
  if (first) return unread(first, ...more);
  if (thickness) reading.note(wallTaken(sayLength(USUAL_WALL, reading.preferences)));
  return read(doorways);
}

interface Found {
  readonly doorway: Doorway;
  /** Whether the text says that the floor runs through or stops, or how thick the wall is. */
  readonly given: boolean;
  readonly thick: boolean;
}

function doorwayOf(part: string, reading: Reading): Found | undefined {
  const plain = plainSigns(part).replace(/\s+/g, ' ').trim();
  const typed = part.replace(/\s+/g, ' ').trim();
  const rest = new Rest(plain);
  const names = rest.claim(NAMES);
  const { a, b, wa, wb } = names?.groups ?? {};
  if (!names || a === undefined || b === undefined) return undefined;
  // The name as typed, with its capitals: plain text has the same positions as the typed text.
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
  return { doorway, given: Boolean(stops ?? runs), thick: Boolean(thick) };
}

function sideOf({ room, wall, at }: Side): DoorwaySide {
  return { room, ...(wall === undefined ? {} : { wall }), ...(at === undefined ? {} : { at }) };
}

/** Assigns walls and distances to their sides; false if one doesn't fit the rest. */
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
  const found = readLength(text, reading, reading.preferences.units === 'metric' ? 'mm' : 'in');
  return found.ok ? found.value : undefined;
}

// Doorways in the walls, where no tack strip or trim goes: how many and how wide.

/** The widths of all doorways, or one of this width per room. */
type Doorways =
  | { readonly kind: 'listed'; readonly widths: readonly Length[] }
  | { readonly kind: 'one a room'; readonly width: Length };

const MOST = 50;
const USUAL = inches(32);

/** `none`, `one a room`, `one a room x 30 in`, `3`, `2 x 30 in`, `30 in, 36 in`. */
export function readDoorways(text: string, reading: Reading): Read<Doorways> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  const bad = () => unread(notDoorways({ option: reading.option, got: text }));
  if (/^(?:none|no|0|no doors?)$/.test(plain)) return read({ kind: 'listed', widths: [] });
  const each = /^(?:one|1) (?:an?|per|each|every|in (?:each|every)) ?room(?: ?(?:x|×|of|,|at) ?(.+))?$/.exec(plain);
  if (each) {
    const width = each[1] === undefined ? read(USUAL) : widthOf(each[1], reading);
    return width.ok ? read({ kind: 'one a room', width: width.value }) : bad();
  }
  const several = /^(\d{1,2}) ?(?:doors?|doorways?|openings?)?(?: ?(?:x|×|of|at|,) ?(\D*\d.*))?$/.exec(plain);
  if (several && (several[2] !== undefined || /^\d{1,2}(?: ?[a-z]{3,})?$/.test(plain))) {
    const count = Number(several[1]);
    const width = several[2] === undefined ? read(USUAL) : widthOf(several[2], reading);
    if (count > MOST || !width.ok) return bad();
    return read({ kind: 'listed', widths: Array.from({ length: count }, () => width.value) });
  }
  const parts = plain.split(/ ?; ?| ?,(?!\d) ?| and /).map((part) => widthOf(part, reading));
  const widths = parts.flatMap((part) => (part.ok ? [part.value] : []));
  if (widths.length < parts.length || parts.length > MOST) return bad();
  return read({ kind: 'listed', widths });
}

export function doorwaysOf(doorways: Doorways, rooms: number): readonly Length[] {
  return doorways.kind === 'listed' ? doorways.widths : Array.from({ length: rooms }, () => doorways.width);
}

function widthOf(text: string, reading: Reading): Read<Length> {
  return readLength(text.replace(/ wide$/, ''), reading, reading.preferences.units === 'metric' ? 'mm' : 'in');
}

// Doorways where the new floor ends: `bath 30 in to tile 1/2 in; bedroom 32 in to carpet; balcony 6 ft to track`.

const KINDS: readonly (readonly [RegExp, Beyond])[] = [
  [/^(?:carpet|rug)/i, 'carpet'],
  [/^(?:sliding|track|slider|patio)/i, 'track'],
  [/^/, 'hard'],
];
const BEYOND =
  /(?:[,:]\s*|(?<!\s)\s+)?\b(?:(?:to|against|meets?|and|next to|beside)\s+(?:an?\s+|the\s+)?)?(carpet(?:ing)?|rug|tiles?|tiled floor|stone|vinyl|laminate|hardwood|wood|timber|concrete|plank|same floor|sliding(?:[ -]door)?(?:\s+track)?|slider|patio(?:[ -]door)?(?:\s+track)?|track)\b/i;
const NAME_IN_FRONT = /^([\p{L}][\p{L}\d'’ -]*?)(?<!\s)(?:\s*:)?\s+(?=\d|[½¼¾])/u;
/** The name may follow the width: `30" bath`. */
const NAME_BEHIND = /^(\D*\d.*?)(?<!\s)\s+(?!(?:in|inch|inches|ft|feet|foot|mm|cm|m)\b)(\p{L}[\p{L}'’ -]*)$/iu;
const COUNT = /^(\d{1,2})\s*(?:x|×|\*)\s*(?=\d)/i;

const LEAST_EDGE_WIDTH = inches(6);
const MOST_EDGE_WIDTH = millimetres(10_000);
const MOST_HEIGHT = inches(4);

/**
 * Doorways separated by `;` or a newline, none for `none`; each with its width, what is beyond, and that floor's height
 * above the subfloor. Reports all problems at once.
 */
export function readEdgeDoorways(text: string, reading: Reading): Read<readonly EdgeDoorway[]> {
  if (/^\s*(?:none|no|no doorways?)\s*$/i.test(text)) return read([]);
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const doorways: EdgeDoorway[] = [];
  const wrong: string[] = [];
  const standard = reading.preferences.units === 'metric' ? '800 mm to tile 10 mm' : '32 in to tile 1/2 in';
  const mended = parts.map((part) => {
    const found = edgeDoorwaysOf(part, doorways.length, reading);
    if (found) doorways.push(...found);
    else wrong.push(part);
    return found ? part : standard;
  });
  const got = { option: reading.option, got: text };
  if (parts.length === 0 || doorways.length > MOST_DOORWAYS) return unread(doorwayUnread(got, MOST_DOORWAYS, standard));
  const [first, ...more] = wrong.map(
    (part): Problem => doorwayUnread({ ...got, got: part }, MOST_DOORWAYS, mended.join('; ')),
  );
  if (first) return unread(first, ...more);
  for (const { name, beyond, height } of doorways) {
    if (beyond === 'hard' && height === undefined) reading.note(beyondTaken(name));
  }
  return read(doorways);
}

function edgeDoorwaysOf(part: string, before: number, reading: Reading): readonly EdgeDoorway[] | undefined {
  const kind = BEYOND.exec(part);
  if (!kind) return undefined;
  const front = part.slice(0, kind.index).trim();
  const behind = part
    .slice(kind.index + kind[0].length)
    .replace(/\b(?:high|thick|tall|at)\b/gi, ' ')
    .replace(/^[\s,:]+|(?<![\s,])[\s,]+$/g, '');
  const named = NAME_IN_FRONT.exec(front);
  const counted = COUNT.exec(named ? front.slice(named[0].length) : front);
  const size = front
    .slice((named?.[0].length ?? 0) + (counted?.[0].length ?? 0))
    .replace(/\b(?:door(?:way)?s?|openings?|wide)\b/gi, ' ');
  const behindSize = named ? undefined : NAME_BEHIND.exec(size);
  const width = sizeOf(size, reading) ?? (behindSize ? sizeOf(behindSize[1] ?? '', reading) : undefined);
  const name = named?.[1] ?? (sizeOf(size, reading) === undefined ? behindSize?.[2]?.trim() : undefined);
  const height = behind === '' ? undefined : sizeOf(behind, reading);
  const beyond = KINDS.find(([pattern]) => pattern.test(kind[1] ?? ''))?.[1] ?? 'hard';
  if (width === undefined || width < LEAST_EDGE_WIDTH || width > MOST_EDGE_WIDTH) return undefined;
  if (behind !== '' && (height === undefined || height > MOST_HEIGHT)) return undefined;
  const count = Number(counted?.[1] ?? 1);
  if (count < 1) return undefined;
  return Array.from({ length: count }, (_, i) => {
    const number = count > 1 ? ` ${i + 1}` : '';
    return { name: name ? `${name}${number}` : `doorway ${before + i + 1}`, width, beyond, height };
  });
}

function sizeOf(text: string, reading: Reading): Length | undefined {
  const size = readLength(text, reading, reading.preferences.units === 'metric' ? 'mm' : 'in');
  return size.ok ? size.value : undefined;
}

// Stairs that get nosing: `12 x 36 in`, the number of steps and their width; `none`.

/** Steps with one nosing each. */
export interface ParsedStairs {
  readonly count: number;
  readonly width: Length;
}

const STEPS = /^(\d{1,2})\s*(?:x|×|\*|(?:steps?|stairs?|treads?|nosings?)(?:\s+of)?)\s*(.+)$/i;
const LEAST_STEP_WIDTH = inches(12);
const MOST_STEP_WIDTH = millimetres(5000);
const MOST_STEPS = 60;

/** Steps and their width; a bare number is in inches or millimeters. */
export function readStairs(text: string, reading: Reading): Read<ParsedStairs> {
  if (/^\s*(?:none|no|0|no stairs)\s*$/i.test(text)) return read({ count: 0, width: inches(0) });
  const match = STEPS.exec(text.trim());
  const metric = reading.preferences.units === 'metric';
  const width = match
    ? readLength((match[2] ?? '').replace(/\b(?:wide|each)\b/gi, ''), reading, metric ? 'mm' : 'in')
    : undefined;
  const count = Number(match?.[1] ?? 0);
  if (
    width?.ok &&
    width.value >= LEAST_STEP_WIDTH &&
    width.value <= MOST_STEP_WIDTH &&
    count >= 1 &&
    count <= MOST_STEPS
  )
    return read({ count, width: width.value });
  return unread(stairsUnread({ option: reading.option, got: text }, MOST_STEPS, metric ? '12 x 900 mm' : '12 x 36 in'));
}
