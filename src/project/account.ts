/** An account on a platform, and the person behind it. */

import { z } from 'zod';
import { codecOf, type Migration } from './version.ts';

export const accountSchema = z.object({ version: z.literal(1), person: z.string().min(16) }).readonly();

export type Account = z.infer<typeof accountSchema>;

/** The draft kept the person's id as `owner`. */
const accountFromDraft: Migration = ({ owner }) => ({ version: 1, person: owner });

export const accountCodec = codecOf<Account>('account', accountSchema, [accountFromDraft]);
