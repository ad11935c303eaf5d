/** Answers stored for a while under a short id so that their buttons work: next requests, sources, showing the answer to others. */

import { randomBytes } from 'node:crypto';
import { promisify } from 'node:util';
import { deflateRaw, gunzip, gzip, inflateRaw } from 'node:zlib';
import type { KeyValueStore } from '../storage/types.ts';
import { FILES } from '../text/sheets-text.ts';
import type { ReplyWithForm } from './command.ts';

// A cache of recently packed and unpacked answers. The store still decides whether an answer exists and what it is.

/** Characters of packed text in total: a few dozen answers with pictures. */
const MOST = 1_000_000;

class AtHand<T> {
  readonly #held = new Map<string, { readonly packed: string; readonly value: T }>();
  #characters = 0;

  /** The value for an id if it was packed to exactly this text. */
  get(id: string, packed: string): T | undefined {
    const held = this.#held.get(id);
    return held?.packed === packed ? held.value : undefined;
  }

  set(id: string, packed: string, value: T): void {
    this.delete(id);
    this.#held.set(id, { packed, value });
    this.#characters += packed.length;
    for (const [oldest] of this.#held) {
      if (this.#characters <= MOST) return;
      this.delete(oldest);
    }
  }

  delete(id: string): void {
    this.#characters -= this.#held.get(id)?.packed.length ?? 0;
    this.#held.delete(id);
  }
}

/** A week, so that people can come back the next weekend. */
const KEPT_FOR = 7 * 24 * 3600 * 1000;

/** More than anyone gets in a week; the rest goes when its week is over. */
const MOST_ANSWERS = 500;

/** Characters from which compression pays off. */
const WORTH_PACKING = 4096;

export interface KeptAnswer {
  /** The account it belongs to (`accountKey`). */
  readonly by: string;
  /** The request. */
  readonly text: string;
  readonly reply: ReplyWithForm;
  /** Whether others saw it; then they may press its buttons too. */
  readonly shown: boolean;
  /** The messages it was to be shown as, where they reached nobody. */
  readonly messages?: readonly unknown[];
  /** The platform's id of the person whose question it was, where somebody else had it answered. */
  readonly author?: string | undefined;
}

/** Stands in for text that is shown only once. */
const ONCE = '…';

const atHand = new AtHand<KeptAnswer>();

const pack = promisify(gzip);
const unpack = promisify(gunzip);

/** A random id short enough for a button: 11 characters, 64 bits. */
export function mintId(): string {
  return randomBytes(8).toString('base64url');
}

/** Replaces an earlier answer to the same request. Throws Outage. */
export async function keepAnswer(kept: KeyValueStore, id: string, given: KeptAnswer): Promise<void> {
  const answer = withoutFiles(withoutOnce(given));
  const json = JSON.stringify(answer);
  const value = json.length < WORTH_PACKING ? json : (await pack(json)).toString('base64');
  atHand.set(id, value, answer);
  await Promise.all([kept.set(`answer:${id}`, value, KEPT_FOR), list(kept, id, answer.by)]);
}

/** File contents are large and already sent; what remains says so. */
function withoutFiles(answer: KeptAnswer): KeptAnswer {
  const { files = [], data, ...reply } = answer.reply;
  if (files.length === 0) return answer;
  const gone = { kind: 'text', text: FILES.gone } as const;
  return { ...answer, reply: { ...reply, blocks: [...reply.blocks, gone], data: { kind: data.kind } } };
}

/** Without texts that are shown once, so that neither the store nor a later view has them. */
function withoutOnce(answer: KeptAnswer): KeptAnswer {
  const { once, ...reply } = answer.reply;
  if (!once || once.length === 0) return answer;
  const blanked = once.reduce(
    (json, one) => json.replaceAll(JSON.stringify(one).slice(1, -1), ONCE),
    JSON.stringify(reply),
  );
  return { ...answer, reply: JSON.parse(blanked) };
}

async function list(kept: KeyValueStore, id: string, account: string): Promise<void> {
  const ids = await answersOf(kept, account);
  if (!ids.includes(id)) await kept.set(`answers:${account}`, [...ids, id].slice(-MOST_ANSWERS).join(' '), KEPT_FOR);
}

/** Removes all answers of an account. Throws Outage. */
export async function forgetAnswers(kept: KeyValueStore, account: string): Promise<void> {
  for (const id of await answersOf(kept, account)) {
    atHand.delete(id);
    await kept.delete(`answer:${id}`);
  }
  await kept.delete(`answers:${account}`);
  await kept.delete(threadsKey(account));
  await kept.delete(greetedKey(account));
}

/** Where a platform keeps the threads that it opened for the projects of an account. */
export const threadsKey = (account: string): string => `threads:${account}`;

/** Where it is kept that somebody was greeted. */
export const greetedKey = (account: string): string => `greeted:${account}`;

/** Latest last. */
async function answersOf(kept: KeyValueStore, account: string): Promise<readonly string[]> {
  const ids = await kept.get(`answers:${account}`);
  return typeof ids === 'string' && ids !== '' ? ids.split(' ') : [];
}

/** The last answers of an account, the newest first. Throws Outage. */
export async function recentAnswers(
  kept: KeyValueStore,
  account: string,
  most: number,
): Promise<readonly (KeptAnswer & { readonly id: string })[]> {
  const ids = (await answersOf(kept, account)).slice(-most).reverse();
  const answers = await Promise.all(ids.map(async (id) => ({ id, answer: await keptAnswer(kept, id, account) })));
  return answers.flatMap(({ id, answer }) => (answer ? [{ ...answer, id }] : []));
}

/** Undefined if it is gone, never existed, or this account may not see it. Throws Outage. */
export async function keptAnswer(kept: KeyValueStore, id: string, account: string): Promise<KeptAnswer | undefined> {
  const packed = await kept.get(`answer:${id}`);
  if (typeof packed !== 'string') return undefined;
  const answer = atHand.get(id, packed) ?? (await unpackedAnswer(packed));
  atHand.set(id, packed, answer);
  return answer.shown || answer.by === account ? answer : undefined;
}

async function unpackedAnswer(packed: string): Promise<KeptAnswer> {
  const json = packed.startsWith('{') ? packed : (await unpack(Buffer.from(packed, 'base64'))).toString('utf8');
  return JSON.parse(json) as KeptAnswer;
}

/** Marks an answer as shown to others; only its owner can. Undefined if it is gone or not theirs. Throws Outage. */
export async function showAnswer(kept: KeyValueStore, id: string, account: string): Promise<KeptAnswer | undefined> {
  const answer = await keptAnswer(kept, id, account);
  if (!answer) return undefined;
  const shown = { ...answer, shown: true };
  await keepAnswer(kept, id, shown);
  return shown;
}

// Plain data as short text that survives copying: wrapped, indented or quoted, it still unpacks.

const deflate = promisify(deflateRaw);
const inflate = promisify(inflateRaw);

/** Nothing may unpack to more than this. */
const MOST_BYTES = 8_000_000;

export async function packedData(data: unknown): Promise<string> {
  return (await deflate(JSON.stringify(data))).toString('base64url');
}

/** Undefined if it is damaged or not ours. Never throws. */
export async function unpacked(text: string): Promise<unknown> {
  const code = text.replace(/[^\w-]/g, '');
  try {
    const json = await inflate(Buffer.from(code, 'base64url'), { maxOutputLength: MOST_BYTES });
    return JSON.parse(json.toString('utf8'));
  } catch {
    return undefined;
  }
}
