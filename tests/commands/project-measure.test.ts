/** Measuring back: what is asked of whoever has the tape, what they tell, and what both learn of it. */

import { describe, expect, it } from 'vitest';
import type { Asker } from '../../src/accounts/records.ts';
import { type AnsweredRequest, answerTo, problemsOf, replyTo } from '../chat/asked.ts';
import { portsInMemory } from '../chat/demo-flat.ts';
import { textOf } from '../project/conversation.ts';

const ANN: Asker = { platform: 'discord', id: '1' };

function throwing(_reference: string, cause: unknown): never {
  throw cause;
}

function talk(ports = portsInMemory(throwing), asker: Asker = ANN) {
  const requested: AnsweredRequest = { asker, ports };
  return {
    ports,
    say: (line: string) => replyTo(line, requested),
    answer: (line: string) => answerTo(line, requested),
  };
}

const ROOMS = 'project new Flat, rooms: bedroom 11x12; hall 3x14';
/** With a plank, lists are worked out for every length told. */
const START = `${ROOMS}, plank: 6 x 48 in, 10 per carton`;

function roomsIn(data: unknown): readonly { name: string; text: string; notes: string[] }[] {
  return (data as { rooms: { name: string; text: string; notes: string[] }[] }).rooms;
}

describe('a wall measured', () => {
  it('is asked, listed, told by the number alone, and the lists follow', async () => {
    const { say } = talk();
    await say(START);
    const before = (await say('planks')).headline;
    const requested = await say('how long is wall 3 of the bedroom?');
    expect(requested.headline).toBe(
      `Asked: wall 3 of bedroom, kept as 11'. Whoever measures will see it with their next answer.`,
    );
    expect(JSON.stringify(requested.blocks)).toContain(`project measure wall 3 of bedroom is 11'`);
    expect((await say('project measure')).headline).toBe('1 length waiting to be measured.');
    const given = await say(`12' 6 1/4"`);
    expect(given.headline).toMatch(
      /^Wall 3 of bedroom: 11' is now 12' 6 1\/4": \d+ → \d+ planks, 10 → 11 cartons of 10, /,
    );
    expect(roomsIn(given.data)[0]?.text).toBe(`12' 6 1/4" x 12 ft`);
    expect((await say('project measure')).headline).toBe('Nothing is waiting to be measured.');
    expect(before).toMatch(/^Buy 10 cartons/);
    expect((await say('planks')).headline).toMatch(/^Buy 11 cartons/);
    expect((await say('undo')).headline).toContain(`wall 3 of bedroom: 11' is now 12' 6 1/4"`);
    expect((await say('project measure')).headline).toBe('1 length waiting to be measured.');
    expect((await say('planks')).headline).toBe(before);
  }, 20_000);

  it.each([
    [`wall 3 is 3.52 m`, '3.52 m', '3520 mm x 12 ft'],
    [`wall 3 of the bedroom: 11’ 6 1/4”`, `11' 6 1/4"`, `11' 6 1/4" x 12 ft`],
    [`project measure bedroom wall 3 138 in`, `11' 6"`, `11' 6" x 12 ft`],
    [`project measure the bedroom's wall #1 = 11'6`, `11' 6"`, `11' 6" x 12 ft`],
    [`project measure wall 1 of kitchen is 11'6"`, undefined, undefined],
    [`project measure wall 1 of bedrooom is 11'6"`, `11' 6"`, `11' 6" x 12 ft`],
    [`project measure wall 2 of bedroom is 12.5 ft`, `12' 6"`, `11x 12' 6"`],
    [`project measure wall 4 of bedroom is 151`, `12' 7"`, `11x 12' 7"`],
  ])('reads “%s”', async (line, length, text) => {
    const { say, answer } = talk();
    await say(ROOMS);
    await say('project measure wall 3 of bedroom');
    if (length === undefined) {
      expect(problemsOf(await answer(line))).toHaveLength(1);
      return;
    }
    const given = await say(line);
    expect(given.headline).toContain(`is now ${length}`);
    expect(roomsIn(given.data)[0]?.text).toBe(text);
  });

  it.each([
    ['how long is wall 3 of the bedrom?', 'wall 3 of bedroom'],
    ['how long is wall three of the bedroom', 'wall 3 of bedroom'],
    ["what's the length of wall 2 in the hall?", 'wall 2 of hall'],
    ['Can you measure wall #4 in the hall', 'wall 4 of hall'],
    ['measure the ceiling height of the bedroom', 'ceiling height of bedroom'],
    ['measure the width of the hall door', 'width door of hall'],
    ['I need wall 4 of the hall', 'wall 4 of hall'],
    ['ask Dana how long wall 2 of the hall is', 'wall 2 of hall'],
  ])('is asked by “%s”', async (line, place) => {
    const { say } = talk();
    await say(ROOMS);
    expect((await say(line)).headline).toContain(`Asked: ${place}`);
  });

  it('as it is kept changes nothing and is no longer asked', async () => {
    const { say } = talk();
    await say(ROOMS);
    await say('project measure wall 2 of bedroom');
    expect((await say('wall 2 is 12 ft')).headline).toBe(`Wall 2 of bedroom is 12', as kept. Nothing changes.`);
    expect((await say('project measure')).headline).toBe('Nothing is waiting to be measured.');
  });

  it('of a walk that would not close is kept, the walls to measure again are asked, and the next one closes it', async () => {
    const { say } = talk();
    await say(`project new Flat, rooms: den walk 12' right 10' right 5' right 4' left 7' right 6'`);
    // Walls from the lower left: 6', 7', 4', 5', 10', 12'.
    const open = await say(`project measure wall 1 of den is 6'2"`);
    expect(open.headline).toBe(
      `Wall 1 of den is saved as 6' 2", but the room stays as it was: with it the walls miss each other by 2". Measure walls 3 and 5 again.`,
    );
    expect(roomsIn(open.data)[0]?.text).toContain(`walk 12' right 10'`);
    expect((await say('project measure')).headline).toBe('2 lengths waiting to be measured.');
    expect((await say(`wall 3 is 4'`)).headline).toContain('as kept');
    const closed = await say(`wall 5 is 10'2"`);
    expect(closed.headline).toContain(`Wall 5 of den: 10' is now 10' 2"`);
    expect(roomsIn(closed.data)[0]?.text).toBe(`walk right 6' 2" left 7' right 4' left 5' left 10' 2" left 12'`);
  });

  it('that two things told of a room could explain is kept until another wall tells which', async () => {
    const { say } = talk();
    await say('project new Flat, rooms: den 12 x 14 ft - 3 x 4 ft');
    const unsure = await say(`project measure wall 2 of den is 10'2"`);
    expect(unsure.headline).toContain('Measure walls 4 and 6 again.');
    const sure = await say(`project measure wall 4 of den is 4'`);
    expect(roomsIn(sure.data)[0]?.text).toBe(`12 x 14' 2" - 3 x 4 ft`);
  });

  it('follows its opposite round a walked rectangle, and a bay stays where it is', async () => {
    const { say } = talk();
    await say(`project new Flat, rooms: den walk 10' right 12' right 10' right 12'`);
    await say('project room living 14 x 12 ft + bay 6 x 2 ft');
    expect(roomsIn((await say(`project measure wall 1 of den is 12'3"`)).data)[0]?.text).toBe(
      `walk right 12' 3" left 10' left 12' 3" left 10'`,
    );
    expect(roomsIn((await say(`project measure wall 1 of living is 14'3"`)).data)[0]?.text).toBe(
      `14' 3" x 12 ft + bay 6 x 2 ft`,
    );
  });

  it('leaves a saved answer as it was, and says what it is today', async () => {
    const { say } = talk();
    await say('project new Flat, rooms: bedroom 5x4; hall 3x4, plank: 6 x 48 in, 10 per carton');
    await say('planks');
    await say('keep that');
    const given = await say(`project measure wall 1 of bedroom is 5'6"`);
    expect(given.assumed.join()).toContain('1 saved answer stays as it was');
    const shown = await say('project show');
    const { kept } = shown.data as unknown as { kept: { ask: string; headline: string }[] };
    expect(kept[0]?.ask).toContain('bedroom 5x4 ft');
    const today = (await say('planks')).headline;
    expect(kept[0]?.headline).not.toBe(today);
    expect(textOf(shown)).toContain(today);
  }, 20_000);
});

describe('whoever measures', () => {
  /** Ann's flat, with Bob measuring for it. */
  async function both(start = ROOMS) {
    const ann = talk();
    const bob = talk(ann.ports, { platform: 'slack', workspace: 'T1', id: 'U1' });
    await ann.say(start);
    const { blocks } = await ann.say('project share whole project, with: code, may: measure, name: Bob');
    const facts = blocks.flatMap((block) => (block.kind === 'facts' ? block.facts : []));
    await bob.say(`project link ${facts.find(({ label }) => label === 'Code')?.value}`);
    await ann.say('project show');
    return { ann, bob };
  }

  it('sees what is asked once, with the next answer, and in the list; both learn what changed', async () => {
    const { ann, bob } = await both(START);
    const requested = await ann.say('how long is wall 3 of the bedroom?');
    expect(requested.assumed.join()).not.toContain('nobody else measures');
    const given = JSON.stringify((await bob.say('project show')).blocks[0]);
    expect(given).toContain('To measure');
    expect(given).toContain(`Wall 3 of bedroom (kept as 11'). Type: project measure wall 3 of bedroom is 11'`);
    expect(JSON.stringify((await bob.say('project show')).blocks)).not.toContain('To measure');
    expect(JSON.stringify((await bob.say('project list')).blocks)).toContain('Flat: How long is wall 3 of bedroom?');
    expect(JSON.stringify((await ann.say('project show')).blocks)).not.toContain('To measure');
    const answer = await bob.say(`12' 6 1/4"`);
    expect(answer.headline).toMatch(
      /^Wall 3 of bedroom: 11' is now 12' 6 1\/4": 92 → 109 planks, 10 → 11 cartons of 10/,
    );
    const news = JSON.stringify((await ann.say('project show')).blocks[0]);
    expect(news).toContain('Changed since you last looked');
    expect(news).toContain('92 → 109 planks, 10 → 11 cartons of 10');
    expect(JSON.stringify((await ann.say('project list')).blocks)).not.toContain('How long is wall');
  }, 20_000);

  it('who came second changes what the first one told, and nothing of a room renamed meanwhile is lost', async () => {
    const { ann, bob } = await both();
    await ann.say('project measure wall 3 of bedroom');
    ann.ports.store.between = () => ann.say(`project measure wall 3 of bedroom is 11'4"`);
    const second = await bob.say(`wall 3 of bedroom is 11'8"`);
    expect(second.headline).toContain(`11' 4" is now 11' 8"`);
    expect(roomsIn((await ann.say('project show')).data)[0]?.text).toBe(`11' 8" x 12 ft`);
    ann.ports.store.between = () => ann.say('project room hall 3x15');
    await bob.say(`project measure wall 2 of bedroom is 12'3"`);
    expect(roomsIn((await ann.say('project show')).data).map(({ text }) => text)).toEqual([
      `11' 8" x 12' 3"`,
      '3x15 ft',
    ]);
  }, 30_000);

  it('says it of the one room they were given as of their own, and learns of no other', async () => {
    const { ann, bob } = await both();
    await ann.say('project share change 1 to the laying guide of bedroom');
    expect((await bob.say('how long is wall 2 of the bedroom?')).headline).toContain('Asked: wall 2 of bedroom');
    expect((await bob.say(`wall 1 of the bedrom is 3,40 m`)).headline).toContain('is now 3.4 m');
    for (const line of [`wall 1 of hall is 5 ft`, 'remove the hall', 'how long is wall 1 of the hall?'])
      expect(JSON.stringify(problemsOf(await bob.answer(line)).map(({ expected, fix }) => expected + fix))).not.toMatch(
        /\bhall\b|3 ?x ?14/,
      );
  });

  it('takes nothing back that they changed before they were to tick only', async () => {
    const { ann, bob } = await both();
    await bob.say(`wall 1 of bedroom is 11'4"`);
    await ann.say('project share 1, may: tick');
    expect(problemsOf(await bob.answer('undo'))).toHaveLength(1);
    expect(roomsIn((await ann.say('project show')).data)[0]?.text).toBe(`11' 4" x 12 ft`);
    await ann.say('undo');
    expect(roomsIn((await ann.say('project show')).data)[0]?.text).toBe('11x12 ft');
  });

  it('may be anybody but those who look or tick', async () => {
    const { ann, bob } = await both();
    await ann.say('project measure wall 3 of bedroom');
    await ann.say('project share change 1, may: tick');
    expect(JSON.stringify((await bob.say('project show')).blocks)).not.toContain('To measure');
    expect(problemsOf(await bob.answer(`project measure wall 3 of bedroom is 11'4"`))).toHaveLength(1);
    expect(roomsIn((await ann.say('project show')).data)[0]?.text).toBe('11x12 ft');
  });
});

describe('something else of a room', () => {
  it('is asked and noted with the room', async () => {
    const { say } = talk();
    await say(ROOMS);
    expect((await say('project measure ceiling height of the bedroom')).headline).toBe(
      'Asked: ceiling height of bedroom. Whoever measures will see it with their next answer.',
    );
    const given = await say('project measure ceiling height of bedroom is 2.44 m');
    expect(roomsIn(given.data)[0]?.notes).toEqual(['ceiling height: 2.44 m']);
    expect((await say('project measure')).headline).toBe('Nothing is waiting to be measured.');
    await say('project measure ceiling height of bedroom: 8 ft');
    expect(roomsIn((await say('project show')).data)[0]?.notes).toEqual([`ceiling height: 8'`]);
  });
});

describe('questions', () => {
  it('are withdrawn by wall, by number, or all; asked once; and gone with their room', async () => {
    const { say, answer } = talk();
    await say(ROOMS);
    for (const wall of [1, 2, 3]) await say(`project measure wall ${wall} of bedroom`);
    expect((await say('measure wall 2 of the bedroom please')).headline).toContain('Already asked');
    expect((await say('project measure withdraw wall 2 of bedroom')).headline).toBe(
      'No longer asked: wall 2 of bedroom.',
    );
    expect((await say('project measure withdraw 2')).headline).toBe('No longer asked: wall 3 of bedroom.');
    await say('project measure wall 1 of hall');
    await say('project room rename hall to landing');
    expect(JSON.stringify((await say('project measure')).blocks)).toContain('wall 1 of landing');
    await say('project room remove landing');
    expect((await say('project measure')).headline).toBe('1 length waiting to be measured.');
    await say('project measure withdraw all');
    expect(problemsOf(await answer('project measure withdraw 1'))).toHaveLength(1);
  });

  it('say what to type: several open, none open, no such wall, no such length, nothing read', async () => {
    const { say, answer } = talk();
    await say(ROOMS);
    const fix = async (line: string) => problemsOf(await answer(line))[0]?.fix;
    // Which wall was measured is theirs to say.
    expect(await fix(`project measure 11'6"`)).toBeUndefined();
    expect(await fix('project measure wall 9 of bedroom')).toBeUndefined();
    expect(await fix('project measure wall 2')).toBe('project measure wall 2 of bedroom');
    expect(await fix('project measure the kitchen')).toBeUndefined();
    await say('project measure wall 1 of bedroom');
    await say('project measure wall 2 of hall');
    expect(await fix(`project measure 11'6"`)).toBeUndefined();
    expect(await fix(`project measure wall 1 of bedroom is 11 x`)).toBeUndefined();
    expect(await fix('project measure question: 9, do: 11 ft')).toBeUndefined();
    expect((await say(`project measure question: 2, do: 3' 1"`)).headline).toContain(
      `Wall 2 of hall: 14' is now 3' 1"`,
    );
  });
});
