/** A filled form or menu as the line that the grammar reads. */

import { askLine, fullName, typedName } from '../input/command-shape.ts';
import type { Command } from './command.ts';

/** The command with its options told, its group before it. Words in a first option alone stand without its name: a sentence typed there is read as one. */
export function formLine(command: Command, told: ReadonlyMap<string, string>): string {
  const name = fullName(command);
  const [only, ...more] = told;
  const [first] = Object.keys(command.options.shape);
  if (only && more.length === 0 && only[0] === first && /\p{L}{4}/u.test(only[1])) return `${name} ${only[1]}`;
  return `${name}${askLine(command, told).slice(typedName(command).length)}`;
}
