/** What of a project is shared, with whom, what they may do, and until when: the one authority on every helper. */

import { z } from 'zod';
import { LIMITS, may, type Permission, type Role, type Signed } from './project-limits.ts';

/** What can be shared; a guide and cuts may be of one room. */
export const SHARED = ['project', 'shopping', 'guide', 'cuts', 'tearout', 'checklist'] as const;
export type Shared = (typeof SHARED)[number];

/** The roles that can be given. */
export const HELPING = ['look', 'tick', 'measure'] as const;
export type Helping = (typeof HELPING)[number];

const withSchema = z.union([
  /** The SHA-256 of the token in the link, in hexadecimal digits. */
  z.strictObject({ link: z.string().regex(/^[0-9a-f]{64}$/) }),
  z.strictObject({ person: z.string().min(16) }),
]);

const shareSchema = z
  .object({
    /** Counted from 1 over the project's whole life, and never given twice. */
    id: z.string().regex(/^[1-9]\d{0,5}$/),
    what: z.enum(SHARED),
    room: z.string().min(1).max(LIMITS.name).optional(),
    role: z.enum(HELPING),
    /** Milliseconds since 1970; until it is stopped without it. */
    until: z.number().optional(),
    with: withSchema,
    /** What the owner calls them. */
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

/** Who comes to a project: a person, or whoever holds a link (by the SHA-256 of its token). */
export type Who = { readonly person: string } | { readonly link: string };

/** As what somebody stands to a project; a helper by their share. */
interface Standing {
  readonly role: Role;
  readonly share?: Share;
}

/** What is looked at of a project. */
interface Owned {
  readonly owner: string;
  readonly shares: readonly Share[];
  readonly state: { readonly kind: string };
}

/** Whether a share has ended by itself. */
export function isOver({ until }: Share, now: number): boolean {
  return until !== undefined && until <= now;
}

/** Whether a share is this person's, or this link's. */
export function isWith({ with: one }: Share, who: Who): boolean {
  return 'link' in one ? 'link' in who && one.link === who.link : 'person' in who && one.person === who.person;
}

/** How somebody stands to a project now; undefined for a stranger. A deleted project is its owner's alone. */
export function standingOf({ owner, shares, state }: Owned, who: Who, now: number): Standing | undefined {
  if ('person' in who && who.person === owner) return { role: 'owner' };
  if (state.kind === 'deleted') return undefined;
  const share = shares.find((one) => isWith(one, who) && !isOver(one, now));
  return share && { role: share.role, share };
}

/** Whether somebody who stands so may do this. */
export function mayDo(standing: Standing | undefined, permission: Permission): boolean {
  return may(standing?.role, permission);
}

/** How what a helper did is signed. */
export function signatureOf({ id, label }: Share): Signed {
  return { helper: id, ...(label !== undefined && { name: label }) };
}

/** How a helper's changes are marked in the history of a project. */
export function shareMark(who: Who, share: Share): string {
  return 'person' in who ? who.person : `link:${share.id}`;
}
