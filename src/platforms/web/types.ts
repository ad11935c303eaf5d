/** What the page needs from outside. */

import type { Asker } from '../../accounts/records.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Ports, Request } from '../../chat/ports.ts';
import type { FileMaker } from '../platform.ts';
import type { PageQuestion } from './ticks.ts';

/** What a link leads to while it is good. */
export interface OpenedLink {
  /** The project's id, for what must not happen at once to one project. */
  readonly project: string;
  readonly role: 'look' | 'tick' | 'measure';
  /** Milliseconds since 1970. */
  readonly until?: number;
  /** Different whenever the project or the share is. */
  readonly state: string;
  readonly questions: readonly PageQuestion[];
}

export interface WebPorts extends Ports {
  answer(request: Request): AsyncIterable<Answer>;
  readonly preferences: Request['preferences'];
  /** What this link leads to; undefined for one that was never given, has ended or was stopped. */
  opened(asker: Asker): Promise<OpenedLink | undefined>;
  /** Without it, nothing can be taken along as a file. */
  readonly files?: FileMaker;
  /** Whether one more request is let in now, of a link or an address, or one more thing that is sent by a link. */
  allow(of: 'link' | 'address' | 'permission', key: string): Promise<boolean>;
  /** The address that people reach the page by, where it may not be the one that requests name. */
  address?(): string | undefined;
}
