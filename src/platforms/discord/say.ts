/** A word of ours where there is no answer: what is gone, and faults. */

import { ComponentType } from 'discord-api-types/v10';
import { fullName } from '../../input/command-shape.ts';
import { Outage } from '../../storage/types.ts';
import { CHAT, sayFault } from '../../text/chat-text.ts';
import type { Came } from './came.ts';
import type { Desk } from './desk.ts';
import { escaped } from './escape.ts';
import type { Outgoing } from './wire.ts';

/** Says that what was pressed is no longer kept, and what to type instead. */
export async function sayGone(came: Came, desk: Desk): Promise<void> {
  const [sample] = desk.commands;
  const how = sample ? `/${fullName(sample)}` : '';
  await desk.wire.respond(came, wordOf(CHAT.gone(how)), { ephemeral: came.ephemeral, update: false }, false);
}

/** Says that nothing is taken up just now, or that what was begun is not finished. Never rejects. */
export function sayRestarting(came: Came, desk: Desk): Promise<void> {
  return sayTo(came, desk, CHAT.restarting);
}

/** Tells the asker of a fault by whichever way is still open; where none is, the log has it. Never rejects. */
export function sayFaultTo(came: Came, desk: Desk, reference: string, cause: unknown): Promise<void> {
  return sayTo(came, desk, sayFault(reference, cause instanceof Outage));
}

async function sayTo(came: Came, desk: Desk, text: string): Promise<void> {
  const word = wordOf(text);
  try {
    await desk.wire.respond(came, word, { ephemeral: came.ephemeral, update: false }, false);
  } catch {
    // Answered already, so that a further message is still taken; or nothing is.
    await desk.wire.followUp(came, word, came.ephemeral).catch(() => undefined);
  }
}

function wordOf(text: string): Outgoing {
  return { components: [{ type: ComponentType.TextDisplay, content: escaped(text) }], attachments: [], files: [] };
}
