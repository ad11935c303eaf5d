/** The terminal: one request, piped lines, the demo, or a conversation. */

import { catalog } from '../../commands/index.ts';
import { answer } from '../chat/pipeline.ts';
import { closeFiles } from '../documents/make.ts';
import { closePictures } from '../drawing/png.ts';
import type { PlatformContext } from '../platforms/platform.ts';
import { backUpDaily } from '../storage/backup.ts';
import { openStore } from '../storage/store.ts';
import { TERMINAL } from '../text/chat-text.ts';
import { boundTasks, closeWorkers } from '../workers/pool.ts';
import { type Config, configDoubts, dataFolder, type Environment, secretsOf } from './config.ts';
import { contextOf } from './platform-context.ts';
import { platformsThat } from './platforms.ts';
import { faultsTo, withoutSecrets } from './standard-error.ts';

/** Returns the exit code. */
export async function runTerminal(config: Config, environment: Environment, words: readonly string[]): Promise<number> {
  for (const doubt of configDoubts(environment)) process.stderr.write(`${doubt}\n`);
  boundTasks(config.limits);
  const { store: url, data } = config;
  const secrets = secretsOf(environment);
  const { fault } = faultsTo({ write: (text) => process.stderr.write(withoutSecrets(text, secrets)) });
  const folder = dataFolder(data, environment);
  const store = openStore({ url, folder, use: 'terminal', fault: (cause) => fault('store', cause) });
  // Where the share page is, or will be while the terminal is open.
  let address = config.address || addressAt(config.http);
  const ports = { fault, store, address: () => address };
  const context = contextOf(config, ports, {
    answer: (request) => answer(request, catalog, ports),
    console: { input: process.stdin, output: process.stdout, words },
  });
  let backedUp = async (): Promise<void> => {};
  try {
    // A database may come up later; a data folder that can't be used stays so until somebody does something.
    if (url === '') await store.ping();
    const startBackups = () => backUpDaily(store.backUp, (cause) => fault('store', cause));
    if (isConversation(words)) backedUp = startBackups();
    const { server, trouble } = isConversation(words) ? await servePage(config, context) : {};
    if (server && trouble !== undefined && config.address === '') {
      address = addressAt({ ...config.http, port: server.port });
    }
    if (trouble !== undefined) process.stderr.write(`${TERMINAL.otherPort(config.http.port, server && address)}\n`);
    const started = await Promise.all(platformsThat('alone').map((platform) => platform.start(context)));
    const codes = await Promise.all(started.map(({ ended }) => ended));
    const closed = server?.close();
    server?.cut();
    await closed;
    // After a single answer, so that nobody waits for it.
    if (!isConversation(words)) backedUp = startBackups();
    return codes.find((code) => code !== undefined && code !== 0) ?? 0;
  } finally {
    await backedUp();
    await store.close();
    await closeWorkers();
    await closePictures();
    await closeFiles();
  }
}

/** Where a browser on this machine finds the page. */
function addressAt({ host, port }: Config['http']): string {
  const near = ['0.0.0.0', '::', ''].includes(host) ? '127.0.0.1' : host;
  return `http://${near.includes(':') ? `[${near}]` : near}:${port}`;
}

/** Whether someone is at a prompt, rather than running one command. */
function isConversation([mode]: readonly string[]): boolean {
  return mode !== 'demo' && mode !== 'ask' && process.stdin.isTTY;
}

/** Serves the share page while the terminal is open. Loads the server here because a single answer doesn't need it. */
async function servePage(config: Config, context: PlatformContext) {
  const { listenNear, routed } = await import('./http.ts');
  const started = await Promise.all(platformsThat('beside').map((platform) => platform.start(context)));
  const fault = (cause: unknown): void => context.ports.fault('http', cause);
  return listenNear(
    routed(
      started.flatMap(({ routes }) => routes),
      fault,
    ),
    config.http,
  );
}
