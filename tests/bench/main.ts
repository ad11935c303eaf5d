/** Runs the benches named on the command line, or all: `npm run bench -- planks --json --quick`. */

import { angled } from './angled.ts';
import { answers } from './answers.ts';
import { discord } from './discord.ts';
import { fuzz } from './fuzz.ts';
import { handbook } from './handbook.ts';
import { home } from './home.ts';
import type { Bench, Metric } from './metric.ts';
import { page } from './page.ts';
import { pictures } from './pictures.ts';
import { plain } from './plain.ts';
import { planks } from './planks.ts';
import { questions } from './questions.ts';
import { sheet } from './sheet.ts';
import { slack } from './slack.ts';
import { start } from './start.ts';
import { sticks } from './sticks.ts';
import { store } from './store.ts';
import { suggestions } from './suggestions.ts';

const BENCHES: readonly Bench[] = [
  planks,
  home,
  angled,
  sticks,
  plain,
  pictures,
  store,
  discord,
  slack,
  page,
  sheet,
  start,
  fuzz,
  suggestions,
  questions,
  answers,
  handbook,
];

const words = process.argv.slice(2);
const names = words.filter((word) => !word.startsWith('--'));
const unknown = names.filter((name) => !BENCHES.some((bench) => bench.name === name));
if (unknown.length > 0) {
  process.stderr.write(`No bench ${unknown.join(', ')}; there are ${BENCHES.map(({ name }) => name).join(', ')}.\n`);
  process.exit(2);
}

const metrics: Metric[] = [];
for (const bench of BENCHES) {
  if (names.length > 0 && !names.includes(bench.name)) continue;
  const found = await bench.run(words.includes('--quick') ? 'quick' : 'full');
  metrics.push(...found);
  if (!words.includes('--json')) for (const one of found) process.stdout.write(`${line(one)}\n`);
}
if (words.includes('--json')) process.stdout.write(`${JSON.stringify(metrics, null, 1)}\n`);

function line({ bench, metric, value, goal, ok }: Metric): string {
  const verdict = ok === null ? '' : `   goal ${goal}: ${ok ? 'met' : 'MISSED'}`;
  return `${bench.padEnd(8)} ${metric.padEnd(58)} ${String(value).padStart(10)}${verdict}`;
}
