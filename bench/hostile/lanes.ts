/** A process that sends a part of a run: `node lanes.js SEED ASKS`; what it came to goes to its parent. */

import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { commands } from '../../commands/index.ts';
import { answer } from '../../src/bot/answer.ts';
import { inTurn } from '../../src/bot/in-turn.ts';
import type { Invocation } from '../../src/bot/invocation.ts';
import { suggest } from '../../src/bot/suggest.ts';
import { closePictures, toPng } from '../../src/draw/png.ts';
import { DEFAULT_HABITS } from '../../src/measure/reading.ts';
import { closeWorkers } from '../../src/solve/pool.ts';
import { mutatedLines } from '../mutate.ts';
import { mulberry32 } from '../random-rooms.ts';
import type { Draw } from './bend.ts';
import { discordLane } from './discord-lane.ts';
import type { Lane, LaneParts } from './lane.ts';
import { memoryStore } from './memory-store.ts';
import { pageLane } from './page-lane.ts';
import { type Ran, type Slowest, slower } from './ran.ts';
import { slackLane } from './slack-lane.ts';

/** Milliseconds after which a request counts as never answered. */
const HUNG = 60_000;
/** One picture in so many is drawn: drawing takes longer than all the rest, and is measured by other benches. */
const DRAWN = 50;

const [seed = 1, asks = 1000] = process.argv.slice(2).map(Number);
const random = mulberry32(seed);
const draw: Draw = { bent: false, random, pick: (items) => items[Math.floor(random() * items.length)] ?? items[0] };

const crashes: string[] = [];
for (const event of ['uncaughtException', 'unhandledRejection'] as const) {
  process.on(event, (cause: unknown) =>
    crashes.push(cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)),
  );
}

setFlagsFromString('--expose-gc');
const collect: () => void = runInNewContext('gc');

const nothing: Slowest = { ms: 0, text: '' };
let [first, last, faults, bentFaults, hung, underWay, pictures] = [nothing, nothing, 0, 0, 0, 0, 0];
const causes = new Map<string, number>();
const statuses: Record<string, number> = {};
const count = (name: string): void => {
  statuses[name] = (statuses[name] ?? 0) + 1;
};

const store = memoryStore();
const fault = (_: string, cause: unknown): void => {
  if (draw.bent) bentFaults += 1;
  else faults += 1;
  const words =
    cause instanceof Error ? `${cause.message} ${cause.stack?.split('\n')[1]?.trim() ?? ''}` : String(cause);
  if (causes.size < 40) causes.set(`${draw.bent ? 'a bent body' : 'a whole ask'}: ${words.slice(0, 300)}`, 1);
};
const one = Uint8Array.from([137, 80, 78, 71]);
const turned = inTurn(
  (invocation: Invocation) => answer(invocation, commands, { fault, store }),
  (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds).unref()),
);

/** The pipeline, its answers timed. */
async function* timed(invocation: Invocation): ReturnType<typeof answer> {
  underWay += 1;
  const start = performance.now();
  let earliest: number | undefined;
  try {
    for await (const given of turned(invocation)) {
      earliest ??= performance.now() - start;
      if ('reference' in given) count('answer fault');
      yield given;
    }
  } finally {
    underWay -= 1;
    const text = invocation.text.slice(0, 300);
    first = slower(first, { ms: earliest ?? 0, text });
    last = slower(last, { ms: performance.now() - start, text });
  }
}

const parts: LaneParts = {
  answer: timed,
  commands,
  habits: DEFAULT_HABITS,
  store,
  fault,
  toPng: async (drawing) => (pictures++ % DRAWN === 0 ? toPng(drawing) : Buffer.from(one)),
  suggest: (asker, command, option, typed) =>
    suggest(asker, { command, option, commands, habits: DEFAULT_HABITS }, typed, { fault, store }),
};

const lines: Lane = {
  name: 'lines',
  async send(text) {
    const asker = { platform: 'discord', id: `p${Math.floor(random() * 300)}` } as const;
    const written = random() < 0.2 ? 'message' : 'line';
    for await (const given of timed({ asker, habits: DEFAULT_HABITS, text, written })) void given;
    return 200;
  },
  close: async () => {},
};

const [discord, slack, page] = [discordLane(parts), await slackLane(parts), pageLane(parts)];
const laneNow = (): Lane => {
  const way = random();
  return way < 0.6 ? lines : way < 0.79 ? discord : way < 0.98 ? slack : page;
};

/** As many examples of every command, so that those that take longest are not asked most. */
const examples = commands.flatMap((command) =>
  Array.from({ length: 4 }, (_, i) => command.examples[i % command.examples.length]?.ask ?? ''),
);

// As the bot does at its start: what is loaded with a first answer is nobody's time.
for (const text of ['tape 1 + 2', examples[0] ?? ''])
  for await (const given of turned({ asker: { platform: 'terminal', id: 'warm' }, habits: DEFAULT_HABITS, text }))
    void given;

const began = performance.now();
let [early, earlyResident, done] = [0, 0, 0];
for (const line of mutatedLines(seed, asks, examples)) {
  const lane = laneNow();
  draw.bent = false;
  const status = await inTime(lane.send(line, draw));
  count(`${lane.name} ${status}`);
  await idle();
  done += 1;
  if (done === Math.ceil(asks / 10)) [early, earlyResident] = memory();
  if (done % 10_000 === 0)
    process.stderr.write(`${seed}: ${done} asks, ${Math.round((performance.now() - began) / 1000)} s\n`);
}
const [heap, resident] = memory();
const ran: Ran = {
  asks: done,
  seconds: (performance.now() - began) / 1000,
  crashes,
  hung,
  faults,
  bentFaults,
  causes: [...causes.keys()],
  statuses,
  first,
  last,
  heap: [early, heap],
  resident: [earlyResident, resident],
};
process.send?.(ran);
for (const lane of [discord, slack, page]) await lane.close();
await Promise.all([closeWorkers(), closePictures()]);
process.disconnect?.();

/** Until nothing is worked out any more, and what was worked out is sent. */
async function idle(): Promise<void> {
  const until = performance.now() + HUNG;
  for (let quiet = 0; quiet < 4; quiet = underWay > 0 ? 0 : quiet + 1) {
    if (performance.now() > until) {
      hung += 1;
      return;
    }
    await new Promise((resolve) => setImmediate(resolve));
  }
}

async function inTime(status: Promise<number>): Promise<number | 'hung' | 'thrown'> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<'hung'>((resolve) => {
    timer = setTimeout(() => resolve('hung'), HUNG);
  });
  try {
    const came = await Promise.race([status, late]);
    if (came === 'hung') hung += 1;
    return came;
  } catch (cause) {
    crashes.push(cause instanceof Error ? (cause.stack ?? cause.message) : String(cause));
    return 'thrown';
  } finally {
    clearTimeout(timer);
  }
}

/** Megabytes of heap after a collection, and of the whole process. */
function memory(): [number, number] {
  collect();
  collect();
  const { heapUsed, rss } = process.memoryUsage();
  return [heapUsed / 1e6, rss / 1e6];
}
