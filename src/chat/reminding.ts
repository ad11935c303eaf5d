/** Reminders of waits that are over, in words, and each told once: with the next answer here, or by a platform that calls on people. */

import { hostZone, sayMoment } from '../input/moment.ts';
import type { Project } from '../project/project.ts';
import { DAY } from '../project/project-limits.ts';
import { inScope, roomNamed } from '../project/project-room.ts';
import { dueReminders, type Reminder } from '../project/room-progress.ts';
import type { Block } from '../reply/reply.ts';
import type { Kept } from '../storage/types.ts';
import { PROGRESS } from '../text/progress-text.ts';

/** A reminder as it is told: rooms whose wait for one stage ended at one time share it. */
export interface Due {
  /** Stays the same for the same waits. */
  readonly key: string;
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly due: number;
}

/** How long a reminder that was told is remembered: longer than any wait. */
const REMEMBERED = 60 * DAY;

/** What of a project is looked at: waits count in rooms where the job is done. */
type Waiting = Pick<Project, 'stages' | 'rooms'>;

/** What is due in a project by now, told or not. */
export function dueIn({ stages, rooms }: Waiting, now: number): readonly Due[] {
  const all = dueReminders(stages, now).filter(({ room }) => roomNamed(inScope(rooms), room));
  const same = (one: Reminder, other: Reminder): boolean => one.stage === other.stage && one.due === other.due;
  const zone = hostZone();
  return all
    .filter((one, i) => all.findIndex((other) => same(one, other)) === i)
    .map((one) => {
      const group = all.filter((other) => same(one, other));
      const rooms = group.map(({ room }) => room).join(', ');
      const key = group.map((reminder) => reminder.key).join('|');
      return { key, text: PROGRESS.due(rooms, one.stage, sayMoment(one.due, zone)), due: one.due };
    });
}

/** Those that this account was not told yet: each is given to exactly one who asks for it. Throws Outage. */
export async function untoldDue(
  project: Pick<Project, 'id'> & Waiting,
  via: string,
  kept: Kept,
  now: number,
): Promise<readonly Due[]> {
  const untold: Due[] = [];
  for (const one of dueIn(project, now)) {
    if (await kept.claim(`reminder:${project.id}:${via}:${one.key}`, REMEMBERED)) untold.push(one);
  }
  return untold;
}

/** What is due, before everything else. */
export function dueBlocks(due: readonly Due[]): readonly Block[] {
  return due.length === 0 ? [] : [{ kind: 'checklist', title: PROGRESS.dueTitle, items: due.map(({ text }) => text) }];
}
