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
import { BUTTON, SELECT, VIEW } from './limits.ts';
import { cut, said, slackPlainText } from './rich.ts';
import type { SlackPorts, Where } from './types.ts';

/** The one form; which command it is for stands in what it carries. */
export const FORM = 'ask-form';
/** The id of every field's input: its block is named for the option. */
export const FIELD = 'told';

/** The button that shows the other fields. */
export const MORE_FIELDS = 'fields';

/** What a form carries: its command, where its answer goes, and what was told for fields that it does not show. */
interface Carried {
  readonly command: string;
  readonly where: Where;
  readonly told?: Readonly<Record<string, string>>;
  /** Whether no field must be filled, for a project may tell the rest. */
  readonly mayLack?: boolean;
}

/** Inputs that a form begins with; the others come when asked for. */
const FIRST_INPUTS = 4;

/** The form of a command: what it needs and what was told first, the rest with `all`. */
export function formView(
  command: Command,
  given: Readonly<Record<string, string>>,
  { where, mayLack = false }: Pick<Carried, 'where' | 'mayLack'>,
  all = false,
): types.ModalView {
  const name = fullName(command);
  const fields = likelyFirst(formFields(command, given));
  const needed = mayLack ? 0 : fields.filter(({ standard }) => standard === undefined).length;
  const shown = all ? fields : fields.slice(0, Math.max(FIRST_INPUTS, needed));
  const hidden = fields.slice(shown.length);
  const told = Object.fromEntries(hidden.flatMap(({ option, given: text }) => (text ? [[option, text]] : [])));
  const carried: Carried = { command: name, where, ...(hidden.length > 0 && { told }), ...(mayLack && { mayLack }) };
  const metadata = JSON.stringify(carried);
  // What cannot be carried along stands in its fields.
  if (metadata.length > VIEW.metadata && hidden.length > 0) return formView(command, given, { where, mayLack }, true);
  return {
    type: 'modal',
    callback_id: FORM,
    private_metadata: metadata,
    title: slackPlainText(name.charAt(0).toUpperCase() + name.slice(1), VIEW.title),
    submit: slackPlainText(SLACK.formSubmit, VIEW.title),
    close: slackPlainText(SLACK.formClose, VIEW.title),
    blocks: [
      ...said(command.summary),
      ...shown.map((field) => input(field, mayLack)),
      ...(hidden.length > 0 ? [moreFields()] : []),
    ].slice(0, VIEW.blocks),
  };
}

/** Of what may be left out, what people know about their floor comes before what is about how it is cut. */
const LIKELY = ['pattern', 'doorways', 'direction', 'doors', 'stock', 'built'];

function likelyFirst(fields: readonly Field[]): readonly Field[] {
  const rank = ({ option, standard, given }: Field): number => {
    if (standard === undefined) return -2;
    return given !== undefined ? -1 : LIKELY.includes(option) ? LIKELY.indexOf(option) : LIKELY.length;
  };
  return fields.toSorted((one, other) => rank(one) - rank(other));
}

function moreFields(): types.ActionsBlock {
  const text = slackPlainText(SLACK.formMore, BUTTON.text);
  return { type: 'actions', elements: [{ type: 'button', action_id: MORE_FIELDS, text }] };
}

/** A form as Slack sends it. */
interface SentForm {
  readonly private_metadata: string;
  readonly state: FormState;
}

/** The form with all its fields, everything typed in them; undefined where it is none of ours. */
export function widened(
  { private_metadata, state }: SentForm,
  { commands }: Pick<SlackPorts, 'commands'>,
): types.ModalView | undefined {
  const carried = carriedIn(private_metadata);
  const command = carried && commandNamed(carried.command, commands);
  if (!carried || !command) return undefined;
  const typed = Object.entries({ ...carried.told, ...typedIn(state) });
  return formView(
    command,
    Object.fromEntries(typed.flatMap(([name, text]) => (text ? [[name, text]] : []))),
    carried,
    true,
  );
}

/** What stands in place of a form whose answer is elsewhere. */
export function doneView(): types.ModalView {
  return {
    type: 'modal',
    title: slackPlainText(SLACK.formSent, VIEW.title),
    close: slackPlainText(SLACK.formDone, VIEW.title),
    blocks: [...said(SLACK.formDirect)],
  };
}

/** What a form carried; undefined where it is none of ours or too old to be read. */
function carriedIn(metadata: string): Carried | undefined {
  try {
    const carried = JSON.parse(metadata) as Partial<Carried>;
    const { command, where, told, mayLack } = carried;
    if (typeof command !== 'string' || typeof where?.user !== 'string') return undefined;
    return { command, where, ...(told && { told }), ...(mayLack === true && { mayLack }) };
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
  view: SentForm,
  { commands, preferences }: Pick<SlackPorts, 'commands' | 'preferences'>,
): Submitted {
  const carried = carriedIn(view.private_metadata);
  const command = carried && commandNamed(carried.command, commands);
  if (!carried || !command) {
    const typed = Object.values(typedIn(view.state)).join('\n');
    return { ask: isHazard(typed) ? { text: typed } : undefined, where: carried?.where ?? {} };
  }
  const typed = typedIn(view.state);
  const optionTexts = formGiven(command, { ...carried.told, ...typed });
  const requested = { ask: formRequest(command, optionTexts), where: carried.where };
  // What is told of a hazard is answered, and not mended at its field.
  if (isHazard([...optionTexts.values()].join('\n'))) return requested;
  const read = readOptions(command, optionTexts, preferences);
  const problems = read.ok ? [] : read.problems.filter(({ option }) => optionTexts.has(option) && option in typed);
  if (problems.length === 0) return requested;
  const errors: Record<string, string> = {};
  for (const { option, expected, fix } of problems) {
    errors[option] ??= cut(fix === undefined ? expected : `${expected} ${CHAT.type}: ${fix}`, VIEW.error);
  }
  return { errors };
}
