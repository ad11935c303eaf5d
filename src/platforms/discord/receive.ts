/** Interactions from Discord, however they came: each acts once, and nothing that goes wrong reaches anybody but as a word. */

import {
  type APIApplicationCommandAutocompleteInteraction,
  type APIApplicationCommandInteraction,
  type APIInteraction,
  type APIModalSubmitInteraction,
  ApplicationCommandType,
  InteractionType,
} from 'discord-api-types/v10';
import { formRequest } from '../../chat/command-line.ts';
import { commandNamed, formGiven, keptDraft } from '../../chat/form.ts';
import { isEmergency } from '../../chat/hazard-answers.ts';
import { onBehalfOf } from '../../workers/queue.ts';
import { inTime, refused, tellFault, tellUnlessOutage } from './fault.ts';
import { sayFaultTo, sayGone, submitted, typedIn } from './forms.ts';
import { type Came, cameOf, readCustomId, slashOf, textsOf } from './interaction.ts';
import { AUTOCOMPLETE_CHOICES, CHOICE_TEXT, LOOK_UP_TIME } from './limits.ts';
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
    case InteractionType.MessageComponent:
      return press(interaction, came, access);
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
    const text = data.resolved.messages[data.target_id]?.content ?? '';
    return sendAnswers({ text, written: 'message' }, came, way, access);
  }
  if (data.type !== ApplicationCommandType.ChatInput) return;
  const slash = slashOf(data.name, data.options, access.commands);
  // A menu may be older than this bot: what was typed is answered as any other text would be.
  if (!slash) return sendAnswers({ text: [data.name, ...textsOf(data.options)].join(' ') }, came, way, access);
  const optionTexts = formGiven(slash.command, slash.given);
  const request = formRequest(slash.command, optionTexts);
  return sendAnswers(optionTexts.size === 0 ? { ...request, bare: slash.command } : request, came, way, access);
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
  // The form of an ask that could not be read mends it where it stands; any other form gives an answer of its own.
  const update = message !== undefined && draft?.mends === message.id;
  const request = formRequest(command, new Map(Object.entries(given)));
  return sendAnswers(request, came, { ephemeral: came.ephemeral, update }, access);
}

async function complete(
  { data }: APIApplicationCommandAutocompleteInteraction,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  const slash = slashOf(data.name, data.options, access.commands);
  const typed = slash?.focused === undefined ? '' : (slash.given[slash.focused] ?? '');
  const found =
    slash?.focused === undefined ? [] : await access.suggest(came.asker, slash.command, slash.focused, typed);
  const fitting = [...new Set(found)].filter((text) => text !== '' && text.length <= CHOICE_TEXT);
  const choices = fitting.slice(0, AUTOCOMPLETE_CHOICES).map((text) => ({ name: text, value: text }));
  await access.wire.choices(came, choices);
}
