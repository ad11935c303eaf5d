/** The commands as Discord's menu shows them: an entry each for what people look for, and the message menu. */

import type { REST } from '@discordjs/rest';
import {
  type APIApplicationCommand,
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type RESTPostAPIApplicationCommandsJSONBody,
  Routes,
} from 'discord-api-types/v10';
import type { Command } from '../../chat/command.ts';
import { fullName, optionsOf } from '../../input/command-shape.ts';
import { CHAT } from '../../text/chat-text.ts';
import { label } from './escape.ts';
import { CHOICE_TEXT, COMMAND_CHOICES, COMMAND_DESCRIPTION, COMMAND_OPTIONS } from './limits.ts';
import { FREE, MENU, type MenuEntry, spoken } from './menu.ts';

/** For servers and for people, in servers, in the bot's messages and in everybody else's. */
const EVERYWHERE = {
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
};

/** Every entry to register, in the order of the menu; what is rare is reached by `/ask`, `/project`, buttons and forms. */
export function registered(all: readonly Command[]): readonly RESTPostAPIApplicationCommandsJSONBody[] {
  return [
    ...MENU.map((entry) => entryOf(entry, all)),
    { type: ApplicationCommandType.Message, name: CHAT.menu, ...EVERYWHERE },
  ];
}

function entryOf(entry: MenuEntry, all: readonly Command[]): RESTPostAPIApplicationCommandsJSONBody {
  const command = all.find((known) => fullName(known) === entry.command);
  if (entry.command !== undefined && !command) throw new Error(`no command ${entry.command} for /${entry.name}`);
  return {
    type: ApplicationCommandType.ChatInput,
    name: entry.name,
    description: label(entry.description ?? command?.summary ?? '', COMMAND_DESCRIPTION),
    ...spoken(entry),
    options: command ? optionsIn(command, entry) : freeOf(entry),
    ...EVERYWHERE,
  };
}

function freeOf({ own }: MenuEntry): APIApplicationCommandBasicOption[] {
  const type = ApplicationCommandOptionType.String as const;
  if (own === 'ask') return [{ type, ...FREE.ask }];
  return own === 'project'
    ? [
        { type, ...FREE.what, autocomplete: true },
        { type, ...FREE.details },
      ]
    : [];
}

/** None is required: what is not told may be known from a project, and a form asks for the rest. */
function optionsIn(command: Command, { renamed = {} }: MenuEntry): APIApplicationCommandBasicOption[] {
  return optionsOf(command)
    .slice(0, COMMAND_OPTIONS)
    .map(({ name, summary, kind, choices }) => {
      const option = {
        type: ApplicationCommandOptionType.String as const,
        name: renamed[name] ?? name,
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

// Brings Discord's menus up to date with the commands: only what differs is written, and what is no longer
// ours is taken away.

/** What is to be done, by the names of commands. */
interface Difference {
  readonly write: readonly RESTPostAPIApplicationCommandsJSONBody[];
  readonly remove: readonly { readonly id: string; readonly name: string }[];
  readonly same: readonly string[];
}

/** Where commands are registered: for everybody, or in one server while trying things out. */
interface Place {
  readonly application: string;
  readonly guild?: string;
}

/** The commands of a place as they should be there: one server's own have no places of their own. */
export function wantedIn(
  place: Place,
  commands: readonly RESTPostAPIApplicationCommandsJSONBody[],
): readonly RESTPostAPIApplicationCommandsJSONBody[] {
  if (place.guild === undefined) return commands;
  return commands.map(({ integration_types: _types, contexts: _contexts, ...command }) => command);
}

/** What differs from what Discord has. An entry point that Discord made for itself stays. */
export function differenceOf(
  wanted: readonly RESTPostAPIApplicationCommandsJSONBody[],
  there: readonly APIApplicationCommand[],
): Difference {
  const found = (command: RESTPostAPIApplicationCommandsJSONBody) =>
    there.find(
      ({ name, type }) => name === command.name && type === (command.type ?? ApplicationCommandType.ChatInput),
    );
  const isSame = (command: RESTPostAPIApplicationCommandsJSONBody): boolean => {
    const old = found(command);
    return old !== undefined && plain(command, command) === plain(old, command);
  };
  const kept = new Set(wanted.flatMap((command) => found(command)?.id ?? []));
  return {
    write: wanted.filter((command) => !isSame(command)),
    remove: there
      .filter(({ id, type }) => !kept.has(id) && type !== ApplicationCommandType.PrimaryEntryPoint)
      .map(({ id, name }) => ({ id, name })),
    same: wanted.filter(isSame).map(({ name }) => name),
  };
}

/** What Discord has there. Rejects as the REST client does. */
export async function registeredThere(rest: REST, place: Place): Promise<readonly APIApplicationCommand[]> {
  return (await rest.get(routeOf(place))) as readonly APIApplicationCommand[];
}

/** Writes and removes what differs. Rejects at the first refusal; what was written stays, and running again goes on. */
export async function register(rest: REST, place: Place, { write, remove }: Difference): Promise<void> {
  for (const { id } of remove) await rest.delete(`${routeOf(place)}/${id}`);
  // Posting a command of a name that is there replaces it.
  for (const body of write) await rest.post(routeOf(place), { body });
}

function routeOf({ application, guild }: Place): `/${string}` {
  return guild === undefined
    ? Routes.applicationCommands(application)
    : Routes.applicationGuildCommands(application, guild);
}

/** The fields that we set, in one order, without what stands for nothing. */
function plain(command: object, like: object): string {
  const fields = Object.keys(like);
  return JSON.stringify(bare(Object.fromEntries(Object.entries(command).filter(([field]) => fields.includes(field)))));
}

function bare(value: unknown): unknown {
  if (Array.isArray(value)) return value.every((one) => typeof one === 'number') ? [...value].sort() : value.map(bare);
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).filter(
    ([, one]) => one !== undefined && one !== null && one !== false && !isEmpty(one),
  );
  return Object.fromEntries(fields.sort(([a], [b]) => (a < b ? -1 : 1)).map(([field, one]) => [field, bare(one)]));
}

function isEmpty(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}
