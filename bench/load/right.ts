/** The right answers: what each line is answered with when nobody else asks, and whether an answer is one of them. */

import type { Asked } from './asked.ts';
import type { Chats } from './chats.ts';
import { isNoted, sums } from './lines.ts';
import { begin, people } from './people.ts';

export interface Right {
  /** Why an answer is wrong; undefined where it is right. */
  flaw(asked: Asked): string | undefined;
}

/** Asks every line in both chats, a few times over by people who asked other things before. */
export async function learnRight(chats: Chats, times: number): Promise<Right> {
  const known = new Map<string, Set<string>>();
  const keyOf = ({ person, line }: Asked): string => `${person.chat} ${person.keeps} ${line}`;
  for (let time = 0; time < times; time++) {
    const four = people(4, 900 + time);
    await begin(four, chats);
    const told = await Promise.all(
      four.map(async (person) => {
        const asked: Asked[] = [];
        const lines = sums().map(({ line }) => line);
        for (const line of time % 2 === 0 ? lines : lines.reverse()) asked.push(await chats.ask(person, line));
        return asked;
      }),
    );
    await chats.quiet(5_000);
    for (const asked of told.flat()) {
      const key = keyOf(asked);
      const of = known.get(key) ?? new Set();
      if (asked.said !== '') known.set(key, of.add(asked.said));
    }
  }
  return {
    flaw(asked) {
      if (asked.refused !== undefined) return `not taken: ${asked.refused}`;
      if (asked.first === undefined) return 'no answer';
      if (asked.line.startsWith('project ')) return isNoted(asked.said) ? undefined : first(asked.said);
      const right = known.get(keyOf(asked));
      if (!right) return 'asked of nobody before';
      return right.has(asked.said) ? undefined : difference(asked.said, [...right]);
    },
  };
}

/** The first line in which an answer differs from the one that is most like it. */
function difference(said: string, right: readonly string[]): string {
  const lines = said.split('\n');
  const at = (one: readonly string[]): number => {
    const place = lines.findIndex((line, i) => line !== one[i]);
    return place < 0 ? lines.length : place;
  };
  const [closest = []] = right.map((one) => one.split('\n')).sort((a, b) => at(b) - at(a));
  const place = at(closest);
  return `another answer from line ${place} on: “${lines[place]?.slice(0, 120)}”, not “${closest[place]?.slice(0, 120)}”`;
}

function first(said: string): string {
  return (
    said
      .split('\n')
      .filter((line) => line !== '')[0]
      ?.slice(0, 160) ?? ''
  );
}
