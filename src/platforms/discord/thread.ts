/** A project's thread: opened at a press for its owner, with the project's summary pinned, which changes as the project does. */

import { type APIComponentInContainer, ComponentType } from 'discord.js';
import { threadsKey } from '../../chat/saved-replies.ts';
import type { Reply } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { drawnFor, inTime, refused, tellUnlessOutage } from './fault.ts';
import type { Came } from './interaction.ts';
import { KEEP_TIME } from './limits.ts';
import { outgoing } from './outgoing.ts';
import { escapedMarkdown, label } from './page.ts';
import { render, renderSections } from './render.ts';
import { type DiscordContext, type Outgoing, preferencesIn } from './types.ts';

/** A thread that was opened for a project, and the message in it that is its summary. */
interface Thread {
  readonly project: string;
  readonly channel: string;
  readonly message: string;
}

const MOST_THREADS = 10;
/** As long as a floor takes, and then some. */
const THREAD_FOR = 365 * 24 * 3600 * 1000;
/** Characters of a thread's name. */
const THREAD_NAME = 100;
/** How long further changes are waited for before the summary follows them, ms. */
const CHANGES = 2500;

/** The name of the project that an answer is about. */
export function projectIn({ data }: Pick<Reply, 'data'>): string | undefined {
  return data.kind === 'project' && 'name' in data && typeof data.name === 'string' ? data.name : undefined;
}

async function threadsOf(account: string, { kept }: DiscordContext): Promise<readonly Thread[]> {
  const found = await kept.get(threadsKey(account));
  return Array.isArray(found) ? (found as readonly Thread[]) : [];
}

async function keepThreads(account: string, threads: readonly Thread[], { kept }: DiscordContext): Promise<void> {
  await kept.set(threadsKey(account), threads.slice(-MOST_THREADS), THREAD_FOR);
}

/** Opens a thread where the button was pressed, for its owner alone until they invite others. Gives what became of it, in words. */
export async function openThread(reply: Reply, came: Came, access: DiscordContext): Promise<string> {
  const { wire } = access;
  const project = projectIn(reply);
  if (project === undefined || came.channel === undefined) return CHAT.noThread;
  const threads = await inTime(threadsOf(came.account, access), KEEP_TIME, access);
  const summary = await summaryOf(project, came, access);
  if (!summary) return CHAT.noSummary;
  let channel: string;
  let message: string;
  try {
    channel = await wire.thread(came.channel, label(project, THREAD_NAME), came.asker.id);
    message = await wire.post(channel, summary);
  } catch (cause) {
    if (refused(cause) !== 'content') throw cause;
    return CHAT.noThread;
  }
  const others = threads.filter((one) => one.project !== project);
  await inTime(keepThreads(came.account, [...others, { project, channel, message }], access), KEEP_TIME, access);
  try {
    await wire.pin(channel, message);
  } catch (cause) {
    if (refused(cause) !== 'content') throw cause;
    return CHAT.notPinned(`<#${channel}>`);
  }
  return CHAT.inThread(`<#${channel}>`);
}

/** The project as it is now, on one card without buttons: those are its owner's. */
async function summaryOf(project: string, came: Came, access: DiscordContext): Promise<Outgoing | undefined> {
  const shown = await asked('project show', came, access);
  if (!shown || projectIn(shown) !== project) return undefined;
  const [page] = renderSections(shown, 'more') ?? render(shown);
  const more = [await asked('project progress', came, access), await asked('project shopping', came, access)];
  const lines = more.flatMap((one) => (one ? [escapedMarkdown(one.headline)] : []));
  const content = [...lines, `-# ${CHAT.living}`].join('\n');
  const components: readonly APIComponentInContainer[] = [
    ...(page?.components ?? []),
    { type: ComponentType.TextDisplay, content },
  ];
  const [message] = await outgoing([{ components, files: page?.files ?? [] }], {}, drawnFor(access, came));
  return message;
}

async function asked(text: string, { asker, locale }: Came, access: DiscordContext): Promise<Reply | undefined> {
  let last: Reply | undefined;
  for await (const one of access.answer({ asker, text, preferences: preferencesIn(locale, access.preferences) }))
    last = 'headline' in one ? one : undefined;
  return last;
}

/** Whether an answer may have changed the project of its asker. */
function mayHaveChanged(reply: Reply): boolean {
  return projectIn(reply) !== undefined || reply.actions.some(({ ask }) => ask === 'project undo');
}

const underway = new Set<string>();

/** Lets the summary follow a change of the project, several changes at once. Never rejects. */
export async function followProject(reply: Reply, came: Came, access: DiscordContext): Promise<void> {
  if (!mayHaveChanged(reply) || underway.has(came.account)) return;
  try {
    const threads = await inTime(threadsOf(came.account, access), KEEP_TIME, access);
    if (threads.length === 0) return;
    underway.add(came.account);
    await access.wait(CHANGES).over;
    underway.delete(came.account);
    await changeSummaries(threads, came, access);
  } catch (cause) {
    tellUnlessOutage(access, cause);
  } finally {
    underway.delete(came.account);
  }
}

async function changeSummaries(threads: readonly Thread[], came: Came, access: DiscordContext): Promise<void> {
  const shown = await asked('project show', came, access);
  const thread = threads.find(({ project }) => shown && project === projectIn(shown));
  const summary = thread && (await summaryOf(thread.project, came, access));
  if (!thread || !summary) return;
  try {
    await access.wire.change(thread.channel, thread.message, summary);
  } catch (cause) {
    // The thread or its summary was deleted, or the bot put out of it: it is left alone from now on.
    if (!['message', 'content'].includes(refused(cause))) throw cause;
    await keepThreads(
      came.account,
      threads.filter((one) => one !== thread),
      access,
    );
  }
}
