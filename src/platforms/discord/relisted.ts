/** An edit that keeps the pictures already there: Discord drops what an edit does not list again. */

import { Buffer } from 'node:buffer';
import type { APIAttachment } from 'discord-api-types/v10';
import type { Outgoing } from './wire.ts';

/**
 * The edit with the attachments of `before` listed in place of files that are the same, byte for byte; else as it is, its files
 * sent anew. `there` is what Discord says the message holds.
 */
export function relisted(edit: Outgoing, before: Outgoing, there: readonly APIAttachment[]): Outgoing {
  const same =
    edit.files.length > 0 &&
    edit.files.length === before.files.length &&
    edit.files.length === there.length &&
    edit.files.every(({ name, data }, i) => {
      const old = before.files[i];
      return name === old?.name && bytesOf(data).equals(bytesOf(old.data)) && name === there[i]?.filename;
    });
  if (!same) return edit;
  return { ...edit, files: [], attachments: there.map(({ id }) => ({ id })) };
}

function bytesOf(data: unknown): Buffer {
  if (Buffer.isBuffer(data)) return data;
  return Buffer.from(data instanceof Uint8Array ? data : String(data));
}
