/** Puts the rooms, doorways and things of a request together as one home, or says what doesn't fit and how to fix it. */

import { closest, distance } from 'fastest-levenshtein';
import type { Problems } from '../../src/chat/command.ts';
import { type Saying, sayLength } from '../../src/input/format.ts';
import type { Doorway, DoorwayTrouble, Taken } from '../../src/layout/doorways.ts';
import type { Region } from '../../src/layout/floor.ts';
import {
  type Home,
  type HomeTrouble,
  homeOf,
  type ParsedStanding,
  type StandingTrouble,
} from '../../src/layout/home-regions.ts';
import type { Problem } from '../../src/reply/reply.ts';
import { DOORWAY_WRONG, STANDING_WRONG, wrong } from '../../src/text/floor-problems-text.ts';
import { HOME_TAKEN } from '../../src/text/home-text.ts';
import { wallLength } from '../../src/units/geometry.ts';
import { ticks } from '../../src/units/length.ts';
import type { PlanksAsk } from './floor-options.ts';

// Fixes keep the user's own words: a misspelled room name is corrected, a doorway that can't run on stops instead.

/** What to type for each option; undefined if it can't be fixed without dropping something. */
interface Fixes {
  readonly doorways: string | undefined;
  readonly holes: string | undefined;
}

interface ReadLine {
  readonly room: { readonly rooms: readonly Region[] };
  readonly doorways: readonly Doorway[];
  readonly holes: readonly ParsedStanding[];
}

/** These come from where rooms lie. A doorway where the floor stops doesn't position a room, so stopping there solves them. */
const PLACING = ['notGiven', 'turned', 'apart', 'overlap'];

/** `typed` is what was typed for the two options. */
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
      if (own.every((why) => why === 'unplaced') && !centred) return `${part}, centered`;
      return names[0] !== undefined && own.every((why) => why === 'which room') ? `${part} of ${names[0]}` : undefined;
    }),
  };
}

/** Undefined if any part can't be fixed. */
function eachMended(
  typed: string | undefined,
  count: number,
  mend: (part: string, index: number) => string | undefined,
): string | undefined {
  const parts = (typed ?? '').split(/[;\n]/).flatMap((part) => (part.trim() === '' ? [] : [part.trim()]));
  const each = parts.map(mend);
  return parts.length === count && !each.includes(undefined) ? each.join('; ') : undefined;
}

/** Undefined if no room has a name close to `name`. */
function renamed(text: string | undefined, name: string, names: readonly string[]): string | undefined {
  const near = nearRoom(name, names);
  if (text === undefined || near === undefined) return undefined;
  const escaped = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return text.replace(new RegExp(`(?<![\\p{L}\\p{N}])${escaped}(?![\\p{L}\\p{N}])`, 'giu'), () => near);
}

/** Letters that may be wrong in a room's name. */
const SLIPS = 2;

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

// Doorways and things written the way a user would type them, because a fix repeats those that were fine.

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

/** `room` is set where the thing isn't in the first room. */
export function standingAsTyped({ name, across, up, places, room }: ParsedStanding, saying: Saying): string {
  const size = `${name.replace(/ \d+$/, '')} ${sayLength(across, saying)} x ${sayLength(up, saying)}`;
  const where = places.map((place) => {
    if (place.from === 'middle') return 'centered';
    const from = typeof place.from === 'number' ? `wall ${place.from}` : place.from;
    return `${sayLength(place.distance, saying)} from ${from}`;
  });
  return `${[size, ...where].join(', ')}${room === undefined ? '' : ` of ${room}`}`;
}

type HomeAsk = Pick<PlanksAsk, 'room' | 'doorways' | 'holes'>;

/**
 * `typed` is by option; `rooms` replaces the requested rooms when walls have been moved. `assumed` notes what was filled in.
 */
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
