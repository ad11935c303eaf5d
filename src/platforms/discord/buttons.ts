/** The buttons and selects under an answer, and under an ask that could not be read. */

import {
  type APIActionRowComponent,
  type APIButtonComponentWithCustomId,
  type APIComponentInMessageActionRow,
  type APISelectMenuOption,
  ButtonStyle,
  ComponentType,
} from 'discord-api-types/v10';
import { sectionOffers } from '../../chat/brief.ts';
import type { Command, ReplyWithForm } from '../../chat/command.ts';
import { commandNamed, type Field, formFields } from '../../chat/form.ts';
import { comparedPlanks, type Offers, offersOf } from '../../chat/offers.ts';
import type { Action, Reply } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { label } from './escape.ts';
import { customId, type Verb } from './interaction.ts';
import {
  BUTTON_LABEL,
  BUTTON_ROWS,
  MODAL_FIELDS,
  ROW_BUTTONS,
  SELECT_OPTIONS,
  SELECT_PLACEHOLDER,
  SELECT_TEXT,
} from './limits.ts';
import { planInBrief } from './render.ts';

export type ButtonRow = APIActionRowComponent<APIComponentInMessageActionRow>;

/** What is known of an answer besides the reply. */
interface Offering {
  /** Short id of the kept answer. */
  readonly id: string;
  /** Whether others can be shown it yet. */
  readonly showable: boolean;
  /** The fields of its command, with what was told. */
  readonly fields: readonly Field[];
}

/** More asks than this are a list. */
const ASK_BUTTONS = 6;

/** The rows under an answer. */
export function answerRows(reply: Reply, { id, showable, fields }: Offering): readonly ButtonRow[] {
  const offers = offersOf(reply);
  const few = offers.asks.length <= ASK_BUTTONS;
  const sections = sectionOffers(reply, ROW_BUTTONS, planInBrief(reply) ? ['plan'] : []);
  const buttons = [
    ...(few ? offers.asks.map(({ place, action }) => button('ask', id, action.label, String(place))) : []),
    ...(comparedPlanks(reply) ? [button('poll', id, CHAT.poll)] : []),
    ...(showable && reply.data.kind !== 'mydata' ? [button('show', id, CHAT.show)] : []),
  ];
  return [
    ...buttonRows(
      sections.map((section) => button('open', id, section.label, section.id)),
      1,
    ),
    ...buttonRows(buttons, BUTTON_ROWS - 1),
    ...listRows(offers, few, id),
    ...detailRow(fields, id),
  ];
}

interface ProblemOffer {
  readonly fix: string | undefined;
  readonly again: boolean;
  readonly example?: boolean;
  readonly choices?: readonly Action[];
}

/** The rows under an ask that could not be read: the choices of its question, the form with everything typed, and the mended ask where there is one. */
export function problemRows(
  id: string,
  form: boolean,
  { fix, again, example = false, choices = [] }: ProblemOffer,
): readonly ButtonRow[] {
  const buttons = [
    ...choices.slice(0, ROW_BUTTONS).map(({ label: said }, place) => button('choose', id, said, String(place))),
    ...(form ? [button('mend', id, CHAT.form)] : []),
    ...(fix === undefined ? [] : [button('fix', id, again ? CHAT.again : CHAT.suggested)]),
    ...(example ? [button('try', id, CHAT.example)] : []),
  ];
  return buttonRows(buttons);
}

function buttonRows(buttons: readonly APIButtonComponentWithCustomId[], most = BUTTON_ROWS): readonly ButtonRow[] {
  const rows = Math.min(most, Math.ceil(buttons.length / ROW_BUTTONS));
  return Array.from({ length: rows }, (_, row) => ({
    type: ComponentType.ActionRow,
    components: buttons.slice(row * ROW_BUTTONS, (row + 1) * ROW_BUTTONS),
  }));
}

function button(verb: Verb, id: string, said: string, rest = ''): APIButtonComponentWithCustomId {
  const style = verb === 'mend' || verb === 'choose' ? ButtonStyle.Primary : ButtonStyle.Secondary;
  return {
    type: ComponentType.Button,
    style,
    label: label(said, BUTTON_LABEL) || '…',
    custom_id: customId(verb, id, rest),
  };
}

function listRows({ asks, choices }: Offers, few: boolean, id: string): readonly ButtonRow[] {
  const lists = [...choices, ...(few ? [] : [{ name: CHAT.ask, offered: asks }])].slice(0, 2);
  return lists.map(({ name, offered }, at) =>
    selectRow(
      customId('pick', id, String(at)),
      name,
      offered.slice(0, SELECT_OPTIONS).map(({ place, action }) => ({
        label: label(action.label, SELECT_TEXT) || '…',
        value: String(place),
      })),
      1,
    ),
  );
}

/** Any detail told otherwise: those chosen open as a form. */
function detailRow(fields: readonly Field[], id: string): readonly ButtonRow[] {
  if (fields.length < 2) return [];
  const options = fields.slice(0, SELECT_OPTIONS).map(({ option, label: name, given, standard }) => {
    const now = label(given ?? standard ?? '', SELECT_TEXT);
    return { label: label(name, SELECT_TEXT), value: option, ...(now === '' ? {} : { description: now }) };
  });
  return [selectRow(customId('change', id), CHAT.change, options, Math.min(MODAL_FIELDS, options.length))];
}

function selectRow(id: string, said: string, options: APISelectMenuOption[], most: number): ButtonRow {
  return {
    type: ComponentType.ActionRow,
    components: [
      {
        type: ComponentType.StringSelect,
        custom_id: id,
        placeholder: label(said, SELECT_PLACEHOLDER),
        min_values: 1,
        max_values: most,
        options,
      },
    ],
  };
}

/** Everything that may be done with the answer of `id`; `showable` while nobody else sees it. */
export function answerRowsOf(
  reply: ReplyWithForm,
  id: string,
  showable: boolean,
  { commands }: { readonly commands: readonly Command[] },
): readonly ButtonRow[] {
  const { form } = reply;
  const command = form && commandNamed(form.command, commands);
  return answerRows(reply, { id, showable, fields: command ? formFields(command, form?.told) : [] });
}
