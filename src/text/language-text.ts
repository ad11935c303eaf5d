/** Text about sentences: how they were understood, what is asked back, and what can't be computed yet. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';

export function sentenceTooLong(most: number): string {
  return `At most ${most} characters are read as a sentence: send it in parts, or use options such as “room:” and “plank:”.`;
}

export function speltNote(got: string, right: string): string {
  return `“${got}” read as “${right}”`;
}

export function aboutNote(): string {
  return '“about” is left out: the numbers count as exact';
}

export function plankByNoWord(typed: string): string {
  return `${typed} read as the size of a plank`;
}

export function repeatedNote(got: string): string {
  return `“${got}”: using the sizes you gave for them`;
}

export function builtInNote(sides: string): string {
  return `Assuming no plank goes under the ${sides}, which is left out as a corner.`;
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
  return `${topic} isn’t something I work out yet: this answer is about the planks`;
}

export function roomNotGiven(): string {
  return 'Which room? Give its length and width.';
}

export function roomRole(typed: string): string {
  return `Is ${typed} the size of a room or of a plank? Give the room’s length and width.`;
}

export function roomEither(): string {
  return 'You gave two sizes with “or” between them. Which one do you mean?';
}

export function roomCounts(got: string): string {
  return `“${got}” and the sizes you gave don’t agree: give each room’s length and width.`;
}

export function roomUnsized(name: string): string {
  return `How large is “${name}”? Give its length and width, or leave it out.`;
}

export function roomTurned(got: string): string {
  return `“${got}” may change the floor: give just the sides of the part you’ll lay.`;
}

export function plankNotGiven(): string {
  return 'Which plank? Give its width and length, and how many are in a box or what it covers.';
}

export function plankRole(typed: string): string {
  return `Is ${typed} the size of the plank? Give its width and length with a unit, and what is in a box.`;
}

export function plankUnit(typed: string): string {
  return `${typed} has no unit, and no plank is that large in inches: add mm, cm or in.`;
}

export function plankTwice(one: string, other: string): string {
  return `You gave two plank sizes, ${one} and ${other}. Ask about one at a time.`;
}

export function layoutUnknown(option: string, got: string): string {
  return option === 'pattern'
    ? `“${got}” isn’t a pattern I know. I know stair-step, half, thirds, offcut-first and scattered.`
    : `I’m not sure about ${option} (“${got}”): give it once, with its value.`;
}

export function unplacedFigure(got: string): string {
  return `What is “${got}” the size of? Put the option’s name in front, or leave it out.`;
}

/** A topic without a command; `optionTexts` is what was read of it. */
export function notYet(text: string, topic: string, optionTexts: ReadonlyMap<string, string>): Problem {
  const read = [...optionTexts].map(([option, value]) => `${option} ${value}`).join(', ');
  return {
    option: 'ask',
    got: quoted(text),
    expected: `Read as an ask about ${topic}${read === '' ? '' : `: ${read}`}. That is not worked out here yet; planks, tape sums, safety and sources are.`,
  };
}

/**
 * A topic where too much depends on the details to read them from a sentence; `fix` is the line with all of them, if
 * they were given.
 */
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

export function readAsCommand(command: string, what: string): string {
  return `read as “${command}”: ${what}`;
}

export function nothingRequested(text: string): Problem {
  return {
    option: 'ask',
    got: quoted(text),
    expected:
      'I didn’t understand that. Ask how many boxes a room takes, with its length and width and what the box says. Or ask about trim, tear-out, the subfloor or safety, or type “help”.',
  };
}

/** Shown right below the headline of an answer with an example plank. */
export function exampleTaken(plank: string): string {
  return `With an example plank, not yours: ${plank}. Put in your own plank’s size and box before you buy.`;
}

/** With the whole line to type if there is one. */
export function questionBack(option: string, got: string, expected: string, fix: string | undefined): Problem {
  return { option, got: quoted(got), expected, fix };
}

export function priceNote(price: string): string {
  return `Assuming the price is ${price}.`;
}

export function cartonAreaNote(area: string): string {
  return `Assuming a box covers ${area}.`;
}
