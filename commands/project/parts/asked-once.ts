/** Whole answers to the asks of a project as it is, worked out once however often its sheets are looked at. */

import type { Asked, Context } from '../../../src/chat/command.ts';
import type { Project } from '../../../src/project/project.ts';

/** Answers with their pictures are large: those of a few projects at a time. */
const MOST_ANSWERS = 24;

const knownAnswers = new Map<string, Promise<Asked>>();

/** What answers are filled from: another project, or the same changed, gives others. */
export async function filledFrom(project: Project, context: Context): Promise<string> {
  const standards = (await context.desk?.ownersSettings())?.standards;
  return JSON.stringify([project.name, project.rooms, project.picks, standards, context.habits]);
}

/** Asks as `context.ask` does of this project, which may have changed since the message came; what was asked of the same project lately is not worked out again. */
export async function asksOnce(project: Project, context: Context): Promise<Context['ask']> {
  const from = await filledFrom(project, context);
  return (line) => {
    const key = `${from}\n${line}`;
    const asked = knownAnswers.get(key) ?? context.ask(line, project);
    // What was looked at last goes last.
    knownAnswers.delete(key);
    knownAnswers.set(key, asked);
    asked.catch(() => knownAnswers.delete(key));
    const [oldest] = knownAnswers.keys();
    if (knownAnswers.size > MOST_ANSWERS && oldest !== undefined) knownAnswers.delete(oldest);
    return asked;
  };
}
