/** Pages as they were worked out: kept by link and by all that they show, so that a visit lays no floor anew. */

import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { Asker } from '../../accounts/asker.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { isSheets, type Sheets } from '../../reply/job-sheet.ts';
import { PAGE_GOOD, PAGES_KEPT } from './limits.ts';
import type { Opened, WebPorts } from './ports.ts';

/** Packs off the event loop. No secret stands in a page beside what others wrote, which packing could give away. */
const packed = promisify(gzip);

/** The line that gathers what a link shows. */
const GATHER = 'project sheets';

/** The sheets, or what came instead of them. */
export type Gathered = { readonly sheets: Sheets } | { readonly instead: Answer };

/** A page as it is sent, and packed for those who take it so. */
export interface Written {
  readonly text: string;
  readonly packed: Uint8Array<ArrayBuffer>;
}

interface Kept {
  readonly at: number;
  readonly gathered: Promise<Gathered>;
  /** The page as it was written, where it was. */
  page?: Promise<Written>;
}

/** Pages of this process. The link's hash is a part of every key: nothing of one link is ever shown for another. */
export class Pages {
  readonly #ports: Pick<WebPorts, 'answer' | 'habits' | 'now'>;
  readonly #kept = new Map<string, Kept>();

  constructor(ports: Pick<WebPorts, 'answer' | 'habits' | 'now'>) {
    this.#ports = ports;
  }

  /** What a link shows now. */
  gathered(asker: Asker, opened: Opened): Promise<Gathered> {
    return this.#entry(asker, opened).gathered;
  }

  /** What `write` makes of a link's page, once for each state of it. */
  written(asker: Asker, opened: Opened, write: () => Promise<string>): Promise<Written> {
    const entry = this.#entry(asker, opened);
    if (!entry.page) {
      const page = write().then(async (text) => ({ text, packed: new Uint8Array(await packed(text)) }));
      entry.page = page;
      // What could not be written is tried anew by the next who comes.
      page.catch(() => delete entry.page);
    }
    return entry.page;
  }

  #entry(asker: Asker, opened: Opened): Kept {
    const key = `${asker.id} ${opened.state}`;
    const now = this.#ports.now?.() ?? Date.now();
    const found = this.#kept.get(key);
    this.#kept.delete(key);
    const entry = found && now - found.at < PAGE_GOOD ? found : { at: now, gathered: this.#gather(asker) };
    // Kept anew, it is the last to go.
    this.#kept.set(key, entry);
    for (const oldest of this.#kept.keys()) {
      if (this.#kept.size <= PAGES_KEPT) break;
      this.#kept.delete(oldest);
    }
    const forget = (): void => {
      if (this.#kept.get(key) === entry) this.#kept.delete(key);
    };
    if (entry !== found) {
      void entry.gathered.then((gathered) => ('sheets' in gathered ? undefined : forget()), forget);
    }
    return entry;
  }

  async #gather(asker: Asker): Promise<Gathered> {
    const { answer, habits } = this.#ports;
    let last: Answer | undefined;
    for await (const one of answer({ asker, habits, text: GATHER })) last = one;
    if (!last) throw new Error('an ask without an answer');
    return 'data' in last && isSheets(last.data) ? { sheets: last.data } : { instead: last };
  }
}
