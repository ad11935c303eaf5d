/** What Discord refuses, sorted by what can still be done for the one who asked. */

import { DiscordAPIError, HTTPError } from '@discordjs/rest';
import { RESTJSONErrorCodes } from 'discord-api-types/v10';

/** `gone`: nothing more reaches this interaction. `message`: only the message is gone. `answered`: another delivery did it. `content`: what was sent was refused. */
export type Refused = 'gone' | 'message' | 'answered' | 'content' | 'unknown';

const GONE: readonly (number | string)[] = [
  RESTJSONErrorCodes.UnknownInteraction,
  RESTJSONErrorCodes.UnknownWebhook,
  RESTJSONErrorCodes.InvalidWebhookToken,
  RESTJSONErrorCodes.UnknownChannel,
  RESTJSONErrorCodes.MissingAccess,
];

/** Codes as Discord lists them under JSON error codes. */
export function refused(cause: unknown): Refused {
  if (cause instanceof HTTPError) return cause.status >= 500 ? 'content' : 'unknown';
  if (!(cause instanceof DiscordAPIError)) return 'unknown';
  if (cause.code === RESTJSONErrorCodes.UnknownMessage) return 'message';
  if (cause.code === RESTJSONErrorCodes.InteractionHasAlreadyBeenAcknowledged) return 'answered';
  if (GONE.includes(cause.code) || cause.status === 401) return 'gone';
  return cause.status === 400 ? 'content' : 'unknown';
}
