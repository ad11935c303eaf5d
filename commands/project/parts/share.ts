/** From what is told of sharing to what is shared: given, listed, changed, stopped, left. */

import type { Desk } from '../../../src/accounts/account-access.ts';
import type { Sharing } from '../../../src/accounts/sharing.ts';
import type { Context, Outcome } from '../../../src/chat/command.ts';
import { hostZone } from '../../../src/input/moment.ts';
import { readSharing } from '../../../src/language/old/sharing-said.ts';
import type { Project } from '../../../src/project/project.ts';
import { isOver, type Share } from '../../../src/project/shares.ts';
import { SHARE, SHARE_PROBLEMS, sayHelper, sayShared } from '../../../src/text/sharing-text.ts';
import { doneOr, inProject, problem } from './at-desk.ts';
import { projectReply } from './reply.ts';
import { codeGiven } from './share-code.ts';
import { accountOf, type CodeOffer, changeOf, offerOf } from './share-offer.ts';
import { givenReply, listReply, ownShareReply, sayEnd } from './share-say.ts';

/** What a line of sharing comes to, for the owner of the project in use or for whoever it is shared with. */
export function answerShare(line: string, context: Context): Promise<Outcome> {
  return inProject(context, async (project, desk) => {
    const { sharing } = desk;
    const mine = await desk.share();
    const rooms = project.rooms.map(({ name }) => name);
    const told = readSharing(line, rooms, context.now(), hostZone());
    if (!sharing || (mine && told.do === 'list'))
      return mine ? ownShareReply(project, mine, context) : problem(SHARE_PROBLEMS.notYours(line));
    if (mine)
      return told.do === 'leave' || told.do === 'stop'
        ? left(project, sharing, context)
        : problem(SHARE_PROBLEMS.notYours(line));
    if (told.do === 'leave') return problem(SHARE_PROBLEMS.own(line));
    if (told.do === 'list') return listReply(project, context);
    if (told.do === 'stop') return stopped(told.which, project, sharing, context);
    if (told.do === 'change') return changed(told.id, told.told, line, project, sharing, context);
    const offer = offerOf(told.told, line, rooms, context);
    if ('problem' in offer) return problem(offer.problem);
    return given(offer.offer, offer.notes, line, desk, sharing, context);
  });
}

async function given(
  { to, ...offer }: CodeOffer,
  notes: readonly string[],
  line: string,
  desk: Desk,
  sharing: Sharing,
  context: Context,
): Promise<Outcome> {
  if (to === 'code') return codeGiven(offer, notes, desk, context);
  if (to === 'link' && context.address === undefined) return problem(SHARE_PROBLEMS.noAddress(line));
  const done = await sharing.give({ ...offer, to });
  if (done.ok) return givenReply(done, notes, context);
  switch (done.why) {
    case 'self':
      return problem(SHARE_PROBLEMS.self(line));
    case 'crowded':
      return problem(SHARE_PROBLEMS.crowded(line));
    case 'full':
      return problem(SHARE_PROBLEMS.full(line, (await desk.inUse())?.shares.length ?? 0));
    default:
      return doneOr(context, { ok: false, why: done.why }, () => problem(SHARE_PROBLEMS.notYours(line)));
  }
}

async function changed(
  id: string,
  told: Parameters<typeof changeOf>[1],
  line: string,
  project: Project,
  sharing: Sharing,
  context: Context,
): Promise<Outcome> {
  const share = live(project, context).find((one) => one.id === id);
  if (!share) return problem(SHARE_PROBLEMS.unknown(line, live(project, context).map(named)));
  const change = changeOf(share, told, line, context);
  if ('problem' in change) return problem(change.problem);
  const done = await sharing.change([id], change.change);
  return doneOr(context, done, ([after], now) =>
    after
      ? { ...listReply(now, context), headline: SHARE.changed(sayHelper(after), sayShared(after), sayEnd(after)) }
      : problem(SHARE_PROBLEMS.unknown(line, live(now, context).map(named))),
  );
}

async function stopped(which: string, project: Project, sharing: Sharing, context: Context): Promise<Outcome> {
  const shares = live(project, context);
  const meant = await sharesMeant(which, shares, sharing, context);
  if (meant.length === 0) return problem(SHARE_PROBLEMS.unknown(which, shares.map(named)));
  const done = await sharing.stop(meant.map(({ id }) => id));
  return doneOr(context, done, (gone, now) => ({
    ...listReply(now, context),
    headline: SHARE.stopped((gone.length > 0 ? gone : meant).map(named)),
  }));
}

/** Shares by number, by name, by what was shared, by whom, by their link, or all of them. */
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
  // Of several, “the link” is none in particular.
  if (/^link$/i.test(text)) return links.length === 1 ? links : [];
  if (/^(?:all )?links$/i.test(text)) return links;
  const told = readSharing(
    text,
    shares.flatMap(({ room }) => room ?? []),
    context.now(),
    hostZone(),
  );
  if (told.do !== 'give' || told.told.what === undefined || told.told.rest !== '') return [];
  const { what, room } = told.told;
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
