/** A process that changes one project again and again: prints each mark that was acknowledged, and how many were refused. */

import { writeSync } from 'node:fs';
import { openStore, type StorePlace } from '../../../src/storage/store.ts';
import { Outage } from '../../../src/storage/types.ts';
import { mark, TALLY } from './tally.ts';

interface ReadLine {
  readonly url: string;
  readonly folder: string;
  readonly use?: StorePlace['use'];
  readonly writer: string;
  /** Marks to make in all; those refused are not made again. */
  readonly changes: number;
  /** Changes under way at a time. */
  readonly lanes: number;
}

const { url, folder, use = 'bot', writer, changes, lanes } = JSON.parse(process.argv[2] ?? '{}') as ReadLine;
const fault = (cause: unknown): never => {
  throw cause;
};
const store = openStore({ url, folder, use, fault });
const tallies = store.shelf('tally', TALLY);
await tallies.create('one', {});
writeSync(1, 'ready\n');

let next = 0;
async function lane(): Promise<void> {
  while (next < changes) {
    const number = next++;
    try {
      await tallies.change('one', mark(writer, number));
      // At once, so that a process that is killed has told of everything that it was told.
      writeSync(1, `done ${number}\n`);
    } catch (cause) {
      if (!(cause instanceof Outage)) throw cause;
      writeSync(1, `refused ${number}\n`);
    }
  }
}
await Promise.all(Array.from({ length: lanes }, lane));
await store.close();
