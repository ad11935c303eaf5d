/** A command as a Slack form: generated from its options, examples as placeholders, what was told in its fields. */

import type { types } from '@slack/bolt';
import type { Command } from '../../chat/command.ts';
import { type Field, formFields } from '../../chat/form.ts';
import { fullName } from '../../input/command-shape.ts';
import { SLACK } from '../../text/chat-text.ts';
import { optionOf } from './buttons.ts';
import { SELECT, VIEW } from './limits.ts';
import type { Where } from './ports.ts';
import { cut, plainText, said } from './rich.ts';

/** The one form; which command it is for stands in what it carries. */
export const FORM = 'ask-form';
/** The id of every field's input: its block is named for the option. */
export const FIELD = 'told';

/** What a form carries: its command, and where its answer goes. */
export interface Carried {
  readonly command: string;
  readonly where: Where;
}

/** The form of a command; with `mayLack` no field must be filled, for a project may tell the rest. */
export function formView(
  command: Command,
  told: Readonly<Record<string, string>>,
  where: Where,
  mayLack = false,
): types.ModalView {
  const name = fullName(command);
  const carried: Carried = { command: name, where };
  return {
    type: 'modal',
    callback_id: FORM,
    private_metadata: JSON.stringify(carried).slice(0, VIEW.metadata),
    title: plainText(name.charAt(0).toUpperCase() + name.slice(1), VIEW.title),
    submit: plainText(SLACK.formSubmit, VIEW.title),
    close: plainText(SLACK.formClose, VIEW.title),
    blocks: [...said(command.summary), ...formFields(command, told).map((field) => input(field, mayLack))].slice(
      0,
      VIEW.blocks,
    ),
  };
}

/** What a form carried; undefined where it is none of ours or too old to be read. */
export function carriedIn(metadata: string): Carried | undefined {
  try {
    const carried = JSON.parse(metadata) as Partial<Carried>;
    return typeof carried.command === 'string' && typeof carried.where?.user === 'string'
      ? { command: carried.command, where: carried.where }
      : undefined;
  } catch {
    return undefined;
  }
}

/** The values of a form's inputs, as Slack sends them. */
export interface FormState {
  readonly values: Readonly<
    Record<
      string,
      Readonly<
        Record<
          string,
          { readonly value?: string | null | undefined; readonly selected_option?: { readonly value: string } | null }
        >
      >
    >
  >;
}

/** The text typed or chosen for each option. */
export function typedIn({ values }: FormState): Readonly<Record<string, string | null | undefined>> {
  return Object.fromEntries(
    Object.entries(values).map(([option, inputs]) => {
      const told = Object.hasOwn(inputs, FIELD) ? inputs[FIELD] : undefined;
      return [option, told?.selected_option?.value ?? told?.value];
    }),
  );
}

function input(field: Field, mayLack: boolean): types.InputBlock {
  const { option, label, summary, standard } = field;
  const empty = standard === undefined ? (mayLack ? SLACK.formProject : undefined) : SLACK.formTaken(standard);
  const hint = empty === undefined ? summary : `${summary}. ${empty}`;
  return {
    type: 'input',
    block_id: option,
    label: plainText(label, VIEW.label),
    hint: plainText(hint, VIEW.hint),
    optional: mayLack || standard !== undefined,
    element: element(field),
  };
}

/** A list where only its words are taken; a told text that is none of them stays to be mended as it was typed. */
function element({ choices, told, example, long }: Field): types.InputBlock['element'] {
  const placeholder = plainText(SLACK.formExample(example), VIEW.placeholder);
  if (choices && choices.length <= SELECT.options && (told === undefined || choices.includes(told))) {
    return {
      type: 'static_select',
      action_id: FIELD,
      placeholder,
      options: choices.map((choice) => optionOf(choice, choice)),
      ...(told === undefined ? {} : { initial_option: optionOf(told, told) }),
    };
  }
  return {
    type: 'plain_text_input',
    action_id: FIELD,
    multiline: long,
    max_length: VIEW.input,
    placeholder,
    ...(told === undefined ? {} : { initial_value: cut(told, VIEW.input) }),
  };
}
