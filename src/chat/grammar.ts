/** The one text grammar: a command, then `name: value` pairs in any order, the first unlabelled text to the first option; else a sentence. */

import { closest, distance } from 'fastest-levenshtein';
import { fullName, listed, typedName } from '../input/command-shape.ts';
import { DEFAULT_PREFERENCES, type Preferences } from '../input/reading.ts';
import { parseSentence, type Sentence } from '../language/old/plain.ts';
import { isTalk } from '../language/old/plain-sentence.ts';
import { jobWithout, projectSaid } from '../language/old/project-said.ts';
import type { Problem } from '../reply/reply.ts';
import { commandMissing, emptyAsk, quoted, readingStopped, unknownCommand } from '../text/chat-text.ts';
import { nothingRequested } from '../text/language-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import type { Command } from './command.ts';
import {
  behindName,
  type Looseness,
  looseness,
  type Parsed,
  pairStart,
  parseOptions,
  trimmed,
} from './command-line.ts';
import type { Request } from './ports.ts';
import { meant } from './sentences.ts';
import type { UserState } from './user-state.ts';

/**
 * Takes a line apart: by the grammar, and as a sentence where it begins with no command, or where what follows one has no
 * option's name and is not read by its first option, or tells of a plank as well. A line that takes too long is a Problem. Never throws.
 */
export function parseLine(
  line: string,
  commands: readonly Command[],
  preferences: Preferences = DEFAULT_PREFERENCES,
): Parsed {
  const late = (): Parsed => ({ ok: false, problems: [readingStopped(line)] });
  return readInTime(() => lineParsed(line, commands, preferences), late);
}

function lineParsed(line: string, commands: readonly Command[], preferences: Preferences): Parsed {
  const text = line.trim().replace(/^\/+/, '');
  const found = findCommand(text, commands);
  if ('problem' in found) {
    const { problem, sentence: may, owner } = found;
    const sentence = may ? parseSentence(text, commands, preferences) : undefined;
    const loose = !owner || looseness(owner, parseOptions(owner, text), preferences);
    return sentence && understood(sentence, loose, text) ? sentence : { ok: false, problems: [problem] };
  }
  const { command, rest } = found;
  const parsed = parseOptions(command, rest);
  // What is told to a project is kept, and no other ask that it could be too.
  if (command.group === 'project') return parsed;
  const loose =
    parsed.ok && [...parsed.optionTexts.values()][0] === trimmed(rest) && looseness(command, parsed, preferences);
  if (!loose) return parsed;
  const behind = ['planks', 'tape'].includes(command.name) ? trimmed(rest) : text;
  const sentence = parseSentence(behind, commands, preferences, command);
  return sentence && understood(sentence, loose, behind) ? sentence : parsed;
}

/** Whether a line is better taken as the sentence: where rooms alone would be read, only if a plank is told among them. */
function understood(sentence: Sentence<Command>, loose: Looseness | true, text: string): boolean {
  if (loose === undefined) return false;
  if (loose !== 'read') return loose === true || sentence.ok || sentence.read;
  if (sentence.ok) return sentence.optionTexts.has('plank');
  const [{ option, got }] = sentence.problems;
  return option === 'plank' && sentence.read && got !== quoted(text);
}

interface Unfound {
  readonly problem: Problem;
  /** Whether the line may be a sentence, and no command misspelt or left out. */
  readonly sentence: boolean;
  /** The command whose option begins the line. */
  readonly owner?: Command;
}

function findCommand(text: string, commands: readonly Command[]): { command: Command; rest: string } | Unfound {
  if (text === '') return { problem: emptyAsk(), sentence: false };
  const words = /^([\p{L}-]+)(?:\s+([\p{L}-]+))?/u.exec(text.toLowerCase());
  const [first, second] = [words?.[1] ?? '', words?.[2] ?? ''];
  for (const command of commands) {
    const named = fullName(command);
    if (`${first} ${second}` === named) return { command, rest: behindName(text, words?.[0].length ?? 0) };
  }
  const single = commands.find((command) => typedName(command) === first);
  if (single) return { command: single, rest: behindName(text, first.length) };
  const options = (command: Command) => text.search(pairStart(Object.keys(command.options.shape)));
  const owner = commands.find((command) => options(command) === 0);
  if (owner) return { problem: commandMissing(text, typedName(owner)), sentence: true, owner };
  const names = listed(commands).flatMap((command) => [fullName(command), typedName(command)]);
  const grouped = commands.some((command) => command.group === first);
  const word = grouped ? `${first} ${second}`.trim() : first;
  const near = word === '' || isTalk(first) ? undefined : closest(word, names);
  const likely = near !== undefined && distance(word, near) <= (word.length <= 4 ? 1 : 2) ? near : undefined;
  if (likely === undefined) return { problem: nothingRequested(text), sentence: true };
  const rest = text.slice(grouped ? words?.[0].length : first.length).trimStart();
  const short = rest.split(/\s+/).length <= 2;
  const sentence = !short && !commands.some((command) => options(command) >= 0);
  return { problem: unknownCommand(text, word, likely, rest, listed(commands).map(fullName)), sentence };
}

/** Whether an option's name and its colon stand anywhere in a text: then it is a line, whatever is wrong with it. */
function hasOptions(text: string, commands: readonly Command[]): boolean {
  return commands.some((command) => text.search(pairStart(Object.keys(command.options.shape))) >= 0);
}

/** The command that a line begins with; undefined where it begins with none. */
export function commandTyped(line: string, commands: readonly Command[]): Command | undefined {
  const found = findCommand(line.trim().replace(/^\/+/, ''), commands);
  return 'command' in found ? found.command : found.owner;
}

/** What a text is read for: its commands, and what its asker keeps. */
export interface Reader {
  readonly commands: readonly Command[];
  readonly access: unknown;
  readonly holdings: Pick<UserState, 'preferences' | 'project' | 'named'>;
}

/** The line that a text says, where it is said of a project, and that line taken apart. */
export interface TextParsed {
  readonly said: string | undefined;
  readonly parsed: Parsed;
}

/** The line that a text says of the project in use; undefined where it says nothing of it. */
export function saidOfProject(
  text: string,
  commands: readonly Command[],
  { preferences, project, named = project }: Reader['holdings'],
): string | undefined {
  return projectSaid(text, commands, preferences, named);
}

/** A line typed for us, or somebody's message. Where it takes too long, that is the Problem. */
export function parseText(
  { commands, access, holdings }: Reader,
  text: string,
  written: Request['written'],
): TextParsed {
  const { preferences, project } = holdings;
  return readInTime(
    () => {
      // Somebody's message was not typed for us: nothing in it changes what anybody keeps.
      const said = access && written !== 'message' ? saidOfProject(text, commands, holdings) : undefined;
      const read = parse(said ?? text, written, preferences, commands);
      const typed = written === 'message' ? undefined : commandTyped(text, commands);
      // Options make it a line, whatever is wrong with it; a sentence may hold a colon all the same.
      const line = hasOptions(text, commands) && (typed !== undefined || !read.ok);
      const first = said === undefined && !line ? meant(text, read, commands, preferences, typed) : read;
      const news =
        access && !project && written !== 'message' && !read.ok && !read.partly ? jobWithout(text) : undefined;
      return { said, parsed: news === undefined ? first : parse(news, written, preferences, commands) };
    },
    () => ({ said: undefined, parsed: { ok: false, problems: [readingStopped(text)] } }),
  );
}

/** A line typed for us by the grammar; somebody's message as a sentence. */
function parse(
  text: string,
  written: Request['written'],
  preferences: Preferences,
  commands: readonly Command[],
): Parsed {
  if (written !== 'message') return parseLine(text, commands, preferences);
  return parseSentence(text, commands, preferences) ?? { ok: false, problems: [nothingRequested(text)] };
}
