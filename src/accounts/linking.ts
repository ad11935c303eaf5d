/** Linking a person's accounts with a code made on one and entered on another, and unlinking them. */

import { createHash, randomInt } from 'node:crypto';
import { z } from 'zod';
import type { Person } from '../project/person.ts';
import type { Project } from '../project/project.ts';
import { LIMITS } from '../project/project-limits.ts';
import { HELPING, SHARED } from '../project/shares.ts';
import type { KeyValueStore } from '../storage/types.ts';
import { beginJoin, personOf } from './merging-accounts.ts';
import { putChange, type Shelves } from './records.ts';
import { Sharing } from './sharing.ts';

// Codes typed from one screen to another: minted, parsed leniently, stored as hashes, with limited guesses.

/** Crockford's base 32 (crockford.com/base32.html): no I, L, O and U, which get mistaken for 1, 1, 0 and V. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LENGTH = 8;

/** How long a code is valid, and how long a wrong guess counts. */
const CODE_LASTS = 10 * 60_000;

/** Wrong guesses within that time, per account and for all accounts of one workspace or platform. */
const GUESSES = 5;
const GUESSES_TOGETHER = 200;
/** Slots tried among those before it counts as full. */
const LOOKS = 6;

export const codeSchema = z
  .object({
    use: z.discriminatedUnion('kind', [
      /** Joins the person entering the code and the person of the account. */
      z.object({ kind: z.literal('accounts'), account: z.string() }).readonly(),
      /** Lets the person entering the code help with a project. */
      z
        .object({
          kind: z.literal('project'),
          project: z.string(),
          /** The owner's account, whose rights are checked when the code is used. */
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

type Code = z.infer<typeof codeSchema>;
type CodeUse = Code['use'];

/** A code in display form: two groups of four characters, 40 bits. */
function mintCode(): string {
  let signs = '';
  // On its own, a code without a digit or without a letter could be taken for words or a sum of lengths.
  while (!/(?=.*\d)(?=.*[a-z])/i.test(signs)) {
    signs = Array.from({ length: LENGTH }, () => SIGNS[randomInt(SIGNS.length)]).join('');
  }
  return `${signs.slice(0, 4)}-${signs.slice(4)}`;
}

/** The characters of a code as typed, ignoring case, gaps and look-alikes; undefined if it isn't one. */
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

/** Stores a code for a purpose until `until`; returns the name it is stored under. Throws Outage. */
async function keepCode(kept: KeyValueStore, code: string, use: CodeUse, now: number): Promise<string> {
  const name = nameOf(readCode(code) ?? code);
  await kept.set(name, { use, until: now + CODE_LASTS } satisfies Code, CODE_LASTS);
  return name;
}

/** The result of a lookup; wrong, used and expired look the same. */
type Looked = { readonly ok: true; readonly code: Code } | { readonly ok: false; readonly why: 'none' | 'wait' };

/** Looks up a code for a user. Each lookup counts as a wrong guess until it turns out to be right. Throws Outage. */
async function lookUp(kept: KeyValueStore, signs: string, asker: string, now: number): Promise<Looked> {
  const places = await guessPlaces(kept, asker);
  if (!places) return { ok: false, why: 'wait' };
  const read = codeSchema.safeParse(await kept.get(nameOf(signs)));
  if (!read.success || read.data.until <= now) return { ok: false, why: 'none' };
  for (const place of places) await kept.delete(place);
  return { ok: true, code: read.data };
}

/** Claims a code: true for exactly one of all callers, in any process. Throws Outage. */
async function takeCode(kept: KeyValueStore, signs: string): Promise<boolean> {
  const name = nameOf(signs);
  if (!(await kept.claim(`${name}:taken`, 2 * CODE_LASTS))) return false;
  return kept.delete(name);
}

/** One slot among the account's wrong guesses and one among everyone's; undefined if either is full. */
async function guessPlaces(kept: KeyValueStore, account: string): Promise<readonly string[] | undefined> {
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

async function placeOf(kept: KeyValueStore, name: string, places: readonly number[]): Promise<string | undefined> {
  for (const place of places) if (await kept.claim(`${name}:${place}`, CODE_LASTS)) return `${name}:${place}`;
  return undefined;
}

/** The account's workspace, or its platform if that has no workspaces. */
function scopeOf(account: string): string {
  return account.slice(0, account.lastIndexOf(':'));
}

function nameOf(signs: string): string {
  return `code:${createHash('sha256').update(signs).digest('base64url')}`;
}

/** Access to the person whose accounts these are. */
interface Linking {
  readonly shelves: Shelves;
  readonly via: string;
  now(): number;
  me(): Promise<Person | undefined>;
  ensured(): Promise<Person>;
}

/**
 * `none`: wrong, used or expired; `unlike`: doesn't look like a code; `full`: over the limit of what one person may
 * keep.
 */
export type Refused = {
  readonly ok: false;
  readonly why: 'none' | 'wait' | 'unlike' | 'same' | 'own' | 'full' | 'too-many-accounts' | 'crowded';
};

type ProjectUse = Extract<CodeUse, { kind: 'project' }>;

/** What a code would do: join two people (with the number of projects), or let the person entering it help. */
type Offer =
  | {
      readonly ok: true;
      readonly kind: 'accounts';
      readonly account: string;
      readonly theirs: number;
      readonly own: number;
    }
  | { readonly ok: true; readonly kind: 'project'; readonly use: ProjectUse; readonly by: Person };

/** Every method throws Outage if the store doesn't answer. */
export interface Links {
  /** A code that joins the user with the person who enters it; any earlier one becomes invalid. */
  make(): Promise<{ readonly code: string; readonly until: number }>;
  /** A code that lets someone help with one of the user's projects; the user's rights are checked when it is used. */
  makeFor(project: string, share: ProjectUse['share']): Promise<{ readonly code: string; readonly until: number }>;
  /** What a code would do, without doing it. A wrong one counts as a guess. */
  look(typed: string): Promise<Offer | Refused>;
  /** Uses the code, which works only once; returns the resulting person. */
  take(typed: string): Promise<{ readonly ok: true; readonly person: Person; readonly offer: Offer } | Refused>;
  /** Unlinks an account from the user; false if it isn't theirs or is their only one. */
  part(account: string): Promise<boolean>;
}

export function linksOf(linking: Linking, changed: () => void): Links {
  return new AskersLinks(linking, changed);
}

class AskersLinks implements Links {
  readonly #of: Linking;
  readonly #changed: () => void;

  constructor(of: Linking, changed: () => void) {
    this.#of = of;
    this.#changed = changed;
  }

  async make() {
    const { shelves, via, ensured } = this.#of;
    await ensured();
    const before = await shelves.kept.get(`code-of:${via}`);
    if (typeof before === 'string') await shelves.kept.delete(before);
    return this.#kept({ kind: 'accounts', account: via }, `code-of:${via}`);
  }

  makeFor(project: string, share: ProjectUse['share']) {
    return this.#kept({ kind: 'project', project, account: this.#of.via, share });
  }

  async look(typed: string): Promise<Offer | Refused> {
    const { shelves, via, now } = this.#of;
    const signs = readCode(typed);
    if (signs === undefined) return { ok: false, why: 'unlike' };
    const looked = await lookUp(shelves.kept, signs, via, now());
    if (!looked.ok) return looked;
    const { use } = looked.code;
    const [me, other] = [await this.#of.me(), await personOf(shelves, use.account)];
    if (!other) return { ok: false, why: 'none' };
    if (use.kind === 'project')
      return me?.id === other.id ? { ok: false, why: 'own' } : { ok: true, kind: 'project', use, by: other };
    if (me?.id === other.id) return { ok: false, why: 'same' };
    return this.#fits(me, other, use.account);
  }

  async take(typed: string) {
    const { shelves, via, ensured, now } = this.#of;
    const offer = await this.look(typed);
    if (!offer.ok) return offer;
    const me = await ensured();
    if (!(await takeCode(shelves.kept, readCode(typed) ?? ''))) return { ok: false, why: 'none' } as const;
    if (offer.kind === 'project') {
      const why = await this.#letHelp(offer.use, offer.by, me);
      if (why) return { ok: false, why } as const;
    } else if (!(await beginJoin(shelves, me, offer.account, now()))) return { ok: false, why: 'none' } as const;
    this.#changed();
    const person = (await personOf(shelves, via)) ?? me;
    return { ok: true, person, offer } as const;
  }

  async part(account: string): Promise<boolean> {
    const { shelves, me } = this.#of;
    const person = await me();
    const parted =
      person &&
      (await shelves.person.change(person.id, (before) => {
        if (!before.accounts.includes(account) || before.accounts.length < 2 || before.joins !== undefined)
          return { result: false };
        const accounts = before.accounts.filter((key) => key !== account);
        const linked = before.linked?.filter((one) => one.account !== account) ?? [];
        return { put: { ...before, accounts, linked }, result: true };
      }));
    // An account its person doesn't list leads nowhere, with or without this record.
    if (parted) await shelves.account.remove(account);
    this.#changed();
    return parted ?? false;
  }

  /** Shares with the current rights of the code's maker; returns the reason if that isn't possible. */
  async #letHelp({ project, share }: ProjectUse, by: Person, me: Person): Promise<Refused['why'] | undefined> {
    const { shelves, via, now } = this.#of;
    const owner = { who: { person: by.id }, via, at: now() };
    const sharing = new Sharing({
      shelves,
      now,
      me: async () => by,
      id: async () => project,
      put: (id, change) => putChange(shelves.project, id, 'own', owner, change),
      changed: () => undefined,
    });
    const given = await sharing.give({ ...share, to: { account: via } });
    if (!given.ok) return given.why === 'crowded' ? 'crowded' : 'none';
    await shelves.person.change(me.id, (before) => ({ put: { ...before, inUse: project }, result: undefined }));
    return undefined;
  }

  async #kept(use: CodeUse, under?: string) {
    const { shelves, now } = this.#of;
    const code = mintCode();
    const name = await keepCode(shelves.kept, code, use, now());
    if (under !== undefined) await shelves.kept.set(under, name, CODE_LASTS);
    return { code, until: now() + CODE_LASTS };
  }

  async #fits(me: Person | undefined, other: Person, account: string): Promise<Offer | Refused> {
    const accounts = new Set([...(me?.accounts ?? [this.#of.via]), ...other.accounts]);
    if (accounts.size > LIMITS.accounts) return { ok: false, why: 'too-many-accounts' };
    const [own, theirs] = [await this.#projectsOf(me), await this.#projectsOf(other)];
    const all = new Map([...own, ...theirs].map((project) => [project.id, project]));
    const live = [...all.values()].filter(({ state }) => state.kind !== 'deleted').length;
    if (live > LIMITS.projects || all.size > LIMITS.projectsDeleted) return { ok: false, why: 'full' };
    return { ok: true, kind: 'accounts', account, theirs: theirs.length, own: own.length };
  }

  async #projectsOf(person: Person | undefined): Promise<readonly Project[]> {
    const loaded = await Promise.allSettled(
      (person?.projects ?? []).map(({ id }) => this.#of.shelves.project.load(id)),
    );
    return loaded.flatMap((one) => (one.status === 'fulfilled' && one.value ? [one.value] : []));
  }
}
