/** A person: the accounts they ask from, their settings, and the projects they own or help with. */

import { z } from 'zod';
import { LIMITS, roleSchema } from './project-limits.ts';
import { codecOf, type Migration } from './record-version.ts';

const settingsSchema = z
  .object({
    units: z.enum(['imperial', 'metric']).optional(),
    decimal: z.enum(['.', ',']).optional(),
    /** ISO 4217. */
    currency: z
      .string()
      .regex(/^[A-Z]{3}$/)
      .optional(),
    /** Where the home is: whose years count for old floors and paint. */
    country: z.enum(['us', 'canada', 'uk', 'australia', 'elsewhere']).optional(),
    /** What is taken where an option is not told, by the option's name. */
    standards: z.record(z.string(), z.string().max(LIMITS.pick)).readonly(),
  })
  .readonly();

const shareSchema = z.object({ id: z.string().min(16), role: roleSchema }).readonly();

export const personSchema = z
  .object({
    version: z.literal(3),
    id: z.string().min(16),
    /** By their key. */
    accounts: z.array(z.string()).readonly(),
    /** Accounts linked lately, and when. */
    linked: z
      .array(z.object({ account: z.string(), at: z.number() }).readonly())
      .readonly()
      .optional(),
    /** The account whose person takes this one's place: from then on nothing of this one changes any more. */
    joins: z.string().optional(),
    /** People whose place this one is taking; none of them is left once all of theirs has come over. */
    joining: z.array(z.string()).readonly().optional(),
    settings: settingsSchema,
    /** The project that asks are filled from. */
    inUse: z.string().optional(),
    projects: z.array(shareSchema).readonly(),
  })
  .readonly();

export type Person = z.infer<typeof personSchema>;
export type Settings = z.infer<typeof settingsSchema>;

export const NO_SETTINGS: Settings = { standards: {} };

/** The draft named the project in use `current`, and knew only owners. */
const fromDraft: Migration = ({ current, projects, ...same }) => ({
  ...same,
  version: 1,
  settings: NO_SETTINGS,
  ...(typeof current === 'string' && { inUse: current }),
  projects: Array.isArray(projects) ? projects.map((id: unknown) => ({ id, role: 'owner' })) : [],
});

/** In the first version one person had one account. */
const fromOneAccount: Migration = (record) => ({ ...record, version: 2 });

/** Before, nobody could tell where their home is. */
const withCountry: Migration = (record) => ({ ...record, version: 3 });

export const personCodec = codecOf<Person>('person', personSchema, [fromDraft, fromOneAccount, withCountry]);

// An account on a platform, and the person behind it.

export const accountSchema = z.object({ version: z.literal(1), person: z.string().min(16) }).readonly();

export type Account = z.infer<typeof accountSchema>;

/** The draft kept the person's id as `owner`. */
const accountFromDraft: Migration = ({ owner }) => ({ version: 1, person: owner });

export const accountCodec = codecOf<Account>('account', accountSchema, [accountFromDraft]);
