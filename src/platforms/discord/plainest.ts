/** An answer in the plainest form that Discord takes: its headline, and the whole as a text file. */

import { Buffer } from 'node:buffer';
import { ComponentType } from 'discord-api-types/v10';
import { sheetText } from '../../chat/files.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { CHAT } from '../../text/chat-text.ts';
import { escaped, label } from './escape.ts';
import { render } from './render.ts';
import type { Outgoing } from './wire.ts';

const HEADLINE = 1000;

/** One message with one file at most, no buttons, no pictures. */
export function plainest(answer: Answer): Outgoing {
  if (!('headline' in answer)) {
    const [first] = render(answer);
    const components = (first?.components ?? []).filter(({ type }) => type === ComponentType.TextDisplay);
    return { components, attachments: [], files: [] };
  }
  const name = 'answer.txt';
  return {
    components: [
      { type: ComponentType.TextDisplay, content: `${escaped(label(answer.headline, HEADLINE))}\n${CHAT.whole}` },
      { type: ComponentType.File, file: { url: `attachment://${name}` } },
    ],
    attachments: [{ id: '0', filename: name }],
    files: [{ name, data: Buffer.from(sheetText(answer)), contentType: 'text/plain; charset=utf-8' }],
  };
}
