/** A command as a Slack form: generated from its options, examples as placeholders, what was told in its fields. */

import type { types } from '@slack/bolt';
import { type Command, readOptions } from '../../chat/command.ts';
import { formRequest } from '../../chat/command-line.ts';
import { commandNamed, type Field, formFields, formGiven } from '../../chat/form.ts';
import { isHazard } from '../../chat/hazard-answers.ts';
import type { Request } from '../../chat/ports.ts';
import { fullName } from '../../input/command-shape.ts';
import { CHAT, SLACK } from '../../text/chat-text.ts';
import { optionOf } from './buttons.ts';
import { SELECT, VIEW } from './limits.ts';
import { cut, said, slackPlainText } from './rich.ts';
import type { SlackPorts, Where } from './types.ts';

/** The one form; which command it is for stands in what it carries. */
export const FORM = 'ask-form';
/** The id of every field's input: its block is named for the option. */
export const FIELD = 'told';

/** What a form carries: its command, and where its answer goes. */
interface Carried {
  readonly command: string;
  readonly where: Where;
}

/** The form of a command; with `mayLack` no field must be filled, for a project may tell the rest. */
export function formView(
  command: Command,
  given: Readonly<Record<string, string>>,
  where: Where,
  mayLack = false,
): types.ModalView {
  const name = fullName(command);
  const carried: Carried = { command: name, where };
  return {
    type: 'modal',
    callback_id: FORM,
    private_metadata: JSON.stringify(carried).slice(0, VIEW.metadata),
    title: slackPlainText(name.charAt(0).toUpperCase() + name.slice(1), VIEW.title),
    submit: slackPlainText(SLACK.formSubmit, VIEW.title),
    close: slackPlainText(SLACK.formClose, VIEW.title),
    blocks: [...said(command.summary), ...formFields(command, given).map((field) => input(field, mayLack))].slice(
      0,
      VIEW.blocks,
    ),
  };
}

/** What a form carried; undefined where it is none of ours or too old to be read. */
function carriedIn(metadata: string): Carried | undefined {
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
interface FormState {
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
function typedIn({ values }: FormState): Readonly<Record<string, string | null | undefined>> {
  return Object.fromEntries(
    Object.entries(values).map(([option, inputs]) => {
      const given = Object.hasOwn(inputs, FIELD) ? inputs[FIELD] : undefined;
      return [option, given?.selected_option?.value ?? given?.value];
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
    label: slackPlainText(label, VIEW.label),
    hint: slackPlainText(hint, VIEW.hint),
    optional: mayLack || standard !== undefined,
    element: element(field),
  };
}

/** A list where only its words are taken; a told text that is none of them stays to be mended as it was typed. */
function element({ choices, given, example, long }: Field): types.InputBlock['element'] {
  const placeholder = slackPlainText(SLACK.formExample(example), VIEW.placeholder);
  if (choices && choices.length <= SELECT.options && (given === undefined || choices.includes(given))) {
    return {
      type: 'static_select',
      action_id: FIELD,
      placeholder,
      options: choices.map((choice) => optionOf(choice, choice)),
      ...(given === undefined ? {} : { initial_option: optionOf(given, given) }),
    };
  }
  return {
    type: 'plain_text_input',
    action_id: FIELD,
    multiline: long,
    max_length: VIEW.input,
    placeholder,
    ...(given === undefined ? {} : { initial_value: cut(given, VIEW.input) }),
  };
}

// A form sent: what cannot be read is told at its field, and everything typed stays; else it is an ask.

/** What became of a form: problems by the block of their field, or the ask and where its answer goes. */
type Submitted =
  | { readonly errors: Record<string, string> }
  | { readonly ask: Pick<Request, 'text' | 'given'> | undefined; readonly where: Partial<Where> };

/** Reads a form: only what was typed is judged here, for the rest may be known from elsewhere. Never throws on what was typed. */
export function submitted(
  view: { readonly private_metadata: string; readonly state: FormState },
  { commands, preferences }: Pick<SlackPorts, 'commands' | 'preferences'>,
): Submitted {
  const carried = carriedIn(view.private_metadata);
  const command = carried && commandNamed(carried.command, commands);
  if (!carried || !command) {
    const typed = Object.values(typedIn(view.state)).join('\n');
    return { ask: isHazard(typed) ? { text: typed } : undefined, where: carried?.where ?? {} };
  }
  const optionTexts = formGiven(command, typedIn(view.state));
  const requested = { ask: formRequest(command, optionTexts), where: carried.where };
  // What is told of a hazard is answered, and not mended at its field.
  if (isHazard([...optionTexts.values()].join('\n'))) return requested;
  const read = readOptions(command, optionTexts, preferences);
  const problems = read.ok ? [] : read.problems.filter(({ option }) => optionTexts.has(option));
  if (problems.length === 0) return requested;
  const errors: Record<string, string> = {};
  for (const { option, expected, fix } of problems) {
    errors[option] ??= cut(fix === undefined ? expected : `${expected} ${CHAT.type}: ${fix}`, VIEW.error);
  }
  return { errors };
}
