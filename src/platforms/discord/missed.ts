/** Answers that could not be delivered: kept for the one who asked, and brought with their next ask. */

import { type KeptAnswer, keptAnswer } from '../../chat/saved-replies.ts';
import { CHAT } from '../../text/chat-text.ts';
import { answerRowsOf } from './answer-rows.ts';
import type { Came } from './came.ts';
import type { Desk } from './desk.ts';
import { drawnFor } from './fault.ts';
import { inTime } from './in-time.ts';
import { KEEP_TIME } from './limits.ts';
import { outgoing } from './outgoing.ts';
import { packed } from './page.ts';
import { render } from './render.ts';
import { lines } from './section.ts';

/** As long as answers are kept. */
const KEPT_FOR = 7 * 24 * 3600 * 1000;

/** Nothing more reaches this interaction; what could be kept of its answer is. */
export class Undelivered extends Error {
  override readonly name = 'Undelivered';
}

const keyOf = (account: string): string => `missed:${account}`;

/** Notes the kept answer of an id as not delivered. Throws Outage. */
export async function noteMissed(desk: Desk, account: string, id: string): Promise<void> {
  desk.looks.again(account);
  await inTime(desk.kept.set(keyOf(account), id, KEPT_FOR), KEEP_TIME, desk);
}

/** Brings the answer that was missed, if there is one, behind whatever was just answered. Rejects as the wire does. */
export async function bringMissed(desk: Desk, came: Came): Promise<void> {
  if (!desk.looks.due(came.account, came.at)) return;
  const id = await look(desk, came);
  if (typeof id !== 'string' || !(await desk.kept.delete(keyOf(came.account)))) return;
  const answer = await keptAnswer(desk.kept, id, came.account);
  if (!answer) return;
  try {
    await bring(answer, id, desk, came);
  } catch (cause) {
    await noteMissed(desk, came.account, id);
    throw cause;
  }
}

async function look(desk: Desk, came: Came): Promise<unknown> {
  try {
    return await inTime(desk.kept.get(keyOf(came.account)), KEEP_TIME, desk);
  } catch (cause) {
    desk.looks.again(came.account);
    throw cause;
  }
}

async function bring(answer: KeptAnswer, id: string, desk: Desk, came: Came): Promise<void> {
  const messages = [...packed([lines([CHAT.missed])]), ...render(answer.reply)];
  const [note, ...rest] = await outgoing(messages, [], drawnFor(desk, came));
  const rows = answerRowsOf(answer, answer.reply, id, came.ephemeral, desk);
  await desk.wire.followUp(came, note, came.ephemeral);
  for (const [i, message] of rest.entries()) {
    const whole = i === 0 ? { ...message, components: [...message.components, ...rows] } : message;
    await desk.wire.followUp(came, whole, came.ephemeral);
  }
}
