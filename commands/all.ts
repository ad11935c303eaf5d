/** All commands loaded at once, for the menus and the help that list them. */

import { loadCommands } from '../src/chat/catalog.ts';
import { catalog } from './index.ts';

export const commands = await loadCommands(catalog);
