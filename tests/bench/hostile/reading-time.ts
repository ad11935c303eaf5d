/** How long reading takes by itself, in processor time: all readers of a line, and every option of the command that it names. */

import { type Command, readOptions } from '../../../src/chat/command.ts';
import { commandTyped, parseLine } from '../../../src/chat/grammar.ts';
import { screenedLine } from '../../../src/chat/hazard-answers.ts';
import { DEFAULT_PREFERENCES } from '../../../src/input/reading.ts';
import { jobLineAlone, projectLine } from '../../../src/language/project-lines.ts';
import { readSentence } from '../../../src/language/sentence.ts';
import { cpuWithin } from '../../reading/cpu.ts';

/** Reads a line as a request is read, but for what is kept of its asker. */
export function readAll(line: string, commands: readonly Command[]): void {
  screenedLine(line);
  projectLine(line, commands, DEFAULT_PREFERENCES, { rooms: [], picks: {} });
  jobLineAlone(line);
  readSentence(line, DEFAULT_PREFERENCES);
  const parsed = parseLine(line, commands, DEFAULT_PREFERENCES);
  const command = parsed.ok ? parsed.command : commandTyped(line, commands);
  if (command) readOptions(command, parsed.ok ? parsed.optionTexts : new Map(), DEFAULT_PREFERENCES);
}

/** Milliseconds of processor time; infinite where reading came to no end. */
export function readingTime(line: string, commands: readonly Command[]): number {
  return cpuWithin(() => readAll(line, commands), 50);
}
