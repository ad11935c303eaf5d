/** The words of linked accounts: codes, who is linked, what linking does. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import { counted } from './floor.ts';

/** The word that makes a code for accounts act. */
export const LINK_CONFIRM = 'link';

const PLATFORMS: ReadonlyMap<string, string> = new Map([
  ['terminal', 'the terminal'],
  ['discord', 'Discord'],
  ['slack', 'Slack'],
]);

/** An account as it is called: by its platform. */
export function accountName(platform: string): string {
  return PLATFORMS.get(platform) ?? platform;
}

export const LINK = {
  made: 'Here is your code. Type it on your other account within 10 minutes; it works once.',
  codeTitle: 'On the other account',
  code: 'Code',
  typeIt: 'Type there',
  keepIt:
    'Keep it to yourself: whoever types it and goes on becomes the same person as you here. A new code ends the one before.',
  accounts: 'Linked accounts',
  columns: ['No.', 'Account', 'Since'],
  here: 'this one',
  list: (count: number) =>
    count === 1 ? 'Only this account leads to your projects.' : `${count} accounts lead to your projects.`,
  sure: (platform: string, theirs: number, own: number) =>
    `This links this account with one on ${platform}: ${counted(theirs, 'project')} there, ${own} here. Nothing is linked yet.`,
  warning:
    'Go on only if you made this code yourself, on an account of yours. Whoever made it will see all your projects, change them and may delete them, and you theirs. Where both accounts have a setting, the one where the code was made stands.',
  confirm: 'Type this to go on',
  go: 'Both are mine: link them',
  linked: (platform: string, projects: number) =>
    `Linked with your account on ${platform}: ${counted(projects, 'project')} on both.`,
  renamed: (from: string, to: string) => `there were two projects “${from}”: yours from this account is “${to}” now`,
  settings: (name: string, from: string, to: string) =>
    `${name} is ${to} now, as on the other account (was ${from} here)`,
  parted: (platform: string) =>
    `The account on ${platform} is parted. Your projects and settings stay with the accounts still linked.`,
  partedHere:
    'This account is parted. Your projects and settings stay with the accounts still linked; here you start anew.',
  remove: (account: string) => `Part ${account}`,
  helperCode: (what: string, project: string) =>
    `Here is a code for ${what} of “${project}”. It works once, for 10 minutes.`,
  helperTypes: 'They type',
  helperHow: 'They type it where they talk to this bot, on any platform: no account of yours is linked by it.',
  newTitle: 'Linked to you lately',
  news: (platform: string, when: string, no: number) =>
    `An account on ${platform} was linked to yours (${when}). Was it not you? Type “project link remove ${no}”, then “project mydata” to see what is kept.`,
} as const;

function ask(got: string, expected: string, fix: string): Problem {
  return { option: 'ask', got: quoted(got), expected, fix };
}

export const LINK_PROBLEMS = {
  unlike: (got: string) =>
    ask(got, 'A code is 8 letters and figures, such as 7KQ2-M9XA. “project link” alone makes one.', 'project link'),
  none: () =>
    ask(
      '',
      'This code does not work: codes work once, for 10 minutes. Make a new one where this one was made.',
      'project link',
    ),
  wait: () =>
    ask(
      '',
      'Too many codes that do not work came in: wait 10 minutes, then make a new code on the other account.',
      'project link list',
    ),
  same: () =>
    ask(
      '',
      'This code was made by you, here or on an account that is linked already: type it on one that is not.',
      'project link list',
    ),
  full: (most: number) =>
    ask('', `Together the two accounts would have more than ${most} projects: delete some first.`, 'project list'),
  tooMany: (most: number) =>
    ask('', `At most ${most} accounts lead to the same projects: part one first.`, 'project link list'),
  notLinked: (got: string, fix: string) => ask(got, 'No account of that number or platform is linked to you.', fix),
  several: (platform: string, no: number) =>
    ask(platform, 'Several of your accounts are there: say which by its number.', `project link remove ${no}`),
  onlyOne: () =>
    ask(
      '',
      'This is your only account: parted, nothing would lead to your projects. “project mydata do: forget” deletes all of it.',
      'project link list',
    ),
  crowded: (most: number) =>
    ask('', `You help with ${most} projects, which is the most: leave one first.`, 'project list'),
  ownProject: () =>
    ask('', 'This code is for a helper of your own project: they type it on their account.', 'project show'),
} as const;
