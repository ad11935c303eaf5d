/** The right answers: what each line is answered with when nobody else asks, early and at last, and whether an answer is one of them. */

import { CHAT } from '../../src/words/chat.ts';
import type { Asked } from './asked.ts';
import type { Chats } from './chats.ts';
import { isNoted } from './lines.ts';
import { begin, people } from './people.ts';
import { lacking, type Said } from './said.ts';

/** What an early answer says of itself. */
const WORKING = CHAT.working.slice(0, 20);

/** By chat, whether they keep a project, and line: the answers, the last one at the end. */
export type Known = ReadonlyMap<string, readonly Said[]>;

/** Asks every line in both chats, by people with a project and without one, a few times over in another order. */
export async function learn(chats: Chats, lines: readonly string[], times: number): Promise<Known> {
  const known = new Map<string, Said[]>();
  for (let time = 0; time < times; time++) {
    const four = people(4, 900 + time);
    await begin(four, chats);
    const told = await Promise.all(
      four.map(async (person) => {
        const asked: Asked[] = [];
        for (const line of time % 2 === 0 ? lines : [...lines].reverse()) asked.push(await chats.ask(person, line));
        return asked;
      }),
    );
    await Promise.all(told.flat().map((asked) => whole(asked)));
    await chats.quiet(500);
    for (const one of told.flat()) {
      const before = known.get(keyOf(one)) ?? [];
      known.set(keyOf(one), [...before, ...one.before, one.said].map(bare));
    }
  }
  return known;
}

/** Why an answer is not right; undefined where it tells all that a right one tells, an early one of them too. */
export function flawOf(asked: Asked, known: Known): string | undefined {
  const { refused, first, line, said } = asked;
  if (refused !== undefined) return `not taken: ${refused}`;
  if (first === undefined) return 'no answer';
  if (line.startsWith('project ')) return isNoted(said) ? undefined : said.lines[0];
  const right = known.get(keyOf(asked));
  if (!right) return 'asked of nobody before';
  const flaws = right.map((one) => lacking(said, one));
  if (flaws.includes(undefined) || isBetween(said, right)) return undefined;
  return `${said.lines[0]} lacks ${flaws.at(-1)}`;
}

/** Whether an answer lies between the early ones and the last: a search goes by other ways where it has less time. */
function isBetween({ lines }: Said, right: readonly Said[]): boolean {
  const [first, last] = [right[0]?.lines[0] ?? '', right.at(-1)?.lines[0] ?? ''];
  const said = lines[0] ?? '';
  const words = (line: string): string => line.replace(/\d+/g, '#');
  if (first === last || words(said) !== words(last) || words(first) !== words(last)) return false;
  const [low, figures, high] = [last, said, first].map((line) => (line.match(/\d+/g) ?? []).map(Number));
  return figures?.every((figure, i) => isWithin(figure, low?.[i], high?.[i])) === true;
}

function isWithin(figure: number, one = figure, other = figure): boolean {
  return Math.min(one, other) <= figure && figure <= Math.max(one, other);
}

/** Resolves when the last answer is there. */
async function whole(asked: Asked): Promise<void> {
  for (let tries = 0; tries < 600; tries++) {
    if (!asked.said.lines.some((line) => line.includes(WORKING))) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`${asked.line} is worked on for more than a minute.`);
}

/** Whether an answer is an early one, in whose place no better one came. */
export function isEarly(asked: Asked, known: Known): boolean {
  const last = known.get(keyOf(asked))?.at(-1);
  return last !== undefined && lacking(asked.said, last) !== undefined;
}

function keyOf({ person, line }: Asked): string {
  return `${person.chat} ${person.keeps} ${line}`;
}

/** Without what an early answer says of itself, and where its pictures are. */
function bare({ lines, pictures }: Said): Said {
  const passing = [WORKING, 'in our direct messages too'];
  return { lines: lines.filter((line) => !passing.some((words) => line.includes(words))), pictures };
}
