/** Who may do what with a project. */

import { z } from 'zod';

/** What can be done: read it; tick off shopping and stages; write notes; tell rooms and picks; keep answers; tell what was spent; rename, archive, delete, share. */
export const DEEDS = ['look', 'tick', 'note', 'measure', 'keep', 'spend', 'own'] as const;
export type Deed = (typeof DEEDS)[number];

export const ROLES = ['owner', 'measure', 'tick', 'look'] as const;
export type Role = (typeof ROLES)[number];

export const roleSchema = z.enum(ROLES);

const ALLOWED: Readonly<Record<Role, readonly Deed[]>> = {
  owner: DEEDS,
  measure: ['look', 'tick', 'note', 'measure', 'keep'],
  tick: ['look', 'tick', 'note'],
  look: ['look'],
};

/** Whether somebody of this role may do this; nobody without a role may do anything. */
export function may(role: Role | undefined, deed: Deed): boolean {
  return role !== undefined && ALLOWED[role].includes(deed);
}
