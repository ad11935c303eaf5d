/** What can go wrong with the bot as it is hosted: each is done, held and taken away again while people ask. */

import { closeSync, openSync, rmSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import type { Captured } from '../../../discord/loopback-rest.ts';
import { during, type Seen } from './during.ts';
import type { Hosted, OnServer } from './hosted.ts';

/** Seconds that each is held. */
export interface Held {
  readonly down: number;
  readonly slow: number;
  readonly hung: number;
  readonly full: number;
  readonly refusing: number;
}

export const WHOLE: Held = { down: 30, slow: 20, hung: 25, full: 10, refusing: 15 };
export const QUICK: Held = { down: 4, slow: 6, hung: 5, full: 3, refusing: 4 };

/** A fault by its name, and what comes of it. */
export type Scenario<H extends Hosted> = readonly [name: string, run: (hosted: H) => Promise<Seen>];

/** One process by HTTP, on a server. */
export function onOne({ down, slow, hung, refusing }: Held): readonly Scenario<OnServer>[] {
  return [
    [
      `store down for ${down} s`,
      (hosted) =>
        during(hosted, async () => {
          await hosted.server.crash();
          await seconds(down);
          await hosted.server.start();
        }),
    ],
    [
      `store slow by 2 s, for ${slow} s`,
      (hosted) =>
        during(hosted, async () => {
          hosted.proxy.delay = 2_000;
          await seconds(slow);
          hosted.proxy.delay = 0;
        }),
    ],
    [
      'workers killed, three times',
      (hosted) =>
        during(hosted, async () => {
          for (let time = 0; time < 3; time++) {
            await hosted.bots[0]?.killWorkers();
            await seconds(1);
          }
        }),
    ],
    [
      `workers hung for ${hung} s`,
      (hosted) =>
        during(hosted, async () => {
          writeFileSync(hosted.hanging, '');
          await seconds(hung);
          rmSync(hosted.hanging);
        }),
    ],
    [`platforms answer one of two with 500, for ${refusing} s`, (hosted) => refused(hosted, 500, refusing)],
    [`platforms answer one of two with 429, for ${refusing} s`, (hosted) => refused(hosted, 429, refusing)],
    [
      'SIGTERM under load, and started again',
      (hosted) =>
        during(hosted, async () => {
          const [bot] = hosted.bots;
          const began = performance.now();
          bot?.signal('SIGTERM');
          const how = await bot?.ended;
          const took = (performance.now() - began) / 1000;
          if (how !== 0 || took > 10.5) throw new Error(`It ended with ${how} after ${took.toFixed(1)} s.`);
          await hosted.again(0);
        }),
    ],
  ];
}

/** Four processes on a server. */
export const ON_FOUR: readonly Scenario<OnServer>[] = [
  [
    'kill -9 of one of four',
    (hosted) =>
      during(hosted, async () => {
        hosted.bots[0]?.signal('SIGKILL');
        await hosted.bots[0]?.ended;
        await seconds(2);
        await hosted.again(0);
      }),
  ],
];

/** One process that is connected to the chats, on a data folder. */
export function connected({ full }: Held): readonly Scenario<Hosted>[] {
  return [
    [
      `disk full for ${full} s`,
      (hosted) =>
        during(hosted, async () => {
          const filler = join(hosted.place.folder, 'filler');
          fillDisk(filler);
          await seconds(full);
          rmSync(filler);
        }),
    ],
    [
      'connections to both chats dropped',
      (hosted) =>
        during(hosted, async () => {
          const { discord, slack } = hosted.chats;
          discord.drop(4000);
          slack.drop();
        }),
    ],
  ];
}

/** Writes until nothing more is taken. */
function fillDisk(file: string): void {
  const open = openSync(file, 'w');
  try {
    for (const some = Buffer.alloc(4096); ; ) writeSync(open, some);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code !== 'ENOSPC') throw cause;
  } finally {
    closeSync(open);
  }
}

/** Every other request of an answer is refused, on both platforms. */
async function refused(hosted: Hosted, status: 500 | 429, held: number): Promise<Seen> {
  const { discord, slack } = hosted.chats;
  let [on, turn] = [false, 0];
  const every = (): boolean => on && turn++ % 2 === 0;
  discord.refuse({
    matching: ({ kind }: Captured) => (kind === 'callback' || kind === 'edit') && every(),
    lasting: true,
    status,
    json: status === 429 ? { message: 'You are being rate limited.', retry_after: 1, global: false } : {},
    ...(status === 429 ? { headers: { 'retry-after': '1', 'x-ratelimit-scope': 'shared' } } : {}),
  });
  slack.respond(() => (every() ? { status, text: '' } : undefined));
  slack.refuse(({ method }) => (method.startsWith('chat.') && every() ? status : undefined));
  return during(hosted, async () => {
    on = true;
    await seconds(held);
    on = false;
  });
}

function seconds(count: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, count * 1000));
}
