/** Where the data folder is when nobody chose one: where the system has a person's data. */

import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';

/** The folder chosen, else `floorhand` in the person's data home (XDG base directories; LOCALAPPDATA on Windows). */
export function dataFolder(chosen: string, environment: Readonly<Record<string, string | undefined>>): string {
  if (chosen !== '') return chosen;
  const { XDG_DATA_HOME: told = '', LOCALAPPDATA: local = '' } = environment;
  // The specification has relative paths count as not set.
  if (isAbsolute(told)) return join(told, 'floorhand');
  if (isAbsolute(local)) return join(local, 'floorhand');
  return join(homedir(), '.local', 'share', 'floorhand');
}
