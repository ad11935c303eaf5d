/** The memory of a conversation: the last request of a person in a place, kept an hour, so that a follow-up means something. */

import { z } from 'zod';
import { accountKey } from '../accounts/asker.ts';
import { type KeyValueStore, Outage } from '../storage/types.ts';
import type { Ports, Request } from './ports.ts';
import { faultReference } from './request-id.ts';

const AN_HOUR = 3600 * 1000;
const MOST_PLACES = 50;
const LONGEST = 4000;

const memorySchema = z.object({
  /** A command's full name. */
  command: z.string().max(60),
  /** What was said for its options, in this conversation. */
  texts: z.record(z.string().max(40), z.string().max(LONGEST)),
  /** The option that was asked back. */
  open: z.string().max(40).optional(),
  /** Topics of the cautions that this person was shown. */
  seen: z.array(z.string().max(40)).max(60),
});

export type ConversationMemory = z.infer<typeof memorySchema>;

/** What is remembered where a request comes from; undefined where nothing is, or the store doesn't answer. Never throws. */
export async function recalled(request: Request, ports: Ports): Promise<ConversationMemory | undefined> {
  const { store } = ports;
  // Somebody else's message is no part of this conversation.
  if (!store || request.written === 'message') return undefined;
  const raw = await quietly(() => store.kept.get(keyOf(request)), ports);
  const read = memorySchema.safeParse(raw);
  return read.success ? read.data : undefined;
}

/** Keeps the last request for another hour; undefined forgets it. Never throws. */
export async function remember(request: Request, memory: ConversationMemory | undefined, ports: Ports): Promise<void> {
  const { store } = ports;
  if (!store || request.written === 'message') return;
  await quietly(async () => {
    if (!memory) {
      await store.kept.delete(keyOf(request));
      return;
    }
    await store.kept.set(keyOf(request), memory, AN_HOUR);
    const account = accountKey(request.asker);
    const place = request.place ?? '';
    const others = (await placesOf(store.kept, account)).filter((one) => one !== place);
    await store.kept.set(placesKey(account), JSON.stringify([...others, place].slice(-MOST_PLACES)), AN_HOUR);
  }, ports);
}

/** Everything remembered of an account's conversations, removed. Throws Outage. */
export async function forgetConversations(kept: KeyValueStore, account: string): Promise<void> {
  for (const place of await placesOf(kept, account)) await kept.delete(key(account, place));
  await kept.delete(placesKey(account));
}

async function placesOf(kept: KeyValueStore, account: string): Promise<readonly string[]> {
  const raw = await kept.get(placesKey(account));
  const read = z.array(z.string()).safeParse(typeof raw === 'string' ? JSON.parse(raw) : []);
  return read.success ? read.data : [];
}

function keyOf(request: Request): string {
  return key(accountKey(request.asker), request.place ?? '');
}

function key(account: string, place: string): string {
  return `talk:${account}:${place}`;
}

function placesKey(account: string): string {
  return `talk-of:${account}`;
}

async function quietly<T>(work: () => Promise<T>, ports: Ports): Promise<T | undefined> {
  try {
    return await work();
  } catch (cause) {
    if (!(cause instanceof Outage)) ports.fault(faultReference(), cause);
    return undefined;
  }
}
