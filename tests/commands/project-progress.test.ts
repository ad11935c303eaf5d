/** Progress, money, notes and findings of the demo flat, as a person tells them over some days. */

import { describe, expect, it } from 'vitest';
import { conversation, textOf } from '../project/conversation.ts';

const HOUR = 3_600_000;

interface RoomData {
  readonly room: string;
  readonly done: readonly string[];
  readonly next?: string;
  readonly state?: string;
}

describe('progress', () => {
  const roomOf = (data: unknown, room: string): RoomData | undefined =>
    (data as { rooms: readonly RoomData[] }).rooms.find((one) => one.room === room);

  it('room by room: what is done, what comes next, what blocks it', async () => {
    const talk = await conversation();
    await talk.reply('project progress clear done everywhere');
    await talk.reply('project progress tore out the carpet in bedroom');
    await talk.reply('project progress squeaks done bedroom');
    const blocked = await talk.reply('project progress bedroom not flat');
    expect(roomOf(blocked.data, 'bedroom')).toMatchObject({
      done: ['clear', 'tear-out', 'subfloor'],
      next: 'flat',
      state: 'blocked',
    });
    expect(textOf(blocked)).toMatch(/bedroom \| 3 of 11 \| flatness \| not flat/);
    expect(roomOf(blocked.data, 'hall')).toMatchObject({ next: 'tear-out' });
    expect(blocked.cautions.map(({ topic }) => topic)).toContain('tack-strip');
  });

  it('laying waits for flat, dry and the cartons', async () => {
    const talk = await conversation();
    for (const stage of ['clear', 'tear-out', 'subfloor', 'acclimate'])
      await talk.reply(`project progress done ${stage} hall`);
    expect(textOf(await talk.reply('project progress hall'))).toMatch(
      /flatness not checked; moisture not checked|flatness/,
    );
  });

  it('a wait tells its end, is reminded of once when it is over, and by then counts', async () => {
    const talk = await conversation();
    const given = await talk.reply('project progress acclimating bedroom for 24 h');
    expect(given.headline).toMatch(/until/);
    talk.pass(23 * HOUR);
    expect(textOf(await talk.reply('tape 1 ft + 1 in'))).not.toMatch(/time/);
    talk.pass(2 * HOUR);
    expect(textOf(await talk.reply('tape 1 ft + 1 in'))).toMatch(/bedroom: the cartons have had their time/);
    expect(textOf(await talk.reply('tape 1 ft + 1 in'))).not.toMatch(/the cartons/);
  });

  it('a room that is gone, or left as it is, reminds of nothing', async () => {
    const talk = await conversation();
    await talk.reply('project progress acclimating everywhere for 24 h');
    await talk.reply('project room remove closet');
    await talk.reply('project room hall out of scope');
    talk.pass(30 * HOUR);
    expect(textOf(await talk.reply('tape 1 ft + 1 in'))).toMatch(/living, bedroom: the cartons have had their time/);
  });

  it('cartons without hours take the longest that is asked, and say so', async () => {
    const talk = await conversation();
    const { assumed } = await talk.reply('project progress acclimating everywhere since Friday 18:00');
    expect(assumed.join(' ')).toMatch(/72 h for the cartons/);
  });

  it.each([
    ['acclimating since Friday 18:00', 'project progress do: acclimating since Friday 18:00 hall'],
    ['done', 'project progress do: done hall'],
    ['blah', undefined],
    ['paint drying hall', undefined],
    ['waiting lay hall until yesterday', undefined],
  ])('“%s” is mended by what is offered, and no time is made up: %s', async (text, fix) => {
    const talk = await conversation();
    const problem = await talk.problem(`project progress ${text}`);
    expect(problem.fix).toBe(fix);
    expect(problem.expected).not.toBe('');
    if (problem.fix !== undefined) await talk.reply(problem.fix);
  });

  it('is taken back by undo', async () => {
    const talk = await conversation();
    await talk.reply('project progress done tear-out bedroom');
    await talk.reply('project undo');
    expect((await talk.project()).stages.marks).toEqual([]);
  });
});

describe('money', () => {
  it('a refund is less, the insurer’s part is the insurer’s, and the budget warns', async () => {
    const talk = await conversation();
    await talk.reply('project spend budget $1500');
    await talk.reply('project spend spent $84.20 on adhesive, insurer');
    const { headline, blocks, data } = await talk.reply('project spend refund $32.50 carton, insurer');
    expect(headline).toBe(
      'Refund: $32.50, carton (insurer). Spent $51.70, $1,467.52 expected in all, of a budget of $1,500.00.',
    );
    expect(data).toMatchObject({ verdict: 'near', spent: 5170, payers: { self: 0, insurer: 5170 } });
    expect(JSON.stringify(blocks)).toMatch(/Near the budget/);
    expect(textOf(await talk.reply('project spend $100 on a saw'))).toMatch(/Past the budget/);
  });

  it.each([
    ['insurer pays $1,500', /^Agreed: the insurer pays \$1,500\.00\..* you \$0\.00, insurer \$1,415\.82\.$/],
    ['insurance pays $500 of it', / you \$915\.82, insurer \$500\.00\.$/],
    ['insurer pays 25%', /^Agreed: the insurer pays 25%\..* you \$1,061\.86, insurer \$353\.96\.$/],
    ['insurer pays the tear-out', /: you \$1,415\.82\.$/],
  ])('“%s” says who pays what of all that is expected', async (text, headline) => {
    const talk = await conversation();
    expect((await talk.reply(text)).headline).toMatch(headline);
    expect(textOf(await talk.reply('project spend'))).toContain('Who pays, in all');
    await talk.reply('project undo');
    expect(textOf(await talk.reply('project spend'))).not.toContain('Who pays, in all');
  });

  it('of a stage that the insurer pays is the insurer’s, whoever paid it first, and is withdrawn', async () => {
    const talk = await conversation();
    expect((await talk.reply('spent $300 on dumpster rental')).assumed.join()).toContain('Tear-out');
    const { data } = await talk.reply('insurer pays the tear-out');
    expect(data).toMatchObject({ shares: { insurer: 30_000 } });
    expect((await talk.reply('insurer pays 10%')).data).toMatchObject({ shares: { insurer: 30_000 + 17_158 } });
    expect((await talk.reply('insurer pays nothing')).headline).not.toContain('you $');
  });

  it.each(['blah', 'remove 7', 'spent a lot'])(
    '“%s” is asked back, and no amount or place is made up',
    async (text) => {
      const talk = await conversation();
      await talk.reply('project spend $5 tape');
      const problem = await talk.problem(`project spend ${text}`);
      expect(problem).not.toHaveProperty('fix');
      expect(problem.expected).toMatch(/what you paid|number/);
    },
  );
});

describe('notes', () => {
  it('are kept with their day, found by a word, removed by number', async () => {
    const talk = await conversation();
    await talk.reply('project log note found water stain by the bay');
    await talk.reply('project log “plumber came, room: nothing wrong”');
    expect((await talk.project()).log.map(({ text }) => text)).toEqual([
      'found water stain by the bay',
      'plumber came, room: nothing wrong',
    ]);
    expect((await talk.reply('project log search STAIN')).headline).toBe('1 note with stain.');
    await talk.reply('project log remove 1');
    expect((await talk.project()).log).toHaveLength(1);
    const problem = await talk.problem('project log remove 9');
    expect(problem).toMatchObject({ expected: 'Give a number from the list: 1 to 1.' });
    expect(problem).not.toHaveProperty('fix');
  });

  it.each(['<!channel> @everyone', '```rm```', '\u202egnp.exe', '= 1 + 1', 'remove everything', '🪵'.repeat(20)])(
    'hostile: “%s” is a note like any other',
    async (text) => {
      const talk = await conversation();
      await talk.reply(`project log note ${text}`);
      expect((await talk.project()).log).toHaveLength(1);
    },
  );

  it('too long a one is asked for in two, and never cut short for its writer', async () => {
    const talk = await conversation();
    const problem = await talk.problem(`project log note ${'water '.repeat(300)}`);
    expect(problem).not.toHaveProperty('fix');
    expect((await talk.project()).log).toEqual([]);
  });
});

describe('findings', () => {
  it('told and kept stand room by room in plain sentences with areas and quantities', async () => {
    const talk = await conversation();
    await talk.reply('project found soft spot 2x3 ft bedroom by window');
    await talk.reply(
      `project keep patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in, found: water stain`,
    );
    const reply = await talk.reply('project found');
    const text = textOf(reply);
    expect(text).toMatch(/bedroom\n {2}soft spot 2x3 ft bedroom by window, 6 sq ft \(finding 1, \w{3} \d+ \w{3}\)\./);
    expect(text).toMatch(/A piece of subfloor 32" × 34" \(7\.6 sq ft\) is damaged.*Found there: water stain.*1 tube/);
    expect(text).not.toMatch(/Call first/);
    expect(reply.cautions.map(({ topic }) => topic)).toEqual(
      expect.arrayContaining(['asbestos', 'mould', 'leak-water']),
    );
  });

  it.each([
    ['black mould 4 x 5 ft living', /mold remediator/],
    ['mould in the closet', /mold remediator/],
    ['sewage under the hall', /water-damage restorer/],
    ['s e w a g e in hall', /water-damage restorer/],
    ['black mastic under the carpet in hall', /asbestos inspector/],
    ['a joist is cracked in bedroom', /structural engineer/],
    ['gas pipe in the hall floor', /gas utility/],
  ])('“%s” tells who to call, and goes on telling it', async (text, who) => {
    const talk = await conversation();
    expect(textOf(await talk.reply(`project found ${text}`))).toMatch(who);
    expect(textOf(await talk.reply('project found'))).toMatch(who);
  });

  it('mould under ten square feet is for gloves and a mask', async () => {
    const talk = await conversation();
    expect(textOf(await talk.reply('project found mould 1 x 2 ft closet'))).not.toMatch(/Call first/);
  });

  it('of a tear-out stands room by room, and the rooms come to the total', async () => {
    const talk = await conversation();
    // The flat's four rooms, and a closet joined to one of them.
    await talk.reply(`project room study 10'4" x 8'7" + 2'5" x 3'3" closet`);
    await talk.reply('project room study, floor: carpet');
    await talk.reply('project keep tearout');
    const reply = await talk.reply('project found');
    const { findings } = reply.data as unknown as {
      findings: readonly { room?: string; place?: string; area: number; text: string }[];
    };
    const rooms = findings.filter(({ room }) => room !== undefined);
    const [whole] = findings.filter(({ place }) => place === 'together');
    expect(rooms.map(({ room }) => room)).toEqual(['hall', 'living', 'bedroom', 'closet', 'study']);
    expect(rooms.reduce((sum, { area }) => sum + area, 0)).toBe(whole?.area);
    const said = (text = ''): number => Math.round(Number(/([\d.,]+) sq ft/.exec(text)?.[1]?.replace(',', '')) * 10);
    expect(rooms.reduce((sum, { text }) => sum + said(text), 0)).toBe(said(whole?.text));
    // 3'6" x 14' of hall, and the study with its closet: (10'4" x 8'7" + 2'5" x 3'3") = 96.5 sq ft.
    expect(textOf(reply)).toContain('hall\n  The old floor comes out: 49 sq ft.');
    expect(textOf(reply)).toMatch(/study\n {2}The old floor comes out: 96\.[56] sq ft\./);
    await talk.reply('project room bedroom out of scope');
    expect(textOf(await talk.reply('project found'))).not.toContain('bedroom');
  });

  it('saved without a room are in none, until it is said which', async () => {
    const talk = await conversation();
    await talk.reply('project keep level readings: 1/4 in over 6 ft, area: 4 x 6 ft');
    const before = await talk.reply('project found');
    expect(textOf(before)).toMatch(/No room given\n {2}The floor was measured/);
    const line = /type “(project keep 1 in \w+)”/.exec(textOf(before))?.[1] ?? '';
    await talk.reply(line.replace(/in \w+$/, 'in the hall'));
    expect(textOf(await talk.reply('project found'))).toMatch(/hall\n {2}The floor was measured/);
    const problem = await talk.problem('project keep 1 in the attic');
    expect(problem.expected).toContain('The project has no room “the attic”. It has');
    expect(problem).not.toHaveProperty('fix');
  });

  it('in a room that is gone since stays, and who to call with it', async () => {
    const talk = await conversation();
    await talk.reply('project found sewage in the closet');
    await talk.reply('project room remove closet');
    expect(textOf(await talk.reply('project found'))).toMatch(
      /no longer in the project: Sewage[\s\S]*no longer in the project\n {2}sewage in the closet \(finding 1,/,
    );
  });

  it.each([
    ['mould 4 sq ft in closet, and squeaks in hall', ['closet', 'hall']],
    ['soft spot 2x3 ft bedroom; water stain in the living, 1 x 1 ft', ['bedroom', 'living']],
    ['a stain in hall and bedroom', ['bedroom']],
    ['squeaks in the hall by the closet', ['closet']],
    ['a crack and a stain in hall', ['hall']],
  ])('“%s” is kept in %j', async (text, rooms) => {
    const talk = await conversation();
    await talk.reply(`we found ${text}`);
    expect((await talk.project()).found.map(({ room }) => room)).toEqual(rooms);
  });

  it('one is removed by number, and what is not there is told', async () => {
    const talk = await conversation();
    await talk.reply('project found soft spot 2x3 ft bedroom');
    const problem = await talk.problem('project found remove 4');
    expect(problem).toMatchObject({ expected: 'Give a number from the list: 1 to 1.' });
    expect(problem).not.toHaveProperty('fix');
    await talk.reply('project found remove 1');
    expect((await talk.project()).found).toEqual([]);
  });
});

describe('a step further', () => {
  it('is offered with every change: to take it back, and to remove a line', async () => {
    const talk = await conversation();
    for (const line of [
      'bought 4 cartons at $62.50 lot B7',
      'spent $45 on a saw rental',
      'note the plumber comes on Friday',
      'found a stain in hall',
      'done clear hall',
    ]) {
      const { actions } = await talk.reply(line);
      expect(actions[0]?.ask).toBe('project undo');
      for (const { ask } of actions.filter(({ ask: next }) => next.includes(' remove '))) await talk.reply(ask);
    }
    const { spend, log, found } = await talk.project();
    expect([spend.entries, log, found]).toEqual([[], [], []]);
    for (const line of ['shopping', 'spend', 'log', 'found', 'progress'])
      expect((await talk.reply(line)).actions.map(({ ask }) => ask)).not.toContain('project undo');
  });

  it.each([
    ['remove note 1', 'log'],
    ['delete finding no. 1', 'found'],
  ] as const)('“%s” takes the line out', async (said, part) => {
    const talk = await conversation();
    await talk.reply('note the plumber comes on Friday');
    await talk.reply('found a stain in hall');
    await talk.reply(said);
    expect((await talk.project())[part]).toEqual([]);
  });

  it('what waits or is not right for a later stage is told', async () => {
    const talk = await conversation();
    await talk.reply('the hall is not flat');
    const text = textOf(await talk.reply('acclimating everywhere for 48 hours'));
    expect(text).toMatch(
      /Waiting or not right for later stages\n {2}hall: not flat\n {2}hall, .*: cartons in the room until/,
    );
    talk.pass(49 * 3_600_000);
    expect(textOf(await talk.reply('progress'))).not.toContain('cartons in the room until');
  });
});
