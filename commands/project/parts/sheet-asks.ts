/** What sheets are gathered with: the asks of a project's list, and answers taken as replies. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import type { Project } from '../../../src/project/project.ts';
import type { SheetKey } from '../../../src/reply/job-sheet.ts';
import type { Reply } from '../../../src/reply/reply.ts';
import { SHEETS } from '../../../src/text/sheets-text.ts';
import { SHOPPING } from '../../../src/text/shopping-text.ts';
import { type JobAsk, listAsks } from './shopping-asks.ts';

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

/** The requests that give a project's lists, of one command. */
export function asksOf({ project, context }: Here, name: string): readonly JobAsk[] {
  return listAsks(project, context).asks.filter((one) => one.name === name);
}

/** The reply, or a refusal as one, for it must be read; what cannot be answered is told. */
export function replyOr(outcome: Outcome, name: string, missing: string[]): Reply | undefined {
  if ('problems' in outcome) {
    const [{ expected }] = outcome.problems;
    missing.push(SHOPPING.unread(name, expected));
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
