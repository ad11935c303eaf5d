/** A hazard stays with its conversation or its room until a named fact clears it. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import type { Request } from '../../src/chat/ports.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { portsInMemory } from '../chat/demo-flat.ts';
import { flatContent } from '../project/projects.ts';

const PLANKS = "planks room: 12' x 14', plank: 6 x 48 in, 10 per carton";
const TEAROUT = 'tearout room: 12x14, floor: carpet, built: 1995, below: plywood';
const HOUR = 3600 * 1000;

/** A chat: the same person, in one place or another. */
async function chat(content?: Parameters<NonNullable<ReturnType<typeof openAccess>>['create']>[0]) {
  const ports = portsInMemory((reference, cause) => {
    throw new Error(`fault ${reference}`, { cause });
  });
  const asker = { platform: 'discord', id: '1' } as const;
  if (content) await openAccess(asker, ports)?.create(content);
  return {
    ports: {
      ...ports,
      pass(milliseconds: number): void {
        ports.clock.now += milliseconds;
        ports.store.kept.pass(milliseconds);
      },
    },
    asker,
    async say(text: string, place = 'channel', written: Request['written'] = 'line'): Promise<Answer> {
      let last: Answer | undefined;
      for await (const one of answer(
        { asker, preferences: DEFAULT_PREFERENCES, text, place, written },
        commands,
        ports,
      ))
        last = one;
      if (!last) throw new Error('no answer');
      return last;
    },
  };
}

const isRefused = (given: Answer): boolean => 'why' in given;
const textOf = (given: Answer): string => JSON.stringify('headline' in given ? given.blocks : given);

describe('in a conversation', () => {
  it.each([
    ['i smell gas', 'gas company checked it'],
    ['toilet backed up sewage all over the floor', 'a restorer cleaned it'],
    ['joist is cracked all the way through', 'the contractor fixed the joist'],
    ['pipe burst and the floor is flooding right now', 'plumber fixed it'],
    ['got a shock off the baseboard heater', 'electrician checked it'],
    ['bleeding wont stop from the saw cut', 'the bleeding has stopped'],
  ])('“%s” refuses every later sum until “%s”', async (hazard, fact) => {
    const { say } = await chat();
    await say(hazard);
    for (const text of [PLANKS, 'tape 1 ft + 2 in', 'actually 12x15', PLANKS, TEAROUT, 'list room: 10 x 10']) {
      const given = await say(text);
      // A correction right behind a sum on the tape is another such sum.
      if (/^(?:tape|actually)/.test(text)) expect(textOf(given), text).toContain('You wrote earlier');
      else expect(isRefused(given), text).toBe(true);
    }
    await say(fact);
    expect(await say(PLANKS)).toHaveProperty('headline');
  });

  it('adds its line where it does not bear on the sum', async () => {
    const { say } = await chat();
    await say('black mold all over the subfloor');
    expect(textOf(await say(PLANKS))).toContain('You wrote earlier: “black mold all over the subfloor”');
    await say('mold was removed');
    expect(textOf(await say(PLANKS))).not.toContain('You wrote earlier');
  });

  it('asbestos stops tear-out, and lets planks be counted', async () => {
    const { say } = await chat();
    await say('there are old 9x9 tiles with black mastic under my carpet');
    expect(isRefused(await say(TEAROUT))).toBe(true);
    expect(textOf(await say(PLANKS))).toContain('asbestos');
    await say('it was tested and came back negative');
    expect(await say(TEAROUT)).toHaveProperty('headline');
  });

  it('lasts an hour from the last message, and is of its own place and person', async () => {
    const { say, ports } = await chat();
    await say('i smell gas');
    expect(await say(PLANKS, 'elsewhere')).toHaveProperty('headline');
    expect(await say('how many boxes for 12x14, 7 in by 4 ft planks, 10 a box?', 'channel', 'message')).toHaveProperty(
      'headline',
    );
    ports.pass(0.9 * HOUR);
    expect(isRefused(await say(PLANKS))).toBe(true);
    ports.pass(0.9 * HOUR);
    expect(isRefused(await say(PLANKS))).toBe(true);
    ports.pass(1.1 * HOUR);
    expect(await say(PLANKS)).toHaveProperty('headline');
  });

  it('is not cleared by what is only hoped for', async () => {
    const { say } = await chat();
    await say('i smell gas');
    for (const text of [
      'the gas company is coming tomorrow',
      'has the gas company checked it',
      'plumber fixed the sink',
      'tested clear',
    ])
      await say(text);
    expect(isRefused(await say(PLANKS))).toBe(true);
  });

  it('somebody’s message that is only quoted is not remembered', async () => {
    const { say } = await chat();
    await say('i smell gas', 'channel', 'message');
    expect(await say(PLANKS)).toHaveProperty('headline');
  });

  it('is forgotten with everything else', async () => {
    const { say } = await chat();
    await say('i smell gas');
    expect(await say('project mydata do: forget, confirm: forget everything')).toHaveProperty('headline');
    expect(await say(PLANKS)).toHaveProperty('headline');
  });
});

describe('in a project', () => {
  it('stays with the room through a new size, a new name, an undo and its removal', async () => {
    const { say, ports, asker } = await chat(flatContent());
    await say('sewage came up in the closet last night');
    const hazards = async () => (await openAccess(asker, ports)?.inUse())?.hazards ?? [];
    expect(await hazards()).toMatchObject([{ hazard: 'sewage', room: 'closet' }]);
    await say('project room rename closet to pantry');
    const [after] = await hazards();
    expect(after?.hazard).toBe('sewage');
    ports.pass(30 * 24 * HOUR);
    await say('undo');
    await say('undo');
    expect((await hazards()).map(({ hazard }) => hazard)).toEqual(['sewage']);
    expect(isRefused(await say('planks plank: 6 x 48 in, 10 per carton'))).toBe(true);
  });

  it('says nothing of other rooms, and is cleared by a fact', async () => {
    const { say, ports } = await chat(flatContent());
    await say('the joists in the closet are rotten');
    ports.pass(2 * HOUR);
    expect(await say('planks room: hall, plank: 6 x 48 in, 10 per carton')).toHaveProperty('headline');
    expect(isRefused(await say('planks room: closet, plank: 6 x 48 in, 10 per carton'))).toBe(true);
    await say('the contractor fixed the joists in the closet');
    expect(await say('planks room: closet, plank: 6 x 48 in, 10 per carton')).toHaveProperty('headline');
  });

  it('is copied with the home, and comes back with what was exported', async () => {
    const { say, ports, asker } = await chat(flatContent());
    await say('black mold in the hall');
    await say('project copy again');
    expect((await openAccess(asker, ports)?.inUse())?.hazards).toMatchObject([{ hazard: 'mold', room: 'hall' }]);
  });
});
