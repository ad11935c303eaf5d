/** Shares in words: a new one, all shares of a project, and the user's own. */

import type { Given } from '../../src/accounts/sharing.ts';
import type { Context } from '../../src/chat/command.ts';
import { hostZone, sayMoment } from '../../src/input/moment.ts';
import type { Project } from '../../src/project/project.ts';
import { shownBy } from '../../src/project/share-scope.ts';
import { isOver, type Share } from '../../src/project/shares.ts';
import type { Action, Fact, Invite, Reply, Result } from '../../src/reply/reply.ts';
import { NEXT, sayAgo } from '../../src/text/project-text.ts';
import { SHARE, sayHelper, sayShared } from '../../src/text/sharing-text.ts';
import { projectReply } from './project-command.ts';

/** No ids of people and no hashes; the address only when a link has just been made. */
interface ShareResult extends Result {
  readonly kind: 'share';
  readonly project: string;
  readonly link?: string;
  readonly shares: readonly {
    readonly no: string;
    readonly with: 'link' | 'member';
    readonly name?: string;
    readonly what: Share['what'];
    readonly room?: string;
    readonly may: Share['role'];
    readonly until?: number;
    readonly last?: Share['last'];
  }[];
}

/** For example “until Fri 27 Nov, 18:00”. */
export function sayShareEnd({ until }: Pick<Share, 'until'>): string {
  return until === undefined ? SHARE.untilStopped : SHARE.until(sayMoment(until, hostZone()));
}

/** For the owner alone: the link, what its holder sees and may do, and how to stop it. */
export function givenReply(
  { project, share, token, instead }: Extract<Given, { ok: true }>,
  notes: readonly string[],
  context: Context,
): Reply {
  const what = sayShared(share);
  const link = token === undefined ? undefined : `${context.address ?? ''}/s/${token}`;
  const here = link !== undefined && /^https?:\/\/(?:127\.|localhost|\[::1\])/.test(link);
  const facts: readonly Fact[] = [
    ...(link === undefined ? [] : [{ label: SHARE.link, value: link, opens: true as const }]),
    { label: SHARE.sees, value: SHARE.shows(what, SHARE.partShows[share.what]) },
    { label: SHARE.may, value: SHARE.mays[share.role] },
    { label: SHARE.ends, value: sayShareEnd(share) },
    { label: SHARE.stop, value: SHARE.stopAsk(share.id) },
  ];
  const texts = [
    link === undefined ? SHARE.memberFinds : SHARE.once,
    ...(here ? [SHARE.here] : []),
    ...(instead ? [SHARE.instead(sayShared(instead))] : []),
  ];
  return {
    ...projectReply(context, {
      headline:
        link === undefined
          ? SHARE.sharedWith(sayHelper(share), what, project.name, sayShareEnd(share))
          : SHARE.linkTo(what, project.name, sayShareEnd(share)),
      blocks: [{ kind: 'facts', facts }, ...texts.map((text) => ({ kind: 'text' as const, text }))],
      assumed: notes,
      actions: [stopAction(share), { label: SHARE.show, ask: 'project share' }],
    }),
    data: { ...resultOf(project, [share]), ...(link !== undefined && { link }) } as ShareResult,
    ...(token !== undefined && { once: [token] }),
  };
}

/** What a member is told who was given a share. */
export function inviteTo(account: string, { project, share }: Extract<Given, { ok: true }>): Invite {
  const what = sayShared(share);
  return {
    account,
    headline: SHARE.invited(what, project.name),
    lines: [
      `${SHARE.yousee}: ${SHARE.partShows[share.what]}`,
      `${SHARE.youmay}: ${SHARE.mays[share.role]}`,
      `${SHARE.ends}: ${sayShareEnd(share)}`,
    ],
    action: { label: SHARE.inviteOpen, ask: `project use ${project.name}` },
  };
}

/** Begins with what was just done. */
export function listReply(project: Project, context: Context): Reply {
  const shares = project.shares.filter((one) => !isOver(one, context.now()));
  const zone = hostZone();
  const rows = shares.map((one) => [
    one.id,
    sayHelper(one),
    sayShared(one),
    SHARE.mays[one.role],
    one.until === undefined ? SHARE.open : sayMoment(one.until, zone),
    one.last ? `${one.last.said} (${sayAgo(context.now() - one.last.at)})` : '',
  ]);
  return {
    ...projectReply(context, {
      headline: shares.length === 0 ? SHARE.none(project.name) : SHARE.several(shares.length, project.name),
      blocks: rows.length === 0 ? [] : [{ kind: 'table', title: SHARE.title, columns: SHARE.columns, rows }],
      actions: [
        ...(context.address === undefined ? [] : [{ label: SHARE.shareList, ask: 'project share shopping list' }]),
        ...shares.slice(0, 20).map((one) => ({ ...stopAction(one), among: SHARE.among })),
      ],
    }),
    data: resultOf(project, shares),
  };
}

/** What somebody shared with the user. */
export function ownShareReply(project: Project, share: Share, context: Context): Reply {
  const shows = shownBy(share).map((name) => ({ label: NEXT.show, ask: name }));
  return {
    ...projectReply(context, {
      headline: SHARE.given(
        project.name,
        sayShared(share),
        share.until === undefined ? SHARE.open : sayShareEnd(share),
      ),
      blocks: [
        {
          kind: 'facts',
          facts: [
            { label: SHARE.yousee, value: SHARE.partShows[share.what] },
            { label: SHARE.youmay, value: SHARE.mays[share.role] },
          ],
        },
      ],
      actions: [...shows.slice(0, 1), { label: SHARE.leave, ask: 'project share leave' }],
    }),
    data: resultOf(project, [share]),
  };
}

function stopAction(share: Share): Action {
  return { label: SHARE.stopOne(sayHelper(share)), ask: SHARE.stopAsk(share.id) };
}

function resultOf({ name }: Project, shares: readonly Share[]): ShareResult {
  return {
    kind: 'share',
    project: name,
    shares: shares.map(({ id, with: who, label, what, room, role, until, last }) => ({
      no: id,
      with: 'link' in who ? 'link' : 'member',
      ...(label !== undefined && { name: label }),
      what,
      ...(room !== undefined && { room }),
      may: role,
      ...(until !== undefined && { until }),
      ...(last && { last }),
    })),
  };
}
