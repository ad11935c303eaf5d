/** The token in a link that shares something: shown once, and known afterwards by its hash alone. */

import { createHash } from 'node:crypto';
import { z } from 'zod';
import type { Kept } from '../storage/types.ts';

/** Where a link leads. The project itself says whether it still does. */
export const leadSchema = z.object({ project: z.string() });

export type Lead = z.infer<typeof leadSchema>;

/** The SHA-256 of a token, in hexadecimal digits: the id of whoever holds the link. */
export function hashOf(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

/** Where the link of a hash leads; undefined where it leads nowhere. Throws Outage. */
export async function leadOf(kept: Kept, hash: string): Promise<Lead | undefined> {
  const read = leadSchema.safeParse(await kept.get(key(hash)));
  return read.success ? read.data : undefined;
}

/** Keeps where a link leads, for so many milliseconds, for good without them. Throws Outage. */
export async function keepLead(kept: Kept, hash: string, lead: Lead, milliseconds?: number): Promise<void> {
  await kept.set(key(hash), lead, milliseconds);
}

/** Removes what was kept of a link. Throws Outage. */
export async function dropLead(kept: Kept, hash: string): Promise<void> {
  await kept.delete(key(hash));
}

function key(hash: string): string {
  return `share:${hash}`;
}
