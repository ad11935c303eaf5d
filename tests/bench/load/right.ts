/** The right answers: what each line is answered with when nobody else asks, early and at last, and whether an answer is one of them. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AnsweredRequest } from './asked.ts';
import { startBot } from './bot-process.ts';
import { bothChats, type Chats } from './chats.ts';
import { isNoted } from './lines.ts';
import { begin, people } from './people.ts';
import { lacking, type Said } from './said.ts';
import { stepsOf, UNHURRIED } from './steps.ts';
import { falseOf, isPassing, WORKING } from './unproved.ts';

export interface Known {
  /** By chat, whether they keep a project, and line: the answers, the settled one at the end. */
  readonly answers: ReadonlyMap<string, readonly Said[]>;
  /** By line, the headlines of its search to the settled one. */
  readonly steps: ReadonlyMap<string, readonly string[]>;
}

/** Limits that nobody meets: on asks, and on a search that is to come to its end. */
const UNBOUNDED = {
  FLOORHAND_ASKS_PER_MINUTE: '100000',
  FLOORHAND_SERVER_ASKS_PER_MINUTE: '1000000',
  FLOORHAND_ASK_SECONDS: String(UNHURRIED),
  FLOORHAND_LOG: 'warn',
};

/** Asks every line of a bot of its own in both chats, by people with a project and without one, a few times over in another order. */
export async function learn(lines: readonly string[], times: number): Promise<Known> {
  const steps = await stepsOf(lines);
  const folder = mkdtempSync(join(tmpdir(), 'floorhand-learn-'));
  const chats = await bothChats({ connected: false });
  try {
    const bot = await startBot({ ...chats.environment, ...UNBOUNDED, FLOORHAND_DATA: folder });
    try {
      chats.reach([bot.url]);
      return { answers: await heard(chats, lines, times), steps };
    } finally {
      bot.signal('SIGKILL');
      await bot.ended;
    }
  } finally {
    await chats.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function heard(chats: Chats, lines: readonly string[], times: number): Promise<Known['answers']> {
  const answers = new Map<string, readonly Said[]>();
  for (let time = 0; time < times; time++) {
    const four = people(4, 900 + time);
    await begin(four, chats);
    const given = await Promise.all(
      four.map(async (person) => {
        const requested: AnsweredRequest[] = [];
        for (const line of time % 2 === 0 ? lines : [...lines].reverse()) {
          const one = await chats.ask(person, line);
          await whole(one);
          requested.push(one);
        }
        return requested;
      }),
    );
    await chats.quiet(1_000);
    for (const one of given.flat()) {
      const before = answers.get(keyOf(one)) ?? [];
      answers.set(keyOf(one), [...before, ...one.before, one.said].map(bare));
    }
  }
  return answers;
}

/** Why an answer is not right; undefined where it is the settled one, or an earlier one of its search that says no more than it may. */
export function flawOf(requested: AnsweredRequest, known: Known): string | undefined {
  const { refused, first, line, said } = requested;
  if (refused !== undefined) return `not taken: ${refused}`;
  if (first === undefined) return 'no answer';
  if (line.startsWith('project ')) return isNoted(said) ? undefined : said.lines[0];
  const right = known.answers.get(keyOf(requested));
  const settled = right?.at(-1);
  if (!right || !settled) return 'asked of nobody before';
  const lacks = lacking(said, settled);
  if (lacks === undefined) return undefined;
  const steps = known.steps.get(line) ?? [];
  const step = steps.findIndex((headline) => said.lines[0]?.includes(headline));
  if (step < 0) return `${said.lines[0]} lacks ${lacks}`;
  if (step < steps.length - 1) return falseOf(said.lines, steps.at(-1) ?? '');
  // A picture may be told in words.
  const isTold = (one: string): boolean =>
    right.some(({ lines, pictures }) => lines.includes(one) || pictures.some((shown) => one.includes(shown)));
  const strange = said.lines.find((one) => !isPassing(one) && !isTold(one));
  return strange === undefined ? undefined : `${said.lines[0]} tells what nobody was told: ${strange}`;
}

/** Resolves when the last answer is there. */
async function whole(requested: AnsweredRequest): Promise<void> {
  for (let tries = 0; tries < 1_200; tries++) {
    if (!requested.said.lines.some((line) => line.includes(WORKING))) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`${requested.line} is worked on for more than two minutes.`);
}

/** Whether an answer is an early one, in whose place no better one came. */
export function isEarly(requested: AnsweredRequest, known: Known): boolean {
  const last = known.answers.get(keyOf(requested))?.at(-1);
  return last !== undefined && lacking(requested.said, last) !== undefined;
}

function keyOf({ person, line }: AnsweredRequest): string {
  return `${person.chat} ${person.keeps} ${line}`;
}

/** Without what differs from one time to the next. */
function bare({ lines, pictures }: Said): Said {
  return { lines: lines.filter((line) => !isPassing(line)), pictures };
}
