/** Where the home is, told once: kept with the person, and taken wherever its years count. */

import { describe, expect, it, test } from 'vitest';
import { conversation, textOf } from '../project/conversation.ts';

const ASK = 'tearout room: 12x14, floor: sheet vinyl, built: 1995';

describe('the country of the home', () => {
  test.each([
    ['project settings country: UK', 'Country UK.'],
    ['settings country Canada', 'Country Canada.'],
    ['set country to Australia', 'Country Australia.'],
    ['my house is in Scotland', 'Country UK.'],
    ['we live in the US', 'Country US.'],
    ['our country is canada', 'Country Canada.'],
  ])('is told by “%s”', async (line, headline) => {
    const talk = await conversation('none');
    expect((await talk.reply(line)).headline).toBe(headline);
  });

  it('is asked for no more once it is set, and decides which years count', async () => {
    const talk = await conversation('none');
    expect(textOf(await talk.reply(ASK))).toMatch(/country: assuming/);
    await talk.reply('project settings country: UK');
    expect(await talk.ask(ASK)).toHaveProperty('why', expect.stringContaining('2005'));
    await talk.reply('project settings country: US');
    const text = textOf(await talk.reply(ASK));
    expect(text).not.toMatch(/country: assuming/);
    expect(text).toMatch(/country US/);
    // What is told with the line wins over what is kept.
    expect(await talk.ask(`${ASK}, country: UK`)).toHaveProperty('why');
    await talk.reply('project settings country: clear');
    expect(textOf(await talk.reply(ASK))).toMatch(/country: assuming/);
  });

  it('stands among the settings, and goes out with them', async () => {
    const talk = await conversation('none');
    await talk.reply('project settings country: Norway');
    expect(textOf(await talk.reply('project settings'))).toContain('country: elsewhere');
    const { problem } = talk;
    expect(await problem('project settings country: 12')).toMatchObject({
      expected: expect.stringContaining('country'),
    });
  });
});
