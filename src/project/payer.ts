/** Who pays for something. */

import { z } from 'zod';

export const PAYERS = ['self', 'insurer', 'landlord'] as const;

export const payerSchema = z.enum(PAYERS);

/** Whoever pays besides the asker. */
export const otherPayerSchema = payerSchema.exclude(['self']);

export type OtherPayer = z.infer<typeof otherPayerSchema>;
export type Payer = z.infer<typeof payerSchema>;
