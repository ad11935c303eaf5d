/** Everything kept of a person, given out, brought in again, or forgotten. */

import { z } from 'zod';
import type { Context, Outcome } from '../../../src/bot/command.ts';
import type { Desk } from '../../../src/bot/desk.ts';
import { packed, unpacked } from '../../../src/bot/packed.ts';
import { freeName } from '../../../src/project/create.ts';
import { LIMITS } from '../../../src/project/limits.ts';
import { contentOf, contentSchema } from '../../../src/project/project.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { MYDATA, NEXT } from '../../../src/words/project.ts';
import { importTooMany, importUnread } from '../../../src/words/project-problems.ts';
import { problem } from './at-desk.ts';
import { projectReply } from './reply.ts';

export const CONFIRM = 'forget everything';

const exportSchema = z.object({ projects: z.array(contentSchema).min(1) });

/** All of it as JSON: what the person typed, without ids or accounts of anybody. */
export async function everything(desk: Desk, context: Context): Promise<Outcome> {
  const [person, mine] = [await desk.person(), await desk.mine()];
  const { seen: _seen, ...recent } = await desk.recent();
  const data = {
    kind: 'mydata' as const,
    accounts: person?.accounts ?? [],
    settings: person?.settings ?? {},
    projects: mine.map(contentOf),
    recent,
  };
  const some = person !== undefined || Object.keys(recent.past).length > 0;
  const { kind: _kind, ...given } = data;
  const code: readonly Block[] =
    mine.length > 0
      ? [
          { kind: 'text', text: MYDATA.how },
          { kind: 'text', text: await packed({ projects: given.projects }) },
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
export async function broughtIn(text: string, desk: Desk, context: Context): Promise<Outcome> {
  const read = exportSchema.safeParse(parsed(text) ?? (await unpacked(text)));
  if (!read.success) return problem(importUnread(text));
  const mine = await desk.mine();
  const live = mine.filter(({ state }) => state.kind !== 'deleted');
  const fits = (kept: number, most: number): boolean => kept + read.data.projects.length <= most;
  if (!fits(live.length, LIMITS.projects) || !fits(mine.length, LIMITS.projectsDeleted))
    return problem(importTooMany(LIMITS.projects));
  const names: string[] = [];
  for (const content of read.data.projects) {
    const name = freeName(content.name, await desk.mine());
    names.push((await desk.create({ ...content, name })).name);
  }
  const actions = [{ label: NEXT.show, ask: 'project show' }];
  return projectReply(context, { headline: MYDATA.imported(names), actions });
}

/** Forgets the asker once they have typed the words for it. */
export async function forgotten(confirm: string, desk: Desk, context: Context): Promise<Outcome> {
  const mine = await desk.mine();
  if (confirm !== CONFIRM) {
    const ask = `project mydata do: forget, confirm: ${CONFIRM}`;
    return projectReply(context, {
      headline: MYDATA.sure(mine.length),
      blocks: [{ kind: 'facts', facts: [{ label: MYDATA.confirm, value: ask }] }],
      actions: mine.length > 0 ? [{ label: NEXT.copyOut, ask: 'project mydata' }] : [],
    });
  }
  await desk.forget();
  return projectReply(context, { headline: MYDATA.forgotten });
}

function parsed(text: string): unknown {
  const json = text.slice(text.indexOf('{'), text.lastIndexOf('}') + 1);
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}
