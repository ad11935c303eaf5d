/** How much one person may keep. */

import { z } from 'zod';

export const DAY = 24 * 3600 * 1000;

export const LIMITS = {
  projects: 20,
  /** Accounts linked to one person. */
  accounts: 10,
  /** With those deleted that can still be brought back. */
  projectsDeleted: 60,
  rooms: 50,
  picks: 40,
  kept: 50,
  /** Notes of one room. */
  notes: 20,
  /** Changes that can be taken back. */
  changes: 20,
  /** Characters of what they are kept as, together. */
  changesSize: 60_000,
  name: 60,
  /** One room as told. */
  room: 500,
  /** All rooms in scope: they must fit into one ask beside everything else. */
  roomsGiven: 2500,
  /** Shares of one project. */
  shares: 30,
  /** Projects of others that one person is let into. */
  sharedWith: 30,
  /** What the owner calls a helper. */
  label: 40,
  note: 300,
  pick: 500,
  ask: 4000,
  headline: 500,
  /** Days for which a deleted project can be brought back. */
  restore: 30,
} as const;

// Which helper did something: the number of their share, and the name that the owner chose for them.

/** Absent on what the owner did. */
export const signedSchema = z
  .object({ helper: z.string().min(1).max(6), name: z.string().min(1).max(LIMITS.label).optional() })
  .readonly();

export type Signed = z.infer<typeof signedSchema>;

// Who pays for something.

export const PAYERS = ['self', 'insurer', 'landlord'] as const;

export const payerSchema = z.enum(PAYERS);

/** Whoever pays besides the asker. */
export const otherPayerSchema = payerSchema.exclude(['self']);

export type OtherPayer = z.infer<typeof otherPayerSchema>;
export type Payer = z.infer<typeof payerSchema>;

// Who may do what with a project.

/** What can be done: read it; tick off shopping and stages; write notes; tell rooms and picks; keep answers; tell what was spent; rename, archive, delete, share. */
export const PERMISSIONS = ['look', 'tick', 'note', 'measure', 'keep', 'spend', 'own'] as const;
export type Permission = (typeof PERMISSIONS)[number];

export const ROLES = ['owner', 'measure', 'tick', 'look'] as const;
export type Role = (typeof ROLES)[number];

export const roleSchema = z.enum(ROLES);

const ALLOWED: Readonly<Record<Role, readonly Permission[]>> = {
  owner: PERMISSIONS,
  measure: ['look', 'tick', 'note', 'measure', 'keep'],
  tick: ['look', 'tick', 'note'],
  look: ['look'],
};

/** Whether somebody of this role may do this; nobody without a role may do anything. */
export function may(role: Role | undefined, permission: Permission): boolean {
  return role !== undefined && ALLOWED[role].includes(permission);
}

// The currency that a project is summed up in.

/** The asker's own where any amount is in it, or there is none; else the one that most amounts are in, the first of several. */
export function projectCurrency(amounts: readonly { readonly currency: string }[], own: string): string {
  const counts = new Map<string, number>();
  for (const { currency } of amounts) counts.set(currency, (counts.get(currency) ?? 0) + 1);
  if (counts.size === 0 || counts.has(own)) return own;
  const most = Math.max(...counts.values());
  return [...counts].find(([, count]) => count === most)?.[0] ?? own;
}
