/** Starts the Slack app: one workspace by its token or many by OAuth, over HTTP or Socket Mode. */

import { App, type CodedError, type Logger, LogLevel, SocketModeReceiver, webApi } from '@slack/bolt';
import { type Installation, InstallProvider } from '@slack/oauth';
import { openAccess } from '../../accounts/project-access.ts';
import { freshIds } from '../../chat/rate-limit.ts';
import { asRequest } from '../../chat/request-id.ts';
import { CHAT, INSTALL } from '../../text/chat-text.ts';
import type { PlatformContext, PlatformRoute, RunningPlatform, SlackSettings } from '../platform.ts';
import { missedAnswers, savesUnderway } from '../session.ts';
import { askedOnce, type Installations, installationsIn, installPages, sealOf } from './install.ts';
import { TIME } from './limits.ts';
import { Unsent } from './post.ts';
import { receive } from './receive.ts';
import { FetchReceiver } from './receiver.ts';
import { EVENTS_PATH } from './register.ts';
import { note } from './render.ts';
import { installPage, noteUnsent, tell, welcome } from './send.ts';
import { slackLacks } from './settings.ts';
import type { SlackParts, SlackPorts } from './types.ts';

/** A Slack app that runs. */
export interface RunningSlack {
  /** What the HTTP server answers for it; nothing in Socket Mode without OAuth. */
  readonly pages: readonly PlatformRoute[];
  /** Whether events reach it: by HTTP they do while the server listens. */
  connected(): boolean;
  /** Takes nothing more, and resolves when what was begun is answered. */
  stop(): Promise<void>;
}

/** Milliseconds that what was begun has to be answered once no more is taken. */
const LONGEST_END = 6_000;

/** A socket that is lost is asked for again, whatever Slack says. */
const RETRIES = { retries: 3, factor: 2, minTimeout: 500 };

/** Starts. Rejects when something is missing, a key is none, or Slack refuses the token. */
export async function startSlack(settings: SlackSettings, parts: SlackParts): Promise<RunningSlack> {
  const lacks = slackLacks(settings);
  if (lacks.length > 0) throw new Error(`Slack cannot start without:\n${lacks.join('\n')}`);
  const begun = new Set<Promise<unknown>>();
  const later = (work: Promise<unknown>): void => {
    begun.add(work);
    void work.finally(() => begun.delete(work)).catch(() => undefined);
  };
  const logger = loggerOf(parts);
  const clientOptions: webApi.WebClientOptions = {
    logger,
    // What Slack does not take at once has other ways, and a rate limit of one method must hold up no other (`post.ts`).
    retryConfig: { retries: 0 },
    rejectRateLimitedCalls: true,
    timeout: TIME.call,
    ...(settings.api === undefined ? {} : { slackApiUrl: settings.api }),
  };
  const ports: SlackPorts = {
    ...parts,
    isFresh: freshIds(),
    later,
    saves: savesUnderway(),
    missed: missedAnswers(parts.kept),
    acting: new Set(),
    uploads: uploadClients(clientOptions),
  };
  const many = settings.botToken === '';
  const installations = many ? installationsIn(ports.kept, sealOf(settings.key), ports.now) : undefined;
  const installer = installations && installerOf(settings, installations, clientOptions, logger);
  const http =
    settings.signingSecret !== '' ? new FetchReceiver({ ...ports, signingSecret: settings.signingSecret }) : undefined;
  const socket = () =>
    new SocketModeReceiver({
      appToken: settings.appToken,
      logger,
      installerOptions: { clientOptions: { ...clientOptions, retryConfig: RETRIES, rejectRateLimitedCalls: false } },
    });
  const receiver = http ?? socket();
  let live = false;
  if (receiver instanceof SocketModeReceiver) {
    receiver.client.on('connected', () => {
      live = true;
    });
    for (const lost of ['reconnecting', 'disconnected', 'close'])
      receiver.client.on(lost, () => {
        live = false;
      });
  }
  const app = new App({
    receiver,
    logger,
    logLevel: LogLevel.WARN,
    clientOptions,
    // Bolt would keep a state of every conversation for good.
    convoStore: false,
    attachFunctionToken: false,
    deferInitialization: true,
    extendedErrorHandler: true,
    ...(installer ? { authorize: askedOnce(installer.authorize) } : { token: settings.botToken }),
  });
  app.use(async ({ next }) => {
    const done = asRequest(next);
    later(done);
    await done;
  });
  app.error(async ({ error, body }: Readonly<Record<'error', CodedError> & Record<'body', unknown>>) => {
    ports.fault('slack', error);
    if (error.code === 'slack_bolt_authorization_error') await sayLost(body, ports);
  });
  receive(app, ports);
  if (installations) forgetEnded(app, installations);
  await app.init();
  await app.start();
  return {
    pages: [
      ...(http ? [{ method: 'POST' as const, path: EVENTS_PATH, handle: http.handle }] : []),
      ...(installer ? installPages(installer, (one) => later(greeted(one, clientOptions, ports))) : []),
    ],
    connected: () => http !== undefined || live,
    stop: async () => {
      await app.stop();
      await Promise.race([Promise.allSettled(begun), ports.wait(LONGEST_END)]);
      // What Slack was told of as heard it does not send again.
      const told = [...ports.acting].map((party) =>
        tell(CHAT.restarting, party, ports).catch((cause: unknown) =>
          cause instanceof Unsent ? noteUnsent(cause, party, ports) : ports.fault('slack', cause),
        ),
      );
      await Promise.all(told);
    },
  };
}

/** One more client for each token, for files: what it takes at once is its own. */
function uploadClients(options: webApi.WebClientOptions): SlackPorts['uploads'] {
  const made = new WeakMap<webApi.WebClient, webApi.WebClient>();
  return (client) => {
    const known = made.get(client) ?? new webApi.WebClient(client.token, options);
    made.set(client, known);
    return known;
  };
}

function installerOf(
  { clientId, clientSecret, stateSecret }: SlackSettings,
  installationStore: Installations,
  clientOptions: webApi.WebClientOptions,
  logger: Logger,
): InstallProvider {
  const given = { clientId, clientSecret, stateSecret, installationStore, clientOptions, logger };
  // Straight to Slack's own page: ours would have nothing to add.
  return new InstallProvider({ ...given, directInstall: true });
}

/** Greets whoever installed the app. Never rejects. */
async function greeted(
  { team, enterprise, user, bot }: Installation<'v1' | 'v2', boolean>,
  options: webApi.WebClientOptions,
  ports: SlackPorts,
): Promise<void> {
  const workspace = team?.id ?? enterprise?.id;
  if (!bot || workspace === undefined) return;
  const asker = { platform: 'slack', id: user.id, workspace } as const;
  const party = { asker, client: new webApi.WebClient(bot.token, options), where: { user: user.id } };
  await welcome(party, ports).catch((cause: unknown) => {
    ports.fault('slack', cause);
    return cause instanceof Unsent ? noteUnsent(cause, party, ports) : undefined;
  });
}

/** Says that the app is no longer installed, where Slack gave an address that needs no token. Never rejects. */
async function sayLost(body: unknown, ports: SlackPorts): Promise<void> {
  const url = typeof body === 'object' && body !== null && 'response_url' in body ? body.response_url : undefined;
  if (typeof url !== 'string') return;
  const text = INSTALL.lost(installPage(ports));
  const sent = { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(note(text)) };
  await fetch(url, { ...sent, signal: AbortSignal.timeout(TIME.call) }).catch((cause) => ports.fault('slack', cause));
}

/** Deletes the tokens of a workspace that takes the app off or revokes them. */
function forgetEnded(app: App, installations: Installations): void {
  const forget = async (
    context: { readonly teamId?: string; readonly enterpriseId?: string; readonly isEnterpriseInstall: boolean },
    seconds: number,
  ): Promise<void> => {
    const { teamId, enterpriseId, isEnterpriseInstall } = context;
    await installations.forget({ teamId, enterpriseId, isEnterpriseInstall }, seconds * 1000);
  };
  app.event('app_uninstalled', ({ context, body }) => forget(context, body.event_time));
  app.event('tokens_revoked', async ({ event, context, body }) => {
    if ((event.tokens.bot ?? []).length > 0) await forget(context, body.event_time);
  });
}

/** What Bolt has to tell goes to whoever runs the bot, from warnings up: less is about every request. */
function loggerOf({ fault }: SlackParts): Logger {
  const given = (...words: unknown[]): void => {
    const cause = words.find((word) => word instanceof Error);
    fault('slack', cause ?? new Error(words.map(String).join(' ')));
  };
  return {
    debug: () => undefined,
    info: () => undefined,
    warn: given,
    error: given,
    setLevel: () => undefined,
    getLevel: () => LogLevel.WARN,
    setName: () => undefined,
  };
}

/** Milliseconds for which an answer is waited for without a word. */
const PATIENCE = 1500;

/** Connects the app as it is configured. Rejects as `startSlack` does. */
export async function connectSlack(context: PlatformContext): Promise<RunningPlatform> {
  const { config, ports, answer, toPng, makeFile, wait } = context;
  const commands = await context.commands();
  const { units, decimal, currency } = config;
  const running = await startSlack(config.slack, {
    answer,
    commands,
    preferences: { units, decimal, currency },
    kept: ports.store.kept,
    fault: ports.fault,
    toPng,
    makeFile,
    wait,
    patience: () => wait(PATIENCE),
    now: Date.now,
    holds: async (asker) => (await openAccess(asker, ports)?.inUse()) !== undefined,
    shared: config.store !== '',
    ...(ports.address && { address: ports.address }),
  });
  return { routes: running.pages, connected: running.connected, close: () => running.stop() };
}
