/** Doorways and things of an ask mended in the words they were typed in: slips in rooms' names are put right, what can stop instead stops. */

import { closest, distance } from 'fastest-levenshtein';
import type { Doorway } from '../../../src/layout/doorways.ts';
import type { Region } from '../../../src/layout/floor.ts';
import type { HomeTrouble } from '../../../src/layout/home-regions.ts';
import type { ToldStanding } from '../../../src/layout/obstacles.ts';

/** What to type for either option, where it can be mended without leaving anything out. */
export interface Fixes {
  readonly doorways: string | undefined;
  readonly holes: string | undefined;
}

interface Told {
  readonly room: { readonly rooms: readonly Region[] };
  readonly doorways: readonly Doorway[];
  readonly holes: readonly ToldStanding[];
}

/** Troubles that come of where rooms lie: a doorway at which the floor stops places none. */
const PLACING = ['untold', 'turned', 'apart', 'overlap'];

/** Both options mended; `typed` is what was typed for them. */
export function mended(
  { room: { rooms }, doorways, holes }: Told,
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
