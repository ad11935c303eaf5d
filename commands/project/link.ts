/** `project link`: connects accounts to the same projects with a code, and disconnects them. */

import { z } from 'zod';
import type { ProjectAccess } from '../../src/accounts/account-access.ts';
import type { Refused } from '../../src/accounts/linking.ts';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { hostZone, sayMoment } from '../../src/input/moment.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { NO_SETTINGS, type Person, type Settings } from '../../src/project/person.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import type { Problem, Reply } from '../../src/reply/reply.ts';
import { accountName } from '../../src/text/answer-text.ts';
import { NEXT } from '../../src/text/project-text.ts';
import { LINK, LINK_CONFIRM, LINK_PROBLEMS } from '../../src/text/sharing-text.ts';
import { projectProblem, projectReply, withProject } from './project-command.ts';
import { ownShareReply } from './share-list.ts';

async function newCode(access: ProjectAccess, context: Context): Promise<Outcome> {
  const { code } = await access.links().make();
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

async function linkedAccounts(access: ProjectAccess, context: Context): Promise<Reply> {
  const accounts = accountsOf(await access.person(), access.via);
  return listed(LINK.list(accounts.length), access, context);
}

/** `which` is a number in the list, or a platform if only one account is there. */
async function parted(which: string, access: ProjectAccess, context: Context): Promise<Outcome> {
  const accounts = accountsOf(await access.person(), access.via);
  if (accounts.length < 2) return projectProblem(LINK_PROBLEMS.onlyOne());
  const found = accountsNamed(which, accounts, access.via);
  const [only, ...more] = found;
  if (only === undefined) return projectProblem(LINK_PROBLEMS.notLinked(which, 'project link list'));
  if (more.length > 0) return projectProblem(LINK_PROBLEMS.several(which, accounts.indexOf(more[0] ?? only) + 1));
  if (!(await access.links().part(only))) return projectProblem(LINK_PROBLEMS.notLinked(which, 'project link list'));
  if (only === access.via) return projectReply(context, { headline: LINK.partedHere });
  return listed(LINK.parted(accountName(platformOf(only))), access, context);
}

function accountsNamed(which: string, accounts: readonly string[], via: string): readonly string[] {
  const word = which.toLowerCase().replace(/^(?:no\.? ?|number |#)|^(?:my|the) /, '');
  if (/^\d+$/.test(word)) return accounts.filter((_, i) => i + 1 === Number(word));
  if (/^(?:this(?: one| account)?|here)$/.test(word)) return accounts.filter((key) => key === via);
  return accounts.filter(
    (key) => platformOf(key) === word || accountName(platformOf(key)).toLowerCase().endsWith(word),
  );
}

async function listed(headline: string, access: ProjectAccess, context: Context): Promise<Reply> {
  const person = await access.person();
  const accounts = accountsOf(person, access.via);
  const zone = hostZone();
  const since = (key: string): string => {
    const at = person?.linked?.find(({ account }) => account === key)?.at;
    return at === undefined ? '' : sayMoment(at, zone);
  };
  const name = (key: string): string => accountName(platformOf(key)) + (key === access.via ? ` (${LINK.here})` : '');
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

function platformOf(account: string): string {
  return account.slice(0, account.indexOf(':'));
}

/** Shows what the code would do; connects accounts only once that's confirmed. */
async function codeTaken(code: string, confirm: string, access: ProjectAccess, context: Context): Promise<Outcome> {
  const links = access.links();
  const offer = await links.look(code);
  if (!offer.ok) return projectProblem(refused(offer, code));
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
  const before = { own: await access.own(), settings: (await access.person())?.settings ?? NO_SETTINGS };
  const taken = await links.take(code);
  if (!taken.ok) return projectProblem(refused(taken, code));
  const mine = await access.mine();
  const renamed = before.own.flatMap(({ id, name }) => {
    const now = mine.find((project) => project.id === id)?.name ?? name;
    return now === name ? [] : [LINK.renamed(name, now)];
  });
  const actions = [{ label: NEXT.list, ask: 'project list' }];
  if (taken.offer.kind === 'project') {
    const [project, share] = [await access.inUse(), await access.share()];
    if (!project || !share) return projectProblem(LINK_PROBLEMS.none());
    return ownShareReply(project, share, context);
  }
  return projectReply(context, {
    headline: LINK.linked(accountName(platformOf(taken.offer.account)), mine.length),
    assumed: [...renamed, ...settingsChanged(before.settings, taken.person.settings)],
    actions: [...actions, { label: LINK.accounts, ask: 'project link list' }],
  });
}

/** Settings of this account that the other account's replaced. */
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

const NEW = 'new';
const NONE = 'none';

export default defineCommand({
  group: 'project',
  name: 'link',
  summary: 'Use the same projects from your other accounts: get a code, enter one, or unlink an account',
  phrases: [
    'connect my slack and discord',
    'link my accounts',
    'i use you on discord at home and slack at work, can they be the same project',
    'how do i get my discord project to show up in slack',
    'pair my phone with the web page',
    "i started this in the terminal, now i'd like to carry on in discord",
    'link code please',
    "you don't know me here but i set up everything on the other app, connect us",
    'same person two accounts, join them',
    'enter link code 482 913',
    'can my slack account see the rooms i added on discord last night',
    'unlink my slack',
    "i've changed my discord account, how do i move my projects across to the new one",
    'hook up slack too',
    'make discord and slack share one set of projects for me please',
    'connect account',
    'got a new phone and a new login and none of my projects are here, link me up',
    'tie my web page to my slack name',
    "what's the code to connect the other account",
    'i want to sign in from the web page and see what i did in the chat at work',
    'join accounts',
    'link discord to this',
    'is there a way to use the same project from both apps without doing it all twice',
    'connect this to my other login',
    "my rooms are on slack and i'm typing in discord now, how do you bring them over",
    'disconnect the old account',
    'how do i log in as me on the web page',
    "give me a code i can type into slack so you know it's me",
    'sync my two accounts',
    'i talk to you in two places, please merge them so the shopping list matches',
    'link to terminal',
    'attach my work slack to my home discord account',
    "remove the link between my two accounts, i'm leaving that company",
    'account linking',
    "why can't i see my project on the computer, i made it in discord on the phone",
    'connect discord',
    'the code you gave me ran out, can i get another to link the accounts',
    'put both logins together',
    "i'd like to get at my floor project from my other account",
    'where do i type the linking code i got from slack',
  ],
  options: z.object({
    code: text(
      {
        summary: 'A code you were given; leave it out to get one; “list” shows your accounts',
        example: '7KQ2-M9XA',
        standard: NEW,
      },
      (typed) => read(typed.trim()),
    ),
    remove: text(
      { summary: 'An account to unlink, by its number or platform', example: 'slack', standard: NONE },
      (typed) => read(typed.trim()),
    ),
    confirm: text(
      { summary: 'The word that confirms linking your accounts', example: 'link', standard: NONE },
      (typed) =>
        read(
          typed
            .trim()
            .toLowerCase()
            .replace(/[.!"“”']/g, ''),
        ),
    ),
  }),
  examples: [
    { ask: 'project link list', headline: 'Only this account opens your projects.' },
    {
      ask: 'project link',
      headline: 'Here is your code. Type it on your other account within 10 minutes; it works once.',
    },
  ],
  run: ({ code: typed, remove, confirm: given }, context) =>
    withProject(context, (access) => {
      const both = /^(?<code>.+?)(?<![\s,;])[\s,;]+(?:and )?confirm[:\s]+(?<word>[^\s:]\S*)$/i.exec(typed)?.groups;
      const [code, confirm] = [both?.code ?? typed, both?.word?.toLowerCase() ?? given];
      const said = /^(?:remove|unlink|part|disconnect) (?:my |the )?(?<which>.+?)(?: account)?$/i.exec(code)?.groups
        ?.which;
      const which = remove === NONE ? said : remove;
      if (which !== undefined) return parted(which, access, context);
      if (/^(?:list|show|accounts?|linked|who)$/i.test(code)) return linkedAccounts(access, context);
      if (/^(?:new|make|code|me|(?:a )?new code|(?:my )?(?:other )?accounts?|\s*)$/i.test(code))
        return newCode(access, context);
      return codeTaken(code.replace(/^(?:with |the )?(?:code )?/i, ''), confirm, access, context);
    }),
});
