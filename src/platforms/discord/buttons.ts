/** The buttons and selects under an answer, and under an ask that could not be read. */

import { type APIButtonComponentWithCustomId, type APISelectMenuOption, ButtonStyle, ComponentType } from 'discord.js';
import { sectionOffers } from '../../chat/brief.ts';
import type { Command, ReplyWithForm } from '../../chat/command.ts';
import { commandNamed, type Field, formFields } from '../../chat/form.ts';
import { type Choices, type Offered, offersOf } from '../../chat/offers.ts';
import { type Action, SECTIONS, type SectionId } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { WRONG } from '../../text/reader-text.ts';
import { PROGRESS } from '../../text/sheets-text.ts';
import { SHOPPING } from '../../text/shopping-text.ts';
import { type CardName, hasRows, pollOf } from './cards.ts';
import { customId, type Verb } from './interaction.ts';
import {
  BUTTON_LABEL,
  CARD_BUTTONS,
  MODAL_FIELDS,
  PHONE,
  ROW_BUTTONS,
  SELECT_OPTIONS,
  SELECT_PLACEHOLDER,
  SELECT_TEXT,
} from './limits.ts';
import { type ButtonRow, label } from './page.ts';
import { briefHeight, planInBrief } from './render.ts';

/** Which part of an answer a message shows. */
export interface View {
  /** A section, all of them, the answer in short, or that with the list of its details. */
  readonly opened: SectionId | 'more' | 'brief' | 'change' | CardName;
  /** From 0. */
  readonly part: number;
  readonly parts: number;
}

/** What is known of an answer besides the reply. */
interface Offering {
  /** Short id of the kept answer. */
  readonly id: string;
  /** Whether others can be shown it yet. */
  readonly showable: boolean;
  /** Whether others were shown it by this very message. */
  readonly shown?: boolean;
  /** Whether the person whose question it was is asked if the plank is theirs. */
  readonly asksPlank?: boolean;
  /** The fields of its command, with what was told. */
  readonly fields: readonly Field[];
  /** What of it is open; without it, the answer in short. */
  readonly view?: View;
  /** Short id of the answer whose place it took. */
  readonly back?: string;
}

/** Something that can be pressed: a button, or a line of a list. */
interface Control {
  readonly verb: Verb;
  readonly said: string;
  readonly rest?: string;
  /** Of another answer than the one shown. */
  readonly of?: string;
}

/** Of these, several can be done at once. */
const TICKS: readonly string[] = [SHOPPING.among, PROGRESS.among];

/** What is nobody else's business, or nothing to look at. */
const PRIVATE = ['mydata', 'link', 'settings', 'help', 'recent'];

/** The rows under an answer: at most four buttons, the first of them the next step, and two lists. */
export function answerRows(reply: ReplyWithForm, offering: Offering): readonly ButtonRow[] {
  const { id, fields, view } = offering;
  if (view?.opened === 'change')
    return [...buttonRows([button('open', id, CHAT.inShort, 'brief', true)]), ...detailRow(fields, id)];
  const { choices } = offersOf(reply);
  const ticks = choices.find(({ name }) => TICKS.includes(name));
  const ticked = ticks?.offered.map(({ action }) => action) ?? [];
  const all = controlsOf(reply, offering).filter(({ said }) => !ticked.some(({ label: name }) => name === said));
  const buttons = all.slice(0, all.length === CARD_BUTTONS + 1 ? CARD_BUTTONS + 1 : CARD_BUTTONS);
  const listed = all.slice(buttons.length);
  const row = buttons.map(({ verb, said, rest, of = id }, at) => button(verb, of, said, rest, at === 0));
  const rows = [
    ...buttonRows(row),
    ...(listed.length > 0 ? [moreRow(listed, id)] : []),
    ...(ticks ? [tickRow(ticks, id)] : detailRow(fields, id)),
  ];
  if (ticks || fields.length < 2 || briefHeight(reply) + rowsHeight(rows) <= PHONE.screen) return rows;
  // Where a phone has no room for a list of the details, they are a line of the other list.
  return [...buttonRows(row), moreRow([...listed, { verb: 'open', said: CHAT.change, rest: 'change' }], id)];
}

/** About how high rows are on a phone, in px: buttons break into further lines where their labels need it. */
function rowsHeight(rows: readonly ButtonRow[]): number {
  return rows.reduce((sum, { components }) => {
    let [lines, taken] = [1, 0];
    for (const one of components) {
      if (one.type !== ComponentType.Button) return sum + PHONE.list;
      const said = 'label' in one ? (one.label ?? '') : '';
      const width = PHONE.button.around + PHONE.button.character * said.length;
      if (taken > 0 && taken + width > PHONE.width) [lines, taken] = [lines + 1, 0];
      taken += width;
    }
    return sum + PHONE.row * lines;
  }, 0);
}

/** Everything that can be done with an answer, what comes next first. */
function controlsOf(reply: ReplyWithForm, offering: Offering): readonly Control[] {
  const { showable, shown = false, asksPlank = false, fields, view, back } = offering;
  const { opened = 'brief', part = 0, parts = 1 } = view ?? {};
  const seen = [...(planInBrief(reply) ? (['plan'] as const) : []), ...sectionSeen(opened)];
  const sections = sectionOffers(reply, SECTIONS.length, seen).map(
    ({ id, label: said }): Control => ({ verb: 'open', said, rest: id }),
  );
  const named = (wanted: (id: string) => boolean): readonly Control[] =>
    sections.filter(({ rest = '' }) => wanted(rest));
  const { asks, choices } = offersOf(reply);
  const ticks = reply.actions.some(({ among }) => among === SHOPPING.among) && reply.data.kind === 'shopping';
  const asked = ({ place, action }: Offered): Control => ({ verb: 'ask', said: action.label, rest: String(place) });
  const undone = asks.filter(({ action }) => action.ask === 'project undo');
  const others = asks.filter((one) => !undone.includes(one));
  const own = reply.example !== undefined && fields.some(({ option }) => option === 'plank');
  const public_ = showable && !PRIVATE.includes(reply.data.kind);
  return [
    ...(part + 1 < parts
      ? [{ verb: 'open', said: CHAT.nextPart(part + 2, parts), rest: `${opened}.${part + 1}` } as const]
      : []),
    ...(opened === 'brief' && part === 0 ? [] : [{ verb: 'open', said: CHAT.inShort, rest: 'brief' } as const]),
    ...(back === undefined ? [] : [{ verb: 'open', said: CHAT.back, rest: 'brief', of: back } as const]),
    ...(asksPlank ? [{ verb: 'mine', said: CHAT.mine } as const] : []),
    ...(own || asksPlank ? [{ verb: 'put', said: CHAT.ownPlank, rest: 'plank' } as const] : []),
    ...undone.map(asked),
    ...(!shown && ticks ? [{ verb: 'open', said: CHAT.inStore, rest: 'store' } as const] : []),
    ...named((id) => WORK.includes(id)).slice(0, 1),
    ...(reply.understood ? [{ verb: 'wrong', said: WRONG.label } as const] : []),
    ...named((id) => id === 'safety'),
    ...(shown ? [] : others.slice(0, 1).map(asked)),
    ...(public_ ? [{ verb: 'show', said: CHAT.show } as const] : []),
    ...(shown ? others : others.slice(1)).map(asked),
    ...(hasRows(reply) ? [{ verb: 'open', said: CHAT.rowByRow, rest: 'row' } as const] : []),
    ...choices.flatMap(({ offered }) => offered.map(asked)),
    ...named((id) => WORK.includes(id)).slice(1),
    ...named((id) => !WORK.includes(id) && id !== 'safety'),
    ...(sections.length > 2 ? [{ verb: 'open', said: CHAT.everything, rest: 'more' } as const] : []),
    ...(showable && reply.data.kind === 'project' && 'name' in reply.data
      ? [{ verb: 'thread', said: CHAT.thread } as const]
      : []),
    ...(showable ? [{ verb: 'send', said: CHAT.send } as const] : []),
    ...(shown ? [{ verb: 'away', said: CHAT.away } as const] : []),
    ...(pollOf(reply) ? [{ verb: 'poll', said: CHAT.poll } as const] : []),
  ];
}

function sectionSeen(opened: View['opened']): readonly SectionId[] {
  return SECTIONS.filter((id) => id === opened);
}

/** What people work from while laying and cutting. */
const WORK: readonly string[] = ['rows', 'cuts', 'list', 'checklist', 'how', 'buy'];

/** What has no button of its own, as a list; where even that has no room, the sections give way to all of them at once. */
function moreRow(listed: readonly Control[], id: string): ButtonRow {
  const most = listed.length > SELECT_OPTIONS;
  const some = most ? listed.filter(({ verb, rest }) => verb !== 'open' || rest === 'more') : listed;
  return selectRow(
    customId('menu', id),
    CHAT.moreList,
    some.slice(0, SELECT_OPTIONS).map(({ verb, said, rest = '' }) => ({
      label: label(said, SELECT_TEXT) || '…',
      value: `${verb}:${rest}`,
    })),
    1,
  );
}

function tickRow({ name, offered }: Choices, id: string): ButtonRow {
  const options = offered.slice(0, SELECT_OPTIONS).map(({ place, action }) => ({
    label: label(action.label, SELECT_TEXT) || '…',
    value: String(place),
  }));
  return selectRow(customId('tick', id), name, options, options.length);
}

interface ProblemOffer {
  readonly fix: string | undefined;
  readonly again: boolean;
  readonly example?: boolean;
  readonly choices?: readonly Action[];
  /** The only option that is missing. */
  readonly missing?: string | undefined;
  /** Short id of the answer whose place it took. */
  readonly back?: string | undefined;
}

/** The rows under an ask that could not be read: the choices of its question, the form with everything typed, and the mended ask where there is one. */
export function problemRows(
  id: string,
  form: boolean,
  { fix, again, example = false, choices = [], missing, back }: ProblemOffer,
): readonly ButtonRow[] {
  const controls: readonly Control[] = [
    ...choices
      .slice(0, ROW_BUTTONS)
      .map(({ label: said }, place) => ({ verb: 'choose', said, rest: String(place) }) as const),
    ...(form ? [{ verb: 'mend', said: missing === 'plank' ? CHAT.ownPlank : CHAT.form } as const] : []),
    ...(fix === undefined ? [] : [{ verb: 'fix', said: again ? CHAT.again : CHAT.suggested } as const]),
    ...(example ? [{ verb: 'try', said: CHAT.example } as const] : []),
    ...(back === undefined ? [] : [{ verb: 'open', said: CHAT.back, rest: 'brief', of: back } as const]),
  ];
  return buttonRows(controls.map(({ verb, said, rest, of = id }, at) => button(verb, of, said, rest, at === 0)));
}

function buttonRows(buttons: readonly APIButtonComponentWithCustomId[]): readonly ButtonRow[] {
  return Array.from({ length: Math.ceil(buttons.length / ROW_BUTTONS) }, (_, row) => ({
    type: ComponentType.ActionRow,
    components: buttons.slice(row * ROW_BUTTONS, (row + 1) * ROW_BUTTONS),
  }));
}

/** One button of a message is the next step, and looks like it. */
function button(verb: Verb, id: string, said: string, rest = '', first = false): APIButtonComponentWithCustomId {
  return {
    type: ComponentType.Button,
    style: first ? ButtonStyle.Primary : ButtonStyle.Secondary,
    label: label(said, BUTTON_LABEL) || '…',
    custom_id: customId(verb, id, rest),
  };
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
  offering: Omit<Offering, 'fields'>,
  { commands }: { readonly commands: readonly Command[] },
): readonly ButtonRow[] {
  const { form } = reply;
  const command = form && commandNamed(form.command, commands);
  return answerRows(reply, { ...offering, fields: command ? formFields(command, form?.told) : [] });
}
