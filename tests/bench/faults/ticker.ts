/** A process that ticks for some of a project's people: prints the number of each line that was saved. */

import { writeSync } from 'node:fs';
import { openStore } from '../../../src/storage/store.ts';
import { closeWorkers } from '../../../src/workers/pool.ts';
import { type Party, ticks } from './ticking.ts';

interface ReadLine {
  readonly url: string;
  readonly folder: string;
  readonly parties: readonly Party[];
  readonly numbers: readonly number[];
  readonly lanes: number;
}

const { url, folder, parties, numbers, lanes } = JSON.parse(process.argv[2] ?? '{}') as ReadLine;
const store = openStore({
  url,
  folder,
  use: 'terminal',
  fault: (cause) => {
    throw cause;
  },
});
await Promise.all(
  parties.map((party) =>
    ticks(party, numbers, lanes, store, (number, saved) => {
      if (saved) writeSync(1, `${party.name} ${number}\n`);
    }),
  ),
);
await store.close();
await closeWorkers();
