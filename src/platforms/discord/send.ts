/** Sends an ask's answers: one message where all is ready soon, else a first word in time, and the whole in its place later. */

import type { APIAttachment, APIModalInteractionResponseCallbackData } from 'discord-api-types/v10';
import type { Form, Problems } from '../../chat/command.ts';
import { commandNamed } from '../../chat/form.ts';
import { parseLine } from '../../chat/grammar.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Request } from '../../chat/ports.ts';
import { type KeptAnswer, keptAnswer, mintId } from '../../chat/saved-replies.ts';
import { fullName } from '../../input/command-shape.ts';
import { CHAT } from '../../text/chat-text.ts';
import { storeForButtons } from '../session.ts';
import { answerRowsOf, type ButtonRow, problemRows } from './buttons.ts';
import { drawnFor, inTime, refused, tellFault, tellUnlessOutage } from './fault.ts';
import { modalOf } from './forms.ts';
import type { Came } from './interaction.ts';
import { CLAIM_TIME, KEEP_TIME, TOKEN_TIME } from './limits.ts';
import { type Drawn, drawnAhead, drawnBy, outgoing, relisted } from './outgoing.ts';
import { packedMessages, textLines } from './page.ts';
import { plainest, render } from './render.ts';
import type { Ask, DiscordContext, Outgoing, ResponseChannel } from './types.ts';

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
function changesSomething(
  { form, text }: Ask,
  { commands, preferences }: Pick<DiscordContext, 'commands' | 'preferences'>,
): boolean {
  if (form) return form.command.group === 'project';
  const parsed = parseLine(text, commands, preferences);
  return parsed.ok && parsed.command.group === 'project';
}

// Answers that could not be delivered: kept for the one who asked, and brought with their next ask.

/** As long as answers are kept. */
const KEPT_FOR = 7 * 24 * 3600 * 1000;

/** Nothing more reaches this interaction; what could be kept of its answer is. */
export class Undelivered extends Error {
  override readonly name = 'Undelivered';
}

const keyOf = (account: string): string => `missed:${account}`;

/** Notes the kept answer of an id as not delivered. Throws Outage. */
async function noteMissed(access: DiscordContext, account: string, id: string): Promise<void> {
  access.looks.again(account);
  await inTime(access.kept.set(keyOf(account), id, KEPT_FOR), KEEP_TIME, access);
}

/** Brings the answer that was missed, if there is one, behind whatever was just answered. Rejects as the wire does. */
export async function bringMissed(access: DiscordContext, came: Came): Promise<void> {
  if (!access.looks.due(came.account, came.at)) return;
  const id = await look(access, came);
  if (typeof id !== 'string' || !(await access.kept.delete(keyOf(came.account)))) return;
  const answer = await keptAnswer(access.kept, id, came.account);
  if (!answer) return;
  try {
    await bring(answer, id, access, came);
  } catch (cause) {
    await noteMissed(access, came.account, id);
    throw cause;
  }
}

async function look(access: DiscordContext, came: Came): Promise<unknown> {
  try {
    return await inTime(access.kept.get(keyOf(came.account)), KEEP_TIME, access);
  } catch (cause) {
    access.looks.again(came.account);
    throw cause;
  }
}

async function bring(answer: KeptAnswer, id: string, access: DiscordContext, came: Came): Promise<void> {
  const messages = [...packedMessages([textLines([CHAT.missed])]), ...render(answer.reply)];
  const [note, ...rest] = await outgoing(messages, [], drawnFor(access, came));
  const rows = answerRowsOf(answer, answer.reply, id, came.ephemeral, access);
  await access.wire.followUp(came, note, came.ephemeral);
  for (const [i, message] of rest.entries()) {
    const whole = i === 0 ? { ...message, components: [...message.components, ...rows] } : message;
    await access.wire.followUp(came, whole, came.ephemeral);
  }
}

// Brings what is prepared to the one who asked, whatever Discord says: in time, edited, again in plainer
// form, or kept for later.

/** An answer ready to be sent, or the form that asks for what is missing. */
type Prepared =
  | { readonly answer: Answer; readonly last: boolean; readonly modal: APIModalInteractionResponseCallbackData }
  | {
      readonly answer: Answer;
      readonly last: boolean;
      readonly messages: readonly [Outgoing, ...Outgoing[]];
      readonly ephemeral: boolean;
    };

interface Coming {
  readonly ready: Promise<Prepared>;
  /** The last answer, ready to be sent. */
  again(): Promise<Prepared>;
  /** Keeps the last answer under its id, without sending it; gives it. */
  keepLast(): Promise<Answer | undefined>;
  /** Short id that the answer is kept under. */
  readonly id: string;
}

/** Delivers. What cannot reach anybody any more is kept for the next time, and rejects with Undelivered. */
async function deliver(
  coming: Coming,
  came: Came,
  way: ResponseChannel,
  access: DiscordContext,
  patience: number,
): Promise<void> {
  try {
    await delivered(coming, came, way, access, patience);
  } catch (cause) {
    const why = refused(cause);
    if (why === 'answered') return;
    if (why !== 'gone') tellFault(access, cause);
    const answer = await coming.keepLast();
    if (answer && 'headline' in answer) await noteMissed(access, came.account, coming.id);
    throw new Undelivered('an answer that reached nobody', { cause });
  }
}

async function delivered(
  coming: Coming,
  came: Came,
  way: ResponseChannel,
  access: DiscordContext,
  patience: number,
): Promise<void> {
  const wait = access.wait(patience);
  const early = await Promise.race([coming.ready, wait.over.then(() => undefined)]);
  wait.cancel();
  let shown: readonly APIAttachment[] = [];
  let pages: Outgoing | undefined;
  let now: Prepared;
  let seen = way.ephemeral;
  if (early === undefined) {
    await access.wire.defer(came, way);
    now = await coming.ready;
    if ('modal' in now) now = await coming.again();
    if ('modal' in now) return;
    const [first] = now.messages;
    await edited(first, now.answer, came, access);
  } else if ('modal' in early) {
    await access.wire.modal(came, early.modal);
    return;
  } else {
    now = early;
    seen = early.ephemeral;
    const [first] = early.messages;
    const respond = (message: Outgoing) =>
      access.wire.respond(came, message, { ...way, ephemeral: early.ephemeral }, !early.last && first.files.length > 0);
    shown = await inPlainerForm(first, early.answer, access, respond);
    pages = first;
  }
  if (!now.last) {
    const before = now.answer;
    now = await coming.again();
    if ('modal' in now) return;
    // The same answer again only loses the word that it is being worked on.
    const [first] = now.messages;
    const same = before !== now.answer && pages ? relisted(first, pages, shown) : first;
    await edited(same, now.answer, came, access);
  }
  const { messages, answer } = now;
  for (const message of messages.slice(1)) {
    await inPlainerForm(message, answer, access, (one) => access.wire.followUp(came, one, seen));
  }
}

/** Edits the first response; where its message was deleted, the answer comes as a message of its own. */
async function edited(message: Outgoing, answer: Answer, came: Came, access: DiscordContext): Promise<void> {
  try {
    await inPlainerForm(message, answer, access, (one) => access.wire.edit(came, one));
  } catch (cause) {
    if (refused(cause) !== 'message') throw cause;
    await inPlainerForm(message, answer, access, (one) => access.wire.followUp(came, one, came.ephemeral));
  }
}

/** Sends; what Discord refuses to take goes out again as text and a file, and the refusal is told as a fault of ours. */
async function inPlainerForm<T>(
  message: Outgoing,
  answer: Answer,
  access: DiscordContext,
  send: (message: Outgoing) => Promise<T>,
): Promise<T> {
  try {
    return await send(message);
  } catch (cause) {
    if (refused(cause) !== 'content') throw cause;
    tellFault(access, cause);
    return send(plainest(answer));
  }
}

// The answers of an ask as they come: the latest, and when the first and the last have come.

interface Following {
  /** The latest so far. */
  latest(): Answer | undefined;
  ended(): boolean;
  /** Resolves with the first answer, or the end. */
  readonly first: Promise<void>;
  readonly end: Promise<void>;
}

/** Follows a stream that never throws (bot/answer catches every fault); `onAnswer` is told of each as it comes. */
function following(answers: AsyncIterable<Answer>, onAnswer: (answer: Answer) => void = () => {}): Following {
  let latest: Answer | undefined;
  let ended = false;
  let came: () => void = () => {};
  const first = new Promise<void>((resolve) => {
    came = resolve;
  });
  const end = (async () => {
    try {
      for await (const one of answers) {
        latest = one;
        came();
        onAnswer(one);
      }
    } finally {
      ended = true;
      came();
    }
  })();
  return { latest: () => latest, ended: () => ended, first, end };
}

/** How long the last answer is waited for before an earlier one is shown, ms. */
const SETTLE = 700;
/** A first response is taken for 3 s: by then something must be on its way, and the network has its share. */
const DEFER = 1500;
/** How long the pictures of what is seen first are waited for, ms. */
const PICTURES = 3000;

/** Answers an ask. Rejects with Undelivered where the answer reaches nobody. */
export async function sendAnswers(ask: Ask, came: Came, way: ResponseChannel, access: DiscordContext): Promise<void> {
  // Two processes may be connected for a moment, while one takes over from the other.
  if (!access.shared && changesSomething(ask, access) && !(await claimed(came, access))) return;
  const request: Request = {
    asker: came.asker,
    preferences: access.preferences,
    text: ask.text,
    ...(came.server === undefined ? {} : { server: came.server }),
    ...(came.channel === undefined ? {} : { place: came.channel }),
    ...(ask.written === undefined ? {} : { written: ask.written }),
  };
  const { drawn, ahead } = drawnAhead(drawnFor(access, came));
  const stream = following(access.answer(request), ahead);
  const id = mintId();
  const keep = (answer: Answer) => access.keeping.keep(id, () => isKept(answer, ask, came, way, access, id));
  const prepare = async (early: boolean): Promise<Prepared> => {
    const answer = stream.latest();
    if (!answer) throw new Error('an ask without an answer');
    return prepared(answer, stream.ended(), early, { ask, way, access, id, drawn, keep });
  };
  const ready = settled(stream, access).then(() => prepare(true));
  const again = () => stream.end.then(() => prepare(false));
  const keepLast = async (): Promise<Answer | undefined> => {
    await stream.end;
    const answer = stream.latest();
    if (answer) await keep(answer);
    return answer;
  };
  try {
    await deliver({ ready, again, keepLast, id }, came, way, access, DEFER);
  } finally {
    await access.keeping.settled(id);
  }
}

/** When there is something to show: the last answer, or what came by the time it should have. */
async function settled(stream: Following, access: DiscordContext): Promise<void> {
  const wait = access.wait(SETTLE);
  await Promise.race([stream.end, wait.over]);
  wait.cancel();
  await stream.first;
}

interface Surroundings {
  readonly ask: Ask;
  readonly way: ResponseChannel;
  readonly access: DiscordContext;
  readonly id: string;
  readonly drawn: Drawn;
  /** Keeps the answer for its buttons. */
  keep(answer: Answer): Promise<boolean>;
}

async function prepared(answer: Answer, ended: boolean, early: boolean, around: Surroundings): Promise<Prepared> {
  const { ask, way, access, drawn, keep } = around;
  if (early && ask.bare && 'problems' in answer) {
    const given = answer.form?.command === fullName(ask.bare) ? answer.form.told : {};
    return { answer, last: ended, modal: modalOf(ask.bare, given, '') };
  }
  void keep(answer);
  const wait = early ? access.wait(PICTURES) : undefined;
  const hasty = wait && drawnBy(wait.over, drawn);
  const [first, ...rest] = await outgoing(render(answer), [], hasty?.drawn ?? drawn);
  wait?.cancel();
  const last = ended && hasty?.late() !== true;
  const working = last ? [] : (packedMessages([textLines(['', `-# ${CHAT.working}`])])[0]?.components ?? []);
  const rows = access.keeping.works() ? rowsOf(answer, around) : [];
  const whole = { ...first, components: [...first.components, ...working, ...rows] };
  return { answer, last, messages: [whole, ...(last ? rest : [])], ephemeral: isPrivate(answer, way) };
}

/** An answer meant for the channel is seen there; every other goes the way the ask came. */
function isPrivate(answer: Answer, way: ResponseChannel): boolean {
  return 'audience' in answer && answer.audience === 'channel' ? false : way.ephemeral;
}

function rowsOf(answer: Answer, { ask, way, access, id }: Surroundings): readonly ButtonRow[] {
  if ('headline' in answer) return answerRowsOf(ask, answer, id, isPrivate(answer, way), access);
  if (!('problems' in answer)) return [];
  const { problems, again = false, example } = answer;
  const offered = { fix: problems[0].fix, again, example: example !== undefined };
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
    const shown = came.ephemeral && !isPrivate(answer, way);
    const form = 'problems' in answer ? formOf(answer, ask, access) : undefined;
    const stored = { by: came.account, text: ask.text, shown, form, wrongFirst: true };
    await inTime(storeForButtons(access.kept, id, answer, stored), KEEP_TIME, access);
    return true;
  } catch (cause) {
    tellUnlessOutage(access, cause);
    return false;
  }
}
