/** The terminal: one request, piped lines, the demo, or a conversation. */

import { catalog } from '../../commands/index.ts';
import { loadCommands } from '../chat/catalog.ts';
import { answer } from '../chat/pipeline.ts';
import type { Request } from '../chat/ports.ts';
import { closeFiles, makeFile } from '../documents/make.ts';
import { closePictures } from '../drawing/png.ts';
import { DEMO_ASKS, WORKED_ASK } from '../platforms/terminal/demo.ts';
import { ask, askLines, converse, demonstrate, type Session, showWorked } from '../platforms/terminal/receive.ts';
import { openStore } from '../storage/store.ts';
import { TERMINAL } from '../text/chat-text.ts';
import { boundTasks, closeWorkers } from '../workers/pool.ts';
import { type Config, configDoubts, dataFolder, type Environment, secretsOf } from './config.ts';
import { faultsTo, withoutSecrets } from './standard-error.ts';

/** Answers in the terminal; the exit code. */
export async function runTerminal(
  config: Config,
  environment: Environment,
  [mode, ...words]: readonly string[],
): Promise<number> {
  for (const doubt of configDoubts(environment)) process.stderr.write(`${doubt}\n`);
  boundTasks(config.limits);
  const { units, decimal, currency, history, pictures, store: url, data } = config;
  const secrets = secretsOf(environment);
  const { fault } = faultsTo({ write: (text) => process.stderr.write(withoutSecrets(text, secrets)) });
  const store = openStore({ url, folder: dataFolder(data, environment), fault: (cause) => fault('store', cause) });
  // Where the page is, or will be when the terminal is open.
  let page = config.address || pageAt(config.http);
  const ports = { fault, store, address: () => page };
  const preferences = { units, decimal, currency };
  const session: Session = {
    answer: (request) => answer(request, catalog, ports),
    preferences,
    input: process.stdin,
    output: process.stdout,
    pictures,
    // A file is only made where it is asked for: it goes where the asker is, if nowhere else.
    files: { folder: pictures ?? process.cwd(), makeFile },
  };
  try {
    if (mode === 'demo') {
      // It touches nothing that anybody keeps.
      const alone = { ...session, answer: (request: Request) => answer(request, catalog, { fault }) };
      // One of the demo's asks goes wrong on purpose: only a fault of ours is a failure.
      return (await demonstrate(DEMO_ASKS, alone)) === 1 ? 1 : 0;
    }
    if (mode === 'ask') return await askOnce(words, session);
    if (!process.stdin.isTTY) return await lines(session);
    // Loaded here: a single answer needs neither a server nor every command.
    const [{ servePage }, { suggest }, commands] = await Promise.all([
      import('./web-page.ts'),
      import('../chat/suggest.ts'),
      loadCommands(catalog),
    ]);
    const { server, trouble } = await servePage(config, ports);
    if (server && trouble !== undefined && config.address === '') page = pageAt({ ...config.http, port: server.port });
    if (trouble !== undefined) process.stderr.write(`${TERMINAL.otherPort(config.http.port, server && page)}\n`);
    await converse(WORKED_ASK, {
      ...session,
      commands,
      history,
      suggest: (asker, command, option, typed) =>
        suggest(asker, { command, option, commands, preferences }, typed, ports),
    });
    const closed = server?.close();
    server?.cut();
    await closed;
    return 0;
  } finally {
    await store.close();
    await closeWorkers();
    await closePictures();
    await closeFiles();
  }
}

/** Where a browser of this machine finds the page. */
function pageAt({ host, port }: Config['http']): string {
  const near = ['0.0.0.0', '::', ''].includes(host) ? '127.0.0.1' : host;
  return `http://${near.includes(':') ? `[${near}]` : near}:${port}`;
}

/** The lines that come in. */
async function lines(session: Session): Promise<number> {
  const code = await askLines(session, false);
  if (code === undefined) await showWorked(WORKED_ASK, session);
  return code ?? 0;
}

async function askOnce(words: readonly string[], session: Session): Promise<number> {
  const json = words.includes('--json');
  const text = words.filter((word) => word !== '--json').join(' ');
  if (text !== '') return ask(text, session, json);
  const code = process.stdin.isTTY ? undefined : await askLines(session, json);
  if (code === undefined) process.stderr.write(`${TERMINAL.usage}\n`);
  return code ?? 2;
}
