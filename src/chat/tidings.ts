/** What is told once, before the next answer, to whom it concerns: waits that are over, lengths to measure, accounts linked. */

import type { Desk } from '../accounts/account-access.ts';
import { fullName } from '../input/command-shape.ts';
import { hostZone, sayMoment } from '../input/moment.ts';
import type { Person } from '../project/person.ts';
import { DAY, may } from '../project/project-limits.ts';
import type { Block } from '../reply/reply.ts';
import { type Kept, Outage } from '../storage/types.ts';
import { MEASURE } from '../text/project-text.ts';
import { accountName, LINK } from '../text/sharing-text.ts';
import type { Command } from './command.ts';
import type { Held } from './holdings.ts';
import type { Ports } from './ports.ts';
import { openQuestions } from './questions.ts';
import { dueBlocks, untoldDue } from './reminding.ts';

/** How long what was told is remembered. */
const REMEMBERED = 60 * DAY;

/** How long after it an account that was linked is told of. */
const LINKED_NEWS = 7 * DAY;

/** What the asker was not told yet, and is not told by this command anyway. Never throws for an outage: it is told another time. */
export async function tidings(
  command: Command,
  held: Held,
  desk: Desk,
  { store }: Pick<Ports, 'store'>,
): Promise<readonly Block[]> {
  if (!store) return [];
  try {
    return [
      ...(await linked(await desk.person(), desk, store.kept)),
      ...(await toMeasure(command, held, desk, store.kept)),
      ...(await waits(command, held, desk, store.kept)),
    ];
  } catch (cause) {
    if (!(cause instanceof Outage)) throw cause;
    return [];
  }
}

async function waits(command: Command, { project }: Held, desk: Desk, kept: Kept): Promise<readonly Block[]> {
  if (!project || fullName(command) === 'project progress') return [];
  return dueBlocks(await untoldDue(project, desk.via, kept, desk.now()));
}

/** Open questions of others: the owner's for a helper who measures, a helper's for everybody else who does. */
async function toMeasure(
  command: Command,
  { project, share, habits }: Held,
  desk: Desk,
  kept: Kept,
): Promise<readonly Block[]> {
  if (!project || (share && !may(share.role, 'measure')) || fullName(command) === 'project measure') return [];
  const items: string[] = [];
  for (const { id, question, kept: now, example } of openQuestions(project, habits)) {
    if (question.by?.helper === share?.id) continue;
    if (await kept.claim(`question:${project.id}:${desk.via}:${id}`, REMEMBERED))
      items.push(MEASURE.item(question, now, MEASURE.tell(question, example)));
  }
  return items.length === 0 ? [] : [{ kind: 'checklist', title: MEASURE.openTitle, items }];
}

/** Accounts that were linked to the asker's lately, so that none is without their knowing. */
async function linked(me: Person | undefined, desk: Desk, kept: Kept): Promise<readonly Block[]> {
  const items: string[] = [];
  for (const { account, at } of me?.linked ?? []) {
    if (account === desk.via || desk.now() - at > LINKED_NEWS || !me?.accounts.includes(account)) continue;
    if (!(await kept.claim(`linked:${desk.via}:${account}:${at}`, REMEMBERED))) continue;
    const platform = accountName(account.slice(0, account.indexOf(':')));
    items.push(LINK.news(platform, sayMoment(at, hostZone()), me.accounts.indexOf(account) + 1));
  }
  return items.length === 0 ? [] : [{ kind: 'checklist', title: LINK.newTitle, items }];
}
