/** The rooms of an ask as a home: joined, ended and cut out as its doorways and things tell; Problems where they do not go together. */

import type { Problems } from '../../../src/chat/command.ts';
import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { DoorwayTrouble, Taken } from '../../../src/layout/doorways.ts';
import type { Region } from '../../../src/layout/floor.ts';
import { type Home, type HomeTrouble, homeOf } from '../../../src/layout/home-regions.ts';
import type { StandingTrouble } from '../../../src/layout/obstacles.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { DOORWAY_WRONG, STANDING_WRONG, wrong } from '../../../src/text/floor-problems-text.ts';
import { HOME_TAKEN } from '../../../src/text/home-text.ts';
import { wallLength } from '../../../src/units/geometry.ts';
import { ticks } from '../../../src/units/length.ts';
import { type Fixes, mended } from './home-mend.ts';
import { retoldDoorway, retoldStanding } from './home-retold.ts';
import type { PlanksAsk } from './rules.ts';

type HomeAsk = Pick<PlanksAsk, 'room' | 'doorways' | 'holes'>;

/** The home of an ask with notes on what was taken because it was not told. `typed` is by option; `rooms`: others than the told ones, walls moved. */
export function askedHome(
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
  const told = ask.doorways[doorway];
  const end = told?.sides[side];
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
    untold: () => DOORWAY_WRONG.untold(),
    slanted: () => DOORWAY_WRONG.slanted(room, wall),
    'too wide': () => DOORWAY_WRONG['too wide'](sayLength(told?.width ?? ticks(0), saying), room, wall, length),
    turned: () => DOORWAY_WRONG.turned(room),
    apart: () => DOORWAY_WRONG.apart(by === undefined ? undefined : sayLength(ticks(by), saying)),
    overlap: () => DOORWAY_WRONG.overlap(rooms?.[0] ?? '', rooms?.[1] ?? ''),
  }[why]();
  return wrong('doorways', told ? retoldDoorway(told, saying) : '', expected, fixes.doorways);
}

function standingProblem(
  { standing, why, other }: StandingTrouble,
  ask: HomeAsk,
  fixes: Fixes,
  saying: Saying,
): Problem {
  const told = ask.holes[standing];
  const names = ask.room.rooms.map(({ name }) => name);
  const named =
    ask.room.rooms.find(({ name }) => name.toLowerCase() === told?.room?.toLowerCase()) ?? ask.room.rooms[0];
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
  return wrong('holes', told ? retoldStanding(told, saying) : '', expected, fixes.holes);
}
