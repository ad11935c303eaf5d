/** Text around answers in chats and the terminal: buttons, busy and rate-limit notices, requests that could not be read. */

import type { Problem } from '../reply/reply.ts';

export const CHAT = {
  assumed: 'How it was read',
  cautions: 'Safety',
  sources: 'Sources',
  noSources: 'No outside figure was used for this answer.',
  problem: 'I need one more thing',
  read: 'Read',
  nothing: '(nothing)',
  type: 'For instance',
  refusal: 'This is not safe to work out from here',
  emergency: 'This comes first',
  call: 'Who to call',
  form: 'Fill in a form',
  suggested: 'Take the suggestion',
  example: 'Try with an example plank',
  again: 'Ask again',
  ownPlank: 'Put in my plank',
  back: 'Back',
  inShort: 'Short answer',
  nextPart: (part: number, parts: number) => `Next: part ${part} of ${parts}`,
  moreList: 'More about it, other ways',
  everything: 'Everything',
  ask: 'You could also ask',
  change: 'Change a detail',
  show: 'Show to channel',
  send: 'Send to my messages',
  sent: 'It’s in our direct messages.',
  notSent: 'I couldn’t write to you: your direct messages are closed to me.',
  recent: 'Your last answers',
  recentList: 'Open one again',
  noRecent: (ask: string) => `You haven’t asked anything this week. Start with ${ask}.`,
  /** `who`: a mention. */
  requested: (who: string, what: string) => `${who} asked: ${what}`,
  added: (who: string, other: string) => `${who} asked; what ${other} said counts too.`,
  /** `who`: a mention of the person whose question it was. */
  isYourPlank: (who: string) => `Is this your plank, ${who}?`,
  mine: 'Yes, that’s my plank',
  theirPlank: (who: string) => `${who} says: yes, that’s my plank.`,
  notYourPlank: 'Only the person who asked can say whether it’s their plank.',
  filled: (who: string) => `Filled in by ${who}`,
  crowdedHere: 'I’ve posted a lot in this channel just now. Try again in a minute.',
  away: 'Take this answer back',
  notYours: 'Only the person who asked, or a moderator, can take it back.',
  thread: 'Open a thread for it',
  /** `where`: a mention of the thread. */
  inThread: (where: string) =>
    `It has a thread now: ${where}. Invite whoever helps; the pinned summary stays up to date.`,
  notPinned: (where: string) =>
    `It has a thread now: ${where}. I may not pin there, so the summary is its first message.`,
  noThread: 'Discord didn’t let me open a thread here. Try it in a text channel where I may create private threads.',
  noSummary: 'This isn’t the project you’re in any more. Open it first, then its thread.',
  living: 'This summary changes as the project does.',
  inStore: 'In the store',
  bought: 'Bought',
  nextThings: 'More things',
  rowByRow: 'Row by row',
  /** `row`: its number, and to what width it is ripped. */
  rowOf: (row: string, room?: string) => `Row ${row}${room === undefined ? '' : ` in ${room}`}`,
  wholePlanks: (count: string) => `${count} whole`,
  rowsToGo: (left: number) => `${left} ${left === 1 ? 'row' : 'rows'} to go`,
  rowDone: 'Done, next row',
  lastRowDone: 'Done, that’s the last',
  brokeOne: 'Broke one',
  fromSpare: (broke: number) =>
    `${broke} broken: cut ${broke === 1 ? 'it' : 'them'} again from spare planks; the plan stays.`,
  poll: 'Ask the channel',
  noPoll: 'Discord didn’t let me start a poll here. Ask a moderator whether polls are allowed.',
  pollQuestion: 'Which floor?',
  /** What people call the list they work from, by the kind of data. */
  sheets: { floor: 'Laying guide', trim: 'Cut list', patch: 'Cut list', plan: 'Every step' } as Readonly<
    Record<string, string>
  >,
  /** `how`: a command that can be pressed. */
  gone: (how: string) =>
    `This answer is gone, or it isn’t yours. Ask again, for example with ${how}. Buttons work for a week.`,
  whole: 'The whole answer is in the attached file.',
  tables: 'The tables are attached for a spreadsheet as well.',
  morePictures: (more: number) =>
    `${more} more ${more === 1 ? 'picture comes' : 'pictures come'} with the laying guide of each room.`,
  notDrawn: (title: string) => `“${title}” couldn’t be drawn; the figures are right.`,
  tooLarge: (title: string) => `“${title}” is too large to send here.`,
  restarting: 'The bot is restarting, so this didn’t get finished. Ask again in a minute.',
  working: 'Still working on it: the full answer will replace this one.',
  notTaken: 'Discord didn’t take this answer here. It comes with your next one.',
  takenElsewhere: 'Discord didn’t take this answer here, so I sent it to your direct messages.',
  notShown: 'Discord didn’t let me post this here. Ask a moderator whether I may write in this channel.',
  noForm: (how: string) => `The form didn’t open. Say it in one sentence with ${how}.`,
  missed: 'An earlier answer didn’t reach you. Here it is.',
  menu: 'Work out quantities',
} as const;

/** The first words to somebody in Discord; each button opens a command, by its full name. */
export const GREETING = {
  title: 'Hi! I work out floors.',
  lines: [
    'Tell me your rooms and your planks, and I work out the boxes, every cut and what to watch out for.',
    'Only you see my answers until you show them.',
  ],
  heard: 'Just write to me here, or mention me in a channel.',
  begin: [
    ['floor planks', 'How many boxes?'],
    ['project new', 'Start a project'],
    ['help', 'What can I ask?'],
  ],
} as const;

/** What can be asked in Discord: jobs, with the names of the entries for them. */
export const DISCORD_HELP = {
  title: 'Ask in your own words',
  ask: 'how many boxes for a 12 by 14 room?',
  elsewhere: 'On a message: open its menu, then Apps, then “Work out quantities”.',
  heard: 'In a direct message just write; in a channel mention me. Buttons under an answer open more of it.',
  jobs: [
    ['How much to buy', ['boxes', 'estimate', 'compare', 'shopping']],
    ['Laying it', ['layout', 'doorways', 'tape']],
    ['The floor below', ['tear-out', 'level', 'moisture', 'squeaks', 'soft-spot']],
    ['Trim', ['baseboard', 'paint']],
    ['Your floor', ['project', 'progress', 'recent']],
  ],
} as const;

const GOT_MOST = 120;

/** What was read, short enough to repeat. */
export function quoted(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  const characters = [...line];
  return characters.length > GOT_MOST ? `${characters.slice(0, GOT_MOST).join('')}…` : line;
}

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
      ? `There’s no command “${word}”; the nearest is “${near}”.`
      : `Start with a command: ${names.join(', ')}.`,
    ...(near ? { fix: `${near} ${rest}`.trim() } : {}),
  };
}

export function commandMissing(text: string, command: string): Problem {
  return {
    option: 'ask',
    got: quoted(text),
    expected: `Start with the command, here “${command}”.`,
    fix: `${command} ${text}`,
  };
}

export function givenTwice(option: string, before: string, value: string, fix: string): Problem {
  return {
    option: 'ask',
    got: quoted(`${before} … ${value}`),
    expected: `Give ${option} once: it was read both as “${quoted(before)}” and as “${quoted(value)}”.`,
    fix,
  };
}

export function misspeltOption(got: string, near: string, fix: string): Problem {
  return {
    option: 'ask',
    got: quoted(got),
    expected: `There’s no option “${got.replace(/(?<!\s)\s*:$/, '')}”; the nearest is “${near}”.`,
    fix,
  };
}

/** A name before a colon that isn't an option of the command. */
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
    expected: `“${command}” has no option “${name}”, so I don’t know what that is for. Its options: ${names.join(', ')}.`,
    fix,
  };
}

/** What is asked for if a floor or a plank is missing, which every answer about boxes needs. */
const MISSING: Readonly<Record<string, string>> = {
  room: 'Which rooms? Give each one’s length and width.',
  plank: 'Which plank? Give its width and length, and what is in a carton.',
};

export function missingOption(option: string, summary: string): Problem {
  const question = MISSING[option];
  if (question !== undefined) return { option, got: '', expected: question };
  return { option, got: '', expected: `Still needed: ${summary.charAt(0).toLowerCase()}${summary.slice(1)}.` };
}

export function askTooLong(length: number, most: number): Problem {
  return {
    option: 'ask',
    got: `${length} characters`,
    expected: `At most ${most} characters at a time: send it in parts.`,
  };
}

/** What the user reads about a fault, or about a store that doesn't respond. */
export function sayFault(reference: string, outage: boolean): string {
  if (outage) {
    return `Not saved: your project can’t be reached just now. What was saved before is safe; try again in a minute. Reference: ${reference}.`;
  }
  return `Something went wrong on our side; nothing of yours is lost. Try again, and if it keeps happening, give this reference: ${reference}.`;
}

type Why = 'crowded' | 'own' | 'large' | 'unread';

const READING_STOPPED =
  'That took too long to read, so I stopped. Nothing has changed. Send it in shorter pieces, one room or one question at a time.';

const NOT_WORKED: Readonly<Record<Why, string>> = {
  crowded: 'I’m busy with many questions just now. Try again in a minute, the same way.',
  own: 'I’m still working on your other questions. Send this one again when they’re answered.',
  large: 'That’s too much to work out at once: try fewer rooms at a time.',
  unread: READING_STOPPED,
};

export function readingStopped(text: string): Problem {
  return { option: 'ask', got: quoted(text), expected: READING_STOPPED };
}

/** The fix is the request itself, to be sent again. */
export function notWorkedOut(why: Why, ask: string): Problem {
  return { option: 'ask', got: quoted(ask), expected: NOT_WORKED[why], fix: ask };
}

const NOT_SEARCHED: Readonly<Record<Why, string>> = {
  crowded: 'I’m busy just now, so I stopped looking. This way works; try again later for a better one.',
  own: 'I’m still working on your other questions, so I stopped looking. This way works; try again later for a better one.',
  large: 'That’s as far as I could work it out at once. What you see here is right.',
  unread: 'Some of it took too long to read, so I stopped there. What you see here is right.',
};

export function notSearchedFurther(why: Why): string {
  return NOT_SEARCHED[why];
}

/** A rate limit, of one person or of a whole server. */
export function tooManyRequests(milliseconds: number, everybody: boolean, ask: string): Problem {
  const seconds = Math.max(1, Math.ceil(milliseconds / 1000));
  const again = `try again in ${seconds} ${seconds === 1 ? 'second' : 'seconds'}`;
  const expected = everybody
    ? `There were a lot of questions here within a minute: ${again}.`
    : `That was a lot of questions within a minute: ${again}.`;
  return { option: 'ask', got: quoted(ask), expected, fix: ask };
}

export const SLACK = {
  requested: 'Asked',
  more: 'More',
  open: 'Open more',
  next: 'What next',
  own: 'This answer',
  brief: 'Back to the short answer',
  begin: 'Start a project',
  all: 'Everything as a file',
  old: 'This button is from an older version. Ask again and the answer has fresh ones.',
  notShown: 'I couldn’t post it there. Invite the app to the channel, or copy your question into it.',
  notInvited:
    'I couldn’t send them a message. Tell them that it’s there: I list it when they ask me for “project list”.',
  sent: (files: number) =>
    `It’s long, so I put it in our direct messages as ${files === 1 ? 'a file' : `${files} files`}.`,
  fileIntro: 'Here is the sheet you asked for.',
  pictureIntro: 'The pictures of your answer.',
  picturesSent: 'The pictures are in our direct messages.',
  notDrawn: 'The picture couldn’t be drawn just now. Press again in a minute. It would show:',
  notTaken: (seconds: number | undefined) =>
    seconds === undefined
      ? 'Slack didn’t take the file. Press again in a minute. It would show:'
      : `Slack takes no files for ${seconds} ${seconds === 1 ? 'second' : 'seconds'}. Press again then. It would show:`,
  noPictures:
    'I can’t read pictures. Type what is on it: the sizes of the room, or of the plank and how many are in a box.',
  welcome:
    'Hello! Tell me about your floor in your own words, for example how large the room is and which planks you like, and I work out what to buy, how to lay it and what to watch out for.',
  welcomeHow: 'Or begin here:',
  working: 'Working it out…',
  status: 'is working it out…',
  toYou: 'I answered just you, because that comes from your own project.',
  noAsk: 'There is nothing to work out in that message.',
  formSubmit: 'Work it out',
  formClose: 'Cancel',
  formMore: 'More details',
  formSent: 'On its way',
  formDone: 'Close',
  formDirect: 'The answer comes in our direct messages: open the Messages tab to read it.',
  formLate: 'Slack didn’t open the form in time. Press again, or type your question.',
  formNotWidened: 'Slack didn’t show the other details. Send the form as it is, or type your question.',
  formStale: 'This form is from an older version. Close it and open it again.',
  formTaken: (standard: string) => `Without it: ${standard}.`,
  formProject: 'Without it: what your project has.',
  formExample: (example: string) => `For instance ${example}`,
  homeTitle: 'Your floor, worked out',
  homeIntro:
    'Send the app a direct message, mention it in a channel, or type /floorhand and your question: rooms and a plank, in your own words. “/floorhand help” lists everything. Start a project, and it remembers your rooms, your choices, and what you bought and did.',
  homeStart: 'Work something out',
  homeButtons: {
    'floor planks': 'Planks for my rooms',
    'trim list': 'Baseboard to buy',
    'prep tearout': 'Take the old floor out',
    'project new': 'Start a project',
  } as Readonly<Record<string, string>>,
  homeOther: 'Work out something else',
  homeUndo: 'Undo the last change',
  homeAnswer: 'Your project',
  homeElsewhere: 'Slack didn’t show the answer here: it’s in the Messages tab.',
  homeNotShown: 'Slack didn’t show your Home tab just now. Ask me here for “project show”.',
  homePlain: 'Slack didn’t take the rest of this tab. Ask for “project show” in the Messages tab.',
  homeMore: 'Ask the same in the Messages tab for its plan, its lists as files, and what comes next.',
} as const;

/** What the pages say by which a workspace installs the app. */
export const INSTALL = {
  done: 'The app is in your workspace',
  doneHow: 'Go back to Slack: it sent you a message to begin with. You can close this page.',
  cancelled: 'You cancelled, and nothing was installed',
  failed: 'That didn’t work, and nothing was installed',
  again: 'You can begin again whenever you like.',
  link: 'Install it',
  /** Where the app has lost the right to answer. */
  lost: (link: string | undefined) =>
    `The app can’t answer in this workspace any more: it has to be installed again${link === undefined ? ', by whoever did so before' : ` at ${link}`}. Your projects are still there.`,
} as const;

/** What people read about the app in Slack. */
export const MANIFEST = {
  description: 'Planks, cartons, trim and preparation for people who replace their own floor.',
  longDescription:
    'Ask in your own words. How many boxes do my rooms need, and how do I lay them? Which sticks of trim do I buy, and where do I cut them? What does a tear-out weigh? How do I fix and level a subfloor? Answers are exact. They say how I read your question, what to watch out for, and where each figure comes from. Only you see an answer until you show it to the channel.',
  command: 'Work out planks, trim and preparation for your floor',
  hint: 'planks room: 12x14, plank: 6 x 48 in, 10 per carton',
  message: 'Work out quantities',
  messageDescription: 'Reads the sizes and planks in a message and works out what they need',
  global: 'Work out a floor',
  globalDescription: 'Opens a form for your rooms and your plank',
} as const;

export const TERMINAL = {
  assumed: 'How it was read',
  cautions: 'Safety',
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
