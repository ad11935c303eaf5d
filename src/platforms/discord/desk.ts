/** What the Discord room is handed: the pipeline, the commands, what keeps answers, the wire, the clock, the pictures. */

import type { Buffer } from 'node:buffer';
import type { Asker } from '../../accounts/asker.ts';
import type { Command } from '../../chat/command.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Invocation, Ports } from '../../chat/ports.ts';
import type { Drawing } from '../../reply/drawing.ts';
import type { FileForm, Result } from '../../reply/reply.ts';
import type { Kept } from '../../storage/types.ts';
import type { Keeping } from './keeping.ts';
import type { Looks } from './looks.ts';
import type { Wire } from './wire.ts';

/** A wait that can be given up. */
export interface Wait {
  readonly over: Promise<void>;
  cancel(): void;
}

export interface Desk {
  answer(invocation: Invocation): AsyncIterable<Answer>;
  readonly commands: readonly Command[];
  readonly habits: Invocation['habits'];
  readonly kept: Kept;
  /** Whether other processes are sent the same interactions. */
  readonly shared: boolean;
  /** Whether an id has not been seen by this process. */
  isFresh(id: string): boolean;
  readonly keeping: Keeping;
  readonly looks: Looks;
  readonly fault: Ports['fault'];
  readonly wire: Wire;
  toPng(drawing: Drawing): Promise<Buffer>;
  /** Makes a file of an answer's data; without it answers say that there is none. */
  makeFile?(data: Result, as: FileForm): Promise<Buffer>;
  wait(milliseconds: number): Wait;
  /** What may be typed for an option, the likeliest first. */
  suggest(asker: Asker, command: Command, option: string, typed: string): Promise<readonly string[]>;
}

/** A wait on the machine's clock. */
export function waitOnClock(milliseconds: number): Wait {
  let timer: NodeJS.Timeout | undefined;
  const over = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, milliseconds);
  });
  return { over, cancel: () => clearTimeout(timer) };
}
