/** What Discord refuses, sorted by what can still be done for the one who asked. */

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

/**
 * Codes as Discord lists them under JSON error codes. Errors are told by their fields, not by their class: the client brings a
 * copy of the REST package of its own, whose classes are not ours.
 */
export function refused(cause: unknown): Refused {
  if (!(cause instanceof Error) || !('status' in cause) || typeof cause.status !== 'number') return 'unknown';
  const { status } = cause;
  if (!('code' in cause)) return status >= 500 ? 'content' : 'unknown';
  const { code } = cause;
  if (code === RESTJSONErrorCodes.UnknownMessage) return 'message';
  if (code === RESTJSONErrorCodes.InteractionHasAlreadyBeenAcknowledged) return 'answered';
  if (GONE.some((known) => known === code) || status === 401) return 'gone';
  return status === 400 ? 'content' : 'unknown';
}
