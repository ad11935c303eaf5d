/** Sends an ask's answers: one message where all is ready soon, else a first word in time, and the whole in its place later. */

import {
  type APIAttachment,
  type APIComponentInContainer,
  type APIModalInteractionResponseCallbackData,
  ComponentType,
} from 'discord.js';
import type { Form, Problems } from '../../chat/command.ts';
import { commandNamed } from '../../chat/form.ts';
import { commandTyped } from '../../chat/grammar.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Request } from '../../chat/ports.ts';
import type { KeptAnswer } from '../../chat/saved-replies.ts';
import { fullName } from '../../input/command-shape.ts';
import { CHAT, sayFault } from '../../text/chat-text.ts';
import { type AnswerSession, deliverAnswers, storeForButtons } from '../session.ts';
import { answerRowsOf, problemRows } from './buttons.ts';
import { workCard } from './cards.ts';
import { drawnFor, inTime, refused, tellFault, tellUnlessOutage } from './fault.ts';
import { greetFirst, modalOf, openForm, sayTo, wordOf } from './forms.ts';
import type { Came } from './interaction.ts';
import { CLAIM_TIME, KEEP_TIME, TOKEN_TIME } from './limits.ts';
import { type Drawn, drawnAhead, drawnBy, outgoing, relisted } from './outgoing.ts';
import { type ButtonRow, escapedMarkdown, label } from './page.ts';
import { plainest, render } from './render.ts';
import { followProject } from './thread.ts';
import { type Ask, type DiscordContext, type Outgoing, preferencesIn, type ResponseChannel } from './types.ts';

// Each interaction acts once: by what this process has seen, and by the store where another process could
// have it too.

/**
 * Whether no other process took the interaction. Where the store does not answer it is taken all the same: Discord accepts one
 * response only, and nothing that is kept can be changed without the store.
 */
export async function claimed({ id }: Came, access: DiscordContext): Promise<boolean> {
  try {
    return await inTime(access.kept.claim(`discord:${id}`, TOKEN_TIME), CLAIM_TIME, access);
  } catch (cause) {
    tellUnlessOutage(access, cause);
    return true;
  }
}

/** Whether an ask may change what somebody keeps, so that it must not run in two processes; a sum twice over does no harm. */
function changesSomething({ given, text }: Ask, { commands }: Pick<DiscordContext, 'commands'>): boolean {
  const command = given?.command ?? commandTyped(text, commands);
  return command?.group === 'project';
}

// Answers that could not be delivered: kept for the one who asked, and brought with their next ask.

/** Nothing more reaches this interaction; what could be kept of its answer is. */
export class Undelivered extends Error {
  override readonly name = 'Undelivered';
}

/** Brings the answer that was missed, if there is one, behind whatever was just answered. Rejects as the wire does. */
export async function bringMissed(access: DiscordContext, came: Came): Promise<void> {
  const missed = await inTime(access.missed.take(came.account, came.at), KEEP_TIME, access);
  if (!missed) return;
  try {
    await bring(missed.answer, missed.id, access, came);
  } catch (cause) {
    await inTime(access.missed.note(came.account, missed.id), KEEP_TIME, access);
    throw cause;
  }
}

async function bring(answer: KeptAnswer, id: string, access: DiscordContext, came: Came): Promise<void> {
  const [first, ...more] = render(answer.reply);
  if (!first) throw new Error('an answer without a message');
  const view = { opened: 'brief', part: 0, parts: more.length + 1 } as const;
  const below = answerRowsOf(answer.reply, { id, showable: came.ephemeral, view }, access);
  const above = [{ type: ComponentType.TextDisplay, content: CHAT.missed } as const];
  const [message] = await outgoing([first], { above, below }, drawnFor(access, came));
  await access.wire.followUp(came, message, came.ephemeral);
}

/** Who asked what, above an answer that others see; `said`: what its author says of the plank, or is asked. */
export function askedBy(
  { asker }: Pick<Came, 'asker'>,
  { text, reply, author = asker.id }: Pick<KeptAnswer, 'text' | 'reply' | 'author'>,
  said?: (who: string) => string,
) {
  const given = Object.values(reply.form?.told ?? {}).join(' · ');
  const asked = reply.understood?.said ?? (given === '' ? text : given);
  const who = `<@${author}>`;
  const requested = CHAT.requested(who, escapedMarkdown(label(asked, ASKED)));
  const content = [requested, ...(said ? [said(who)] : [])].map((line) => `-# ${line}`).join('\n');
  return [{ type: ComponentType.TextDisplay, content }] satisfies readonly APIComponentInContainer[];
}

/** Characters of a question that is repeated. */
const ASKED = 300;

// Brings what is prepared to the one who asked, whatever Discord says: in time, edited, again in plainer
// form, or kept for later.

/** An answer ready to be sent, or the form that asks for what is missing. */
type Prepared = { readonly modal: APIModalInteractionResponseCallbackData } | PreparedMessages;

interface PreparedMessages {
  readonly answer: Answer;
  readonly last: boolean;
  readonly messages: readonly [Outgoing, ...Outgoing[]];
  readonly ephemeral: boolean;
}

/** What a request is answered with, and where. */
interface Surroundings {
  readonly ask: Ask;
  readonly came: Came;
  readonly way: ResponseChannel;
  readonly access: DiscordContext;
  readonly drawn: Drawn;
}

/** What became of the first answer. */
interface Sent {
  /** Whether nothing is to be put in its place. */
  readonly whole: boolean;
  /** Its first message, as Discord has it, where it was sent in time. */
  readonly shown?: {
    readonly answer: Answer;
    readonly message: Outgoing;
    readonly attachments: readonly APIAttachment[];
  };
  /** Whether further messages are for the asker alone. */
  readonly ephemeral: boolean;
}

/** Sends the first answer in time, or defers and puts it in its place as soon as it is there. */
async function sendFirst(session: AnswerSession, around: Surroundings): Promise<Sent> {
  const { came, way, access } = around;
  const { ephemeral } = way;
  const ready = session.first.then(({ answer, last }) => prepared(answer, last, true, session, around));
  const wait = access.wait(DEFER);
  const early = await Promise.race([ready, wait.over.then(() => undefined)]);
  wait.cancel();
  if (early === undefined) {
    await access.wire.defer(came, way);
    const now = await ready;
    if ('modal' in now) return { whole: false, ephemeral };
    const [first] = now.messages;
    await put(first, now.answer, around);
    if (now.last) await followUp(now, ephemeral, around);
    return { whole: now.last, ephemeral };
  }
  if ('modal' in early) {
    await openForm(early.modal, came, access);
    return { whole: true, ephemeral };
  }
  const { answer, last } = early;
  const [message] = early.messages;
  const update = way.update && !isFaultInPublic(answer, around);
  const whole = { ...way, update, ephemeral: early.ephemeral };
  const respond = (one: Outgoing) => responded(one, came, whole, access, !last && message.files.length > 0);
  const attachments = (await inPlainerForm(message, answer, came, access, respond)) ?? [];
  if (last) await followUp(early, early.ephemeral, around);
  return { whole: last, shown: { answer, message, attachments }, ephemeral: early.ephemeral };
}

/** Puts the last answer in place of the first. */
async function editLast(last: Answer, sent: Sent, session: AnswerSession, around: Surroundings): Promise<void> {
  const now = await prepared(last, true, false, session, around);
  if ('modal' in now) return;
  const { shown, ephemeral } = sent;
  // The same answer again only loses the word that it is being worked on.
  const [first] = now.messages;
  const same = shown && shown.answer !== last ? relisted(first, shown.message, shown.attachments) : first;
  await put(same, last, around);
  await followUp(now, ephemeral, around);
}

/** Puts an answer in place of what stands; a fault of ours is told beside it where others read along. */
async function put(message: Outgoing, answer: Answer, around: Surroundings): Promise<void> {
  const { came, access } = around;
  if (isFaultInPublic(answer, around)) await access.wire.followUp(came, message, true);
  else await edited(message, answer, came, access);
}

function isFaultInPublic(answer: Answer, { ask }: Surroundings): boolean {
  return 'reference' in answer && ask.open === true;
}

/** Sends what comes behind the first message. */
async function followUp(
  { messages, answer }: PreparedMessages,
  ephemeral: boolean,
  { came, access }: Surroundings,
): Promise<void> {
  for (const message of messages.slice(1)) {
    await inPlainerForm(message, answer, came, access, (one) => access.wire.followUp(came, one, ephemeral));
  }
}

/** An answer that cannot reach anybody any more is stored for the next time; rejects with Undelivered. */
async function lost(cause: unknown, session: AnswerSession, { came, access }: Surroundings): Promise<void> {
  const why = cause instanceof Undelivered ? 'gone' : refused(cause);
  if (why === 'answered') return;
  const answer = await session.last.catch(() => undefined);
  // Without an answer there is still a word for whoever asked.
  if (!answer && why !== 'gone') throw cause;
  if (why !== 'gone') tellFault(access, cause);
  if (answer) await session.save(answer);
  if (answer && 'headline' in answer) await inTime(access.missed.note(came.account, session.id), KEEP_TIME, access);
  throw new Undelivered('an answer that reached nobody', { cause });
}

/** Responds; where the message to be changed was deleted, by one of its own. */
export async function responded(
  message: Outgoing,
  came: Came,
  way: ResponseChannel,
  access: DiscordContext,
  attachments = false,
): Promise<readonly APIAttachment[]> {
  try {
    return await access.wire.respond(came, message, way, attachments);
  } catch (cause) {
    if (refused(cause) !== 'message') throw cause;
    return access.wire.respond(came, message, { ...way, update: false }, attachments);
  }
}

/** Edits the first response; where its message was deleted, the answer comes as a message of its own. */
export async function edited(message: Outgoing, answer: Answer, came: Came, access: DiscordContext): Promise<void> {
  await inPlainerForm(message, answer, came, access, async (one) => {
    try {
      await access.wire.edit(came, one);
    } catch (cause) {
      if (refused(cause) !== 'message') throw cause;
      await access.wire.followUp(came, one, came.ephemeral);
    }
  });
}

/** Discord takes nothing of an answer in its place, in no form. */
export class NotTaken extends Error {
  override readonly name = 'NotTaken';
}

/**
 * Sends; what Discord refuses goes out again in plainer forms, and where its place takes none, to the asker's own messages, with
 * a word where it was asked. Undefined where it went there; rejects with Undelivered where it reached nobody.
 */
export async function inPlainerForm<T>(
  message: Outgoing,
  answer: Answer,
  came: Came,
  access: DiscordContext,
  send: (message: Outgoing) => Promise<T>,
): Promise<T | undefined> {
  try {
    return await inSomeForm(message, answer, send, (cause) => tellFault(access, cause));
  } catch (cause) {
    if (!(cause instanceof NotTaken)) throw cause;
    try {
      await inSomeForm(message, answer, (one) => access.wire.direct(came.asker.id, one));
    } catch (closed) {
      await sayTo(came, access, CHAT.notTaken);
      throw new Undelivered('an answer that no place took', { cause: closed });
    }
    // Whoever wrote a message in a channel has it before their eyes now.
    if (!came.open) await sayTo(came, access, CHAT.takenElsewhere);
    return undefined;
  }
}

/** Sends a message, else its text and a file, else its headline alone; `tell` is told the first refusal. Rejects with NotTaken after the last. */
export async function inSomeForm<T>(
  message: Outgoing,
  answer: Answer,
  send: (message: Outgoing) => Promise<T>,
  tell: (cause: unknown) => void = () => {},
): Promise<T> {
  let first: unknown;
  for (const one of [message, plainest(answer), wordOf(inWords(answer))]) {
    try {
      return await send(one);
    } catch (cause) {
      if (!['content', 'message'].includes(refused(cause))) throw cause;
      if (first === undefined) tell(cause);
      first ??= cause;
    }
  }
  throw new NotTaken('an answer in no form', { cause: first });
}

function inWords(answer: Answer): string {
  if ('headline' in answer) return label(answer.headline, ASKED);
  if ('problems' in answer) return label(answer.problems[0].expected, ASKED);
  return 'why' in answer ? `${answer.why} ${answer.call}` : sayFault(answer.reference, answer.outage);
}

/** How long the last answer is waited for before an earlier one is shown, ms. */
const SETTLE = 700;
/** A first response is taken for 3 s: by then something must be on its way, and the network has its share. */
const DEFER = 1500;
/** How long the pictures of what is seen first are waited for, ms. */
const PICTURES = 3000;

/** Answers a request. Rejects with Undelivered where the answer reaches nobody. */
export async function sendAnswers(ask: Ask, came: Came, way: ResponseChannel, access: DiscordContext): Promise<void> {
  // Two processes may be connected for a moment, while one takes over from the other.
  if (!access.shared && changesSomething(ask, access) && !(await claimed(came, access))) return;
  const { text, written, given, mistaken } = ask;
  const request: Request = {
    asker: came.asker,
    preferences: preferencesIn(came.locale, access.preferences),
    text,
    ...(came.server === undefined ? {} : { server: came.server }),
    ...(came.channel === undefined ? {} : { place: came.channel }),
    ...(written === undefined ? {} : { written }),
    ...(given === undefined ? {} : { given }),
    ...(mistaken === undefined ? {} : { mistaken }),
    ...(ask.open ? { open: true } : {}),
  };
  let latest: Answer | undefined;
  const { drawn, ahead } = drawnAhead(drawnFor(access, came));
  async function* drawing(): AsyncGenerator<Answer> {
    for await (const answer of access.answer(request)) {
      latest = answer;
      yield answer;
      ahead(answer);
    }
  }
  const around = { ask, came, way, access, drawn };
  let sent: Sent;
  await deliverAnswers(
    drawing(),
    { patience: access.wait(SETTLE), saves: access.saves },
    {
      async send(session) {
        sent = await sendFirst(session, around);
        return sent.whole;
      },
      edit: (last, session) => editLast(last, sent, session, around),
      save: (answer, id) => isKept(answer, ask, came, way, access, id),
      lost: (cause, session) => lost(cause, session, around),
    },
  );
  if (!latest || !('headline' in latest)) return;
  await greetFirst(came, access);
  await followProject(latest, came, access);
}

async function prepared(
  answer: Answer,
  ended: boolean,
  early: boolean,
  session: AnswerSession,
  around: Surroundings,
): Promise<Prepared> {
  const { ask, way, access, drawn } = around;
  if (early && ask.bare && 'problems' in answer) {
    const given = answer.form?.command === fullName(ask.bare) ? answer.form.told : {};
    return { modal: modalOf(ask.bare, given, '') };
  }
  void session.save(answer);
  const wait = early ? access.wait(PICTURES) : undefined;
  const hasty = wait && drawnBy(wait.over, drawn);
  const card =
    ask.stays && access.saves.works() && 'headline' in answer ? workCard(ask.stays, answer, session.id) : undefined;
  const all = card ? [card.page] : render(answer);
  const rows = card ? card.rows : access.saves.works() ? rowsOf(answer, session.id, all.length, around) : [];
  // The parts of a reply are leafed through in its first message.
  const sent = 'headline' in answer ? all.slice(0, 1) : all;
  const above = wordAbove(ask, around.came);
  const [first, ...rest] = await outgoing(sent, { above, below: rows }, hasty?.drawn ?? drawn);
  wait?.cancel();
  const last = ended && hasty?.late() !== true;
  const messages = last ? ([first, ...rest] as const) : ([withWord(first, CHAT.working)] as const);
  return { answer, last, messages, ephemeral: isPrivate(answer, way) };
}

/** A message with a word below its card. */
function withWord(message: Outgoing, word: string): Outgoing {
  const content = `-# ${escapedMarkdown(word)}`;
  return { ...message, components: [...message.components, { type: ComponentType.TextDisplay, content }] };
}

/** An answer meant for the channel is seen there, a fault of ours by its asker alone; every other goes the way the ask came. */
function isPrivate(answer: Answer, way: ResponseChannel): boolean {
  if ('reference' in answer) return true;
  return 'audience' in answer && answer.audience === 'channel' ? false : way.ephemeral;
}

/** Whether others read an answer where it goes, as they read what it answers. */
function isOpen(ask: Ask, came: Came, way: ResponseChannel): boolean {
  return came.open === true || (ask.open === true && way.update);
}

/** Whose question it was, and who said more. */
function wordAbove({ added, filled }: Ask, { asker }: Came): readonly APIComponentInContainer[] {
  const who = `<@${asker.id}>`;
  if (added === undefined && !filled) return [];
  const content = `-# ${added === undefined ? CHAT.filled(who) : CHAT.added(`<@${added}>`, who)}`;
  return [{ type: ComponentType.TextDisplay, content }];
}

function rowsOf(
  answer: Answer,
  id: string,
  parts: number,
  { ask, came, way, access }: Surroundings,
): readonly ButtonRow[] {
  const back = way.back === undefined ? {} : { back: way.back };
  if ('headline' in answer) {
    const view = { opened: 'brief', part: 0, parts } as const;
    const open = isOpen(ask, came, way);
    return answerRowsOf(answer, { id, showable: isPrivate(answer, way) && !open, shown: open, view, ...back }, access);
  }
  if (!('problems' in answer)) return [];
  const { problems, again = false, example, choices = [] } = answer;
  const missing = problems.length === 1 ? problems[0].option : undefined;
  const offered = { fix: problems[0].fix, again, example: example !== undefined, choices, missing, ...back };
  return problemRows(id, formOf(answer, ask, access) !== undefined, offered);
}

/** The form that mends an ask; where nothing was read in somebody's message, that of planks, with nothing in it. */
function formOf({ form, again }: Problems, { written }: Ask, { commands }: DiscordContext): Form | undefined {
  if (form || again || written !== 'message') return form;
  return commandNamed('floor planks', commands) && { command: 'floor planks', told: {} };
}

/** Keeps what the buttons of an answer need. Never rejects: false where it could not be kept. */
async function isKept(
  answer: Answer,
  ask: Ask,
  came: Came,
  way: ResponseChannel,
  access: DiscordContext,
  id: string,
): Promise<boolean> {
  try {
    const shown = isOpen(ask, came, way) || (came.ephemeral && !isPrivate(answer, way));
    const form = 'problems' in answer ? formOf(answer, ask, access) : undefined;
    const stored = { by: came.account, text: ask.text, shown, form, wrongFirst: true, author: ask.author };
    await inTime(storeForButtons(access.kept, id, answer, stored), KEEP_TIME, access);
    return true;
  } catch (cause) {
    tellUnlessOutage(access, cause);
    return false;
  }
}
