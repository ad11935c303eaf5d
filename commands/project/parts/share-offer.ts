/** What is told of a share, made whole: the usual where nothing is told, and what is wrong with it. */

import { accountKey } from '../../../src/accounts/asker.ts';
import type { Offer, ShareChange } from '../../../src/accounts/sharing.ts';
import type { Context } from '../../../src/chat/command.ts';
import { oneLine } from '../../../src/input/parse-label.ts';
import type { ToldShare } from '../../../src/language/old/sharing-said.ts';
import { DAY, LIMITS } from '../../../src/project/project-limits.ts';
import type { Helping, Share, Shared } from '../../../src/project/shares.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { SHARE, SHARE_PROBLEMS } from '../../../src/text/sharing-text.ts';

/** Days that a link lasts where nothing is told, and at most. */
const LINK_DAYS = 14;
const MOST_LINK_DAYS = 180;

/** What helpers of a part do with it, where nothing is told. */
const USUAL: Readonly<Record<Shared, Helping>> = {
  project: 'look',
  shopping: 'tick',
  guide: 'look',
  cuts: 'look',
  tearout: 'look',
  checklist: 'tick',
};

/** To whom: a link, a member, or whoever types a code. */
export type CodeOffer = Omit<Offer, 'to'> & { readonly to: Offer['to'] | 'code' };

type Offered = { readonly offer: CodeOffer; readonly notes: readonly string[] } | { readonly problem: Problem };

/** An offer of what is told, or what is wrong with it. */
export function offerOf(told: ToldShare, line: string, rooms: readonly string[], context: Context): Offered {
  const { what, room, rest } = told;
  if (what === undefined) return { problem: SHARE_PROBLEMS.whatPart(line, offerLine('shopping', told)) };
  if (rest !== '') return { problem: restProblem(what, told, line, rooms) };
  const name = told.label === undefined ? undefined : oneLine(told.label);
  if (name?.startsWith('@')) return { problem: memberProblem(name, what, context) };
  const account = typeof told.to === 'object' ? accountOf(told.to.member, context) : undefined;
  if (typeof told.to === 'object' && account === undefined) return { problem: memberProblem(line, what, context) };
  const now = context.now();
  const link = account === undefined && told.to !== 'code';
  const usual = link ? now + LINK_DAYS * DAY : undefined;
  const until = told.until === 'always' ? (link ? now + MOST_LINK_DAYS * DAY : undefined) : (told.until ?? usual);
  const role = told.role ?? USUAL[what];
  const share = { what, role, ...(room !== undefined && { room }), ...(until !== undefined && { until }) };
  const plain = offerLine(what, told.to === undefined ? {} : { to: told.to });
  const named = name === undefined ? {} : { label: name };
  const wrong = flawOf({ ...share, ...named }, { link, line, plain, part: plain, now });
  if (wrong) return { problem: wrong };
  const to = account !== undefined ? { account } : told.to === 'code' ? 'code' : 'link';
  return {
    offer: { ...share, ...(name !== undefined && { label: name }), to },
    notes:
      to === 'link' && name !== undefined && told.to === undefined && inChat(context) ? [SHARE.labelled(name)] : [],
  };
}

/** What changes of a share, or what is wrong with it. */
export function changeOf(
  share: Share,
  told: ToldShare,
  line: string,
  context: Context,
): { readonly change: ShareChange } | { readonly problem: Problem } {
  const link = 'link' in share.with;
  const now = context.now();
  const label = told.label === undefined ? undefined : oneLine(told.label);
  const plain = `project share ${share.id}`;
  if (told.rest !== '') return { problem: SHARE_PROBLEMS.unread(line, told.rest, 'project share') };
  const until = told.until === 'always' ? (link ? now + MOST_LINK_DAYS * DAY : undefined) : told.until;
  const change = {
    ...((told.what ?? told.room) !== undefined && { what: told.what ?? share.what, room: told.room }),
    ...(told.role && { role: told.role }),
    ...(told.until !== undefined && { until }),
    ...(label !== undefined && { label }),
  };
  if (Object.keys(change).length === 0) return { problem: SHARE_PROBLEMS.nothing(line) };
  const after = { ...share, ...change };
  const wrong = flawOf(after, { link, line, plain, part: `${plain} ${PLAIN[after.what]}`, now });
  return wrong ? { problem: wrong } : { change };
}

function restProblem(what: Shared, told: ToldShare, line: string, rooms: readonly string[]): Problem {
  const { rest } = told;
  if (what !== 'guide' && what !== 'cuts') return SHARE_PROBLEMS.unread(line, rest, offerLine(what, told));
  const [first] = rooms;
  return SHARE_PROBLEMS.room(
    line,
    rest,
    rooms,
    first === undefined ? 'project room bedroom 12 x 14 ft' : offerLine(what, told, first),
  );
}

/** The line that shares a part as told, as far as it was read. */
function offerLine(what: Shared, { to, role, label }: Partial<ToldShare>, room?: string): string {
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

/** Each part as it is typed. */
const PLAIN: Readonly<Record<Shared, string>> = {
  project: 'whole project',
  shopping: 'shopping list',
  guide: 'laying guide',
  cuts: 'cut list',
  tearout: 'tear-out',
  checklist: 'checklist',
};

/** What was told, and how it begins when it is told again: the share alone, and with its part. */
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

/** The key of a member's account in the asker's own workspace; undefined where there are no members, or it is none. */
export function accountOf(text: string, { asker }: Context): string | undefined {
  const id = /^(?:<@!?)?([A-Z0-9]{5,24})(?:\|[^<>]*)?>?$/.exec(text.trim())?.[1];
  if (id === undefined) return undefined;
  const fits =
    asker.platform === 'discord' ? /^\d{17,20}$/ : asker.platform === 'slack' ? /^[UW][A-Z0-9]{7,}$/ : undefined;
  return fits?.test(id) ? accountKey({ ...asker, id }) : undefined;
}

/** Whether there are members to share with. */
function inChat({ asker }: Pick<Context, 'asker'>): boolean {
  return asker.platform === 'discord' || asker.platform === 'slack';
}

function memberProblem(got: string, what: Shared, { asker }: Context): Problem {
  const fix = `project share ${PLAIN[what]}`;
  return (inChat({ asker }) ? SHARE_PROBLEMS.member : SHARE_PROBLEMS.noMembers)(got, fix);
}
