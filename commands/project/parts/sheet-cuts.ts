/** Cut lists as sheets: the pieces of one room, or of the doorways, as tables and one by one. */

import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import type { JobSheet, SawPiece } from '../../../src/reply/job-sheet.ts';
import type { Block, Reply } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { SAW } from '../../../src/text/drawing-text.ts';

/** The cuts of a room; those of doorways and stairs without one. Pieces are numbered anew. */
export function cutsSheet(room: string | undefined, told: readonly SawPiece[]): JobSheet {
  const pieces = told.map((piece, i) => ({ ...piece, no: i + 1 }));
  const title = room === undefined ? SAW.edgesTitle : SAW.title(room);
  return { key: 'cuts', ...(room !== undefined && { room }), title, reply: cutsReply(title, room, pieces), pieces };
}

function cutsReply(title: string, room: string | undefined, pieces: readonly SawPiece[]): Reply {
  const planks = pieces.filter(({ of }) => of === 'plank');
  const trim = pieces.filter(({ of }) => of === 'trim');
  const several = (list: readonly SawPiece[]): number => list.reduce((sum, { count = 1 }) => sum + count, 0);
  return {
    headline: SAW.headline(room ?? title, several(planks), several(trim)),
    blocks: [
      { kind: 'steps', title: SAW.steps.title, steps: SAW.steps.items },
      ...(planks.length > 0 ? [plankTable(planks)] : []),
      ...(trim.length > 0 ? [trimTable(trim)] : []),
    ],
    assumed: [],
    cautions: worded(cautionsFor('cutting')),
    sources: [],
    actions: [],
    audience: 'asker',
    data: { kind: 'cuts', pieces } as Reply['data'],
  };
}

function plankTable(pieces: readonly SawPiece[]): Block {
  return {
    kind: 'table',
    title: SAW.planks,
    columns: SAW.plankColumns,
    rows: pieces.map(({ no, place, what, count = 1, length, width = '', from, note = '' }) => [
      String(no),
      place,
      count > 1 ? SAW.times(count, what) : what,
      length,
      width,
      from,
      note,
    ]),
  };
}

function trimTable(pieces: readonly SawPiece[]): Block {
  return {
    kind: 'table',
    title: SAW.trim,
    columns: SAW.trimColumns,
    rows: pieces.map(({ no, place, what, length, left, right, from, note = '' }) => [
      String(no),
      place,
      what,
      length,
      left.said,
      right.said,
      from,
      note,
    ]),
  };
}
