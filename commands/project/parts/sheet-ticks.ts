/** What of a project can be ticked off, each with the line that ticks it and the one that takes it back. */

import type { Habits } from '../../../src/input/reading.ts';
import type { Tally } from '../../../src/project/needs.ts';
import type { Signed } from '../../../src/project/project-limits.ts';
import type { Shopping } from '../../../src/project/purchases.ts';
import { isPast, type RoomProgress } from '../../../src/project/room-progress.ts';
import type { Tick } from '../../../src/reply/job-sheet.ts';
import { STAGE_IN } from '../../../src/text/progress-text.ts';
import { SHEETS } from '../../../src/text/sheets-text.ts';
import { STAGE_NAMES } from '../../../src/text/shopping-text.ts';
import { sayAmount, sayLeft, typeable } from './shopping-say.ts';

/** Everything on the list: what is left to buy, and what is bought. */
export function shoppingTicks(tallies: readonly Tally[], shopping: Shopping, habits: Habits): readonly Tick[] {
  return tallies
    .filter(({ left, bought }) => left > 0 || bought > 0)
    .map((one) => {
      const ticked = one.left === 0;
      const last = shopping.bought.filter(({ item }) => item === one.item).at(-1);
      const name = typeable(one.label);
      return {
        key: one.item,
        label: ticked ? `${one.label}: ${sayAmount(one, boughtPackages(one), habits)}` : sayLeft(one, habits),
        group: STAGE_NAMES[one.stage],
        ticked,
        ...(ticked && last && { at: last.at, ...byOf(last.by) }),
        ask: `project shopping bought all ${name}`,
        undo: `project shopping untick ${name}`,
      };
    });
}

function boughtPackages({ bought, package: sold }: Tally): number {
  return sold ? Math.round(bought / sold.size) : bought;
}

/** The helper who ticked, by name or by number; nothing where the owner did. */
function byOf(by: Signed | undefined): Pick<Tick, 'by'> {
  return by ? { by: by.name ?? SHEETS.helper(by.helper) } : {};
}

/** Every stage of every room. */
export function stageTicks(rooms: readonly RoomProgress[]): readonly Tick[] {
  return rooms.flatMap(({ room, stages }) =>
    stages.map((one) => {
      const ticked = isPast(one);
      return {
        key: `${room}/${one.stage}`,
        label: STAGE_IN[one.stage],
        group: room,
        ticked,
        ...(ticked && one.mark && { at: one.mark.at, ...byOf(one.mark.by) }),
        ask: `project progress done ${one.stage} ${room}`,
        undo: `project progress undo ${one.stage} ${room}`,
      };
    }),
  );
}
