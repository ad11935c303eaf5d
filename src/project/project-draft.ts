/** The draft of a project, as it was before version 1: rooms with a size, one plank, a flag for the archive. */

import { z } from 'zod';
import { emptyParts } from './parts.ts';
import type { Migration } from './version.ts';

const draftSchema = z.object({
  id: z.string(),
  owner: z.string(),
  name: z.string(),
  archived: z.boolean(),
  rooms: z.array(z.object({ name: z.string(), size: z.string() })),
  plank: z.string().optional(),
});

/** Version 1 of the draft. Throws where it is none. */
export const projectFromDraft: Migration = (record) => {
  const { id, owner, name, archived, rooms, plank } = draftSchema.parse(record);
  return {
    version: 1,
    id,
    owner,
    name,
    helpers: [],
    state: { kind: archived ? 'archived' : 'active' },
    rooms: rooms.map(({ name: room, size }) => ({ name: room, text: size, notes: [], inScope: true })),
    picks: plank === undefined ? {} : { plank },
    kept: [],
    ...emptyParts(),
    count: 0,
    history: [],
    undone: [],
  };
};
