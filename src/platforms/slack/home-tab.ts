/** The Home tab: how to ask, forms to start with, and the project in use. */

import type { types } from '@slack/bolt';
import { accountKey } from '../../accounts/asker.ts';
import type { Command } from '../../chat/command.ts';
import { commandNamed } from '../../chat/form.ts';
import { type Offers, offersOf } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { keepAnswer, mintId } from '../../chat/saved-replies.ts';
import { fullName, listed } from '../../input/command-shape.ts';
import type { Block, Reply } from '../../reply/reply.ts';
import { CHAT, SLACK } from '../../text/chat-text.ts';
import { answerRows, openButton, optionOf, rowsOf } from './buttons.ts';
import { HOME_CHARACTERS, SELECT, VIEW } from './limits.ts';
import { blockBlocks } from './render.ts';
import { cut, type SlackBlock, said, saidLines, slackPlainText, slackSize } from './rich.ts';
import type { Party, SlackPorts } from './types.ts';

/** Commands with a button of their own. */
const FIRST = ['floor planks', 'trim list', 'prep tearout'];
/** What somebody without a project is offered besides. */
const BEGIN = 'project new';
/** What is told of the project in use, where such commands are there. */
const PROJECT = ['project show', 'project progress', 'project shopping'];

/** Of an answer on the tab only its asks are offered. */
const ASKS_ALONE = { sections: [], files: false, changeable: false, shown: true } as const;

/** The asks whose answers stand on the Home tab. */
function homeAsks(commands: readonly Command[]): readonly string[] {
  return PROJECT.filter((name) => commandNamed(name, commands) !== undefined);
}

/** An answer about the project, and the id it is kept under for its buttons. */
interface HomeReply {
  readonly reply: Reply;
  readonly id: string | undefined;
}

/** The Home tab; `project`: the replies to `homeAsks`, in order. */
function homeView(commands: readonly Command[], project: readonly HomeReply[]): types.HomeView {
  const start: readonly SlackBlock[] = [
    { type: 'header', text: slackPlainText(SLACK.homeTitle, 150) },
    ...said(SLACK.homeIntro),
    ...said(SLACK.homeStart, true),
    ...rowsOf([...firstButtons(commands, project.length === 0), ...otherList(commands)]),
  ];
  return { type: 'home', blocks: [...start, ...projectBlocks(project, VIEW.blocks - start.length)] };
}

function firstButtons(commands: readonly Command[], begins: boolean): readonly types.Button[] {
  return [...FIRST, ...(begins ? [BEGIN] : [])].flatMap((name) => {
    const command = commandNamed(name, commands);
    return command ? [openButton(fullName(command), SLACK.homeButtons[name] ?? name)] : [];
  });
}

/** Every command that takes options, by group: its form opens. */
function otherList(commands: readonly Command[]): readonly types.StaticSelect[] {
  const requested = listed(commands).filter(({ options }) => Object.keys(options.shape).length > 0);
  const groups = [...new Set(requested.map(({ group }) => group ?? ''))];
  const option_groups = groups.slice(0, SELECT.options).map((group) => ({
    label: slackPlainText(group === '' ? SLACK.more : group, SELECT.text),
    options: requested
      .filter((command) => (command.group ?? '') === group)
      .slice(0, SELECT.options)
      .map((command) => optionOf(`${command.name}: ${command.summary}`, cut(fullName(command), SELECT.value))),
  }));
  if (option_groups.length === 0) return [];
  return [
    {
      type: 'static_select',
      action_id: 'open.list',
      placeholder: slackPlainText(SLACK.homeOther, SELECT.placeholder),
      option_groups,
    },
  ];
}

/** What the answers about the project tell, with their buttons, as far as the tab has room; every caution once, below. */
function projectBlocks(project: readonly HomeReply[], room: number): readonly SlackBlock[] {
  if (project.length === 0) return [];
  const texts = new Set(project.flatMap(({ reply }) => reply.cautions.map(({ text }) => text)));
  const cautions =
    texts.size === 0
      ? []
      : saidLines(
          CHAT.cautions,
          [...texts].map((text) => ({ label: '•', text })),
        );
  const blocks: SlackBlock[] = [{ type: 'divider' }, ...said(SLACK.homeProject, true)];
  for (const { reply, id } of project) {
    const next = [...glance(reply), ...(id === undefined ? [] : answerRows(id, asksOnly(reply), ASKS_ALONE))];
    const size = slackSize([...blocks, ...next, ...cautions]);
    if (blocks.length + next.length + cautions.length > room || size > HOME_CHARACTERS) break;
    blocks.push(...next);
  }
  return [...blocks, ...cautions];
}

function asksOnly(reply: Reply): Offers {
  return { ...offersOf(reply), parts: [], sources: false };
}

/** A reply in lines: a Home tab takes no tables. */
function glance({ headline, blocks }: Reply): readonly SlackBlock[] {
  return [...said(headline, true), ...blocks.flatMap(glanceAt)];
}

function glanceAt(block: Block): readonly SlackBlock[] {
  switch (block.kind) {
    case 'table':
      return saidLines(
        block.title,
        block.rows.map(([first = '', ...rest]) => ({
          label: `${first}:`,
          text: rest.flatMap((cell, i) => (cell === '' ? [] : [`${block.columns[i + 1] ?? ''} ${cell}`])).join(', '),
        })),
      );
    case 'picture':
      return [];
    default:
      return blockBlocks(block);
  }
}

// Draws the Home tab of one person from what they keep, and publishes it.

/** Publishes it. Rejects when Slack does not take it. */
export async function publishHome(party: Party, ports: SlackPorts): Promise<void> {
  const project: HomeReply[] = [];
  const asks = (await ports.holds(party.asker).catch(() => false)) ? homeAsks(ports.commands) : [];
  for (const text of asks) {
    let last: Answer | undefined;
    for await (const one of ports.answer({ asker: party.asker, preferences: ports.preferences, text })) last = one;
    if (last && 'headline' in last) project.push(await kept(text, last, party, ports));
  }
  await party.client.views.publish({ user_id: party.where.user, view: homeView(ports.commands, project) });
}

async function kept(text: string, reply: Reply, { asker }: Party, ports: SlackPorts): Promise<HomeReply> {
  const id = mintId();
  try {
    await keepAnswer(ports.kept, id, { by: accountKey(asker), text, reply, shown: false });
    return { reply, id };
  } catch (cause) {
    ports.fault(id, cause);
    return { reply, id: undefined };
  }
}
