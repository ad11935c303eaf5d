/** Text about sentences: how they were understood, what is asked for or back, and replies to small talk. */

import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { quoted } from './chat-text.ts';

/** By the missing option. */
export const ASK_FOR: Readonly<Record<string, string>> = {
  room: 'What are the room’s length and width?',
  area: `How large is the floor? Give its length and width, or ${byUnits('square feet', 'square meters')}.`,
  box: 'What does one box cover, or how many planks are in it?',
  plank: 'Which plank? Give its width and length, and what is in a box.',
  planks: 'Which planks? Give each one’s size and what is in a box, with “;” between them.',
  have: `How many boxes, or ${byUnits('square feet', 'square meters')}, do you have?`,
  doorways: 'How wide is each doorway, and what floor is on the other side?',
  readings: `How deep is the low spot, and over what length? For example ${byUnits('1/4 in over 6 ft', '6 mm over 2 m')}.`,
  squeaks: 'How large is the noisy area? Give its two sides.',
  moisture: 'What did the meter or test read, and on what: wood, or concrete?',
  weight: 'What does one box weigh?',
  damage: 'How large is the bad spot, and how far from the left and bottom walls?',
  sum: `Which lengths? For example ${byUnits('12 ft 6 in + 3 ft 4 1/2 in', '3.80 m + 1.05 m')}.`,
};

export const READER = {
  squareRoom: (side: string) =>
    `Assuming one square room, ${side} a side; give each room’s length and width for its strips`,
  anyCount: (count: number) => `Assuming ${count} planks a box; the rows are the same with any number.`,
  /** The usual extra where planks run diagonally, as an option. */
  diagonalExtra: '15%',
  /** The usual extra for straight rows, as an option. */
  usualExtra: '10%',
  /** A common inside door, as an option. */
  usualDoor: '32 in',
  doorsTaken: 'Assuming each door is 32 in wide; say the width if it isn’t.',
  rowEnd: (row: number) =>
    `Where does row ${row} end? Measure the last piece, or from the starting wall to where it stops, for example ${byUnits('31 1/4 in', '79.5 cm')}.`,
  plankSize: 'How wide and how long is one plank?',
  before: (what: string) => `Using what you said before: ${what}.`,
  unkept: 'Not saved yet: type “project new” and a name for it, then say it again.',
  unclear: 'I’m not sure which one you mean:',
  maybe: 'Did you mean one of these?',
  nothing: 'I didn’t understand that. Say it with the sizes, or pick one of these:',
  change: (what: string) => `Should I do this: ${what}?`,
  examples: [
    { label: 'Boxes for a room', ask: 'help planks' },
    { label: 'Questions and answers', ask: 'handbook' },
    { label: 'Help', ask: 'help' },
  ],
} as const;

/** What a command is for, in the words of someone who asks. */
export const INTENT_WORDS: Readonly<Record<string, string>> = {
  'floor planks': 'Boxes of plank for your rooms, laid out exactly',
  'floor estimate': 'Boxes and cost by area',
  'floor enough': 'Whether what you have is enough',
  'floor area': 'How many square feet',
  'floor layout': 'How the rows of one room are laid',
  'floor guides': 'Laying guides for all rooms',
  'floor resume': 'Going on with a floor you began',
  'floor compare': 'Which of several planks',
  'trim list': 'Baseboard to buy, and how to cut it',
  'trim finish': 'Nails, caulk and paint for baseboard',
  'trim edges': 'Strips for doorways and stairs',
  'trim reset': 'Putting old baseboard back',
  'prep tearout': 'Taking out the old floor',
  'prep plan': 'What to do in which order',
  'prep squeaks': 'Screws for a squeaky floor',
  'prep level': 'Filler for low spots',
  'prep moisture': 'Whether the subfloor is dry enough',
  'prep patch': 'Patching the subfloor',
  'prep lift': 'How to lift a box',
  'prep carry': 'How many trips to carry it in',
  tape: 'Adding up lengths',
};

/** By option, what most often needs correcting first: the question after a wrong answer. */
export const CORRECT: Readonly<Record<string, string>> = {
  room: 'Is the size wrong? Type the right one, or say what you meant.',
  area: 'Is the size wrong? Type the right one, or say what you meant.',
  rooms: 'Is the size wrong? Type the right one, or say what you meant.',
  damage: 'Is the bad spot wrong? Type its right size and place, or say what you meant.',
  readings: 'Is the reading wrong? Type the right one, or say what you meant.',
  weight: 'Is the weight wrong? Type the right one, or say what you meant.',
  doorways: 'Is the doorway wrong? Type its right width, or say what you meant.',
  stairs: 'Is the count wrong? Type the right one, or say what you meant.',
  sum: 'Are the lengths wrong? Type the right ones, or say what you meant.',
  plank: 'Is the plank wrong? Type the right one, or say what you meant.',
};

/** After a wrong answer. */
export const WRONG = {
  /** The button, and what is typed. */
  label: 'That’s wrong',
  word: 'wrong',
  meant: 'Sorry. Which of these did you mean?',
  again: 'Sorry. What did you want to know? Say it with the sizes.',
  undo: 'Undo it',
  question: (title: string) => `the question “${title}”`,
  understood: (intent: string, values: readonly (readonly [string, string])[]) =>
    values.length === 0
      ? intent
      : `${intent}: ${values.map(([option, value]) => `${option.replaceAll('-', ' ')} ${value}`).join('; ')}`,
} as const;

export const SMALL_TALK = [
  'hello',
  'thanks',
  'angry',
  'other-trade',
  'chat',
  'start-over',
  'nothing-open',
  'language',
] as const;
export type SmallTalk = (typeof SMALL_TALK)[number];

interface Said {
  readonly lead: string;
  readonly line: string;
  readonly label?: string;
  readonly request?: string;
}

export const TALK_TEXT: Readonly<Record<SmallTalk, Said>> = {
  language: {
    lead: 'Sorry, I read English only. Numbers and sizes are fine as you write them.',
    line: `Try: boxes for ${byUnits('10x12 ft, 20 sq ft', '3 x 4 m, 2 m²')} a box`,
  },
  hello: {
    lead: 'Hi. I work out planks, trim and subfloor repairs for your floor.',
    line: `Try: how many boxes for a ${byUnits('12x14 room, planks 7x48, 23 sq ft', '3.6x4.2 m room, planks 180x1220 mm, 2.2 m²')} a box?`,
  },
  thanks: {
    lead: 'You’re welcome. Good luck with the floor.',
    line: 'Type “help” for what else I can work out.',
    label: 'Help',
    request: 'help',
  },
  angry: {
    lead: 'Sorry, that missed. What did you want to know?',
    line: `Say it in one sentence with the sizes, for example: boxes for ${byUnits('12x14, 24 sq ft', '3.6x4.2 m, 2.2 m²')} a box.`,
    label: 'Help',
    request: 'help',
  },
  'other-trade': {
    lead: 'That’s another trade’s work, so I don’t have an answer I’d stand behind.',
    line: 'I do floors: tear-out, subfloor, planks, trim. Type “help” to see how.',
    label: 'Help',
    request: 'help',
  },
  chat: {
    lead: 'I only know floors: tear-out, subfloor, planks and trim.',
    line: 'Try: which way should planks run in a hallway?',
    label: 'Help',
    request: 'help',
  },
  'start-over': {
    lead: 'Okay, starting over. What is the room’s length and width?',
    line: 'A project stays as it is; type “project show” to see it.',
  },
  'nothing-open': {
    lead: 'There’s no open answer to show more of.',
    line: `Ask first, for example: how many boxes for ${byUnits('12x14, 24 sq ft', '3.6x4.2 m, 2.2 m²')} a box?`,
  },
};

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

export function padNote(plank: string, pad: string): string {
  return `Assuming ${plank} for the plank plus ${pad} for the pad, per sq ft`;
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
