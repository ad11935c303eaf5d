/** Requests signed as Slack signs them. */

import { createHmac } from 'node:crypto';

/** The headers that say when a body was sent, in seconds since 1970, and that it came from whoever has the secret. */
export function signature(body: string, secret: string, stamp: number): Readonly<Record<string, string>> {
  const hash = createHmac('sha256', secret).update(`v0:${stamp}:${body}`).digest('hex');
  return { 'x-slack-request-timestamp': `${stamp}`, 'x-slack-signature': `v0=${hash}` };
}
