/** What came in: one interaction, whoever sent it and where its answer may go, without any cache. */

import {
  type APIApplicationCommandInteractionDataOption,
  type APIInteraction,
  ApplicationCommandOptionType,
  InteractionContextType,
  MessageFlags,
} from 'discord.js';
import { type Asker, accountKey } from '../../accounts/records.ts';
import type { Command } from '../../chat/command.ts';
import { fullName } from '../../input/command-shape.ts';
import { FILE_BYTES } from './limits.ts';
import { MENU, type MenuEntry, type OwnEntry } from './menu.ts';

/** Discord's ids count from the first moment of 2015, in milliseconds above 22 bits of other things. */
const EPOCH = 1_420_070_400_000;

/** An interaction that somebody set off. */
export interface Came {
  readonly id: string;
  /** Milliseconds since 1970 at which it was set off. */
  readonly at: number;
  readonly token: string;
  readonly application: string;
  readonly asker: Asker;
  /** The server that it was set off on; undefined in direct messages. */
  readonly server?: string;
  /** The channel or thread that it was set off in. */
  readonly channel?: string;
  /** The asker's key (`accountKey`). */
  readonly account: string;
  /** Whether only the asker should see the answer: everywhere but where they are alone with the bot. */
  readonly ephemeral: boolean;
  /** Bytes of one file that may be sent here. */
  readonly fileBytes: number;
  /** Whether it came in a message that others read, and so does its answer. */
  readonly open?: true;
  /** The language that the asker reads Discord in. */
  readonly locale?: string;
}

/** Undefined for what no person set off, and for what has not what every interaction has. */
export function cameOf(interaction: APIInteraction): Came | undefined {
  const user = interaction.user ?? interaction.member?.user;
  const { id, token, application_id: application, guild_id: server, data } = interaction;
  const named = [id, user?.id, application].every(isSnowflake) && (server === undefined || isSnowflake(server));
  if (!user || !named || typeof token !== 'string' || typeof data !== 'object' || data === null) return undefined;
  const asker: Asker = { platform: 'discord', id: user.id };
  const channel = isSnowflake(interaction.channel?.id) ? interaction.channel?.id : undefined;
  const alone =
    interaction.context === undefined
      ? interaction.guild_id === undefined
      : interaction.context === InteractionContextType.BotDM;
  return {
    id,
    at: sentAt(id),
    token,
    application,
    asker,
    account: accountKey(asker),
    ...(server === undefined ? {} : { server }),
    ...(channel === undefined ? {} : { channel }),
    ephemeral: !alone,
    fileBytes: interaction.attachment_size_limit ?? FILE_BYTES,
    ...('locale' in interaction && typeof interaction.locale === 'string' ? { locale: interaction.locale } : {}),
  };
}

/** Whether only one person sees a message. */
export function isEphemeral({ flags = 0 }: { readonly flags?: number }): boolean {
  return (flags & MessageFlags.Ephemeral) !== 0;
}

/** Milliseconds since 1970 at which Discord gave an id. */
export function sentAt(id: string): number {
  return Number(BigInt(id) >> 22n) + EPOCH;
}

/** Whether something is an id as Discord writes them: a whole number of 64 bits, as text. */
export function isSnowflake(id: unknown): boolean {
  return typeof id === 'string' && /^\d{1,20}$/.test(id);
}

/** A slash command with what was typed for its options; `focused` is the option being typed. */
interface Slash {
  readonly command: Command;
  readonly given: Readonly<Record<string, string>>;
  readonly focused?: string;
}

type Options = readonly APIApplicationCommandInteractionDataOption[] | undefined;

/** What was typed for options, whatever they are called. */
export function textsOf(options: Options): readonly string[] {
  return (options ?? []).flatMap((option) => {
    if (option.type === ApplicationCommandOptionType.String) return [option.value];
    return option.type === ApplicationCommandOptionType.Subcommand ? textsOf(option.options) : [];
  });
}

/** An entry of the menu that is no command elsewhere. */
interface OwnSlash extends Omit<Slash, 'command'> {
  readonly own: OwnEntry;
}

/** What was chosen in a menu, be it today's or an older one; undefined for what is no longer there. */
export function slashOf(name: string, options: Options, commands: readonly Command[]): Slash | OwnSlash | undefined {
  const [first] = options ?? [];
  const sub = first?.type === ApplicationCommandOptionType.Subcommand ? first : undefined;
  const entry = sub ? undefined : MENU.find((one) => one.name === name);
  const typed = (sub ? sub.options : options) ?? [];
  const texts = typed.flatMap((option) => (option.type === ApplicationCommandOptionType.String ? [option] : []));
  const focused = texts.find((option) => option.focused === true)?.name;
  const given = {
    given: Object.fromEntries(texts.map((option) => [ownName(option.name, entry), option.value])),
    ...(focused === undefined ? {} : { focused: ownName(focused, entry) }),
  };
  const wanted = entry?.command ?? (sub ? `${name} ${sub.name}` : name);
  const command = commands.find((known) => fullName(known) === wanted);
  // Help on one thing is a command, help on everything an entry.
  if (entry?.own && !(command && texts.length > 0)) return { own: entry.own, ...given };
  return command && { command, ...given };
}

/** The command's own name of an option. */
function ownName(shown: string, entry: MenuEntry | undefined): string {
  return Object.entries(entry?.renamed ?? {}).find(([, name]) => name === shown)?.[0] ?? shown;
}

// What a button, a select or a form says when it comes back: a verb, the short id of what is kept, and one
// word more.

export const VERBS = [
  'ask',
  'pick',
  'change',
  'parts',
  'sources',
  'show',
  'poll',
  'mend',
  'fix',
  'try',
  'form',
  'open',
  'choose',
  'wrong',
  'menu',
  'tick',
  'put',
  'send',
  'recent',
  'away',
  'mine',
  'buy',
  'broke',
  'thread',
  'begin',
] as const;
export type Verb = (typeof VERBS)[number];

export interface Pressed {
  readonly verb: Verb;
  /** Of the kept answer or draft; empty where none could be kept. */
  readonly id: string;
  readonly rest: string;
}

export function customId(verb: Verb, id: string, rest = ''): string {
  return rest === '' ? `${verb}:${id}` : `${verb}:${id}:${rest}`;
}

/** Undefined for what we never wrote. */
export function readCustomId(text: string): Pressed | undefined {
  const match = /^([a-z]+):([\w-]{0,22})(?::(.*))?$/su.exec(text);
  const verb = VERBS.find((known) => known === match?.[1]);
  return match && verb ? { verb, id: match[2] ?? '', rest: match[3] ?? '' } : undefined;
}
