/** A way that asks come in by, and what every way is handed. */

import type { Asker } from '../../../src/accounts/records.ts';
import type { Command } from '../../../src/chat/command.ts';
import type { Answer } from '../../../src/chat/pipeline.ts';
import type { Request } from '../../../src/chat/ports.ts';
import type { Completion } from '../../../src/chat/suggest.ts';
import type { Drawing } from '../../../src/reply/drawing.ts';
import type { Store } from '../../../src/storage/types.ts';
import type { Draw } from './bend.ts';

export interface Lane {
  readonly name: string;
  /** Sends what comes of a line, and resolves with a status when it is answered, or at least heard. */
  send(line: string, draw: Draw): Promise<number>;
  close(): Promise<void>;
}

export interface LaneParts {
  answer(request: Request): AsyncIterable<Answer>;
  readonly commands: readonly Command[];
  readonly preferences: Request['preferences'];
  readonly store: Store;
  fault(reference: string, cause: unknown): void;
  toPng(drawing: Drawing): Promise<Buffer>;
  suggest(asker: Asker, command: Command, option: string, typed: string): Promise<readonly Completion[]>;
}
