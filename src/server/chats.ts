/** The chats that were told of, each with what it needs of the pipeline. */

import { setTimeout as sleep } from 'node:timers/promises';
import { commands } from '../../commands/index.ts';
import type { Asker } from '../accounts/asker.ts';
import { openDesk } from '../accounts/project-access.ts';
import { isEmergency } from '../chat/hazard-answers.ts';
import { answer } from '../chat/pipeline.ts';
import type { Invocation, Ports } from '../chat/ports.ts';
import { inTurn } from '../chat/rate-limit.ts';
import { suggest } from '../chat/suggest.ts';
import { makeFile } from '../documents/make.ts';
import { toPng } from '../drawing/png.ts';
import { slackIsTold } from '../platforms/slack/start.ts';
import type { OpenStore } from '../storage/store.ts';
import type { Config } from './config.ts';
import type { Ending } from './ending.ts';
import type { Route } from './server.ts';

/** Milliseconds for which a better answer is waited for before the first one is shown. */
const PATIENCE = 1500;
/** Milliseconds for which the bot still hears what came as its end began. */
const GOODBYE = 300;

export interface Chats {
  /** What the HTTP server answers for them. */
  readonly routes: readonly Route[];
  /** The chats that events do not reach just now. */
  connected(): readonly string[];
}

/** Starts them. Rejects when one cannot start. */
export async function startChats(
  config: Config,
  ports: Ports & { readonly store: OpenStore },
  ending: Ending,
): Promise<Chats> {
  const { slack, discord, limits, units, decimal, currency, store: url } = config;
  const habits = { units, decimal, currency };
  const wait = (milliseconds: number): Promise<void> => sleep(milliseconds, undefined, { ref: false });
  const allowed = ports.store.allowed({ person: limits.asksPerMinute, server: limits.serverAsksPerMinute });
  const parts = {
    answer: inTurn(
      (invocation: Invocation) => answer(invocation, commands, { ...ports, allowed }),
      wait,
      ({ text }) => isEmergency(text),
    ),
    commands,
    habits,
    kept: ports.store.kept,
    fault: ports.fault,
    toPng,
    makeFile,
  };
  const routes: Route[] = [];
  const connected: (readonly [string, () => boolean])[] = [];
  if (slackIsTold(slack)) {
    const { startSlack } = await import('../platforms/slack/start.ts');
    const holds = async (asker: Asker): Promise<boolean> => (await openDesk(asker, ports)?.inUse()) !== undefined;
    const clock = { wait, patience: () => wait(PATIENCE), now: Date.now };
    const running = await began('Slack', startSlack(slack, { ...parts, ...clock, holds, shared: url !== '' }));
    ending.add('takes', 'slack', () => running.stop());
    routes.push(...running.pages);
    connected.push(['slack', running.connected]);
  }
  if (discord.token !== '') {
    const { startDiscord } = await import('../platforms/discord/start.ts');
    const { token, publicKey, shards, api } = discord;
    const settings = {
      token,
      ...(publicKey === '' ? {} : { publicKey }),
      ...(shards ? { shards } : {}),
      ...(api ? { api } : {}),
    };
    const starting = startDiscord(settings, {
      ...parts,
      suggest: (asker, command, option, typed) => suggest(asker, { command, option, commands, habits }, typed, ports),
    });
    const running = await began('Discord', starting);
    ending.add('takes', 'discord', async () => {
      running.refuse();
      // What is on its way from Discord already is still told something.
      await wait(GOODBYE);
      await running.close();
    });
    routes.push(...running.routes);
    connected.push(['discord', running.connected]);
  }
  return { routes, connected: () => connected.flatMap(([name, is]) => (is() ? [] : [name])) };
}

/** What was started. Rejects with which chat did not start, and what tells more. */
async function began<T>(chat: string, starting: Promise<T>): Promise<T> {
  try {
    return await starting;
  } catch (cause) {
    const said = cause instanceof Error ? cause.message : String(cause);
    const more = 'Whether it can be reached and knows the token: npm run doctor -- --online';
    throw new Error(`${chat} did not start: ${said}\n${more}`, { cause });
  }
}
