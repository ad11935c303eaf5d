/** Where rooms stand: a table of rooms, what to do next in each, what was left undone, and waits that are over. */

import { dueBlocks, dueIn } from '../../src/chat/notifications.ts';
import { sayMoment } from '../../src/input/moment.ts';
import type { Project } from '../../src/project/project.ts';
import {
  beforeLaying,
  inScope,
  isPast,
  progressOf,
  type RoomProgress,
  type StageProgress,
  sameName,
} from '../../src/project/project-room.ts';
import type { Action, Block } from '../../src/reply/reply.ts';
import { SHARE, saySigned } from '../../src/text/sharing-text.ts';
import { PROGRESS, STAGE_ITEMS } from '../../src/text/sheets-text.ts';

const HOUR = 3_600_000;
const MOST_LISTS = 6;
const MOST_ACTIONS = 20;
const MOST_SIGNED = 10;

/** Every room that is part of the job. */
export function roomsProgress({ rooms, stages }: Project, now: number): readonly RoomProgress[] {
  return inScope(rooms).map(({ name }) => progressOf(name, stages, now));
}

export function progressBlocks(
  rooms: readonly RoomProgress[],
  project: Project,
  now: number,
  zone: string,
): readonly Block[] {
  return [
    ...dueBlocks(dueIn(project, now)),
    ...signedBlock(rooms, project, zone),
    {
      kind: 'table',
      section: 'list',
      title: PROGRESS.title,
      columns: PROGRESS.columns,
      rows: rooms.map((room) => [
        room.room,
        PROGRESS.doneOf(room.stages.filter(isPast).length, room.stages.length),
        room.next ? PROGRESS.nextIs(room.next.stage) : PROGRESS.finished,
        waitsFor(room, now, zone),
      ]),
    },
    ...laterBlock(rooms, now, zone),
    ...behindBlock(rooms),
    ...nextLists(rooms),
  ];
}

/** What's known to be wrong or still waiting before the next stage. For laying, unchecked stages count too. */
function waitsFor(room: RoomProgress, now: number, zone: string): string {
  const { next, stages } = room;
  if (!next) return '';
  const at = stages.indexOf(next);
  const needed = next.stage === 'lay' ? beforeLaying(room) : [];
  const before = stages.slice(0, at).filter((one) => !isPast(one) && (one.state !== 'open' || needed.includes(one)));
  return [...before, next]
    .map((one) => wayOf(one, now, zone, needed.includes(one)))
    .filter((way) => way !== '')
    .join('; ');
}

function wayOf({ stage, state, mark }: StageProgress, now: number, zone: string, needed: boolean): string {
  if (state === 'blocked') return PROGRESS.blocked(stage);
  if (state === 'over') return PROGRESS.over(stage);
  if (state === 'waiting') {
    const until = mark?.until;
    if (until === undefined) return PROGRESS.waitingOn(stage);
    return PROGRESS.waiting(stage, sayMoment(until, zone), PROGRESS.hours((until - now) / HOUR));
  }
  return needed ? PROGRESS.unchecked(stage) : '';
}

/** Stages after the next one that are already waiting or wrong, so that they aren't forgotten. */
function laterBlock(rooms: readonly RoomProgress[], now: number, zone: string): readonly Block[] {
  const ways = new Map<string, string[]>();
  for (const { room, stages, next } of rooms) {
    for (const one of next ? stages.slice(stages.indexOf(next) + 1) : []) {
      const way = isPast(one) ? '' : wayOf(one, now, zone, false);
      if (way !== '') ways.set(way, [...(ways.get(way) ?? []), room]);
    }
  }
  const facts = [...ways].map(([value, names]) => ({ label: names.join(', '), value }));
  return facts.length === 0 ? [] : [{ kind: 'facts', section: 'list', title: PROGRESS.laterTitle, facts }];
}

function behindBlock(rooms: readonly RoomProgress[]): readonly Block[] {
  const items = rooms.flatMap(({ room, behind }) => (behind.length > 0 ? [PROGRESS.behind(room, behind)] : []));
  return items.length === 0 ? [] : [{ kind: 'checklist', section: 'list', title: PROGRESS.behindTitle, items }];
}

/** Rooms at the same stage share one list. */
function nextLists(rooms: readonly RoomProgress[]): readonly Block[] {
  const stages = [...new Set(rooms.flatMap(({ next }) => (next ? [next.stage] : [])))];
  return stages.slice(0, MOST_LISTS).map((stage) => {
    const at = rooms.filter(({ next }) => next?.stage === stage).map(({ room }) => room);
    return {
      kind: 'checklist',
      section: 'checklist',
      title: PROGRESS.todoTitle(at.join(', '), stage),
      items: STAGE_ITEMS[stage],
    };
  });
}

export function tickActions(rooms: readonly RoomProgress[]): readonly Action[] {
  return rooms.slice(0, MOST_ACTIONS).flatMap(({ room, next }) =>
    next
      ? [
          {
            label: PROGRESS.tick(room, next.stage),
            ask: `project progress done ${next.stage} ${room}`,
            among: PROGRESS.among,
          },
        ]
      : [],
  );
}

/** Ticks by helpers, with who and when, the latest first. */
function signedBlock(rooms: readonly RoomProgress[], { stages }: Project, zone: string): readonly Block[] {
  const shown = stages.marks.filter(({ by, room }) => by && rooms.some((one) => sameName(one.room, room)));
  const facts = shown
    .toSorted((one, other) => other.at - one.at)
    .slice(0, MOST_SIGNED)
    .map(({ room, stage, at, by }) => ({
      label: by ? saySigned(by) : '',
      value: `${PROGRESS.next(room, stage)}, ${sayMoment(at, zone)}`,
    }));
  return facts.length === 0 ? [] : [{ kind: 'facts', section: 'details', title: SHARE.ticked, facts }];
}
