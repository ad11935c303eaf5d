/** The shopping list of the demo flat: over all stages, rounded once, ticked off in everyday words. */

import { describe, expect, it } from 'vitest';
import { notGivenIn } from '../../src/text/shopping-text.ts';
import { type Conversation, conversation, textOf } from '../project/conversation.ts';
import { flatContent } from '../project/projects.ts';

const UNTOLD = notGivenIn('imperial');

interface Line {
  readonly item: string;
  readonly amount: number;
  readonly count?: number;
  readonly bought: number;
  readonly left: number;
  readonly back: number;
}

async function linesOf(talk: Conversation, line = 'project shopping') {
  const { data } = await talk.reply(line);
  const { lines } = data as unknown as { lines: readonly Line[] };
  return (start: string): Line => {
    const found = lines.find(({ item }) => item.startsWith(start));
    if (!found) throw new Error(`no ${start} among ${lines.map(({ item }) => item).join(', ')}`);
    return found;
  };
}

const PATCH = `project keep patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in`;

describe('a tick taken back', () => {
  it('leaves what was bought before with its price and its lot, and is refused where there is no tick', async () => {
    const talk = await conversation();
    const before = await talk.reply('project shopping bought 2 cartons at $62.50 lot B7');
    await talk.reply('project shopping bought all planks');
    expect((await linesOf(talk))('plank').left).toBe(0);
    const { data, headline } = await talk.reply('project shopping untick planks');
    expect(headline).toContain('No longer ticked off');
    expect(data).toEqual(before.data);
    expect((await talk.problem('project shopping untick planks')).expected).toContain('every purchase of it');
    expect((await talk.reply('project shopping')).data).toEqual(before.data);
  });
});

describe('the list', () => {
  it('asks the same sums as anybody: its planks are those of the planks answer', async () => {
    const talk = await conversation();
    const { data } = await talk.reply('planks');
    const { cartons } = (data as unknown as { count: { cartons: number } }).count;
    expect((await linesOf(talk))('plank').count).toBe(cartons);
  });

  it('tells what is not worked out, each with a line that works it out', async () => {
    const talk = await conversation();
    const text = textOf(await talk.reply('project shopping'));
    for (const { tell } of [UNTOLD.subfloor, UNTOLD.doorways, UNTOLD.trim]) {
      expect(text).toContain(tell);
      await talk.reply(tell);
    }
    await talk.reply(UNTOLD.floor(['bedroom']).tell);
    await talk.reply(UNTOLD.plank.tell);
    expect(textOf(await talk.reply('project shopping'))).not.toContain(UNTOLD.doorways.tell);
  });

  it('tells it in the asker’s own units', async () => {
    const talk = await conversation({ ...flatContent(), picks: {} }, { units: 'metric' });
    const metric = notGivenIn('metric');
    const text = textOf(await talk.reply('project shopping'));
    for (const { tell } of [metric.plank, metric.subfloor, metric.doorways, metric.trim]) {
      expect(text).toContain(tell);
      await talk.reply(tell);
    }
    await talk.reply(metric.rooms.tell.replace('bedroom', 'study'));
  });

  it('of a project without rooms tells how to begin', async () => {
    const talk = await conversation({ ...flatContent(), rooms: [], picks: {} });
    const text = textOf(await talk.reply('project shopping'));
    expect(text).toContain(UNTOLD.rooms.tell);
    await talk.reply(UNTOLD.rooms.tell);
  });

  it('puts two patches and squeaks together before it rounds', async () => {
    const talk = await conversation();
    await talk.reply(`${PATCH}, bead: 1/8 in`);
    const one = (await linesOf(talk))('subfloor adhesive');
    await talk.reply(`${PATCH.replace('20 x 30', '20 x 29')}, bead: 1/8 in`);
    await talk.reply('project keep squeaks area: 4 x 6 ft');
    const line = await linesOf(talk);
    expect(line('subfloor adhesive')).toMatchObject({ count: 1 });
    expect(line('subfloor adhesive').amount).toBeGreaterThan(one.amount);
    expect(line('subfloor screw').count).toBe(Math.ceil(line('subfloor screw').amount / 100));
  });

  it('keeps one of two answers about the same rooms, the later, and asks rooms as they are now', async () => {
    const talk = await conversation();
    await talk.reply('project keep planks room: bedroom, plank: 6 x 36 in, 12 per carton');
    const before = (await linesOf(talk))('plank').amount;
    await talk.reply(`project room bedroom, size: 11' x 6'`);
    expect((await linesOf(talk))('plank').amount).toBeLessThan(before);
  });

  it('is the same by aisle, and says when nothing is left', async () => {
    const talk = await conversation();
    const text = textOf(await talk.reply('project shopping by aisle'));
    expect(text).toContain('Flooring');
    expect(textOf(await talk.reply('project shopping by: aisle'))).toBe(text);
    const { headline } = await talk.reply('project shopping bought everything');
    expect(headline).toMatch(/Nothing left to buy\.$/);
  });

  it('carries the cautions of the work it is for', async () => {
    const talk = await conversation();
    const topics = (await talk.reply('project shopping')).cautions.map(({ topic }) => topic);
    expect(topics).toEqual(expect.arrayContaining(['asbestos', 'tack-strip', 'saw']));
    expect(new Set(topics).size).toBe(topics.length);
  });

  it('of an old vinyl floor says who to call, and drops nothing else', async () => {
    const talk = await conversation();
    await talk.reply('project room hall, floor: sheet vinyl');
    const reply = await talk.reply('project shopping');
    expect(textOf(reply)).toMatch(/Leave this to a professional[\s\S]*asbestos laboratory/i);
    expect(textOf(reply)).toContain('Planks');
  });
});

describe('ticking off', () => {
  it('part of it, at a price, of a lot; what is left, and a mixed lot', async () => {
    const talk = await conversation();
    const all = (await linesOf(talk))('plank').left;
    const first = await talk.reply('project shopping bought 10 cartons at $32.50 lot B7');
    expect(first.headline).toContain('Bought: Planks 7" × 48", 10 cartons of 10.');
    expect((await linesOf(talk))('plank')).toMatchObject({ bought: 100, left: all - 10 });
    expect((await talk.project()).shopping.bought).toMatchObject([
      { cost: { cents: 32_500, currency: 'USD' }, lot: 'B7', packages: { count: 10 } },
    ]);
    const second = await talk.reply('project shopping bought all planks lot C9');
    expect(second.cautions[0]?.text).toMatch(/Mixed lots.*B7 and C9/);
    expect((await linesOf(talk))('plank').left).toBe(0);
  });

  it('then the plan changes: so many more of the same lot, or too many', async () => {
    const talk = await conversation();
    await talk.reply('project shopping bought all planks at $60 lot B7');
    await talk.reply(`project room study 10' x 10'`);
    const more = textOf(await talk.reply('project shopping'));
    expect(more).toMatch(/Planks 7" × 48": \d+ cartons of 10 more, of lot B7 as the others/);
    await talk.reply('project room study out of scope');
    await talk.reply('project room bedroom out of scope');
    const { back } = (await linesOf(talk))('plank');
    expect(back).toBeGreaterThan(0);
    await talk.reply('project shopping opened all planks');
    expect((await linesOf(talk))('plank').back).toBe(0);
  });

  it('is taken back by undo, whole', async () => {
    const talk = await conversation();
    const before = await talk.project();
    await talk.reply('project shopping bought 10 cartons at $32.50 lot B7, all bags');
    await talk.reply('project undo');
    expect((await talk.project()).shopping).toEqual(before.shopping);
  });

  it('every button ticks off its own line and no other', async () => {
    const talk = await conversation();
    await talk.reply(PATCH);
    await talk.reply('project keep squeaks area: 4 x 6 ft, thickness: 1 1/8 in');
    await talk.reply('project keep level readings: 3/16 in over 10 ft; low 1/4 in over 6 ft, area: 4 x 6 ft');
    await talk.reply('project pick edges doorways: bath 30 in to tile 1/2 in; hall 32 in to carpet');
    await talk.reply('project pick list stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98');
    await talk.reply(`project room living, size: 14' x 16'`);
    const ticks = async () => (await talk.reply('project shopping')).actions.filter(({ among }) => among !== undefined);
    let ticked = 0;
    for (let [next] = await ticks(); next !== undefined; [next] = await ticks()) {
      const before = (await talk.project()).shopping.bought;
      await talk.reply(next.ask);
      const { bought } = (await talk.project()).shopping;
      expect(bought, next.ask).toHaveLength(before.length + 1);
      expect(before.map(({ item }) => item)).not.toContain(bought.at(-1)?.item);
      ticked++;
    }
    expect(ticked).toBeGreaterThan(15);
    expect((await talk.reply('project shopping')).headline).toBe('Nothing left to buy.');
  });

  it('everything but one thing is everything but that', async () => {
    const talk = await conversation();
    await talk.reply('project shopping bought everything but planks');
    const line = await linesOf(talk);
    expect(line('plank').bought).toBe(0);
    expect(line('contractor bag').left).toBe(0);
  });

  it('all of it twice is once: more of it is told by number', async () => {
    const talk = await conversation();
    await talk.reply('project shopping bought all bags');
    const before = await talk.project();
    const problem = await talk.problem('project shopping bought all bags');
    expect(problem).toMatchObject({ expected: expect.stringContaining('Say how many') });
    // How many more is theirs to say.
    expect(problem).not.toHaveProperty('fix');
    expect((await talk.project()).shopping).toEqual(before.shopping);
    await talk.reply('project shopping bought 1 bag');
    expect((await linesOf(talk))('contractor bag').back).toBe(1);
  });

  it('what may be two things keeps its price and lot when it is mended', async () => {
    const talk = await conversation();
    await talk.reply('project pick list stock: 8 ft; 16 ft');
    await talk.reply(`project room living, size: 14' x 16'`);
    const { fix } = await talk.problem('project shopping bought 2 sticks at $9.50 lot 44-B');
    await talk.reply(fix ?? '');
    expect((await talk.project()).shopping.bought).toMatchObject([{ cost: { cents: 1900 }, lot: '44-B' }]);
  });

  it('what may be two things is asked back, with a line to type', async () => {
    const talk = await conversation();
    await talk.reply(PATCH);
    await talk.reply('project pick list stock: 8 ft; 12 ft');
    await talk.reply(`project room living, size: 14' x 16'`);
    const { expected, fix } = await talk.problem('project shopping bought 1 tube');
    expect(expected).toMatch(/Subfloor adhesive.*Caulk/);
    await talk.reply(fix ?? '');
    expect((await talk.project()).shopping.bought).toHaveLength(1);
  });

  it('of a list with nothing on it leads to the answer that it could be made of', async () => {
    const talk = await conversation('none');
    await talk.reply('start a project called T');
    const lacking = await talk.problem('i bought 8 boxes');
    expect(lacking.expected).toContain('“project shopping”');
    // The boxes are told again once there is a list: no button forgets them.
    expect(lacking).not.toHaveProperty('fix');
    await talk.reply('planks room: den 12 x 14 ft, plank: 7 x 48 in, 10 per carton');
    expect((await talk.problem('i bought 8 boxes')).expected).toContain('“project keep”');
    await talk.reply('project keep');
    expect((await talk.reply('i bought 8 boxes')).headline).toMatch(/^Bought: Planks 7" × 48", 8 boxes of 10\./);
  });

  it.each([
    'bought 4 sandwiches',
    'blah',
    'bought 1.5 cartons',
    'bought 12 underlay',
    'returned 2 cartons',
    'bought 10 cartons, 4 sandwiches',
  ])('“%s” is asked back, and nothing is ticked off or made up', async (text) => {
    const talk = await conversation();
    const problem = await talk.problem(`project shopping ${text}`);
    expect((await talk.project()).shopping.bought).toEqual([]);
    expect(problem.expected).not.toBe('');
    expect(problem).not.toHaveProperty('fix');
  });

  it.each([
    'bought “10” cartons',
    'bought 10 cartons lot <@everyone>',
    'bought 10 cartons lot __proto__',
    'bought \u202e10 cartons',
    'bought 10 cartons at $99999999999',
    `bought ${'9'.repeat(30)} cartons`,
    'bought constructor',
    `bought ${'carton '.repeat(200)}`,
  ])('hostile: “%s” is answered, and keeps the project whole', async (text) => {
    const talk = await conversation();
    expect(await talk.ask(`project shopping ${text}`)).not.toHaveProperty('reference');
    await talk.reply('project shopping');
  });

  it('reads metric and the euro', async () => {
    const talk = await conversation(
      {
        ...flatContent(),
        rooms: [{ name: 'hall', text: '1,2 x 4 m', notes: [], inScope: true }],
        picks: { plank: '180 x 1220 mm, 8 per carton, 31,90 € a carton' },
      },
      { units: 'metric', decimal: ',', currency: 'EUR' },
    );
    const reply = await talk.reply('project shopping bought 2 cartons at 29,90 € lot 4471');
    expect(textOf(reply)).toContain('59,80 €');
  });
});

describe('another currency by habit', () => {
  it('leaves no money out of sight: what is told in one currency is summed in it', async () => {
    const talk = await conversation();
    await talk.reply('bought 4 cartons at $62.50');
    const [shopping, spend] = [await talk.reply('shopping'), await talk.reply('spend')];
    await talk.reply('use euros');
    expect((await talk.reply('shopping')).headline).toBe(shopping.headline);
    expect((await talk.reply('spend')).headline).toBe(spend.headline);
    await talk.reply('spent 20 € on caulk');
    expect((await talk.reply('spend')).headline).toMatch(/^Spent €20/);
    expect(textOf(await talk.reply('spend'))).toContain('in other currencies, not included: $250.00');
  });
});

it('says no more given back than was bought', async () => {
  const talk = await conversation();
  await talk.reply('bought 4 cartons at $62.50');
  expect((await talk.reply('returned 500 cartons')).headline).toMatch(/^Returned: Planks .*, 4 cartons of 10\./);
  expect((await talk.project()).shopping.bought).toEqual([]);
});
