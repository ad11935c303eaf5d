/** Runs the fault tests and prints what came of each: `npm run faults`, or `npm run faults -- --quick`; a name runs those it begins, `app` those of the bot as it is hosted. */

import { faultsOfApp } from './app/main.ts';
import { missing } from './own-server.ts';
import { besideKilled, crashes, killed, manyEmbedded, manyProcesses, slowAndCut } from './scenarios.ts';
import type { Outcome } from './tally.ts';
import { tickBesideBot, tickInFolder, tickOnServer } from './together.ts';

const words = process.argv.slice(2);
const quick = words.includes('--quick');
const names = words.filter((word) => !word.startsWith('--'));
const writers = { processes: 4, changes: quick ? 50 : 1_000, lanes: 2 };
// Changes that come while one is under way are put together, so many lanes get through a slow store in few puts.
const late = {
  processes: quick ? 2 : 4,
  changes: quick ? 50 : 1_000,
  lanes: 250,
  delay: quick ? 300 : 2_000,
  cuts: quick ? 2 : 3,
};
// As many as a project keeps notes of.
const ticking = { lines: quick ? 40 : 400, lanes: 4 };

const runs: readonly (readonly [string, () => Promise<Outcome>])[] = [
  ['embedded: many changes at once', () => manyEmbedded(64)],
  [`embedded: killed ${quick ? 10 : 200} times`, () => killed(quick ? 10 : 200, Math.random)],
  ['embedded: owner and two helpers tick at once', () => tickInFolder(ticking)],
  ['embedded: owner and two helpers tick in two processes', () => tickBesideBot(ticking)],
  [
    `embedded: three processes beside one that is killed ${quick ? 10 : 100} times`,
    () => besideKilled({ processes: 3, changes: quick ? 100 : 1_000, lanes: 2, kills: quick ? 10 : 100 }, Math.random),
  ],
  ...(['postgres', 'redis'] as const).flatMap((server) => {
    const lacking = missing(server);
    if (lacking.length > 0) {
      console.log(`${server}: passed over, for want of ${lacking.join(', ')}`);
      return [];
    }
    const crashed = { times: quick ? 1 : 5, lanes: 8 };
    return [
      [`${server}: ${writers.processes} processes`, () => manyProcesses(server, writers)],
      [`${server}: owner and two helpers tick in two processes`, () => tickOnServer(server, ticking)],
      [`${server}: slowed by ${late.delay} ms and cut`, () => slowAndCut(server, late)],
      [`${server}: crashed ${crashed.times} times under load`, () => crashes(server, crashed)],
    ] as const;
  }),
];

let wrong = 0;
for (const [name, run] of runs) {
  if (names.length > 0 && !names.some((begin) => name.startsWith(begin))) continue;
  const began = performance.now();
  const { asked, acknowledged, refused, lost, doubled } = await run();
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  const figures = `${asked} asked, ${acknowledged} acknowledged, ${refused} refused, ${lost} lost, ${doubled} doubled`;
  console.log(`${name}: ${figures} (${seconds} s)`);
  if (lost > 0 || doubled > 0 || acknowledged === 0) wrong++;
}
const [first, ...rest] = names;
if (first === undefined || first === 'app') wrong += await faultsOfApp(quick, rest);
if (wrong > 0) process.exitCode = 1;
