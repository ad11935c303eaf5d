/** What stands in the lists of a page, told apart from what is ticked in them: a page with other lists is stale. */

import { createHash } from 'node:crypto';
import type { JobSheet, Sheets } from '../../reply/job-sheet.ts';

/** A short name of what stands in the lists. */
export function listsOf({ sheets }: Sheets): string {
  const listed = sheets.map(({ key, room, reply, ticks = [], pieces = [] }: JobSheet) => [
    key,
    room,
    // What is left is told in these headlines, and changes with every tick.
    key === 'shopping' || key === 'checklist' ? '' : reply.headline,
    ticks.map((tick) => tick.key).sort(),
    pieces.map((piece) => [piece.place, piece.ticks]),
  ]);
  return createHash('sha256').update(JSON.stringify(listed)).digest('base64url').slice(0, 12);
}
