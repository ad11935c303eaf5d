/** Brings what is prepared to the one who asked, whatever Discord says: in time, edited, again in plainer form, or kept for later. */

import type { APIAttachment, APIModalInteractionResponseCallbackData } from 'discord-api-types/v10';
import type { Answer } from '../../chat/pipeline.ts';
import type { Came } from './came.ts';
import type { Desk } from './desk.ts';
import { tellFault } from './fault.ts';
import { noteMissed, Undelivered } from './missed.ts';
import { plainest } from './plainest.ts';
import { refused } from './refused.ts';
import { relisted } from './relisted.ts';
import type { Outgoing, Way } from './wire.ts';

/** An answer ready to be sent, or the form that asks for what is missing. */
export type Prepared =
  | { readonly answer: Answer; readonly last: boolean; readonly modal: APIModalInteractionResponseCallbackData }
  | {
      readonly answer: Answer;
      readonly last: boolean;
      readonly messages: readonly [Outgoing, ...Outgoing[]];
      readonly ephemeral: boolean;
    };

export interface Coming {
  readonly ready: Promise<Prepared>;
  /** The last answer, ready to be sent. */
  again(): Promise<Prepared>;
  /** Keeps the last answer under its id, without sending it; gives it. */
  keepLast(): Promise<Answer | undefined>;
  /** Short id that the answer is kept under. */
  readonly id: string;
}

/** Delivers. What cannot reach anybody any more is kept for the next time, and rejects with Undelivered. */
export async function deliver(coming: Coming, came: Came, way: Way, desk: Desk, patience: number): Promise<void> {
  try {
    await delivered(coming, came, way, desk, patience);
  } catch (cause) {
    const why = refused(cause);
    if (why === 'answered') return;
    if (why !== 'gone') tellFault(desk, cause);
    const answer = await coming.keepLast();
    if (answer && 'headline' in answer) await noteMissed(desk, came.account, coming.id);
    throw new Undelivered('an answer that reached nobody', { cause });
  }
}

async function delivered(coming: Coming, came: Came, way: Way, desk: Desk, patience: number): Promise<void> {
  const wait = desk.wait(patience);
  const early = await Promise.race([coming.ready, wait.over.then(() => undefined)]);
  wait.cancel();
  let shown: readonly APIAttachment[] = [];
  let pages: Outgoing | undefined;
  let now: Prepared;
  let seen = way.ephemeral;
  if (early === undefined) {
    await desk.wire.defer(came, way);
    now = await coming.ready;
    if ('modal' in now) now = await coming.again();
    if ('modal' in now) return;
    const [first] = now.messages;
    await edited(first, now.answer, came, desk);
  } else if ('modal' in early) {
    await desk.wire.modal(came, early.modal);
    return;
  } else {
    now = early;
    seen = early.ephemeral;
    const [first] = early.messages;
    const respond = (message: Outgoing) =>
      desk.wire.respond(came, message, { ...way, ephemeral: early.ephemeral }, !early.last && first.files.length > 0);
    shown = await inPlainerForm(first, early.answer, desk, respond);
    pages = first;
  }
  if (!now.last) {
    const before = now.answer;
    now = await coming.again();
    if ('modal' in now) return;
    // The same answer again only loses the word that it is being worked on.
    const [first] = now.messages;
    const same = before !== now.answer && pages ? relisted(first, pages, shown) : first;
    await edited(same, now.answer, came, desk);
  }
  const { messages, answer } = now;
  for (const message of messages.slice(1)) {
    await inPlainerForm(message, answer, desk, (one) => desk.wire.followUp(came, one, seen));
  }
}

/** Edits the first response; where its message was deleted, the answer comes as a message of its own. */
async function edited(message: Outgoing, answer: Answer, came: Came, desk: Desk): Promise<void> {
  try {
    await inPlainerForm(message, answer, desk, (one) => desk.wire.edit(came, one));
  } catch (cause) {
    if (refused(cause) !== 'message') throw cause;
    await inPlainerForm(message, answer, desk, (one) => desk.wire.followUp(came, one, came.ephemeral));
  }
}

/** Sends; what Discord refuses to take goes out again as text and a file, and the refusal is told as a fault of ours. */
async function inPlainerForm<T>(
  message: Outgoing,
  answer: Answer,
  desk: Desk,
  send: (message: Outgoing) => Promise<T>,
): Promise<T> {
  try {
    return await send(message);
  } catch (cause) {
    if (refused(cause) !== 'content') throw cause;
    tellFault(desk, cause);
    return send(plainest(answer));
  }
}
