/** Doorways and things of an ask mended so that they go together: slips in rooms' names are put right, what can stop instead stops, what cannot be is left out. */

import { closest, distance } from 'fastest-levenshtein';
import type { Region } from '../../../src/core/floor/floor.ts';
import type { Doorway } from '../../../src/core/home/doorway.ts';
import { type HomeTrouble, homeOf } from '../../../src/core/home/home.ts';
import type { ToldStanding } from '../../../src/core/home/standing.ts';
import type { Saying } from '../../../src/measure/say-length.ts';
import { retoldDoorway, retoldStanding } from './home-retold.ts';

/** What to type for either option. */
export interface Fixes {
  readonly doorways: string;
  readonly holes: string;
}

interface Told {
  readonly room: { readonly rooms: readonly Region[] };
  readonly doorways: readonly Doorway[];
  readonly holes: readonly ToldStanding[];
}

/** Troubles that come of where rooms lie: a doorway at which the floor stops places none. */
const PLACING = ['untold', 'turned', 'apart', 'overlap'];

/** The options mended, each step seen to be sound or mended again: every step leaves less that could be wrong. */
export function mended(told: Told, troubles: readonly HomeTrouble[], saying: Saying): Fixes {
  const { rooms } = told.room;
  let { doorways, holes } = told;
  let wrong = troubles;
  while (wrong.length > 0) {
    const now = wrong;
    const names = rooms.map(({ name }) => name);
    doorways = doorways.flatMap((one, i): Doorway[] => {
      const own = now.filter((trouble) => trouble.about === 'doorway' && trouble.doorway === i);
      if (own.length === 0) return [one];
      const named = withRooms(one, own, names);
      if (named) return [named];
      return one.runsOn && own.every(({ why }) => PLACING.includes(why)) ? [{ ...one, runsOn: false }] : [];
    });
    holes = holes.flatMap((one, i): ToldStanding[] => {
      const own = now.filter((trouble) => trouble.about === 'standing' && trouble.standing === i);
      if (own.length === 0) return [one];
      const [name] = names;
      const near = nearRoom(one.room ?? '', names);
      const all = (wanted: HomeTrouble['why']): boolean => own.every(({ why }) => why === wanted);
      if (near !== undefined && all('no room')) return [{ ...one, room: near }];
      if (all('unplaced') && one.places.every(({ from }) => from !== 'middle'))
        return [{ ...one, places: [...one.places, { from: 'middle' }] }];
      return name !== undefined && all('which room') ? [{ ...one, room: name }] : [];
    });
    const home = homeOf(rooms, doorways, holes);
    wrong = 'troubles' in home ? home.troubles : [];
  }
  return {
    doorways: doorways.map((one) => retoldDoorway(one, saying)).join('; ') || 'none',
    holes: holes.map((one) => retoldStanding(one, saying)).join('; ') || 'none',
  };
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

/** A doorway between rooms that there are, where its troubles are slips in their names alone. */
function withRooms(doorway: Doorway, own: readonly HomeTrouble[], names: readonly string[]): Doorway | undefined {
  if (!own.every(({ why }) => why === 'no room')) return undefined;
  const [one, other] = doorway.sides.map(({ room }) => nearRoom(room, names));
  if (one === undefined || other === undefined || one === other) return undefined;
  return {
    ...doorway,
    sides: [
      { ...doorway.sides[0], room: one },
      { ...doorway.sides[1], room: other },
    ],
  };
}
