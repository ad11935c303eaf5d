/** Buttons and selects pressed: what is kept under their short id is looked up, and only what that account may see. */

import { type APIMessageComponentInteraction, ComponentType, PermissionFlagsBits } from 'discord.js';
import type { Form } from '../../chat/command.ts';
import { formRequest } from '../../chat/command-line.ts';
import { commandNamed, type KeptDraft, keepDraft } from '../../chat/form.ts';
import { type KeptAnswer, mintId } from '../../chat/saved-replies.ts';
import { type Reply, SECTIONS } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { lookUpPress, type PressKind } from '../session.ts';
import { answerRowsOf, type View } from './buttons.ts';
import { pollOf, restAsked, workCard } from './cards.ts';
import { drawnFor, inTime, refused, tellUnlessOutage } from './fault.ts';
import { modalOf, openForm, sayGone, sayTo, wordOf } from './forms.ts';
import { type Came, customId, isEphemeral, type Pressed, readCustomId, type Verb } from './interaction.ts';
import { CLAIM_TIME, LOOK_UP_TIME } from './limits.ts';
import { type Around, outgoing } from './outgoing.ts';
import type { DiscordMessage } from './page.ts';
import { render, renderSections } from './render.ts';
import { askedBy, edited, inPlainerForm, inSomeForm, responded, sendAnswers } from './send.ts';
import { openThread } from './thread.ts';
import type { DiscordContext, ResponseChannel } from './types.ts';

/** What each verb of a button or select is for; a form comes back as a form. */
const KINDS: Readonly<Record<Exclude<Verb, 'form' | 'menu' | 'begin'>, PressKind>> = {
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
  wrong: 'wrong',
  tick: 'look',
  put: 'change',
  send: 'look',
  recent: 'look',
  away: 'look',
  mine: 'look',
  buy: 'ask',
  broke: 'look',
  thread: 'look',
};

/** What was pressed: a list of several things says which by its value. */
function pressedIn({
  data,
}: APIMessageComponentInteraction): (Pressed & { readonly values: readonly string[] }) | undefined {
  const read = readCustomId(data.custom_id);
  if (!read) return undefined;
  const values = data.component_type === ComponentType.StringSelect ? data.values : [];
  if (read.verb !== 'menu') return { ...read, values };
  const [verb = '', ...rest] = (values[0] ?? '').split(':');
  const chosen = readCustomId(customId('open', read.id).replace('open', verb));
  return chosen && { ...chosen, rest: rest.join(':'), values: [] };
}

/** Acts on a press. Rejects with what the wire or the store rejects with. */
export async function press(
  interaction: APIMessageComponentInteraction,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const { message } = interaction;
  const pressed = pressedIn(interaction);
  if (!pressed || pressed.verb === 'form' || pressed.verb === 'menu' || pressed.verb === 'begin')
    return sayGone(came, access);
  const { verb, rest, values } = pressed;
  const id = verb === 'recent' ? (values[0] ?? '') : pressed.id;
  // What only the asker sees is edited; what others see too stays as it was shown.
  const own = !came.ephemeral || isEphemeral(message);
  const kind = KINDS[verb];
  const looked = lookUpPress({ kind, id, place: Number(verb === 'pick' ? values[0] : rest) }, came.account, access);
  const what = await inTime(looked, LOOK_UP_TIME, access);
  const way = { ephemeral: came.ephemeral, update: own };
  switch (what.found) {
    case 'request': {
      const update = own || MENDS.includes(kind);
      const { text, mistaken } = what;
      // What others read holds nothing of a project: that goes to the asker alone.
      if (!own && (update === false || text.startsWith('project ')))
        return sendAnswers({ text, ...(mistaken && { mistaken }) }, came, { ...way, update: false }, access);
      const open = own ? {} : { open: true as const };
      const stays = verb === 'buy' && own ? { stays: 'store' as const } : {};
      const back = kind === 'ask' && own && verb !== 'buy' ? { back: id } : {};
      return sendAnswers(
        { text, ...open, ...stays, ...(mistaken && { mistaken }) },
        came,
        { ...way, update, ...back },
        access,
      );
    }
    case 'form': {
      // Whose question it is puts in their plank where all see it.
      const theirs = verb === 'put' && !own && what.author === came.asker.id;
      const mends = own || theirs ? message.id : undefined;
      if (!what.draft) return change(what.form, verb === 'put' ? [rest] : values, mends, came, access);
      return mend(what.form, { id, draft: what.draft, mends: message.id }, came, access);
    }
    case 'answer': {
      if (verb === 'away') return takeBack(interaction, what.answer, came, access);
      if (verb === 'mine') return confirm(what.answer, id, came, access);
      if (verb === 'broke') return replan(what.answer, { verb, id, rest }, way, came, access);
      if (verb !== 'tick') return look({ verb, id, rest }, what.answer, way, came, access);
      const text = ticked(what.answer.reply, values.map(Number));
      return text === undefined ? sayGone(came, access) : sendAnswers({ text }, came, way, access);
    }
    default:
      return sayGone(came, access);
  }
}

/** Takes an answer that others see away: for whoever asked, and for who keeps order there. */
async function takeBack(
  { member }: APIMessageComponentInteraction,
  { by, author }: KeptAnswer,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const keepsOrder = (BigInt(member?.permissions ?? 0) & PermissionFlagsBits.ManageMessages) !== 0n;
  if (by !== came.account && author !== came.asker.id && !keepsOrder)
    return void (await access.wire.respond(came, wordOf(CHAT.notYours), { ephemeral: true, update: false }, false));
  await access.wire.defer(came, { ephemeral: true, update: true });
  await access.wire.takeAway(came);
}

/** Says for all to see that the plank of an answer is right; only the person whose question it is can. */
async function confirm(answer: KeptAnswer, id: string, came: Came, access: DiscordContext): Promise<void> {
  const { reply, author } = answer;
  if (author !== came.asker.id)
    return void (await access.wire.respond(came, wordOf(CHAT.notYourPlank), { ephemeral: true, update: false }, false));
  const [page] = render(reply);
  if (!page) throw new Error('an answer without a message');
  const below = answerRowsOf(reply, { id, showable: false, shown: true }, access);
  const above = askedBy(came, answer, CHAT.theirPlank);
  await sendPage(page, reply, { above, below }, { ephemeral: false, update: true }, came, access);
}

/** What mends a request takes its place, whoever sees it. */
const MENDS: readonly PressKind[] = ['fix', 'example', 'choice', 'mend'];

/** Several ticks as one request, so that one Undo takes them back together. */
function ticked({ actions }: Reply, places: readonly number[]): string | undefined {
  const [first, ...rest] = places.flatMap((place) => actions[place]?.ask ?? []);
  const command = first?.split(' ', 2).join(' ') ?? '';
  return first && [first, ...rest.map((ask) => ask.slice(command.length).trim())].join('; ');
}

/** The details chosen, as a form with everything told before. */
async function change(
  form: Form,
  options: readonly string[],
  mends: string | undefined,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const command = commandNamed(form.command, access.commands);
  if (!command) return sayGone(came, access);
  const id = mintId();
  const draft = { by: came.account, form, ...(mends === undefined ? {} : { mends }) };
  await inTime(keepDraft(access.kept, id, draft), CLAIM_TIME, access);
  await openForm(modalOf(command, form.told, id, { first: options, only: true }), came, access);
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
  await openForm(modalOf(command, form.told, id, { first: draft.wrong ?? [] }), came, access);
}

/** A stored answer, one of its sections opened, or shown to everybody by the one who asked. */
async function look(
  { verb, id, rest }: Pressed,
  answer: KeptAnswer,
  way: ResponseChannel,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const { reply } = answer;
  const [wanted = '', part = '0', broke = '0'] = (verb === 'open' ? rest : (OLDER[verb] ?? '')).split('.');
  if (wanted === 'store' || wanted === 'row') {
    const card = workCard(wanted, reply, id, Number(part), Number(broke));
    return card ? sendPage(card.page, reply, { below: card.rows }, way, came, access) : sayGone(came, access);
  }
  if (verb === 'poll') return poll(reply, came, access);
  if (verb === 'show') return show(answer, id, way, came, access);
  if (verb === 'thread') return inThread(reply, id, way, came, access);
  if (verb === 'send') return send(answer, id, way, came, access);
  const opened = VIEWS.find((known) => known === wanted);
  const brief = opened === 'brief' || opened === 'change';
  const pages = brief ? render(reply) : renderSections(reply, opened);
  const page = pages?.[Number(part)];
  if (!page || !opened) return sayGone(came, access);
  const view = { opened, part: Number(part), parts: pages.length };
  const rows = answerRowsOf(reply, { id, showable: came.ephemeral && !answer.shown, view }, access);
  await sendPage(page, reply, { below: rows }, way, came, access);
}

const VIEWS: readonly View['opened'][] = [...SECTIONS, 'more', 'brief', 'change'];

/** What the buttons of answers from before there were sections open, and an answer of the list. */
const OLDER: Readonly<Partial<Record<Verb, View['opened']>>> = { parts: 'more', sources: 'sources', recent: 'brief' };

/** Plans the rest of a floor anew, from what is left after a plank broke; where no row is laid yet, the plan stays. */
async function replan(
  { reply }: KeptAnswer,
  { id, rest }: Pressed,
  way: ResponseChannel,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const [at = 0, broke = 1] = rest.split('.').map(Number);
  const told = restAsked(reply, at, broke);
  const command = commandNamed('floor resume', access.commands);
  if (told && command) {
    const known = new Map(Object.entries(told).filter(([option]) => option in command.options.shape));
    const ask = { ...formRequest(command, known), stays: 'row' as const };
    return sendAnswers(way.update ? ask : { ...ask, open: true }, came, way, access);
  }
  const card = workCard('row', reply, id, at, broke);
  return card ? sendPage(card.page, reply, { below: card.rows }, way, came, access) : sayGone(came, access);
}

/** Asks the channel which of the planks compared, where polls are allowed. */
async function poll(reply: Reply, came: Came, access: DiscordContext): Promise<void> {
  const asked = pollOf(reply);
  if (!asked) return sayGone(came, access);
  try {
    await access.wire.poll(came, asked);
  } catch (cause) {
    if (refused(cause) !== 'content') throw cause;
    await sayTo(came, access, CHAT.noPoll);
  }
}

/** Shows an answer to everybody, once: its own message loses the button first. */
async function show(
  answer: KeptAnswer,
  id: string,
  way: ResponseChannel,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const { reply } = answer;
  const [page] = render(reply);
  if (!page) throw new Error('an answer without a message');
  if (came.channel !== undefined && !access.channels.takes(came.channel, came.at)) {
    const above = [{ type: ComponentType.TextDisplay, content: `-# ${CHAT.crowdedHere}` } as const];
    const below = answerRowsOf(reply, { id, showable: true }, access);
    return sendPage(page, reply, { above, below }, way, came, access);
  }
  const first = await inTime(access.kept.claim(`shown:${id}`, SHOWN_FOR), CLAIM_TIME, access);
  const own = answerRowsOf(reply, { id, showable: false }, access);
  await sendPage(page, reply, { below: own }, way, came, access);
  if (!first) return;
  const asks = answer.author !== undefined && reply.form?.told.plank !== undefined && reply.example === undefined;
  const shown = answerRowsOf(reply, { id, showable: false, shown: true, asksPlank: asks }, access);
  const above = askedBy(came, answer, asks ? CHAT.isYourPlank : undefined);
  const [message] = await outgoing([page], { above, below: shown }, drawnFor(access, came));
  try {
    await inSomeForm(message, reply, (one) => access.wire.followUp(came, one, false));
  } catch (cause) {
    tellUnlessOutage(access, cause);
    // Not shown yet: it can be tried again, and its asker is told where they look.
    await access.kept.delete(`shown:${id}`);
    const again = answerRowsOf(reply, { id, showable: true }, access);
    const above = [{ type: ComponentType.TextDisplay, content: `-# ${CHAT.notShown}` } as const];
    const [own] = await outgoing([page], { above, below: again }, drawnFor(access, came));
    await edited(own, reply, came, access);
  }
}

/** Sends an answer to whoever pressed, where it stays. */
async function send(
  { reply }: KeptAnswer,
  id: string,
  way: ResponseChannel,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  await access.wire.defer(came, way);
  const [page] = render(reply);
  if (!page) throw new Error('an answer without a message');
  const below = answerRowsOf(reply, { id, showable: false }, access);
  const [message] = await outgoing([page], { below }, drawnFor(access, came));
  let said: string = CHAT.sent;
  try {
    await access.wire.direct(came.asker.id, message);
  } catch (cause) {
    if (refused(cause) === 'unknown') throw cause;
    said = CHAT.notSent;
  }
  const above = [{ type: ComponentType.TextDisplay, content: `-# ${said}` } as const];
  const here = answerRowsOf(reply, { id, showable: true }, access);
  const [own] = await outgoing([page], { above, below: here }, drawnFor(access, came));
  await edited(own, reply, came, access);
}

/** Opens a thread for the project of an answer, and says there what became of it. */
async function inThread(
  reply: Reply,
  id: string,
  way: ResponseChannel,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  await access.wire.defer(came, way);
  const [page] = render(reply);
  if (!page) throw new Error('an answer without a message');
  const above = [{ type: ComponentType.TextDisplay, content: `-# ${await openThread(reply, came, access)}` } as const];
  const below = answerRowsOf(reply, { id, showable: true }, access);
  const [own] = await outgoing([page], { above, below }, drawnFor(access, came));
  await edited(own, reply, came, access);
}

/** As long as an answer is kept. */
const SHOWN_FOR = 7 * 24 * 3600 * 1000;

/** One message that is ready at once, or as soon as its pictures are drawn. */
async function sendPage(
  page: DiscordMessage,
  reply: Reply,
  around: Around,
  way: ResponseChannel,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const drawn = page.files.some((file) => 'drawing' in file);
  // Pictures take a while to draw under load, and a response only has three seconds.
  if (drawn) await access.wire.defer(came, way);
  const [message] = await outgoing([page], around, drawnFor(access, came));
  if (drawn) await edited(message, reply, came, access);
  else await inPlainerForm(message, reply, came, access, (one) => responded(one, came, way, access));
}
