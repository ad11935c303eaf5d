/** The headlines that an ask's search goes through, each better than the one before: worked out here, by the same pipeline, with all the time it takes. */

import { commands } from '../../../commands/all.ts';
import { answer } from '../../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES } from '../../../src/input/reading.ts';
import { boundTasks, closeWorkers } from '../../../src/workers/pool.ts';

/** Seconds that a search may take where nobody waits. */
export const UNHURRIED = 300;

/** By line, the first headline to the last. Throws where a line is not answered. */
export async function stepsOf(lines: readonly string[]): Promise<ReadonlyMap<string, readonly string[]>> {
  const steps = new Map<string, readonly string[]>();
  boundTasks({ askSeconds: UNHURRIED });
  try {
    for (const line of lines) steps.set(line, await headlines(line));
  } finally {
    await closeWorkers();
  }
  return steps;
}

async function headlines(text: string): Promise<readonly string[]> {
  const found: string[] = [];
  const fault = (_: string, cause: unknown): void => {
    throw new Error(`no answer to ${text}`, { cause });
  };
  const requested = {
    asker: { platform: 'terminal', id: 'reference' },
    preferences: DEFAULT_PREFERENCES,
    text,
  } as const;
  for await (const one of answer(requested, commands, { fault })) if ('headline' in one) found.push(one.headline);
  return [...new Set(found)];
}
