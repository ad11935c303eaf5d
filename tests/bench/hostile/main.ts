/** Hostile and tired input at random: `npm run fuzz`, `-- --quick` for less, `-- --asks 5000 --seed 7` for more of another kind. */

import { fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { type Metric, metric } from '../metric.ts';
import { type Ran, together } from './ran.ts';
import { slow } from './slow.ts';

const FULL = 1_000_000;
const QUICK = 4_000;
/** Megabytes that a heap may grow from a tenth of a run to its end: ids of some thousand deliveries are remembered. */
const FLAT = 30;

const words = process.argv.slice(2);
const given = (name: string, standard: number): number => {
  const at = words.indexOf(`--${name}`);
  return at < 0 ? standard : Number(words[at + 1]);
};
const quick = words.includes('--quick');
const asks = given('asks', quick ? QUICK : FULL);
const seed = given('seed', 1);
if (!Number.isSafeInteger(asks) || asks < 100 || !Number.isSafeInteger(seed)) {
  process.stderr.write('Type at least 100 asks and a whole number as a seed: npm run fuzz -- --asks 5000 --seed 7\n');
  process.exit(2);
}

const latest = new Map<number, Ran>();
const processes = Math.min(availableParallelism(), quick ? 2 : 4);
const runs = Array.from({ length: processes }, (_, i) => part(seed * 1000 + i, Math.ceil(asks / processes)));
const [ran, slowly] = [together(await Promise.all(runs)), await slow()];

for (const one of [...figures(ran), ...slowly]) {
  const verdict = one.ok === null ? '' : `   goal ${one.goal}: ${one.ok ? 'met' : 'MISSED'}`;
  process.stdout.write(`${one.bench.padEnd(6)} ${one.metric.padEnd(58)} ${String(one.value).padStart(10)}${verdict}\n`);
  if (one.ok === false) process.exitCode = 1;
}
const sorted = Object.entries(ran.statuses).sort(([a], [b]) => (a < b ? -1 : 1));
process.stdout.write(`${sorted.map(([name, count]) => `${name}: ${count}`).join(', ')}\n`);
process.stdout.write(
  `slowest reading: ${JSON.stringify(ran.read.text)}\nslowest first answer: ${JSON.stringify(ran.first.text)}\nslowest last answer: ${JSON.stringify(ran.last.text)}\n`,
);
for (const text of [...ran.crashes.slice(0, 5), ...ran.causes]) process.stdout.write(`told: ${text}\n`);

/** One process with its part of the asks; tells how all of them go, so that a run cut off still says something. */
function part(own: number, count: number): Promise<Ran> {
  const child = fork(fileURLToPath(new URL('./lanes.js', import.meta.url)), [String(own), String(count)]);
  return new Promise((resolve, reject) => {
    child.on('message', (came) => {
      const ran = came as Ran;
      latest.set(own, ran);
      if (ran.asks === count) return resolve(ran);
      const all = together([...latest.values()]);
      const given = figures(all).map(({ metric: name, value }) => `${name} ${value}`);
      process.stderr.write(`${new Date().toISOString()} ${given.join('; ')}\n`);
      for (const cause of all.causes) if (cause.startsWith('whole')) process.stderr.write(`told: ${cause}\n`);
    });
    child.once('exit', (code) => reject(new Error(`a process ended with ${code} before its asks were through`)));
  });
}

function figures({
  crashes,
  hung,
  faults,
  bentFaults,
  first,
  last,
  read,
  heap,
  resident,
  ...run
}: Ran): readonly Metric[] {
  return [
    metric('fuzz', 'asks', run.asks),
    metric('fuzz', 'seconds', run.seconds),
    metric('fuzz', 'crashes: exceptions that nothing caught', crashes.length, { below: 1 }),
    metric('fuzz', 'requests never answered', hung, { below: 1 }),
    metric('fuzz', 'faults at asks as clients send them', faults, { below: 1 }),
    metric('fuzz', 'faults at bent and damaged bodies, each told', bentFaults),
    metric('fuzz', 'slowest reading, ms of processor time', read.ms, { below: 50 }),
    metric('fuzz', 'slowest first answer, ms less other work on the machine', first.ms, { below: 3000 }),
    metric('fuzz', 'slowest last answer, ms likewise', last.ms),
    metric('fuzz', 'heap at a tenth of the run, MB', heap[0]),
    metric('fuzz', 'heap at its end, MB', heap[1], { below: heap[0] + FLAT }),
    metric('fuzz', 'resident at a tenth of the run, MB', resident[0]),
    metric('fuzz', 'resident at its end, MB', resident[1]),
  ];
}
