/** Text about sharing and linked accounts: what was shared, with whom, until when, and codes. */

import type { Problem } from '../reply/reply.ts';
import { capital, quoted } from './chat-text.ts';
import { counted } from './floor-text.ts';

type What = 'project' | 'shopping' | 'guide' | 'cuts' | 'tearout' | 'checklist';

const WHATS: Readonly<Record<What, string>> = {
  project: 'the whole project',
  shopping: 'the shopping list',
  guide: 'the laying guide',
  cuts: 'the cut list',
  tearout: 'the tear-out',
  checklist: 'the checklist',
};

/** “the laying guide of bedroom”. */
export function sayShared({ what, room }: { readonly what: What; readonly room?: string | undefined }): string {
  return room === undefined ? WHATS[what] : `${WHATS[what]} of ${room}`;
}

export function notShared(
  got: string,
  project: string,
  share: { readonly what: What; readonly room?: string | undefined },
  shown: readonly string[],
): Problem {
  const expected = `You can see ${sayShared(share)} of “${project}”, and nothing else.`;
  return { option: 'ask', got: quoted(got), expected, fix: shown[0] ?? 'help' };
}

/** A command only the owner may use. */
export function ownersOnly(got: string, shown: readonly string[]): Problem {
  const expected = 'Only the owner sees what was spent and who pays.';
  return { option: 'ask', got: quoted(got), expected, fix: shown[0] ?? 'help' };
}

/** Deliberately doesn't say whether the link ended, was stopped, or never existed. */
export function linkLeadsNowhere(): Problem {
  return {
    option: 'ask',
    got: '',
    expected: 'This link no longer works. Ask whoever gave it to you for a new one.',
    fix: 'project share',
  };
}

type Role = 'look' | 'tick' | 'measure';

const ROLES: Readonly<Record<Role, string>> = {
  look: 'look',
  tick: 'look, tick off and write notes',
  measure: 'look, tick off, write notes and measure',
};

/** What each part shows its recipient. */
const SHOWS: Readonly<Record<What, string>> = {
  project: 'everything but what was spent and who pays',
  shopping: 'what to buy, what is bought, and your prices',
  guide: 'the rows in order, with the plan',
  cuts: 'the pieces to cut, one by one',
  tearout: 'what comes out, how heavy it is, and its hazards',
  checklist: 'how far each room is, and what comes next',
};

/** A share in a list. */
export function sayHelper(share: {
  readonly id: string;
  readonly label?: string | undefined;
  readonly with: object;
}): string {
  return share.label ?? ('link' in share.with ? `link ${share.id}` : `helper ${share.id}`);
}

export function saySigned(by: { readonly helper: string; readonly name?: string | undefined }): string {
  return by.name ?? `helper ${by.helper}`;
}

/** Adds who did it, if that was a helper. */
export function withSigned(
  line: string,
  by: { readonly helper: string; readonly name?: string | undefined } | undefined,
): string {
  return by ? `${line} (${saySigned(by)})` : line;
}

export const SHARE = {
  ticked: 'Ticked by those who help',
  linkTo: (what: string, project: string, end: string) => `A link to ${what} of “${project}”, ${end}.`,
  sharedWith: (who: string, what: string, project: string, end: string) =>
    `${capital(who)} has ${what} of “${project}”, ${end}.`,
  changed: (who: string, what: string, end: string) => `Changed: ${who} has ${what}, ${end}.`,
  until: (when: string) => `until ${when}`,
  untilStopped: 'until you stop it',
  open: 'until stopped',
  link: 'The link',
  sees: 'They see',
  shows: (what: string, shows: string) => `${what}: ${shows}`,
  may: 'They may',
  mays: ROLES,
  ends: 'It ends',
  stop: 'To stop it',
  stopAsk: (id: string) => `project share stop: ${id}`,
  partShows: SHOWS,
  once: 'Whoever has the link needs no account. You will only see it this one time, so send it now. If it is lost, stop it and make another.',
  here: 'The link opens on this machine only, while floorhand runs here.',
  memberFinds: 'It’s on their “project list” now: “project use” and its name opens it.',
  invited: (what: string, project: string) => `You were given ${what} of “${project}”.`,
  inviteOpen: 'Open',
  instead: (what: string) => `In place of ${what}, which they had.`,
  labelled: (name: string) =>
    `a link to send to ${name}: members of this chat are picked with @, and nobody is found by name`,
  none: (project: string) => `Nothing of “${project}” is shared.`,
  several: (count: number, project: string) => `${count} ${count === 1 ? 'share' : 'shares'} of “${project}”.`,
  title: 'Shared',
  columns: ['No.', 'With', 'What', 'May', 'Until', 'Last'],
  stopped: (whos: readonly string[]) => `Stopped, at once: ${whos.join(', ')}.`,
  given: (project: string, what: string, end: string) => `You now have ${what} of “${project}”, ${end}.`,
  /** Shares of a deleted project. */
  ended: (count: number) =>
    count === 1
      ? 'what was shared of it is stopped, and stays so if it is brought back'
      : `all ${count} shares of it are stopped, and stay so if it is brought back`,
  left: (project: string) => `You left “${project}”.`,
  yousee: 'You see',
  youmay: 'You may',
  leave: 'Leave it',
  shareList: 'Share the shopping list',
  stopOne: (who: string) => `Stop ${who}`,
  among: 'Stop',
  show: 'What is shared?',
  /** In a list of projects: what is shared, the permission, and its state. */
  inList: (what: string, may: string, label: string | undefined, state: string) =>
    `${state}; shared with you${label === undefined ? '' : ` as ${label}`}: ${what}; you may ${may}`,
} as const;

function ask(got: string, expected: string, fix: string): Problem {
  return { option: 'ask', got: quoted(got), expected, fix };
}

export const SHARE_PROBLEMS = {
  whatPart: (got: string, fix: string): Problem =>
    ask(
      got,
      'What do you want to share? The whole project, shopping list, laying guide (of a room), cut list, tear-out or checklist.',
      fix,
    ),
  unread: (got: string, rest: string, fix: string): Problem =>
    ask(got, `“${quoted(rest)}” isn’t something I can share.`, fix),
  room: (got: string, rest: string, names: readonly string[], fix: string): Problem =>
    ask(
      got,
      names.length === 0
        ? 'The project has no rooms yet: add them first.'
        : `The project has no room “${quoted(rest)}”. It has ${names.slice(0, 12).join(', ')}.`,
      fix,
    ),
  member: (got: string, fix: string): Problem =>
    ask(got, 'That isn’t a member here: pick one from the list that @ opens, or share by a link.', fix),
  noMembers: (got: string, fix: string): Problem =>
    ask(got, 'There are no members here to share with: share by a link.', fix),
  self: (got: string): Problem => ask(got, 'That is you: the project is yours already.', 'project share'),
  noAddress: (got: string): Problem =>
    ask(
      got,
      'Links don’t work here: whoever runs this hasn’t set an address for them. Share with a member instead, by @.',
      'project share',
    ),
  full: (got: string, most: number): Problem =>
    ask(got, `A project has at most ${most} shares: stop one first.`, 'project share'),
  crowded: (got: string): Problem =>
    ask(got, 'They can’t join another project: they have to leave one first, or use a link.', 'project share'),
  ofRoom: (got: string, fix: string): Problem =>
    ask(got, 'Only a laying guide and a cut list can be of one room.', fix),
  measure: (got: string, fix: string): Problem =>
    ask(got, 'A shopping list has nothing to measure: let them tick, or share the whole project.', fix),
  past: (got: string, fix: string): Problem =>
    ask(got, 'That time is already past: give one that is still to come.', fix),
  tooLong: (got: string, days: number, fix: string): Problem => ask(got, `A link lasts at most ${days} days.`, fix),
  label: (got: string, most: number, fix: string): Problem =>
    ask(got, `A name for them has at most ${most} characters.`, fix),
  unknown: (got: string, known: readonly string[]): Problem =>
    ask(
      got,
      known.length === 0 ? 'Nothing is shared.' : `There’s no such share. You have ${known.join(', ')}.`,
      'project share',
    ),
  nothing: (got: string): Problem =>
    ask(got, 'What should change: what they may do, until when, or their name?', 'project share'),
  notYours: (got: string): Problem => ask(got, 'Only its owner shares a project.', 'project share leave'),
  own: (got: string): Problem => ask(got, 'This project is your own: there is nothing to leave.', 'project use none'),
} as const;

/** Confirms a code for linking accounts. */
export const LINK_CONFIRM = 'link';

export const LINK = {
  made: 'Here is your code. Type it on your other account within 10 minutes; it works once.',
  codeTitle: 'On the other account',
  code: 'Code',
  typeIt: 'Type there',
  keepIt: 'Keep it to yourself: whoever uses it gets all of your projects. A new code replaces the old one.',
  accounts: 'Linked accounts',
  columns: ['No.', 'Account', 'Since'],
  here: 'this one',
  list: (count: number) =>
    count === 1 ? 'Only this account opens your projects.' : `${count} accounts open your projects.`,
  sure: (platform: string, theirs: number, own: number) =>
    `This links this account with one on ${platform}: ${counted(theirs, 'project')} there, ${own} here. Nothing is linked yet.`,
  warning:
    'Go on only if you made this code yourself, on an account of yours. Whoever made it will see all your projects, change them and may delete them, and you theirs. Where both accounts have a setting, the one that made the code wins.',
  confirm: 'Type this to go on',
  go: 'Both are mine: link them',
  linked: (platform: string, projects: number) =>
    `Linked with your account on ${platform}: ${counted(projects, 'project')} on both.`,
  renamed: (from: string, to: string) => `there were two projects “${from}”: yours from this account is “${to}” now`,
  settings: (name: string, from: string, to: string) =>
    `${name} is ${to} now, as on the other account (was ${from} here)`,
  parted: (platform: string) =>
    `The account on ${platform} is unlinked. Your projects and settings stay with the accounts still linked.`,
  partedHere:
    'This account is unlinked. Your projects and settings stay with the accounts still linked; here you start fresh.',
  remove: (account: string) => `Unlink ${account}`,
  helperCode: (what: string, project: string) =>
    `Here is a code for ${what} of “${project}”. It works once, for 10 minutes.`,
  helperTypes: 'They type',
  helperHow: 'They type it wherever they use this bot. It doesn’t link any account of yours.',
  newTitle: 'Recently linked to you',
  news: (platform: string, when: string, no: number) =>
    `An account on ${platform} was linked to yours (${when}). Wasn’t that you? Type “project link remove ${no}”, then “project mydata” to see what is stored.`,
} as const;

export const LINK_PROBLEMS = {
  unlike: (got: string) =>
    ask(got, 'A code is 8 letters and numbers, such as 7KQ2-M9XA. “project link” alone makes one.', 'project link'),
  none: () =>
    ask(
      '',
      'This code doesn’t work: codes work once, for 10 minutes. Make a new one where you made this one.',
      'project link',
    ),
  wait: () =>
    ask('', 'Too many wrong codes: wait 10 minutes, then make a new code on the other account.', 'project link list'),
  same: () =>
    ask(
      '',
      'You made this code here or on an account that’s already linked: type it on one that isn’t.',
      'project link list',
    ),
  full: (most: number) =>
    ask('', `Together the two accounts would have more than ${most} projects: delete some first.`, 'project list'),
  tooMany: (most: number) =>
    ask('', `At most ${most} accounts can share projects: unlink one first.`, 'project link list'),
  notLinked: (got: string, fix: string) => ask(got, 'No account of that number or platform is linked to you.', fix),
  several: (platform: string, no: number) =>
    ask(platform, 'You have several accounts there: say which one by its number.', `project link remove ${no}`),
  onlyOne: () =>
    ask(
      '',
      'This is your only account: without it you couldn’t open your projects. “project mydata do: forget” deletes all of it.',
      'project link list',
    ),
  crowded: (most: number) =>
    ask('', `You help with ${most} projects, which is the most: leave one first.`, 'project list'),
  ownProject: () =>
    ask('', 'This code is for a helper of your own project: they type it on their account.', 'project show'),
} as const;
