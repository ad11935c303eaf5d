/** Buttons and selects pressed: what is kept under their short id is looked up, and only what that account may see. */

import { type APIMessageComponentInteraction, ComponentType } from 'discord-api-types/v10';
import { commandNamed, keepDraft, keptDraft } from '../../chat/form.ts';
import { parseLine } from '../../chat/grammar.ts';
import { comparedPlanks } from '../../chat/offers.ts';
import { type KeptAnswer, keptAnswer, mintId, showAnswer } from '../../chat/saved-replies.ts';
import { fullName } from '../../input/command-shape.ts';
import { CHAT } from '../../text/chat-text.ts';
import { answerRowsOf, type ButtonRow } from './buttons.ts';
import { label } from './escape.ts';
import { drawnFor, inTime } from './fault.ts';
import { modalOf, sayGone } from './forms.ts';
import { type Came, type Pressed, readCustomId } from './interaction.ts';
import { CLAIM_TIME, LOOK_UP_TIME, POLL_ANSWER, POLL_ANSWERS, POLL_HOURS, POLL_QUESTION } from './limits.ts';
import { outgoing } from './outgoing.ts';
import type { DiscordMessage } from './page.ts';
import { render, renderSheets, renderSources } from './render.ts';
import { sendAnswers } from './send.ts';
import type { DiscordContext } from './types.ts';

/** Acts on a press. Rejects with what the wire or the store rejects with. */
export async function press(
  interaction: APIMessageComponentInteraction,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const { data, message } = interaction;
  const pressed = readCustomId(data.custom_id);
  const values = data.component_type === ComponentType.StringSelect ? data.values : [];
  if (!pressed) return sayGone(came, access);
  if (pressed.verb === 'mend' || pressed.verb === 'fix' || pressed.verb === 'try')
    return mend(pressed, message.id, came, access);
  const answer = await lookedUp(pressed.id, () => keptAnswer(access.kept, pressed.id, came.account), access);
  if (!answer) return sayGone(came, access);
  switch (pressed.verb) {
    case 'ask':
      return askAgain(answer, Number(pressed.rest), came, access);
    case 'pick':
      return askAgain(answer, Number(values[0]), came, access);
    case 'change':
      return change(answer, values, came, access);
    case 'parts':
      return sendMessages(renderSheets(answer.reply), [], came, came.ephemeral, access);
    case 'sources':
      return sendMessages(renderSources(answer.reply), [], came, came.ephemeral, access);
    case 'show':
      return show(pressed.id, came, access);
    case 'poll':
      return poll(answer, came, access);
    default:
      return sayGone(came, access);
  }
}

/** What is kept under an id, once it is. */
function lookedUp<T>(id: string, look: () => Promise<T>, access: DiscordContext): Promise<T> {
  return inTime(access.keeping.settled(id).then(look), LOOK_UP_TIME, access);
}

/** One of the next asks, as the one who pressed asks it. */
async function askAgain({ reply }: KeptAnswer, place: number, came: Came, access: DiscordContext): Promise<void> {
  const action = reply.actions[place];
  if (!action) return sayGone(came, access);
  return sendAnswers({ text: action.ask }, came, { ephemeral: came.ephemeral, update: false }, access);
}

/** The details chosen, as a form with everything told before. */
async function change(
  { text }: KeptAnswer,
  options: readonly string[],
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const parsed = parseLine(text, access.commands, access.preferences);
  if (!parsed.ok) return sayGone(came, access);
  const given = Object.fromEntries(parsed.optionTexts);
  const id = mintId();
  const form = { command: fullName(parsed.command), told: given };
  await inTime(keepDraft(access.kept, id, { by: came.account, form }), CLAIM_TIME, access);
  await access.wire.modal(came, modalOf(parsed.command, given, id, { first: options, only: true }));
}

/** The form of an ask that could not be read, or the ask as it was mended for them. */
async function mend({ verb, id }: Pressed, message: string, came: Came, access: DiscordContext): Promise<void> {
  const draft = await lookedUp(id, () => keptDraft(access.kept, id, came.account), access);
  const line = verb === 'fix' ? draft?.fix : verb === 'try' ? draft?.example : undefined;
  if (line !== undefined) {
    return sendAnswers({ text: line }, came, { ephemeral: came.ephemeral, update: true }, access);
  }
  const command = draft?.form && commandNamed(draft.form.command, access.commands);
  if (!draft?.form || !command) return sayGone(came, access);
  await inTime(keepDraft(access.kept, id, { ...draft, mends: message }), CLAIM_TIME, access);
  await access.wire.modal(came, modalOf(command, draft.form.told, id, { first: draft.wrong ?? [] }));
}

/** The answer as everybody sees it, posted by the one who asked. */
async function show(id: string, came: Came, access: DiscordContext): Promise<void> {
  const shown = await inTime(showAnswer(access.kept, id, came.account), CLAIM_TIME, access);
  if (!shown) return sayGone(came, access);
  const rows = answerRowsOf(shown, shown.reply, id, false, access);
  return sendMessages(render(shown.reply), rows, came, false, access);
}

/** Discord's own poll among the planks of a comparison. */
async function poll({ reply }: KeptAnswer, came: Came, access: DiscordContext): Promise<void> {
  const names = [...new Set(comparedPlanks(reply)?.map((name) => label(name, POLL_ANSWER)))];
  if (names.length < 2) return sayGone(came, access);
  await access.wire.poll(came, {
    question: { text: label(CHAT.pollQuestion, POLL_QUESTION) },
    answers: names.slice(0, POLL_ANSWERS).map((text) => ({ poll_media: { text } })),
    duration: POLL_HOURS,
    allow_multiselect: false,
  });
}

/** Messages that are ready at once: the first as the response, the rest behind it. */
async function sendMessages(
  messages: readonly DiscordMessage[],
  rows: readonly ButtonRow[],
  came: Came,
  ephemeral: boolean,
  access: DiscordContext,
): Promise<void> {
  const drawn = messages.some(({ files }) => files.some((file) => 'drawing' in file));
  // Pictures take a while to draw under load, and a response only has three seconds.
  const way = { ephemeral, update: false };
  if (drawn) await access.wire.defer(came, way);
  const [first, ...rest] = await outgoing(messages, rows, drawnFor(access, came));
  if (drawn) await access.wire.edit(came, first);
  else await access.wire.respond(came, first, way, false);
  for (const message of rest) await access.wire.followUp(came, message, ephemeral);
}
