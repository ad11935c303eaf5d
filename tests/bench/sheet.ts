/** How long the printed sheets of a home take, and what that holds up: laying guides and cuts of every room as one PDF. */

import { monitorEventLoopDelay } from 'node:perf_hooks';
import { commands } from '../../commands/all.ts';
import type { GuidesResult } from '../../commands/floor/floor-guides.ts';
import { cutsSheet } from '../../commands/project/job-sheets.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { closeFiles, makeFile } from '../../src/documents/make.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import type { Sheets } from '../../src/reply/job-sheet.ts';
import { type Bench, type Metric, metric } from './metric.ts';
import { randomHome } from './random-home.ts';

const ROOMS = 12;
const SQUARE_FEET = 1600;
const SEED = 7;

export const sheet: Bench = {
  name: 'sheet',
  async run(size): Promise<readonly Metric[]> {
    const sheets = await sheetsOf(size === 'quick' ? SEED : SEED + 1);
    const delay = monitorEventLoopDelay({ resolution: 1 });
    delay.enable();
    const [first, bytes] = await timed(() => makeFile(sheets, { form: 'pdf' }));
    const times: number[] = [];
    for (let i = 0; i < (size === 'quick' ? 3 : 10); i++) {
      times.push((await timed(() => makeFile(sheets, { form: 'pdf' })))[0]);
    }
    for (const as of [{ form: 'csv', list: 'cuts' }, { form: 'json' }] as const) await makeFile(sheets, as);
    delay.disable();
    await closeFiles();
    const middle = times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
    return [
      metric('sheet', `rooms of the home printed`, ROOMS),
      metric('sheet', 'kilobytes of its PDF', bytes.length / 1024),
      metric('sheet', 'the first PDF, its worker started for it, ms', first),
      metric('sheet', 'a PDF, ms, median', middle, { below: 1500 }),
      metric('sheet', 'event loop held meanwhile, ms, most', delay.max / 1e6, { below: 50 }),
    ];
  },
};

async function timed<T>(work: () => Promise<T>): Promise<readonly [number, T]> {
  const from = performance.now();
  const made = await work();
  return [performance.now() - from, made];
}

async function sheetsOf(seed: number): Promise<Sheets> {
  const home = randomHome(seed, ROOMS, SQUARE_FEET, 0);
  const text = `guides room: ${home.room}, plank: 7 x 48 in, 10 per carton, doorways: ${home.doorways}`;
  const asker = { platform: 'terminal', id: 'bench' } as const;
  const fault = (reference: string, cause: unknown): never => {
    throw new Error(reference, { cause });
  };
  let guides: GuidesResult['guides'] = [];
  for await (const one of answer({ asker, preferences: DEFAULT_PREFERENCES, text }, commands, { fault })) {
    if (!('data' in one)) throw new Error(`no guides but ${JSON.stringify(one)}`);
    ({ guides } = one.data as GuidesResult);
  }
  const { units } = DEFAULT_PREFERENCES;
  const given = guides.map(({ room, reply }) => ({ key: 'guide', room, title: room, reply }) as const);
  const cuts = guides.map(({ room, pieces }) => cutsSheet(room, pieces));
  return { kind: 'sheets', project: 'A home', made: 0, units, zone: 'UTC', sheets: [...given, ...cuts] };
}
