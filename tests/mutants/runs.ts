/** Runs test files against changed code: first with nothing changed, then with one mutant switched on at a time. */

import type { ChildProcess } from 'node:child_process';
import { join, relative } from 'node:path';
import {
  BaseSequencer,
  createVitest,
  ForksPoolWorker,
  type TestCase,
  type TestModule,
  type TestSpecification,
  type Vitest,
} from 'vitest/node';
import type {} from './setup.ts';

/** A test file with nothing changed: how long its tests take, and how often they reach each mutant. */
export interface DryFile {
  readonly file: string;
  readonly ms: number;
  readonly reached: ReadonlyMap<string, number>;
}

export interface DryRun {
  readonly files: readonly DryFile[];
  /** Mutants met while a file loads, which happens once for all test files. */
  readonly loaded: ReadonlyMap<string, number>;
  /** Test files that fail with nothing changed, and so can't judge a mutant. */
  readonly failed: readonly string[];
}

export type Verdict = 'killed' | 'timeout' | 'survived';

/** Worker threads load the build, which has no mutants: here their tasks run in the process of the test. */
const THREADS_HERE = `
const workers = import.meta.glob('/src/**/*-worker.ts');
export class ThreadPool {
  #terms;
  threads = [];
  constructor(terms) { this.#terms = terms; }
  async run(task, { name = 'default', transferList = [], signal } = {}) {
    signal?.throwIfAborted();
    const source = this.#terms().filename.replace(/.*[/]dist([/].*)[.]js$/, '$1.ts');
    const worker = await workers[source]();
    return structuredClone(await worker[name](structuredClone(task, { transfer: transferList })));
  }
  async close() {}
}
`;

/** How long a test file may take: several times its usual time, and seconds more for a busy machine. */
const allowed = (usual: number): number => 20_000 + 5 * usual;
const ALLOWED_DRY = 300_000;

/** Test files that share a process when nothing is changed: more would need much memory. */
const AT_ONCE = 30;

/** More than this many times as often as with nothing changed is an endless loop. */
const LOOPED = 100;

/** A process that can be ended at once, even in an endless loop. */
class EndableFork extends ForksPoolWorker {
  override readonly name = 'endable';
  readonly #running: Set<EndableFork>;

  constructor(options: ConstructorParameters<typeof ForksPoolWorker>[0], running: Set<EndableFork>) {
    super(options);
    this.#running = running;
  }

  override async start(): Promise<void> {
    await super.start();
    this.#running.add(this);
  }

  override async stop(): Promise<void> {
    this.#running.delete(this);
    await super.stop();
  }

  end(): void {
    (this as unknown as { readonly _fork?: ChildProcess })._fork?.kill('SIGKILL');
  }
}

class AsGiven extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files;
  }
}

/** Ends the running tests at the first failure, or when a test file takes too long. */
class Watch {
  readonly forks = new Set<EndableFork>();
  verdict: Verdict = 'survived';
  /** The test file that noticed. */
  by: string | undefined;
  #stops = false;
  #allowed: (file: string) => number = () => ALLOWED_DRY;
  #timer: NodeJS.Timeout | undefined;

  begin(stops: boolean, allowance: (file: string) => number): void {
    this.verdict = 'survived';
    this.by = undefined;
    this.#stops = stops;
    this.#allowed = allowance;
    this.#wait(60_000);
  }

  end(): void {
    clearTimeout(this.#timer);
  }

  onTestModuleQueued({ moduleId }: TestModule): void {
    this.#wait(this.#allowed(moduleId));
  }

  onTestModuleCollected({ moduleId }: TestModule): void {
    this.#wait(this.#allowed(moduleId));
  }

  onTestCaseResult(test: TestCase): void {
    if (test.result().state === 'failed') this.#end('killed', test.module.moduleId);
  }

  onTestModuleEnd(module: TestModule): void {
    if (module.state() === 'failed') this.#end('killed', module.moduleId);
    else this.#wait(60_000);
  }

  #wait(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#end('timeout'), ms);
  }

  #end(verdict: Verdict, by?: string): void {
    if (!this.#stops || this.verdict !== 'survived') return;
    this.verdict = verdict;
    this.by = by;
    for (const fork of this.forks) fork.end();
  }
}

function isOver(module: TestModule | undefined): boolean {
  return module !== undefined && !['queued', 'pending'].includes(module.state());
}

export class MutantRuns {
  readonly #vitest: Vitest;
  readonly #specs: ReadonlyMap<string, TestSpecification>;
  readonly #watch: Watch;
  readonly #usual = new Map<string, number>();

  private constructor(vitest: Vitest, specs: ReadonlyMap<string, TestSpecification>, watch: Watch) {
    this.#vitest = vitest;
    this.#specs = specs;
    this.#watch = watch;
  }

  /** `sources` holds the changed text of files by their paths. Test files in folders or files of `leftOut` don't run. */
  static async over(
    root: string,
    sources: ReadonlyMap<string, string>,
    leftOut: readonly string[],
  ): Promise<MutantRuns> {
    // A golden that is missing must fail, not be written.
    process.env.CI = '1';
    const watch = new Watch();
    const vitest = await createVitest(
      'test',
      {
        root,
        watch: false,
        maxWorkers: 1,
        isolate: false,
        fileParallelism: false,
        reporters: [watch],
        onConsoleLog: () => false,
        experimental: { fsModuleCache: false },
        execArgv: ['--max-old-space-size=3000'],
        pool: { name: 'endable', createPoolWorker: (options) => new EndableFork(options, watch.forks) },
        sequence: { sequencer: AsGiven },
      },
      {
        plugins: [
          {
            name: 'mutants',
            enforce: 'pre',
            load: (id) => (id.endsWith('/src/workers/thread-pool.ts') ? THREADS_HERE : sources.get(id)),
          },
        ],
      },
    );
    for (const { config } of vitest.projects) config.setupFiles.push(join(import.meta.dirname, 'setup.js'));
    const specs = (await vitest.globTestSpecifications())
      .map((spec) => [relative(root, spec.moduleId), spec] as const)
      .filter(([file]) => !leftOut.some((place) => file.startsWith(place)))
      .sort(([a], [b]) => (a < b ? -1 : 1));
    return new MutantRuns(vitest, new Map(specs), watch);
  }

  /** Runs every test file with nothing changed. */
  async dry(): Promise<DryRun> {
    this.#vitest.provide('mutant', '');
    this.#vitest.provide('hitLimit', 0);
    const modules = new Map<string, TestModule>();
    const waiting = [...this.#specs.values()];
    while (waiting.length > 0) {
      const some = waiting.splice(0, AT_ONCE);
      for (const module of await this.#run(some, false)) modules.set(module.moduleId, module);
      // When a file brings the process down, those after it are none the worse for it.
      const at = some.findIndex(({ moduleId }) => !isOver(modules.get(moduleId)));
      if (at !== -1) waiting.unshift(...some.slice(at + 1));
    }
    const files: DryFile[] = [];
    const failed: string[] = [];
    const loaded = new Map<string, number>();
    for (const [file, { moduleId }] of this.#specs) {
      const module = modules.get(moduleId);
      const { reached } = module?.meta() ?? {};
      for (const [id, times] of Object.entries(reached?.loading ?? {})) loaded.set(id, (loaded.get(id) ?? 0) + times);
      if (!module || !reached || module.state() === 'failed' || !isOver(module)) {
        failed.push(file);
        continue;
      }
      const ms = module.diagnostic().duration;
      this.#usual.set(moduleId, ms);
      const all = new Map(Object.entries(reached.running));
      for (const [id, times] of Object.entries(reached.loading)) all.set(id, (all.get(id) ?? 0) + times);
      files.push({ file, ms, reached: all });
    }
    return { files, loaded, failed };
  }

  /** Runs test files in this order until one fails; `hits` is how often they reach the mutant when nothing is changed. */
  async judge(mutant: string, files: readonly string[], hits: number): Promise<{ verdict: Verdict; by?: string }> {
    this.#vitest.provide('mutant', mutant);
    this.#vitest.provide('hitLimit', LOOPED * (hits + 10));
    const specs = files.flatMap((file) => this.#specs.get(file) ?? []);
    await this.#run(specs, true);
    const { verdict, by } = this.#watch;
    return { verdict, ...(by !== undefined && { by: relative(this.#vitest.config.root, by) }) };
  }

  /** The test files that import a file, themselves or through others. */
  importers(path: string): ReadonlySet<string> {
    const found = new Set<string>();
    for (const { vite } of this.#vitest.projects) {
      for (const { moduleGraph } of Object.values(vite.environments)) {
        const open = [...(moduleGraph.getModulesByFile(path) ?? [])];
        const seen = new Set(open);
        for (let next = open.pop(); next; next = open.pop()) {
          if (next.file) found.add(relative(this.#vitest.config.root, next.file));
          for (const importer of next.importers) {
            if (seen.has(importer)) continue;
            seen.add(importer);
            open.push(importer);
          }
        }
      }
    }
    return new Set([...found].filter((file) => this.#specs.has(file)));
  }

  async close(): Promise<void> {
    await this.#vitest.close();
  }

  async #run(specs: TestSpecification[], stops: boolean): Promise<TestModule[]> {
    this.#vitest.state.filesMap.clear();
    this.#vitest.state.errorsSet.clear();
    this.#watch.begin(stops, (file) => (stops ? allowed(this.#usual.get(file) ?? 0) : ALLOWED_DRY));
    try {
      const { testModules, unhandledErrors } = await this.#vitest.runTestSpecifications(specs);
      // A process that a mutant brings down is noticed as well.
      if (stops && unhandledErrors.length > 0 && this.#watch.verdict === 'survived') this.#watch.verdict = 'killed';
      return testModules;
    } finally {
      this.#watch.end();
    }
  }
}
