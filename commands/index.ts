/** Every command, in the order in which help lists them. */

import type { Command } from '../src/bot/command.ts';
import planks from './floor/planks.ts';
import help from './help.ts';
import safety from './safety.ts';
import sources from './sources.ts';
import tape from './tape.ts';

export const commands: readonly Command[] = [planks, tape, safety, sources, help];
