/** Shares: what is shared with whom, their role, and until when. The only place that decides about helpers. */

import { z } from 'zod';
import { LIMITS, may, type Permission, type Role, type Signed } from './project-limits.ts';

/** What can be shared; a guide or cuts may be limited to one room. */
export const SHARED = ['project', 'shopping', 'guide', 'cuts', 'tearout', 'checklist'] as const;
export type Shared = (typeof SHARED)[number];

export const HELPING = ['look', 'tick', 'measure'] as const;
export type Helping = (typeof HELPING)[number];

const withSchema = z.union([
  /** SHA-256 of the link's token, in hex. */
  z.strictObject({ link: z.string().regex(/^[0-9a-f]{64}$/) }),
  z.strictObject({ person: z.string().min(16) }),
]);

const shareSchema = z
  .object({
    /** Counted from 1 over the project's lifetime and never reused. */
    id: z.string().regex(/^[1-9]\d{0,5}$/),
    what: z.enum(SHARED),
    room: z.string().min(1).max(LIMITS.name).optional(),
    role: z.enum(HELPING),
    /** Milliseconds since 1970; without it, until stopped. */
    until: z.number().optional(),
    with: withSchema,
    /** The owner's name for them. */
    label: z.string().min(1).max(LIMITS.label).optional(),
    at: z.number(),
    by: z.string(),
    /** What they did last. */
    last: z
      .object({ at: z.number(), said: z.string().max(LIMITS.note) })
      .readonly()
      .optional(),
  })
  .readonly();

export const sharesSchema = z.array(shareSchema).max(LIMITS.shares).readonly();

export type Share = z.infer<typeof shareSchema>;

/** Who accesses a project: a person, or the holder of a link (by the SHA-256 of its token). */
export type Who = { readonly person: string } | { readonly link: string };

/** Someone's relation to a project; for a helper, their share. */
interface Standing {
  readonly role: Role;
  readonly share?: Share;
}

/** The fields of a project this needs. */
interface Owned {
  readonly owner: string;
  readonly shares: readonly Share[];
  readonly state: { readonly kind: string };
}

export function isOver({ until }: Share, now: number): boolean {
  return until !== undefined && until <= now;
}

export function isWith({ with: one }: Share, who: Who): boolean {
  return 'link' in one ? 'link' in who && one.link === who.link : 'person' in who && one.person === who.person;
}

/**
 * Someone's current relation to a project; undefined for a stranger. Only the owner has access to a deleted project.
 */
export function standingOf({ owner, shares, state }: Owned, who: Who, now: number): Standing | undefined {
  if ('person' in who && who.person === owner) return { role: 'owner' };
  if (state.kind === 'deleted') return undefined;
  const share = shares.find((one) => isWith(one, who) && !isOver(one, now));
  return share && { role: share.role, share };
}

export function mayDo(standing: Standing | undefined, permission: Permission): boolean {
  return may(standing?.role, permission);
}

export function signatureOf({ id, label }: Share): Signed {
  return { helper: id, ...(label !== undefined && { name: label }) };
}

/** The marker for a helper's changes in a project's history. */
export function shareMark(who: Who, share: Share): string {
  return 'person' in who ? who.person : `link:${share.id}`;
}
