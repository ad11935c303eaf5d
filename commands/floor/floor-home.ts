/** The rooms of an ask as a home: joined, ended and cut out as its doorways and things tell; Problems where they do not go together. */

import { closest, distance } from 'fastest-levenshtein';
import type { Problems } from '../../src/chat/command.ts';
import { type Saying, sayLength } from '../../src/input/format.ts';
import type { Doorway, DoorwayTrouble, Taken } from '../../src/layout/doorways.ts';
import type { Region } from '../../src/layout/floor.ts';
import { type Home, type HomeTrouble, homeOf } from '../../src/layout/home-regions.ts';
import type { ParsedStanding, StandingTrouble } from '../../src/layout/obstacles.ts';
import type { Problem } from '../../src/reply/reply.ts';
import { DOORWAY_WRONG, STANDING_WRONG, wrong } from '../../src/text/floor-problems-text.ts';
import { HOME_TAKEN } from '../../src/text/home-text.ts';
import { wallLength } from '../../src/units/geometry.ts';
import { ticks } from '../../src/units/length.ts';
import type { PlanksAsk } from './floor-options.ts';

// Doorways and things of an ask mended in the words they were typed in: slips in rooms' names are put right,
// what can stop instead stops.

/** What to type for either option, where it can be mended without leaving anything out. */
interface Fixes {
  readonly doorways: string | undefined;
  readonly holes: string | undefined;
}

interface ReadLine {
  readonly room: { readonly rooms: readonly Region[] };
  readonly doorways: readonly Doorway[];
  readonly holes: readonly ParsedStanding[];
}

/** Troubles that come of where rooms lie: a doorway at which the floor stops places none. */
const PLACING = ['notGiven', 'turned', 'apart', 'overlap'];

/** Both options mended; `typed` is what was typed for them. */
function mended(
  { room: { rooms }, doorways, holes }: ReadLine,
  troubles: readonly HomeTrouble[],
  typed: ReadonlyMap<string, string>,
): Fixes {
  const names = rooms.map(({ name }) => name);
  return {
    doorways: eachMended(typed.get('doorways'), doorways.length, (part, i) => {
      const own = troubles.flatMap((trouble) =>
        trouble.about === 'doorway' && trouble.doorway === i ? [trouble.why] : [],
      );
      const ends = doorways[i]?.sides.map(({ room }) => room) ?? [];
      if (own.every((why) => why === 'no room'))
        return ends.reduce<string | undefined>((text, end) => renamed(text, end, names), part);
      return doorways[i]?.runsOn && own.every((why) => PLACING.includes(why)) ? `${part}, stops` : undefined;
    }),
    holes: eachMended(typed.get('holes'), holes.length, (part, i) => {
      const own = troubles.flatMap((trouble) =>
        trouble.about === 'standing' && trouble.standing === i ? [trouble.why] : [],
      );
      const room = holes[i]?.room;
      if (own.every((why) => why === 'no room')) return room === undefined ? part : renamed(part, room, names);
      const centred = holes[i]?.places.some(({ from }) => from === 'middle');
      if (own.every((why) => why === 'unplaced') && !centred) return `${part}, centred`;
      return names[0] !== undefined && own.every((why) => why === 'which room') ? `${part} of ${names[0]}` : undefined;
    }),
  };
}

/** Parts as they were typed, each mended; undefined where one cannot be. */
function eachMended(
  typed: string | undefined,
  count: number,
  mend: (part: string, index: number) => string | undefined,
): string | undefined {
  const parts = (typed ?? '').split(/[;\n]/).flatMap((part) => (part.trim() === '' ? [] : [part.trim()]));
  const each = parts.map(mend);
  return parts.length === count && !each.includes(undefined) ? each.join('; ') : undefined;
}

/** A text with a room's name put right wherever it stands; undefined where no room is near. */
function renamed(text: string | undefined, name: string, names: readonly string[]): string | undefined {
  const near = nearRoom(name, names);
  if (text === undefined || near === undefined) return undefined;
  const escaped = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return text.replace(new RegExp(`(?<![\\p{L}\\p{N}])${escaped}(?![\\p{L}\\p{N}])`, 'giu'), () => near);
}

/** A room's name is known by all but so many of its letters. */
const SLIPS = 2;

/** The room of a name, or the one that it is a slip or two away from. */
function nearRoom(typed: string, names: readonly string[]): string | undefined {
  if (names.length === 0) return undefined;
  const lower = typed.toLowerCase();
  const near = closest(
    lower,
    names.map((name) => name.toLowerCase()),
  );
  if (distance(lower, near) > Math.min(SLIPS, near.length / 2)) return undefined;
  return names.find((name) => name.toLowerCase() === near);
}

// Doorways and things as one would type them: for fixes, which tell the sound ones again.

/** A doorway with its places. */
export function doorwayAsTyped({ sides, width, depth, runsOn }: Doorway, saying: Saying): string {
  const [a, b] = sides;
  const places = sides.flatMap(({ room, wall, at }) => {
    if (wall === undefined) return [];
    const from = at === undefined ? '' : `${sayLength(at.distance, saying)} from the ${at.from} of `;
    return [`${from}wall ${wall} of ${room}`];
  });
  const parts = [`${a.room} to ${b.room}: ${sayLength(width, saying)}`, ...places, `${sayLength(depth, saying)} thick`];
  return [...parts, runsOn ? 'runs on' : 'stops'].join(', ');
}

/** A thing with its places; `room` where another one is meant. */
export function standingAsTyped({ name, across, up, places, room }: ParsedStanding, saying: Saying): string {
  const size = `${name.replace(/ \d+$/, '')} ${sayLength(across, saying)} x ${sayLength(up, saying)}`;
  const where = places.map((place) => {
    if (place.from === 'middle') return 'centred';
    const from = typeof place.from === 'number' ? `wall ${place.from}` : place.from;
    return `${sayLength(place.distance, saying)} from ${from}`;
  });
  return `${[size, ...where].join(', ')}${room === undefined ? '' : ` of ${room}`}`;
}

type HomeAsk = Pick<PlanksAsk, 'room' | 'doorways' | 'holes'>;

/** The home of an ask with notes on what was taken because it was not told. `typed` is by option; `rooms`: others than the told ones, walls moved. */
export function requestedHome(
  ask: HomeAsk,
  saying: Saying,
  typed: ReadonlyMap<string, string>,
  rooms: readonly Region[] = ask.room.rooms,
): (Home & { readonly assumed: readonly string[] }) | Problems {
  const home = homeOf(rooms, ask.doorways, ask.holes);
  if ('regions' in home) return { ...home, assumed: home.taken.map((taken) => sayTaken(taken, ask)) };
  const fixes = mended(ask, home.troubles, typed);
  const [first, ...more] = home.troubles.map((trouble) => problemOf(trouble, ask, fixes, saying));
  if (!first) throw new Error('a home without regions or troubles');
  return { problems: [first, ...more] };
}

function sayTaken(taken: Taken, ask: HomeAsk): string {
  if (taken.kind === 'turned') return HOME_TAKEN.turned(taken.room, taken.angle);
  const [a, b] = ask.doorways[taken.doorway]?.sides ?? [];
  const doorway = `${a?.room ?? ''} to ${b?.room ?? ''}`;
  if (taken.kind === 'unplaced') return HOME_TAKEN.unplaced(doorway, taken.room);
  return HOME_TAKEN[taken.kind](doorway, taken.room, taken.wall);
}

function problemOf(trouble: HomeTrouble, ask: HomeAsk, fixes: Fixes, saying: Saying): Problem {
  return trouble.about === 'doorway'
    ? doorwayProblem(trouble, ask, fixes, saying)
    : standingProblem(trouble, ask, fixes, saying);
}

function doorwayProblem(trouble: DoorwayTrouble, ask: HomeAsk, fixes: Fixes, saying: Saying): Problem {
  const { doorway, why, side, by, rooms } = trouble;
  const given = ask.doorways[doorway];
  const end = given?.sides[side];
  const named = ask.room.rooms.find(({ name }) => name.toLowerCase() === end?.room.toLowerCase());
  const room = named?.name ?? end?.room ?? '';
  const wall = end?.wall;
  const length =
    named && wall !== undefined && wall <= named.outline.length
      ? sayLength(wallLength(named.outline, wall - 1), saying)
      : '';
  const expected = {
    'no room': () => DOORWAY_WRONG['no room'](ask.room.rooms.map(({ name }) => name)),
    'one room': () => DOORWAY_WRONG['one room'](),
    'no wall': () => DOORWAY_WRONG['no wall'](room, named?.outline.length ?? 0),
    notGiven: () => DOORWAY_WRONG.notGiven(),
    slanted: () => DOORWAY_WRONG.slanted(room, wall),
    'too wide': () => DOORWAY_WRONG['too wide'](sayLength(given?.width ?? ticks(0), saying), room, wall, length),
    turned: () => DOORWAY_WRONG.turned(room),
    apart: () => DOORWAY_WRONG.apart(by === undefined ? undefined : sayLength(ticks(by), saying)),
    overlap: () => DOORWAY_WRONG.overlap(rooms?.[0] ?? '', rooms?.[1] ?? ''),
  }[why]();
  return wrong('doorways', given ? doorwayAsTyped(given, saying) : '', expected, fixes.doorways);
}

function standingProblem(
  { standing, why, other }: StandingTrouble,
  ask: HomeAsk,
  fixes: Fixes,
  saying: Saying,
): Problem {
  const given = ask.holes[standing];
  const names = ask.room.rooms.map(({ name }) => name);
  const named =
    ask.room.rooms.find(({ name }) => name.toLowerCase() === given?.room?.toLowerCase()) ?? ask.room.rooms[0];
  const expected = {
    'no room': () => STANDING_WRONG['no room'](names),
    'which room': () => STANDING_WRONG['which room'](names),
    'no wall': () => STANDING_WRONG['no wall'](named?.name ?? '', named?.outline.length ?? 0),
    'placed twice': () => STANDING_WRONG['placed twice'](),
    unplaced: () => STANDING_WRONG.unplaced(),
    outside: () => STANDING_WRONG.outside(named?.name ?? ''),
    overlap: () => STANDING_WRONG.overlap(ask.holes[other ?? -1]?.name ?? ''),
    parts: () => STANDING_WRONG.parts(),
  }[why]();
  return wrong('holes', given ? standingAsTyped(given, saying) : '', expected, fixes.holes);
}
