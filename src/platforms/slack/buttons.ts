/** The rows of buttons and lists under an answer: each carries the short id of the kept answer, never the ask. */

import type { types } from '@slack/bolt';
import type { SectionOffer } from '../../chat/brief.ts';
import type { Offered, Offers } from '../../chat/offers.ts';
import type { Action, Reply } from '../../reply/reply.ts';
import { BRIEF } from '../../text/answer-text.ts';
import { CHAT, SLACK } from '../../text/chat-text.ts';
import { WRONG } from '../../text/reader-text.ts';
import { BUTTON, MOST_CONTROLS, SELECT } from './limits.ts';
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
  | 'choice'
  | 'wrong';

/** What is behind the controls of an answer besides its asks. */
interface Behind {
  /** All its sections, those that people work from first. */
  readonly sections: readonly SectionOffer[];
  /** The one that stands open. */
  readonly opened: Reply['opens'];
  /** Whether there are lists to be had as files. */
  readonly files: boolean;
  /** Whether its ask can be opened as a form. */
  readonly changeable: boolean;
  /** Whether it can be shown to a channel. */
  readonly showable: boolean;
  /** Whether it answers a sentence, which may have been misread. */
  readonly understood: boolean;
}

/** Sections that people work from do not come behind these. */
const BESIDE: readonly SectionOffer['id'][] = ['plan', 'why', 'safety', 'details', 'read', 'sources', 'more'];

/** One of several things to choose, with the value that names it. */
interface Entry {
  readonly label: string;
  readonly value: string;
}

/** The controls of an answer: what to do with it first, its plan, its safety, lists of everything else. */
export function answerRows(id: string, { asks, choices }: Offers, behind: Behind): readonly SlackBlock[] {
  const { sections, opened, files, changeable, showable, understood } = behind;
  const there = sections.filter((section) => section.id !== opened && section.id !== 'more');
  const work = there.find((section) => !BESIDE.includes(section.id));
  const [ask] = asks;
  const first = work ?? (ask ? undefined : there.find((section) => section.id !== 'safety'));
  const named = there.filter((one) => one !== first && (one.id === 'plan' || one.id === 'safety'));
  const folded: readonly Entry[] = [
    ...(opened === undefined ? [] : [{ label: SLACK.brief, value: `${id}.brief` }]),
    ...there
      .filter((one) => one !== first && !named.includes(one))
      .map((one) => ({ label: one.label, value: `${id}.${one.id}` })),
    ...(sections.length > 1 && opened !== 'more' ? [{ label: BRIEF.everything, value: `${id}.more` }] : []),
  ];
  const own: readonly Entry[] = [
    ...(changeable ? [{ label: CHAT.change, value: `${id}.change` }] : []),
    ...(files ? [{ label: SLACK.all, value: `${id}.all` }] : []),
    ...(understood ? [{ label: WRONG.label, value: `${id}.wrong` }] : []),
  ];
  const leads = [
    ...(first ? [primary(button('section', first.id, first.label, id))] : []),
    ...named.map((section) => button('section', section.id, section.label, id)),
  ];
  const lists = Number(folded.length > 0) + 1 + Number(showable);
  const buttons = asks.slice(0, Math.max(first ? 0 : 1, MOST_CONTROLS - leads.length - lists));
  const pressed = buttons.map(({ place, action }) => button('ask', `${place}`, action.label, id));
  const groups = [
    { label: SLACK.next, entries: asks.slice(buttons.length).map((one) => entryOf(id, one)) },
    ...choices.map(({ name, offered }) => ({ label: name, entries: offered.map((one) => entryOf(id, one)) })),
    { label: SLACK.own, entries: own },
  ].filter(({ entries }) => entries.length > 0);
  return rowsOf([
    ...leads,
    ...pressed.map((one, i) => (!first && i === 0 ? primary(one) : one)),
    ...listOf('section.open', SLACK.open, [{ label: SLACK.open, entries: folded }]),
    ...listOf('ask.list', SLACK.next, groups),
    ...(showable ? [button('show', '', CHAT.show, id)] : []),
  ]);
}

function entryOf(id: string, { place, action }: Offered): Entry {
  return { label: action.label, value: `${id}.${place}` };
}

/** A list; nothing where there is nothing to choose. */
function listOf(
  id: string,
  name: string,
  groups: readonly { readonly label: string; readonly entries: readonly Entry[] }[],
): readonly types.StaticSelect[] {
  const options = groups.map(({ label, entries }) => ({
    label: slackPlainText(label, SELECT.text),
    options: entries.slice(0, SELECT.options).map((one) => optionOf(one.label, one.value)),
  }));
  const [only] = options.filter((group) => group.options.length > 0);
  if (!only) return [];
  const named = {
    type: 'static_select',
    action_id: id,
    placeholder: slackPlainText(name, SELECT.placeholder),
  } as const;
  return [options.length === 1 ? { ...named, options: only.options } : { ...named, option_groups: options }];
}

/** What is offered where something is missing. */
interface Mending {
  readonly form: boolean;
  readonly fix: boolean;
  /** Whether the fix is the same request again. */
  readonly again: boolean;
  readonly example: boolean;
  /** Whether a project is what is missing. */
  readonly begins: boolean;
}

/** The row under problems: the choices of the question, a form with what was told, and the first line mended where there is one. */
export function problemRows(
  id: string,
  { form, fix, again, example, begins }: Mending,
  choices: readonly Action[] = [],
): readonly SlackBlock[] {
  const all = [
    ...(begins ? [openButton('project new', SLACK.begin)] : []),
    ...choices.slice(0, BUTTON.aRow).map(({ label }, place) => button('choice', `${place}`, label, id)),
    ...(form && !begins ? [button('form', '', CHAT.form, id)] : []),
    ...(fix && !begins ? [button('mended', '', again ? CHAT.again : CHAT.suggested, id)] : []),
    ...(example ? [button('tried', '', CHAT.example, id)] : []),
  ].slice(0, MOST_CONTROLS);
  return rowsOf(all.map((one, i) => (i === 0 ? primary(one) : one)));
}

/** A button that opens a command's form. */
export function openButton(command: string, label: string): types.Button {
  return button('open', command.replaceAll(' ', '_'), label, command);
}

/** A button of one of an answer's requests. */
export function askButton(id: string, place: number, label: string): types.Button {
  return button('ask', `${place}`, label, id);
}

/** One row of controls, which a client breaks as it needs; nothing for none. */
export function rowsOf(elements: readonly types.ActionsBlockElement[]): readonly SlackBlock[] {
  return elements.length === 0 ? [] : [{ type: 'actions', elements: [...elements] }];
}

export function primary(one: types.Button): types.Button {
  return { ...one, style: 'primary' };
}

function button(press: Press, place: string, label: string, value: string): types.Button {
  const id = place === '' ? press : `${press}.${place}`;
  return { type: 'button', action_id: id, text: slackPlainText(label, BUTTON.text), value };
}

export function optionOf(label: string, value: string): types.PlainTextOption {
  return { text: slackPlainText(label, SELECT.text), value };
}
