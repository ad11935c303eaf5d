/** The only wiring: configuration, commands and the terminal. */

import { commands } from '../commands/index.ts';
import { answer } from './bot/answer.ts';
import { closePictures } from './draw/png.ts';
import { readConfig } from './host/config.ts';
import { dataFolder } from './host/data-folder.ts';
import { faultsTo } from './host/faults.ts';
import { closeWorkers } from './solve/pool.ts';
import { openStore } from './store/store.ts';
import { DEMO_ASKS, WORKED_ASK } from './terminal/demo.ts';
import { ask, askLines, converse, demonstrate, type Session, showWorked } from './terminal/receive.ts';
import { TERMINAL } from './words/terminal.ts';

/** What is closed at the end. */
const closing: (() => Promise<void>)[] = [closeWorkers, closePictures];

async function main([mode, ...words]: readonly string[]): Promise<number> {
  const { units, decimal, currency, history, pictures, store: url, data } = readConfig(process.env);
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
  };
  // One of the demo's asks goes wrong on purpose: only a fault of ours is a failure.
  if (mode === 'demo') return (await demonstrate(DEMO_ASKS, session)) === 1 ? 1 : 0;
  if (mode === 'ask') return askOnce(words, session);
  if (process.stdin.isTTY) {
    await converse(WORKED_ASK, session);
    return 0;
  }
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
  await Promise.all(closing.map((close) => close()));
}
