/** Doorways and things of an ask mended so that they go together: what can stop instead stops, what cannot be is left out. */

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
      return one.runsOn && own.every(({ why }) => PLACING.includes(why)) ? [{ ...one, runsOn: false }] : [];
    });
    holes = holes.flatMap((one, i): ToldStanding[] => {
      const own = now.filter((trouble) => trouble.about === 'standing' && trouble.standing === i);
      if (own.length === 0) return [one];
      const [name] = names;
      return name !== undefined && own.every(({ why }) => why === 'which room') ? [{ ...one, room: name }] : [];
    });
    const home = homeOf(rooms, doorways, holes);
    wrong = 'troubles' in home ? home.troubles : [];
  }
  return {
    doorways: doorways.map((one) => retoldDoorway(one, saying)).join('; ') || 'none',
    holes: holes.map((one) => retoldStanding(one, saying)).join('; ') || 'none',
  };
}
