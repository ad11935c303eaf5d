/** Which helper did something: the number of their share, and the name that the owner chose for them. */

import { z } from 'zod';
import { LIMITS } from './limits.ts';

/** Absent on what the owner did. */
export const signedSchema = z
  .object({ helper: z.string().min(1).max(6), name: z.string().min(1).max(LIMITS.label).optional() })
  .readonly();

export type Signed = z.infer<typeof signedSchema>;
