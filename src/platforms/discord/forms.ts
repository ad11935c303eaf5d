/** Forms: an ask's options as the fields of a modal, and what came back in them. */

import {
  type APIComponentInLabel,
  type APILabelComponent,
  type APIModalInteractionResponseCallbackData,
  type APIModalSubmission,
  ButtonStyle,
  ComponentType,
  TextInputStyle,
} from 'discord.js';
import { accountKey } from '../../accounts/records.ts';
import type { Command, Form } from '../../chat/command.ts';
import { type Field, formFields, formGiven } from '../../chat/form.ts';
import { greetedKey, recentAnswers } from '../../chat/saved-replies.ts';
import { fullName } from '../../input/command-shape.ts';
import { Outage } from '../../storage/types.ts';
import { CHAT, GREETING, sayFault } from '../../text/chat-text.ts';
import { inTime, refused, tellFault, tellUnlessOutage } from './fault.ts';
import { type Came, customId } from './interaction.ts';
import {
  CUSTOM_ID,
  FIELD_DESCRIPTION,
  FIELD_LABEL,
  FIELD_PLACEHOLDER,
  FIELD_VALUE,
  KEEP_TIME,
  MODAL_FIELDS,
  MODAL_TITLE,
  SELECT_OPTIONS,
  SELECT_TEXT,
} from './limits.ts';
import { escapedMarkdown, label } from './page.ts';
import type { DiscordContext, Outgoing } from './types.ts';

/** A form of a command. `first`: the options wanted, before any other; `only` leaves out the rest. `id` is that of the kept draft. */
export function modalOf(
  command: Command,
  given: Form['told'],
  id: string,
  { first = [], only = false }: { readonly first?: readonly string[]; readonly only?: boolean } = {},
): APIModalInteractionResponseCallbackData {
  const fields = formFields(command, given);
  const wanted = fields.filter(({ option }) => first.includes(option));
  const rest = only ? [] : fields.filter((field) => !wanted.includes(field));
  return {
    custom_id: customId('form', id, fullName(command)).slice(0, CUSTOM_ID),
    title: titleOf(command.summary),
    components: [...wanted, ...rest].slice(0, MODAL_FIELDS).map(fieldOf),
  };
}

/** A summary where there is little room: its first part, where that is enough. */
function titleOf(summary: string): string {
  const [first = summary] = summary.split(/[,:]/);
  return label(summary.length <= MODAL_TITLE ? summary : first, MODAL_TITLE);
}

/** What a submitted form tells: its fields over what was told before; a field left empty is no longer told. */
export function submitted(command: Command, before: Form['told'], submission: APIModalSubmission): Form['told'] {
  const typed = Object.fromEntries(
    submission.components.flatMap((row): [string, string][] => {
      if (row.type !== ComponentType.Label) return [];
      const { component } = row;
      if (component.type === ComponentType.TextInput) return [[component.custom_id, component.value]];
      if (component.type === ComponentType.StringSelect) return [[component.custom_id, component.values[0] ?? '']];
      return [];
    }),
  );
  return Object.fromEntries(formGiven(command, { ...before, ...typed }));
}

/** What was typed into the fields of a form, one a line. */
export function typedIn(submission: APIModalSubmission): string {
  const texts = submission.components.flatMap((row) =>
    row.type === ComponentType.Label && row.component.type === ComponentType.TextInput ? [row.component.value] : [],
  );
  return texts.join('\n');
}

/** Opens a form; where Discord does not take it, says how to ask instead. */
export async function openForm(
  modal: APIModalInteractionResponseCallbackData,
  came: Came,
  access: DiscordContext,
): Promise<void> {
  try {
    await access.wire.modal(came, modal);
  } catch (cause) {
    if (refused(cause) !== 'content') throw cause;
    tellFault(access, cause);
    await sayMention(came, access, CHAT.noForm);
  }
}

function fieldOf(field: Field): APILabelComponent {
  return {
    type: ComponentType.Label,
    label: label(field.label, FIELD_LABEL),
    description: label(field.summary, FIELD_DESCRIPTION),
    component: inputOf(field),
  };
}

function inputOf({ option, example, standard, choices, long, given }: Field): APIComponentInLabel {
  const chosen = given?.trim().toLowerCase();
  // A word that is not among the choices must stay in sight to be mended.
  const among = choices !== undefined && (chosen === undefined || choices.includes(chosen));
  if (among && choices.length <= SELECT_OPTIONS) {
    return {
      type: ComponentType.StringSelect,
      custom_id: option,
      placeholder: label(standard ?? example, FIELD_PLACEHOLDER),
      required: standard === undefined,
      min_values: standard === undefined ? 1 : 0,
      max_values: 1,
      options: choices.map((choice) => ({
        label: label(choice, SELECT_TEXT),
        value: choice,
        ...(choice === chosen ? { default: true } : {}),
      })),
    };
  }
  return {
    type: ComponentType.TextInput,
    custom_id: option,
    style: long ? TextInputStyle.Paragraph : TextInputStyle.Short,
    placeholder: label(example, FIELD_PLACEHOLDER),
    required: standard === undefined,
    max_length: FIELD_VALUE,
    ...(given === undefined ? {} : { value: given.slice(0, FIELD_VALUE) }),
  };
}

// A word of ours where there is no answer: what is gone, and faults.

/** Says that what was pressed is no longer kept, and what to press instead. */
export async function sayGone(came: Came, access: DiscordContext): Promise<void> {
  await sayMention(came, access, CHAT.gone);
}

/** A word of ours that tells to ask by the menu. */
async function sayMention(came: Came, access: DiscordContext, say: (how: string) => string): Promise<void> {
  const [before = '', after = ''] = say('\n').split('\n');
  const content = `${escapedMarkdown(before)} ${access.entries.mention('ask')}${escapedMarkdown(after)}`;
  const word = { ...wordOf(''), components: [{ type: ComponentType.TextDisplay, content }] } as const;
  await access.wire.respond(came, word, { ephemeral: came.ephemeral, update: false }, false);
}

/** Says that nothing is taken up just now, or that what was begun is not finished. Never rejects. */
export function sayRestarting(came: Came, access: DiscordContext): Promise<void> {
  return sayTo(came, access, CHAT.restarting);
}

/** Tells the asker of a fault by whichever way is still open; where none is, the log has it. Never rejects. */
export function sayFaultTo(came: Came, access: DiscordContext, reference: string, cause: unknown): Promise<void> {
  return sayTo(came, access, sayFault(reference, cause instanceof Outage));
}

/** A word of ours, by whichever way is still open, for the asker alone where others are. Never rejects. */
export async function sayTo(came: Came, access: DiscordContext, text: string): Promise<void> {
  const word = wordOf(text);
  const ephemeral = came.ephemeral || came.open === true;
  try {
    await access.wire.respond(came, word, { ephemeral, update: false }, false);
  } catch {
    // Answered already, so that a further message is still taken; or nothing is.
    await access.wire.followUp(came, word, ephemeral).catch(() => undefined);
  }
}

// A greeting, once, to who installed the application or uses it for the first time.

const GREETED_FOR = 365 * 24 * 3600 * 1000;

/** Greets who installed it, in their own messages; where those are closed it is left for their first use. Never rejects. */
export async function greetInstaller(person: string, access: DiscordContext): Promise<void> {
  const account = accountKey({ platform: 'discord', id: person });
  try {
    if (!(await isNew(account, access))) return;
    await access.wire.direct(person, greeting(access));
  } catch (cause) {
    if (refused(cause) !== 'content') return tellUnlessOutage(access, cause);
    await access.kept.delete(greetedKey(account)).catch(() => undefined);
  }
}

/** Greets who uses it for the first time, behind their first answer, for them alone. Never rejects. */
export async function greetFirst(came: Came, access: DiscordContext): Promise<void> {
  if (came.open || !access.isFresh(greetedKey(came.account))) return;
  try {
    if (!(await isNew(came.account, access))) return;
    const before = await inTime(recentAnswers(access.kept, came.account, 2), KEEP_TIME, access);
    if (before.length > 1) return;
    await access.wire.followUp(came, greeting(access), came.ephemeral);
  } catch (cause) {
    // A greeting that is refused is no loss.
    if (refused(cause) === 'unknown') tellUnlessOutage(access, cause);
  }
}

function isNew(account: string, access: DiscordContext): Promise<boolean> {
  return inTime(access.kept.claim(greetedKey(account), GREETED_FOR), KEEP_TIME, access);
}

function greeting({ hears }: DiscordContext): Outgoing {
  const { title, lines, heard, begin } = GREETING;
  const content = [`### ${title}`, ...lines, ...(hears ? [heard] : [])].join('\n');
  const buttons = begin.map(([name, said], at) => ({
    type: ComponentType.Button as const,
    style: at === 0 ? (ButtonStyle.Primary as const) : (ButtonStyle.Secondary as const),
    label: said,
    custom_id: customId('begin', '', name),
  }));
  const card = [
    { type: ComponentType.TextDisplay as const, content },
    { type: ComponentType.ActionRow as const, components: buttons },
  ];
  return { components: [{ type: ComponentType.Container, components: card }], attachments: [], files: [] };
}

export function wordOf(text: string): Outgoing {
  return {
    components: [{ type: ComponentType.TextDisplay, content: escapedMarkdown(text) }],
    attachments: [],
    files: [],
  };
}
