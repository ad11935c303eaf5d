/** A fault of ours beyond the pipeline: told to whoever runs the bot under a short reference. */

import { DiscordAPIError, HTTPError, RESTJSONErrorCodes } from 'discord.js';
import { faultReference } from '../../chat/request-id.ts';
import { Outage } from '../../storage/types.ts';
import type { Came } from './interaction.ts';
import type { Drawn } from './outgoing.ts';
import type { DiscordContext } from './types.ts';

/** Tells of a fault and gives the reference for the one who asked. */
export function tellFault(access: Pick<DiscordContext, 'fault'>, cause: unknown): string {
  const reference = faultReference();
  access.fault(reference, cause);
  return reference;
}

/** Tells of a fault, unless it is an outage of the store, which tells of those itself, once and not for every ask. */
export function tellUnlessOutage(access: Pick<DiscordContext, 'fault'>, cause: unknown): void {
  if (!(cause instanceof Outage)) tellFault(access, cause);
}

/** What making the pictures of an answer needs. */
export function drawnFor(access: DiscordContext, { fileBytes }: Came): Drawn {
  const { makeFile } = access;
  return {
    toPng: (drawing) => access.toPng(drawing),
    ...(makeFile && { makeFile }),
    fault: (cause) => tellFault(access, cause),
    fileBytes,
  };
}

// What must not be waited for longer than a response may take.

/** What the store gives, or an Outage when it has not by then; what comes later is let go. */
export async function inTime<T>(
  work: Promise<T>,
  milliseconds: number,
  access: Pick<DiscordContext, 'wait'>,
): Promise<T> {
  const wait = access.wait(milliseconds);
  try {
    return await Promise.race([
      work,
      wait.over.then(() => {
        throw new Outage('the store did not answer while there was time to respond');
      }),
    ]);
  } finally {
    wait.cancel();
    work.catch(() => undefined);
  }
}

// What Discord refuses, sorted by what can still be done for the one who asked.

/** `gone`: nothing more reaches this interaction. `message`: only the message is gone. `answered`: another delivery did it. `content`: what was sent was refused, or its place takes nothing. */
type Refused = 'gone' | 'message' | 'answered' | 'content' | 'unknown';

const GONE: readonly (number | string)[] = [
  RESTJSONErrorCodes.UnknownInteraction,
  RESTJSONErrorCodes.UnknownWebhook,
  RESTJSONErrorCodes.InvalidWebhookToken,
];

/** Codes as Discord lists them under JSON error codes. */
export function refused(cause: unknown): Refused {
  if (!(cause instanceof DiscordAPIError || cause instanceof HTTPError)) return 'unknown';
  const { status } = cause;
  const code = 'code' in cause ? cause.code : undefined;
  if (code === RESTJSONErrorCodes.UnknownMessage) return 'message';
  if (code === RESTJSONErrorCodes.InteractionHasAlreadyBeenAcknowledged) return 'answered';
  if (GONE.some((known) => known === code) || status === 401) return 'gone';
  // Filters, permissions, sizes and places come with many codes: something plainer may still be taken, or by another way.
  return status === 429 ? 'unknown' : 'content';
}
