/** Every command, loaded: for menus, help, and platforms that show them all. */

import { loadCommands } from '../src/chat/catalog.ts';
import { catalog } from './index.ts';

export const commands = await loadCommands(catalog);
