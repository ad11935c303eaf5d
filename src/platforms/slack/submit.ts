/** A form sent: what cannot be read is told at its field, and everything typed stays; else it is an ask. */

import { readOptions } from '../../chat/command.ts';
import { commandNamed, formTold } from '../../chat/form.ts';
import { formLine } from '../../chat/grammar.ts';
import { isHazard } from '../../chat/hazard-answers.ts';
import { CHAT } from '../../text/chat-text.ts';
import { VIEW } from './limits.ts';
import { carriedIn, type FormState, typedIn } from './modal.ts';
import type { SlackPorts, Where } from './ports.ts';
import { cut } from './rich.ts';

/** What became of a form: problems by the block of their field, or the ask and where its answer goes. */
export type Submitted =
  | { readonly errors: Record<string, string> }
  | { readonly ask: string | undefined; readonly where: Partial<Where> };

/** Reads a form: only what was typed is judged here, for the rest may be known from elsewhere. Never throws on what was typed. */
export function submitted(
  view: { readonly private_metadata: string; readonly state: FormState },
  { commands, habits }: Pick<SlackPorts, 'commands' | 'habits'>,
): Submitted {
  const carried = carriedIn(view.private_metadata);
  const command = carried && commandNamed(carried.command, commands);
  if (!carried || !command) {
    const typed = Object.values(typedIn(view.state)).join('\n');
    return { ask: isHazard(typed) ? typed : undefined, where: carried?.where ?? {} };
  }
  const told = formTold(command, typedIn(view.state));
  // What is told of a hazard is answered, and not mended at its field.
  if (isHazard([...told.values()].join('\n'))) return { ask: formLine(command, told), where: carried.where };
  const read = readOptions(command, told, habits);
  const problems = read.ok ? [] : read.problems.filter(({ option }) => told.has(option));
  if (problems.length === 0) return { ask: formLine(command, told), where: carried.where };
  const errors: Record<string, string> = {};
  for (const { option, expected, fix } of problems) {
    errors[option] ??= cut(fix === undefined ? expected : `${expected} ${CHAT.type}: ${fix}`, VIEW.error);
  }
  return { errors };
}
