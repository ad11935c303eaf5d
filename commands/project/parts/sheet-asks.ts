/** What sheets are gathered with: the asks of a project's list, and answers taken as replies. */

import type { Context, Outcome } from '../../../src/bot/command.ts';
import type { Project } from '../../../src/project/project.ts';
import type { SheetKey } from '../../../src/reply/job-sheet.ts';
import type { Reply } from '../../../src/reply/reply.ts';
import { SHEETS } from '../../../src/words/job-sheet.ts';
import { SHOPPING } from '../../../src/words/shopping.ts';
import { listAsks } from './shopping-asks.ts';
import { nameOf } from './shopping-lines.ts';

/** Which sheets, and of which room; all without. */
export interface Wanted {
  readonly key?: SheetKey;
  readonly room?: string;
}

/** What is gathered from, and where what cannot be answered is noted. */
export interface Here {
  readonly project: Project;
  readonly wanted: Wanted;
  readonly context: Context;
  readonly missing: string[];
  readonly ask: Context['ask'];
}

/** The lines that give a project's list, of one command. */
export function asksOf({ project, context }: Here, name: string): readonly string[] {
  return listAsks(project, context.commands, context.habits).asks.filter((line) => line.startsWith(name));
}

/** The reply, or a refusal as one, for it must be read; what cannot be answered is told. */
export function replyOr(outcome: Outcome, line: string, missing: string[]): Reply | undefined {
  if ('problems' in outcome) {
    const [{ expected, fix }] = outcome.problems;
    missing.push(SHOPPING.unread(nameOf(line), expected, fix));
    return undefined;
  }
  if (!('why' in outcome)) return outcome;
  return {
    headline: SHEETS.refusal,
    blocks: [
      { kind: 'text', text: outcome.why },
      { kind: 'text', text: SHEETS.call(outcome.call) },
    ],
    assumed: [],
    cautions: outcome.cautions,
    sources: [],
    actions: [],
    audience: 'asker',
    data: { kind: 'refusal' },
  };
}
