/** Loads the bot as it is hosted, 1 process and 4 on Postgres, with 200 people in both chats: `npm run load`, or `npm run load -- --quick`. */

import { availableParallelism, loadavg } from 'node:os';
import { missing, ownServer } from '../faults/own-server.ts';
import { average, percentile } from '../metric.ts';
import type { AnsweredRequest } from './asked.ts';
import { type BotProcess, startBot } from './bot-process.ts';
import { bothChats, type Chats } from './chats.ts';
import { sums } from './lines.ts';
import { begin, ledger, people, run } from './people.ts';
import { flawOf, isEarly, type Known, learn } from './right.ts';

const quick = process.argv.includes('--quick');
const CROWD = quick ? 40 : 200;
/** Seconds before anything is measured, in which all is loaded and compiled in each process. */
const WARM = quick ? 4 : 15;
const LONG = quick ? 8 : 35;
/** Asks a second at which times and the processor are measured: each of 200 people asks every half minute (in a quick run 40 people, every quarter). */
const PACE = CROWD / (quick ? 15 : 30);
/** The processor that 4 processes may take for an ask, of what 1 takes; shared caches and compilers are not had for nothing. */
const MOST_RATIO = 1.25;
/** Megabytes that the heap of a process may grow by from a third of a run to its end. */
const FLAT = 30;

const lacking = missing('postgres');
if (lacking.length > 0) {
  console.error(`No load was run, for want of ${lacking.join(', ')}.`);
  process.exit(process.env.FLOORHAND_REQUIRE_SERVICES === '1' ? 1 : 0);
}

interface Figures {
  readonly throughput: number;
  readonly p50: number;
  readonly p99: number;
  readonly paced: { readonly p50: number; readonly p99: number; readonly cpu: number };
  readonly cpu: number;
  readonly grown: number;
  readonly held: number;
  readonly flaws: readonly string[];
  readonly early: number;
  readonly notes: { readonly acknowledged: number; readonly lost: number; readonly doubled: number };
}

/** Loads so many processes on a database of their own. */
async function loaded(processes: number, known: Known): Promise<Figures> {
  const server = await ownServer('postgres');
  const chats = await bothChats({ connected: false });
  const bots: BotProcess[] = [];
  try {
    const environment = { ...chats.environment, FLOORHAND_STORE: server.url, ...UNLIMITED };
    for (let i = 0; i < processes; i++) bots.push(await startBot(environment));
    chats.reach(bots.map(({ url }) => url));
    return await measured(bots, chats, known, server.url);
  } finally {
    for (const bot of bots) bot.signal('SIGKILL');
    await Promise.all(bots.map(({ ended }) => ended));
    await chats.close();
    await server.clear();
  }
}

/** Limits a person would meet only by asking as no person does. */
const UNLIMITED = {
  FLOORHAND_ASKS_PER_MINUTE: '100000',
  FLOORHAND_SERVER_ASKS_PER_MINUTE: '1000000',
};

async function measured(bots: readonly BotProcess[], chats: Chats, known: Known, url: string): Promise<Figures> {
  const crowd = people(CROWD, 1);
  await begin(crowd, chats);
  const cpu = (): number => bots.reduce((sum, bot) => sum + bot.cpu(), 0);
  const memory = () => Promise.all(bots.map((bot) => bot.memory()));
  const warm = await run(crowd, chats, { seconds: WARM });
  const beforePaced = cpu();
  const paced = await run(crowd, chats, { seconds: LONG, perSecond: PACE });
  const pacedCpu = (cpu() - beforePaced) / paced.requested.length;
  const early = await memory();
  const before = cpu();
  const crowded = await run(crowd, chats, { seconds: LONG });
  const whole = (cpu() - before) / crowded.requested.length;
  const late = await memory();
  const all = [...warm.requested, ...paced.requested, ...crowded.requested];
  const times = (requested: readonly AnsweredRequest[]) =>
    requested.flatMap(({ first }) => (first === undefined ? [] : [first]));
  return {
    throughput: crowded.requested.length / crowded.seconds,
    p50: percentile(times(crowded.requested), 0.5),
    p99: percentile(times(crowded.requested), 0.99),
    paced: {
      p50: percentile(times(paced.requested), 0.5),
      p99: percentile(times(paced.requested), 0.99),
      cpu: pacedCpu,
    },
    cpu: whole,
    grown: Math.max(...late.map(({ heap }, i) => (heap - (early[i]?.heap ?? 0)) / 1e6)),
    held: average(late.map(({ held }) => held / 1e6)),
    flaws: all.flatMap((requested) => {
      const flaw = flawOf(requested, known);
      return flaw === undefined ? [] : [`${requested.person.chat}: ${requested.line}: ${flaw}`];
    }),
    early: all.filter((requested) => isEarly(requested, known)).length,
    notes: await ledger(crowd, all, { url, folder: '' }),
  };
}

let missed = 0;
function tell(name: string, value: number, goal?: { readonly most: number }): void {
  const met = goal === undefined || value <= goal.most;
  if (!met) missed++;
  const verdict = goal === undefined ? '' : `   at most ${goal.most}: ${met ? 'met' : 'MISSED'}`;
  console.log(`${name.padEnd(64)} ${String(Number(value.toPrecision(4))).padStart(9)}${verdict}`);
}

console.log(`${availableParallelism()} processors; in the last minute ${loadavg()[0]?.toFixed(1)} tasks wanted them`);
const known = await learn(
  sums().map(({ line }) => line),
  1,
);
const found: Figures[] = [];
const only = process.argv.find((word) => /^[1-9]$/.test(word));
for (const processes of only === undefined ? [1, 4] : [Number(only)]) {
  const name = processes === 1 ? '1 process' : `${processes} processes`;
  const figures = await loaded(processes, known);
  found.push(figures);
  tell(`${name}: asks a second, ${CROWD} people without a pause`, figures.throughput);
  tell(`${name}: ms to an answer so, p50`, figures.p50);
  tell(`${name}: ms to an answer so, p99`, figures.p99);
  tell(`${name}: ms to an answer asking every ${CROWD / PACE} s, p50`, figures.paced.p50);
  tell(
    `${name}: ms to an answer asking every ${CROWD / PACE} s, p99`,
    figures.paced.p99,
    quick ? undefined : { most: 3_000 },
  );
  tell(`${name}: processor, ms an ask without a pause`, figures.cpu * 1000);
  tell(`${name}: processor, ms an ask asking every ${CROWD / PACE} s`, figures.paced.cpu * 1000);
  tell(`${name}: heap grown in the crowd, MB, the most of a process`, figures.grown, { most: FLAT });
  tell(`${name}: memory held of the machine by a process, MB`, figures.held);
  tell(`${name}: wrong or missing answers`, figures.flaws.length, { most: 0 });
  tell(`${name}: right answers in whose place no better one came in time`, figures.early);
  tell(`${name}: notes acknowledged`, figures.notes.acknowledged);
  tell(`${name}: of them lost`, figures.notes.lost, { most: 0 });
  tell(`${name}: notes there twice`, figures.notes.doubled, { most: 0 });
  for (const [flaw, count] of counted(figures.flaws).slice(0, 10)) console.log(`  ${count} × ${flaw}`);
}
const [one, four] = found;
if (one && four) {
  tell('processor an ask, 4 processes to 1, at a pace', four.paced.cpu / one.paced.cpu, { most: MOST_RATIO });
  tell('processor an ask, 4 processes to 1, without a pause', four.cpu / one.cpu);
}
if (missed > 0) process.exitCode = 1;

function counted(lines: readonly string[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const line of lines) counts.set(line, (counts.get(line) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a);
}
