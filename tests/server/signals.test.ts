/** What asks a process to end: each signal, the same twice, and faults that nobody caught, in small processes of their own. */

import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { describe, expect, it } from 'vitest';

const SIGNALS = new URL('../../dist/src/server/ending.js', import.meta.url).href;

/** Runs a process that waits to be asked to end, and `then` does no more for a minute; what it wrote and how it ended. */
async function ended(
  after: string,
  signals: readonly NodeJS.Signals[],
): Promise<readonly [readonly string[], unknown]> {
  const code = `import { firstSignal } from ${JSON.stringify(SIGNALS)};
    const { requested, code } = firstSignal((cause) => console.log('fault', cause.message));
    setTimeout(() => {}, 60_000);
    requested.then(() => { console.log('asked'); ${after} });
    console.log('ready');`;
  const child = spawn(process.execPath, ['--input-type=module', '--eval', code], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const how = new Promise((resolve) => child.once('exit', (exit, signal) => resolve(exit ?? signal)));
  const lines: string[] = [];
  let next = 0;
  createInterface({ input: child.stdout }).on('line', (line) => {
    lines.push(line);
    const signal = signals[next++];
    if (signal) child.kill(signal);
  });
  const exit = await how;
  return [lines, exit];
}

describe('a process', () => {
  it.each<[string, string, readonly NodeJS.Signals[], readonly string[], number]>([
    ['ends by itself once asked', 'process.exit(code())', ['SIGTERM'], ['ready', 'asked'], 0],
    ['ends at once when asked twice', '', ['SIGTERM', 'SIGTERM'], ['ready', 'asked'], 143],
    ['ends at once when interrupted twice', '', ['SIGINT', 'SIGINT'], ['ready', 'asked'], 130],
    [
      'ends as failed by a fault that nobody caught, and goes on with its end at a second one',
      "Promise.reject(new Error('second')); setTimeout(() => process.exit(code()), 50)",
      ['SIGTERM'],
      ['ready', 'asked', 'fault second'],
      1,
    ],
  ])('%s', async (_what, after, signals, lines, exit) => {
    expect(await ended(after, signals)).toEqual([lines, exit]);
  });
});
