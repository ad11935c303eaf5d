/** The commands as Discord's menus show them: one command a group, a subcommand each, and the message menu. */

import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOption,
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type RESTPostAPIApplicationCommandsJSONBody,
} from 'discord-api-types/v10';
import type { Command } from '../../chat/command.ts';
import { listed, optionsOf } from '../../input/command-shape.ts';
import { CHAT } from '../../text/chat-text.ts';
import { label } from './escape.ts';
import { CHOICE_TEXT, COMMAND_CHOICES, COMMAND_DESCRIPTION, COMMAND_OPTIONS } from './limits.ts';

/** For servers and for people, in servers, in the bot's messages and in everybody else's. */
const EVERYWHERE = {
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
};

/** Every command to register, in the order of the list. */
export function registered(all: readonly Command[]): readonly RESTPostAPIApplicationCommandsJSONBody[] {
  const commands = listed(all);
  const groups = [...new Set(commands.flatMap(({ group }) => group ?? []))];
  return [
    ...groups.map((group) => groupOf(group, commands)),
    ...commands.filter(({ group }) => group === undefined).map(single),
    { type: ApplicationCommandType.Message, name: CHAT.menu, ...EVERYWHERE },
  ];
}

function groupOf(group: string, commands: readonly Command[]): RESTPostAPIApplicationCommandsJSONBody {
  const members = commands.filter((command) => command.group === group);
  return {
    type: ApplicationCommandType.ChatInput,
    name: group,
    description: label(CHAT.group(members.map(({ name }) => name)), COMMAND_DESCRIPTION),
    options: members.slice(0, COMMAND_OPTIONS).map(
      (command): APIApplicationCommandSubcommandOption => ({
        type: ApplicationCommandOptionType.Subcommand,
        name: command.name,
        description: label(command.summary, COMMAND_DESCRIPTION),
        options: optionsIn(command),
      }),
    ),
    ...EVERYWHERE,
  };
}

function single(command: Command): RESTPostAPIApplicationCommandsJSONBody {
  return {
    type: ApplicationCommandType.ChatInput,
    name: command.name,
    description: label(command.summary, COMMAND_DESCRIPTION),
    options: optionsIn(command),
    ...EVERYWHERE,
  };
}

/** None is required: what is not told may be known from a project, and a form asks for the rest. */
function optionsIn(command: Command): APIApplicationCommandBasicOption[] {
  return optionsOf(command)
    .slice(0, COMMAND_OPTIONS)
    .map(({ name, summary, kind, choices }) => {
      const option = {
        type: ApplicationCommandOptionType.String as const,
        name,
        description: label(summary, COMMAND_DESCRIPTION),
      };
      if (kind !== 'choice' || !choices || choices.length > COMMAND_CHOICES) return { ...option, autocomplete: true };
      const fitting = choices.filter((choice) => choice.length <= CHOICE_TEXT);
      return { ...option, choices: fitting.map((choice) => ({ name: choice, value: choice })) };
    });
}

/** What Discord counts of a command: names, descriptions and choices, subcommands and their options too. */
export function charactersOf({ name, ...rest }: RESTPostAPIApplicationCommandsJSONBody): number {
  const description = ('description' in rest ? rest.description : undefined) ?? '';
  const options: readonly APIApplicationCommandOption[] = ('options' in rest ? rest.options : undefined) ?? [];
  return name.length + description.length + options.reduce((sum, option) => sum + charactersIn(option), 0);
}

function charactersIn(option: APIApplicationCommandOption): number {
  const choices = 'choices' in option ? (option.choices ?? []) : [];
  const options: readonly APIApplicationCommandOption[] = 'options' in option ? (option.options ?? []) : [];
  const own = option.name.length + option.description.length;
  const chosen = choices.reduce((sum, choice) => sum + choice.name.length + String(choice.value).length, 0);
  return own + chosen + options.reduce((sum, one) => sum + charactersIn(one), 0);
}
