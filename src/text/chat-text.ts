/** Text around answers in chats and the terminal: buttons, busy and rate-limit notices, requests that could not be read. */

import type { Problem } from '../reply/reply.ts';

export const CHAT = {
  assumed: 'How it was read',
  cautions: 'Take care',
  sources: 'Sources',
  noSources: 'No outside figure was used for this answer.',
  problem: 'I need one more thing',
  read: 'Read',
  nothing: '(nothing)',
  type: 'For instance',
  refusal: 'This is not safe to work out from here',
  emergency: 'This comes first',
  call: 'Who to call',
  /** Buttons. */
  form: 'Fill in a form',
  suggested: 'Take the suggestion',
  example: 'Try with an example plank',
  again: 'Ask again',
  ask: 'You could also ask',
  change: 'Change a detail',
  show: 'Show to channel',
  poll: 'Ask the channel',
  pollQuestion: 'Which floor?',
  /** What people call the list they work from, by the kind of the answer's data. */
  sheets: { floor: 'Laying guide', trim: 'Cut list', patch: 'Cut list', plan: 'Every step' } as Readonly<
    Record<string, string>
  >,
  /** `how`: what to type. */
  gone: (how: string) =>
    `This answer is no longer kept, or is not yours. Ask again, such as with ${how}: the buttons of an answer work for a week.`,
  whole: 'The whole answer is in the attached file.',
  tables: 'The tables are attached for a spreadsheet as well.',
  morePictures: (more: number) =>
    `${more} more ${more === 1 ? 'picture is' : 'pictures are'} behind the laying guide of each room.`,
  notDrawn: (title: string) => `“${title}” could not be drawn; the figures stand.`,
  tooLarge: (title: string) => `“${title}” is too large to send here.`,
  restarting: 'The bot is being started again, and this was not finished. Ask again in a minute.',
  working: 'Still being worked on: this answer is replaced when it is whole.',
  missed: 'An earlier answer did not reach you; here it is.',
  menu: 'Work out quantities',
  /** A group of commands, by the names in it. */
  group: (names: readonly string[]) => `One of: ${names.join(', ')}`,
} as const;

// The texts about an ask as a whole: an unknown command, a misspelt or missing option, a line too long.

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

export function givenTwice(option: string, before: string, value: string, fix: string): Problem {
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

// The texts about asks that wait, are too many, or take too much: nothing of them is lost.

type Why = 'crowded' | 'own' | 'large' | 'unread';

const READING_STOPPED =
  'Reading this took too long, so I stopped: nothing is changed, and nothing of it is lost. Send it in shorter pieces, one room or one question at a time.';

const NOT_WORKED: Readonly<Record<Why, string>> = {
  crowded: 'Many are asking just now: ask again in a minute. The ask stands as you told it.',
  own: 'Several asks of yours are still being worked on: ask this one again when they are answered.',
  large: 'It takes more time or memory than one ask may: ask about fewer rooms at a time.',
  unread: READING_STOPPED,
};

/** A text that took longer to read than a text may. */
export function readingStopped(text: string): Problem {
  return { option: 'ask', got: quoted(text), expected: READING_STOPPED };
}

/** A first answer that was not worked out; the ask is the fix, to be asked again as it is. */
export function notWorkedOut(why: Why, ask: string): Problem {
  return { option: 'ask', got: quoted(ask), expected: NOT_WORKED[why], fix: ask };
}

const NOT_SEARCHED: Readonly<Record<Why, string>> = {
  crowded:
    'Not searched further, for many are asking just now: it can be laid or cut this way, and asking again later may find a better one.',
  own: 'Not searched further, for several asks of yours are still being worked on: it can be laid or cut this way, and asking again later may find a better one.',
  large: 'Not worked out further, for it takes more time or memory than one ask may: what is told here holds.',
  unread: 'Not worked out further, for reading some of it took too long: what is told here holds.',
};

/** Said with a first answer that stands. */
export function notSearchedFurther(why: Why): string {
  return NOT_SEARCHED[why];
}

/** Asked more in a minute than one person, or everybody on a server together, may. */
export function tooManyRequests(milliseconds: number, everybody: boolean, ask: string): Problem {
  const seconds = Math.max(1, Math.ceil(milliseconds / 1000));
  const again = `ask again in ${seconds} ${seconds === 1 ? 'second' : 'seconds'}`;
  const expected = everybody
    ? `Everybody here together has asked a lot within a minute: ${again}. Nothing of your ask is lost.`
    : `You have asked a lot within a minute: ${again}. Nothing of your ask is lost.`;
  return { option: 'ask', got: quoted(ask), expected, fix: ask };
}

// The words of Slack around an answer, in forms, on the Home tab and in the app's manifest.

export const SLACK = {
  requested: 'Asked',
  more: 'More',
  all: 'Everything as a file',
  old: 'This button is from an older version. Ask again and the answer has fresh ones.',
  notShown: 'It could not be posted there. Invite the app to the channel, or copy the ask into it.',
  sent: (files: number) =>
    `It is long, so it is in our direct messages as ${files === 1 ? 'a file' : `${files} files`}.`,
  fileIntro: 'Here is the sheet you asked for.',
  pictureIntro: 'The pictures of your answer.',
  pictureDirect: (count: number) =>
    `The ${count === 1 ? 'picture is in our direct messages too, and stays' : 'pictures are in our direct messages too, and stay'} there.`,
  picturesSent: 'The pictures are in our direct messages.',
  noPictureThere:
    'It is posted without its picture: the app is not in this channel. Invite it and press once more, or pass the picture on from our direct messages.',
  noAsk: 'There is nothing to work out in that message.',
  formSubmit: 'Work it out',
  formClose: 'Cancel',
  formLate: 'Slack did not open the form in time. Press once more.',
  formStale: 'This form is from an older version. Close it and open it again.',
  formTaken: (standard: string) => `Without it: ${standard}.`,
  formProject: 'Without it: what your project tells.',
  formExample: (example: string) => `For instance ${example}`,
  homeTitle: 'Your floor, worked out',
  homeIntro:
    'Send the app a direct message, mention it in a channel, or type /floorhand with an ask: rooms and a plank, in your own words or by options. “/floorhand help” lists everything. Start a project, and it remembers your rooms, picks and what is bought and done.',
  homeStart: 'Start here',
  homeButtons: {
    'floor planks': 'Planks for my rooms',
    'trim list': 'Baseboard to buy',
    'prep tearout': 'The old floor out',
    'project new': 'Start a project',
  } as Readonly<Record<string, string>>,
  homeOther: 'Work out something else',
  homeProject: 'Your project',
} as const;

/** The app's manifest: what people read of it in Slack. */
export const MANIFEST = {
  description: 'Planks, cartons, trim and preparation for people who replace their own floor.',
  longDescription:
    'Ask in your own words or by options: how many cartons of plank your rooms need and how to lay them row by row, which sticks of trim to buy and where to cut them, what a tear-out weighs, how to mend and level a subfloor. Answers are exact, name how they were read, carry the cautions that matter and tell where each figure comes from. Only you see an answer until you show it to the channel.',
  command: 'Work out planks, trim and preparation for your floor',
  hint: 'planks room: 12x14, plank: 6 x 48 in, 10 per carton',
  message: 'Work out quantities',
  messageDescription: 'Reads the sizes and planks in a message and works out what they need',
  global: 'Work out a floor',
  globalDescription: 'Opens a form for your rooms and your plank',
} as const;

// The words of the terminal around an answer.

export const TERMINAL = {
  assumed: 'How it was read',
  cautions: 'Take care',
  sources: 'Sources',
  actions: 'You could also ask',
  problem: 'I need one more thing',
  read: 'Read',
  nothing: '(nothing)',
  type: 'Type instead',
  example: 'Try with an example plank',
  refusal: 'This is not safe to work out from here',
  emergency: 'This comes first',
  call: 'Who to call',
  greeting: 'floorhand works out boxes, cuts and trim for a floor you lay. For example:',
  prompt:
    'Your turn: type it as you would say it. “more”, “rows”, “why” and “safety” open more of an answer, “help” shows what you can ask, “quit” ends.',
  working: 'Working on it…',
  otherPort: (port: number, page: string | undefined) =>
    page === undefined
      ? `Share pages won’t open: port ${port} is in use, and no other port is free.`
      : `Port ${port} is in use, so share pages are at ${page} while this is open.`,
  bye: 'Good luck with the floor.',
  usage:
    'Usage: npm run ask -- [--json] [--all] "planks room: 12x14, plank: 6 x 48 in, 10 per carton" (or requests on standard input, one per line).',
} as const;
