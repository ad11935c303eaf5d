/** Ids that nobody can guess. */

import { randomBytes } from 'node:crypto';

/** An id of a record: 22 characters, 132 bits. */
export function mintLongId(): string {
  return randomBytes(17).toString('base64url').slice(0, 22);
}
