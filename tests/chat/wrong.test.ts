/** “That’s wrong”, pressed or said: what was understood, one question, and everything kept. */

import { describe, expect, it } from 'vitest';
import type { Asker } from '../../src/accounts/records.ts';
import type { Problems, ReplyWithForm } from '../../src/chat/command.ts';
import { correctionIn, isComplaint } from '../../src/chat/wrong.ts';
import { answerTo, replyTo } from './asked.ts';
import { portsInMemory } from './demo-flat.ts';

const ANN: Asker = { platform: 'discord', id: '1' };
const BOXES = 'how many boxes for a 12x14 room, 24 sq ft a box?';
const STAGGER = 'how far apart do the end joints have to be? planks are 8 in wide';

function talk() {
  const ports = portsInMemory((_reference, cause) => {
    throw cause;
  });
  const requested = { asker: ANN, ports };
  return {
    say: (line: string) => replyTo(line, requested) as Promise<ReplyWithForm>,
    complain: async (line: string): Promise<Problems> => {
      const found = await answerTo(line, requested);
      if (!('problems' in found) || !found.complaint) throw new Error(`no question but ${JSON.stringify(found)}`);
      return found;
    },
    press: async (mistaken: ReplyWithForm['understood']): Promise<Problems> => {
      const found = await answerTo('wrong', { ...requested, ...(mistaken && { mistaken }) });
      if (!('problems' in found)) throw new Error(`no question but ${JSON.stringify(found)}`);
      return found;
    },
  };
}

describe('an answer that was said to be wrong', () => {
  it('says what was understood, asks for the size and keeps everything', async () => {
    const { say, complain } = talk();
    await say(BOXES);
    const { problems, form, open, choices = [] } = await complain('that’s wrong');
    expect(problems).toEqual([
      {
        option: 'area',
        got: 'Boxes and cost by area: area 12x14; box 24 sq ft',
        expected: expect.stringMatching(/size wrong\?/),
      },
    ]);
    expect(form).toEqual({ command: 'floor estimate', told: { area: '12x14', box: '24 sq ft' } });
    expect(open).toBe('area');
    expect(choices.length).toBeGreaterThanOrEqual(2);
    expect(choices.every(({ ask }) => ask.includes('12x14'))).toBe(true);
    const mended = await say('12x16');
    expect(mended.headline).toMatch(/for 192 sq ft/);
    expect(mended.understood?.told).toEqual({ area: '12x16', box: '24 sq ft' });
    expect(mended.understood?.said).toBe(BOXES);
  });

  it('asks which question was meant where it came from the handbook', async () => {
    const { say, complain } = talk();
    const { understood } = await say(STAGGER);
    expect(understood).toMatchObject({ command: 'handbook', said: STAGGER });
    const { problems, choices = [] } = await complain('no that’s not what I asked');
    expect(problems[0].got).toBe('the question “How far apart should end joints be?”');
    expect(problems[0].expected).toMatch(/Which of these/);
    expect(choices).toHaveLength(3);
    for (const { ask } of choices) expect((await say(ask)).headline).not.toBe('');
  });

  it('is asked about the answer that was pressed, not the last one', async () => {
    const { say, press } = talk();
    const { understood } = await say(BOXES);
    await say(STAGGER);
    const { form, problems } = await press(understood);
    expect(form?.told).toEqual({ area: '12x14', box: '24 sq ft' });
    expect(problems[0].got).toContain('12x14');
    expect((await say('12x16')).headline).toMatch(/for 192 sq ft/);
  });

  it('hears anger the same way, and a correction behind it at once', async () => {
    const { say, complain } = talk();
    await say(BOXES);
    expect((await complain('this is useless')).form?.told).toEqual({ area: '12x14', box: '24 sq ft' });
    expect((await complain('you’re dumb')).problems[0].got).toContain('12x14');
    expect((await say('that’s wrong, it’s 12x16')).headline).toMatch(/for 192 sq ft/);
  });

  it('is small talk where nothing was answered yet, and no button under what was typed as options', async () => {
    const { say } = talk();
    expect((await say('that’s wrong')).headline).toMatch(/^Sorry/);
    expect((await say('estimate area: 12x14')).understood).toBeUndefined();
    expect((await say('hello')).understood).toBeUndefined();
  });
});

describe('a complaint', () => {
  it.each([
    'wrong',
    'That’s wrong!',
    'no thats wrong',
    'ugh, that is not right',
    'this is totally useless',
    'you misunderstood me',
    'not what I meant',
    'your answer makes no sense'.replace('your answer', 'that'),
    'the size is wrong',
    'stupid bot',
  ])('is “%s”', (text) => expect(isComplaint(text)).toBe(true));

  it.each([
    'which way do planks go',
    'the subfloor is not right',
    'is 3/8 the wrong gap?',
    'what if the room is off square',
    'thanks',
    'rows please',
  ])('is not “%s”', (text) => expect(isComplaint(text)).toBe(false));

  it('leaves the correction behind it', () => {
    expect(correctionIn('That’s wrong, it’s 12x16')).toBe("no, it's 12x16");
    expect(correctionIn('and the hall 3x14')).toBe('and the hall 3x14');
  });
});
