/** How long the bot takes from nothing to ready, and what it holds when nobody asks: a process of its own, both chats on loopback. */

import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { botProcess } from '../server/bot-process.ts';
import { average, type Bench, type Metric, metric, percentile, type Size } from './metric.ts';

const MAIN = fileURLToPath(new URL('../../src/main.js', import.meta.url));
/** Milliseconds after which the workers that warmed it up are gone. */
const IDLE = 35_000;

export const start: Bench = { name: 'start', run: started };

async function started(size: Size): Promise<readonly Metric[]> {
  const folder = await mkdtemp(join(tmpdir(), 'floorhand-start-'));
  try {
    const times = size === 'quick' ? 2 : 5;
    const bots: Began[] = [];
    const asks: number[] = [];
    for (let i = 0; i < times; i++) {
      bots.push(await began(join(folder, String(i)), size === 'full' && i === 0 ? IDLE : 1_000));
      asks.push(await askTook(join(folder, 'ask')));
    }
    const [idle] = bots;
    return [
      metric('start', 'bot, both chats, embedded store: to ready (median), ms', median(bots.map(({ ready }) => ready))),
      metric('start', 'bot: CPU until ready (mean), ms', average(bots.map(({ cpu }) => cpu)), { below: 5_000 }),
      metric(
        'start',
        `bot, idle for ${size === 'full' ? IDLE / 1000 : 1} s: memory (resident), MB`,
        idle?.memory ?? Number.NaN,
        { below: 400 },
      ),
      metric('start', 'bot, told to end while idle (median), ms', median(bots.map(({ end }) => end)), { below: 2_000 }),
      metric('start', 'terminal, one sum: whole process (median), ms', median(asks), { below: 3_000 }),
    ];
  } finally {
    await rm(folder, { recursive: true });
  }
}

interface Began {
  readonly ready: number;
  readonly cpu: number;
  readonly memory: number;
  readonly end: number;
}

async function began(data: string, idle: number): Promise<Began> {
  const tokens = { discordToken: 'MTIz.a.b', slackToken: 'xoxb-1', signingSecret: 'signing' };
  const bot = await botProcess({ data, ...tokens });
  try {
    const cpu = cpuOf(bot.child.pid);
    await sleep(idle);
    const memory = memoryOf(bot.child.pid);
    const given = performance.now();
    bot.child.kill('SIGTERM');
    await bot.ended;
    return { ready: bot.startTook, cpu, memory, end: performance.now() - given };
  } finally {
    await bot.close();
  }
}

/** Megabytes in memory, as Linux counts them (proc(5), VmRSS). */
function memoryOf(pid: number | undefined): number {
  const [, kilobytes = ''] = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
  return Number(kilobytes) / 1024;
}

/** Milliseconds of processor time so far (proc(5), utime and stime of stat, in hundredths of a second). */
function cpuOf(pid: number | undefined): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
  return (Number(fields[11]) + Number(fields[12])) * 10;
}

async function askTook(data: string): Promise<number> {
  const given = performance.now();
  const child = spawn(process.execPath, [MAIN, 'ask', 'tape 1 ft + 2 in'], {
    stdio: 'ignore',
    env: { ...process.env, FLOORHAND_DATA: data },
  });
  await new Promise((resolve) => child.once('exit', resolve));
  return performance.now() - given;
}

function median(values: readonly number[]): number {
  return percentile(values, 0.5);
}
