/** `project share`: lets somebody see the part of a project they need and nothing else; lists, changes and stops shares. */

import { z } from 'zod';
import type { ProjectAccess } from '../../src/accounts/account-access.ts';
import { accountKey } from '../../src/accounts/records.ts';
import type { Offer, ShareChange, Sharing } from '../../src/accounts/sharing.ts';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { hostZone } from '../../src/input/moment.ts';
import { text } from '../../src/input/options.ts';
import { singleLine } from '../../src/input/parse-label.ts';
import { type ParsedShare, readSharing } from '../../src/input/parse-share.ts';
import { read } from '../../src/input/reading.ts';
import type { Project } from '../../src/project/project.ts';
import { DAY, LIMITS } from '../../src/project/project-limits.ts';
import { type Helping, isOver, type Share, type Shared } from '../../src/project/shares.ts';
import type { Problem } from '../../src/reply/reply.ts';
import { LINK, SHARE, SHARE_PROBLEMS, sayHelper, sayShared } from '../../src/text/sharing-text.ts';
import { doneOr, inProject, noneInUse, projectProblem, projectReply } from './project-command.ts';
import { givenReply, inviteTo, listReply, ownShareReply, sayShareEnd } from './share-list.ts';

/** Nothing is shared until somebody types the code. */
async function codeGiven(
  offer: Omit<Offer, 'to'>,
  notes: readonly string[],
  access: ProjectAccess,
  context: Context,
): Promise<Outcome> {
  const project = await access.inUse();
  if (!project) return projectProblem(await noneInUse(context, access));
  const { code } = await access.links().makeFor(project.id, offer);
  const what = sayShared(offer);
  const reply = projectReply(context, {
    headline: LINK.helperCode(what, project.name),
    blocks: [
      {
        kind: 'facts',
        facts: [
          { label: LINK.code, value: code },
          { label: LINK.helperTypes, value: `project link ${code}` },
          { label: SHARE.sees, value: SHARE.shows(what, SHARE.partShows[offer.what]) },
          { label: SHARE.may, value: SHARE.mays[offer.role] },
          { label: SHARE.ends, value: sayShareEnd(offer) },
        ],
      },
      { kind: 'text', text: LINK.helperHow },
    ],
    assumed: notes,
    actions: [{ label: SHARE.show, ask: 'project share' }],
  });
  return { ...reply, once: [code] };
}

/** How many days a link lasts by default, and at most. */
const LINK_DAYS = 14;
const MOST_LINK_DAYS = 180;

/** What helpers may do by default with each part. */
const USUAL: Readonly<Record<Shared, Helping>> = {
  project: 'look',
  shopping: 'tick',
  guide: 'look',
  cuts: 'look',
  tearout: 'look',
  checklist: 'tick',
};

/** `code`: whoever types it. */
type CodeOffer = Omit<Offer, 'to'> & { readonly to: Offer['to'] | 'code' };

type Offered = { readonly offer: CodeOffer; readonly notes: readonly string[] } | { readonly problem: Problem };

/** Fills in defaults, or says what's wrong. */
function offerOf(given: ParsedShare, line: string, rooms: readonly string[], context: Context): Offered {
  const { what, room, rest } = given;
  if (what === undefined) return { problem: SHARE_PROBLEMS.whatPart(line, offerLine('shopping', given)) };
  if (rest !== '') return { problem: restProblem(what, given, line, rooms) };
  const name = given.label === undefined ? undefined : singleLine(given.label);
  if (name?.startsWith('@')) return { problem: memberProblem(name, what, context) };
  const account = typeof given.to === 'object' ? accountOf(given.to.member, context) : undefined;
  if (typeof given.to === 'object' && account === undefined) return { problem: memberProblem(line, what, context) };
  const now = context.now();
  const link = account === undefined && given.to !== 'code';
  const usual = link ? now + LINK_DAYS * DAY : undefined;
  const until = given.until === 'always' ? (link ? now + MOST_LINK_DAYS * DAY : undefined) : (given.until ?? usual);
  const role = given.role ?? USUAL[what];
  const share = { what, role, ...(room !== undefined && { room }), ...(until !== undefined && { until }) };
  const plain = offerLine(what, given.to === undefined ? {} : { to: given.to });
  const named = name === undefined ? {} : { label: name };
  const wrong = flawOf({ ...share, ...named }, { link, line, plain, part: plain, now });
  if (wrong) return { problem: wrong };
  const to = account !== undefined ? { account } : given.to === 'code' ? 'code' : 'link';
  return {
    offer: { ...share, ...(name !== undefined && { label: name }), to },
    notes:
      to === 'link' && name !== undefined && given.to === undefined && inChat(context) ? [SHARE.labelled(name)] : [],
  };
}

function changeOf(
  share: Share,
  given: ParsedShare,
  line: string,
  context: Context,
): { readonly change: ShareChange } | { readonly problem: Problem } {
  const link = 'link' in share.with;
  const now = context.now();
  const label = given.label === undefined ? undefined : singleLine(given.label);
  const plain = `project share ${share.id}`;
  if (given.rest !== '') return { problem: SHARE_PROBLEMS.unread(line, given.rest, 'project share') };
  const until = given.until === 'always' ? (link ? now + MOST_LINK_DAYS * DAY : undefined) : given.until;
  const change = {
    ...((given.what ?? given.room) !== undefined && { what: given.what ?? share.what, room: given.room }),
    ...(given.role && { role: given.role }),
    ...(given.until !== undefined && { until }),
    ...(label !== undefined && { label }),
  };
  if (Object.keys(change).length === 0) return { problem: SHARE_PROBLEMS.nothing(line) };
  const after = { ...share, ...change };
  const wrong = flawOf(after, { link, line, plain, part: `${plain} ${PLAIN[after.what]}`, now });
  return wrong ? { problem: wrong } : { change };
}

function restProblem(what: Shared, given: ParsedShare, line: string, rooms: readonly string[]): Problem {
  const { rest } = given;
  if (what !== 'guide' && what !== 'cuts') return SHARE_PROBLEMS.unread(line, rest, offerLine(what, given));
  const [first] = rooms;
  return SHARE_PROBLEMS.room(
    line,
    rest,
    rooms,
    first === undefined ? 'project room bedroom 12 x 14 ft' : offerLine(what, given, first),
  );
}

/** The line to type again, from whatever could be read. */
function offerLine(what: Shared, { to, role, label }: Partial<ParsedShare>, room?: string): string {
  return [
    `project share ${PLAIN[what]}${room === undefined ? '' : ` of ${room}`}`,
    ...(to === undefined ? [] : [`with: ${typeof to === 'string' ? to : to.member}`]),
    ...(role === undefined ? [] : [`may: ${role}`]),
    ...(label === undefined || /[,;:]/.test(label) ? [] : [`name: ${label}`]),
  ].join(', ');
}

type Flawed = Pick<Share, 'what' | 'role'> & {
  readonly room?: string | undefined;
  readonly until?: number | undefined;
  readonly label?: string | undefined;
};

/** Each part the way a user would type it. */
const PLAIN: Readonly<Record<Shared, string>> = {
  project: 'whole project',
  shopping: 'shopping list',
  guide: 'laying guide',
  cuts: 'cut list',
  tearout: 'tear-out',
  checklist: 'checklist',
};

/** The line they typed and what a fix starts with: `plain` alone, `part` with the part that is shared. */
interface Telling {
  readonly link: boolean;
  readonly line: string;
  readonly plain: string;
  readonly part: string;
  readonly now: number;
}

function flawOf(
  { what, role, room, until, label }: Flawed,
  { link, line, plain, part, now }: Telling,
): Problem | undefined {
  const fits = label === undefined || (label !== '' && label.length <= LIMITS.label);
  const named = label === undefined || !fits || /[,;:]/.test(label) ? '' : `, name: ${label}`;
  if (room !== undefined && what !== 'guide' && what !== 'cuts') return SHARE_PROBLEMS.ofRoom(line, `${part}${named}`);
  if (what === 'shopping' && role === 'measure') return SHARE_PROBLEMS.measure(line, `${plain}, may: tick${named}`);
  if (until !== undefined && until <= now)
    return SHARE_PROBLEMS.past(line, `${plain}, may: ${role}, for: 3 days${named}`);
  if (link && until !== undefined && until > now + (MOST_LINK_DAYS + 1) * DAY)
    return SHARE_PROBLEMS.tooLong(line, MOST_LINK_DAYS, `${plain}, may: ${role}, for: ${MOST_LINK_DAYS} days${named}`);
  return fits ? undefined : SHARE_PROBLEMS.label(line, LIMITS.label, `${plain}, name: Sam`);
}

/** A member of the user's own workspace; undefined if there are no members or this isn't one. */
function accountOf(text: string, { asker }: Context): string | undefined {
  const id = /^(?:<@!?)?([A-Z0-9]{5,24})(?:\|[^<>]*)?>?$/.exec(text.trim())?.[1];
  if (id === undefined) return undefined;
  const fits =
    asker.platform === 'discord' ? /^\d{17,20}$/ : asker.platform === 'slack' ? /^[UW][A-Z0-9]{7,}$/ : undefined;
  return fits?.test(id) ? accountKey({ ...asker, id }) : undefined;
}

/** Only chats have members to share with. */
function inChat({ asker }: Pick<Context, 'asker'>): boolean {
  return asker.platform === 'discord' || asker.platform === 'slack';
}

function memberProblem(got: string, what: Shared, { asker }: Context): Problem {
  const fix = `project share ${PLAIN[what]}`;
  return (inChat({ asker }) ? SHARE_PROBLEMS.member : SHARE_PROBLEMS.noMembers)(got, fix);
}

/** For the owner of the project in use, or for whoever it is shared with. */
function answerShare(line: string, context: Context): Promise<Outcome> {
  return inProject(context, async (project, access) => {
    const { sharing } = access;
    const mine = await access.share();
    const rooms = project.rooms.map(({ name }) => name);
    const given = readSharing(line, rooms, context.now(), hostZone());
    if (!sharing || (mine && given.do === 'list'))
      return mine ? ownShareReply(project, mine, context) : projectProblem(SHARE_PROBLEMS.notYours(line));
    if (mine)
      return given.do === 'leave' || given.do === 'stop'
        ? left(project, sharing, context)
        : projectProblem(SHARE_PROBLEMS.notYours(line));
    if (given.do === 'leave') return projectProblem(SHARE_PROBLEMS.own(line));
    if (given.do === 'list') return listReply(project, context);
    if (given.do === 'stop') return stopped(given.which, project, sharing, context);
    if (given.do === 'change') return changed(given.id, given.given, line, project, sharing, context);
    const offer = offerOf(given.given, line, rooms, context);
    if ('problem' in offer) return projectProblem(offer.problem);
    return giveShare(offer.offer, offer.notes, line, access, sharing, context);
  });
}

async function giveShare(
  { to, ...offer }: CodeOffer,
  notes: readonly string[],
  line: string,
  access: ProjectAccess,
  sharing: Sharing,
  context: Context,
): Promise<Outcome> {
  if (to === 'code') return codeGiven(offer, notes, access, context);
  if (to === 'link' && context.address === undefined) return projectProblem(SHARE_PROBLEMS.noAddress(line));
  const done = await sharing.give({ ...offer, to });
  if (done.ok) {
    const invites = to === 'link' ? [] : [inviteTo(to.account, done)];
    return { ...givenReply(done, notes, context), ...(invites.length > 0 && { invites }) };
  }
  switch (done.why) {
    case 'self':
      return projectProblem(SHARE_PROBLEMS.self(line));
    case 'crowded':
      return projectProblem(SHARE_PROBLEMS.crowded(line));
    case 'full':
      return projectProblem(SHARE_PROBLEMS.full(line, (await access.inUse())?.shares.length ?? 0));
    default:
      return doneOr(context, { ok: false, why: done.why }, () => projectProblem(SHARE_PROBLEMS.notYours(line)));
  }
}

async function changed(
  id: string,
  given: Parameters<typeof changeOf>[1],
  line: string,
  project: Project,
  sharing: Sharing,
  context: Context,
): Promise<Outcome> {
  const share = live(project, context).find((one) => one.id === id);
  if (!share) return projectProblem(SHARE_PROBLEMS.unknown(line, live(project, context).map(named)));
  const change = changeOf(share, given, line, context);
  if ('problem' in change) return projectProblem(change.problem);
  const done = await sharing.change([id], change.change);
  return doneOr(context, done, ([after], now) =>
    after
      ? { ...listReply(now, context), headline: SHARE.changed(sayHelper(after), sayShared(after), sayShareEnd(after)) }
      : projectProblem(SHARE_PROBLEMS.unknown(line, live(now, context).map(named))),
  );
}

async function stopped(which: string, project: Project, sharing: Sharing, context: Context): Promise<Outcome> {
  const shares = live(project, context);
  const meant = await sharesMeant(which, shares, sharing, context);
  if (meant.length === 0) return projectProblem(SHARE_PROBLEMS.unknown(which, shares.map(named)));
  const done = await sharing.stop(meant.map(({ id }) => id));
  return doneOr(context, done, (gone, now) => ({
    ...listReply(now, context),
    headline: SHARE.stopped((gone.length > 0 ? gone : meant).map(named)),
  }));
}

/** Shares by number, name, part, person or link, or all of them. */
async function sharesMeant(
  which: string,
  shares: readonly Share[],
  sharing: Sharing,
  context: Context,
): Promise<readonly Share[]> {
  const text = which
    .replace(/^(?:sharing )?(?:with |of |to |for |the |my |share |no\.? |number |#)*/i, '')
    .replace(/(?<![.!])[.!]+$/, '')
    .trim();
  if (text === '' || /^(?:all|everything|everyone|everybody|it|it all|that|this|project|sharing)$/i.test(text))
    return shares;
  if (/^\d+(?:\s*(?:[,;&]|and)\s*\d+|\s+\d+)*$/i.test(text)) {
    const ids = text.match(/\d+/g) ?? [];
    return shares.filter(({ id }) => ids.some((one) => String(Number(one)) === id));
  }
  const account = accountOf(text, context);
  const person = account === undefined ? undefined : await sharing.personAt(account);
  if (account !== undefined) return shares.filter(({ with: who }) => 'person' in who && who.person === person);
  const same = (one: string): boolean => one.toLowerCase() === text.toLowerCase();
  const called = shares.filter((one) => same(sayHelper(one)));
  if (called.length > 0) return called;
  const links = shares.filter(({ with: who }) => 'link' in who);
  // With several links, “the link” doesn't say which one.
  if (/^link$/i.test(text)) return links.length === 1 ? links : [];
  if (/^(?:all )?links$/i.test(text)) return links;
  const given = readSharing(
    text,
    shares.flatMap(({ room }) => room ?? []),
    context.now(),
    hostZone(),
  );
  if (given.do !== 'give' || given.given.what === undefined || given.given.rest !== '') return [];
  const { what, room } = given.given;
  return shares.filter((one) => one.what === what && (room === undefined || one.room === room));
}

async function left(project: Project, sharing: Sharing, context: Context): Promise<Outcome> {
  await sharing.leave(project.id);
  return projectReply(context, { headline: SHARE.left(project.name) });
}

function live({ shares }: Project, context: Context): readonly Share[] {
  return shares.filter((one) => !isOver(one, context.now()));
}

function named(share: Share): string {
  return `${share.id} (${sayHelper(share)}: ${sayShared(share)})`;
}

const NONE = 'none';

const given = (summary: string, example: string, standard: string) =>
  text({ summary, example, standard, colons: 'any' }, (typed) => read(typed.trim()));

export default defineCommand({
  group: 'project',
  name: 'share',
  summary: 'Share a list, a guide or a whole project by link or with a member; list, change or stop shares',
  phrases: [
    'send this to my brother in law',
    'share the project with my helper',
    'get me a link to share',
    'how can my wife see the list',
    'let my dad see the cut list',
    'make a link for the plan',
    'stop sharing the link',
    'who can see my project',
    'can i give my friend access',
    'share page for the bedroom',
    'invite my helper to the project',
    'send the shopping list to my husband',
    'link to the layout so i can open it on my phone',
    'public link',
    'turn off the link i made',
    'can my contractor view this',
    'let someone else edit',
    'share cut list',
    'text the plan to my buddy',
    'how do i show this to someone',
    'let my brother see the project',
    'how can my wife open this on her phone and see the shopping list',
    'i want the guy helping me to be able to look at the cut list saturday',
    'share link',
    "give my dad access so he can check off what he finishes while i'm at work",
    'make a link i can text to my helper',
    'who all can see this project right now besides me',
    "stop sharing with my ex roommate, he moved out and shouldn't see my house",
    'invite my sister to the project',
    'can my contractor view the layouts without being able to change anything',
    'let my buddy add notes and mark rows as he lays them',
    'turn off that share link i made',
    'share the bedroom only',
    "my neighbor's coming to help tomorrow morning, get him in on this so he sees the plan",
    'add my husband to the job',
    "i'd like my son to see the measurements, he's on another chat channel",
    'kick the handyman off my project',
    'is it possible for two of us to work on this same project from different phones',
    'give read only to the landlord',
    "remove everybody's access but mine",
    'make it visible to the family channel so everyone sees who does what',
    'send my mother in law a link to the progress, she keeps calling me about it',
    'can the store guy see it',
    "share it with my floor helper but hide what we've spent",
    "how do i show this to someone who doesn't have an account here",
    'let them edit',
    'get a new share link since the old one went to the wrong person',
    "my helper says the link doesn't work on his phone, can you make another one",
    'open the project up for my partner',
    "put my cousin on it as a helper, he's laying the hall with me sunday",
    'does anyone else have access to my rooms',
    'unshare it',
    'could my tenant see when each room will be out of use',
    'allow my dad in',
    "i'm at work all day so let my wife and her brother both get into the project",
    'show my helper the tearout list',
    "take back the access i gave to the trim carpenter last week, he's finished here",
    'share downstairs project',
    'set it so that my mate can view the rooms and the trim list but nothing else',
    'let my helper see',
    'my shares',
    'what have i shared',
    'who has my project',
  ],
  options: z.object({
    what: given(
      'Whole project, shopping list, laying guide of a room, cut list, tear-out, checklist; or list',
      'shopping list',
      'list',
    ),
    with: given('A link, or a member by @', 'link', 'link'),
    may: given('look, tick (and note), or measure', 'tick', 'as fits'),
    for: given('How long', '3 days', '14 days for a link'),
    until: given('Or until when', 'friday', NONE),
    name: given('Your name for them', 'Sam', NONE),
    stop: given('A share to stop: its number, its name, or all', '2', NONE),
  }),
  examples: [
    { ask: 'project share', headline: 'Nothing of “Upstairs flat” is shared.' },
    {
      ask: 'project share shopping list, for: 3 days',
      headline: 'A link to the shopping list of “Upstairs flat”, until Tue 24 Nov, 12:00.',
    },
    {
      ask: 'project share laying guide of bedroom, until: Friday 18:00, name: Sam',
      headline: 'A link to the laying guide of bedroom of “Upstairs flat”, until Fri 27 Nov, 18:00.',
    },
  ],
  run: (_given, context) => answerShare(lineOf(context.optionTexts), context),
});

/** Puts the options together as one sentence. */
function lineOf(options: ReadonlyMap<string, string>): string {
  const said = (option: string, before: string): string => {
    const value = options.get(option)?.trim() ?? '';
    return value === '' ? '' : `${before}${value}`;
  };
  if (said('stop', '') !== '') return said('stop', 'stop ');
  return [
    said('what', ''),
    said('with', 'with ').replace(/^with with /i, 'with '),
    said('may', 'may '),
    said('for', 'for ').replace(/^for for /i, 'for '),
    said('until', 'until ').replace(/^until until /i, 'until '),
    said('name', 'named '),
  ]
    .filter((part) => part !== '')
    .join(', ');
}
