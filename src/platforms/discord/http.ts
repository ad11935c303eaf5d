/** Interactions by HTTP: signed by Discord, recent, and answered by its REST interface, by any number of processes. */

import type { APIInteraction } from 'discord-api-types/v10';
import { InteractionType } from 'discord-api-types/v10';
import { InteractionResponseType, verifyKey } from 'discord-interactions';
import { REPLAY_WINDOW } from './limits.ts';

export interface HttpSettings {
  /** The application's public key, in hexadecimal. */
  readonly publicKey: string;
  /** Milliseconds since 1970. */
  now(): number;
  /** Told of every interaction that is truly Discord's. */
  onInteraction(interaction: APIInteraction): void;
}

/** Where Discord sends interactions. */
export const INTERACTIONS_PATH = '/discord/interactions';

/**
 * Answers one request: 401 where it is not signed for this application or not recent, a pong for a ping, else 202 at once.
 * The answer itself goes by the callback address, for a file in the body of this response is refused by Discord from about
 * 150 kB on (github.com/discord/discord-api-docs issues 5250 and 5933).
 */
export async function handleHttp(request: Request, settings: HttpSettings): Promise<Response> {
  const signature = request.headers.get('x-signature-ed25519') ?? '';
  const timestamp = request.headers.get('x-signature-timestamp') ?? '';
  const body = new Uint8Array(await request.arrayBuffer());
  if (!isRecent(timestamp, settings.now()) || !(await isSigned(body, signature, timestamp, settings.publicKey))) {
    return new Response('Not signed for this application.', { status: 401 });
  }
  const interaction = parsed(body);
  if (!interaction) return new Response('No interaction.', { status: 400 });
  if (interaction.type === InteractionType.Ping) return Response.json({ type: InteractionResponseType.PONG });
  settings.onInteraction(interaction);
  return new Response(null, { status: 202 });
}

/** A signature proves who wrote, not when: an old one may be somebody's copy. */
function isRecent(timestamp: string, now: number): boolean {
  return /^\d{1,12}$/.test(timestamp) && Math.abs(now - Number(timestamp) * 1000) <= REPLAY_WINDOW;
}

async function isSigned(body: Uint8Array, signature: string, timestamp: string, publicKey: string): Promise<boolean> {
  if (!/^[0-9a-f]{128}$/i.test(signature)) return false;
  try {
    return await verifyKey(body, signature, timestamp, publicKey);
  } catch {
    return false;
  }
}

function parsed(body: Uint8Array): APIInteraction | undefined {
  try {
    const read: unknown = JSON.parse(new TextDecoder().decode(body));
    return typeof read === 'object' && read !== null && 'type' in read ? (read as APIInteraction) : undefined;
  } catch {
    return undefined;
  }
}
