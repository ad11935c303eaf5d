/** What of an answer a project keeps: its rooms that are new, and its plank and rules where none are picked. */

import type { Context } from '../../../src/bot/command.ts';
import { parseLine } from '../../../src/bot/grammar.ts';
import { meaningsOf } from '../../../src/bot/pick.ts';
import { readRoomsApart } from '../../../src/measure/room-apart.ts';
import { LIMITS } from '../../../src/project/limits.ts';
import type { Content, KeptAsk } from '../../../src/project/project.ts';
import { inScope, type Rooms, roomNamed, roomsText, withRoom } from '../../../src/project/room.ts';
import type { Problem } from '../../../src/reply/problem.ts';
import { CHANGED, PROJECT } from '../../../src/words/project.ts';
import { tooManyKept } from '../../../src/words/project-problems.ts';

/** Options that are told for one answer and picked for none. */
const OF_ONE_ANSWER = ['room', 'planks', 'only', 'readings', 'damage', 'area', 'found', 'walls'];

export type KeepStep =
  | {
      readonly parts: Pick<Content, 'rooms' | 'picks' | 'kept'>;
      readonly said: readonly string[];
      readonly stays: readonly string[];
    }
  | { readonly problem: Problem };

/** Keeps an answer in a project. Pure. */
export function keepStep({ rooms, picks, kept }: Content, ask: KeptAsk, context: Context): KeepStep {
  const others = kept.filter((one) => one.ask !== ask.ask);
  if (others.length >= LIMITS.kept) return { problem: tooManyKept(LIMITS.kept) };
  const said = [CHANGED.kept(ask.headline)];
  const stays: string[] = [];
  const parsed = parseLine(ask.ask, context.commands, context.habits);
  const told = parsed.ok ? parsed.told : new Map<string, string>();
  const withRooms = keepRooms(rooms, told.get('room'), context, said, stays);
  const next = new Map(Object.entries(picks));
  for (const [option, text] of told) {
    if (!parsed.ok || OF_ONE_ANSWER.includes(option) || text.length > LIMITS.pick) continue;
    const key = meaningsOf(option, context.commands).length > 1 ? `${parsed.command.name} ${option}` : option;
    const before = next.get(key) ?? next.get(option);
    if (before === undefined && next.size < LIMITS.picks) {
      next.set(key, text);
      said.push(CHANGED.pick(key, text));
    } else if (before !== undefined && before !== text) stays.push(PROJECT.keptStays(key, before));
  }
  return { parts: { rooms: withRooms, picks: Object.fromEntries(next), kept: [...others, ask] }, said, stays };
}

function keepRooms(
  rooms: Rooms,
  told: string | undefined,
  { habits }: Context,
  said: string[],
  stays: string[],
): Rooms {
  const reading = { option: 'room', habits, note: () => undefined };
  const apart = told === undefined ? undefined : readRoomsApart(told, reading);
  if (!apart?.ok) return rooms;
  let after = rooms;
  for (const { name, text } of apart.value) {
    const before = roomNamed(after, name);
    if (before && before.text !== text) stays.push(PROJECT.roomStays(before.name));
    if (before || after.length >= LIMITS.rooms || text.length > LIMITS.room) continue;
    const more = withRoom(after, { name, text, notes: [], inScope: true });
    if (roomsText(inScope(more)).length > LIMITS.roomsTold) continue;
    after = more;
    said.push(CHANGED.roomAdded(name, text));
  }
  return after;
}
