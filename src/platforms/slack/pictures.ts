/** The pictures of an answer: drawn, uploaded for its messages, and shared as files where no message takes them. */

import type { webApi } from '@slack/bolt';
import type { Drawing } from '../../reply/drawing.ts';
import type { Reply } from '../../reply/reply.ts';
import { Unworked } from '../../workers/queue.ts';
import { MOST_PICTURES } from './limits.ts';
import type { SlackPorts } from './ports.ts';
import { pictureFile, type Shared, upload } from './upload.ts';

export interface Pictures {
  readonly drawn: readonly { readonly drawing: Drawing; readonly png: Buffer }[];
  /** Ids of the uploaded files by the place of their block. */
  readonly files: ReadonlyMap<number, string>;
}

/** Draws and uploads the first pictures of a reply; one that fails is told to whoever runs the bot, and the answer stands without it. */
export async function picturesOf(reply: Reply, client: webApi.WebClient, ports: SlackPorts): Promise<Pictures> {
  const made = await Promise.all(
    drawingsOf(reply)
      .slice(0, MOST_PICTURES)
      .map(async ({ place, drawing }) => {
        try {
          const png = await ports.toPng(drawing);
          return { place, drawing, png, file: await upload(client, pictureFile(drawing, png)) };
        } catch (cause) {
          // Too many pictures at once are no fault: the figures stand, and pressing once more draws them.
          if (!(cause instanceof Unworked)) ports.fault('slack', cause);
          return undefined;
        }
      }),
  );
  const drawn = made.filter((one) => one !== undefined);
  return { drawn, files: new Map(drawn.map(({ place, file }) => [place, file])) };
}

/** The drawings of a reply by the place of their block. */
export function drawingsOf({ blocks }: Reply): readonly { readonly place: number; readonly drawing: Drawing }[] {
  return blocks.flatMap((block, place) => (block.kind === 'picture' ? [{ place, drawing: block.drawing }] : []));
}

/** Shares drawn pictures as files of their own. Rejects when Slack takes one of them nowhere. */
export async function sharePictures(drawn: Pictures['drawn'], client: webApi.WebClient, place: Shared): Promise<void> {
  for (const { drawing, png } of drawn) await upload(client, pictureFile(drawing, png), place);
}
