/** One truth about what to buy: whatever is changed, every list says what “planks” says, of the rooms that there are. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openAccess } from '../../src/accounts/project-access.ts';
import { type Asker, hashOf } from '../../src/accounts/records.ts';
import type { Project } from '../../src/project/project.ts';
import type { Sheets } from '../../src/reply/job-sheet.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { ASKER, answerTo } from '../chat/asked.ts';
import { portsInMemory } from '../chat/demo-flat.ts';
import { textOf } from '../project/conversation.ts';

/** Sequences that are tried; `BUYING_RUNS` tries more. */
const RUNS = Number(process.env.BUYING_RUNS ?? 5);

/** Names that are no words of any answer, two of them within others. */
const NAMES = ['Aster', 'Birch', 'Old Birch', 'Cedar', 'Dahlia', 'Cedar 2', 'Elder'];
/** Each with the price of a carton in whole dollars, so that what a floor costs tells its cartons. */
const PLANKS = [
  '12 x 24 in, 6 per carton, $50 a carton',
  '9 x 36 in, 5 per carton, $70 a carton',
  '300 x 600 mm, 8 per carton, $40 a carton',
];
const SIZES = ['3 x 5 ft', '4 x 6 ft', `4'6" x 3'2"`, '5 x 5 ft', '1.2 x 1.5 m'];

const name = fc.constantFrom(...NAMES);
const plank = fc.constantFrom(...PLANKS);
const size = fc.constantFrom(...SIZES);
const pattern = fc.constantFrom('half', 'thirds', 'stair-step', 'offcut-first');

/** What a person may type, one line after the other. Lines that mean nothing in the project as it is are answered with a problem. */
const line: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: fc.tuple(name, size).map(([room, of]) => `project room add ${room} = ${of}`) },
  { weight: 4, arbitrary: fc.tuple(name, name).map(([from, to]) => `project room rename ${from} to ${to}`) },
  { weight: 3, arbitrary: name.map((room) => `project room remove ${room}`) },
  { weight: 3, arbitrary: fc.tuple(name, size).map(([room, of]) => `project room ${room}, size: ${of}`) },
  { weight: 2, arbitrary: name.map((room) => `project measure wall 1 of ${room} is 4 ft`) },
  {
    weight: 2,
    arbitrary: fc.tuple(name, fc.boolean()).map(([room, out]) => `project room ${room} ${out ? 'out of' : 'in'} scope`),
  },
  { weight: 3, arbitrary: plank.map((of) => `project pick plank: ${of}`) },
  { weight: 1, arbitrary: pattern.map((of) => `project pick pattern: ${of}`) },
  { weight: 1, arbitrary: fc.constant('project pick clear pattern') },
  { weight: 1, arbitrary: name.map((room) => `project pick list doors: 24 in on wall 1 of ${room}`) },
  { weight: 1, arbitrary: fc.constant('project pick list stock: 8 ft $7.98; 12 ft $12.48') },
  { weight: 2, arbitrary: name.map((room) => `project room ${room}, floor: carpet`) },
  { weight: 4, arbitrary: fc.constant('project undo') },
  { weight: 2, arbitrary: fc.constant('project undo redo') },
  { weight: 4, arbitrary: fc.constant('project keep planks') },
  { weight: 2, arbitrary: name.map((room) => `project keep planks room: ${room}`) },
  {
    weight: 2,
    arbitrary: fc.tuple(plank, pattern).map(([of, laid]) => `project keep planks plank: ${of}, pattern: ${laid}`),
  },
  {
    weight: 2,
    arbitrary: fc.tuple(size, plank).map(([room, of]) => `project keep planks room: ${room}, plank: ${of}`),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(name, size, plank)
      .map(([room, of, laid]) => `project keep planks room: ${room} = ${of}, plank: ${laid}`),
  },
  {
    weight: 2,
    arbitrary: name.map(
      (room) =>
        `project keep patch damage: 10 x 12 in at 12 in from left, 12 in from bottom, first-joist: 8 in, room: ${room}`,
    ),
  },
  { weight: 1, arbitrary: fc.constant('project keep squeaks area: 2 x 3 ft') },
  { weight: 1, arbitrary: name.map((room) => `project keep reset room: ${room}`) },
  { weight: 1, arbitrary: name.map((room) => `project keep tearout room: ${room}, floor: laminate`) },
  { weight: 1, arbitrary: name.map((room) => `project found soft spot 1 x 1 ft in ${room}`) },
  {
    weight: 2,
    arbitrary: fc.tuple(fc.integer({ min: 1, max: 3 }), name).map(([no, room]) => `project keep ${no} in ${room}`),
  },
  { weight: 1, arbitrary: fc.constant('project keep remove 1') },
  {
    weight: 3,
    arbitrary: fc
      .integer({ min: 1, max: 4 })
      .map((count) => `project shopping bought ${count} cartons of planks lot B7`),
  },
);

interface Listed {
  readonly item: string;
  readonly count?: number;
  readonly bought: number;
  readonly left: number;
}

/** A project with two rooms and a plank, its shopping list shared by a link. */
async function begun() {
  const ports = portsInMemory((reference, cause) => {
    throw new Error(`fault ${reference}`, { cause });
  });
  const say = (text: string, asker: Asker = ASKER) => answerTo(text, { asker, ports });
  const reply = async (text: string, asker?: Asker): Promise<Reply> => {
    const answer = await say(text, asker);
    if (!('headline' in answer)) throw new Error(`no reply to “${text}” but ${JSON.stringify(answer)}`);
    return answer;
  };
  for (const first of [
    'project new House',
    'project room add Aster = 4 x 6 ft',
    'project room add Old Birch = 3 x 5 ft',
    `project pick plank: ${PLANKS[0]}`,
  ])
    await reply(first);
  const token = /\/s\/([\w-]{22})/.exec(textOf(await reply('project share whole project')))?.[1] ?? '';
  const guest: Asker = { platform: 'web', id: hashOf(token) };
  const project = async (): Promise<Project> => {
    const found = await openAccess(ASKER, ports)?.inUse();
    if (!found) throw new Error('no project');
    return found;
  };
  return { say, reply, project, guest };
}

type Begun = Awaited<ReturnType<typeof begun>>;

/** Cartons by every way that tells them; undefined where there is nothing to lay yet. */
async function cartonsBy({ say, reply, guest }: Begun) {
  const planks = await say('planks');
  const listed = (data: unknown): number | undefined => {
    const needed = (data as { lines: readonly Listed[] }).lines.filter(
      (one) => one.item.startsWith('plank ') && (one.count ?? 0) > 0,
    );
    expect(needed.length).toBeLessThan(2);
    return needed[0]?.count;
  };
  const shopping = await reply('project shopping');
  const spend = (await reply('project spend')).data as unknown as {
    stages: readonly { stage: string; estimate: number }[];
  };
  const dollars = (spend.stages.find(({ stage }) => stage === 'lay')?.estimate ?? 0) / 100;
  const each = Number(/\$(\d+) a carton/.exec(textOf(await reply('project pick')))?.[1] ?? 1);
  const handoff = /(\d+) cartons? of \d/.exec(textOf(await reply('project handoff')))?.[1];
  const sheets = (await reply('project sheets')).data as unknown as Sheets;
  const page = (await reply('project sheets', guest)).data as unknown as Sheets;
  const sheet = ({ sheets: all }: Sheets) =>
    listed(all.find(({ key }) => key === 'shopping')?.reply.data ?? { lines: [] });
  return {
    planks: 'headline' in planks ? (planks.data as unknown as { count: { cartons: number } }).count.cartons : undefined,
    shopping: listed(shopping.data),
    spend: dollars === 0 ? undefined : dollars / each,
    handoff: handoff === undefined ? undefined : Number(handoff),
    sheets: sheet(sheets),
    page: sheet(page),
    rooms: sheets.sheets.filter(({ key }) => key === 'guide').map(({ room }) => room),
    said: JSON.stringify([shopping, sheets, page, await reply('project handoff')]),
  };
}

/** Everything agrees, and no room is told of that is not there; whether there is a floor to buy. */
async function agree(at: Begun): Promise<boolean> {
  const { planks, rooms, said, ...others } = await cartonsBy(at);
  expect(others).toEqual({ shopping: planks, spend: planks, handoff: planks, sheets: planks, page: planks });
  const project = await at.project();
  const within = project.rooms.filter((room) => room.inScope).map((room) => room.name);
  expect([...rooms].sort()).toEqual(planks === undefined ? [] : [...within].sort());
  const there = new Set(project.rooms.map((room) => room.name));
  // A name within the name of a room that is there is told of with it.
  const without = [...there]
    .sort((one, other) => other.length - one.length)
    .reduce((text, one) => text.replaceAll(one, '·'), said);
  const given = NAMES.flatMap((one) => {
    const place = there.has(one) ? -1 : without.indexOf(one);
    return place < 0 ? [] : [without.slice(Math.max(0, place - 80), place + 80)];
  });
  expect(given).toEqual([]);
  return planks !== undefined;
}

describe('what to buy', () => {
  it(`is the same in every list after any changes, and what was bought stays bought (${RUNS} sequences)`, async () => {
    let floors = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(line, { minLength: 6, maxLength: 12 }), async (lines) => {
        const at = await begun();
        for (const [i, one] of lines.entries()) {
          const before = await at.project();
          // What somebody writes about another place than the rooms is theirs to write.
          const written = /^project found .* in (.*)$/.exec(one)?.[1];
          if (written !== undefined && !before.rooms.some((room) => room.name === written)) continue;
          await at.say(one);
          const after = await at.project();
          const ofPurchases = /^project (?:shopping|undo)/.test(one) && after.shopping !== before.shopping;
          if (!ofPurchases) expect(after.shopping).toEqual(before.shopping);
          else if (one.startsWith('project undo')) {
            const turned = one === 'project undo' ? before.history.at(-1) : before.undone.at(-1);
            expect(turned?.said ?? '').toSatisfy(
              (said: string) =>
                said.startsWith('shopping: ') || JSON.stringify(after.shopping) === JSON.stringify(before.shopping),
            );
          }
          if (i === Math.floor(lines.length / 2)) await agree(at);
        }
        if (await agree(at)) floors++;
      }),
      { numRuns: RUNS, endOnFailure: process.env.BUYING_SHRINK === undefined },
    );
    // Most of them end with a floor, or nothing would be compared.
    expect(floors).toBeGreaterThan(RUNS / 2);
  }, 600_000);
});
