/** The text grammar: a command, then `name: value` pairs in any order, text without a name for the first option; anything else is a sentence. */

import { closest, distance } from 'fastest-levenshtein';
import { fullName, listed, typedName } from '../input/command-shape.ts';
import { roomNamedIn } from '../input/parse-place.ts';
import { DEFAULT_PREFERENCES, type Preferences } from '../input/reading.ts';
import { jobLineAlone, projectLine } from '../language/project-lines.ts';
import { isTalk, parseSentence, type Sentence } from '../language/sentence.ts';
import type { Problem } from '../reply/reply.ts';
import { commandMissing, emptyAsk, quoted, readingStopped, unknownCommand } from '../text/chat-text.ts';
import { nothingRequested, READER } from '../text/reader-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import type { Command } from './command.ts';
import {
  behindName,
  type Looseness,
  looseness,
  type Parsed,
  type ParsedCommand,
  pairStart,
  parseOptions,
  trimmed,
} from './command-line.ts';
import type { Request } from './ports.ts';
import { isLine, isQuestion, meant } from './sentences.ts';
import type { UserState } from './user-state.ts';

/**
 * Parses a line as a command, or as a sentence if it starts with no command, or if the text after the command names no
 * option and its first option can't read it or it also describes a plank. A line that takes too long is a Problem.
 * Never throws.
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
  const text = line
    .trim()
    .replace(/^\/+/, '')
    .replace(/^([a-z]{2,20})[?!.]{1,3}$/i, '$1')
    .replace(/^help (?:me|pls|please)[?!.]{0,3}$/i, 'help');
  const found = findCommand(text, commands);
  if ('problem' in found) {
    const { problem, sentence: may, owner } = found;
    const sentence = may ? parseSentence(text, commands, preferences) : undefined;
    const loose = !owner || looseness(owner, parseOptions(owner, text), preferences);
    return sentence && understood(sentence, loose, text) ? sentence : { ok: false, problems: [problem] };
  }
  const { command, rest } = found;
  const parsed = parseOptions(command, rest);
  // Text for a project is saved as typed and never read as another request.
  if (command.group === 'project') return parsed;
  const loose =
    parsed.ok && [...parsed.optionTexts.values()][0] === trimmed(rest) && looseness(command, parsed, preferences);
  if (!loose) return parsed;
  const behind = ['planks', 'tape'].includes(command.name) ? trimmed(rest) : text;
  const sentence = parseSentence(behind, commands, preferences, command);
  return sentence && understood(sentence, loose, behind) ? sentence : parsed;
}

/** Whether the line is better read as a sentence. If it reads as rooms, only when it also describes a plank. */
function understood(sentence: Sentence<Command>, loose: Looseness | true, text: string): boolean {
  if (loose === undefined) return false;
  if (loose !== 'read') return loose === true || sentence.ok || sentence.read;
  if (sentence.ok) return sentence.optionTexts.has('plank');
  const [{ option, got }] = sentence.problems;
  return option === 'plank' && sentence.read && got !== quoted(text);
}

interface Unfound {
  readonly problem: Problem;
  /** Whether the line may be a sentence, rather than a command misspelled or left out. */
  readonly sentence: boolean;
  /** The command whose option starts the line. */
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

/** Whether an option's name and its colon occur anywhere: then it is a command line, whatever else is wrong with it. */
function hasOptions(text: string, commands: readonly Command[]): boolean {
  return commands.some((command) => text.search(pairStart(Object.keys(command.options.shape))) >= 0);
}

export function commandTyped(line: string, commands: readonly Command[]): Command | undefined {
  const found = findCommand(line.trim().replace(/^\/+/, ''), commands);
  return 'command' in found ? found.command : found.owner;
}

/** What is needed to read a text: the commands, and what is saved for the user. */
export interface Reader {
  readonly commands: readonly Command[];
  readonly access: unknown;
  readonly holdings: Pick<UserState, 'preferences' | 'project' | 'named'>;
}

/** The project command that a sentence stands for, and that command parsed. */
export interface TextParsed {
  readonly said: string | undefined;
  readonly parsed: Parsed;
  /** The text if it was read as a sentence; of a follow-up, the sentence it goes on from. */
  readonly sentence?: string | undefined;
  /** Units that the answer was requested in. */
  readonly units?: Preferences['units'] | undefined;
  /** A figure said back: the conversation goes on from what it was of. */
  readonly aside?: true | undefined;
  /** Only the lead of the answer is wanted. */
  readonly short?: true | undefined;
}

/** Undefined if the text says nothing about the open project. */
export function projectLineFor(
  text: string,
  commands: readonly Command[],
  { preferences, project, named = project }: Reader['holdings'],
): string | undefined {
  return projectLine(text, commands, preferences, named);
}

/** A line typed for the bot, or someone's message. If it takes too long, that is the Problem. */
export function parseText(
  { commands, access, holdings }: Reader,
  text: string,
  written: Request['written'],
): TextParsed {
  const { preferences, project } = holdings;
  return readInTime<TextParsed>(
    () => {
      // A message that wasn't typed for the bot never changes anything saved.
      const said = access && written !== 'message' ? projectLineFor(text, commands, holdings) : undefined;
      const read = parse(said ?? text, written, preferences, commands);
      const typed = written === 'message' ? undefined : commandTyped(text, commands);
      // Options make it a command line, though a sentence may contain a colon too.
      const line = hasOptions(text, commands) && (typed !== undefined || !read.ok);
      const heard = said === undefined && !line ? meant(text, read, commands, preferences, typed) : read;
      const first = project && said === undefined ? ofRoomsNamed(heard, text, project.rooms) : heard;
      const news =
        access && !project && written !== 'message' && !read.ok && !read.partly && !(first.ok && isQuestion(text))
          ? jobLineAlone(text)
          : undefined;
      const sentence = line || (typed && (typed.name === 'tape' || isLine(text, typed))) ? undefined : text;
      const reckoned = first.ok && fullName(first.command) === 'tally';
      if (news === undefined || reckoned) return { said, parsed: first, sentence };
      // A rule of the handbook helps somebody without a project more than a place to keep the news.
      if (first.ok && fullName(first.command) === 'handbook')
        return { said, parsed: { ...first, assumed: [...(first.assumed ?? []), READER.unkept] }, sentence };
      const damage = news.startsWith('project found ') ? entryParsed(FOUND_ENTRY, commands) : undefined;
      if (damage) return { said, parsed: { ...damage, assumed: [READER.unkept] }, sentence };
      return { said, parsed: parse(news, written, preferences, commands), sentence };
    },
    () => ({ said: undefined, parsed: { ok: false, problems: [readingStopped(text)] } }),
  );
}

/** A request that lacks its rooms, with those of the project that the text names. */
function ofRoomsNamed(parsed: Parsed, text: string, rooms: readonly { readonly name: string }[]): Parsed {
  const { partly } = parsed.ok ? {} : parsed;
  const option = partly?.missing.find((one) => one === 'room' || one === 'area');
  const named = rooms.filter(({ name }) => roomNamedIn(text, [name]) !== undefined);
  if (parsed.ok || !partly || option === undefined || named.length === 0) return parsed;
  const optionTexts = new Map([...partly.optionTexts, [option, named.map(({ name }) => name).join('; ')]]);
  return { ...parsed, partly: { ...partly, optionTexts } };
}

/** What to do about something found under a floor. */
const FOUND_ENTRY = 'damage-found';

function entryParsed(id: string, commands: readonly Command[]): ParsedCommand | undefined {
  const command = commands.find((one) => fullName(one) === 'handbook');
  return command && { ok: true, command, optionTexts: new Map([['entry', id]]) };
}

function parse(
  text: string,
  written: Request['written'],
  preferences: Preferences,
  commands: readonly Command[],
): Parsed {
  if (written !== 'message') return parseLine(text, commands, preferences);
  return parseSentence(text, commands, preferences) ?? { ok: false, problems: [nothingRequested(text)] };
}
