/** The data folder: the one chosen, or where the system has a person's data. */

import { homedir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { dataFolder } from '../../src/server/config.ts';

const HOME = join(homedir(), '.local', 'share', 'floorhand');

// XDG Base Directory Specification 0.8: $XDG_DATA_HOME, by default $HOME/.local/share; a relative path is to be ignored.
it.each([
  ['chosen', 'mine', { XDG_DATA_HOME: '/data' }, 'mine'],
  ['of the data home', '', { XDG_DATA_HOME: '/data' }, join('/data', 'floorhand')],
  ['at home when nothing is set', '', {}, HOME],
  ['at home when the data home is relative', '', { XDG_DATA_HOME: 'data' }, HOME],
  ['at home when the data home is empty', '', { XDG_DATA_HOME: '' }, HOME],
])('is the one %s', (_what, chosen, environment, folder) => expect(dataFolder(chosen, environment)).toBe(folder));
