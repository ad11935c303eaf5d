/** What happens on a job, as people tell it: heard with a project in use, in a conversation about a floor, and alone. */

import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/chat/pipeline.ts';
import { answerTo, problemsOf, replyTo } from './asked.ts';
import { portsInMemory } from './demo-flat.ts';

function talk() {
  const ports = portsInMemory((_reference, cause) => {
    throw cause;
  });
  return {
    say: (text: string) => replyTo(text, { ports }),
    answer: (text: string): Promise<Answer> => answerTo(text, { ports }),
  };
}

/** A den of 12 by 14 ft whose plank is picked: 9 cartons of 10, of which 80 planks are laid. */
async function inProject() {
  const own = talk();
  await own.say('project new Flat, rooms: den 12x14');
  await own.say('project pick plank: 7 x 48 in, 10 per carton');
  return own;
}

/** The same floor, in a conversation alone. */
async function inTalk() {
  const own = talk();
  await own.say('how many cartons for 12x14, 7x48 planks, 10 per carton');
  return own;
}

describe('“i broke two planks”', () => {
  it('is noted in a project, with what is left to spare', async () => {
    const { say } = await inProject();
    const noted = await say('i broke two planks');
    expect(noted.headline).toBe('Noted, number 1. 9 cartons still do: 8 of 10 spare planks left.');
    expect(noted.data).toMatchObject({ kind: 'log', notes: [{ text: 'broke two planks' }] });
    expect((await say('i ruined 12 planks')).headline).toContain('9 cartons won’t do: get 2 planks more');
  });

  it('leaves fewer of those to spare in a conversation', async () => {
    const { say } = await inTalk();
    expect((await say('i broke two planks')).headline).toBe('8 of 10 planks left.');
  });

  it('is answered by how to replace one where nothing is known, and the floor may follow', async () => {
    const { say } = talk();
    expect((await say('i broke two planks')).data).toMatchObject({ kind: 'handbook', entry: 'replace-plank' });
    expect((await say('room is 12x14, 7x48 planks, 10 a box')).data).toMatchObject({ kind: 'floor' });
  });
});

describe('“store only has 14 boxes of that lot”', () => {
  it.each([
    ['a project', inProject],
    ['a conversation', inTalk],
  ])('is a verdict in %s', async (_place, begin) => {
    const { say } = await begin();
    const enough = await say('store only has 14 boxes of that lot');
    expect(enough.headline).toMatch(/^Yes, and more than you need: 14 (?:boxes|cartons) .* for 168 sq ft/);
    expect(enough.data).toMatchObject({ kind: 'enough', enough: true });
    expect((await say('they only have 6 boxes')).headline).toMatch(/^No: 6 (?:boxes|cartons)/);
  });

  it('is the rule where nothing is known, and a verdict once the floor is said', async () => {
    const { say } = talk();
    expect((await say('store only has 14 boxes of that lot')).data).toMatchObject({ entry: 'same-lot' });
    expect((await say('its 300 sq ft and they are 23 a box')).headline).toBe(
      'Yes: 14 boxes (322 sq ft) for 300 sq ft is 7.3% extra.',
    );
  });
});

describe('“what do i do next”', () => {
  it('is the next stage of a project', async () => {
    const { say } = await inProject();
    expect((await say('what do i do next')).headline).toBe('0 of 11 stages done. Next: clear the room in den.');
  });

  it('is the order of the work in a conversation, with its room', async () => {
    const { say } = await inTalk();
    expect((await say('what do i do next')).data).toMatchObject({ kind: 'plan' });
  });

  it('is the order of the work where nothing is known', async () => {
    const { say } = talk();
    expect((await say('what do i do next')).data).toMatchObject({ entry: 'work-order' });
  });
});

describe('“row 7 ends short”', () => {
  it.each([
    ['a project', inProject],
    ['a conversation', inTalk],
  ])('asks where in %s, and lays the rest from there', async (_place, begin) => {
    const { say, answer } = await begin();
    const [problem] = problemsOf(await answer('row 7 ends short'));
    expect(problem).toMatchObject({ option: 'so-far', got: '' });
    expect(problem?.expected).toMatch(/^Where does row 7 end\?/);
    const rest = await say('at 31 1/4');
    expect(rest.data).toMatchObject({ kind: 'resume' });
    expect(rest.headline).toMatch(/^Yes: /);
    expect(rest.lines?.join(' ')).toContain('7 of 21 rows');
  });

  it('is the rule for short ends where nothing is known', async () => {
    const { say } = talk();
    expect((await say('row 7 ends short')).data).toMatchObject({ entry: 'short-end' });
  });
});

describe('“we found rot by the tub”', () => {
  it('is kept in a project', async () => {
    const { say } = await inProject();
    const saved = await say('we found rot by the tub');
    expect(saved.headline).toMatch(/^Saved: rot by the tub/);
    expect((await say('project found')).headline).toMatch(/1 finding/);
  });

  it('is answered by what to do about it elsewhere, and may not be covered', async () => {
    const { say } = talk();
    const found = await say('we found rot by the tub');
    expect(found.data).toMatchObject({ entry: 'damage-found' });
    expect((await say('can i just lay over it')).data).toMatchObject({ entry: 'damage-found' });
  });
});

describe('what others pay', () => {
  it('is an amount or a share of what is spent in a project', async () => {
    const { say } = await inProject();
    expect((await say('insurer pays $1500')).headline).toMatch(/^Agreed: the insurer pays \$1,500/);
    expect((await say('paid 640 for planks')).headline).toContain('insurer $640.00');
    const other = await inProject();
    await other.say('i paid $800 for flooring');
    expect((await other.say('insurance covers 25% of it')).headline).toContain('you $600.00, insurer $200.00');
  });

  it('comes off a sum in a conversation', async () => {
    const { say } = talk();
    await say('40 boxes at $60');
    expect((await say('insurer pays $1500')).headline).toMatch(/\$900/);
    const other = talk();
    await other.say('40 boxes at $60');
    expect((await other.say('25 % of it')).headline).toMatch(/\$600|\$1,800/);
  });

  it('is answered by the rule, and says that it isn’t saved, with no project and no sum', async () => {
    const { say } = talk();
    const rule = await say('insurer pays $1500');
    expect(rule.data).toMatchObject({ entry: 'insurance' });
    expect(rule.assumed.join(' ')).toContain('project new');
  });
});

describe('a project by its rooms', () => {
  it('corrects the one room, with or without its name, and undoes it', async () => {
    const { say } = talk();
    await say('project new Flat');
    await say('bedroom is 12 x 14');
    expect((await say('actually its 12 x 15')).headline).toBe('Bedroom: 12 x 14 ft is now 12 x 15 ft.');
    expect((await say('actually the bedroom is 12x16')).headline).toBe('Bedroom: 12 x 15 ft is now 12x16 ft.');
    expect((await say('no, 12x17')).headline).toBe('Bedroom: 12x16 ft is now 12x17 ft.');
    expect((await say('undo')).headline).toContain('Undone');
    expect((await say('project show')).data).toMatchObject({ rooms: [{ name: 'bedroom', text: '12x16 ft' }] });
  });

  it('leaves the project as it is where the size corrects an answer about another room', async () => {
    const { say } = await inProject();
    await say('how many boxes for 10x10, 20 sq ft a box');
    expect((await say('actually its 10x11')).data).toMatchObject({ kind: 'estimate', cartons: 7 });
    expect((await say('project show')).data).toMatchObject({ rooms: [{ text: '12x14 ft' }] });
  });

  it('works out what would be, and changes nothing', async () => {
    const { say } = talk();
    await say('project new Flat, rooms: kitchen 10x12; hall 4x12');
    expect((await say('what if the hall was 4x16')).headline).toBe('184 sq ft in all (120 sq ft + 64 sq ft).');
    expect((await say('project show')).data).toMatchObject({ rooms: [{ text: '10x12 ft' }, { text: '4x12 ft' }] });
  });

  it('takes numbered rooms, and one of several by its name', async () => {
    const { say } = talk();
    await say('project new Flat');
    expect((await say('bed 1 10x11, bed 2 11x12')).headline).toBe('Bed 1 added: 10x11 ft; bed 2 added: 11x12 ft.');
    expect((await say('and a closet 2x6')).headline).toBe('Closet added: 2x6 ft.');
    expect((await say('how many boxes of 20 sq ft for bed 1')).headline).toContain('for 110 sq ft');
    expect((await say('and for everything?')).headline).toContain('for 254 sq ft');
  });

  it('hears a day behind work that is done', async () => {
    const { say } = await inProject();
    expect((await say('tore out the carpet today')).headline).toMatch(/^den: tear-out done/);
  });
});
