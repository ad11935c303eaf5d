/** The pictures of an answer: drawn, uploaded for its messages, and shared by themselves where no message takes them. */

import type { webApi } from '@slack/bolt';
import type { Drawing } from '../reply/drawing.ts';
import type { Reply } from '../reply/reply.ts';
import { SLACK } from '../words/slack.ts';
import { IMAGE } from './limits.ts';
import type { Party, SlackPorts } from './ports.ts';
import type { Post } from './post.ts';
import { note } from './render.ts';
import { pictureFile, upload } from './upload.ts';

export interface Pictures {
  readonly client: webApi.WebClient;
  readonly drawn: readonly { readonly drawing: Drawing; readonly png: Buffer }[];
  /** Ids of the uploaded files by the place of their block. */
  readonly files: ReadonlyMap<number, string>;
}

/** Draws and uploads the pictures of a reply; one that fails is told to whoever runs the bot, and the answer stands without it. */
export async function picturesOf(reply: Reply, client: webApi.WebClient, ports: SlackPorts): Promise<Pictures> {
  const wanted = reply.blocks
    .flatMap((block, place) => (block.kind === 'picture' ? [{ place, drawing: block.drawing }] : []))
    .slice(0, IMAGE.aMessage);
  const made = await Promise.all(
    wanted.map(async ({ place, drawing }) => {
      try {
        const png = await ports.toPng(drawing);
        return { place, drawing, png, file: await upload(client, pictureFile(drawing, png)) };
      } catch (cause) {
        ports.fault('slack', cause);
        return undefined;
      }
    }),
  );
  const drawn = made.filter((one) => one !== undefined);
  return { client, drawn, files: new Map(drawn.map(({ place, file }) => [place, file])) };
}

/** Shares the pictures where their answer is: in the channel, or in the asker's direct messages. */
export async function sharePictures(
  { client, drawn }: Pictures,
  post: Post,
  { where }: Party,
  shown: boolean,
): Promise<void> {
  const thread = where.thread === undefined ? {} : { thread: where.thread };
  const direct = where.channel?.startsWith('D') === true;
  const place =
    (shown || direct) && where.channel !== undefined
      ? { channel: where.channel, ...thread }
      : { channel: (await post.toDirect(note(SLACK.pictureIntro))).channel };
  for (const { drawing, png } of drawn) await upload(client, pictureFile(drawing, png), place);
}
