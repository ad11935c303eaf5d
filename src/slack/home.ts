/** The Home tab: how to ask, forms to start with, and the project in use. */

import type { types } from '@slack/bolt';
import type { Answer } from '../bot/answer.ts';
import { type Command, fullName } from '../bot/command.ts';
import { commandNamed } from '../bot/form.ts';
import { isPart } from '../bot/offers.ts';
import type { Reply } from '../reply/reply.ts';
import { SAMPLE_ASK } from '../words/asks.ts';
import { SLACK } from '../words/slack.ts';
import { openButton, optionOf, rowsOf } from './buttons.ts';
import { MESSAGE, SELECT, VIEW } from './limits.ts';
import { render } from './render.ts';
import { cut, plainText, type SlackBlock, said, saidCode, sizeOf } from './rich.ts';

/** Commands with a button of their own. */
const FIRST = ['floor planks', 'trim list', 'prep tearout'];
/** What is told of the project in use, where such commands are there. */
const PROJECT = ['project show', 'project progress', 'project shopping'];

/** The asks whose answers stand on the Home tab. */
export function homeAsks(commands: readonly Command[]): readonly string[] {
  return PROJECT.filter((name) => commandNamed(name, commands) !== undefined);
}

/** The Home tab; `project`: the answers to `homeAsks`, in order. */
export function homeView(commands: readonly Command[], project: readonly Answer[]): types.HomeView {
  const start: readonly SlackBlock[] = [
    { type: 'header', text: plainText(SLACK.homeTitle, 150) },
    ...said(SLACK.homeIntro),
    ...said(SLACK.homeSample),
    ...saidCode(`/floorhand ${SAMPLE_ASK}`),
    ...said(SLACK.homeStart, true),
    ...rowsOf([...firstButtons(commands), ...otherList(commands)]),
  ];
  return { type: 'home', blocks: [...start, ...projectBlocks(project, VIEW.blocks - start.length)] };
}

function firstButtons(commands: readonly Command[]): readonly types.Button[] {
  return FIRST.flatMap((name) => {
    const command = commandNamed(name, commands);
    return command ? [openButton(fullName(command), command.name.charAt(0).toUpperCase() + command.name.slice(1))] : [];
  });
}

/** Every command that takes options, by group: its form opens. */
function otherList(commands: readonly Command[]): readonly types.StaticSelect[] {
  const asked = commands.filter(({ options }) => Object.keys(options.shape).length > 0);
  const groups = [...new Set(asked.map(({ group }) => group ?? ''))];
  const option_groups = groups.slice(0, SELECT.options).map((group) => ({
    label: plainText(group === '' ? SLACK.more : group, SELECT.text),
    options: asked
      .filter((command) => (command.group ?? '') === group)
      .slice(0, SELECT.options)
      .map((command) => optionOf(`${command.name}: ${command.summary}`, cut(fullName(command), SELECT.value))),
  }));
  if (option_groups.length === 0) return [];
  return [
    {
      type: 'static_select',
      action_id: 'open.list',
      placeholder: plainText(SLACK.homeOther, SELECT.placeholder),
      option_groups,
    },
  ];
}

/** What the answers about the project tell at a glance, as far as the tab has room; the rest is asked for. */
function projectBlocks(project: readonly Answer[], room: number): readonly SlackBlock[] {
  const told = project.filter((answer): answer is Reply => 'headline' in answer);
  if (told.length === 0) return [];
  const blocks: SlackBlock[] = [{ type: 'divider' }, ...said(SLACK.homeProject, true)];
  for (const reply of told) {
    const glance = { ...reply, blocks: reply.blocks.filter((block) => !isPart(block) && block.kind !== 'picture') };
    const [first] = render(glance);
    const next = first ? [...first.blocks] : [];
    if (blocks.length + next.length > room || sizeOf(blocks) + sizeOf(next) > MESSAGE.characters) break;
    blocks.push(...next);
  }
  return blocks;
}
