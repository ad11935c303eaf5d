/** Interactions from Discord, however they came: each acts once, and nothing that goes wrong reaches anybody but as a word. */

import {
  type APIApplicationCommandAutocompleteInteraction,
  type APIApplicationCommandInteraction,
  type APIComponentInContainer,
  type APIInteraction,
  type APIModalSubmitInteraction,
  ApplicationCommandType,
  ComponentType,
  InteractionType,
} from 'discord.js';
import { formRequest } from '../../chat/command-line.ts';
import { commandNamed, formGiven, keptDraft } from '../../chat/form.ts';
import { isEmergency } from '../../chat/hazard-answers.ts';
import { recentAnswers } from '../../chat/saved-replies.ts';
import { fullName, listed } from '../../input/command-shape.ts';
import { CHAT, DISCORD_HELP } from '../../text/chat-text.ts';
import { onBehalfOf } from '../../workers/queue.ts';
import { inTime, refused, tellFault, tellUnlessOutage } from './fault.ts';
import { sayFaultTo, sayGone, submitted, typedIn } from './forms.ts';
import { type Came, cameOf, customId, isEphemeral, readCustomId, slashOf, textsOf } from './interaction.ts';
import { AUTOCOMPLETE_CHOICES, CHOICE_TEXT, CLAIM_TIME, LOOK_UP_TIME, SELECT_TEXT } from './limits.ts';
import { ENGLISH_ONLY, type OwnEntry } from './menu.ts';
import { cardOf } from './outgoing.ts';
import { label } from './page.ts';
import { press } from './press.ts';
import { bringMissed, claimed, sendAnswers, Undelivered } from './send.ts';
import type { DiscordContext } from './types.ts';

/** Handles one interaction. Never rejects. */
export async function receive(interaction: APIInteraction, access: DiscordContext): Promise<void> {
  const came = cameOf(interaction);
  if (came) await onBehalfOf(came.account, () => received(interaction, came, access));
}

async function received(interaction: APIInteraction, came: Came, access: DiscordContext): Promise<void> {
  try {
    // Autocomplete changes nothing, and must not wait for the store.
    if (interaction.type === InteractionType.ApplicationCommandAutocomplete)
      return await complete(interaction, came, access);
    if (!access.isFresh(came.id) || (access.shared && !(await claimed(came, access)))) return;
    await handle(interaction, came, access);
  } catch (cause) {
    if (cause instanceof Undelivered || refused(cause) === 'answered') return;
    const reference = tellFault(access, cause);
    return await sayFaultTo(came, access, reference, cause);
  }
  // What was asked is answered: an earlier answer that cannot be brought now is only for the log.
  await bringMissed(access, came).catch((cause) => tellUnlessOutage(access, cause));
}

async function handle(interaction: APIInteraction, came: Came, access: DiscordContext): Promise<void> {
  switch (interaction.type) {
    case InteractionType.ApplicationCommand:
      return requested(interaction, came, access);
    case InteractionType.MessageComponent: {
      const read = readCustomId(interaction.data.custom_id);
      return read?.verb === 'begin' ? begin(read.rest, came, access) : press(interaction, came, access);
    }
    case InteractionType.ModalSubmit:
      return filled(interaction, came, access);
    default:
      return;
  }
}

async function requested(
  { data }: APIApplicationCommandInteraction,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const way = { ephemeral: came.ephemeral, update: false };
  if (data.type === ApplicationCommandType.Message) {
    const { content: text = '', author } = data.resolved.messages[data.target_id] ?? {};
    const others = author !== undefined && author.bot !== true && author.id !== came.asker.id;
    return sendAnswers({ text, written: 'message', ...(others && { author: author.id }) }, came, way, access);
  }
  if (data.type !== ApplicationCommandType.ChatInput) return;
  const slash = slashOf(data.name, data.options, access.commands);
  // A menu may be older than this bot: what was typed is answered as any other text would be.
  if (!slash) return sendAnswers({ text: [data.name, ...textsOf(data.options)].join(' ') }, came, way, access);
  if ('own' in slash) return ownEntry(slash.own, slash.given, came, access);
  const optionTexts = formGiven(slash.command, slash.given);
  const request = formRequest(slash.command, optionTexts);
  return sendAnswers(optionTexts.size === 0 ? { ...request, bare: slash.command } : request, came, way, access);
}

/** A button of the greeting: help, or the form of a command. */
async function begin(name: string, came: Came, access: DiscordContext): Promise<void> {
  const command = access.commands.find((known) => fullName(known) === name);
  if (!command || name === 'help') return sayHelp(came, access);
  const ask = { ...formRequest(command, new Map()), bare: command };
  return sendAnswers(ask, came, { ephemeral: came.ephemeral, update: false }, access);
}

// Entries of the menu that are no commands elsewhere.

async function ownEntry(
  own: OwnEntry,
  given: Readonly<Record<string, string>>,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const way = { ephemeral: came.ephemeral, update: false };
  const { question = '', what = 'show', details = '' } = given;
  if (own === 'ask' && question.trim() !== '') return sendAnswers({ text: question }, came, way, access);
  if (own === 'project') {
    const command = access.commands.find(
      ({ group, name }) => group === 'project' && name === what.trim().toLowerCase(),
    );
    if (!command) return sendAnswers({ text: `${what} ${details}`.trim() }, came, way, access);
    const bare = { ...formRequest(command, new Map()), bare: command };
    return sendAnswers(details === '' ? bare : { text: `${fullName(command)} ${details}` }, came, way, access);
  }
  if (own !== 'recent') return sayHelp(came, access);
  const card = cardOf(await recentCard(came, access));
  await access.wire.respond(came, { components: [card], attachments: [], files: [] }, way, false);
}

export async function sayHelp(came: Came, access: DiscordContext): Promise<void> {
  const content = (await helpLines(came, access)).join('\n');
  const card = cardOf([{ type: ComponentType.TextDisplay, content }]);
  const way = { ephemeral: came.ephemeral, update: false };
  await access.wire.respond(came, { components: [card], attachments: [], files: [] }, way, false);
}

/** How many answers can be opened again. */
const RECENT = 10;

async function recentCard(came: Came, access: DiscordContext): Promise<readonly APIComponentInContainer[]> {
  const answers = await inTime(recentAnswers(access.kept, came.account, RECENT), LOOK_UP_TIME, access);
  if (answers.length === 0)
    return [{ type: ComponentType.TextDisplay, content: CHAT.noRecent(access.entries.mention('ask')) }];
  const options = answers.map(({ id, reply, text }) => ({
    value: id,
    label: label(reply.headline, SELECT_TEXT) || '…',
    description: label(reply.understood?.said ?? text, SELECT_TEXT) || '…',
  }));
  return [
    { type: ComponentType.TextDisplay, content: `### ${CHAT.recent}` },
    {
      type: ComponentType.ActionRow,
      components: [
        {
          type: ComponentType.StringSelect,
          custom_id: customId('recent', ''),
          placeholder: CHAT.recentList,
          min_values: 1,
          max_values: 1,
          options,
        },
      ],
    },
  ];
}

/** What can be asked, each as a command that can be pressed. */
async function helpLines(came: Came, { entries, wait, hears }: DiscordContext): Promise<readonly string[]> {
  const soon = wait(CLAIM_TIME);
  await Promise.race([entries.ready(came.application), soon.over]);
  soon.cancel();
  const english = ENGLISH_ONLY[came.locale?.slice(0, 2) ?? ''];
  return [
    `### ${DISCORD_HELP.title}`,
    `${entries.mention('ask')} ${DISCORD_HELP.ask}`,
    ...(hears ? [DISCORD_HELP.heard] : []),
    DISCORD_HELP.elsewhere,
    ...DISCORD_HELP.jobs.map(([job, names]) => `**${job}:** ${names.map(entries.mention).join(' ')}`),
    ...(english === undefined ? [] : [english]),
  ];
}

/** A submitted form: over what was told before, if that is still kept, and by itself if not. */
async function filled({ data, message }: APIModalSubmitInteraction, came: Came, access: DiscordContext): Promise<void> {
  const read = readCustomId(data.custom_id);
  // An emergency in a field waits for no draft, and for no command that is still there.
  const typed = typedIn(data);
  if (isEmergency(typed))
    return sendAnswers({ text: typed }, came, { ephemeral: came.ephemeral, update: false }, access);
  const command = read?.verb === 'form' ? commandNamed(read.rest, access.commands) : undefined;
  if (!read || !command) return sayGone(came, access);
  const draft =
    read.id === '' ? undefined : await inTime(keptDraft(access.kept, read.id, came.account), LOOK_UP_TIME, access);
  const given = submitted(command, draft?.form?.told ?? {}, data);
  // A form that was opened from somebody's own message changes it where it stands; any other gives an answer of its own.
  const update = message !== undefined && draft?.mends === message.id;
  const request = formRequest(command, new Map(Object.entries(given)));
  // What others read holds nothing of a project.
  const open = update && came.ephemeral && !isEphemeral(message) ? { open: true as const, filled: true as const } : {};
  return sendAnswers({ ...request, ...open }, came, { ephemeral: came.ephemeral, update }, access);
}

async function complete(
  { data }: APIApplicationCommandAutocompleteInteraction,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const slash = slashOf(data.name, data.options, access.commands);
  const typed = slash?.focused === undefined ? '' : (slash.given[slash.focused] ?? '');
  if (slash && 'own' in slash) return access.wire.choices(came, projectChoices(typed, access));
  const found = slash?.focused === undefined ? [] : await access.suggest(came, slash.command, slash.focused, typed);
  const fitting = found.filter(({ text }) => text !== '' && text.length <= CHOICE_TEXT);
  const choices = fitting
    .slice(0, AUTOCOMPLETE_CHOICES)
    .map(({ text, said = text }) => ({ name: label(said, CHOICE_TEXT), value: text }));
  await access.wire.choices(came, choices);
}

/** What can be done with a project, by its own word or by what it is for. */
function projectChoices(typed: string, { commands }: Pick<DiscordContext, 'commands'>) {
  const wanted = typed.trim().toLowerCase();
  const all = listed(commands).filter(({ group }) => group === 'project');
  const fitting = all.filter(({ name, summary }) => `${name} ${summary}`.toLowerCase().includes(wanted));
  const own = fitting.map(({ name, summary }) => ({ name: label(`${name}: ${summary}`, CHOICE_TEXT), value: name }));
  const said = wanted === '' || all.some(({ name }) => name === wanted) ? [] : [label(typed.trim(), CHOICE_TEXT)];
  return [...said.map((text) => ({ name: text, value: text })), ...own].slice(0, AUTOCOMPLETE_CHOICES);
}
