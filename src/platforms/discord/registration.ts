/** Brings Discord's menus up to date with the commands: only what differs is written, and what is no longer ours is taken away. */

import type { REST } from '@discordjs/rest';
import {
  type APIApplicationCommand,
  ApplicationCommandType,
  type RESTPostAPIApplicationCommandsJSONBody,
  Routes,
} from 'discord-api-types/v10';

/** What is to be done, by the names of commands. */
export interface Difference {
  readonly write: readonly RESTPostAPIApplicationCommandsJSONBody[];
  readonly remove: readonly { readonly id: string; readonly name: string }[];
  readonly same: readonly string[];
}

/** Where commands are registered: for everybody, or in one server while trying things out. */
export interface Place {
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
    ([field, one]) =>
      one !== undefined && one !== null && one !== false && !field.endsWith('_localizations') && !isEmpty(one),
  );
  return Object.fromEntries(fields.sort(([a], [b]) => (a < b ? -1 : 1)).map(([field, one]) => [field, bare(one)]));
}

function isEmpty(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}
