/** Asks in Slack put through the pipeline, and forms opened for those that lack something. */

import { Buffer } from 'node:buffer';
import type { types } from '@slack/bolt';
import type { Command, Form } from '../../chat/command.ts';
import { commandNamed, formFields } from '../../chat/form.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Request } from '../../chat/ports.ts';
import { SLACK } from '../../text/chat-text.ts';
import { formView } from './forms.ts';
import { TIME } from './limits.ts';
import { errorOf, postTo, viewed } from './post.ts';
import { lacksProject, sendAnswers, tell } from './send.ts';
import type { Party, SlackPorts, Where } from './types.ts';

/** A request as it came: typed, as the values of a form, or somebody's message. */
export type SlackAsk = Pick<Request, 'text' | 'given' | 'written' | 'mistaken'>;

/** Answers a request where its party is. */
export async function answerAsk(ask: SlackAsk, party: Party, ports: SlackPorts): Promise<void> {
  await sendAnswers({ ...ask, answers: ports.answer(requestOf(ask, party, ports)) }, party, ports);
}

/** A channel, or a thread in it, is one conversation. */
function requestOf(ask: SlackAsk, { asker, where }: Party, { preferences }: SlackPorts): Request {
  const place = [where.channel, where.thread].filter((one) => one !== undefined).join(':');
  return {
    asker,
    preferences,
    written: 'line',
    ...ask,
    ...(place === '' ? {} : { place }),
    ...(where.open && { open: true }),
  };
}

/** Answers what is typed; where it only lacks what must be told, its form opens instead, as long as Slack lets it. */
export async function answerOrForm(text: string, trigger: string, party: Party, ports: SlackPorts): Promise<void> {
  const answers = ports.answer(requestOf({ text }, party, ports))[Symbol.asyncIterator]();
  const patience = ports.patience();
  const next = answers.next();
  const early = await Promise.race([next, patience.then(() => undefined)]);
  const lacking = early && early.done !== true ? lacksOnly(early.value, ports.commands) : undefined;
  const opens = lacking && !(await lacksProject(lacking, party, ports));
  if (opens && (await openForm(lacking.form, trigger, party, ports))) {
    // Nobody takes what else there is: it ends here.
    await answers.return?.();
    return;
  }
  await sendAnswers({ text, answers: after(next, answers), patience }, party, ports);
}

/** Opens a command's form; false when there is no such command or Slack opens no form any more. */
export async function openForm(form: Form, trigger: string, party: Party, ports: SlackPorts): Promise<boolean> {
  const command = commandNamed(form.command, ports.commands);
  if (!command) return false;
  try {
    const carried = { where: carriedWhere(party, ports), mayLack: await mayLack(party, ports) };
    const view = formView(command, form.told, carried);
    const open = () => party.client.views.open({ trigger_id: trigger, view });
    await viewed('views.open', open, ports, TIME.limitedForm);
    return true;
  } catch (cause) {
    ports.fault('slack', cause);
    return false;
  }
}

/** A form to be shown in place of one that is open. */
interface Widening {
  readonly view_id: string;
  /** Of the form as it was when the button was pressed. */
  readonly hash: string;
  readonly view: types.ModalView;
}

/** Shows a form with all its fields, or tells that Slack did not. */
export async function widenForm(widening: Widening, party: Party, ports: SlackPorts): Promise<void> {
  try {
    await viewed('views.update', () => party.client.views.update(widening), ports, TIME.limitedForm);
  } catch (cause) {
    // Pressed twice, or closed meanwhile: whoever did so sees it.
    if (['hash_conflict', 'not_found'].includes(errorOf(cause) ?? '')) return;
    ports.fault('slack', cause);
    await tell(SLACK.formNotWidened, party, ports);
  }
}

/** Whether fields may stay empty because a project may fill them; when it cannot be known, they may. */
async function mayLack({ asker }: Party, ports: SlackPorts): Promise<boolean> {
  try {
    return await ports.holds(asker);
  } catch {
    return true;
  }
}

/** Where the form's answer goes: what a form's answer replaces is not there yet. */
function carriedWhere(party: Party, ports: SlackPorts): Where {
  const response = postTo(party, ports).response();
  const { pressed: _pressed, ...where } = party.where;
  return { ...where, ...(response ? { response } : {}) };
}

type Lacking = Extract<Answer, { readonly problems: unknown }> & { readonly form: Form };

/** Whether all that is wrong is that options are missing which the command cannot do without. */
function lacksOnly(answer: Answer, commands: readonly Command[]): Lacking | undefined {
  if (!('problems' in answer) || !answer.form || answer.choices) return undefined;
  const { form, problems } = answer;
  const command = commandNamed(form.command, commands);
  const needed = command ? formFields(command).filter(({ standard }) => standard === undefined) : [];
  const only = problems.every(({ got, option }) => got === '' && needed.some((field) => field.option === option));
  return only ? { ...answer, form } : undefined;
}

async function* after(
  first: Promise<IteratorResult<Answer, unknown>>,
  rest: AsyncIterator<Answer>,
): AsyncGenerator<Answer> {
  for (let one = await first; one.done !== true; one = await rest.next()) yield one.value;
}

// What a person typed, out of what Slack sends: its tags and entities undone, our own name taken off the
// front.

const TAG = /<([^<>]*)>/g;
/** Where something is shared, a member is told by their id: a name may be anybody's. */
const SHARING = /\b(?:un)?shar(?:e|ed|ing)\b|\b(?:let|send|give|show) +<@/i;
const MEMBER = /^<@([UW][A-Z0-9]+)(?:\|[^<>]*)?>$/;

const ENTITY: Readonly<Record<string, string>> = { '&lt;': '<', '&gt;': '>', '&amp;': '&' };

/** The text as typed, empty where there is none; `bot` is our own user id, whose mention is no part of the ask. */
export function typedText(given: unknown, bot?: string): string {
  // Half a character, as JSON can hold one, could be sent back to nobody.
  const raw = typeof given === 'string' ? Buffer.from(given).toString() : '';
  const sharing = SHARING.test(raw);
  const untagged = raw.replace(TAG, (tag, inner: string) => {
    const member = sharing ? MEMBER.exec(tag)?.[1] : undefined;
    return member === undefined || member === bot ? tagText(inner, bot) : `<@${member}>`;
  });
  const text = untagged
    .replace(/&(?:lt|gt|amp);/g, (entity) => ENTITY[entity] ?? entity)
    .replace(/\u00a0/g, ' ')
    .replace(/[\u200b\u2060\ufeff]/g, '')
    .trim();
  return withoutName(withoutCode(text)).trim();
}

/** A user, channel, group, date or link as its reader saw it. */
function tagText(inner: string, bot: string | undefined): string {
  const bar = inner.indexOf('|');
  const target = bar < 0 ? inner : inner.slice(0, bar);
  const label = bar < 0 ? '' : inner.slice(bar + 1);
  if (target === `@${bot}`) return ' ';
  if (target.startsWith('@') || target.startsWith('#')) {
    return label === '' ? target : `${target.charAt(0)}${label.replace(/^[@#]/, '')}`;
  }
  if (target.startsWith('!')) return label === '' ? `@${target.slice(1).split('^')[0]}` : label;
  return label === '' ? target.replace(/^(?:mailto|tel):/, '') : label;
}

/** Without the marks of a piece of code round the whole of it, as an ask copied from help has. */
function withoutCode(text: string): string {
  const code = /^(`{3}|`)([\s\S]*)\1$/.exec(text)?.[2];
  return code === undefined || code.includes('`') ? text : code.trim();
}

/** Without the command that starts an ask in a channel, typed out of habit. */
function withoutName(text: string): string {
  return text.replace(/^[\s:,]+/, '').replace(/^\/?floorhand(?![\p{L}-])[\s:,]*/iu, '');
}
