/** The rows of an answer from the ask that it answers. */

import type { Command } from '../../chat/command.ts';
import { formFields } from '../../chat/form.ts';
import { parseLine } from '../../chat/grammar.ts';
import type { Habits } from '../../input/reading.ts';
import type { Reply } from '../../reply/reply.ts';
import type { Ask } from './ask.ts';
import { answerRows, type Row } from './buttons.ts';

/** Everything that may be done with the answer of `id`; `showable` while nobody else sees it. */
export function answerRowsOf(
  { text, form }: Pick<Ask, 'text' | 'form'>,
  reply: Reply,
  id: string,
  showable: boolean,
  { commands, habits }: { readonly commands: readonly Command[]; readonly habits: Habits },
): readonly Row[] {
  const parsed = form ? undefined : parseLine(text, commands, habits);
  const known = form ?? (parsed?.ok ? { command: parsed.command, told: Object.fromEntries(parsed.told) } : undefined);
  const fields = known ? formFields(known.command, known.told) : [];
  return answerRows(reply, { id, showable, fields });
}
