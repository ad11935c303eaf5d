/** The only wiring: configuration, commands, the terminal and the chats. */

import { setTimeout as sleep } from 'node:timers/promises';
import { commands } from '../commands/index.ts';
import { answer } from './bot/answer.ts';
import { openDesk } from './bot/desk.ts';
import type { Asker, Invocation } from './bot/invocation.ts';
import { lateWork } from './bot/late.ts';
import type { Kept, Ports } from './bot/ports.ts';
import { suggest } from './bot/suggest.ts';
import { startDiscord } from './discord/start.ts';
import { closePictures, toPng } from './draw/png.ts';
import { type Config, configDoubts, readConfig } from './host/config.ts';
import { dataFolder } from './host/data-folder.ts';
import { faultsTo } from './host/faults.ts';
import { listen, type Route, routed } from './host/server.ts';
import { slackIsTold, startSlack } from './slack/start.ts';
import { closeWorkers } from './solve/pool.ts';
import { type OpenStore, openStore } from './store/store.ts';
import { DEMO_ASKS, WORKED_ASK } from './terminal/demo.ts';
import { ask, askLines, converse, demonstrate, type Session, showWorked } from './terminal/receive.ts';
import { CHATS } from './words/chats.ts';
import { TERMINAL } from './words/terminal.ts';

/** Milliseconds for which a better answer is waited for before the first one is shown. */
const PATIENCE = 1500;

/** What is closed at the end. */
const closing: (() => Promise<void>)[] = [closeWorkers, closePictures];

async function main([mode, ...words]: readonly string[]): Promise<number> {
  const config = readConfig(process.env);
  for (const doubt of configDoubts(process.env)) process.stderr.write(`${doubt}\n`);
  const { units, decimal, currency, history, pictures, store: url, data } = config;
  const { fault } = faultsTo(process.stderr);
  const folder = dataFolder(data, process.env);
  const store = openStore({ url, folder, fault: (cause) => fault('store', cause) });
  closing.push(() => store.close());
  const ports = { fault, store };
  const session: Session = {
    answer: (invocation) => answer(invocation, commands, ports),
    commands,
    habits: { units, decimal, currency },
    input: process.stdin,
    output: process.stdout,
    history,
    pictures,
    suggest: (asker, command, option, typed) =>
      suggest(asker, { command, option, commands, habits: { units, decimal, currency } }, typed, ports),
  };
  // One of the demo's asks goes wrong on purpose: only a fault of ours is a failure.
  // It touches nothing that anybody keeps.
  const alone = { ...session, answer: (invocation: Invocation) => answer(invocation, commands, { fault }) };
  if (mode === 'demo') return (await demonstrate(DEMO_ASKS, alone)) === 1 ? 1 : 0;
  if (mode === 'ask') return askOnce(words, session);
  if (slackIsTold(config.slack) || config.discord.token !== '') {
    await lookAt(store, url, fault);
    await chat(config, { ...session, ...ports, kept: store.kept });
    return 0;
  }
  if (process.stdin.isTTY) {
    await converse(WORKED_ASK, session);
    return 0;
  }
  const code = await askLines(session, false);
  if (code === undefined) await showWorked(WORKED_ASK, session);
  return code ?? 0;
}

/** Tells what stands in the way of keeping what is acknowledged. Throws when there is a data folder and it cannot be had. */
async function lookAt(store: OpenStore, url: string, fault: Ports['fault']): Promise<void> {
  try {
    for (const doubt of await store.doubts()) fault('store', doubt);
  } catch (cause) {
    // A server may come up later; a folder that another bot has is not let go by waiting.
    if (url === '') throw cause;
    fault('store', cause);
  }
}

/** What the chats are made of. */
type ChatParts = Pick<Session, 'answer' | 'commands' | 'habits'> & Ports & { readonly kept: Kept };

/** Answers in the chats that were told of, until the process is asked to end. */
async function chat({ http, slack, discord, store }: Config, parts: ChatParts): Promise<void> {
  await warm(parts);
  const wait = (milliseconds: number): Promise<void> => sleep(milliseconds, undefined, { ref: false });
  const { later, done } = lateWork();
  closing.unshift(done);
  const here: Pick<Session, 'answer'> = { answer: (invocation) => answer(invocation, commands, { ...parts, later }) };
  const told = { ...parts, ...here, toPng };
  const routes: Route[] = [];
  if (slackIsTold(slack)) {
    const holds = async (asker: Asker): Promise<boolean> => (await openDesk(asker, parts)?.inUse()) !== undefined;
    const clock = { wait, patience: () => wait(PATIENCE), now: Date.now };
    const running = await startSlack(slack, { ...told, ...clock, holds, shared: store !== '' });
    closing.unshift(() => running.stop());
    routes.push(...running.pages);
  }
  if (discord.token !== '') {
    const { token, publicKey, shards, api } = discord;
    const settings = {
      token,
      ...(publicKey === '' ? {} : { publicKey }),
      ...(shards ? { shards } : {}),
      ...(api ? { api } : {}),
    };
    const running = await startDiscord(settings, {
      ...told,
      suggest: (asker, command, option, typed) =>
        suggest(asker, { command, option, commands, habits: parts.habits }, typed, parts),
    });
    closing.unshift(() => running.close());
    routes.push(...running.routes);
  }
  if (routes.length > 0) {
    const server = await listen(
      routed(routes, (cause) => parts.fault('http', cause)),
      http,
    );
    closing.unshift(() => server.close());
    process.stderr.write(`${CHATS.listening(http.host, server.port)}\n`);
  } else process.stderr.write(`${CHATS.connected}\n`);
  await new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
}

/** Answers once with nobody asking, so that the first who asks does not wait for what is loaded with the first answer. */
async function warm({ habits, fault }: ChatParts): Promise<void> {
  const asker = { platform: 'terminal', id: 'nobody' } as const;
  for (const text of [WORKED_ASK, 'tape 1 + 2']) {
    for await (const one of answer({ asker, habits, text }, commands, { fault })) {
      if (!('blocks' in one)) continue;
      for (const block of one.blocks) if (block.kind === 'picture') await toPng(block.drawing);
    }
  }
}

async function askOnce(words: readonly string[], session: Session): Promise<number> {
  const json = words.includes('--json');
  const text = words.filter((word) => word !== '--json').join(' ');
  if (text !== '') return ask(text, session, json);
  const code = process.stdin.isTTY ? undefined : await askLines(session, json);
  if (code === undefined) process.stderr.write(`${TERMINAL.usage}\n`);
  return code ?? 2;
}

// A reader that closes early (head, less) is no fault of ours.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  process.exit(fault.code === 'EPIPE' ? 0 : 1);
});

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (fault) {
  process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`);
  process.exitCode = 1;
} finally {
  // In order: what comes in ends before what it needs.
  for (const close of closing) await close();
}
