/** A project handed on: a summary for one message, or its sheets as files. */

import { closest } from 'fastest-levenshtein';
import type { Context, Outcome } from '../../../src/chat/command.ts';
import { filesOf } from '../../../src/chat/files.ts';
import { drawable } from '../../../src/drawing/font.ts';
import { hostZone, sayDate } from '../../../src/input/moment.ts';
import { sameName } from '../../../src/project/project-room.ts';
import { isPart } from '../../../src/project/share-scope.ts';
import type { Action, FileForm, Reply, Result } from '../../../src/reply/reply.ts';
import { noSuchRoom } from '../../../src/text/floor-problems-text.ts';
import { HANDOFF } from '../../../src/text/sheets-text.ts';
import { asksOnce } from './asked-once.ts';
import { projectHere } from './at-desk.ts';
import { fitted, itemsOf, textOf } from './handoff-fit.ts';
import { handoffLines } from './handoff-lines.ts';
import type { Wanted } from './sheet-asks.ts';
import { gatherSheets } from './sheets.ts';
import { sheetsReply } from './sheets-reply.ts';

export interface HandoffAsk {
  readonly as: 'text' | FileForm['form'];
  readonly wanted: Wanted;
  readonly paper?: 'letter' | 'a4';
}

/** Result data of kind `handoff`: the summary as plain text. */
interface HandoffResult extends Result {
  readonly kind: 'handoff';
  readonly text: string;
}

const ACTIONS: readonly Action[] = [
  { label: HANDOFF.actions.pdf, ask: 'project handoff as: pdf' },
  { label: HANDOFF.actions.csv, ask: 'project handoff as: csv' },
  { label: HANDOFF.actions.share, ask: 'project share' },
];

export async function answerHandoff({ as, wanted, paper }: HandoffAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  // Whoever was given a part gets that part, and no summary of the rest.
  const part = isPart(await context.desk?.share());
  const names = project.rooms.map(({ name }) => name);
  const { room } = wanted;
  if (!part && room !== undefined && names.length > 0 && !names.some((name) => sameName(name, room))) {
    return { problems: [{ ...noSuchRoom(room, names, closest(room, names)), option: 'room' }] };
  }
  const all = wanted.key === undefined && wanted.room === undefined;
  if (as === 'text' && all && !part) {
    const here = { project, wanted, context, missing: [], ask: await asksOnce(project, context) };
    const title = HANDOFF.title(project.name, sayDate(context.now(), hostZone()));
    const lines = fitted(title, await handoffLines(here));
    const told = lines.filter(({ topics }) => topics === undefined);
    const cautions = lines.flatMap(({ items, topics = [] }) =>
      topics.map((topic, i) => ({ topic, text: items[i] ?? topic })),
    );
    const data: HandoffResult = { kind: 'handoff', text: textOf(title, lines) };
    return {
      headline: title,
      blocks: [{ kind: 'facts', facts: told.map((line) => ({ label: line.label, value: itemsOf(line) })) }],
      assumed: context.assumed,
      cautions,
      sources: [],
      actions: ACTIONS,
      audience: 'asker',
      data,
    };
  }
  const gathered = await gatherSheets(project, wanted, context);
  const reply = sheetsReply(gathered, context);
  if (as === 'text') return reply;
  const boxed = as === 'pdf' && [project.name, ...project.rooms.map(({ name }) => name)].some(isBoxed);
  const told = boxed ? { ...reply, assumed: [...reply.assumed, HANDOFF.boxed] } : reply;
  return withFiles(told, filesOf(gathered, as, paper), project.name);
}

/** Whether a name has letters that the font of the PDF lacks. */
function isBoxed(name: string): boolean {
  return !name.includes('□') && drawable(name).includes('□');
}

function withFiles(reply: Reply, files: NonNullable<Reply['files']>, project: string): Reply {
  const headline = files.length > 0 ? HANDOFF.files(project, files.length) : HANDOFF.noFiles(project);
  return { ...reply, headline, files };
}
