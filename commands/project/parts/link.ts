/** A person's accounts: listed, led together by a code, and parted. */

import type { Desk } from '../../../src/accounts/account-access.ts';
import type { Context, Outcome } from '../../../src/chat/command.ts';
import { hostZone, sayMoment } from '../../../src/input/moment.ts';
import type { Person } from '../../../src/project/person.ts';
import type { Reply } from '../../../src/reply/reply.ts';
import { accountName, LINK, LINK_PROBLEMS } from '../../../src/text/sharing-text.ts';
import { problem } from './at-desk.ts';
import { projectReply } from './reply.ts';

/** A new code, and how it is used. */
export async function newCode(desk: Desk, context: Context): Promise<Outcome> {
  const { code } = await desk.links().make();
  const reply = projectReply(context, {
    headline: LINK.made,
    blocks: [
      {
        kind: 'facts',
        title: LINK.codeTitle,
        facts: [
          { label: LINK.code, value: code },
          { label: LINK.typeIt, value: `project link ${code}` },
        ],
      },
      { kind: 'text', text: LINK.keepIt },
    ],
  });
  return { ...reply, once: [code] };
}

export async function linkedAccounts(desk: Desk, context: Context): Promise<Reply> {
  const accounts = accountsOf(await desk.person(), desk.via);
  return listed(LINK.list(accounts.length), desk, context);
}

/** Parts an account by its number in the list, or by its platform where only one is there. */
export async function parted(which: string, desk: Desk, context: Context): Promise<Outcome> {
  const accounts = accountsOf(await desk.person(), desk.via);
  if (accounts.length < 2) return problem(LINK_PROBLEMS.onlyOne());
  const found = accountsNamed(which, accounts, desk.via);
  const [only, ...more] = found;
  if (only === undefined) return problem(LINK_PROBLEMS.notLinked(which, 'project link list'));
  if (more.length > 0) return problem(LINK_PROBLEMS.several(which, accounts.indexOf(more[0] ?? only) + 1));
  if (!(await desk.links().part(only))) return problem(LINK_PROBLEMS.notLinked(which, 'project link list'));
  if (only === desk.via) return projectReply(context, { headline: LINK.partedHere });
  return listed(LINK.parted(accountName(platformOf(only))), desk, context);
}

function accountsNamed(which: string, accounts: readonly string[], via: string): readonly string[] {
  const word = which.toLowerCase().replace(/^(?:no\.? ?|number |#)|^(?:my|the) /, '');
  if (/^\d+$/.test(word)) return accounts.filter((_, i) => i + 1 === Number(word));
  if (/^(?:this(?: one| account)?|here)$/.test(word)) return accounts.filter((key) => key === via);
  return accounts.filter(
    (key) => platformOf(key) === word || accountName(platformOf(key)).toLowerCase().endsWith(word),
  );
}

async function listed(headline: string, desk: Desk, context: Context): Promise<Reply> {
  const person = await desk.person();
  const accounts = accountsOf(person, desk.via);
  const zone = hostZone();
  const since = (key: string): string => {
    const at = person?.linked?.find(({ account }) => account === key)?.at;
    return at === undefined ? '' : sayMoment(at, zone);
  };
  const name = (key: string): string => accountName(platformOf(key)) + (key === desk.via ? ` (${LINK.here})` : '');
  const rows = accounts.map((key, i) => [String(i + 1), name(key), since(key)]);
  return projectReply(context, {
    headline,
    blocks: [{ kind: 'table', title: LINK.accounts, columns: LINK.columns, rows }],
    actions:
      accounts.length < 2
        ? []
        : accounts
            .map((key, i) => ({ label: LINK.remove(name(key)), ask: `project link remove ${i + 1}` }))
            .slice(0, 5),
  });
}

function accountsOf(person: Person | undefined, via: string): readonly string[] {
  return person?.accounts ?? [via];
}

/** The platform of an account's key. */
export function platformOf(account: string): string {
  return account.slice(0, account.indexOf(':'));
}
