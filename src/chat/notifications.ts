/** News shown once, before the next answer: waits that are over, walls to measure, accounts linked. */

import type { ProjectAccess } from '../accounts/account-access.ts';
import { fullName } from '../input/command-shape.ts';
import { sayLength } from '../input/format.ts';
import { hostZone, sayMoment } from '../input/moment.ts';
import { DEFAULT_PREFERENCES, type Preferences, type Units } from '../input/reading.ts';
import { outlineOf, unitsGiven, wallsOf } from '../input/rooms/measure-wall.ts';
import type { Question } from '../project/measurements.ts';
import type { Person } from '../project/person.ts';
import type { Project } from '../project/project.ts';
import { DAY, may } from '../project/project-limits.ts';
import { dueReminders, inScope, type Reminder, roomNamed } from '../project/project-room.ts';
import type { Block } from '../reply/reply.ts';
import { type KeyValueStore, Outage } from '../storage/types.ts';
import { accountName } from '../text/answer-text.ts';
import { MEASURE } from '../text/project-text.ts';
import { LINK } from '../text/sharing-text.ts';
import { PROGRESS } from '../text/sheets-text.ts';
import type { Command } from './command.ts';
import type { Ports } from './ports.ts';
import type { UserState } from './user-state.ts';

/** A question as shown: its text, where the answer is saved, an example length, and the line that answers it. */
interface OpenQuestion {
  readonly id: string;
  readonly question: Question;
  readonly label: string;
  readonly kept?: string;
  readonly example: string;
  line(text: string): string;
}

/** The open questions the viewer may see; questions about walls that no longer exist are left out. */
export function openQuestions({ measures, rooms }: Pick<Project, 'measures' | 'rooms'>, preferences: Preferences) {
  return measures.open.flatMap((question): OpenQuestion[] => {
    const room = roomNamed(rooms, question.room);
    const units = room ? unitsGiven(room.text, preferences) : preferences.units;
    const walls = room && question.wall !== undefined ? outlineOf(room, preferences) : undefined;
    const length = walls && wallsOf(walls)[(question.wall ?? 0) - 1];
    if (walls && length === undefined) return [];
    const kept = length === undefined ? undefined : sayLength(length, { units, decimal: preferences.decimal });
    return [
      {
        id: question.id,
        question,
        label: MEASURE.question(question),
        ...(kept !== undefined && { kept }),
        example: kept ?? lengthLike(units, preferences),
        line: (text) => `project measure question: ${question.id}, do: ${text}`,
      },
    ];
  });
}

function lengthLike(units: Units, { decimal }: Preferences): string {
  return units === 'metric' ? `2${decimal}44 m` : `8' 1/4"`;
}

/** In the project owner's units. Throws Outage. */
export async function questionsAt(access: ProjectAccess): Promise<readonly OpenQuestion[]> {
  const [project, settings] = [await access.inUse(), await access.ownersSettings()];
  const units = settings?.units ?? DEFAULT_PREFERENCES.units;
  const decimal = settings?.decimal ?? DEFAULT_PREFERENCES.decimal;
  return project ? openQuestions(project, { ...DEFAULT_PREFERENCES, units, decimal }) : [];
}

// Reminders that a wait is over, each shown once: with the next answer, or pushed by a platform.

/** Rooms whose waits for a stage end together share a reminder. */
interface Due {
  /** Stable for the same waits. */
  readonly key: string;
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly due: number;
}

/** Longer than any wait. */
const REMEMBERED = 60 * DAY;

/** Waits only count in rooms that are part of the job. */
type Waiting = Pick<Project, 'stages' | 'rooms'>;

/** Everything due by now, whether or not it was shown. */
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

/** Those this account hasn't seen. Each is returned to exactly one caller. Throws Outage. */
async function unsentDue(
  project: Pick<Project, 'id'> & Waiting,
  via: string,
  kept: KeyValueStore,
  now: number,
): Promise<readonly Due[]> {
  const notGiven: Due[] = [];
  for (const one of dueIn(project, now)) {
    if (await kept.claim(`reminder:${project.id}:${via}:${one.key}`, REMEMBERED)) notGiven.push(one);
  }
  return notGiven;
}

export function dueBlocks(due: readonly Due[]): readonly Block[] {
  return due.length === 0 ? [] : [{ kind: 'checklist', title: PROGRESS.dueTitle, items: due.map(({ text }) => text) }];
}

/** How long a newly linked account is news. */
const LINKED_NEWS = 7 * DAY;

/**
 * What the user hasn't seen yet and this command doesn't show anyway. Never throws on an outage: it is shown another
 * time.
 */
export async function notifications(
  command: Command,
  held: UserState,
  access: ProjectAccess,
  { store }: Pick<Ports, 'store'>,
): Promise<readonly Block[]> {
  if (!store) return [];
  try {
    return [
      ...(await linked(await access.person(), access, store.kept)),
      ...(await toMeasure(command, held, access, store.kept)),
      ...(await waits(command, held, access, store.kept)),
    ];
  } catch (cause) {
    if (!(cause instanceof Outage)) throw cause;
    return [];
  }
}

async function waits(
  command: Command,
  { project }: UserState,
  access: ProjectAccess,
  kept: KeyValueStore,
): Promise<readonly Block[]> {
  if (!project || fullName(command) === 'project progress') return [];
  return dueBlocks(await unsentDue(project, access.via, kept, access.now()));
}

/** The owner's questions for a helper who measures, a helper's questions for everyone else who does. */
async function toMeasure(
  command: Command,
  { project, share, preferences }: UserState,
  access: ProjectAccess,
  kept: KeyValueStore,
): Promise<readonly Block[]> {
  if (!project || (share && !may(share.role, 'measure')) || fullName(command) === 'project measure') return [];
  const items: string[] = [];
  for (const { id, question, kept: now, example } of openQuestions(project, preferences)) {
    if (question.by?.helper === share?.id) continue;
    if (await kept.claim(`question:${project.id}:${access.via}:${id}`, REMEMBERED))
      items.push(MEASURE.item(question, now, MEASURE.tell(question, example)));
  }
  return items.length === 0 ? [] : [{ kind: 'checklist', title: MEASURE.openTitle, items }];
}

/** Tells people about accounts linked to theirs, so that it never happens without their knowing. */
async function linked(me: Person | undefined, access: ProjectAccess, kept: KeyValueStore): Promise<readonly Block[]> {
  const items: string[] = [];
  for (const { account, at } of me?.linked ?? []) {
    if (account === access.via || access.now() - at > LINKED_NEWS || !me?.accounts.includes(account)) continue;
    if (!(await kept.claim(`linked:${access.via}:${account}:${at}`, REMEMBERED))) continue;
    const platform = accountName(account.slice(0, account.indexOf(':')));
    items.push(LINK.news(platform, sayMoment(at, hostZone()), me.accounts.indexOf(account) + 1));
  }
  return items.length === 0 ? [] : [{ kind: 'checklist', title: LINK.newTitle, items }];
}
