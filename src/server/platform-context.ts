/** What the server passes to every platform it starts. */

import { setTimeout as sleep } from 'node:timers/promises';
import { catalog } from '../../commands/index.ts';
import { loadCommands } from '../chat/catalog.ts';
import { fileMaker, makeFile } from '../documents/make.ts';
import { toPng } from '../drawing/png.ts';
import type { PlatformContext } from '../platforms/platform.ts';
import type { Config } from './config.ts';

export function wait(milliseconds: number): Promise<void> {
  return sleep(milliseconds, undefined, { ref: false });
}

/** `over` is what depends on how the process was started. */
export function contextOf(
  config: Config,
  ports: PlatformContext['ports'],
  over: Pick<PlatformContext, 'answer' | 'console'>,
): PlatformContext {
  return {
    config,
    catalog,
    commands: () => loadCommands(catalog),
    ports,
    toPng,
    makeFile,
    files: fileMaker,
    wait,
    ...over,
  };
}
