/** The Home tab: the project in use, to tick off and to ask about where it stands; without one how to begin. */

import type { types } from '@slack/bolt';
import { accountKey } from '../../accounts/records.ts';
import type { Command } from '../../chat/command.ts';
import { commandNamed } from '../../chat/form.ts';
import { parseLine } from '../../chat/grammar.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { keepAnswer, mintId } from '../../chat/saved-replies.ts';
import { fullName, listed } from '../../input/command-shape.ts';
import type { Action, Block, Caution, Reply } from '../../reply/reply.ts';
import { CHAT, SLACK } from '../../text/chat-text.ts';
import { lookUpPress } from '../session.ts';
import { askButton, openButton, optionOf, primary, rowsOf } from './buttons.ts';
import { CHECKBOXES, HOME_CHARACTERS, SELECT, TIME, VIEW } from './limits.ts';
import { isRefused, isTooMuch, viewed } from './post.ts';
import { blockBlocks, headed, render } from './render.ts';
import { cut, type SlackBlock, said, saidLines, slackPlainText, slackSize } from './rich.ts';
import { sendAnswers, tell } from './send.ts';
import type { Party, SlackPorts } from './types.ts';

/** Commands with a button of their own. */
const FIRST = ['floor planks', 'trim list', 'prep tearout'];
/** What somebody without a project is offered first. */
const BEGIN = 'project new';
/** What is told of the project in use, where such commands are there. */
const PROJECT = { show: 'project show', progress: 'project progress', shopping: 'project shopping' } as const;
/** What is told of it where there is anything to tell. */
const OPEN = { measure: 'project measure', share: 'project share' } as const;
const UNDO = 'project undo';

type Part = keyof typeof PROJECT | keyof typeof OPEN;

/** An answer about the project, and the id it is kept under for its buttons. */
interface HomeReply {
  readonly reply: Reply;
  readonly id: string | undefined;
}

type Project = Partial<Readonly<Record<Part, HomeReply>>>;

/** The Home tab; `done`: what was just done. */
function homeView(commands: readonly Command[], project: Project, done: string | undefined): types.HomeView {
  const other = [...said(SLACK.homeStart, true), ...rowsOf([...firstButtons(commands), ...otherList(commands)])];
  const begun = commandNamed(BEGIN, commands);
  const blocks: readonly SlackBlock[] = project.show
    ? [
        ...(done === undefined ? [] : said(done)),
        ...fitting(projectBlocks(project.show, project, commands), VIEW.blocks - other.length - 2),
        { type: 'divider' },
        ...other,
      ]
    : [
        ...headed(SLACK.homeTitle),
        ...said(SLACK.homeIntro),
        ...rowsOf(begun ? [primary(openButton(BEGIN, SLACK.begin))] : []),
        ...other,
      ];
  return { type: 'home', blocks: [...blocks] };
}

/** The tab where Slack takes no more of it: what the project is, and how to see the rest. */
function plainView(
  commands: readonly Command[],
  { headline }: Pick<Reply, 'headline'>,
  done: string | undefined,
): types.HomeView {
  const blocks = [
    ...(done === undefined ? [] : said(done)),
    ...headed(headline),
    ...said(SLACK.homePlain),
    ...rowsOf([openlessButton('undo', SLACK.homeUndo), ...firstButtons(commands)]),
  ];
  return { type: 'home', blocks };
}

/** As many of the parts, each whole, as the tab has room for. */
function fitting(parts: readonly (readonly SlackBlock[])[], room: number): readonly SlackBlock[] {
  const blocks: SlackBlock[] = [];
  for (const part of parts) {
    if (blocks.length + part.length > room || slackSize([...blocks, ...part]) > HOME_CHARACTERS) break;
    blocks.push(...part);
  }
  return blocks;
}

/** The project in parts: what it is, what to do next, what to buy, what is open, what others see. */
function projectBlocks(
  show: HomeReply,
  { progress, shopping, measure, share }: Project,
  commands: readonly Command[],
): readonly (readonly SlackBlock[])[] {
  const asks = [...(show.id === undefined ? [] : askButtons(show, show.id))];
  const shared = share && /"shares":\[\]/.test(JSON.stringify(share.reply.data)) === false;
  const part = (one: HomeReply | undefined): readonly SlackBlock[] =>
    one ? [{ type: 'divider' }, ...said(one.reply.headline, true), ...ticks(one)] : [];
  return [
    [
      ...headed(show.reply.headline),
      ...rowsOf([
        ...asks,
        openlessButton('undo', SLACK.homeUndo),
        ...(cautionsOf([show, progress, shopping]).length > 0 ? [openlessButton('safety', CHAT.cautions)] : []),
      ]),
    ],
    [...part(progress), ...(progress ? glances(progress.reply, 'table') : [])],
    [...part(shopping), ...(shopping ? openQuestions(shopping.reply, commands) : [])],
    measure && (measure.reply.actions.length > 0 || measure.reply.blocks.length > 0)
      ? [...part(measure), ...rowsOf(measure.id === undefined ? [] : askButtons(measure, measure.id))]
      : [],
    [
      ...part(share),
      ...(share && shared ? glances(share.reply, 'table') : []),
      ...rowsOf(share?.id === undefined ? [] : askButtons(share, share.id)),
    ],
    glances(show.reply, 'table'),
  ];
}

/** Buttons for what an answer offers next, but for what is ticked off. */
function askButtons({ reply }: HomeReply, id: string): readonly types.Button[] {
  const places = reply.actions.flatMap((action, place) => (action.among === undefined ? [{ action, place }] : []));
  return places.slice(0, 4).map(({ action, place }) => askButton(id, place, action.label));
}

/** A button that needs nothing stored. */
function openlessButton(press: 'undo' | 'safety', label: string): types.Button {
  return { type: 'button', action_id: `home.${press}`, text: slackPlainText(label, 75) };
}

/** What can be ticked off, as boxes to tick. */
function ticks({ reply, id }: HomeReply): readonly SlackBlock[] {
  const places = reply.actions.flatMap((action, place) => (action.among === undefined ? [] : [{ action, place }]));
  const shown = places.filter(({ action }) => TICKED.test(action.label)).slice(0, CHECKBOXES);
  if (id === undefined || shown.length === 0) return [];
  const options = shown.map(({ action, place }) => optionOf(tickLabel(action), `${id}.${place}`));
  return rowsOf([{ type: 'checkboxes', action_id: `tick.${id}`, options }]);
}

/** “Done: clear the room” beside a box is said by the box. */
const TICKED = /^(?:Done|Bought): /;

function tickLabel({ label }: Action): string {
  const bare = label.replace(TICKED, '');
  return bare.charAt(0).toUpperCase() + bare.slice(1);
}

/** A line of what is not worked out yet, with the line to type in quotation marks. */
const TYPED = /^([^:]{1,200}): (.*?)[:?.]? ?[Tt]ype “([^“”]{1,300})”/su;

/** What is not worked out yet, each with a button that opens its form: nothing of the example in it. */
function openQuestions({ blocks }: Reply, commands: readonly Command[]): readonly SlackBlock[] {
  const items = blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : []));
  const found = items.flatMap((item) => {
    const [, name = '', question = '', line = ''] = TYPED.exec(item) ?? [];
    const parsed = line === '' ? undefined : parseLine(line, commands);
    return parsed?.ok ? [{ name, question, command: fullName(parsed.command) }] : [];
  });
  const buttons = found.map(({ name, command }, i) => {
    const opened = openButton(command, name);
    return { ...opened, action_id: `${opened.action_id}.${i}` };
  });
  return [
    ...saidLines(
      undefined,
      found.map(({ name, question }) => ({ label: `${name}:`, text: question })),
    ).filter(() => found.length > 0),
    ...rowsOf(buttons),
  ];
}

function cautionsOf(replies: readonly (HomeReply | undefined)[]): readonly Caution[] {
  const all = replies.flatMap((one) => one?.reply.cautions ?? []);
  return all.filter(({ text }, i) => all.findIndex((other) => other.text === text) === i);
}

function firstButtons(commands: readonly Command[]): readonly types.Button[] {
  return FIRST.flatMap((name) => {
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

/** Blocks of a reply in lines, for neither a tab nor a form takes tables; `only` those of one kind. */
function glances({ blocks }: Pick<Reply, 'blocks'>, only?: Block['kind']): readonly SlackBlock[] {
  return blocks.filter(({ kind }) => only === undefined || kind === only).flatMap(glanceAt);
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

// Draws the Home tab of one person from what they keep, and publishes it; a press there is answered there.

/** Publishes it, with what was just `done` above. Rejects when Slack does not take it. */
export async function publishHome(party: Party, ports: SlackPorts, done?: string): Promise<void> {
  const project: Partial<Record<Part, HomeReply>> = {};
  const holds = await ports.holds(party.asker).catch(() => false);
  for (const [part, text] of Object.entries({ ...PROJECT, ...OPEN }) as [Part, string][]) {
    if (!holds || !commandNamed(text, ports.commands)) continue;
    const last = await lastAnswer(text, party, ports);
    if (last && 'headline' in last) project[part] = await kept(text, last, party, ports);
  }
  const publish = (view: types.HomeView) =>
    viewed('views.publish', () => party.client.views.publish({ user_id: party.where.user, view }), ports);
  try {
    await publish(homeView(ports.commands, project, done));
  } catch (cause) {
    if (!project.show || !isTooMuch(cause)) throw cause;
    ports.fault('slack', cause);
    await publish(plainView(ports.commands, project.show.reply, done));
  }
}

const A_DAY = 24 * 3600 * 1000;

/** Publishes it for whoever opened it. Where Slack does not take it they learn of it, once a day. */
export async function openHome(party: Party, ports: SlackPorts): Promise<void> {
  try {
    await publishHome(party, ports);
  } catch (cause) {
    if (!isRefused(cause)) throw cause;
    ports.fault('slack', cause);
    const first = await ports.kept.claim(`slack:home:${accountKey(party.asker)}`, A_DAY);
    if (first) await tell(SLACK.homeNotShown, party, ports);
  }
}

/** Publishes it after something was done, which is said by message where Slack does not take it. */
async function publishDone(done: string, party: Party, ports: SlackPorts): Promise<void> {
  try {
    await publishHome(party, ports, done);
  } catch (cause) {
    if (!isRefused(cause)) throw cause;
    ports.fault('slack', cause);
    await tell(`${done}\n${SLACK.homeNotShown}`, party, ports);
  }
}

async function lastAnswer(text: string, { asker }: Party, ports: SlackPorts): Promise<Answer | undefined> {
  let last: Answer | undefined;
  for await (const one of ports.answer({ asker, preferences: ports.preferences, text })) last = one;
  return last;
}

/** What was pressed on the tab: a button, or boxes that are ticked now. */
export interface PressedHome {
  readonly action: string;
  readonly value: string;
  readonly ticked: readonly string[];
  readonly trigger: string;
}

/** Acts on a press that is answered on the tab itself; false where it is of another kind. Rejects as Slack does. */
export async function pressHome(
  { action, value, ticked, trigger }: PressedHome,
  party: Party,
  ports: SlackPorts,
): Promise<boolean> {
  const [name, own = ''] = action.split('.');
  const request = async (id = '', place = ''): Promise<string | undefined> => {
    const found = await lookUpPress({ kind: 'ask', id, place: Number(place) }, accountKey(party.asker), ports);
    return found.found === 'request' ? found.text : undefined;
  };
  if (name === 'tick' || action === 'home.undo') {
    const asked = name === 'tick' ? await Promise.all(ticked.map((one) => request(...one.split('.')))) : [UNDO];
    const said: string[] = [];
    for (const text of asked) if (text !== undefined) said.push(leadOf(await lastAnswer(text, party, ports)));
    await publishDone(said.length === asked.length ? said.join(' ') : SLACK.old, party, ports);
    return true;
  }
  const text = name === 'ask' ? await request(value, own) : undefined;
  if (text === undefined && action !== 'home.safety') return false;
  const opening = { trigger_id: trigger, view: answerView(said(SLACK.working)) };
  const first = await viewed('views.open', () => party.client.views.open(opening), ports, TIME.limitedForm).catch(
    (cause: unknown) => ports.fault('slack', cause),
  );
  // Slack lets a form be opened for three seconds: after that the answer comes as a message.
  if (!first && text !== undefined) return false;
  const answer = text === undefined ? undefined : await lastAnswer(text, party, ports);
  const cautions = text === undefined ? await safety(party, ports) : [];
  const blocks = text === undefined ? cautionLines(cautions) : answerBlocks(answer);
  if (first && (await shownIn(first.view?.id ?? '', blocks, party, ports))) {
    await publishHome(party, ports).catch((cause: unknown) => ports.fault('slack', cause));
    return true;
  }
  if (text !== undefined && answer) await sendAnswers({ text, answers: only(answer) }, party, ports);
  else await tell([CHAT.cautions, ...cautions.map((one) => `• ${one.text}`)].join('\n'), party, ports);
  return true;
}

/** Whether an answer stands in the form that said it is being worked out; where it does not, the form says where it is. */
async function shownIn(
  view_id: string,
  blocks: readonly SlackBlock[],
  party: Party,
  ports: SlackPorts,
): Promise<boolean> {
  const show = (view: types.ModalView) =>
    viewed('views.update', () => party.client.views.update({ view_id, view }), ports);
  try {
    await show(answerView(blocks));
    return true;
  } catch (cause) {
    if (!isRefused(cause)) throw cause;
    ports.fault('slack', cause);
    await show(answerView(said(SLACK.homeElsewhere))).catch(() => undefined);
    return false;
  }
}

async function* only<T>(one: T): AsyncGenerator<T> {
  yield one;
}

function leadOf(answer: Answer | undefined): string {
  const [first] = answer ? render(answer) : [];
  return first?.text.split('\n')[0] ?? '';
}

/** Every caution of the project. */
async function safety(party: Party, ports: SlackPorts): Promise<readonly Caution[]> {
  const replies: HomeReply[] = [];
  for (const text of Object.values(PROJECT)) {
    const last = await lastAnswer(text, party, ports);
    if (last && 'headline' in last) replies.push({ reply: last, id: undefined });
  }
  return cautionsOf(replies);
}

function cautionLines(cautions: readonly Caution[]): readonly SlackBlock[] {
  return saidLines(
    CHAT.cautions,
    cautions.map(({ text }) => ({ label: '•', text })),
  );
}

/** All of an answer, in lines. */
function answerBlocks(answer: Answer | undefined): readonly SlackBlock[] {
  if (!answer) return said(SLACK.old);
  if (!('headline' in answer)) return render(answer)[0]?.blocks ?? [];
  const [first] = render({ ...answer, blocks: [], cautions: [] });
  const brief = (render(answer, { id: 'none' })[0]?.blocks ?? first?.blocks ?? []).filter(
    ({ type }) => type !== 'actions',
  );
  return [...brief.filter(({ type }) => type !== 'table'), ...glances(answer), ...said(SLACK.homeMore)];
}

function answerView(blocks: readonly SlackBlock[]): types.ModalView {
  const title = slackPlainText(SLACK.homeAnswer, VIEW.title);
  return {
    type: 'modal',
    title,
    close: slackPlainText(SLACK.formDone, VIEW.title),
    blocks: [
      ...fitting(
        blocks.map((one) => [one]),
        VIEW.blocks,
      ),
    ],
  };
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
