/** A project as its owner talks about it: from nothing to answers that need no options, on a phone, with slips. */

import { describe, expect, it } from 'vitest';
import type { Asker } from '../../src/accounts/records.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { shareWith } from '../project/projects.ts';
import { type AnsweredRequest, answerTo, problemsOf, replyTo } from './asked.ts';
import { portsInMemory } from './demo-flat.ts';

const ANN: Asker = { platform: 'discord', id: '1' };

function throwing(_reference: string, cause: unknown): never {
  throw cause;
}

function talk(asker: Asker = ANN, ports = portsInMemory(throwing)) {
  const requested: AnsweredRequest = { asker, ports };
  return {
    ports,
    say: (line: string) => replyTo(line, requested),
    answer: (line: string) => answerTo(line, requested),
    as: (other: Asker) => talk(other, ports),
  };
}

/** Lets the person of an account measure for the only project of Ann's. */
async function letHelp({ store }: ReturnType<typeof portsInMemory>, account: string): Promise<string> {
  const read = (key: string) => JSON.parse(store.records.get(key) ?? '');
  const { person } = read(`account/${account}`);
  const ann = read(`person/${read('account/discord:1').person}`);
  const [{ id }] = ann.projects;
  const share = (key: string, change: object) => store.records.set(key, JSON.stringify({ ...read(key), ...change }));
  share(`project/${id}`, { shares: [shareWith(person, 'measure')], given: 1 });
  share(`person/${person}`, { projects: [...read(`person/${person}`).projects, { id, role: 'measure' }] });
  return id;
}

const notes = ({ assumed }: Reply): string => assumed.join('\n');

describe('a project told in a few messages', () => {
  it('answers planks, tear-out and trim with nothing told', async () => {
    const { say } = talk();
    expect((await say('start a project called upstairs flat')).headline).toBe(
      '“upstairs flat” is started. Your questions now use its rooms and choices.',
    );
    expect((await say(`add hall 3'6" x 14'`)).headline).toBe(`Hall added: 3'6" x 14'.`);
    await say('project room bedroom 11x12.5; closet 3x5; bath 5x8');
    expect((await say('leave the bath as it is')).headline).toBe('Bath is not part of the job.');
    await say('project room bedroom doors 32 in on wall 2');
    await say('project pick plank: 7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft');
    const planks = await say('planks');
    expect(planks.headline).toMatch(/^Buy \d+ cartons .* \$/);
    expect(notes(planks)).toContain('from your project “upstairs flat”: rooms hall, bedroom, closet; plank 7 x 48 in');
    const typed = await say(
      `planks room: hall 3'6" x 14'; bedroom 11x12.5 ft; closet 3x5 ft, plank: 7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft`,
    );
    expect(typed.data).toEqual(planks.data);
    expect((await say('how many boxes do I need?')).data).toEqual(planks.data);
    expect((await say('tearout built: 1995')).headline).toBe(
      (await say(`tearout room: hall 3'6" x 14'; bedroom 11x12.5 ft; closet 3x5 ft, built: 1995`)).headline,
    );
    const trim = await say('trim list');
    expect(notes(trim)).toContain('doors 32 in on wall 2 of bedroom');
  });

  it('takes a room by its name, in other words and with a slip', async () => {
    const { say } = talk();
    await say('project new Flat, rooms: bedroom 11x12; living room 14x16; closet 3x5, plank: 6 x 48 in, 10 per carton');
    const alone = (await say('planks room: bedroom 11x12 ft')).data;
    expect((await say('planks bedroom')).data).toEqual(alone);
    expect((await say('planks room: Bedrom')).data).toEqual(alone);
    expect((await say('planks the bedroom')).data).toEqual(alone);
    const two = (await say('planks room: living room 14x16 ft; closet 3x5 ft')).data;
    expect((await say('planks living and closet')).data).toEqual(two);
    expect((await say('planks all but the bedroom')).data).toEqual(two);
    expect((await say('planks room: living room; closet 3x5 ft')).data).toEqual(two);
    const layout = await say('layout only: closet');
    expect(layout.headline).toContain('closet');
  });

  it('lets what is told win, and asks again with everything in the line', async () => {
    const { say } = talk();
    await say('project new Flat, rooms: bedroom 11x12, plank: 6 x 48 in, 10 per carton');
    await say('project pick gap: 3/8 in');
    const given = await say('planks gap: 1/2 in, plank: 7 x 48 in, 8 per carton');
    expect(notes(given)).not.toContain('3/8');
    const again = given.actions.find(({ label }) => label.includes('half'))?.ask ?? '';
    expect(again).toBe('planks room: bedroom 11x12 ft, plank: 7 x 48 in, 8 per carton, gap: 1/2 in, pattern: half');
  });

  it('keeps the last answer, with its rooms and its plank, and begins a project for it', async () => {
    const { say } = talk();
    await say('planks room: den 10x12, plank: 6 x 48 in, 10 per carton');
    const kept = await say('keep that');
    expect(kept.headline).toBe('Saved: Buy 7 cartons (70 planks): 60 to lay, 2 for mistakes, 8 left over.');
    expect(notes(kept)).toContain('“My floor” is started');
    const shown = await say('project');
    expect(shown.data).toMatchObject({
      rooms: [{ name: 'den', text: '10x12 ft' }],
      picks: { plank: '6 x 48 in, 10 per carton' },
      kept: [{ ask: 'planks room: den 10x12, plank: 6 x 48 in, 10 per carton' }],
    });
    expect((await say('planks')).headline).toBe('Buy 7 cartons (70 planks): 60 to lay, 2 for mistakes, 8 left over.');
    await say('planks room: den 10x12, plank: 7 x 48 in, 8 per carton');
    const other = await say('keep in project');
    expect(notes(other)).toContain('your choice stays: plank 6 x 48 in, 10 per carton');
    expect((await say('project show')).data).toMatchObject({ kept: [{}, {}] });
    expect((await say('project keep remove 1')).headline).toMatch(/^No longer saved/);
    expect((await say('undo')).headline).toMatch(/^Undone: no longer saved/);
  });

  it('counts a kept answer once in the shopping list, a bay joined to its room too', async () => {
    const { say } = talk();
    await say(
      'project new Flat, rooms: living 14x16 + bay 3x8; hall 3 x 14, plank: 7 x 48 in, 10 per carton, $60 a carton',
    );
    const [, cartons] = /^Buy (\d+) cartons/.exec((await say('planks')).headline) ?? [];
    const list = async (): Promise<string> => JSON.stringify((await say('project shopping')).blocks);
    expect(await list()).toContain(`${cartons} cartons of 10`);
    await say('planks');
    await say('keep that');
    expect(await list()).toContain(`${cartons} cartons of 10`);
  });

  it('takes a name that means several things for the one whose reader reads the value', async () => {
    const { say, answer } = talk();
    await say('project new Flat');
    expect((await say('project pick floor: carpet')).headline).toBe('Tearout floor: carpet.');
    expect((await say('project pick old floor laminate')).headline).toBe('Tearout floor: carpet is now laminate.');
    expect(problemsOf(await answer('project pick kerf: 1/8 in'))[0]?.fix).toBe('project pick planks kerf: 1/8 in');
    expect((await say('project pick shortest end: 10 in')).headline).toBe('Shortest-end: 10 in.');
    expect((await say('project pick clear shortest end')).headline).toBe('Shortest-end cleared.');
  });

  it('asks about rooms with different floors one floor at a time', async () => {
    const { say, answer } = talk();
    await say('project new Flat, rooms: bedroom 11x12; bath 5x8');
    await say('project room bedroom floor carpet');
    expect((await say('tearout built: 1995')).assumed.join()).toContain('floor carpet');
    await say('project room bath, floor: sheet vinyl');
    const [problem] = problemsOf(await answer('tearout built: 1995'));
    expect(problem).toMatchObject({
      got: 'bedroom: carpet; bath: sheet vinyl',
      fix: 'tearout room: bedroom 11x12 ft, built: 1995, floor: carpet',
    });
    expect((await say(problem?.fix ?? '')).headline).toMatch(/^Cut \d+ strips/);
  });

  it('offers to keep every answer that is worked out, and no other', async () => {
    const { say } = talk();
    const reply = await say('planks room: den 10x12, plank: 6 x 48 in, 10 per carton');
    expect(reply.actions).toContainEqual({
      label: 'Keep in project',
      ask: 'project keep planks room: den 10x12, plank: 6 x 48 in, 10 per carton',
    });
    for (const line of ['help', "tape 12' + 3'", 'project list'])
      expect((await say(line)).actions.map(({ label }) => label)).not.toContain('Keep in project');
  });

  it('takes changes back one by one, and makes them again', async () => {
    const { say } = talk();
    await say('project new Flat');
    await say('add bedroom 12x14');
    await say('project room bedroom 12x15');
    await say('project pick gap: 3/8 in');
    expect((await say('undo')).headline).toBe('Undone: gap: 3/8 in.');
    expect((await say('project undo')).headline).toBe('Undone: bedroom: 12x14 ft is now 12x15 ft.');
    expect((await say('project show')).data).toMatchObject({ rooms: [{ text: '12x14 ft' }], picks: {} });
    expect((await say('redo')).headline).toBe('Redone: bedroom: 12x14 ft is now 12x15 ft.');
    expect((await say('project undo list')).headline).toBe('2 changes can be undone.');
    for (let i = 0; i < 2; i++) await say('undo');
    expect((await say('undo')).headline).toBe('There is no change to undo.');
  });

  it('keeps rooms and a plank that are told with no command, and what is said of a room later', async () => {
    const { say } = talk();
    await say('start a project called Flat');
    expect((await say(`hall 3'6" x 14'; living 14' x 12' with a bay 8' x 2' at 45°`)).headline).toMatch(
      /^Hall added: 3'6" x 14'; living added: 14' x 12' with a bay 8' x 2' at 45°/,
    );
    await say('we picked 7 x 48 in planks, 10 per carton');
    await say('the hall is 4 x 14 ft');
    await say('remove the living');
    expect((await say('planks')).data).toEqual(
      (await say('planks room: hall 4 x 14 ft, plank: 7 x 48 in planks, 10 per carton')).data,
    );
  });

  it('reads several facts of a room together, and a plank told without its name', async () => {
    const { say, answer } = talk();
    await say('project new Flat, rooms: bedroom 11x12');
    expect((await say('project room bedroom floor carpet, doors 30 in on wall 2, note squeaks')).headline).toBe(
      'Bedroom: floor now carpet; bedroom: doors 30 in on wall 2; bedroom: note squeaks.',
    );
    expect((await say('the bedroom has laminate')).headline).toBe('Bedroom: floor now laminate.');
    expect(problemsOf(await answer('pick 6x36 planks 20 per box at 1.89/sqft'))[0]?.fix).toBe(
      'project pick plank: 6x36 planks 20 per box at $1.89/sqft',
    );
    const lacking = await answer('how many boxes');
    expect(problemsOf(lacking)[0]).not.toHaveProperty('fix');
    expect(lacking).toMatchObject({ example: 'planks room: bedroom 11x12 ft, plank: example' });
    expect((await say('project pick 6x36 in, 20 per box')).headline).toBe('Plank: 6x36 in, 20 per box.');
  });

  it('an undo never puts a project out of reach', async () => {
    const { say } = talk();
    await say('project new Flat, rooms: bedroom 11x12');
    await say('project room bedroom 11x13');
    await say('project delete');
    await say('project restore');
    expect((await say('undo')).headline).toBe('Undone: bedroom: 11x12 ft is now 11x13 ft.');
    expect((await say('undo')).headline).toBe('There is no change to undo.');
    expect((await say('project show')).data).toMatchObject({ state: 'active', rooms: [{ text: '11x12 ft' }] });
  });

  it('tells who has no project in use what to do first with news of a job', async () => {
    const { say, answer } = talk();
    expect(problemsOf(await answer('I bought 10 cartons'))[0]).toEqual({
      option: 'ask',
      got: 'bought 10 cartons',
      expected: 'No project is open. Start one: type “project new” and its name.',
    });
    await say('project new Flat');
    await say('use no project');
    for (const line of ['I bought 10 cartons', 'spent $45 on a saw', 'shopping list', "what's next?"]) {
      const [problem] = problemsOf(await answer(line));
      expect(problem?.expected).toContain('“project use Flat”');
      // Nothing that was typed is lost by pressing a button.
      expect(problem?.fix).toBe(/\d/.test(line) ? undefined : 'project use Flat');
    }
  });

  it('never offers to delete another project in place of one that is gone already', async () => {
    const { say, answer } = talk();
    for (const name of ['Flat', 'Flat 2']) await say(`project new ${name}`);
    await say('project delete flat 2');
    expect(problemsOf(await answer('project delete flat 2'))[0]?.fix).toBe('project restore Flat 2');
    expect(problemsOf(await answer('project restore flat'))[0]?.fix).toBe('project use Flat');
  });

  it('takes a note of a room back by its number', async () => {
    const { say, answer } = talk();
    await say('project new Flat, rooms: bedroom 11x12');
    await say('project room bedroom note squeaks');
    await say('project room bedroom note cable in the wall');
    expect(JSON.stringify((await say('project room bedroom')).blocks)).toContain('1. squeaks; 2. cable in the wall');
    expect(problemsOf(await answer('project room remove note 3 of bedroom'))[0]).toEqual({
      option: 'ask',
      got: '3',
      expected: 'The notes of bedroom are numbered 1 to 2.',
    });
    expect((await say('project room bedroom remove note 1')).headline).toBe('Bedroom: note removed: squeaks.');
    expect((await say('project room clear notes of the bedroom')).headline).toBe('Bedroom: notes removed.');
    expect((await say('project show')).data).toMatchObject({ rooms: [{ notes: [] }] });
  });

  it('says what to do first where none is in use: bring back the one just deleted, or take one', async () => {
    const { say, answer, ports } = talk();
    expect(problemsOf(await answer('undo'))[0]?.fix).toBe('project new');
    await say('project new One');
    await say('project new Two');
    await say('delete my project');
    expect(problemsOf(await answer('undo'))[0]?.fix).toBe('project restore Two');
    ports.clock.now += 2 * 86_400_000;
    expect(problemsOf(await answer('undo'))[0]?.fix).toBe('project use One');
    expect((await say('project use One')).headline).toMatch(/now use “One”/);
  });

  it('names the room again that is told without its sides, and reads a name between marks', async () => {
    const { say, answer } = talk();
    await say('project new Flat');
    expect(problemsOf(await answer('project room study'))[0]).toEqual({
      option: 'ask',
      got: 'study',
      expected: expect.stringContaining('name, length and width'),
    });
    expect((await say('project room “study” 3,2 x 4 m')).headline).toBe('Study added: 3,2 x 4 m.');
    expect((await say('project room “Top” 12’6” x 14’6”')).headline).toBe('Top added: 12’6” x 14’6”.');
  });

  it('works in metric, with commas, by settings', async () => {
    const { say } = talk();
    await say('project settings units: metric, decimal: comma, currency: EUR, mistakes: 5%');
    await say('project new Wohnung, rooms: Bad 2,1 x 3,2; Zimmer 4 x 5');
    expect((await say('project show')).data).toMatchObject({
      rooms: [
        { name: 'Bad', text: '2,1 x 3,2 m' },
        { name: 'Zimmer', text: '4 x 5 m' },
      ],
    });
    await say('project pick plank: 180 x 1220 mm, 8 per carton, 31,90 € a carton');
    const planks = await say('planks');
    expect(planks.headline).toContain('€');
    expect(notes(planks)).toContain('from your settings: mistakes 5%');
    await say('project settings units: imperial');
    expect((await say('planks')).headline).toBe(planks.headline);
  });

  it('tells what a setting is once it is no longer set, and mends one that is not read', async () => {
    const { say, answer } = talk();
    await say('use metric');
    const cleared = await say('settings clear units');
    expect(cleared.blocks[0]).toMatchObject({ facts: [{ label: 'units', value: 'not set here' }, {}, {}, {}] });
    expect((await say('settings')).blocks[0]).toMatchObject({
      facts: [{ value: 'imperial (not set here)' }, {}, {}, {}],
    });
    expect(problemsOf(await answer('settings tax banana'))[0]).not.toHaveProperty('fix');
    expect(problemsOf(await answer('settings rules: gap: wide'))[0]).not.toHaveProperty('fix');
    expect(problemsOf(await answer('settings rules: gpa: 3/8 in'))[0]?.fix).toBe('project settings rules: gap: 3/8 in');
  });

  it('adds another room of a name, and changes one that is told without “add”', async () => {
    const { say } = talk();
    await say('project new Flat');
    await say('add closet 3x5');
    expect((await say('add closet 3x5')).headline).toBe('That is already how it is.');
    expect((await say('add another closet 2x4')).headline).toBe('Closet 2 added: 2x4 ft.');
    expect((await say('project room closet 3x6')).headline).toBe('Closet: 3x5 ft is now 3x6 ft.');
    expect((await say('leave out the closet')).headline).toBe('Closet is not part of the job.');
    await say('project pick plank 7x48, 10 per box');
    const { assumed, headline } = await say('planks closet 2');
    expect([headline, ...assumed].join('\n')).toMatch(
      /^Buy 1 carton [\s\S]*closet 2 is 2x4 ft[\s\S]*plank 7 x 48 in, 10 per box$/,
    );
  });

  it('reads curly quotes and figures without a unit as they were meant', async () => {
    const { say } = talk();
    await say('project new “Upstairs”');
    expect((await say('project room living 12’6” x 14’ + bay 6x2')).headline).toMatch(/^Living added: 12’6” x 14’/);
    expect((await say('project rename ‘Top floor’')).headline).toBe('It’s now called “Top floor”.');
  });
});

describe('what others see and change', () => {
  it('is said once, at the next answer of the project', async () => {
    const { say, as, ports } = talk();
    await say('project new Flat, rooms: bedroom 11x12, plank: 6 x 48 in, 10 per carton');
    const bob = as({ platform: 'slack', workspace: 'T1', id: '1' });
    await bob.say('project new Mine');
    const id = await letHelp(ports, 'slack:T1:1');
    await say('project show');
    ports.clock.now += 3_600_000;
    await bob.say('project use Flat');
    await bob.say('project room hall 3 x 14');
    ports.clock.now += 2 * 3_600_000;
    const news = JSON.stringify((await say('planks')).blocks[0]);
    expect(news).toContain('Changed since you last looked');
    expect(news).toContain('hall added: 3 x 14 ft');
    expect(news).toContain('2 hours ago');
    expect(JSON.stringify((await say('planks')).blocks)).not.toContain('Changed since');
    expect(JSON.stringify((await bob.say('project show')).blocks)).not.toContain('Changed since');
    expect(problemsOf(await bob.answer('project delete Flat'))[0]?.expected).toContain('Only its owner can do this');
    expect(problemsOf(await bob.answer('project rename Ours'))[0]?.expected).toContain('Only its owner can do this');
    expect((await bob.say('project undo')).headline).toBe('Undone: hall added: 3 x 14 ft.');
    expect((await bob.say('project undo')).headline).toBe('There is no change to undo.');
    expect(JSON.parse(ports.store.records.get(`project/${id}`) ?? '')).toMatchObject({
      name: 'Flat',
      rooms: [{ name: 'bedroom' }],
    });
  });

  it('of a stranger is nothing: the same words for a name that is and one that is not', async () => {
    const { say, as } = talk();
    await say('project new Secret flat');
    const bob = as({ platform: 'slack', workspace: 'T1', id: '1' });
    await bob.say('project new Mine');
    for (const command of ['use', 'show', 'delete', 'archive', 'restore']) {
      const [there] = problemsOf(await bob.answer(`project ${command} Secret flat`));
      const [not] = problemsOf(await bob.answer(`project ${command} Other flat`));
      expect(there && { ...there, got: '', expected: there.expected.replaceAll('Secret', 'Other') }).toEqual({
        ...not,
        got: '',
      });
    }
    expect((await bob.say('project list')).headline).toBe('1 project.');
    expect(JSON.stringify((await bob.say('project mydata')).data)).not.toContain('Secret');
  });
});

describe('when the store is down', () => {
  it('sums are answered and say so; changes are not saved, and say so', async () => {
    const { say, ports } = talk();
    await say('project new Flat, rooms: bedroom 11x12, plank: 6 x 48 in, 10 per carton');
    ports.store.down = true;
    const reply = await say('planks room: bedroom 11x12, plank: 6 x 48 in, 10 per carton');
    expect(reply.headline).toMatch(/^Buy/);
    expect(notes(reply)).toContain('can’t be read just now');
    const given = { asker: ANN, ports, fault: () => undefined };
    expect(await answerTo('project room bath 5x8', given)).toMatchObject({ outage: true });
    ports.store.down = false;
    expect((await say('project show')).data).toMatchObject({ rooms: [{ name: 'bedroom' }] });
  });

  it('a damaged project hinders no sum, and is told to whoever runs the bot', async () => {
    const faults: unknown[] = [];
    const { say, ports } = talk(
      ANN,
      portsInMemory((_reference, cause) => void faults.push(cause)),
    );
    await say('project new Flat');
    for (const key of ports.store.records.keys())
      if (key.startsWith('project/')) ports.store.records.set(key, '{"version":1}');
    const reply = await replyTo('planks room: den 10x12, plank: 6 x 48 in, 10 per carton', {
      asker: ANN,
      ports,
      fault: (_reference, cause) => void faults.push(cause),
    });
    expect(reply.headline).toMatch(/^Buy/);
    expect(faults.length).toBeGreaterThan(0);
  });
});

describe('everything kept', () => {
  it('comes out, is forgotten at once, and can be brought back', async () => {
    const { say, answer, ports } = talk();
    await say('project new Flat, rooms: bedroom 11x12; hall 3 x 14, plank: 6 x 48 in, 10 per carton');
    await say('planks');
    await say('keep that');
    const { data } = await say('what do you know about me?');
    const json = JSON.stringify(data);
    expect((await say('project mydata forget')).headline).toMatch(/Nothing is deleted yet/);
    expect(ports.store.records.size).toBe(3);
    expect((await say('project mydata do: forget, confirm: forget everything')).headline).toBe(
      'Everything stored about you is deleted.',
    );
    expect(ports.store.records.size).toBe(0);
    expect((await say('project mydata')).headline).toBe('Nothing of yours is stored here.');
    expect((await say(`project mydata import: ${json}`)).headline).toBe('Imported: “Flat”.');
    expect((await say('project show')).data).toMatchObject({
      rooms: [{ name: 'bedroom' }, { name: 'hall' }],
      kept: [{}],
    });
    expect(problemsOf(await answer('project mydata import: {"projects": 3}'))).toHaveLength(1);
    const code = (await say('project mydata')).blocks.flatMap((block) =>
      block.kind === 'text' ? [block.text] : [],
    )[1];
    const wrapped = code?.replace(/(.{40})/g, '$1\n  ');
    expect((await say(`project mydata import: ${wrapped}`)).headline).toBe('Imported: “Flat 2”.');
    expect(problemsOf(await answer(`project mydata import: ${code?.slice(5)}`))).toHaveLength(1);
  });
});

describe('a carton', () => {
  it('is a box to whoever says box, for the rest of the conversation', async () => {
    const { say } = talk();
    const first = await say('how many boxes for a 12x14 room, planks 7x48, 8 in a box');
    expect(first.headline).toMatch(/^Buy \d+ boxes /);
    const { headline, lines, blocks, cautions } = first;
    expect(/.{40}\bcartons?\b/i.exec(JSON.stringify([headline, lines, blocks, cautions]))?.[0]).toBeUndefined();
    expect((await say('no, 12x16')).headline).toMatch(/^Buy \d+ boxes /);
    const other = talk().as({ platform: 'discord', id: '2' });
    expect((await other.say("planks room: 12' x 16', plank: 7 x 48 in, 8 per carton")).headline).toMatch(/ cartons /);
  });
});

describe('what is said of a box', () => {
  it('is no floor: a bare figure behind a room is what the box covers', async () => {
    const { say, answer } = talk();
    await answer('how much flooring for my room');
    await say('12 by 11');
    expect((await say('and a box is 24')).headline).toMatch(/^About 7 boxes for 132 sq ft/);
  });

  it('as a count of planks is no area', async () => {
    const { headline } = await replyTo('how many boxes for 12x14, 10 planks a box');
    expect(headline).toMatch(/^Buy about 185 sq ft for 168 sq ft/);
  });
});
