/** Files put into Slack: an address asked for, the bytes sent there, the upload completed, and shared where it is to be seen. */

import type { webApi } from '@slack/bolt';
import { fileStem, oneLine } from '../../chat/files.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { IMAGE } from './limits.ts';
import { cut } from './rich.ts';

export interface Upload {
  readonly name: string;
  readonly title: string;
  /** What a picture shows, for whoever cannot see it. */
  readonly alt?: string;
  readonly bytes: Buffer;
}

/** Where a file is shared; without it only the app has it, until it stands in a message. */
export interface UploadedPictures {
  readonly channel: string;
  readonly thread?: string;
}

/** Uploads a file and gives its id. Rejects when Slack does not take it. */
export async function upload(client: webApi.WebClient, file: Upload, shared?: UploadedPictures): Promise<string> {
  const { name, title, alt, bytes } = file;
  const { file_id, upload_url } = await client.files.getUploadURLExternal({
    filename: name,
    length: bytes.length,
    ...(alt === undefined ? {} : { alt_text: alt }),
  });
  if (file_id === undefined || upload_url === undefined) throw new Error('an upload without an address');
  const sent = await fetch(upload_url, { method: 'POST', body: new Uint8Array(bytes) });
  if (!sent.ok) throw new Error(`an upload was answered with ${sent.status}`);
  const files: [{ id: string; title: string }] = [{ id: file_id, title: cut(title, IMAGE.title) }];
  if (!shared) await client.files.completeUploadExternal({ files });
  else if (shared.thread === undefined)
    await client.files.completeUploadExternal({ files, channel_id: shared.channel });
  else await client.files.completeUploadExternal({ files, channel_id: shared.channel, thread_ts: shared.thread });
  return file_id;
}

/** A picture as a file to upload. */
export function pictureFile({ title, alt }: Drawing, bytes: Buffer): Upload {
  const name = `${fileStem(title) || 'picture'}.png`;
  return { name, title: oneLine(title) || name, alt: cut(oneLine(alt), IMAGE.alt), bytes };
}
