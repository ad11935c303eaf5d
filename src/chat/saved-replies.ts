/** Answers kept a while under a short id, so that their buttons work: a next ask, the sources, showing the answer to others. */

import { randomBytes } from 'node:crypto';
import { promisify } from 'node:util';
import { deflateRaw, gunzip, gzip, inflateRaw } from 'node:zlib';
import type { KeyValueStore } from '../storage/types.ts';
import { FILES } from '../text/sheets-text.ts';
import type { ReplyWithForm } from './command.ts';

// What was last packed or unpacked, at hand while it is pressed upon: the store still says whether it is
// there and what it is.

/** Characters of packed text in all: a few dozen answers with their pictures. */
const MOST = 1_000_000;

class AtHand<T> {
  readonly #held = new Map<string, { readonly packed: string; readonly value: T }>();
  #characters = 0;

  /** The value of an id, where it was packed to this very text. */
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

/** A week: long enough to come back to on the next weekend. */
const KEPT_FOR = 7 * 24 * 3600 * 1000;

/** More answers than anybody gets in a week; what is beyond them goes when its week is over. */
const MOST_ANSWERS = 500;

/** Characters from which packing saves more than it costs. */
const WORTH_PACKING = 4096;

/** An answer as it was given. */
export interface KeptAnswer {
  /** The account that asked (`accountKey`). */
  readonly by: string;
  /** The ask. */
  readonly text: string;
  readonly reply: ReplyWithForm;
  /** Whether others saw it: then they may press its buttons too. */
  readonly shown: boolean;
}

/** Stands where something was told once. */
const ONCE = '…';

const atHand = new AtHand<KeptAnswer>();

const pack = promisify(gzip);
const unpack = promisify(gunzip);

/** An id nobody can guess, short enough for a button: 11 characters, 64 bits. */
export function mintId(): string {
  return randomBytes(8).toString('base64url');
}

/** Keeps an answer, in place of an earlier one of the same ask. Throws Outage. */
export async function keepAnswer(kept: KeyValueStore, id: string, given: KeptAnswer): Promise<void> {
  const answer = withoutFiles(withoutOnce(given));
  const json = JSON.stringify(answer);
  const value = json.length < WORTH_PACKING ? json : (await pack(json)).toString('base64');
  atHand.set(id, value, answer);
  await Promise.all([kept.set(`answer:${id}`, value, KEPT_FOR), list(kept, id, answer.by)]);
}

/** What files are made of is large, and they went out with the answer: what is kept of it tells so. */
function withoutFiles(answer: KeptAnswer): KeptAnswer {
  const { files = [], data, ...reply } = answer.reply;
  if (files.length === 0) return answer;
  const gone = { kind: 'text', text: FILES.gone } as const;
  return { ...answer, reply: { ...reply, blocks: [...reply.blocks, gone], data: { kind: data.kind } } };
}

/** The answer without what is told once: whoever looks at the store, or has it shown again, does not find it. */
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

/** Removes the answers of an account. Throws Outage. */
export async function forgetAnswers(kept: KeyValueStore, account: string): Promise<void> {
  for (const id of await answersOf(kept, account)) {
    atHand.delete(id);
    await kept.delete(`answer:${id}`);
  }
  await kept.delete(`answers:${account}`);
}

/** The ids of an account's answers, the latest last: what is to be removed when the account is forgotten. */
async function answersOf(kept: KeyValueStore, account: string): Promise<readonly string[]> {
  const ids = await kept.get(`answers:${account}`);
  return typeof ids === 'string' && ids !== '' ? ids.split(' ') : [];
}

/** The answer of an id for an account: undefined when it is gone, was never there, or is not theirs to see. Throws Outage. */
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

/** Marks an answer as shown to others, by the one who asked; undefined when it is gone or not theirs. Throws Outage. */
export async function showAnswer(kept: KeyValueStore, id: string, account: string): Promise<KeptAnswer | undefined> {
  const answer = await keptAnswer(kept, id, account);
  if (!answer) return undefined;
  const shown = { ...answer, shown: true };
  await keepAnswer(kept, id, shown);
  return shown;
}

// Plain data as a short text that survives being copied: wrapped, indented or quoted, it is still the same.

const deflate = promisify(deflateRaw);
const inflate = promisify(inflateRaw);

/** No text unpacks to more than this. */
const MOST_BYTES = 8_000_000;

/** JSON data, packed. */
export async function packedData(data: unknown): Promise<string> {
  return (await deflate(JSON.stringify(data))).toString('base64url');
}

/** What was packed; undefined where it is damaged, or nothing of ours. Never throws. */
export async function unpacked(text: string): Promise<unknown> {
  const code = text.replace(/[^\w-]/g, '');
  try {
    const json = await inflate(Buffer.from(code, 'base64url'), { maxOutputLength: MOST_BYTES });
    return JSON.parse(json.toString('utf8'));
  } catch {
    return undefined;
  }
}
