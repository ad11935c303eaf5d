/** The rows of buttons and lists under an answer: each carries the short id of the kept answer, never the ask. */

import type { types } from '@slack/bolt';
import type { SectionOffer } from '../../chat/brief.ts';
import type { Choices, Offered, Offers } from '../../chat/offers.ts';
import type { Action } from '../../reply/reply.ts';
import { CHAT, SLACK } from '../../text/chat-text.ts';
import { BUTTON, MOST_BUTTONS, SELECT } from './limits.ts';
import { type SlackBlock, slackPlainText } from './rich.ts';

/** What a press is about; the first word of an action's id. */
export type Press =
  | 'ask'
  | 'part'
  | 'pictures'
  | 'sources'
  | 'change'
  | 'show'
  | 'all'
  | 'form'
  | 'mended'
  | 'tried'
  | 'open'
  | 'section'
  | 'choice';

/** Longer lists are cut: no answer has so many asks. */
const MOST_LISTS = 6;

/** What is behind the buttons of an answer besides its asks. */
interface Behind {
  /** Its sections that have a button. */
  readonly sections: readonly SectionOffer[];
  /** Whether there are lists to be had as files. */
  readonly files: boolean;
  /** Whether its ask can be opened as a form. */
  readonly changeable: boolean;
  /** Whether everybody sees it already. */
  readonly shown: boolean;
}

/** The rows of an answer. */
export function answerRows(id: string, offers: Offers, behind: Behind): readonly SlackBlock[] {
  const { sections, files, changeable, shown } = behind;
  const buttons = offers.asks.slice(0, MOST_BUTTONS);
  const listed = offers.asks.slice(MOST_BUTTONS);
  const lists: Choices[] = [...offers.choices, ...(listed.length > 0 ? [{ name: SLACK.more, offered: listed }] : [])];
  return [
    ...rowsOf(sections.map((section) => button('section', section.id, section.label, id))),
    ...rowsOf([
      ...lists.slice(0, MOST_LISTS).map((choices, i) => askList(id, choices, i)),
      ...buttons.map(({ place, action }) => button('ask', `${place}`, action.label, id)),
    ]),
    ...rowsOf([
      ...(changeable ? [button('change', '', CHAT.change, id)] : []),
      ...(files ? [button('all', '', SLACK.all, id)] : []),
      ...(shown ? [] : [button('show', '', CHAT.show, id)]),
    ]),
  ];
}

/** The row under problems: the choices of the question, a form with what was told, and the first line mended where there is one. */
export function problemRows(
  id: string,
  { form, fix, again, example }: Record<'form' | 'fix' | 'again' | 'example', boolean>,
  choices: readonly Action[] = [],
): readonly SlackBlock[] {
  const chosen = choices.slice(0, BUTTON.aRow).map(({ label }, place) => button('choice', `${place}`, label, id));
  const mended = fix ? [button('mended', '', again ? CHAT.again : CHAT.suggested, id)] : [];
  const tried = example ? [button('tried', '', CHAT.example, id)] : [];
  return rowsOf([...chosen, ...(form ? [button('form', '', CHAT.form, id)] : []), ...mended, ...tried]);
}

/** A button that opens a command's form. */
export function openButton(command: string, label: string): types.Button {
  return button('open', command.replaceAll(' ', '_'), label, command);
}

/** Rows of a few elements each, so that they break well on a phone. */
export function rowsOf(elements: readonly types.ActionsBlockElement[]): readonly SlackBlock[] {
  const rows: SlackBlock[] = [];
  for (let i = 0; i < elements.length; i += BUTTON.aRow) {
    rows.push({ type: 'actions', elements: elements.slice(i, i + BUTTON.aRow) });
  }
  return rows;
}

function button(press: Press, place: string, label: string, value: string): types.Button {
  const id = place === '' ? press : `${press}.${place}`;
  return { type: 'button', action_id: id, text: slackPlainText(label, BUTTON.text), value };
}

function askList(id: string, { name, offered }: Choices, number: number): types.StaticSelect {
  const option = ({ place, action }: Offered): types.PlainTextOption => optionOf(action.label, `${id}.${place}`);
  return list(`ask.list${number}`, name, offered.map(option));
}

export function optionOf(label: string, value: string): types.PlainTextOption {
  return { text: slackPlainText(label, SELECT.text), value };
}

function list(id: string, name: string, options: readonly types.PlainTextOption[]): types.StaticSelect {
  return {
    type: 'static_select',
    action_id: id,
    placeholder: slackPlainText(name, SELECT.placeholder),
    options: options.slice(0, SELECT.options),
  };
}
