/** Saved answers: shown as they were, in no total, and what is to be bought follows the project as it is now. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { isCalculating } from '../../src/input/command-shape.ts';
import { projectCodec } from '../../src/project/project.ts';
import { requestOptions } from '../../src/project/saved-request.ts';
import { type Conversation, conversation, textOf } from '../project/conversation.ts';

interface Line {
  readonly item: string;
  readonly count?: number;
  readonly bought: number;
  readonly back: number;
}

async function linesOf(talk: Conversation): Promise<readonly Line[]> {
  return ((await talk.reply('project shopping')).data as unknown as { lines: readonly Line[] }).lines;
}

const planksOf = (lines: readonly Line[]): Line | undefined => lines.find(({ item }) => item.startsWith('plank '));
const cartonsOf = (headline: string): string => /\d+ cartons?/.exec(headline)?.[0] ?? '';

/** A project with an answer saved: 268 sq ft, 14 cartons. */
async function saved(...changes: readonly string[]): Promise<Conversation> {
  const talk = await conversation('none');
  for (const line of [
    'start a project called T',
    'add den 12 x 14; office 10 x 10',
    'project pick plank: 7 x 48 in, 23.33 sq ft per carton, $3.19/sq ft',
    'planks',
    'keep that',
    ...changes,
  ])
    await talk.reply(line);
  return talk;
}

describe('after an answer was saved', () => {
  // 12 x 14 ft and 10 x 10 ft of 7 x 48 in planks, 10 a carton; each figure is that of “planks” at that moment.
  it.each([
    ['nothing', [], 14],
    ['a room renamed', ['rename office to study'], 14],
    ['a room removed', ['remove the office'], 9],
    ['a room out of the job', ['project room office out of scope'], 9],
    ['another plank picked', ['project pick plank: 6 x 48 in, 24 sq ft per carton, $2.50/sq ft'], 13],
    ['a room measured again', ['project measure wall 1 of den is 6 ft', 'the den is 6 x 14'], 10],
    ['a room removed and brought back', ['remove the office', 'undo'], 14],
    ['the same room asked about by its sizes', ['planks room: 12 x 14 ft', 'keep that'], 14],
    ['another plank tried and saved', ['planks plank: 6 x 48 in, 24 sq ft per carton', 'keep that'], 14],
    ['one room asked about and saved', ['planks room: den', 'keep that'], 14],
  ])('and %s, what is bought is what “planks” says', async (_what, changes, cartons) => {
    const talk = await saved(...changes);
    const { headline } = await talk.reply('planks');
    expect(headline).toContain(`Buy ${cartons} cartons`);
    expect(planksOf(await linesOf(talk))?.count).toBe(cartons);
    expect(textOf(await talk.reply('project handoff'))).toContain(`${cartons} cartons of`);
  });

  it('it is shown as it was with its day, one line says what it is today, and a button gives it', async () => {
    const talk = await saved();
    expect(textOf(await talk.reply('project show'))).not.toContain('today');
    await talk.reply('remove the office');
    const shown = await talk.reply('project show');
    expect(textOf(shown)).toMatch(/1 \| Sat 21 Nov \| Buy 14 cartons/);
    expect(textOf(shown)).toContain('Saved answer 1 (Sat 21 Nov) is different today: Buy 9 cartons');
    const today = shown.actions.find(({ label }) => label.includes('no. 1'))?.ask ?? '';
    expect((await talk.reply(today)).headline).toBe((await talk.reply('planks')).headline);
    expect((await talk.reply('project shopping')).assumed.join()).toContain('saved answer 1 (Sat 21 Nov) differs');
    await talk.reply('undo');
    expect((await talk.reply('project shopping')).assumed.join()).not.toContain('saved answer');
  });

  it('a room renamed is renamed in it, and a room whose name holds the other stays', async () => {
    const talk = await conversation('none');
    for (const line of [
      'start a project called T',
      'add closet 3 x 5; linen closet 2 x 4',
      'project pick plank: 6 x 36 in, 12 per carton',
      'project pick list doors: 24 in on wall 2 of closet',
      'planks',
      'keep that',
      'found soft spot 1 x 1 ft in the closet',
      'rename closet to store 2',
    ])
      await talk.reply(line);
    const { kept, picks, found } = await talk.project();
    expect(kept[0]?.ask).toMatch(/^planks room: store 2 = 3 x 5 ft; linen closet 2 x 4 ft, plank: /);
    expect(picks['list doors']).toBe('24 in on wall 2 of store 2');
    expect(found[0]?.room).toBe('store 2');
    expect((await talk.reply(kept[0]?.ask ?? '')).headline).toBe((await talk.reply('planks')).headline);
    await talk.reply('undo');
    expect((await talk.project()).kept[0]?.ask).toMatch(/^planks room: closet 3 x 5 ft; linen closet/);
  });

  it('“project rename” with the name of a room renames the room', async () => {
    const talk = await saved('project rename office to study');
    expect((await talk.project()).rooms.map(({ name }) => name)).toEqual(['den', 'study']);
    await talk.reply('project rename Top floor to let');
    expect((await talk.project()).name).toBe('Top floor to let');
  });

  it('sizes of its own add no floor to the project, which is said with a way to add it', async () => {
    const talk = await saved('planks room: 9 x 9 ft');
    const { assumed, actions } = await talk.reply('keep that');
    expect(assumed.join()).toContain('sizes of its own');
    expect((await talk.project()).rooms).toHaveLength(2);
    expect(planksOf(await linesOf(talk))?.count).toBe(14);
    expect(textOf(await talk.reply('project show'))).toContain(
      "Saved answer 2 (Sat 21 Nov) isn't about the rooms of this job",
    );
    await talk.reply(actions.find(({ label }) => label.startsWith('Add its room'))?.ask ?? '');
    expect((await talk.project()).rooms).toHaveLength(3);
    expect(cartonsOf((await talk.reply('planks')).headline)).toBe(`${planksOf(await linesOf(talk))?.count} cartons`);
  });

  it('a choice that the project has otherwise is offered, and taken it counts', async () => {
    const talk = await saved('planks plank: 6 x 48 in, 24 sq ft per carton');
    const { actions, assumed } = await talk.reply('keep that');
    expect(assumed.join()).toContain('your choice stays: plank 7 x 48 in');
    await talk.reply(actions.find(({ label }) => label === 'Use its plank')?.ask ?? '');
    expect(planksOf(await linesOf(talk))).toMatchObject({ item: expect.stringContaining('48768'), count: 13 });
  });
});

describe('work that a saved answer adds', () => {
  const PATCH = `project keep patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in, room: office`;

  it('keeps its own measures, follows the picks, and goes with its room', async () => {
    const talk = await saved(
      `${PATCH}, thickness: 5/8 in`,
      `${PATCH.replace('20 x 30', '12 x 12')}, thickness: 1/2 in`,
    );
    const panels = async () => (await linesOf(talk)).flatMap(({ item }) => (item.startsWith('panel') ? [item] : []));
    const before = await panels();
    expect(before).toHaveLength(2);
    // The first took its thickness from the project, where it was picked with it; the second has its own.
    await talk.reply('project pick patch thickness: 3/4 in');
    const after = await panels();
    expect(after).toHaveLength(2);
    expect(after.filter((item) => before.includes(item))).toHaveLength(1);
    expect(textOf(await talk.reply('project sheets'))).toContain('Subfloor patch: office');
    await talk.reply('remove the office');
    expect(await panels()).toEqual([]);
    const sheets = await talk.reply('project sheets');
    expect(JSON.stringify([sheets.data, (await talk.reply('project handoff')).data])).not.toMatch(/office/i);
    await talk.reply('undo');
    expect(await panels()).toEqual(after);
  });

  it('old boards put back in one room are not bought anew there', async () => {
    const talk = await saved('project pick list stock: 8 ft; 12 ft');
    const boards = async () => (await linesOf(talk)).filter(({ item }) => item.startsWith('baseboard')).length;
    expect(await boards()).toBeGreaterThan(0);
    await talk.reply('project keep reset room: den; office');
    const line = await talk.reply('project shopping');
    expect(textOf(line)).not.toMatch(/^ {2}\[ \] Baseboard, \d+'/m);
  });

  it.each(['we are reusing the baseboards', 'put the old baseboards back', 'we’re keeping the old skirting'])(
    '“%s” buys no new ones',
    async (line) => {
      const talk = await saved('project pick list stock: 8 ft; 12 ft', line);
      expect((await talk.reply(line)).assumed.join()).toContain('read as “reset”');
      await talk.reply('keep that');
      expect(textOf(await talk.reply('project shopping'))).not.toMatch(/^ {2}\[ \] Baseboard, \d+'/m);
    },
  );

  it('a floor that comes out lies in its rooms, and in no other', async () => {
    const talk = await saved('project keep tearout room: den, floor: carpet');
    const { rooms, picks } = await talk.project();
    expect(rooms.map(({ floor }) => floor)).toEqual(['carpet', undefined]);
    expect(Object.keys(picks)).not.toContain('tearout floor');
    expect(textOf(await talk.reply('project shopping'))).toContain('Tear-out: what is on the floor of office now?');
  });

  it('a floor tested in one room is tested in no other', async () => {
    const talk = await saved(
      'project room den, floor: sheet vinyl',
      'project room office, floor: sheet vinyl',
      'project keep tearout room: den, floor: sheet vinyl, tested: clear',
    );
    const text = textOf(await talk.reply('project shopping'));
    expect(text).toMatch(/Leave this to a professional/);
    expect(text).toContain('Contractor bags');
  });

  it('doorways saved one after the other are all bought', async () => {
    const talk = await saved(
      'project keep edges doorways: bath 30 in to tile 1/2 in',
      'project keep edges doorways: kitchen 36 in to tile 1/2 in',
    );
    expect((await talk.project()).picks['edges doorways']).toBe(
      'bath 30 in to tile 1/2 in; kitchen 36 in to tile 1/2 in',
    );
    expect((await talk.reply('edges')).headline).toMatch(/^2 end caps/);
  });
});

describe('what was bought', () => {
  it('stays bought through renames, new measures, scope and what is taken back', async () => {
    const talk = await saved('project shopping bought 4 cartons at $74 lot B7');
    const { shopping } = await talk.project();
    for (const line of [
      'rename office to study',
      'the study is 8 x 10',
      'project room study out of scope',
      'undo',
      'remove the study',
      'undo',
      'undo',
      'undo',
    ]) {
      await talk.reply(line);
      expect((await talk.project()).shopping).toEqual(shopping);
    }
    expect(planksOf(await linesOf(talk))).toMatchObject({ count: 14, bought: 40 });
  });

  it('of the plank before stays listed as that plank, and can go back', async () => {
    const talk = await saved(
      'project shopping bought 4 cartons at $74 lot B7',
      'project pick plank: 6 x 48 in, 24 sq ft per carton, $2.50/sq ft',
    );
    const [now, before] = (await linesOf(talk)).filter(({ item }) => item.startsWith('plank '));
    expect(now).toMatchObject({ count: 13, bought: 0 });
    expect(before).toMatchObject({ bought: 40, back: 4 });
    const text = textOf(await talk.reply('project shopping'));
    expect(text).toContain('Planks 7" × 48" | 4 cartons of 10 | $296.00 | B7');
    expect(text).toContain('Planks 6" × 48": 13 cartons of 12');
  });
});

describe('places picked in rooms', () => {
  const HALL = [
    'start a project called T',
    `add hall 3'6" x 14'; bedroom 11' x 12'6"`,
    'project pick plank: 7 x 48 in, 10 per carton',
    'project pick doorways: hall to bedroom 32 in, 18 in from the left corner of wall 4, 12 in from the right of wall 2 of bedroom, runs on',
    'project pick list doors: 32 in on wall 2 of bedroom; 30 in on wall 1 of hall',
  ];
  const began = async (...more: readonly string[]) => {
    const talk = await conversation('none');
    for (const line of [...HALL, ...more]) await talk.reply(line);
    return talk;
  };

  it('follow a room that is renamed', async () => {
    const talk = await began('planks');
    const before = (await talk.reply('planks')).headline;
    await talk.reply('rename bedroom to guest room');
    expect((await talk.reply('planks')).headline).toBe(before);
    expect((await talk.project()).picks['list doors']).toContain('wall 2 of guest room');
  });

  it.each(['remove bedroom', 'project room bedroom out of scope'])('are not used after “%s”', async (line) => {
    const talk = await began(line);
    expect((await talk.reply('planks')).headline).toMatch(/^Buy \d+ cartons/);
    expect((await talk.reply('list room: hall, stock: 8 ft')).headline).toMatch(/^Buy/);
    const sheets = await talk.reply('project sheets');
    expect(JSON.stringify([sheets.data, (await talk.reply('project handoff')).data])).not.toMatch(/bedroom/i);
  });
});

describe('records', () => {
  it('of the version before say which work their answers are about', () => {
    const old = {
      version: 3,
      id: 'Zp7mQe2KjT4uRw9XcB1aVd',
      owner: 'kqVb3dS0rYx1Nn8Lw2Te5g',
      shares: [],
      given: 0,
      name: 'Flat',
      state: { kind: 'active' },
      rooms: ['hall', 'bedroom 2', 'bath'].map((name) => ({
        name,
        text: '8 x 9 ft',
        notes: [],
        inScope: name !== 'bath',
      })),
      picks: { plank: '7 x 48 in, 10 per carton', thickness: '3/4 in', 'edges doorways': 'bath 30 in to tile' },
      kept: [
        {
          id: 'kept-one-',
          ask: 'planks room: hall 8 x 9 ft; bedroom 2 = 8 x 9 ft, plank: 7 x 48 in, 10 per carton',
          headline: 'Buy 5 cartons.',
          at: 1,
        },
        {
          id: 'kept-two-',
          ask: `patch damage: 1 x 1 ft at 3' from left, thickness: 5/8 in, room: bedroom 2 = 8 x 9 ft`,
          headline: 'Cut.',
          at: 2,
        },
        { id: 'kept-three', ask: 'squeaks area: 4 x 6 ft, found: creaks in the hall', headline: 'Screws.', at: 3 },
        { id: 'kept-four', ask: 'edges doorways: kitchen 36 in to tile', headline: 'Caps.', at: 4 },
        {
          id: 'kept-five',
          ask: 'planks room: 12 x 14 ft, plank: 6 x 36 in, 12 per carton',
          headline: 'Buy 9 cartons.',
          at: 5,
        },
      ],
      shopping: { bought: [], opened: {} },
      stages: { marks: [] },
      spend: { entries: [] },
      log: [],
      found: [],
      measures: { open: [], told: [] },
      count: 1,
      history: [
        {
          no: 1,
          at: 6,
          by: 'kqVb3dS0rYx1Nn8Lw2Te5g',
          via: 'terminal:one',
          said: 'no longer kept',
          back: {
            keys: {
              kept: {
                at: 5,
                cut: 0,
                put: [{ id: 'kept-six-', ask: 'level readings: 5 mm over 3 m', headline: 'Flat.', at: 6 }],
              },
            },
          },
        },
      ],
      undone: [],
    };
    const { kept, picks, history } = projectCodec.read(old);
    expect(kept.map(({ rooms }) => rooms)).toEqual([undefined, ['bedroom 2'], ['hall'], undefined, []]);
    expect(kept.map(({ own }) => own)).toEqual([[], ['damage', 'thickness'], ['area', 'found'], [], ['plank']]);
    expect(picks['edges doorways']).toBe('bath 30 in to tile; kitchen 36 in to tile');
    expect(JSON.stringify(history)).toContain('"own":["readings"]');
  });

  it('taken out before are brought in with the work that their answers are about', async () => {
    const talk = await saved(
      `project keep patch damage: 12 x 12 in at 3' from left, 5' from bottom, first-joist: 16 in, room: office`,
    );
    const { projects } = (await talk.reply('project mydata')).data as unknown as {
      projects: readonly { kept: readonly object[] }[];
    };
    const old = projects.map((one) => ({
      ...one,
      kept: one.kept.map((answer) =>
        Object.fromEntries(Object.entries(answer).filter(([key]) => !['own', 'rooms'].includes(key))),
      ),
    }));
    const before = (await talk.project()).kept;
    await talk.reply(`project mydata import: ${JSON.stringify({ projects: old })}`);
    expect((await talk.project()).kept).toEqual(before);
    await talk.reply(`project mydata import: ${JSON.stringify({ projects })}`);
    expect((await talk.project()).kept).toEqual(before);
  });

  it('are taken apart by the options of every command', () => {
    for (const command of commands.filter(isCalculating))
      for (const option of Object.keys(command.options.shape))
        expect([...requestOptions(`${command.name} ${option}: x`).keys()], `${command.name} ${option}`).toEqual([
          option,
        ]);
  });
});
