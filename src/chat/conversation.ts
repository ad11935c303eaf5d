/** The memory of a conversation: the last request of a person in a place, kept an hour, so that a follow-up means something. */

import { z } from 'zod';
import { accountKey } from '../accounts/records.ts';
import type { Screened } from '../hazards/hazard.ts';
import { screen } from '../hazards/screen.ts';
import { fullName } from '../input/command-shape.ts';
import { type KeyValueStore, Outage } from '../storage/types.ts';
import { briefOf, saysBox } from './brief.ts';
import type { CommandTexts, Outcome, Problems } from './command.ts';
import { answeredFigure, figureSchema, withFigure } from './last-figures.ts';
import type { Ports, Request } from './ports.ts';
import { faultReference } from './request-id.ts';
import { piecesIn } from './said-before.ts';

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
  /** The sentence it began with. */
  said: z.string().max(LONGEST).optional(),
  /** Topics of the cautions that this person was shown. */
  seen: z.array(z.string().max(40)).max(60),
  /** Whether a carton is called a box here. */
  box: z.literal(true).optional(),
  /** The request before an aside. */
  earlier: z
    .object({
      command: z.string().max(60),
      texts: z.record(z.string().max(40), z.string().max(LONGEST)),
      said: z.string().max(LONGEST).optional(),
    })
    .optional(),
  /** The year of the house. */
  built: z.number().int().optional(),
  /** What was said of the floor so far, whatever it was said for: rooms, a plank or the pieces of one, a box. */
  known: z.record(z.string().max(40), z.string().max(LONGEST)).optional(),
  /** What the last answers came to. */
  figures: z.array(figureSchema).max(10).optional(),
  /** A project's rooms were changed last. */
  project: z.literal(true).optional(),
  /** Units that were requested for the answer. */
  units: z.enum(['imperial', 'metric']).optional(),
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

/** A conversation without a request to go on from. */
const NOTHING: ConversationMemory = { command: '', texts: {}, seen: [] };

/** Keeps a request that was answered, and which cautions this person has now been shown. Never throws. */
export async function rememberAnswer(
  request: Request,
  {
    command,
    typed,
    sentence,
    units,
    aside,
  }: Pick<CommandTexts, 'command'> & Sentence & { readonly typed: ReadonlyMap<string, string> },
  outcome: Outcome,
  memory: ConversationMemory | undefined,
  ports: Ports,
): Promise<void> {
  const name = fullName(command);
  if (name === 'small-talk' && typed.get('about') === 'start-over') return remember(request, undefined, ports);
  if (/^project (?:room|new)$/.test(name) && 'headline' in outcome)
    return remember(request, { ...(memory ?? NOTHING), project: true }, ports);
  if (!isRemembered(name)) return;
  const open = 'problems' in outcome && outcome.problems[0].got === '' ? outcome.problems[0].option : undefined;
  if (!('headline' in outcome) && open === undefined) {
    const own = Object.fromEntries(typed);
    const known = kept(request, memory, own);
    // What was refused, or is wrong in the first thing said, may be mended by one more word; a slip later leaves what was answered.
    const last = 'why' in outcome || !memory?.command ? { ...NOTHING, command: name, texts: own } : memory;
    return remember(request, { ...last, seen: memory?.seen ?? [], ...known, ...more({ open, said: sentence }) }, ports);
  }
  const shown = 'headline' in outcome ? briefOf(outcome).topics : [];
  const seen = [...new Set([...(memory?.seen ?? []), ...shown])].slice(-60);
  if (aside && memory) return remember(request, { ...memory, seen }, ports);
  const texts = Object.fromEntries(typed);
  const said = sentence ?? (memory?.command === name ? memory.said : undefined);
  const earlier = ASIDES.includes(name) ? lastOf(memory) : undefined;
  const besides = { ...(units === undefined ? {} : { units }), ...(earlier ? { earlier } : {}) };
  const figure = 'headline' in outcome ? answeredFigure(name, texts.area ?? texts.room, outcome.data) : undefined;
  const figures = withFigure(memory?.figures ?? [], figure, request.text);
  await remember(
    request,
    {
      command: name,
      texts,
      seen,
      ...kept(request, memory, texts),
      ...more({ open, said }),
      ...besides,
      figures: [...figures],
    },
    ports,
  );
}

/** Questions after which the request before them may be gone on with. */
export const ASIDES = ['handbook', 'help', 'safety', 'sources', 'tally'];

export function lastOf(memory: ConversationMemory | undefined): ConversationMemory['earlier'] {
  if (!memory || ASIDES.includes(memory.command)) return memory?.earlier;
  const { command, texts, said } = memory;
  return { command, texts, ...(said === undefined ? {} : { said }) };
}

function more({ open, said }: Pick<ConversationMemory, 'open' | 'said'>): Pick<ConversationMemory, 'open' | 'said'> {
  return { ...(open === undefined ? {} : { open }), ...(said === undefined ? {} : { said: said.slice(0, LONGEST) }) };
}

/** Keeps the request that a question is open for, so that the answer to it can be a few words. Never throws. */
export async function rememberQuestion(
  request: Request,
  { form, open: asked, complaint, problems: [first] }: Problems,
  memory: ConversationMemory | undefined,
  ports: Ports,
): Promise<void> {
  const open = asked ?? (first.got === '' ? first.option : undefined);
  if (!form || !isRemembered(form.command) || open === undefined) {
    const known = kept(request, memory, form?.told ?? {});
    return remember(request, { ...(memory ?? NOTHING), ...known }, ports);
  }
  const goesOn = complaint ?? (memory?.open !== undefined && memory.command === form.command);
  // What answers the question belongs to the sentence that it was asked about.
  const before = (request.mistaken ?? memory)?.said;
  const said = !goesOn ? request.text : complaint || before === undefined ? before : `${before}, ${request.text}`;
  const { command, told } = form;
  const seen = memory?.seen ?? [];
  await remember(
    request,
    { command, texts: { ...told }, seen, ...kept(request, memory, told), ...more({ open, said }) },
    ports,
  );
}

function kept(
  { text, preferences }: Request,
  memory: ConversationMemory | undefined,
  texts: Readonly<Record<string, string>>,
): Pick<ConversationMemory, 'box' | 'built' | 'known' | 'figures'> {
  const built = yearBuilt(text) ?? memory?.built;
  const known = piecesIn(text, texts, memory?.known ?? {}, preferences);
  return {
    ...(memory?.box || saysBox(text) ? { box: true } : {}),
    ...(built === undefined ? {} : { built }),
    known,
    ...(memory?.figures ? { figures: memory.figures } : {}),
  };
}

const BUILT =
  /\b(?:built|house|home|place|apartment|condo)\b[^.!?\d]{0,20}\b(1[89]\d\d)\b|\b(1[89]\d\d)s?\b[^.!?\d]{0,12}\b(?:build|house|home|place|bungalow|ranch|apartment|condo|cottage)\b/i;

function yearBuilt(text: string): number | undefined {
  const [, before, behind] = BUILT.exec(text) ?? [];
  const year = Number(before ?? behind);
  return year > 0 ? year : undefined;
}

/** What a message says of hazards, in a house whose year was said before: old tile is named once, its year once. */
export function screenedInHouse(said: Screened, text: string, memory: ConversationMemory | undefined): Screened {
  if (memory?.built === undefined || said.sightings.length > 0 || yearBuilt(text) !== undefined) return said;
  const { sightings } = screen(`house built ${memory.built}. ${text}`);
  const words = text.slice(0, LONGEST_QUOTED);
  return { ...said, sightings: sightings.filter(({ level }) => level === 'stop').map((one) => ({ ...one, words })) };
}

const LONGEST_QUOTED = 120;

/** The sentence that a request began with, if it was one. */
interface Sentence {
  readonly sentence?: string | undefined;
  readonly units?: ConversationMemory['units'];
  readonly aside?: true | undefined;
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
