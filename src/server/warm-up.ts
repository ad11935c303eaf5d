/** Loads what the first answer needs before anyone asks. */

import { commands } from '../../commands/all.ts';
import { answer } from '../chat/pipeline.ts';
import type { Ports } from '../chat/ports.ts';
import { toPng } from '../drawing/png.ts';
import { WORKED_ASK } from '../platforms/terminal/demo.ts';
import { limitReading } from '../workers/time-limits.ts';
import type { Config } from './config.ts';

/**
 * Answers a request of its own so that the first user doesn't wait, and enforces time limits on reading from then on.
 */
export async function warm({ units, decimal, currency }: Config, { fault }: Pick<Ports, 'fault'>): Promise<void> {
  const asker = { platform: 'terminal', id: 'nobody' } as const;
  const preferences = { units, decimal, currency };
  for (const text of [WORKED_ASK, 'tape 1 + 2']) {
    for await (const one of answer({ asker, preferences, text }, commands, { fault })) {
      if (!('blocks' in one)) continue;
      for (const block of one.blocks) if (block.kind === 'picture') await toPng(block.drawing);
    }
  }
  limitReading();
}
