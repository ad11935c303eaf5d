/** Every command, in the order in which help lists them. */

import type { Command } from '../src/bot/command.ts';
import compare from './floor/compare.ts';
import layout from './floor/layout.ts';
import planks from './floor/planks.ts';
import help from './help.ts';
import safety from './safety.ts';
import sources from './sources.ts';
import tape from './tape.ts';

export const commands: readonly Command[] = [planks, layout, compare, tape, safety, sources, help];
