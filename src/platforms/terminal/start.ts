/** Starts the terminal: one request, lines, a demonstration or a conversation. */

import { answer } from '../../chat/pipeline.ts';
import type { Request } from '../../chat/ports.ts';
import { TERMINAL } from '../../text/chat-text.ts';
import type { PlatformContext, RunningPlatform } from '../platform.ts';
import { DEMO_ASKS, WORKED_ASK } from './demo.ts';
import { ask, askLines, converse, demonstrate, type Session, showWorked } from './receive.ts';

/** Starts what the words on the command line ask for; it ends by itself. Throws where nobody sits at this machine. */
export async function openTerminal(context: PlatformContext): Promise<RunningPlatform> {
  const { config, console: person } = context;
  if (!person) throw new Error('The terminal cannot start without somebody at it.');
  const { units, decimal, currency, pictures } = config;
  const session: Session = {
    answer: context.answer,
    preferences: { units, decimal, currency },
    input: person.input,
    output: person.output,
    pictures,
    // A file is only made where it is asked for: it goes where the asker is, if nowhere else.
    files: { folder: pictures ?? process.cwd(), makeFile: context.makeFile },
  };
  return { routes: [], connected: () => true, ended: run(person.words, session, context) };
}

async function run([mode, ...words]: readonly string[], session: Session, context: PlatformContext): Promise<number> {
  if (mode === 'demo') {
    const { fault } = context.ports;
    // It touches nothing that anybody keeps.
    const alone = { ...session, answer: (request: Request) => answer(request, context.catalog, { fault }) };
    // One of the demo's asks goes wrong on purpose: only a fault of ours is a failure.
    return (await demonstrate(DEMO_ASKS, alone)) === 1 ? 1 : 0;
  }
  if (mode === 'ask') return askOnce(words, session);
  if (!session.input.isTTY) return lines(session);
  await talk(session, context);
  return 0;
}

/** A conversation at a prompt. Loaded here: a single answer does not need every command. */
async function talk(session: Session, { config, ports, commands: load }: PlatformContext): Promise<void> {
  const [{ suggest }, commands] = await Promise.all([import('../../chat/suggest.ts'), load()]);
  const { preferences } = session;
  await converse(WORKED_ASK, {
    ...session,
    commands,
    history: config.history,
    suggest: (asker, command, option, typed) =>
      suggest(asker, { command, option, commands, preferences }, typed, ports),
  });
}

/** The lines that come in. */
async function lines(session: Session): Promise<number> {
  const code = await askLines(session);
  if (code === undefined) await showWorked(WORKED_ASK, session);
  return code ?? 0;
}

async function askOnce(words: readonly string[], session: Session): Promise<number> {
  const shown = { json: words.includes('--json'), all: words.includes('--all') };
  const text = words.filter((word) => !['--json', '--all'].includes(word)).join(' ');
  if (text !== '') return ask(text, session, shown);
  const code = session.input.isTTY ? undefined : await askLines(session, shown);
  if (code === undefined) process.stderr.write(`${TERMINAL.usage}\n`);
  return code ?? 2;
}
