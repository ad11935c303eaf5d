/** The memory of a conversation: the last request of a person in a place, kept an hour, so that a follow-up means something. */

import { z } from 'zod';
import { accountKey } from '../accounts/asker.ts';
import { fullName } from '../input/command-shape.ts';
import { type KeyValueStore, Outage } from '../storage/types.ts';
import { readInTime } from '../workers/time-limits.ts';
import { briefOf, sectionNamed } from './brief.ts';
import type { CommandTexts, Outcome, Problems } from './command.ts';
import type { ParsedCommand } from './command-line.ts';
import type { Reader } from './grammar.ts';
import type { Ports, Request } from './ports.ts';
import { faultReference } from './request-id.ts';

const AN_HOUR = 3600 * 1000;
const MOST_PLACES = 50;
const LONGEST = 4000;
/** More than this is a sentence of its own. */
const LONGEST_FEW = 40;

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
async function remember(request: Request, memory: ConversationMemory | undefined, ports: Ports): Promise<void> {
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

/** What a follow-up may go on from: no project's command, and no small talk. */
function isRemembered(command: string): boolean {
  return !command.startsWith('project ') && command !== 'small-talk';
}

/** Keeps a request that was answered, and which cautions this person has now been shown. Never throws. */
export async function rememberAnswer(
  request: Request,
  { command, typed }: Pick<CommandTexts, 'command'> & { readonly typed: ReadonlyMap<string, string> },
  outcome: Outcome,
  memory: ConversationMemory | undefined,
  ports: Ports,
): Promise<void> {
  const name = fullName(command);
  if (name === 'small-talk' && typed.get('about') === 'start-over') return remember(request, undefined, ports);
  if (!isRemembered(name)) return;
  const open = 'problems' in outcome && outcome.problems[0].got === '' ? outcome.problems[0].option : undefined;
  if (!('headline' in outcome) && open === undefined) return;
  const shown = 'headline' in outcome ? briefOf(outcome).topics : [];
  const seen = [...new Set([...(memory?.seen ?? []), ...shown])].slice(-60);
  const texts = Object.fromEntries(typed);
  await remember(request, { command: name, texts, seen, ...(open === undefined ? {} : { open }) }, ports);
}

/** Keeps the request that a question is open for, so that the answer to it can be a few words. Never throws. */
export async function rememberQuestion(
  request: Request,
  { form, open: asked, problems: [first] }: Problems,
  memory: ConversationMemory | undefined,
  ports: Ports,
): Promise<void> {
  const open = asked ?? (first.got === '' ? first.option : undefined);
  if (!form || !isRemembered(form.command) || open === undefined) return;
  await remember(request, { command: form.command, texts: { ...form.told }, seen: memory?.seen ?? [], open }, ports);
}

/** A text that goes on from the last request, made whole with it: a section to open, or what a follow-up changes. */
export async function goingOn(
  text: string,
  memory: ConversationMemory,
  { commands, access, holdings }: Reader,
): Promise<{ readonly said: undefined; readonly parsed: ParsedCommand } | undefined> {
  if (sectionNamed(text) ?? (await sectionMeant(text))) {
    const command = commands.find((one) => fullName(one) === memory.command);
    if (!command || memory.open !== undefined) return undefined;
    return { said: undefined, parsed: { ok: true, command, optionTexts: new Map(Object.entries(memory.texts)) } };
  }
  const { commandTyped, saidOfProject } = await import('./grammar.ts');
  if (commandTyped(text, commands)) return undefined;
  // A statement about a project's room changes the project, whatever was asked before it.
  if (access && saidOfProject(text, commands, holdings) !== undefined) return undefined;
  const { followUp } = await import('./follow-up.ts');
  const next = readInTime(
    () => followUp(text, memory, commands, holdings.preferences),
    () => undefined,
  );
  return next && { said: undefined, parsed: { ok: true, ...next } };
}

/** The section that a few words ask for: “how did you get that”. */
export async function sectionMeant(text: string): Promise<'why' | 'more' | undefined> {
  if (text.length > LONGEST_FEW || /\d/.test(text)) return undefined;
  const { hear, PROBABLE_SCORE } = await import('../language/hearing.ts');
  const heard = hear(text);
  if (heard.kind !== 'talk' || heard.score < PROBABLE_SCORE) return undefined;
  return heard.about === 'why' || heard.about === 'more' ? heard.about : undefined;
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
