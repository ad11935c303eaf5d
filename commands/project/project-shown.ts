/** A project on one page: rooms, picks, saved answers, and what to do next. */

import type { Project } from '../../src/project/project.ts';
import { inScope } from '../../src/project/project-room.ts';
import type { Action, Block } from '../../src/reply/reply.ts';
import { NEXT, PROJECT } from '../../src/text/project-text.ts';
import { savedTable } from './saved-today.ts';

export function projectHeadline({ name, rooms }: Project): string {
  return PROJECT.shown(name, rooms.length, rooms.length - inScope(rooms).length);
}

/** Leaves out empty parts. */
export function pageOf(project: Project): readonly Block[] {
  return [roomTable(project.rooms), pickFacts(project.picks), savedTable(project)].flat();
}

export function roomTable(rooms: Project['rooms']): readonly Block[] {
  if (rooms.length === 0) return [];
  const rows = rooms.map(({ name, text, floor = '', openings = '', notes, inScope: within }) => [
    within ? name : PROJECT.roomOut(name),
    text,
    floor,
    openings,
    notes.length > 1 ? notes.map((note, i) => `${i + 1}. ${note}`).join('; ') : notes.join(),
  ]);
  const used = PROJECT.roomColumns.map((_, column) => column < 2 || rows.some((row) => row[column] !== ''));
  const cells = (row: readonly string[]): readonly string[] => row.filter((_, column) => used[column]);
  return [{ kind: 'table', title: PROJECT.rooms, columns: cells(PROJECT.roomColumns), rows: rows.map(cells) }];
}

export function pickFacts(picks: Project['picks']): readonly Block[] {
  const facts = Object.entries(picks).map(([label, value]) => ({ label, value }));
  return facts.length > 0 ? [{ kind: 'facts', section: 'list', title: PROJECT.picks, facts }] : [];
}

export function nextProjectRequests({ rooms, picks }: Project): readonly Action[] {
  const ready = inScope(rooms).length > 0;
  return [
    ...(ready ? [] : [{ label: NEXT.addRoom, ask: 'project room' }]),
    ...(picks.plank === undefined ? [{ label: NEXT.pick, ask: 'project pick' }] : []),
    ...(ready && picks.plank === undefined ? [{ label: NEXT.example, ask: 'planks plank: example' }] : []),
    ...(ready && picks.plank !== undefined
      ? [
          { label: NEXT.planks, ask: 'planks' },
          { label: NEXT.shopping, ask: 'project shopping' },
          { label: NEXT.progress, ask: 'project progress' },
        ]
      : []),
  ];
}
