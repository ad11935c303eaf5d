/** Each interaction acts once: by what this process has seen, and by the store where another process could have it too. */

import { parseLine } from '../../chat/grammar.ts';
import type { Ask } from './ask.ts';
import type { Came } from './came.ts';
import type { Desk } from './desk.ts';
import { tellUnlessOutage } from './fault.ts';
import { inTime } from './in-time.ts';
import { CLAIM_TIME, TOKEN_TIME } from './limits.ts';

/**
 * Whether no other process took the interaction. Where the store does not answer it is taken all the same: Discord accepts one
 * response only, and nothing that is kept can be changed without the store.
 */
export async function claimed({ id }: Came, desk: Desk): Promise<boolean> {
  try {
    return await inTime(desk.kept.claim(`discord:${id}`, TOKEN_TIME), CLAIM_TIME, desk);
  } catch (cause) {
    tellUnlessOutage(desk, cause);
    return true;
  }
}

/** Whether an ask may change what somebody keeps, so that it must not run in two processes; a sum twice over does no harm. */
export function changesSomething(
  { form, text }: Ask,
  { commands, habits }: Pick<Desk, 'commands' | 'habits'>,
): boolean {
  if (form) return form.command.group === 'project';
  const parsed = parseLine(text, commands, habits);
  return parsed.ok && parsed.command.group === 'project';
}
