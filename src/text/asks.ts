/** The texts about an ask as a whole: an unknown command, a misspelt or missing option, a line too long. */

import type { Problem } from '../reply/reply.ts';

const GOT_MOST = 120;

/** What was read, short enough to be said back. */
export function quoted(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  const characters = [...line];
  return characters.length > GOT_MOST ? `${characters.slice(0, GOT_MOST).join('')}…` : line;
}

/** A text as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function emptyAsk(): Problem {
  return {
    option: 'ask',
    got: '',
    expected: 'Ask in your own words, or begin with a command: planks, tape, safety, sources or help.',
  };
}

export function unknownCommand(
  text: string,
  word: string,
  near: string | undefined,
  rest: string,
  names: readonly string[],
): Problem {
  return {
    option: 'ask',
    got: quoted(text),
    expected: near
      ? `There is no command “${word}”; the nearest is “${near}”.`
      : `An ask starts with a command: ${names.join(', ')}.`,
    ...(near ? { fix: `${near} ${rest}`.trim() } : {}),
  };
}

/** A line that begins with an option. */
export function commandMissing(text: string, command: string): Problem {
  return {
    option: 'ask',
    got: quoted(text),
    expected: `An ask starts with its command, here “${command}”.`,
    fix: `${command} ${text}`,
  };
}

export function toldTwice(option: string, before: string, value: string, fix: string): Problem {
  return {
    option: 'ask',
    got: quoted(`${before} … ${value}`),
    expected: `Tell ${option} once: it was read both as “${quoted(before)}” and as “${quoted(value)}”.`,
    fix,
  };
}

export function misspeltOption(got: string, near: string, fix: string): Problem {
  return {
    option: 'ask',
    got: quoted(got),
    expected: `There is no option “${got.replace(/(?<!\s)\s*:$/, '')}”; the nearest is “${near}”.`,
    fix,
  };
}

/** A name before a colon that is no option of the command. */
export function strangeOption(
  got: string,
  typed: string,
  command: string,
  names: readonly string[],
  fix: string,
): Problem {
  const name = typed.replace(/(?<!\s)\s*:$/, '');
  return {
    option: 'ask',
    got: quoted(got),
    expected: `“${command}” has no option “${name}”, so it can’t tell what that is for. Its options: ${names.join(', ')}.`,
    fix,
  };
}

export function missingOption(option: string, summary: string): Problem {
  return { option, got: '', expected: `Not told yet: ${summary.charAt(0).toLowerCase()}${summary.slice(1)}.` };
}

export function askTooLong(length: number, most: number): Problem {
  return {
    option: 'ask',
    got: `${length} characters`,
    expected: `An ask is at most ${most} characters; ask in parts.`,
  };
}

/** What an asker is told of a fault, or of a store that does not answer. */
export function sayFault(reference: string, outage: boolean): string {
  if (outage) {
    return `Not saved: what keeps your project does not answer just now. What was saved before is safe; try again in a minute. Reference: ${reference}.`;
  }
  return `Something went wrong on our side; nothing of yours is lost. Ask again, and if it stays, give this reference: ${reference}.`;
}
