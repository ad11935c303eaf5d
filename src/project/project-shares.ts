/** Version 2 of a project: helpers, who had the whole of it, have shares. */

import { z } from 'zod';
import { LIMITS } from './limits.ts';
import { ROLES } from './may.ts';
import type { Migration } from './version.ts';

const helpersSchema = z.array(z.object({ person: z.string().min(16), role: z.enum(ROLES) }));

/** Each helper becomes the share of the same number. Throws where they cannot be read. */
export const withShares: Migration = ({ helpers, ...same }) => {
  const told = helpersSchema.parse(helpers).slice(0, LIMITS.shares);
  const shares = told.map(({ person, role }, i) => ({
    id: String(i + 1),
    what: 'project',
    role: role === 'owner' ? 'measure' : role,
    with: { person },
    at: 0,
    by: String(same.owner),
  }));
  return { ...same, version: 2, shares, given: shares.length };
};
