/** Limits on what one person may keep, roles and permissions, and other small project types. */

import { z } from 'zod';

export const DAY = 24 * 3600 * 1000;

export const LIMITS = {
  projects: 20,
  /** Accounts linked to one person. */
  accounts: 10,
  /** Including deleted ones that can still be restored. */
  projectsDeleted: 60,
  rooms: 50,
  picks: 40,
  kept: 50,
  notes: 20,
  changes: 20,
  /** Characters of their stored patches in total. */
  changesSize: 60_000,
  name: 60,
  room: 500,
  /** All rooms in scope: they have to fit into one request along with everything else. */
  roomsGiven: 2500,
  shares: 30,
  /** Shared projects per person. */
  sharedWith: 30,
  /** The owner's name for a helper. */
  label: 40,
  note: 300,
  pick: 500,
  ask: 4000,
  headline: 500,
  /** Days during which a deleted project can be restored. */
  restore: 30,
} as const;

// The helper who did something: the number of their share, and the owner's name for them.

/** Absent for the owner. */
export const signedSchema = z
  .object({ helper: z.string().min(1).max(6), name: z.string().min(1).max(LIMITS.label).optional() })
  .readonly();

export type Signed = z.infer<typeof signedSchema>;

export const PAYERS = ['self', 'insurer', 'landlord'] as const;

export const payerSchema = z.enum(PAYERS);

/** Anyone who pays besides the user. */
export const otherPayerSchema = payerSchema.exclude(['self']);

export type OtherPayer = z.infer<typeof otherPayerSchema>;
export type Payer = z.infer<typeof payerSchema>;

/**
 * look: read it. tick: check off shopping and stages. note: write notes. measure: enter rooms and picks. keep: save
 * answers. spend: enter spending. own: rename, archive, delete, share.
 */
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

/** Without a role nothing is allowed. */
export function may(role: Role | undefined, permission: Permission): boolean {
  return role !== undefined && ALLOWED[role].includes(permission);
}

/**
 * The user's own if any amount is in it or there are no amounts; otherwise the most common one, the first of several.
 */
export function projectCurrency(amounts: readonly { readonly currency: string }[], own: string): string {
  const counts = new Map<string, number>();
  for (const { currency } of amounts) counts.set(currency, (counts.get(currency) ?? 0) + 1);
  if (counts.size === 0 || counts.has(own)) return own;
  const most = Math.max(...counts.values());
  return [...counts].find(([, count]) => count === most)?.[0] ?? own;
}
