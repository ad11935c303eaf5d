/** `project mydata`: everything kept of you, to take with you, to bring back, or to have forgotten. */

import { z } from 'zod';
import type { ProjectAccess } from '../../src/accounts/account-access.ts';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { forgetHazards } from '../../src/chat/hazard-memory.ts';
import { forgetAnswers, packedData, unpacked } from '../../src/chat/saved-replies.ts';
import { choice, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { freeName } from '../../src/project/create-project.ts';
import { hazardsSchema } from '../../src/project/findings.ts';
import { contentOf, contentSchema, isRecord, type Project, savedWorkIn } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import type { Block } from '../../src/reply/reply.ts';
import { importTooMany, importUnread } from '../../src/text/project-problems-text.ts';
import { MYDATA, NEXT } from '../../src/text/project-text.ts';
import { projectProblem, projectReply, withProject } from './project-command.ts';

// Everything kept of a person, given out, brought in again, or forgotten.

const CONFIRM = 'forget everything';

/** What was taken out of an earlier version is brought in as well; before hazards were kept there are none. */
const exportedSchema = contentSchema.unwrap().extend({ hazards: hazardsSchema.optional() });
const broughtSchema = z.preprocess((one) => (isRecord(one) ? savedWorkIn(one) : one), exportedSchema);
const exportSchema = z.object({ projects: z.array(broughtSchema).min(1) });

/** All of it as JSON: what the person typed, without ids or accounts of anybody. */
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

/** The projects of an export, as new projects of the asker. */
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

/** Forgets the asker once they have typed the words for it. */
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
  await access.forget([forgetAnswers, forgetHazards]);
  return projectReply(context, { headline: MYDATA.forgotten });
}

/** Shares without ids of people and hashes of links. */
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
  summary: 'Everything kept of you: to take with you, to bring back, or to have forgotten',
  options: z.object({
    do: choice(['export', 'forget'], { summary: 'export it all, or forget it all', standard: 'export' }),
    import: text(
      { summary: 'What export gave, to bring it back', example: '{}', standard: NOTHING, colons: 'any' },
      (typed) => read(typed),
    ),
    confirm: text(
      { summary: 'The words that “forget” asks for', example: 'forget everything', standard: NOTHING },
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
    { ask: 'project mydata', headline: 'Everything kept of you: 2 projects.' },
    {
      ask: 'project mydata forget',
      headline: 'This would delete 2 projects and everything else kept of you, for good. Nothing is deleted yet.',
    },
  ],
  run: (given, context) =>
    withProject(context, (access) => {
      if (given.import !== NOTHING) return broughtIn(given.import, access, context);
      return given.do === 'forget' ? forgotten(given.confirm, access, context) : everything(access, context);
    }),
});
