/** Visitors in a process of their own, who open pages over connections that stay open and time what comes back: what they cost is not the server's. */

import { Agent, get } from 'node:http';

/** What is opened how often, so many at once. */
export interface Visits {
  readonly url: string;
  readonly count: number;
  readonly atOnce: number;
}

/** Milliseconds of each visit, of all of them, and the bytes of one. */
export interface Visited {
  readonly times: readonly number[];
  readonly took: number;
  readonly bytes: number;
}

const agent = new Agent({ keepAlive: true });

function open(url: string): Promise<number> {
  return new Promise((done, lost) => {
    get(url, { agent, headers: { 'accept-encoding': 'gzip' } }, (response) => {
      let bytes = 0;
      response.on('data', (part: Buffer) => {
        bytes += part.length;
      });
      response.on('end', () =>
        response.statusCode === 200 ? done(bytes) : lost(new Error(`${url}: ${response.statusCode}`)),
      );
      response.on('error', lost);
    }).on('error', lost);
  });
}

async function visit({ url, count, atOnce }: Visits): Promise<Visited> {
  const times: number[] = [];
  let [left, bytes] = [count, 0];
  const began = performance.now();
  const lane = async (): Promise<void> => {
    while (left-- > 0) {
      const at = performance.now();
      bytes = await open(url);
      times.push(performance.now() - at);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, lane));
  return { times, took: performance.now() - began, bytes };
}

process.on('message', (given: Visits) => void visit(given).then((visited) => process.send?.(visited)));
process.on('disconnect', () => process.exit(0));
