/** Commands by name, each loaded when it is needed so that no answer waits for the others. */

import { typedName } from '../input/command-shape.ts';
import type { Command } from './command.ts';

/** A command that isn't loaded yet. */
export interface CatalogEntry {
  readonly group?: string;
  readonly name: string;
  load(): Promise<{ readonly default: Command }>;
}

export type Catalog = readonly (Command | CatalogEntry)[];

export async function loadCommand(entry: Command | CatalogEntry): Promise<Command> {
  return 'load' in entry ? (await entry.load()).default : entry;
}

export function loadCommands(catalog: Catalog): Promise<readonly Command[]> {
  return Promise.all(catalog.map(loadCommand));
}

/** The entry a line starts with, and the text after its name. */
export function entryTyped(
  line: string,
  catalog: Catalog,
): { readonly entry: Command | CatalogEntry; readonly rest: string } | undefined {
  const name = /^[\p{L}-]+/u.exec(line)?.[0] ?? '';
  const entry = catalog.find((one) => typedName(one) === name.toLowerCase());
  return entry && { entry, rest: line.slice(name.length) };
}
