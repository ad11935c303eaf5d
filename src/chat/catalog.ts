/** Commands by their names, each loaded when it is needed: an answer that needs one of them waits for no other. */

import { typedName } from '../input/command-shape.ts';
import type { Command } from './command.ts';

/** A command that is loaded from its file: under which names it stands there. */
export interface CatalogEntry {
  readonly group?: string;
  readonly name: string;
  load(): Promise<{ readonly default: Command }>;
}

/** All commands, loaded or yet to be. */
export type Catalog = readonly (Command | CatalogEntry)[];

export async function loadCommand(entry: Command | CatalogEntry): Promise<Command> {
  return 'load' in entry ? (await entry.load()).default : entry;
}

export function loadCommands(catalog: Catalog): Promise<readonly Command[]> {
  return Promise.all(catalog.map(loadCommand));
}

/** The entry of the name that a line begins with, and what follows the name. */
export function entryTyped(
  line: string,
  catalog: Catalog,
): { readonly entry: Command | CatalogEntry; readonly rest: string } | undefined {
  const name = /^[\p{L}-]+/u.exec(line)?.[0] ?? '';
  const entry = catalog.find((one) => typedName(one) === name.toLowerCase());
  return entry && { entry, rest: line.slice(name.length) };
}
