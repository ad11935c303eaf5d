/** A process that sends a part of a run: `node lanes.js SEED ASKS`; what it came to goes to its parent. */

import { AsyncLocalStorage } from 'node:async_hooks';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { commands } from '../../../commands/all.ts';
import { answer } from '../../../src/chat/pipeline.ts';
import type { Request } from '../../../src/chat/ports.ts';
import { inTurn } from '../../../src/chat/rate-limit.ts';
import { suggestRead } from '../../../src/chat/suggest.ts';
import { closePictures, toPng } from '../../../src/drawing/png.ts';
import { fullName } from '../../../src/input/command-shape.ts';
import { DEFAULT_PREFERENCES } from '../../../src/input/reading.ts';
import { closeWorkers } from '../../../src/workers/pool.ts';
import { mutatedLines } from '../mutate.ts';
import { mulberry32 } from '../random-rooms.ts';
import type { Draw } from './bend.ts';
import { discordLane } from './discord-lane.ts';
import type { Lane, LaneParts } from './lane.ts';
import { memoryStore } from './memory-store.ts';
import { pageLane } from './page-lane.ts';
import { type Ran, type Slowest, slower } from './ran.ts';
import { readingTime } from './reading-time.ts';
import { slackLane } from './slack-lane.ts';

/** Milliseconds after which a request counts as never answered. */
const HUNG = 60_000;
/** Asks after which a process tells how it goes. */
const TOLD = 25_000;
/** Causes that are told at most; as many again of whole asks. */
const CAUSES = 40;
/** One picture in so many is drawn: drawing takes longer than all the rest, and is measured by other benches. */
const DRAWN = 50;

const [seed = 1, asks = 1000] = process.argv.slice(2).map(Number);
const random = mulberry32(seed);
const drawn = (): Draw => ({
  bent: false,
  random,
  pick: (items) => items[Math.floor(random() * items.length)] ?? items[0],
});
/** What is being sent, wherever its work goes, and however late. */
const sending = new AsyncLocalStorage<{ readonly line: string; readonly draw: Draw }>();

const crashes: string[] = [];
for (const event of ['uncaughtException', 'unhandledRejection'] as const) {
  process.on(event, (cause: unknown) =>
    crashes.push(cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)),
  );
}

setFlagsFromString('--expose-gc');
const collect: () => void = runInNewContext('gc');

const nothing: Slowest = { ms: 0, text: '' };
let [first, last, read, faults, bentFaults, hung, underWay, pictures] = [nothing, nothing, nothing, 0, 0, 0, 0, 0];
const causes = new Set<string>();
const statuses: Record<string, number> = {};
const count = (name: string): void => {
  statuses[name] = (statuses[name] ?? 0) + 1;
};

const store = memoryStore();
const fault = (_: string, cause: unknown): void => {
  const words =
    cause instanceof Error ? `${cause.message} ${cause.stack?.split('\n')[1]?.trim() ?? ''}` : String(cause);
  const { line = '', draw } = sending.getStore() ?? {};
  const isBent = draw?.bent === true;
  if (isBent) bentFaults += 1;
  else faults += 1;
  const given = isBent
    ? `a bent body: ${words.slice(0, 300)}`
    : `whole, ${JSON.stringify(line)}: ${words.slice(0, 600)}`;
  if (causes.size < (isBent ? CAUSES : 2 * CAUSES)) causes.add(given);
};
const one = Uint8Array.from([137, 80, 78, 71]);
const turned = inTurn(
  (request: Request) => answer(request, commands, { fault, store }),
  (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds).unref()),
);

/** Milliseconds since then, but for what other work on the machine took: at most what all threads of the process computed. */
function since(start: number, used: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(used);
  return Math.min(performance.now() - start, (user + system) / 1000);
}

/** The pipeline, its answers timed. */
async function* timed(request: Request): ReturnType<typeof answer> {
  underWay += 1;
  const [start, used] = [performance.now(), process.cpuUsage()];
  let earliest: number | undefined;
  try {
    for await (const given of turned(request)) {
      earliest ??= since(start, used);
      if ('reference' in given) count('answer fault');
      yield given;
    }
  } finally {
    underWay -= 1;
    const text = String(request.text).slice(0, 300);
    first = slower(first, { ms: earliest ?? 0, text });
    last = slower(last, { ms: since(start, used), text });
  }
}

const parts: LaneParts = {
  answer: timed,
  commands,
  preferences: DEFAULT_PREFERENCES,
  store,
  fault,
  toPng: async (drawing) => (pictures++ % DRAWN === 0 ? toPng(drawing) : Buffer.from(one)),
  suggest: (asker, command, option, typed) =>
    suggestRead(asker, { command, option, commands, preferences: DEFAULT_PREFERENCES }, typed, { fault, store }),
};

const lines: Lane = {
  name: 'lines',
  async send(text) {
    const asker = { platform: 'discord', id: `p${Math.floor(random() * 300)}` } as const;
    const written = random() < 0.2 ? 'message' : 'line';
    for await (const given of timed({ asker, preferences: DEFAULT_PREFERENCES, text, written })) void given;
    return 200;
  },
  close: async () => {},
};

const [discord, slack, page] = [discordLane(parts), await slackLane(parts), pageLane(parts)];
const laneNow = (): Lane => {
  const way = random();
  return way < 0.6 ? lines : way < 0.79 ? discord : way < 0.98 ? slack : page;
};

/** Every example of every command; those of commands whose sums take longest once, others as often as makes them a few times as many. */
const HEAVY = new Set(['floor planks', 'floor resume', 'floor compare', 'floor guides', 'trim reset', 'project keep']);
const LIGHT = 16;
const examples = commands.flatMap((command) => {
  const asks = command.examples.map(({ ask }) => ask);
  return HEAVY.has(fullName(command)) ? asks : Array.from({ length: LIGHT }, (_, i) => asks[i % asks.length] ?? '');
});

// As the bot does at its start: what is loaded with a first answer is nobody's time.
for (const text of ['tape 1 + 2', examples[0] ?? ''])
  for await (const given of turned({
    asker: { platform: 'terminal', id: 'warm' },
    preferences: DEFAULT_PREFERENCES,
    text,
  }))
    void given;

const began = performance.now();
let [early, earlyResident, done] = [0, 0, 0];
for (const line of mutatedLines(seed, asks, examples, { long: true })) {
  read = slower(read, { ms: readingTime(line, commands), text: line.slice(0, 300) });
  const lane = laneNow();
  const draw = drawn();
  const status = await inTime(sending.run({ line, draw }, () => lane.send(line, draw)));
  count(`${lane.name} ${status}`);
  await idle();
  done += 1;
  if (done === Math.ceil(asks / 10)) [early, earlyResident] = memory();
  if (done % TOLD === 0 && done < asks) process.send?.(soFar());
}
process.send?.(soFar());
for (const lane of [discord, slack, page]) await lane.close();
await Promise.all([closeWorkers(), closePictures()]);
process.disconnect?.();

function soFar(): Ran {
  const [heap, resident] = memory();
  return {
    asks: done,
    seconds: (performance.now() - began) / 1000,
    crashes,
    hung,
    faults,
    bentFaults,
    causes: [...causes],
    statuses,
    first,
    last,
    read,
    heap: [early, heap],
    resident: [earlyResident, resident],
  };
}

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
