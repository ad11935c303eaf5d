/** `project mydata`: export, import or erase everything stored about a user. */

import { z } from 'zod';
import type { ProjectAccess } from '../../src/accounts/account-access.ts';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { forgetConversations } from '../../src/chat/conversation.ts';
import { forgetHazards } from '../../src/chat/hazard-memory.ts';
import { forgetAnswers, packedData, unpacked } from '../../src/chat/saved-replies.ts';
import { choice, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { hazardsSchema } from '../../src/project/findings.ts';
import { contentOf, contentSchema, freeName, isRecord, type Project, savedWorkIn } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import type { Block } from '../../src/reply/reply.ts';
import { importTooMany, importUnread } from '../../src/text/project-problems-text.ts';
import { MYDATA, NEXT } from '../../src/text/project-text.ts';
import { projectProblem, projectReply, withProject } from './project-command.ts';

const CONFIRM = 'forget everything';

/** Exports from earlier versions can be imported too; the oldest have no hazards. */
const exportedSchema = contentSchema.unwrap().extend({ hazards: hazardsSchema.optional() });
const broughtSchema = z.preprocess((one) => (isRecord(one) ? savedWorkIn(one) : one), exportedSchema);
const exportSchema = z.object({ projects: z.array(broughtSchema).min(1) });

/** As JSON: what the user typed, without anybody's ids or accounts. */
async function everything(access: ProjectAccess, context: Context): Promise<Outcome> {
  const [person, mine] = [await access.person(), await access.own()];
  const shared = (await access.mine()).filter((one) => !mine.includes(one));
  const { seen: _seen, ...recent } = await access.recent();
  const data = {
    kind: 'mydata' as const,
    accounts: person?.accounts ?? [],
    settings: person?.settings ?? {},
    projects: mine.map((one) => ({ ...contentOf(one), hazards: one.hazards })),
    shares: mine.map(sharesOf).filter(({ shares }) => shares.length > 0),
    sharedWithMe: shared.map(sharesOf),
    recent,
  };
  const some = person !== undefined || Object.keys(recent.past).length > 0;
  const { kind: _kind, ...given } = data;
  const code: readonly Block[] =
    mine.length > 0
      ? [
          { kind: 'text', text: MYDATA.how },
          { kind: 'text', text: await packedData({ projects: given.projects }) },
        ]
      : [];
  return {
    ...projectReply(context, {
      headline: some && mine.length === 0 ? MYDATA.settingsOnly : MYDATA.headline(mine.length),
      blocks: some
        ? [...code, { kind: 'text', text: MYDATA.all }, { kind: 'text', text: JSON.stringify(given, null, 1) }]
        : [],
    }),
    data,
  };
}

/** Always as new projects. */
async function broughtIn(text: string, access: ProjectAccess, context: Context): Promise<Outcome> {
  const read = exportSchema.safeParse(parsed(text) ?? (await unpacked(text)));
  if (!read.success) return projectProblem(importUnread(text));
  const mine = await access.own();
  const live = mine.filter(({ state }) => state.kind !== 'deleted');
  const fits = (kept: number, most: number): boolean => kept + read.data.projects.length <= most;
  if (!fits(live.length, LIMITS.projects) || !fits(mine.length, LIMITS.projectsDeleted))
    return projectProblem(importTooMany(LIMITS.projects));
  const names: string[] = [];
  for (const { hazards = [], ...content } of read.data.projects) {
    const name = freeName(content.name, await access.own());
    names.push((await access.create({ ...content, name }, hazards)).name);
  }
  const actions = [{ label: NEXT.show, ask: 'project show' }];
  return projectReply(context, { headline: MYDATA.imported(names), actions });
}

/** Only once they've typed the words that confirm it. */
async function forgotten(confirm: string, access: ProjectAccess, context: Context): Promise<Outcome> {
  const mine = await access.own();
  if (confirm !== CONFIRM) {
    const ask = `project mydata do: forget, confirm: ${CONFIRM}`;
    return projectReply(context, {
      headline: MYDATA.sure(mine.length),
      blocks: [{ kind: 'facts', facts: [{ label: MYDATA.confirm, value: ask }] }],
      actions: mine.length > 0 ? [{ label: NEXT.copyOut, ask: 'project mydata' }] : [],
    });
  }
  await access.forget([forgetAnswers, forgetHazards, forgetConversations]);
  return projectReply(context, { headline: MYDATA.forgotten });
}

/** Without people's ids and the hashes of links. */
function sharesOf({ name, shares }: Project) {
  return {
    name,
    shares: shares.map(({ with: who, by: _by, ...share }) => ({ ...share, with: 'link' in who ? 'link' : 'member' })),
  };
}

function parsed(text: string): unknown {
  const json = text.slice(text.indexOf('{'), text.lastIndexOf('}') + 1);
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}

const NOTHING = 'nothing';

export default defineCommand({
  group: 'project',
  name: 'mydata',
  summary: 'Everything stored about you: export it, bring it back, or have it all forgotten',
  phrases: [
    'what data do you keep about me',
    'delete my data',
    'erase everything about me',
    'is my info private',
    'where do you store this',
    'forget me',
    'download my data',
    'who sees my address',
    'remove my account',
    'do you keep my photos',
    'are you recording this',
    'wipe all my rooms',
    'privacy',
    'how long do you keep it',
    'export what you have on me',
    'get rid of everything',
    'can the server owner read my project',
    'delete everything i told you',
    'do you sell data',
    'how do i clear my history',
    'what do you keep about me',
    'i want everything you have on me erased, rooms, notes, money, all of it',
    'who can see what i type here',
    'do you sell my information',
    "how long is my stuff stored and where does it go when i'm finished",
    "send me a copy of all the data you've got with my name on it",
    'privacy policy',
    "can whoever runs this server read about my house and what i've spent",
    'erase my account',
    'is my address saved anywhere, i might have typed it in a note',
    'what personal info is in here',
    'wipe out everything tied to my account, not just the one project',
    'remove all trace of me',
    'does anybody read these chats or are they just on some computer',
    'are the photos i sent kept or thrown away after you look at them',
    "i'm done with this and would like my records deleted for good",
    'show what you know about me',
    'my data please',
    'do my messages train something, or do they stay in this chat only',
    'clear all my history',
    'what exactly gets saved when i ask about a room without making a project',
    'close my account and delete',
    "i'd like to see every single thing stored under my user name",
    'are you recording me',
    'gdpr request, please give me my personal data',
    'get rid of all of my information, i never agreed to have it saved',
    'is this private',
    'if i leave the slack workspace what happens to my saved rooms and numbers',
    'export what you hold about me',
    'can you delete just the old messages and keep my projects or is it all at once',
    'data deletion',
    'where are my house measurements stored, on my phone or out on the internet',
    'does my landlord get to see any of my data',
    'scrub me from your system',
    'do you share what i type with stores or flooring companies so they can call me',
    'how do i make sure nothing about me is left in here after i quit',
  ],
  options: z.object({
    do: choice(['export', 'forget'], { summary: 'export it all, or forget it all', standard: 'export' }),
    import: text(
      { summary: 'The text of an earlier export, to bring it back', example: '{}', standard: NOTHING, colons: 'any' },
      (typed) => read(typed),
    ),
    confirm: text(
      { summary: 'The words that confirm “forget”', example: 'forget everything', standard: NOTHING },
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
    { ask: 'project mydata', headline: 'Everything stored about you: 2 projects.' },
    {
      ask: 'project mydata forget',
      headline: 'This would delete 2 projects and everything else stored about you, for good. Nothing is deleted yet.',
    },
  ],
  run: (given, context) =>
    withProject(context, (access) => {
      if (given.import !== NOTHING) return broughtIn(given.import, access, context);
      return given.do === 'forget' ? forgotten(given.confirm, access, context) : everything(access, context);
    }),
});
