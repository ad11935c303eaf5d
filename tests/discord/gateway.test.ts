/** The bot by the gateway, through the real client: every command, autocomplete, forms, the menu, buttons, selects, the poll. */

import { InteractionContextType } from 'discord.js';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { fullName, headlineOf } from '../../src/input/command-shape.ts';
import { modalOf } from '../../src/platforms/discord/forms.ts';
import { MENU } from '../../src/platforms/discord/menu.ts';
import { CHAT, DISCORD_HELP } from '../../src/text/chat-text.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { fill, menu, OTHER, pick, press, slash, typing, type Where } from './interactions.ts';
import { allIn, buttonsOf, controlOf, field, labelsOf, list, textOf } from './json-field.ts';
import { refusalOf } from './loopback-rest.ts';
import { payloadFlaws } from './payload-flaws.ts';
import { type Stage, stage } from './stage.ts';

const ROOM = `12' x 14'`;
const PLANK = '6 x 48 in, 10 per carton';
const HEADLINE = 'Buy 10 cartons (100 planks): 92 to lay, 3 for mistakes, 5 left over.';
const EPHEMERAL = 64;

let bot: Stage;
beforeAll(async () => {
  const fault = (_reference: string, cause: unknown): never => {
    throw cause;
  };
  bot = await stage({
    // Somebody with the demo flat, new for each ask of it.
    answer: async function* (request) {
      const flat = request.text.startsWith('project ');
      yield* answer(request, commands, flat ? await demoPorts(request.asker, fault) : { fault });
    },
  });
});
afterAll(() => bot.close());
let given = { flaws: 0, faults: 0 };
afterEach(() => {
  const { flaws, faults } = given;
  given = { flaws: bot.discord.flaws.length, faults: bot.faults.length };
  expect(bot.discord.flaws.slice(flaws)).toEqual([]);
  expect(bot.faults.slice(faults).map(String)).toEqual([]);
});

const data = (one: { body: unknown }): unknown => field(one.body, 'data');
const flags = (one: { body: unknown }): number => Number(field(data(one), 'flags'));
const idOf = (message: unknown, label: string): string => {
  const { id, value } = controlOf(message, label);
  return value === undefined
    ? id
    : id.replace('menu', value.replace(/:.*/, '')) + value.replace(/^\w+/, '').replace(/:$/, '');
};
/** A press of what bears a label, be it a button or a line of a list. */
const pressOn = (message: unknown, label: string, where: Where = {}) => {
  const { id, value } = controlOf(message, label);
  return value === undefined ? press(id, where) : pick(id, [value], where);
};

async function planks(where = {}) {
  return bot.ask(slash('floor planks', { room: ROOM, plank: PLANK }, where));
}

describe('a slash command', () => {
  const examples = commands.flatMap((command) =>
    command.examples.map((example) => ({
      name: fullName(command),
      ask: example.ask,
      headline: headlineOf(example, commands),
    })),
  );

  it.each(examples)('answers as everywhere: $ask', async ({ name, ask, headline }) => {
    const parsed = parseLine(ask, commands);
    if (!parsed.ok) throw new Error(`not read: ${ask}`);
    const answer = await bot.ask(slash(name, Object.fromEntries(parsed.optionTexts)));
    expect(field(answer.body, 'type')).toBe(4);
    const shown = name === 'help' && parsed.optionTexts.size === 0 ? DISCORD_HELP.title : headline;
    expect(textOf(data(answer)).replace(/\\|\u200b/g, '')).toContain(shown);
  });

  it('comes in short, with cautions, for the asker alone, and its picture behind a button', async () => {
    const answer = await planks();
    expect(flags(answer) & EPHEMERAL).toBe(EPHEMERAL);
    expect(answer.files.size).toBe(0);
    expect(textOf(data(answer)).split('\n').length).toBeLessThanOrEqual(8);
    expect(textOf(data(answer))).toMatch(/⚠ .*asbestos/);
    const opening = pressOn(data(answer), 'Plan');
    expect(field((await bot.ask(opening)).body, 'type')).toBe(6);
    const plan = await bot.after(opening, 'edit');
    expect(plan.files.get('plan-1.png')?.subarray(1, 4).toString()).toBe('PNG');
    const gallery = allIn(plan.body).find((one) => field(one, 'type') === 12);
    expect(String(field(list(field(gallery, 'items'))[0], 'description'))).toMatch(/\d+ rows/);
  });

  it('is seen by both where a person is alone with the bot, and works where only the person installed it', async () => {
    expect(flags(await planks({ context: InteractionContextType.BotDM })) & EPHEMERAL).toBe(0);
    expect(flags(await planks({ context: InteractionContextType.PrivateChannel })) & EPHEMERAL).toBe(EPHEMERAL);
  });

  it('opens its form where nothing was told, with examples to type', async () => {
    const form = await bot.ask(slash('floor planks'));
    expect(field(form.body, 'type')).toBe(9);
    const fields = list(field(data(form), 'components'));
    expect(fields.map((one) => field(one, 'label')).slice(0, 2)).toEqual(['Room', 'Plank']);
    expect(field(field(fields[0], 'component'), 'placeholder')).toBe(`12' x 14'`);
    const filled = fill(String(field(data(form), 'custom_id')), { room: ROOM, plank: PLANK });
    expect(textOf(data(await bot.ask(filled)))).toContain(HEADLINE);
  });

  it('of every kind, with nothing told, is answered or opens a form that Discord takes', async () => {
    for (const command of commands) {
      const first = await bot.ask(slash(fullName(command)));
      expect([4, 9], fullName(command)).toContain(field(first.body, 'type'));
    }
  });

  it('has a form of any details of every command', async () => {
    for (const command of commands) {
      const options = Object.keys(command.options.shape);
      for (let at = 0; at < options.length; at += 5) {
        const modal = modalOf(command, {}, 'AAAAAAAAAAA', { first: options.slice(at, at + 5), only: true });
        expect(payloadFlaws('callback', { type: 9, data: modal }), fullName(command)).toEqual([]);
      }
    }
  });

  it('reads a sentence typed into its first option', async () => {
    const given = { room: 'a 12 by 14 ft bedroom with 6 x 48 in planks, 10 per carton' };
    expect(textOf(data(await bot.ask(slash('floor planks', given))))).toContain(HEADLINE);
  });

  it('reads what phones type', async () => {
    const given = { room: '12’ x 14’', plank: '6 × 48 in, 10 per carton' };
    expect(textOf(data(await bot.ask(slash('floor planks', given))))).toContain(HEADLINE);
  });

  it('of an older menu is answered with what there is', async () => {
    expect(textOf(data(await bot.ask(slash('blorp'))))).toContain('Did you mean');
  });
});

describe('the menu', () => {
  it('takes one sentence for anything, and a command line too', async () => {
    const sentence = { question: 'how many boxes for a 12 by 14 ft room, 6 x 48 in planks, 10 per carton?' };
    expect(textOf(data(await bot.ask(slash('ask', sentence))))).toMatch(/Buy 10 boxes/);
    expect(textOf(data(await bot.ask(slash('ask', { question: 'tape 1 ft + 2 in' }))))).toContain('1\' 2"');
    expect(textOf(data(await bot.ask(slash('ask', { question: 'I smell gas' }))))).toContain('This comes first');
    expect(textOf(data(await bot.ask(slash('boxes', { room: ROOM, plank: PLANK }))))).toContain(HEADLINE);
    expect(field((await bot.ask(slash('boxes'))).body, 'type')).toBe(9);
  });

  it('has the project as one entry, whose first field is picked, and options by their everyday names', async () => {
    const choices = list(field(data(await bot.ask(typing('project', 'what', 'room'))), 'choices'));
    expect(choices.map((one) => field(one, 'value'))).toContain('room');
    expect(textOf(data(await bot.ask(slash('project', { what: 'list' }))))).toMatch(/project/i);
    const added = await bot.ask(slash('project', { what: 'room', details: `study 9'6" x 10'` }));
    expect(textOf(data(added))).toMatch(/Study added/);
    const bought = await bot.ask(slash('shopping', { bought: 'all underlay' }));
    expect(textOf(data(bought))).toMatch(/Underlay/);
  });

  it('helps in at most twelve lines, each command a mention to press', async () => {
    const help = textOf(data(await bot.ask(slash('help'))));
    expect(help.split('\n').length).toBeLessThanOrEqual(12);
    for (const { name, own } of MENU)
      if (own !== 'help') expect(help).toMatch(new RegExp(`(?:</${name}:\\d+>|/${name})`));
    expect(help).not.toMatch(/type /i);
    expect(textOf(data(await bot.ask(slash('help', { command: 'planks' }))))).toContain('floor planks');
    const german = textOf(data(await bot.ask(slash('help', {}, { locale: 'de' }))));
    expect(german).toContain('auf Englisch');
  });

  it('opens earlier answers again, for whoever asked them', async () => {
    const where = { user: '100000000000000077' };
    expect(textOf(data(await bot.ask(slash('recent', {}, where))))).toMatch(/haven’t asked anything/);
    await planks(where);
    await bot.ask(slash('tape', { sum: '1 ft + 2 in' }, where));
    const listed = async (): Promise<unknown> => data(await bot.ask(slash('recent', {}, where)));
    let recent = await listed();
    // They are kept once they are on their way.
    while (!labelsOf(recent).includes(HEADLINE)) recent = await listed();
    const { id, value = '' } = controlOf(recent, HEADLINE);
    const opened = await bot.ask(pick(id, [value], where));
    expect([field(opened.body, 'type'), textOf(data(opened)).includes(HEADLINE)]).toEqual([7, true]);
    expect(textOf(data(await bot.ask(pick(id, [value], { ...where, user: OTHER }))))).toMatch(/is gone/);
  });

  it('sends an answer to its asker’s messages, and says where those are closed', async () => {
    const answer = data(await planks());
    const asked = pressOn(answer, 'Send to my messages');
    expect([field((await bot.ask(asked)).body, 'type'), textOf((await bot.after(asked, 'edit')).body)]).toEqual([
      6,
      expect.stringContaining(CHAT.sent),
    ]);
    const sent = await bot.discord.next(({ kind }) => kind === 'post');
    expect(textOf(sent.body)).toContain(HEADLINE);
    bot.discord.refuse({ matching: ({ kind }) => kind === 'post', ...refusalOf(403, 50007, 'Cannot send messages') });
    const again = pressOn(answer, 'Send to my messages');
    await bot.ask(again);
    const refused = textOf((await bot.after(again, 'edit')).body);
    expect(refused).toMatch(/closed to me[\s\S]*Buy 10 cartons/);
  });

  it.each([
    ['de', '3,6 x 4,2', /m²/],
    ['fr', '3,6 x 4,2', /m²/],
    ['en-GB', '3.6 x 4.2', /m²/],
    ['en-US', '12 x 14', /sq ft/],
  ])('reads figures as people do who read Discord in %s', async (locale, room, area) => {
    const answer = textOf(
      data(
        await bot.ask(
          slash('ask', { question: `area room: ${room}` }, { locale, user: locale.length.toString().repeat(18) }),
        ),
      ),
    );
    expect(answer).toMatch(area);
    if (locale === 'de' || locale === 'fr') expect(answer).toMatch(/15,1/);
  });
});

describe('an ask that cannot be read', () => {
  it('says what was read, and its form keeps every word typed', async () => {
    const answer = await bot.ask(slash('floor planks', { room: '12 by banana', plank: PLANK, gap: '1/2 in' }));
    const text = textOf(data(answer));
    expect(text).toContain('`12 by banana`');
    const form = await bot.ask(press(idOf(data(answer), 'Fill in a form'), { message: '4711' }));
    const fields = list(field(data(form), 'components')).map((one) => field(one, 'component'));
    const value = (name: string) =>
      field(
        fields.find((one) => field(one, 'custom_id') === name),
        'value',
      );
    expect([value('room'), value('plank'), value('gap')]).toEqual(['12 by banana', PLANK, '1/2 in']);
    const id = String(field(data(form), 'custom_id'));
    const mended = await bot.ask(fill(id, { room: ROOM, plank: PLANK, gap: '1/2 in' }, { message: '4711' }));
    // Put in place of the message that could not be answered.
    expect(field(mended.body, 'type')).toBe(7);
    expect(textOf(data(mended))).toMatch(/Buy \d+ cartons/);
  });

  it('keeps the options that its form has no field for', async () => {
    const given = {
      room: 'banana',
      plank: PLANK,
      gap: '1/2 in',
      kerf: '1/8 in',
      mistakes: '5%',
      pattern: 'half',
      tax: '8%',
    };
    const answer = await bot.ask(slash('floor planks', given));
    const form = await bot.ask(press(idOf(data(answer), 'Fill in a form')));
    const shown = list(field(data(form), 'components')).map((one) =>
      String(field(field(one, 'component'), 'custom_id')),
    );
    expect(shown).toHaveLength(5);
    const typed = Object.fromEntries(Object.entries({ ...given, room: ROOM }).filter(([name]) => shown.includes(name)));
    const mended = await bot.ask(fill(String(field(data(form), 'custom_id')), typed));
    const form2 = await bot.ask(pick(idOf(data(mended), 'Change a detail'), Object.keys(given).slice(2)));
    const values = list(field(data(form2), 'components')).map((one) => field(field(one, 'component'), 'value'));
    expect(values).toEqual(['half', '1/2 in', '1/8 in', '5%', '8%']);
  });

  it('is answered with the suggestion at a press', async () => {
    const answer = await bot.ask(slash('floor planks', { room: ROOM, plank: '6 x 48, 10' }));
    const fixed = await bot.ask(press(idOf(data(answer), 'Take the suggestion')));
    expect(field(fixed.body, 'type')).toBe(7);
    expect(textOf(data(fixed))).toMatch(/Buy \d+ cartons/);
  });

  it('is answered with an example plank at a press, and line 2 names it', async () => {
    const answer = await bot.ask(slash('floor planks', { room: ROOM }));
    const labels = buttonsOf(data(answer)).map(({ label }) => label);
    expect(labels).toEqual(['Put in my plank', 'Try with an example plank']);
    const tried = await bot.ask(press(idOf(data(answer), 'Try with an example plank')));
    const [headline, second] = textOf(data(tried))
      .split('\n')
      .filter((line) => line.trim() !== '');
    expect(headline).toMatch(/Buy \d+ cartons/);
    expect(second).toMatch(/^With an example plank, not yours: 6 x 48 in, 10 per carton\./);
    expect(labelsOf(data(tried))).not.toContain('Keep in project');
    const [own] = buttonsOf(data(tried));
    expect(own?.label).toBe('Put in my plank');
    const form = await bot.ask(press(own?.id ?? '', { message: '4712' }));
    const fields = list(field(data(form), 'components')).map((one) => field(field(one, 'component'), 'custom_id'));
    expect(fields).toEqual(['plank']);
    const filled = fill(String(field(data(form), 'custom_id')), { plank: PLANK }, { message: '4712' });
    const mine = await bot.ask(filled);
    expect([field(mine.body, 'type'), textOf(data(mine)).includes(HEADLINE)]).toEqual([7, true]);
  });

  it('has a form that is nobody else’s', async () => {
    const answer = await bot.ask(slash('floor planks', { room: 'banana', plank: PLANK }));
    const other = await bot.ask(press(idOf(data(answer), 'Fill in a form'), { user: OTHER }));
    expect(textOf(data(other))).toMatch(/is gone, or it isn’t yours/);
  });
});

describe('autocomplete', () => {
  it('offers choices that fit what is typed', async () => {
    const all = list(field(data(await bot.ask(typing('floor planks', 'pattern', ''))), 'choices'));
    expect(all.length).toBeGreaterThan(2);
    const some = list(field(data(await bot.ask(typing('floor planks', 'pattern', 'off'))), 'choices'));
    expect(some.map((one) => field(one, 'value'))).toEqual(['offcut-first']);
  });

  it.each(commands.map((command) => [fullName(command), command] as const))(
    'is there for every option of %s',
    async (name, command) => {
      for (const option of Object.keys(command.options.shape)) {
        expect(field((await bot.ask(typing(name, option, ''))).body, 'type')).toBe(8);
      }
    },
  );
});

describe('the message menu', () => {
  it('works out what somebody wrote, and says how it was read', async () => {
    const answer = await bot.ask(
      menu('My bedroom is 12 by 14 ft, the planks are 6 x 48 in and there are 10 per carton <@1>'),
    );
    expect(textOf(data(answer))).toContain(HEADLINE);
  });

  it('answers as far as what was said goes, and has the rest as a form', async () => {
    const answer = await bot.ask(menu('my bedroom is 12 by 14, how many planks do I need?'));
    expect(textOf(data(answer))).toContain('168 sq ft');
    const missing = await bot.ask(slash('floor planks', { room: '12 by 14' }));
    const form = await bot.ask(press(idOf(data(missing), 'Put in my plank')));
    const room = list(field(data(form), 'components')).map((one) => field(one, 'component'));
    expect(
      field(
        room.find((one) => field(one, 'custom_id') === 'room'),
        'value',
      ),
    ).toMatch(/12.*14/);
  });

  it('says so where nothing is asked', async () => {
    expect(textOf(data(await bot.ask(menu('good morning everyone'))))).toContain('Try: ');
    expect(textOf(data(await bot.ask(menu(''))))).toContain('I didn’t understand that');
  });

  it('offers an empty form where nothing was read, and nothing made up', async () => {
    const answer = await bot.ask(menu(''));
    expect(buttonsOf(data(answer)).map(({ label }) => label)).toEqual(['Fill in a form']);
    const form = await bot.ask(press(idOf(data(answer), 'Fill in a form')));
    const typed = fill(String(field(data(form), 'custom_id')), { room: ROOM, plank: PLANK });
    expect(textOf(data(await bot.ask(typed)))).toContain(HEADLINE);
  });
});

describe('the buttons of an answer', () => {
  it('give the laying guide, whole', async () => {
    const answer = data(await planks());
    const guide = await bot.ask(press(idOf(answer, 'Laying guide')));
    expect(field(guide.body, 'type')).toBe(7);
    expect(textOf(data(guide))).toMatch(/Row 1/);
    expect([...guide.files.keys()]).toEqual(['answer.txt', 'tables.csv']);
    const short = await bot.ask(pressOn(data(guide), 'Short answer'));
    expect([field(short.body, 'type'), textOf(data(short))]).toEqual([7, textOf(answer)]);
  });

  it('open every section, and what older buttons open', async () => {
    const answer = data(await planks());
    const id = idOf(answer, 'Safety').split(':')[1];
    for (const [pressed, wanted] of [
      [`open:${id}:safety`, /Safety[\s\S]*asbestos/],
      [`open:${id}:sources`, /Sources[\s\S]*published|reported/],
      [`open:${id}:checklist`, /☐ /],
      [`sources:${id}`, /Sources[\s\S]*published|reported/],
    ] as const) {
      const opened = await bot.ask(press(pressed));
      expect(textOf(data(opened))).toMatch(wanted);
      expect(field(opened.body, 'type')).toBe(7);
    }
    for (const opening of [pressOn(answer, 'Everything'), press(`parts:${id}`)]) {
      await bot.ask(opening);
      expect((await bot.after(opening, 'edit')).files.get('answer.txt')?.toString()).toMatch(/Row 1|Laying guide/);
    }
    expect(textOf(data(await bot.ask(press(`open:${id}:rowz`))))).toMatch(/answer is gone/);
  });

  it('ask the choice of an open question, in its place', async () => {
    const choices = [{ label: '1 ft + 2 in', ask: 'tape 1 ft + 2 in' }];
    const problem = { option: 'sum', got: '', expected: 'Which sum?' };
    const own = await stage({
      answer: async function* (request) {
        if (request.text.startsWith('tape 1 ft')) yield* answer(request, commands, { fault: () => {} });
        else yield { problems: [problem], open: 'sum', choices };
      },
    });
    const asked = data(await own.ask(slash('tape', { sum: 'banana' })));
    expect(textOf(asked)).toBe('### Which sum?');
    const chosen = await own.ask(press(idOf(asked, '1 ft + 2 in')));
    expect(field(chosen.body, 'type')).toBe(7);
    expect(textOf(data(chosen))).toContain('1\' 2"');
    const gone = await own.ask(press(idOf(asked, '1 ft + 2 in').replace(':0', ':7')));
    expect(textOf(data(gone))).toMatch(/answer is gone/);
    await own.close();
  });

  it('ask the next ask, and another pattern', async () => {
    const answer = data(await planks());
    const turned = await bot.ask(press(idOf(answer, 'Turn the rows')));
    expect([field(turned.body, 'type'), textOf(data(turned))]).toEqual([7, expect.stringMatching(/Buy \d+ cartons/)]);
    const back = await bot.ask(pressOn(data(turned), 'Back'));
    expect([field(back.body, 'type'), textOf(data(back))]).toEqual([7, textOf(answer)]);
    const other = await bot.ask(pressOn(answer, 'Lay it half'));
    expect([field(other.body, 'type'), textOf(data(other))]).toEqual([7, expect.stringMatching(/Buy \d+ cartons/)]);
    // What a list of an older message says.
    const older = idOf(answer, 'Turn the rows').replace(/^ask(:[^:]+):.*/, 'pick$1:0');
    expect(textOf(data(await bot.ask(pick(older, ['0']))))).toMatch(/Buy \d+ cartons/);
  });

  it('change a detail by a form that holds the rest', async () => {
    const form = await bot.ask(pick(idOf(data(await planks()), 'Change a detail'), ['gap', 'plank']));
    const fields = list(field(data(form), 'components')).map((one) => field(one, 'component'));
    expect(fields.map((one) => field(one, 'custom_id'))).toEqual(['plank', 'gap']);
    const id = String(field(data(form), 'custom_id'));
    const answer = await bot.ask(fill(id, { plank: '7 x 48 in, 8 per carton', gap: '1/2 in' }));
    expect(field(answer.body, 'type')).toBe(4);
    expect(textOf(data(answer))).toMatch(/cartons \(\d+ planks\)/);
  });

  it('leave a long guide in its message, a part at a time', async () => {
    const rooms = Array.from({ length: 5 }, (_, i) => `room ${'ABCDEFGH'.charAt(i)}: ${10 + i} x 14 ft`).join('; ');
    const guide = data(await bot.ask(slash('floor guides', { room: rooms, plank: PLANK })));
    const pages = [textOf(guide)];
    let shown = guide;
    for (;;) {
      const next = labelsOf(shown).find((label) => label.startsWith('Next: part'));
      if (next === undefined) break;
      const turned = await bot.ask(pressOn(shown, next));
      expect(field(turned.body, 'type')).toBe(7);
      shown = data(turned);
      pages.push(textOf(shown));
    }
    expect(pages.length).toBeGreaterThan(1);
    for (let i = 1; i <= 5; i++) expect(pages.join('\n')).toContain(`room ${'ABCDEFGH'.charAt(i - 1)}`);
  });

  it('show the answer to the channel, where others may press its buttons, and not before', async () => {
    const answer = data(await planks());
    const safety = idOf(answer, 'Safety');
    const before = await bot.ask(press(safety, { user: OTHER }));
    expect(textOf(data(before))).toMatch(/is gone, or it isn’t yours/);
    const stolen = await bot.ask(press(idOf(answer, 'Show to channel'), { user: OTHER }));
    expect(textOf(data(stolen))).toMatch(/is gone, or it isn’t yours/);
    const requested = press(idOf(answer, 'Show to channel'));
    const shown = await bot.ask(requested);
    // Its own message loses the button, then everybody sees it.
    expect(field(shown.body, 'type')).toBe(7);
    expect(labelsOf(data(shown))).not.toContain('Show to channel');
    const seen = (await bot.after(requested, 'follow-up')).body;
    expect(Number(field(seen, 'flags')) & EPHEMERAL).toBe(0);
    expect(textOf(seen)).toMatch(/^-# <@100000000000000001> asked: 12' x 14' · 6 x 48 in, 10 per carton/);
    expect(textOf(seen)).toContain(HEADLINE);
    expect(labelsOf(seen)).not.toContain('Show to channel');
    const other = await bot.ask(press(safety, { user: OTHER, shown: true }));
    expect(textOf(data(other))).toContain('Safety');
    expect([field(other.body, 'type'), flags(other) & EPHEMERAL]).toEqual([4, EPHEMERAL]);
    // Once is enough.
    const again = press(idOf(answer, 'Show to channel'));
    expect(field((await bot.ask(again)).body, 'type')).toBe(7);
    await bot.ask(slash('tape', { sum: '1 ft' }));
    expect(bot.discord.captured.filter(({ token, kind }) => token === again.token && kind === 'follow-up')).toEqual([]);
  });

  it('ask the channel which of the planks compared', async () => {
    const planks = 'oak: 6 x 48 in, 10 per carton, $45 a carton; ash: 7 x 48 in, 8 per carton, $52 a carton';
    const answer = await bot.ask(slash('floor compare', { room: ROOM, planks }));
    const poll = data(await bot.ask(pressOn(data(answer), 'Ask the channel')));
    expect(field(field(field(poll, 'poll'), 'question'), 'text')).toBe('Which floor?');
    expect(list(field(field(poll, 'poll'), 'answers'))).toHaveLength(2);
    expect(field(poll, 'flags')).toBeUndefined();
  });

  it('that were never ours, or are gone, are answered', async () => {
    for (const id of ['whatever', 'ask:AAAAAAAAAAA:0', 'fix:AAAAAAAAAAA', 'mend:AAAAAAAAAAA', 'show:', 'parts:x:y']) {
      expect(textOf(data(await bot.ask(press(id))))).toMatch(/is gone, or it isn’t yours[\s\S]*\/ask/);
    }
    const answer = data(await planks());
    const wrong = idOf(answer, 'Turn the rows').replace(/\d+$/, '99');
    expect(textOf(data(await bot.ask(press(wrong))))).toMatch(/answer is gone/);
  });
});
