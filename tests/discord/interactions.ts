/** Interactions as Discord sends them, cut down to what is always there: no server, person or channel is known beforehand. */

import {
  type APIInteraction,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ComponentType,
  InteractionContextType,
  InteractionType,
} from 'discord.js';

export const APPLICATION = '900000000000000001';
export const ASKER = '100000000000000001';
export const OTHER = '100000000000000002';

let last = 700_000_000_000_000_000n;

/** A new snowflake. */
export function snowflake(): string {
  last += 1n;
  return String(last);
}

export interface Where {
  readonly user?: string;
  readonly context?: InteractionContextType;
  /** Bytes of one file. */
  readonly fileBytes?: number;
  /** What the component or form belongs to. */
  readonly message?: string;
  /** Whether others see that message too. */
  readonly shown?: boolean;
  /** What the person may do there, as Discord writes it. */
  readonly permissions?: string;
  /** The language of the person. */
  readonly locale?: string;
}

/** A slash command: `name` with its group before it, and the texts of its options. */
export function slash(name: string, given: Readonly<Record<string, string>> = {}, where: Where = {}): APIInteraction {
  return interaction(InteractionType.ApplicationCommand, commandData(name, given), where);
}

/** Typing in an option of a slash command. */
export function typing(name: string, option: string, typed: string, where: Where = {}): APIInteraction {
  return interaction(
    InteractionType.ApplicationCommandAutocomplete,
    commandData(name, { [option]: typed }, option),
    where,
  );
}

/** The message menu on a message of somebody else, or of `author`. */
export function menu(content: string, where: Where = {}, author = OTHER): APIInteraction {
  const target = snowflake();
  const data = {
    id: snowflake(),
    name: 'Work out quantities',
    type: ApplicationCommandType.Message,
    target_id: target,
    resolved: { messages: { [target]: message(target, author, content) } },
  };
  return interaction(InteractionType.ApplicationCommand, data, where);
}

export function press(customId: string, where: Where = {}): APIInteraction {
  const data = { custom_id: customId, component_type: ComponentType.Button };
  return interaction(InteractionType.MessageComponent, data, { message: snowflake(), ...where });
}

export function pick(customId: string, values: readonly string[], where: Where = {}): APIInteraction {
  const data = { custom_id: customId, component_type: ComponentType.StringSelect, values };
  return interaction(InteractionType.MessageComponent, data, { message: snowflake(), ...where });
}

/** A button pressed, or a line of a list chosen. */
export function choose(
  { id, value }: { readonly id: string; readonly value?: string },
  where: Where = {},
): APIInteraction {
  return value === undefined ? press(id, where) : pick(id, [value], where);
}

/** A filled form; a list stands for a select. */
export function fill(
  customId: string,
  typed: Readonly<Record<string, string | readonly string[]>>,
  where: Where = {},
): APIInteraction {
  const components = Object.entries(typed).map(([option, value], i) => ({
    type: ComponentType.Label,
    id: i + 1,
    component:
      typeof value === 'string'
        ? { type: ComponentType.TextInput, id: i + 50, custom_id: option, value }
        : { type: ComponentType.StringSelect, id: i + 50, custom_id: option, values: value },
  }));
  return interaction(InteractionType.ModalSubmit, { custom_id: customId, components }, where);
}

function commandData(name: string, given: Readonly<Record<string, string>>, focused?: string) {
  const [first = '', second] = name.split(' ');
  const options = Object.entries(given).map(([option, value]) => ({
    type: ApplicationCommandOptionType.String,
    name: option,
    value,
    ...(option === focused ? { focused: true } : {}),
  }));
  const sub = second && [{ type: ApplicationCommandOptionType.Subcommand, name: second, options }];
  return { id: snowflake(), name: first, type: ApplicationCommandType.ChatInput, options: sub || options };
}

function userOf(id: string) {
  return { id, username: `user-${id}`, discriminator: '0', avatar: null, global_name: null };
}

function message(id: string, author: string, content: string) {
  return {
    id,
    channel_id: '500',
    author: userOf(author),
    content,
    timestamp: '2026-11-01T00:00:00Z',
    edited_timestamp: null,
    tts: false,
    mention_everyone: false,
    mentions: [],
    mention_roles: [],
    attachments: [],
    embeds: [],
    pinned: false,
    type: 0,
    flags: 64,
    components: [],
  };
}

function interaction(type: InteractionType, data: object, where: Where): APIInteraction {
  const { user: id = ASKER, context = InteractionContextType.Guild, fileBytes = 10_485_760 } = where;
  const user = userOf(id);
  const guild = context === InteractionContextType.Guild;
  const member = { user, roles: [], joined_at: '2026-01-01T00:00:00Z', deaf: false, mute: false, flags: 0 };
  const whole = {
    id: snowflake(),
    application_id: APPLICATION,
    type,
    data,
    token: `token-${snowflake()}`,
    version: 1,
    context,
    channel_id: '500',
    channel: { id: '500', type: guild ? 0 : 1, ...(guild ? {} : { recipients: [user], last_message_id: null }) },
    locale: where.locale ?? 'en-US',
    entitlements: [],
    authorizing_integration_owners: { '1': id },
    attachment_size_limit: fileBytes,
    app_permissions: '0',
    ...(guild
      ? {
          guild_id: '600',
          guild_locale: 'en-US',
          guild: { id: '600', locale: 'en-US', features: [] },
          member: { ...member, permissions: where.permissions ?? '0' },
        }
      : { user }),
    ...(where.message === undefined
      ? {}
      : { message: { ...message(where.message, APPLICATION, ''), flags: where.shown ? 0 : 64 } }),
  };
  // What Discord sends is wider than the union of types says of a test's small pieces.
  return whole as unknown as APIInteraction;
}
