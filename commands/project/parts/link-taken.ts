/** A code taken: first what it would do, then, for accounts once confirmed, what it did. */

import type { Desk } from '../../../src/accounts/account-access.ts';
import type { Refused } from '../../../src/accounts/linking.ts';
import type { Context, Outcome } from '../../../src/chat/command.ts';
import { NO_SETTINGS, type Settings } from '../../../src/project/person.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { NEXT } from '../../../src/text/project-text.ts';
import { accountName, LINK, LINK_CONFIRM, LINK_PROBLEMS } from '../../../src/text/sharing-text.ts';
import { problem } from './at-desk.ts';
import { platformOf } from './link.ts';
import { projectReply } from './reply.ts';
import { ownShareReply } from './share-say.ts';

/** What a code would do, or what it did. */
export async function codeTaken(code: string, confirm: string, desk: Desk, context: Context): Promise<Outcome> {
  const links = desk.links();
  const offer = await links.look(code);
  if (!offer.ok) return problem(refused(offer, code));
  if (offer.kind === 'accounts' && confirm !== LINK_CONFIRM) {
    const ask = `project link ${code}, confirm: ${LINK_CONFIRM}`;
    return projectReply(context, {
      headline: LINK.sure(accountName(platformOf(offer.account)), offer.theirs, offer.own),
      blocks: [
        { kind: 'text', text: LINK.warning },
        { kind: 'facts', facts: [{ label: LINK.confirm, value: ask }] },
      ],
      actions: [{ label: LINK.go, ask }],
    });
  }
  const before = { own: await desk.own(), settings: (await desk.person())?.settings ?? NO_SETTINGS };
  const taken = await links.take(code);
  if (!taken.ok) return problem(refused(taken, code));
  const mine = await desk.mine();
  const renamed = before.own.flatMap(({ id, name }) => {
    const now = mine.find((project) => project.id === id)?.name ?? name;
    return now === name ? [] : [LINK.renamed(name, now)];
  });
  const actions = [{ label: NEXT.list, ask: 'project list' }];
  if (taken.offer.kind === 'project') {
    const [project, share] = [await desk.inUse(), await desk.share()];
    if (!project || !share) return problem(LINK_PROBLEMS.none());
    return ownShareReply(project, share, context);
  }
  return projectReply(context, {
    headline: LINK.linked(accountName(platformOf(taken.offer.account)), mine.length),
    assumed: [...renamed, ...settingsChanged(before.settings, taken.person.settings)],
    actions: [...actions, { label: LINK.accounts, ask: 'project link list' }],
  });
}

/** Settings of this account that gave way, in words. */
function settingsChanged(before: Settings, after: Settings): readonly string[] {
  const plain = ({ standards, units, decimal, currency }: Settings) =>
    Object.entries({ ...standards, units, decimal, currency }).filter(([, value]) => value !== undefined);
  const now = new Map(plain(after));
  return plain(before).flatMap(([name, value]) => {
    const to = now.get(name);
    return to === undefined || value === undefined || to === value ? [] : [LINK.settings(name, value, to)];
  });
}

function refused({ why }: Refused, code: string): Problem {
  switch (why) {
    case 'unlike':
      return LINK_PROBLEMS.unlike(code);
    case 'wait':
      return LINK_PROBLEMS.wait();
    case 'same':
      return LINK_PROBLEMS.same();
    case 'full':
      return LINK_PROBLEMS.full(LIMITS.projects);
    case 'too-many-accounts':
      return LINK_PROBLEMS.tooMany(LIMITS.accounts);
    case 'own':
      return LINK_PROBLEMS.ownProject();
    case 'crowded':
      return LINK_PROBLEMS.crowded(LIMITS.sharedWith);
    case 'none':
      return LINK_PROBLEMS.none();
  }
}
