/** Text about sentences: how words were understood, what is asked back, and what can't be worked out yet. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';

export function sentenceTooLong(most: number): string {
  return `At most ${most} characters are read as a sentence: ask in parts, or with options such as “room:” and “plank:”.`;
}

export function speltNote(got: string, right: string): string {
  return `“${got}” read as “${right}”`;
}

export function aboutNote(): string {
  return 'figures given as “about” are taken as they stand';
}

export function plankByNoWord(typed: string): string {
  return `${typed} read as the size of a plank`;
}

export function repeatedNote(got: string): string {
  return `“${got}”: the sizes told are taken for them`;
}

export function wasteNote(percent: string): string {
  return `${percent} read as planks on top for mistakes; what cutting wastes is worked out row by row`;
}

export function areaNote(area: string): string {
  return `${area} read as what a carton covers`;
}

export function unusedNote(things: readonly string[]): string {
  return `not used here: ${[...new Set(things)].join(', ')}`;
}

export function laterNote(topic: string): string {
  return `${topic} is not worked out here yet: this answers the planks alone`;
}

export function roomNotGiven(): string {
  return 'Which room? Tell its two sides, or walk round its walls.';
}

export function roomRole(typed: string): string {
  return `Is ${typed} the size of a room or of a plank? Tell the room’s two sides.`;
}

export function roomEither(): string {
  return 'Two sizes are told with “or” between them: tell the one that is meant.';
}

export function roomCounts(got: string): string {
  return `“${got}” and the sizes told do not agree: tell two sides for each room.`;
}

export function roomUnsized(name: string): string {
  return `No size is told for “${name}”: tell its two sides, or leave it out.`;
}

export function roomTurned(got: string): string {
  return `“${got}” may change the floor: tell just the sides of what is to be laid.`;
}

export function plankNotGiven(): string {
  return 'Which plank? Tell its width and length, and how many or what area a carton holds.';
}

export function plankRole(typed: string): string {
  return `Is ${typed} the size of the plank? Tell its width and length with a unit, and what a carton holds.`;
}

export function plankUnit(typed: string): string {
  return `${typed} has no unit, and no plank is that large in inches: tell it with mm, cm or in.`;
}

export function plankTwice(one: string, other: string): string {
  return `Two plank sizes are told, ${one} and ${other}: ask about one at a time.`;
}

export function layoutUnknown(option: string, got: string): string {
  return option === 'pattern'
    ? `“${got}” is not a pattern worked out here: stair-step, half, thirds, offcut-first and scattered are.`
    : `What is told of ${option} is not plain (“${got}”): tell it once, with its value.`;
}

export function unplacedFigure(got: string): string {
  return `It is not plain what “${got}” is the measure of: say it with its option’s name, or leave it out.`;
}

/** A topic that is understood and has no command yet; `told` is what was read of it. */
export function notYet(text: string, topic: string, optionTexts: ReadonlyMap<string, string>): Problem {
  const read = [...optionTexts].map(([option, value]) => `${option} ${value}`).join(', ');
  return {
    option: 'ask',
    got: quoted(text),
    expected: `Read as an ask about ${topic}${read === '' ? '' : `: ${read}`}. That is not worked out here yet; planks, tape sums, safety and sources are.`,
  };
}

/** A topic whose options decide too much to be taken from a sentence; `fix` is the line with all of them, where they were told. */
export function byOptions(
  text: string,
  topic: string,
  optionTexts: ReadonlyMap<string, string>,
  missing: readonly string[],
  fix: string | undefined,
): Problem {
  const read = [...optionTexts].map(([option, value]) => `${option} ${value}`).join(', ');
  return {
    option: 'ask',
    got: quoted(text),
    expected: `Read as an ask about ${topic}${read === '' ? '' : `: ${read}`}. Too much hangs on it to take it from a sentence: ${missing.length > 0 ? `fill in its form, or type it with its options. Still needed: ${missing.join('; ')}.` : 'check this line, and type it.'}`,
    fix,
  };
}

/** A sentence taken for a command, and what it was taken to say. */
export function readAsCommand(command: string, what: string): string {
  return `read as “${command}”: ${what}`;
}

/** A sentence in which nothing is asked. */
export function nothingRequested(text: string): Problem {
  return {
    option: 'ask',
    got: quoted(text),
    expected:
      'Nothing to work out was found in this. Ask how many boxes a room takes, with its length and width and what a box of planks says; or about trim, tear-out, the subfloor, a tape sum or safety; or type “help”.',
  };
}

/** Said right below the headline of an answer that was worked out with a plank of ours. */
export function exampleTaken(plank: string): string {
  return `With an example plank, not yours: ${plank}. Put the size and carton of yours in its place before you buy.`;
}

/** What is asked back, with the whole line to type where there is one. */
export function questionBack(option: string, got: string, expected: string, fix: string | undefined): Problem {
  return { option, got: quoted(got), expected, fix };
}

export function priceNote(price: string): string {
  return `Taking the price as ${price}.`;
}

export function cartonAreaNote(area: string): string {
  return `Taking a box to cover ${area}.`;
}
