/** Two helpers and the owner of one project, who tick, buy and note at once: what is asked, and what must be there afterwards. */

import { commands } from '../../../commands/all.ts';
import { openAccess } from '../../../src/accounts/project-access.ts';
import { type Asker, hashOf } from '../../../src/accounts/records.ts';
import { answer } from '../../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES } from '../../../src/input/reading.ts';
import { emptyContent, type Project } from '../../../src/project/project.ts';
import { STAGES } from '../../../src/reply/need.ts';
import type { Store } from '../../../src/storage/types.ts';
import type { Outcome } from './tally.ts';

const OWNER: Asker = { platform: 'discord', id: '100000000000000001' };
const MEMBER: Asker = { platform: 'discord', id: '100000000000000002' };
const ROOMS = 12;

const fault = (_reference: string, cause: unknown): never => {
  throw cause;
};

/** Somebody who ticks, and the number of their share; none for the owner. */
export interface Party {
  readonly name: string;
  readonly asker: Asker;
  readonly helper?: string;
}

/** A project of twelve small rooms, its owner, a member and whoever holds a link. */
export async function sharedProject(store: Store): Promise<readonly Party[]> {
  const desk = (asker: Asker) => {
    const opened = openAccess(asker, { store });
    if (!opened) throw new Error('no desk');
    return opened;
  };
  const rooms = Array.from({ length: ROOMS }, (_, i) => ({
    name: `room ${i + 1}`,
    text: '4 x 5 ft',
    notes: [],
    inScope: true,
  }));
  const picks = { plank: '6 x 48 in, 10 per carton, $30 a carton' };
  const { id } = await desk(OWNER).create({ ...emptyContent('Flat'), rooms, picks });
  const give = async (to: 'link' | { account: string }) => {
    const made = await desk(OWNER).sharing?.give({ what: 'project', role: 'tick', to });
    if (!made?.ok) throw new Error('not shared');
    return made;
  };
  const member = await give({ account: `discord:${MEMBER.id}` });
  await desk(MEMBER).use(id);
  const link = await give('link');
  return [
    { name: 'owner', asker: OWNER },
    { name: 'member', asker: MEMBER, helper: member.share.id },
    { name: 'link', asker: { platform: 'web', id: hashOf(link.token ?? '') }, helper: link.share.id },
  ];
}

/** What a party asks, the n-th time: a note, a carton, a stage of their own, and one that all of them tick. */
export function tickLine({ name }: Party, number: number): string {
  // Two turns are about one room, so that two processes come to it at once.
  const turn = Math.floor(number / 8);
  const stage = STAGES[Math.floor(turn / ROOMS) % STAGES.length] ?? 'lay';
  const room = (turn % ROOMS) + 1;
  const lines = [
    `project log note ${name} ${number}`,
    'project shopping bought 1 carton planks',
    `project progress done ${STAGES[(STAGES.length - 1 - ['owner', 'member', 'link'].indexOf(name)) % STAGES.length] ?? 'lay'} room ${room}`,
    `project progress done ${stage} room ${room}`,
  ];
  return lines[number % lines.length] ?? '';
}

/** Asks so many lines of a party, so many under way at once; tells of each what came of it. */
export async function ticks(
  party: Party,
  numbers: readonly number[],
  lanes: number,
  store: Store,
  told: (number: number, saved: boolean) => void,
): Promise<void> {
  const left = [...numbers];
  const lane = async (): Promise<void> => {
    for (let number = left.shift(); number !== undefined; number = left.shift()) {
      const request = { asker: party.asker, preferences: DEFAULT_PREFERENCES, text: tickLine(party, number) };
      let saved = false;
      for await (const one of answer(request, commands, { store, fault })) saved = 'headline' in one;
      told(number, saved);
    }
  };
  await Promise.all(Array.from({ length: lanes }, lane));
}

/** Sets what each party was told against the project: every note and stage once and signed, every carton counted. */
export function ticked(
  project: Project,
  parties: readonly Party[],
  saved: Readonly<Record<string, readonly number[]>>,
  asked: number,
): Outcome {
  let [acknowledged, lost, cartons] = [0, 0, 0];
  for (const party of parties) {
    const { log, stages } = project;
    for (const number of saved[party.name] ?? []) {
      acknowledged++;
      const line = tickLine(party, number);
      const [, kind = '', , what = ''] = /^project (\w+) (done|note|bought) (.*)$/.exec(line) ?? [];
      const stage = what.slice(0, what.indexOf(' '));
      const room = what.slice(stage.length + 1);
      if (kind === 'shopping') cartons++;
      else if (kind === 'log' && !log.some(({ text, by }) => text === what && by?.helper === party.helper)) lost++;
      else if (kind === 'progress' && !stages.marks.some((one) => one.stage === stage && one.room === room)) lost++;
    }
  }
  const bought = project.shopping.bought.reduce((sum, { packages }) => sum + (packages?.count ?? 0), 0);
  const twice = (all: readonly string[]): number => all.length - new Set(all).size;
  const doubled =
    twice(project.log.map(({ text }) => text)) +
    twice(project.stages.marks.map(({ stage, room }) => `${stage} ${room}`));
  return {
    asked,
    acknowledged,
    refused: asked - acknowledged,
    lost: lost + Math.max(0, cartons - bought),
    doubled: doubled + Math.max(0, bought - cartons),
  };
}
