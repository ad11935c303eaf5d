/** Buttons and selects pressed: what is kept under their short id is looked up, and only what that account may see. */

import { type APIMessageComponentInteraction, ComponentType } from 'discord-api-types/v10';
import type { Form, ReplyWithForm } from '../../chat/command.ts';
import { commandNamed, type KeptDraft, keepDraft } from '../../chat/form.ts';
import { comparedPlanks } from '../../chat/offers.ts';
import { mintId } from '../../chat/saved-replies.ts';
import type { Reply, SectionId } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { lookUpPress, type PressKind } from '../session.ts';
import { answerRowsOf, type ButtonRow } from './buttons.ts';
import { label } from './escape.ts';
import { drawnFor, inTime } from './fault.ts';
import { modalOf, sayGone } from './forms.ts';
import { type Came, type Pressed, readCustomId, type Verb } from './interaction.ts';
import { CLAIM_TIME, LOOK_UP_TIME, POLL_ANSWER, POLL_ANSWERS, POLL_HOURS, POLL_QUESTION } from './limits.ts';
import { outgoing } from './outgoing.ts';
import type { DiscordMessage } from './page.ts';
import { render, renderSections } from './render.ts';
import { sendAnswers } from './send.ts';
import type { DiscordContext } from './types.ts';

/** What each verb of a button or select is for; a form comes back as a form. */
const KINDS: Readonly<Record<Exclude<Verb, 'form'>, PressKind>> = {
  ask: 'ask',
  pick: 'ask',
  change: 'change',
  parts: 'look',
  sources: 'look',
  show: 'show',
  poll: 'look',
  mend: 'mend',
  fix: 'fix',
  try: 'example',
  open: 'look',
  choose: 'choice',
};

/** Acts on a press. Rejects with what the wire or the store rejects with. */
export async function press(
  interaction: APIMessageComponentInteraction,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const { data, message } = interaction;
  const pressed = readCustomId(data.custom_id);
  const values = data.component_type === ComponentType.StringSelect ? data.values : [];
  if (!pressed || pressed.verb === 'form') return sayGone(came, access);
  const { verb, id, rest } = pressed;
  const kind = KINDS[verb];
  const looked = lookUpPress({ kind, id, place: Number(verb === 'pick' ? values[0] : rest) }, came.account, access);
  const what = await inTime(looked, LOOK_UP_TIME, access);
  switch (what.found) {
    case 'request': {
      const update = kind !== 'ask';
      return sendAnswers({ text: what.text }, came, { ephemeral: came.ephemeral, update }, access);
    }
    case 'form':
      if (!what.draft) return change(what.form, values, came, access);
      return mend(what.form, { id, draft: what.draft, mends: message.id }, came, access);
    case 'answer':
      return look(pressed, what.answer.reply, came, access);
    default:
      return sayGone(came, access);
  }
}

/** The details chosen, as a form with everything told before. */
async function change(form: Form, options: readonly string[], came: Came, access: DiscordContext): Promise<void> {
  const command = commandNamed(form.command, access.commands);
  if (!command) return sayGone(came, access);
  const id = mintId();
  await inTime(keepDraft(access.kept, id, { by: came.account, form }), CLAIM_TIME, access);
  await access.wire.modal(came, modalOf(command, form.told, id, { first: options, only: true }));
}

/** The form of a request that could not be read. */
async function mend(
  form: Form,
  { id, draft, mends }: { readonly id: string; readonly draft: KeptDraft; readonly mends: string },
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const command = commandNamed(form.command, access.commands);
  if (!command) return sayGone(came, access);
  await inTime(keepDraft(access.kept, id, { ...draft, mends }), CLAIM_TIME, access);
  await access.wire.modal(came, modalOf(command, form.told, id, { first: draft.wrong ?? [] }));
}

/** A stored answer, one of its sections opened, or shown to everybody by the one who asked. */
async function look(
  { verb, id, rest }: Pressed,
  reply: ReplyWithForm,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  if (verb === 'poll') return poll(reply, came, access);
  if (verb === 'show') return sendMessages(render(reply), answerRowsOf(reply, id, false, access), came, false, access);
  const messages = renderSections(reply, verb === 'open' ? rest : OLDER[verb]);
  return messages ? sendMessages(messages, [], came, came.ephemeral, access) : sayGone(came, access);
}

/** What the buttons of answers from before there were sections open. */
const OLDER: Readonly<Partial<Record<Verb, SectionId | 'more'>>> = { parts: 'more', sources: 'sources' };

/** Discord's own poll among the planks of a comparison. */
async function poll(reply: Reply, came: Came, access: DiscordContext): Promise<void> {
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
