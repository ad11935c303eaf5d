/** A project with a word of its own in every part, everybody who may or may not see it, and what each is asked. */

import { commands } from '../../commands/all.ts';
import type { ProjectAccess } from '../../src/accounts/account-access.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import { type Asker, hashOf } from '../../src/accounts/records.ts';
import { type Content, emptyContent } from '../../src/project/project.ts';
import { DAY } from '../../src/project/project-limits.ts';
import type { Share, Shared } from '../../src/project/shares.ts';
import { type DemoPorts, NOON, portsInMemory } from './demo-flat.ts';

export const OWNER: Asker = { platform: 'discord', id: '100000000000000001' };
export const MEMBER: Asker = { platform: 'discord', id: '100000000000000002' };
const OTHER: Asker = { platform: 'discord', id: '100000000000000003' };

/** Words and figures that stand in one part each. */
export const CANARY = {
  one: 'onecanary',
  two: 'twocanary',
  pick: '7 x 48 in, 23.33 sq ft per carton',
  kept: 'keptcanary',
  bought: 'boughtcanary',
  note: 'notecanary',
  found: 'foundcanary',
} as const;
export type Canary = keyof typeof CANARY;

/** What nobody but the owner sees: what was spent, by whom, the budget, who else helps. */
export const OWNERS_ALONE = [
  'spendcanary',
  '123.45',
  '12345',
  '987.65',
  '98765',
  '7,654',
  '765432',
  'othercanary',
  '(insurer)',
];

export function content(): Content {
  const room = { notes: [], inScope: true, floor: 'carpet' };
  return {
    ...emptyContent('Loft'),
    rooms: [
      { ...room, name: CANARY.one, text: `8' x 6'6"` },
      { ...room, name: CANARY.two, text: '3 x 5 ft' },
    ],
    picks: { plank: `${CANARY.pick}, $2.89/sq ft` },
    kept: [
      { id: 'kept-kept', ask: `tearout room: ${CANARY.two}, floor: carpet`, headline: CANARY.kept, own: [], at: NOON },
    ],
    shopping: {
      bought: [
        {
          item: 'tape',
          label: CANARY.bought,
          stage: 'lay',
          unit: 'count',
          amount: 1,
          cost: { cents: 98_765, currency: 'USD' },
          payer: 'insurer',
          at: NOON,
        },
      ],
      opened: {},
    },
    stages: { marks: [{ room: CANARY.one, stage: 'clear', state: 'done', at: NOON }] },
    spend: {
      budget: { cents: 765_432, currency: 'USD' },
      entries: [{ what: 'spendcanary', cents: 12_345, currency: 'USD', stage: 'lay', payer: 'insurer', at: NOON }],
    },
    log: [{ text: CANARY.note, at: NOON }],
    found: [{ text: CANARY.found, at: NOON }],
    measures: { open: [{ id: 'question-1', room: CANARY.one, wall: 1, at: NOON }], told: [] },
  };
}

export interface World {
  readonly ports: DemoPorts;
  readonly id: string;
  access(asker: Asker): ProjectAccess;
  /** Gives a share, and who has it. */
  give(share: Given): Promise<Asker>;
  /** Reads of records and values since the last call. */
  reads(): number;
  /** Puts every record back as it is now. */
  snapshot(): () => void;
  record(): Readonly<Record<string, unknown>>;
}

export interface Given extends Pick<Share, 'what' | 'role' | 'room' | 'until'> {
  readonly to: 'link' | 'member';
}

/** The owner's world, with the project shared with somebody else already; `without` it, nothing but an empty one of theirs. */
export async function world(without = false): Promise<World> {
  const ports = portsInMemory((_reference, cause) => {
    throw cause;
  });
  let gets = 0;
  const { get } = ports.store.kept;
  Object.assign(ports.store.kept, { get: (key: string) => get(key).finally(() => void gets++) });
  const access = (asker: Asker): ProjectAccess => {
    const opened = openAccess(asker, ports);
    if (!opened) throw new Error('no desk');
    return opened;
  };
  const { id } = await access(OWNER).create(without ? emptyContent('Cellar') : content());
  if (!without) {
    const account = { account: `discord:${OTHER.id}` };
    await access(OWNER).sharing?.give({ what: 'project', role: 'tick', label: 'othercanary', to: account });
  }
  return {
    ports,
    id,
    access,
    async give({ to, ...offer }) {
      const made = await access(OWNER).sharing?.give({
        ...offer,
        to: to === 'link' ? 'link' : { account: `discord:${MEMBER.id}` },
      });
      if (!made?.ok) throw new Error('not given');
      if (to === 'link') return { platform: 'web', id: hashOf(made.token ?? '') };
      await access(MEMBER).use(id);
      return MEMBER;
    },
    reads() {
      const read = ports.store.reads + gets;
      ports.store.reads = 0;
      gets = 0;
      return read;
    },
    snapshot() {
      const before = [...ports.store.records];
      return () => {
        ports.store.records.clear();
        for (const [key, json] of before) ports.store.records.set(key, json);
      };
    },
    record: () => JSON.parse(ports.store.records.get(`project/${id}`) ?? '{}'),
  };
}

export const IN_A_WEEK = NOON + 7 * DAY;

/** Every command of the registry, by its examples and by its name alone, and lines that name the project and its rooms. */
export const LINES: readonly string[] = [
  ...new Set([
    ...commands.filter(({ group }) => group === 'project').flatMap(({ examples }) => examples.map(({ ask }) => ask)),
    ...commands.filter(({ group }) => group === 'project').map(({ name }) => `project ${name}`),
    'planks',
    'tearout',
    ...['show', 'use', 'archive', 'delete', 'restore', 'copy'].map((name) => `project ${name} Loft`),
    `project room ${CANARY.one} 9 x 7 ft`,
    `project room remove ${CANARY.two}`,
    `project progress done flat ${CANARY.two}`,
    `project measure ${CANARY.one} wall 1: 8' 2"`,
    `project measure ${CANARY.two} wall 1: 5' 2"`,
    'project log remove 1',
    'project found remove 1',
    'project keep remove 1',
    'project spend remove 1',
    'project shopping bought 1 carton planks',
    'project share whole project',
    'project share stop: all',
    'project share leave',
    'project undo redo',
    'what do i need to buy?',
    'spent $5 on glue',
    `planks room: ${CANARY.two}`,
  ]),
];

/** Every command by its name alone, and what would change something. */
export const FEW_LINES = LINES.filter((line) => /^project [a-z]+$|canary|\b1\b|share|undo/.test(line));

/** Parts that each scope shows, by their words. A guide and cuts are shared of room one alone. */
export const SHOWS: Readonly<Record<Shared, readonly Canary[]>> = {
  project: ['one', 'two', 'pick', 'kept', 'bought', 'note', 'found'],
  shopping: ['one', 'two', 'pick', 'bought'],
  guide: ['one', 'pick'],
  cuts: ['one', 'pick'],
  tearout: ['one', 'two'],
  checklist: ['one', 'two'],
};
