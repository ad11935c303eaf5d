/** Asks from a terminal: typed at a prompt, piped in line by line, or given on the command line. */

import { randomUUID } from 'node:crypto';
import { appendFileSync, readFileSync } from 'node:fs';
import { createInterface } from 'node:readline/promises';
import type { Readable, Writable } from 'node:stream';
import type { Asker } from '../../accounts/records.ts';
import type { Command } from '../../chat/command.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Request } from '../../chat/ports.ts';
import { fullName, listed, optionsOf, typedName } from '../../input/command-shape.ts';
import { TERMINAL } from '../../text/chat-text.ts';
import { HISTORY, wrap } from './render.ts';
import { type ExitCode, type FilesTo, type Screen, send, terminalPage, worst } from './send.ts';

// The terminal's history: one ask a line, in a file the asker chose, or nowhere.

/** Earlier asks, the latest first; none without a file. */
export function readHistory(file: string): string[] {
  if (file === '') return [];
  try {
    return readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => line !== '')
      .slice(-HISTORY)
      .reverse();
  } catch (cause) {
    if (isMissing(cause)) return [];
    throw cause;
  }
}

/** Adds an ask at the end of the file. */
export function keepHistory(file: string, line: string): void {
  if (file !== '') appendFileSync(file, `${line}\n`, { mode: 0o600 });
}

function isMissing(cause: unknown): boolean {
  return cause instanceof Error && 'code' in cause && cause.code === 'ENOENT';
}

// What a terminal completes: command names, the options of the command typed, and what is likely to be told
// for one.

/** Completions of a line in the form that node:readline wants: whole words, and the word they complete. */
export function completions(line: string, commands: readonly Command[]): [string[], string] {
  const command = commandIn(line, commands)?.command;
  if (!command) {
    const names = [...new Set(listed(commands).flatMap((known) => [fullName(known), typedName(known)]))];
    return [names.filter((name) => name.startsWith(line)).map((name) => `${name} `), line];
  }
  const options = optionsOf(command);
  const value = valueTyped(line, commands);
  if (value) {
    const { choices = [] } = options.find(({ name }) => name === value.option) ?? {};
    return [choices.filter((choice) => choice.startsWith(value.typed)), value.typed];
  }
  const word = /(?<![\p{L}-])[\p{L}-]*$/u.exec(line)?.[0] ?? '';
  const left = options.map(({ name }) => name).filter((name) => !line.includes(`${name}:`) && name.startsWith(word));
  return [left.map((name) => `${name}: `), word];
}

/** The option whose value is being typed, and what of it is; a name that may stand without its option's is one too. */
export function valueTyped(
  line: string,
  commands: readonly Command[],
): { readonly command: Command; readonly option: string; readonly typed: string } | undefined {
  const found = commandIn(line, commands);
  if (!found) return undefined;
  const { command, rest } = found;
  const options = optionsOf(command);
  const value = /(?:^|[\s,])([\p{L}-]+):([^:,]*)$/u.exec(line);
  const given = options.find(({ name }) => name === value?.[1]);
  if (given && value) return { command, option: given.name, typed: value[2]?.trimStart() ?? '' };
  const [first] = options;
  return first?.names && !/[:,]/.test(rest) ? { command, option: first.name, typed: rest } : undefined;
}

function commandIn(line: string, commands: readonly Command[]) {
  for (const command of commands) {
    const name = [fullName(command), typedName(command)].find((one) => line.startsWith(`${one} `));
    if (name !== undefined) return { command, rest: line.slice(name.length + 1).trimStart() };
  }
  return undefined;
}

/** Whoever sits at this machine. */
const ASKER: Asker = { platform: 'terminal', id: 'local' };

/** The conversation at the prompt, and of single lines given on the command line. */
const PROMPT = 'prompt';

type Suggest = (asker: Asker, command: Command, option: string, typed: string) => Promise<readonly string[]>;

/** What a terminal session is given by main. */
export interface Session {
  readonly answer: (request: Request) => AsyncIterable<Answer>;
  readonly preferences: Request['preferences'];
  readonly input: Readable & { readonly isTTY?: boolean };
  readonly output: Screen['output'];
  /** Folder for the pictures of answers; none are saved without one. */
  readonly pictures?: string | undefined;
  /** Where the files of answers go. */
  readonly files?: FilesTo;
}

/** A session at a prompt that completes what is typed. */
export interface Conversation extends Session {
  readonly commands: readonly Command[];
  /** What could be typed for an option; only its own words without it. */
  readonly suggest?: Suggest;
  /** File for the history; empty for none. */
  readonly history: string;
}

/** How answers are shown: as JSON for a program, or with every section. */
export interface Shown {
  readonly json?: boolean;
  readonly all?: boolean;
}

/** Answers one line; `place` names the conversation that it is part of. */
export function ask(text: string, session: Session, shown: Shown = {}, place = PROMPT): Promise<ExitCode> {
  const { answer, preferences, output, pictures, files } = session;
  const { json = false, all = false } = shown;
  return send(answer({ asker: ASKER, preferences, text, place }), { output, json, all, pictures, files });
}

/**
 * Answers every line of the input that is not empty, in order; the exit code is the worst. Undefined when there was none.
 * The lines are one conversation, and an empty line begins a new one.
 */
export async function askLines(session: Session, shown: Shown = {}): Promise<ExitCode | undefined> {
  const codes: ExitCode[] = [];
  let place = randomUUID();
  for await (const line of createInterface({ input: session.input, crlfDelay: Number.POSITIVE_INFINITY })) {
    if (line.trim() === '') {
      place = randomUUID();
      continue;
    }
    if (!shown.json && codes.length > 0) session.output.write('\n');
    codes.push(await ask(line, session, shown, place));
  }
  return codes.length === 0 ? undefined : worst(codes);
}

/** One worked answer, then a prompt with history and completion until the input ends or `quit`. */
export async function converse(worked: string, session: Conversation): Promise<void> {
  await showWorked(worked, session);
  const { output } = session;
  session.output.write(`\n${wrap(TERMINAL.prompt, terminalPage(output).width).join('\n')}\n`);
  const prompt = createInterface({
    input: session.input,
    output: session.output as Writable,
    history: readHistory(session.history),
    historySize: HISTORY,
    removeHistoryDuplicates: true,
    completer: (line: string) => completed(line, session),
    prompt: terminalPage(output).colour ? '\u001b[1m>\u001b[22m ' : '> ',
  });
  let open = true;
  prompt.once('close', () => {
    open = false;
  });
  prompt.prompt();
  for await (const line of prompt) {
    const text = line.trim();
    if (['quit', 'exit', 'bye'].includes(text.toLowerCase())) break;
    if (text !== '') {
      keepHistory(session.history, text);
      await ask(text, session);
    }
    // The input may end while an ask is answered: a closed prompt cannot ask again.
    if (open) prompt.prompt();
  }
  prompt.close();
  session.output.write(`${TERMINAL.bye}\n`);
}

/** Completions of a line: names, or what this asker is likely to tell for the option that is being typed. */
async function completed(line: string, { commands, suggest }: Conversation): Promise<[string[], string]> {
  const value = suggest && valueTyped(line, commands);
  if (!value) return completions(line, commands);
  const { command, option, typed } = value;
  const likely = await suggest(ASKER, command, option, typed);
  return [likely.filter((text) => text.toLowerCase().startsWith(typed.toLowerCase())), typed];
}

/** The worked answer that greets: the request, then its answer. A greeting leaves no files behind. */
export async function showWorked(worked: string, session: Session): Promise<void> {
  const { output } = session;
  output.write(`${wrap(TERMINAL.greeting, terminalPage(output).width).join('\n')}\n\n> ${worked}\n`);
  await ask(worked, { ...session, pictures: undefined });
}

/** A whole conversation, each ask shown before its answer. */
export async function demonstrate(asks: readonly string[], session: Session): Promise<ExitCode> {
  const codes: ExitCode[] = [];
  for (const text of asks) {
    session.output.write(`${codes.length > 0 ? '\n' : ''}> ${text}\n`);
    codes.push(await ask(text, session));
  }
  return worst(codes);
}
