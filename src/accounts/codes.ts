/** Codes typed from one screen to another: minted, read as people type them, kept as hashes, and guessed at a few times only. */

import { createHash, randomInt } from 'node:crypto';
import { z } from 'zod';
import { HELPING, SHARED } from '../project/shares.ts';
import type { Kept } from '../storage/types.ts';

/** Crockford's base 32 (crockford.com/base32.html): no I, L, O and U, which are taken for 1, 1, 0 and V. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LENGTH = 8;

/** How long a code is good for, and how long a wrong guess counts. */
export const CODE_LASTS = 10 * 60_000;

/** Wrong guesses of one account, and of all accounts of one workspace or platform, within that time. */
const GUESSES = 5;
const GUESSES_TOGETHER = 200;
/** Places tried among those before it counts as full. */
const LOOKS = 6;

export const codeSchema = z
  .object({
    use: z.discriminatedUnion('kind', [
      /** Joins the taker and the person of the account. */
      z.object({ kind: z.literal('accounts'), account: z.string() }).readonly(),
      /** Lets the taker help with a project. */
      z
        .object({
          kind: z.literal('project'),
          project: z.string(),
          /** The owner's, by whose right it is shared when the code is taken. */
          account: z.string(),
          share: z
            .object({
              what: z.enum(SHARED),
              room: z.string().optional(),
              role: z.enum(HELPING),
              until: z.number().optional(),
              label: z.string().optional(),
            })
            .readonly(),
        })
        .readonly(),
    ]),
    /** Milliseconds since 1970. */
    until: z.number(),
  })
  .readonly();

export type Code = z.infer<typeof codeSchema>;
export type CodeUse = Code['use'];

/** A code as it is shown: two groups of four, 40 bits. */
export function mintCode(): string {
  const signs = Array.from({ length: LENGTH }, () => SIGNS[randomInt(SIGNS.length)]).join('');
  return `${signs.slice(0, 4)}-${signs.slice(4)}`;
}

/** The signs of a code as typed, whatever its case, gaps and look-alikes; undefined for what is none. */
export function readCode(text: string): string | undefined {
  const signs = text
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[\s\p{Pd}_.,;:"'`“”‘’*]/gu, '')
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1')
    .replaceAll('U', 'V');
  return signs.length === LENGTH && [...signs].every((sign) => SIGNS.includes(sign)) ? signs : undefined;
}

/** Keeps a code of some use until `until`; gives the name it is kept under. Throws Outage. */
export async function keepCode(kept: Kept, code: string, use: CodeUse, now: number): Promise<string> {
  const name = nameOf(readCode(code) ?? code);
  await kept.set(name, { use, until: now + CODE_LASTS } satisfies Code, CODE_LASTS);
  return name;
}

/** What came of looking a code up: wrong, used and over are the same. */
export type Looked = { readonly ok: true; readonly code: Code } | { readonly ok: false; readonly why: 'none' | 'wait' };

/** Looks a code up for an asker. Each look counts as a wrong guess until it turns out to be right. Throws Outage. */
export async function lookUp(kept: Kept, signs: string, asker: string, now: number): Promise<Looked> {
  const places = await guessPlaces(kept, asker);
  if (!places) return { ok: false, why: 'wait' };
  const read = codeSchema.safeParse(await kept.get(nameOf(signs)));
  if (!read.success || read.data.until <= now) return { ok: false, why: 'none' };
  for (const place of places) await kept.delete(place);
  return { ok: true, code: read.data };
}

/** Takes a code: true for exactly one of all who try, in whatever process. Throws Outage. */
export async function takeCode(kept: Kept, signs: string): Promise<boolean> {
  const name = nameOf(signs);
  if (!(await kept.claim(`${name}:taken`, 2 * CODE_LASTS))) return false;
  return kept.delete(name);
}

/** One place among the account's wrong guesses and one among everybody's; undefined where either is full. */
async function guessPlaces(kept: Kept, account: string): Promise<readonly string[] | undefined> {
  const own = await placeOf(
    kept,
    `code-guess:${account}`,
    Array.from({ length: GUESSES }, (_, i) => i),
  );
  if (own === undefined) return undefined;
  const random = Array.from({ length: LOOKS }, () => randomInt(GUESSES_TOGETHER));
  const together = await placeOf(kept, `code-guesses:${scopeOf(account)}`, random);
  return together === undefined ? undefined : [own, together];
}

async function placeOf(kept: Kept, name: string, places: readonly number[]): Promise<string | undefined> {
  for (const place of places) if (await kept.claim(`${name}:${place}`, CODE_LASTS)) return `${name}:${place}`;
  return undefined;
}

/** The workspace of an account, or its platform where accounts have none. */
function scopeOf(account: string): string {
  return account.slice(0, account.lastIndexOf(':'));
}

function nameOf(signs: string): string {
  return `code:${createHash('sha256').update(signs).digest('base64url')}`;
}
