/** Who pays for something. */

import { z } from 'zod';

export const PAYERS = ['self', 'insurer', 'landlord'] as const;

export const payerSchema = z.enum(PAYERS);

export type Payer = z.infer<typeof payerSchema>;
