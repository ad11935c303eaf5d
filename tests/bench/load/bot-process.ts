/** The bot as whoever hosts it runs it: a process of its own, told by its environment, with figures read from the system. */

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { freePort } from '../faults/own-server.ts';
import type { Deed, Memory } from './probe.ts';

const PROGRAM = fileURLToPath(new URL('../../../src/main.js', import.meta.url));
const PROBE = new URL('./probe.js', import.meta.url).href;
/** Clock ticks a second in /proc (Linux gives it as 100 on every machine that Node runs on: man 5 proc, USER_HZ). */
const TICKS = 100;

export interface BotProcess {
  readonly pid: number;
  /** Where it takes requests. */
  readonly url: string;
  /** Processor seconds of all its threads since it began; it must be running, on Linux. */
  cpu(): number;
  memory(): Promise<Memory>;
  /** Ends all its worker threads; how many there were. */
  killWorkers(): Promise<number>;
  signal(signal: NodeJS.Signals): void;
  /** What it wrote on standard error. */
  given(): string;
  /** How it ended: its exit code, or the signal. */
  readonly ended: Promise<number | NodeJS.Signals>;
}

export type Environment = Readonly<Record<string, string>>;

/** Starts a bot and resolves when it takes what is asked. Rejects when it ends before, or takes more than two minutes. */
export async function startBot(environment: Environment, port?: number): Promise<BotProcess> {
  const own = port ?? (await freePort());
  const env = { PATH: process.env.PATH ?? '', HOME: '/nonexistent', ...environment, FLOORHAND_PORT: String(own) };
  const child = spawn(process.execPath, ['--import', PROBE, PROGRAM], {
    env,
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  });
  let given = '';
  child.stderr?.on('data', (data) => {
    given = `${given}${data}`.slice(-20_000);
  });
  const ended = once(child, 'exit').then(([code, signal]) => (code ?? signal) as number | NodeJS.Signals);
  const url = `http://127.0.0.1:${own}`;
  const early = ended.then((how) => {
    throw new Error(`The bot ended with ${how}: ${given}`);
  });
  early.catch(() => {});
  try {
    await Promise.race([early, untilReady(url)]);
  } catch (cause) {
    child.kill('SIGKILL');
    throw new Error(`A bot did not start: ${given.slice(-2_000)}`, { cause });
  }
  const pid = child.pid ?? 0;
  const probed = async <T>(permission: Deed): Promise<T> => {
    const answered = once(child, 'message');
    child.send(permission);
    const [given] = await Promise.race([answered, early]);
    return given as T;
  };
  return {
    pid,
    url,
    cpu: () => cpuOf(pid),
    memory: () => probed<Memory>('memory'),
    killWorkers: async () => (await probed<{ killed: number }>('kill workers')).killed,
    signal: (signal) => void child.kill(signal),
    given: () => given,
    ended,
  };
}

async function untilReady(url: string): Promise<void> {
  for (const end = performance.now() + 120_000; performance.now() < end; ) {
    const status = await fetch(`${url}/readyz`).then(
      ({ status }) => status,
      () => undefined,
    );
    if (status === 200) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`Nothing is ready at ${url}.`);
}

function cpuOf(pid: number): number {
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
  // The second field is a name in brackets that may hold anything; user and system time are the 14th and 15th (man 5 proc).
  const [user = 0, system = 0] = stat
    .slice(stat.lastIndexOf(')') + 2)
    .split(' ')
    .slice(11, 13)
    .map(Number);
  return (user + system) / TICKS;
}
