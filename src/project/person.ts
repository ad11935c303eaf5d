/** A person: linked accounts, settings, and the projects they own or help with. */

import { z } from 'zod';
import { LIMITS, roleSchema } from './project-limits.ts';
import { codecOf, type Migration } from './record-format.ts';

const settingsSchema = z
  .object({
    units: z.enum(['imperial', 'metric']).optional(),
    decimal: z.enum(['.', ',']).optional(),
    /** ISO 4217. */
    currency: z
      .string()
      .regex(/^[A-Z]{3}$/)
      .optional(),
    /** Where the home is; decides which years apply to old floors and paint. */
    country: z.enum(['us', 'canada', 'uk', 'australia', 'elsewhere']).optional(),
    /** Personal defaults by option name. */
    standards: z.record(z.string(), z.string().max(LIMITS.pick)).readonly(),
  })
  .readonly();

const shareSchema = z.object({ id: z.string().min(16), role: roleSchema }).readonly();

export const personSchema = z
  .object({
    version: z.literal(3),
    id: z.string().min(16),
    accounts: z.array(z.string()).readonly(),
    linked: z
      .array(z.object({ account: z.string(), at: z.number() }).readonly())
      .readonly()
      .optional(),
    /** The account whose person replaces this one; from then on this record no longer changes. */
    joins: z.string().optional(),
    /** People this one is replacing; each record is removed once everything has been taken over. */
    joining: z.array(z.string()).readonly().optional(),
    settings: settingsSchema,
    /** The project that requests are filled in from. */
    inUse: z.string().optional(),
    projects: z.array(shareSchema).readonly(),
  })
  .readonly();

export type Person = z.infer<typeof personSchema>;
export type Settings = z.infer<typeof settingsSchema>;

export const NO_SETTINGS: Settings = { standards: {} };

/** Drafts called the project in use `current` and only knew owners. */
const fromDraft: Migration = ({ current, projects, ...same }) => ({
  ...same,
  version: 1,
  settings: NO_SETTINGS,
  ...(typeof current === 'string' && { inUse: current }),
  projects: Array.isArray(projects) ? projects.map((id: unknown) => ({ id, role: 'owner' })) : [],
});

/** In version 1 a person had a single account. */
const fromOneAccount: Migration = (record) => ({ ...record, version: 2 });

/** Earlier versions had no country. */
const withCountry: Migration = (record) => ({ ...record, version: 3 });

export const personCodec = codecOf<Person>('person', personSchema, [fromDraft, fromOneAccount, withCountry]);

export const accountSchema = z.object({ version: z.literal(1), person: z.string().min(16) }).readonly();

export type Account = z.infer<typeof accountSchema>;

/** Drafts stored the person's id as `owner`. */
const accountFromDraft: Migration = ({ owner }) => ({ version: 1, person: owner });

export const accountCodec = codecOf<Account>('account', accountSchema, [accountFromDraft]);
