/** Sends the answer of one request, once and whole; its sections, pictures and files when they are asked for. */

import { accountKey } from '../../accounts/records.ts';
import { sectionsOf } from '../../chat/brief.ts';
import { fileStem, oneLine, sheetCsv, sheetText } from '../../chat/files.ts';
import { commandNamed } from '../../chat/form.ts';
import { isPart } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Request } from '../../chat/ports.ts';
import { type KeptAnswer, keepAnswer, mintId } from '../../chat/saved-replies.ts';
import { fullName } from '../../input/command-shape.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { type Block, type Invite, type Reply, reply } from '../../reply/reply.ts';
import { Outage } from '../../storage/types.ts';
import { CHAT, INSTALL, SLACK } from '../../text/chat-text.ts';
import { FILES } from '../../text/sheets-text.ts';
import { Unworked } from '../../workers/queue.ts';
import { type AnswerSession, deliverAnswers, storeForButtons } from '../session.ts';
import { openButton, rowsOf } from './buttons.ts';
import { INSTALL_PATH } from './install.ts';
import { IMAGE, MOST_MESSAGES } from './limits.ts';
import {
  called,
  isDirect,
  isLost,
  type Lasting,
  limitedFor,
  type Post,
  postTo,
  sendEach,
  Unsent,
  type Upload,
  upload,
} from './post.ts';
import { drawingsOf, note, render, renderPart, renderSection, type SlackMessage } from './render.ts';
import { cut } from './rich.ts';
import type { Party, SlackPorts } from './types.ts';

/** What is suggested to whoever has no project. */
const BEGINS = 'project new';

/** What was asked, and the answers as they come. */
interface AnsweredRequest extends Pick<Request, 'text' | 'written'> {
  readonly answers: AsyncIterable<Answer>;
  /** Resolves when it has been waited for long enough without a word. */
  readonly patience?: Promise<void>;
}

/** Answers where it was asked: with the last answer alone, for not every message of ours can be replaced. Rejects when no way is left. */
export async function sendAnswers(
  { text, written, answers, patience: begun }: AnsweredRequest,
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  const post = postTo(party, ports);
  const patience = begun ?? ports.patience();
  await deliverAnswers(
    answers,
    { patience: { over: patience }, saves: ports.saves },
    {
      async send({ id, last, save }) {
        const ended = last.then(
          () => true,
          () => true,
        );
        const soon = await Promise.race([ended, patience.then(() => false)]);
        const working = soon ? undefined : await post.working();
        const answer = await last;
        void save(answer);
        const changeable = 'headline' in answer && answer.form !== undefined && written !== 'message';
        await sendAnswer(answer, { id, save, changeable }, party, { post, working }, ports);
        return true;
      },
      edit: async () => undefined,
      save: (answer, id) => save(id, answer, text, party, ports),
    },
  );
}

/** Sends an answer in place of the line that said it takes a while, where one stands. */
async function sendAnswer(
  answer: Answer,
  { id, save, changeable }: Pick<AnswerSession, 'id' | 'save'> & { readonly changeable: boolean },
  party: Party,
  { post, working }: { readonly post: Post; readonly working?: Lasting | undefined },
  ports: SlackPorts,
): Promise<void> {
  const { channel, open = false } = party.where;
  const everybody = open && !isPrivate(answer);
  const showable = !everybody && channel !== undefined && !isDirect(channel);
  const begins = 'problems' in answer && (await lacksProject(answer, party, ports));
  const messages = render(answer, { id, changeable, showable, shown: everybody, begins });
  try {
    await sendEach(messages, (message, i) =>
      open && !everybody ? post.alone(message) : post.toAsker(message, i === 0 ? working : undefined),
    );
  } catch (cause) {
    if (!(cause instanceof Unsent) || !('headline' in answer)) throw cause;
    // It comes whole, as it is stored: what is shown only once is in no store.
    const noted = (await save(answer)) && (await noteMissed(id, party, ports));
    throw new Unsent(cause.errors, noted ? [] : cause.messages);
  }
  // Nobody else needs to see that somebody was answered in private.
  if (open && !everybody && working) {
    await post.toAsker(note(SLACK.toYou), working).catch((cause: unknown) => ports.fault(id, cause));
  }
  if (!('blocks' in answer)) return;
  for (const invite of answer.invites ?? []) await sendInvite(invite, party, post, ports);
  if (answer.opens === 'plan' || answer.opens === 'more') await sendPictures(answer, party, ports);
  await sendMade(answer, post, party, ports);
}

/** Commands of the group project that need none. */
const WITHOUT = ['new', 'link', 'settings', 'mydata', 'restore'].map((name) => `project ${name}`);

/** Whether somebody without a project asks about theirs. */
export async function lacksProject(
  { form, problems }: Extract<Answer, { readonly problems: unknown }>,
  { asker }: Party,
  { holds }: SlackPorts,
): Promise<boolean> {
  if (problems[0].fix === BEGINS) return true;
  if (!form?.command.startsWith('project ') || WITHOUT.includes(form.command)) return false;
  return !(await holds(asker).catch(() => true));
}

/** In a channel everybody reads a sum; what comes out of somebody's project is theirs. */
function isPrivate(answer: Answer): boolean {
  if ('headline' in answer) return answer.audience !== 'channel';
  return 'problems' in answer && answer.form?.command.startsWith('project ') === true;
}

/** Lets a member of the same workspace know what they were given; where that cannot be, whoever gave it is told. */
async function sendInvite(
  { account, headline, lines, action }: Invite,
  { asker, client }: Party,
  post: Post,
  ports: SlackPorts,
): Promise<void> {
  const user = account.slice(account.lastIndexOf(':') + 1);
  if (accountKey({ ...asker, id: user }) !== account) return;
  const invitation = reply({ headline, lines, actions: [action], data: { kind: 'invite' } });
  const id = mintId();
  try {
    await keepAnswer(ports.kept, id, { by: account, text: action.ask, reply: invitation, shown: false });
    const theirs = postTo({ client, where: { user } }, ports);
    for (const message of render(invitation, { id })) await theirs.alone(message);
  } catch (cause) {
    if (!(cause instanceof Outage)) ports.fault(id, cause);
    // Their own next request brings it.
    if (cause instanceof Unsent) await ports.missed.note(account, id).catch((again: unknown) => ports.fault(id, again));
    await post.alone(note(SLACK.notInvited));
  }
}

/** The files that an answer comes with, made and put where the asker alone sees them; one that fails is told, and the others come. */
async function sendMade({ files = [], data }: Reply, post: Post, party: Party, ports: SlackPorts): Promise<void> {
  if (files.length === 0) return;
  const place = await post.place(SLACK.fileIntro, 'alone').catch((cause: unknown) => ports.fault('slack', cause));
  if (!place) return post.alone(note(files.map(({ title }) => FILES.notMade(title)).join('\n')));
  let sent = 0;
  for (const { name, title, as } of files) {
    try {
      const bytes = await ports.makeFile?.(data, as);
      if (!bytes) throw new Error('nobody makes files');
      await upload(party, { name, title: oneLine(title), bytes }, ports, place);
      sent += 1;
    } catch (cause) {
      if (!(cause instanceof Unworked)) ports.fault('slack', cause);
      await post.alone(note(FILES.notMade(title)));
    }
  }
  if (sent > 0 && !place.here) await post.alone(note(SLACK.sent(sent)));
}

// What reached nobody: stored, and brought behind whatever is answered next.

/** Notes a stored answer for its asker's next request; false where the store does not take it. */
async function noteMissed(id: string, { asker }: Party, ports: SlackPorts): Promise<boolean> {
  try {
    await ports.missed.note(accountKey(asker), id);
    return true;
  } catch (cause) {
    if (!(cause instanceof Outage)) ports.fault(id, cause);
    return false;
  }
}

/** Stores messages as they are for their reader's next request. Never rejects. */
export async function noteUnsent({ messages }: Unsent, party: Party, ports: SlackPorts): Promise<void> {
  const [first] = messages;
  if (!first) return;
  const id = mintId();
  const told = reply({ headline: first.text.split('\n')[0] ?? '', data: { kind: 'missed' } });
  try {
    await keepAnswer(ports.kept, id, { by: accountKey(party.asker), text: '', reply: told, shown: false, messages });
    await noteMissed(id, party, ports);
  } catch (cause) {
    if (!(cause instanceof Outage)) ports.fault(id, cause);
  }
}

/** Brings what was missed, if anything was, behind whatever was just answered. Throws Outage, and rejects when no way is left. */
export async function bringMissed(party: Party, ports: SlackPorts): Promise<void> {
  const account = accountKey(party.asker);
  const take = () => ports.missed.take(account, ports.now());
  let any = false;
  for (let missed = await take(); missed; missed = await take()) {
    any = true;
    const { id, answer } = missed;
    const post = postTo(party, ports);
    const kept = answer.messages as readonly SlackMessage[] | undefined;
    try {
      await sendEach([note(CHAT.missed), ...(kept ?? render(answer.reply, { id }))], (message) => post.alone(message));
    } catch (cause) {
      if (post.posted() <= 1) await ports.missed.note(account, id);
      else if (cause instanceof Unsent) await noteUnsent(cause, party, ports);
      throw cause;
    }
  }
  if (any) await sayIfLost(party, ports);
}

/** Where what was missed could only be brought without a token, whoever asked learns what the workspace lacks. */
async function sayIfLost(party: Party, ports: SlackPorts): Promise<void> {
  try {
    await called('auth.test', () => party.client.auth.test(), ports);
  } catch (cause) {
    if (!isLost(cause)) return;
    ports.fault('slack', cause);
    await postTo(party, ports).alone(note(INSTALL.lost(installPage(ports))));
  }
}

/** Where the app is installed by hand; undefined where our own address is not known. */
export function installPage({ address }: Pick<SlackPorts, 'address'>): string | undefined {
  const base = address?.();
  return base === undefined ? undefined : `${base}${INSTALL_PATH}`;
}

/** Shows a kept answer to the channel; where the app may not post there, whoever pressed learns of it. */
export async function showInChannel(
  id: string,
  { text, reply }: KeptAnswer,
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  const post = postTo(party, ports);
  for (const message of render(reply, { id, shown: true, requested: text })) {
    if (!(await post.toChannel(message))) return post.alone(note(SLACK.notShown));
  }
}

/** Stores what the buttons of an answer need. Where the store does not take it, they tell so when they are pressed. */
async function save(
  id: string,
  answer: Answer,
  text: string,
  { asker, where }: Party,
  ports: SlackPorts,
): Promise<boolean> {
  const by = accountKey(asker);
  try {
    const form = 'problems' in answer ? answer.form : undefined;
    const shown = where.open === true && !isPrivate(answer);
    await storeForButtons(ports.kept, id, answer, { by, text, shown, form });
    return true;
  } catch (cause) {
    // The store tells of its own outages, once and not for every ask.
    if (!(cause instanceof Outage)) ports.fault(id, cause);
    return false;
  }
}

/** A sentence of our own to the asker. */
export async function tell(text: string, party: Party, ports: SlackPorts): Promise<void> {
  await postTo(party, ports).alone(note(text));
}

/** Commands that a welcome offers. */
const BEGIN = ['floor planks', 'trim list', 'project new'];

/** Longer than anybody waits between two visits. */
const WELCOMED_FOR = 10 * 365 * 24 * 3600 * 1000;

/** Greets somebody in their direct messages, the first time they are there. Throws Outage. */
export async function welcome(party: Party, ports: SlackPorts): Promise<void> {
  if (!(await ports.kept.claim(`slack:welcome:${accountKey(party.asker)}`, WELCOMED_FOR))) return;
  const buttons = BEGIN.flatMap((name) => {
    const command = commandNamed(name, ports.commands);
    return command ? [openButton(fullName(command), SLACK.homeButtons[name] ?? name)] : [];
  });
  const { text, blocks } = note(`${SLACK.welcome}\n${SLACK.welcomeHow}`);
  await postTo(party, ports).alone({ text, blocks: [...blocks, ...rowsOf(buttons)] });
}

/** That a kept answer is not to be had. */
export function tellGone(party: Party, ports: SlackPorts): Promise<void> {
  return tell(CHAT.gone('/floorhand'), party, ports);
}

// The long parts of a kept answer, shown when asked for: under its brief while they are few, else in messages of
// their own, else as a text file and spreadsheets.

/** Spreadsheets attached at once. */
const MOST_TABLES = 10;

/** Sends one part; false when the answer has none there. */
export async function sendPart(reply: Reply, place: number, party: Party, ports: SlackPorts): Promise<boolean> {
  const block = reply.blocks[place];
  const messages = renderPart(reply, place);
  if (!block || !messages) return false;
  await sendLong(messages, reply, [block], party, ports);
  return true;
}

/** Opens a section of a kept answer, or with `more` all of them; false when the answer has none of that name. */
export async function openSection(
  id: string,
  { reply }: KeptAnswer,
  wanted: string,
  party: Party,
  ports: SlackPorts,
): Promise<boolean> {
  const section = sectionsOf(reply).find((one) => one.id === wanted);
  const all = wanted === 'more' || wanted === 'brief';
  const messages = all ? undefined : renderSection(reply, wanted);
  if (!section && !all && !messages) return false;
  if (wanted === 'plan') {
    await sendPictures(reply, party, ports);
    return true;
  }
  const { opens: _opens, ...brief } = reply;
  const opened = section?.id ?? (wanted === 'more' ? 'more' : undefined);
  const { channel } = party.where;
  const showing = { id, changeable: 'form' in reply, showable: channel !== undefined && !isDirect(channel) };
  const [card, ...more] = render(opened === undefined ? brief : { ...brief, opens: opened }, showing);
  const replaced = (section || all) && card && more.length === 0 && (await postTo(party, ports).inPlace(card));
  if (replaced) return true;
  const blocks = section ? section.blocks : reply.blocks;
  await sendLong(messages ?? renderSection(reply, 'more') ?? [], reply, blocks, party, ports);
  return true;
}

/** Messages of our own making, one after the other, under the one whose button was pressed; files where they are many. */
async function sendLong(
  messages: readonly SlackMessage[],
  reply: Reply,
  blocks: readonly Block[],
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  if (messages.length > MOST_MESSAGES) return sendFiles(reply, blocks, party, ports);
  const post = postTo(below(party), ports);
  await sendEach(messages, (message) => post.toAsker(message));
}

/** In the thread of a pressed message that stays. */
function below(party: Party): Party {
  const { where } = party;
  const thread = where.thread ?? (isDirect(where.channel) ? where.pressed?.ts : undefined);
  return { ...party, where: { ...where, thread } };
}

/** Sends the whole answer, or some blocks of it, as files: in the thread of its message, or to the asker's direct messages with the app. */
export async function sendFiles(
  reply: Reply,
  blocks: readonly Block[],
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  await sendUploads(filesOf(reply, blocks), SLACK.fileIntro, SLACK.sent, party, ports);
}

/** Sends every picture as a file, as `sendFiles` does. One that is not to be had is told by what it shows. */
export async function sendPictures(reply: Reply, party: Party, ports: SlackPorts): Promise<void> {
  const drawings = drawingsOf(reply);
  const drawn = await Promise.all(drawings.map(({ drawing }) => drawnBy(drawing, ports)));
  const files = drawn.flatMap((file) => file ?? []);
  const lost = drawings.filter((_, i) => drawn[i] === undefined);
  if (files.length > 0) await sendUploads(files, SLACK.pictureIntro, () => SLACK.picturesSent, party, ports);
  if (lost.length > 0) {
    const words = lost.map(({ drawing: { title, alt } }) => `${title}: ${alt}`).join('\n');
    await postTo(below(party), ports).toAsker(note(`${SLACK.notDrawn}\n${words}`));
  }
}

async function drawnBy(drawing: Drawing, { toPng, fault }: SlackPorts): Promise<Upload | undefined> {
  try {
    return pictureFile(drawing, await toPng(drawing));
  } catch (cause) {
    // Too many pictures at once are no fault.
    if (!(cause instanceof Unworked)) fault('slack', cause);
    return undefined;
  }
}

/** A picture as a file to upload. */
export function pictureFile({ title, alt }: Drawing, bytes: Buffer): Upload {
  const name = `${fileStem(title) || 'picture'}.png`;
  return { name, title: oneLine(title) || name, alt: cut(oneLine(alt), IMAGE.alt), bytes };
}

/** Uploads files where their reader is. Where Slack takes none, they learn of it and what each holds. */
async function sendUploads(
  files: readonly Upload[],
  intro: string,
  elsewhere: (count: number) => string,
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  const post = postTo(below(party), ports);
  const untaken = (cause: unknown, from: number): SlackMessage => {
    const words = files.slice(from).map(({ title, alt }) => (alt === undefined ? title : `${title}: ${alt}`));
    return note([SLACK.notTaken(limitedFor(cause)), ...words].join('\n'));
  };
  const place = await post.place(intro).catch((cause: unknown) => {
    // The words on files that never come are nothing to bring later.
    throw cause instanceof Unsent ? new Unsent(cause.errors, [untaken(cause, 0)]) : cause;
  });
  for (const [i, file] of files.entries()) {
    try {
      await upload(party, file, ports, place);
    } catch (cause) {
      ports.fault('slack', cause);
      await post.toAsker(untaken(cause, i));
      return;
    }
  }
  if (!place.here) await post.toAsker(note(elsewhere(files.length)));
}

function blocksTitle([first, ...more]: readonly Block[]): string | undefined {
  return more.length === 0 && first && isPart(first) ? first.title : undefined;
}

/** A text file of everything, and a CSV for each table. */
function filesOf(reply: Reply, blocks: readonly Block[]): readonly Upload[] {
  const one = blocksTitle(blocks);
  const name = (title: string, end: string): string => `${fileStem(title) || 'floorhand'}.${end}`;
  const title = oneLine(one ?? reply.headline);
  const tables = blocks.flatMap((block) => (block.kind === 'table' ? [block] : [])).slice(0, MOST_TABLES);
  return [
    { name: name(one ?? reply.data.kind, 'txt'), title, bytes: Buffer.from(sheetText(reply, blocks)) },
    ...tables.map((table) => ({
      name: name(table.title, 'csv'),
      title: oneLine(table.title) || 'csv',
      bytes: Buffer.from(`\ufeff${sheetCsv(table)}`),
    })),
  ];
}
