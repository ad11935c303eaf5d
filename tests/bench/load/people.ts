/** A crowd in both chats: some keep a project, all ask, each waits for an answer before the next ask. */

import { openAccess } from '../../../src/accounts/project-access.ts';
import type { StorePlace } from '../../../src/storage/store.ts';
import type { AnsweredRequest, Person } from './asked.ts';
import type { Chats } from './chats.ts';
import { BEGIN, drawn, isNoted, marksIn, note } from './lines.ts';
import { readStore } from './read-store.ts';

/** One of them. */
export interface Asker extends Person {
  /** The next line that they ask. */
  next(): string;
}

/** So many people, half in each chat, one of four with a project; others for another `seed`. */
export function people(count: number, seed: number): readonly Asker[] {
  return Array.from({ length: count }, (_, i) => {
    const chat = i % 2 === 0 ? 'discord' : 'slack';
    const number = seed * 1_000_000 + i;
    const id = chat === 'discord' ? String(300_000_000_000_000_000n + BigInt(number)) : `U${number}`;
    const keeps = i % 8 < 2;
    const sum = drawn(number);
    let marks = 0;
    const next = (): string => {
      marks += 1;
      return keeps && marks % 3 !== 0 ? note(`${id}-${marks}`) : sum();
    };
    return { chat, id, keeps, next };
  });
}

/** Those who keep a project begin it. Throws when one cannot. */
export async function begin(all: readonly Asker[], chats: Chats): Promise<void> {
  for (const person of all) {
    if (!person.keeps) continue;
    const { said, refused } = await chats.ask(person, BEGIN);
    if (said.lines.some((line) => line.includes('is started'))) continue;
    throw new Error(`${person.chat}: no project was begun: ${said.lines[0] ?? refused ?? 'no answer'}`);
  }
}

/** How they ask. */
export interface Pace {
  /** For how long they begin new asks. */
  readonly seconds: number;
  /** Asks a second of all together; without it each asks again as soon as they have an answer. */
  readonly perSecond?: number;
}

/** What they asked and were answered, and the seconds that it took. */
export interface Run {
  readonly requested: readonly AnsweredRequest[];
  readonly seconds: number;
}

/** Lets them ask. Nobody asks twice at once. */
export async function run(all: readonly Asker[], chats: Chats, { seconds: long, perSecond }: Pace): Promise<Run> {
  const requested: AnsweredRequest[] = [];
  const began = performance.now();
  let sent = 0;
  const lane = async (person: Asker): Promise<void> => {
    for (;;) {
      const due = perSecond === undefined ? performance.now() : began + (sent++ * 1000) / perSecond;
      if (Math.max(due, performance.now()) > began + long * 1000) return;
      if (due > performance.now()) await new Promise((resolve) => setTimeout(resolve, due - performance.now()));
      requested.push(await chats.ask(person, person.next()));
    }
  };
  await Promise.all(all.map(lane));
  const seconds = (performance.now() - began) / 1000;
  await chats.quiet(3_000);
  return { requested, seconds };
}

/** What became of the notes: those acknowledged that are not in the project, and those there twice. */
export interface Ledger {
  readonly acknowledged: number;
  readonly lost: number;
  readonly doubled: number;
}

/** Sets the notes that were acknowledged against those that the store holds. */
export async function ledger(
  all: readonly Asker[],
  requested: readonly AnsweredRequest[],
  place: StorePlace,
): Promise<Ledger> {
  const store = readStore(place);
  try {
    let [acknowledged, lost, doubled] = [0, 0, 0];
    for (const { chat, id, keeps } of all) {
      if (!keeps) continue;
      const asker = chat === 'slack' ? { platform: chat, id, workspace: 'T1' } : { platform: chat, id };
      const project = await openAccess(asker, { store })?.inUse();
      const marks = marksIn(project?.log ?? []);
      const given = requested.filter(({ person, said }) => person.id === id && isNoted(said));
      acknowledged += given.length;
      lost += given.filter(({ line }) => !marks.some((mark) => line === note(mark))).length;
      doubled += marks.length - new Set(marks).size;
    }
    return { acknowledged, lost, doubled };
  } finally {
    await store.close();
  }
}
