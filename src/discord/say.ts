/** A word of ours where there is no answer: what is gone, and faults. */

import { ComponentType } from 'discord-api-types/v10';
import { Outage } from '../bot/ports.ts';
import { sayFault } from '../words/asks.ts';
import { CHAT } from '../words/chat.ts';
import type { Came } from './came.ts';
import type { Desk } from './desk.ts';
import { escaped } from './escape.ts';
import type { Outgoing } from './wire.ts';

/** Says a text of ours to the asker alone. */
export async function say(what: 'gone', came: Came, desk: Desk): Promise<void> {
  await desk.wire.respond(came, wordOf(CHAT[what]), { ephemeral: came.ephemeral, update: false }, false);
}

/** Tells the asker of a fault by whichever way is still open; where none is, the log has it. Never rejects. */
export async function sayFaultTo(came: Came, desk: Desk, reference: string, cause: unknown): Promise<void> {
  const word = wordOf(sayFault(reference, cause instanceof Outage));
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
