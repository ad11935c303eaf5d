/** Makes small mistakes in the code, one at a time, and lists each that no test notices: `npm run mutants -- --seed 7`, or several seeds, which share what is needed once. */

import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { Mutant } from '@stryker-mutator/api/core';
import { type File, Instrumenter } from '@stryker-mutator/instrumenter';
import type { Metric } from '../bench/metric.ts';
import { Order } from './order.ts';
import { MutantRuns, type Verdict } from './runs.ts';

/** What is changed, by name; `--rooms` also takes a file or folder. */
const ROOMS: Readonly<Record<string, readonly string[]>> = {
  core: ['src/units', 'src/layout', 'src/trim', 'src/prep'],
  project: ['src/project', 'src/accounts'],
  pipeline: ['src/chat'],
};

/** Tests that start processes or a browser, keep time, render everything for every platform, or only read the source. */
const LEFT_OUT = [
  'tests/architecture',
  'tests/contracts/',
  'tests/deploy',
  'tests/drawing/png',
  'tests/house-rules',
  'tests/licences',
  'tests/mutants.test.ts',
  'tests/papers',
  'tests/reading/',
  'tests/server/',
  'tests/storage/',
  'tests/stored-names',
  'tests/terminal/history',
  'tests/terminal/loaded',
  'tests/terminal/program',
  'tests/web/browser',
  'tests/web/processes',
  'tests/workers/broken-threads',
  'tests/workers/pool',
  'tests/workers/reading-time',
  'tests/workers/waited',
];

const ACCEPTED = 'tests/mutants/accepted.json';
const GOAL = 90;
const GOAL_MINUTES = 60;

/** A survivor that is no mistake, or one that no test should look for, known by its text and not by its line number. */
interface Accepted {
  readonly file: string;
  /** The line on which the change starts. */
  readonly line: string;
  readonly original: string;
  readonly replacement: string;
  readonly why: string;
}

interface Drawn {
  readonly seeds: readonly number[];
  readonly room: string;
  readonly file: string;
  readonly mutant: Mutant;
  readonly line: string;
  readonly original: string;
}

type Outcome = Verdict | 'no coverage';

const { values } = parseArgs({
  options: {
    seed: { type: 'string' },
    count: { type: 'string', default: '400' },
    rooms: { type: 'string', default: Object.keys(ROOMS).join(',') },
    seconds: { type: 'string', default: '60' },
    root: { type: 'string', default: '.' },
    json: { type: 'boolean', default: false },
  },
});

const started = Date.now();
const root = resolve(values.root);
const seeds = (values.seed ?? String(started % 100_000)).split(',').map((text) => whole('seed', text));
const count = whole('count', values.count);
const budget = 1000 * whole('seconds', values.seconds);
const say = (text: string): void => void (values.json ? process.stderr : process.stdout).write(`${text}\n`);

try {
  await main();
} catch (cause) {
  console.error(cause instanceof Error ? cause.message : cause);
  process.exit(2);
}

function whole(name: string, text: string): number {
  const value = Number(text);
  if (Number.isSafeInteger(value) && value >= 0) return value;
  console.error(`--${name} ${text}: not a whole number.`);
  process.exit(2);
}

async function main(): Promise<void> {
  const rooms = roomsOf(values.rooms);
  const { drawn, sources, inAll } = await draw(rooms);
  for (const seed of seeds) {
    const own = drawn.filter((one) => one.seeds.includes(seed));
    const counts = [...rooms.keys()].map((room) => `${own.filter((one) => one.room === room).length} in ${room}`);
    say(`seed ${seed}: ${own.length} of ${inAll} mutants, ${counts.join(', ')}`);
  }
  const runs = await MutantRuns.over(root, sources, LEFT_OUT);
  const accepted = acceptedOnes();
  const outcomes = new Map<Drawn, Outcome>();
  let unexplained = 0;
  let interrupted = false;
  process.once('SIGINT', () => {
    interrupted = true;
  });
  try {
    const dry = await runs.dry();
    say(`${dry.files.length} test files with nothing changed: ${minutes()} minutes`);
    if (dry.failed.length > 0) say(`left out because they fail with nothing changed: ${dry.failed.join(', ')}`);
    const order = new Order(budget);
    for (const one of drawn) {
      if (interrupted) break;
      const { id } = one.mutant;
      const importers = dry.loaded.has(id) ? runs.importers(join(root, one.file)) : new Set<string>();
      const covering = dry.files.filter(({ file, reached }) => reached.has(id) || importers.has(file));
      const hits = covering.reduce((sum, { reached }) => sum + (reached.get(id) ?? 0), dry.loaded.get(id) ?? 0);
      const files = order.of(one.file, covering);
      const judged = files.length > 0 ? await runs.judge(id, files, hits) : undefined;
      const outcome = judged?.verdict ?? 'no coverage';
      order.learn(one.file, files, judged?.by);
      outcomes.set(one, outcome);
      if (outcome === 'survived' || outcome === 'no coverage') {
        const why = accepted.find((known) => isSame(known, one))?.why;
        if (why === undefined) unexplained += 1;
        sayOne(one, outcome, why);
      }
      if (outcomes.size % 25 === 0) say(`${outcomes.size} mutants: ${minutes()} minutes`);
    }
  } finally {
    await runs.close();
  }
  report([...rooms.keys()], outcomes, unexplained);
}

function minutes(): number {
  return Number(((Date.now() - started) / 60_000).toFixed(1));
}

function roomsOf(text: string): ReadonlyMap<string, readonly string[]> {
  return new Map(text.split(',').map((name) => [name, ROOMS[name] ?? [name]]));
}

function filesIn(path: string): readonly string[] {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesIn(join(path, name)))
    .filter((file) => file.endsWith('.ts'));
}

/** Draws mutants over all that can be made, and puts those, each behind its switch, into the text of their files. */
async function draw(rooms: ReadonlyMap<string, readonly string[]>) {
  const roomOf = new Map<string, string>();
  for (const [room, places] of rooms) {
    for (const file of places.flatMap((place) => filesIn(join(root, place)))) roomOf.set(file, room);
  }
  const files = [...roomOf.keys()].map((name) => ({ name, content: readFileSync(name, 'utf8'), mutate: true }));
  const all = (await instrument(files)).mutants;
  if (all.length === 0) throw new Error(`nothing to change in ${[...rooms.values()].flat().join(', ')}`);
  const chosen = new Map<string, number[]>();
  for (const seed of seeds) {
    for (const mutant of shuffled(all, seed).slice(0, count)) {
      chosen.set(nameOf(mutant), [...(chosen.get(nameOf(mutant)) ?? []), seed]);
    }
  }
  const changed = files.flatMap((file) => {
    const mutate = all
      .filter((mutant) => mutant.fileName === file.name && chosen.has(nameOf(mutant)))
      .map(({ location }) => location);
    return mutate.length > 0 ? [{ ...file, mutate }] : [];
  });
  const made = await instrument(changed);
  const drawn = made.mutants
    .filter((mutant) => chosen.has(nameOf(mutant)))
    .map((mutant): Drawn => {
      const text = files.find(({ name }) => name === mutant.fileName)?.content ?? '';
      const { start, end } = mutant.location;
      const lines = text.split('\n').slice(start.line, end.line + 1);
      const line = lines[0] ?? '';
      const last = lines.length - 1;
      const original = lines
        .map((part, at) => part.slice(at === 0 ? start.column : 0, at === last ? end.column : undefined))
        .join('\n');
      return {
        seeds: chosen.get(nameOf(mutant)) ?? [],
        room: roomOf.get(mutant.fileName) ?? '',
        file: relative(root, mutant.fileName),
        mutant,
        line: line.trim(),
        original,
      };
    });
  const turns = [...chosen.keys()];
  drawn.sort((a, b) => turns.indexOf(nameOf(a.mutant)) - turns.indexOf(nameOf(b.mutant)));
  return { drawn, inAll: all.length, sources: new Map(made.files.map(({ name, content }) => [name, content])) };
}

function nameOf({ fileName, location: { start, end }, replacement, mutatorName }: Mutant): string {
  return [fileName, start.line, start.column, end.line, end.column, mutatorName, replacement].join(' ');
}

async function instrument(files: readonly File[]) {
  const quiet = () => false;
  const nothing = () => {};
  const log = {
    isTraceEnabled: quiet,
    isDebugEnabled: quiet,
    isInfoEnabled: quiet,
    isWarnEnabled: quiet,
    isErrorEnabled: quiet,
    isFatalEnabled: quiet,
    trace: nothing,
    debug: nothing,
    info: nothing,
    warn: nothing,
    error: nothing,
    fatal: nothing,
  };
  return new Instrumenter(log).instrument(files, { plugins: null, excludedMutations: [], ignorers: [] });
}

/** In an order that depends on the seed alone (mulberry32, a generator of 32 bits that Tommy Ettinger gave away). */
function shuffled<T>(given: readonly T[], seed: number): T[] {
  let state = seed;
  const below = (limit: number): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * limit);
  };
  const items = [...given];
  for (let at = items.length - 1; at > 0; at -= 1) {
    const other = below(at + 1);
    [items[at], items[other]] = [items[other] as T, items[at] as T];
  }
  return items;
}

function acceptedOnes(): readonly Accepted[] {
  const file = join(root, ACCEPTED);
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : [];
}

function isSame(known: Accepted, { file, line, original, mutant: { replacement } }: Drawn): boolean {
  return known.file === file && known.line === line && known.original === original && known.replacement === replacement;
}

function sayOne({ file, mutant, line, original }: Drawn, outcome: Outcome, why: string | undefined): void {
  say(`\n${file}:${mutant.location.start.line + 1}  ${outcome}${why === undefined ? '' : `: ${why}`}`);
  say(`  ${line}`);
  say(`  ${original.replaceAll('\n', '\n  ')}\n  -> ${mutant.replacement.replaceAll('\n', '\n  ')}\n`);
}

function report(rooms: readonly string[], outcomes: ReadonlyMap<Drawn, Outcome>, unexplained: number): void {
  const figures = [
    ...seeds.flatMap((seed) => {
      const own = [...outcomes].filter(([one]) => one.seeds.includes(seed));
      return figuresOf(`seed ${seed}`, rooms, own);
    }),
    figure('survivors that nobody explained', unexplained, '0', unexplained === 0),
    figure('minutes', minutes(), `< ${GOAL_MINUTES * seeds.length}`, minutes() < GOAL_MINUTES * seeds.length),
  ];
  if (values.json) process.stdout.write(`${JSON.stringify(figures, null, 1)}\n`);
  else {
    for (const { metric, value, goal, ok } of figures) {
      const verdict = ok === null ? '' : `   goal ${goal}: ${ok ? 'met' : 'MISSED'}`;
      say(`${metric.padEnd(40)} ${String(value).padStart(8)}${verdict}`);
    }
  }
  process.exitCode = figures.some(({ ok }) => ok === false) ? 1 : 0;
}

function figuresOf(name: string, rooms: readonly string[], outcomes: readonly (readonly [Drawn, Outcome])[]): Metric[] {
  const of = (...kinds: Outcome[]): number => outcomes.filter(([, outcome]) => kinds.includes(outcome)).length;
  const share = (some: typeof outcomes): number =>
    (100 * some.filter(([, outcome]) => outcome === 'killed' || outcome === 'timeout').length) / some.length;
  const perRoom = rooms.flatMap((room) => {
    const own = outcomes.filter(([one]) => one.room === room);
    return own.length > 0 ? [figure(`${name}: killed of ${own.length} in ${room}, %`, share(own))] : [];
  });
  const kinds: readonly Outcome[] = ['killed', 'timeout', 'survived', 'no coverage'];
  return [
    figure(`${name}: drawn`, outcomes.length),
    ...kinds.map((kind) => figure(`${name}: ${kind}`, of(kind))),
    ...perRoom,
    figure(`${name}: killed, %`, share(outcomes), `>= ${GOAL}`, share(outcomes) >= GOAL),
  ];
}

function figure(metric: string, value: number, goal: string | null = null, ok: boolean | null = null): Metric {
  return { bench: 'mutants', metric, value: Number(value.toFixed(1)), goal, ok };
}
