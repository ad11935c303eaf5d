/** A few people who ask all the while something goes wrong, and what they saw of it. */

import type { AnsweredRequest } from '../../load/asked.ts';
import type { Chats } from '../../load/chats.ts';
import { note } from '../../load/lines.ts';
import { type Asker, begin, people } from '../../load/people.ts';
import { flawOf, type Known } from '../../load/right.ts';

/** What each asks in turn: sums without and with a picture, one that workers search, and a note on their project. */
export const LINES = [
  `tape sum: 12'6" + 2 x 3'4 1/2" - 5/8"`,
  `floor planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`,
  `trim list room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98`,
  `floor planks room: 9' x 11', plank: 7 x 48 in, 10 per carton, pattern: scattered`,
] as const;

/** Milliseconds between an answer and the next ask, and after one that nobody took. */
const PAUSE = 150;
const REFUSED = 1_000;

/** What one ask came to. */
export type Fate = 'right' | 'told' | 'refused' | 'silent' | 'wrong';

/** What people may be told instead of an answer, by its first words. */
const HONEST = [
  /^Not saved:/,
  /^Something went wrong on our side;/,
  /^The bot is restarting,/,
  /[Tt]ry again in a minute/,
];

/** `told`: they were told that it could not be; `refused`: the chat told them so, for nobody took it; `silent`: neither. */
export function fateOf(asked: AnsweredRequest, known: Known): Fate {
  const { first, refused, said } = asked;
  if (first === undefined) return refused === undefined ? 'silent' : 'refused';
  if (said.lines.some((one) => HONEST.some((honest) => honest.test(one)))) return 'told';
  return flawOf(asked, known) === undefined ? 'right' : 'wrong';
}

export interface Crowd {
  readonly all: readonly Asker[];
  /** All that was asked and has ended. */
  readonly asked: readonly AnsweredRequest[];
  /** Resolves when in both chats a sum and a note were answered that were asked after `since`; gives the milliseconds from there. */
  well(since: number, known: Known): Promise<number>;
  /** Lets no one ask again, and resolves when all asks have ended. */
  stop(): Promise<void>;
}

/** Lets four people in each chat ask from now on. `seed` makes them others than before. */
export async function crowd(chats: Chats, seed: number): Promise<Crowd> {
  // One in two keeps a project: one in four of a crowd's eight people has the numbers 0 and 1.
  const all = people(16, seed).filter(({ keeps }, i) => keeps || i % 4 > 1);
  await begin(all, chats);
  const asked: AnsweredRequest[] = [];
  let open = true;
  const lanes = all.map(async (person, i) => {
    for (let turn = i; open; turn++) {
      const line = person.keeps ? note(`${person.id}-${turn}`) : LINES[turn % LINES.length];
      // What reaches somebody on Slack by another way does not tell to which ask it belongs: so each has one at a time.
      const who = person.keeps ? person : { ...person, id: `${person.id}${turn}` };
      const one = await chats.ask(who, line ?? LINES[0]);
      asked.push(one);
      await new Promise((resolve) => setTimeout(resolve, one.refused === undefined ? PAUSE : REFUSED));
    }
  });
  return {
    all,
    asked,
    async well(since, known) {
      for (;;) {
        const right = asked.filter((one) => one.since >= since && fateOf(one, known) === 'right');
        const firsts = ['discord true', 'discord false', 'slack true', 'slack false'].map((kind) =>
          right.find(({ person }) => `${person.chat} ${person.keeps}` === kind),
        );
        const ends = firsts.flatMap((one) => (one ? [one.since + (one.first ?? 0) - since] : []));
        if (ends.length === firsts.length) return Math.max(...ends);
        if (performance.now() - since > 90_000) {
          const flaws = new Set(asked.slice(-16).map((one) => `${one.person.chat}: ${flawOf(one, known) ?? 'right'}`));
          throw new Error(`It does not come back: ${[...flaws].join('; ')}`);
        }
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
    },
    async stop() {
      open = false;
      await Promise.all(lanes);
      await chats.quiet(1_500);
    },
  };
}
