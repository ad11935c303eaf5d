/** The files that an answer comes with, made and put where the asker alone sees them. */

import { oneLine } from '../../chat/files.ts';
import type { Reply } from '../../reply/reply.ts';
import { SLACK } from '../../text/chat-text.ts';
import { FILES } from '../../text/sheets-text.ts';
import { Unworked } from '../../workers/queue.ts';
import type { Party, SlackPorts } from './ports.ts';
import type { Post } from './post.ts';
import { note } from './render.ts';
import { upload } from './upload.ts';

/** Sends them to the asker's direct messages with the app; one that fails is told, and the others come. */
export async function sendMade(
  { files = [], data }: Reply,
  post: Post,
  { client, where }: Party,
  { makeFile, fault }: SlackPorts,
): Promise<void> {
  if (files.length === 0) return;
  const place = await post.directPlace(note(SLACK.fileIntro));
  let sent = 0;
  for (const { name, title, as } of files) {
    try {
      const bytes = await makeFile?.(data, as);
      if (!bytes) throw new Error('nobody makes files');
      await upload(client, { name, title: oneLine(title), bytes }, place);
      sent += 1;
    } catch (cause) {
      if (!(cause instanceof Unworked)) fault('slack', cause);
      await post.toAsker(note(FILES.notMade(title)));
    }
  }
  if (sent > 0 && place.channel !== where.channel) await post.toAsker(note(SLACK.sent(sent)));
}
