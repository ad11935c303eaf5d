/** Answers as messages: valid whatever a reply holds, nothing that must be read cut away, nothing in it that acts. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { briefOf, sectionsOf } from '../../src/chat/brief.ts';
import { answerRows, problemRows } from '../../src/platforms/discord/buttons.ts';
import { outgoing } from '../../src/platforms/discord/outgoing.ts';
import type { DiscordMessage } from '../../src/platforms/discord/page.ts';
import { code, escapedMarkdown, label } from '../../src/platforms/discord/page.ts';
import { render, renderSections } from '../../src/platforms/discord/render.ts';
import { DEMO_ASKS } from '../../src/platforms/terminal/demo.ts';
import type { Drawing } from '../../src/reply/drawing.ts';
import { type Block, type Reply, unsafe } from '../../src/reply/reply.ts';
import { SECTION_TITLES } from '../../src/text/answer-text.ts';
import { CHAT } from '../../src/text/chat-text.ts';
import { answerTo, replyTo } from '../chat/asked.ts';
import { HOSTILE } from './hostile-texts.ts';
import { allIn, buttonsOf, field, labelsOf, list, textOf } from './json-field.ts';
import { payloadFlaws } from './payload-flaws.ts';

const PNG = Buffer.from('picture');
const drawn = { toPng: async () => PNG, fault: () => {}, fileBytes: 10_000_000 };

const drawing: Drawing = { width: 100, height: 100, title: 'Bedroom', alt: 'A plan of 9 rows.', shapes: [] };
const plain: Reply = {
  headline: 'Buy 10 cartons.',
  blocks: [],
  assumed: [],
  cautions: [],
  sources: [],
  actions: [],
  audience: 'asker',
  data: { kind: 'floor' },
};

/** What a message says, read as a person would: escapes undone. */
function read(messages: readonly DiscordMessage[]): string {
  return messages
    .map(textOf)
    .join('\n')
    .replace(/\\([^0-9A-Za-z\s])/g, '$1')
    .replaceAll('\u200b', '');
}

/** Letters and figures only: how lines are broken and marked does not matter. */
function bare(text: string): string {
  return text.normalize('NFD').replace(/[^\p{L}\p{N}]/gu, '');
}

/** Everything that comes with the messages, files too. */
function whole(messages: readonly DiscordMessage[]): string {
  const files = messages.flatMap(({ files: all }) => all.map((file) => ('text' in file ? file.text : '')));
  return bare([read(messages), ...files].join('\n'));
}

async function flawsOf(messages: readonly DiscordMessage[], reply: Reply): Promise<readonly string[]> {
  const fields = Array.from({ length: 30 }, (_, i) => ({
    option: `option-${i}`,
    label: `Option ${i}`,
    summary: 's',
    example: 'e',
    long: false,
  }));
  const rows = answerRows(reply, { id: 'AAAAAAAAAAA', showable: true, fields });
  const sent = await outgoing(messages, { below: rows }, drawn);
  return sent.flatMap(({ components, attachments, files }) => {
    const body = { components, attachments, allowed_mentions: { parse: [] }, flags: 1 << 15 };
    return payloadFlaws(
      'follow-up',
      JSON.parse(JSON.stringify(body)),
      files.map(({ name }) => name),
    );
  });
}

const text = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.constantFrom(...HOSTILE),
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.string({ unit: 'grapheme', minLength: 200, maxLength: 6000 }),
);
const short = fc.oneof(
  { weight: 5, arbitrary: fc.string({ unit: 'grapheme', maxLength: 30 }) },
  { weight: 1, arbitrary: text },
);
const cells = fc.array(short, { minLength: 1, maxLength: 5 });
const block: fc.Arbitrary<Block> = fc.oneof(
  text.map((said): Block => ({ kind: 'text', text: said })),
  fc
    .array(fc.record({ label: short, value: short }), { maxLength: 8 })
    .map((facts): Block => ({ kind: 'facts', facts })),
  fc.tuple(short, cells, fc.nat({ max: 5000 })).map(
    ([title, row, rows]): Block => ({
      kind: 'table',
      title,
      columns: row,
      rows: Array.from({ length: rows }, () => row),
    }),
  ),
  fc.tuple(short, fc.array(text, { maxLength: 6 })).map(([title, steps]): Block => ({ kind: 'steps', title, steps })),
  fc
    .tuple(short, fc.array(text, { maxLength: 6 }))
    .map(([title, items]): Block => ({ kind: 'checklist', title, items })),
  fc.tuple(short, short).map(([title, alt]): Block => ({ kind: 'picture', drawing: { ...drawing, title, alt } })),
);
const reply: fc.Arbitrary<Reply> = fc.record({
  headline: text,
  blocks: fc.array(block, { maxLength: 6 }),
  assumed: fc.array(text, { maxLength: 3 }),
  cautions: fc.array(fc.record({ topic: fc.constant('t'), text }), { maxLength: 8 }),
  sources: fc.array(fc.record({ title: short, standing: fc.constant('published' as const) }), { maxLength: 5 }),
  actions: fc.array(fc.record({ label: short, ask: short }), { maxLength: 12 }),
  audience: fc.constant('asker' as const),
  data: fc.record({ kind: fc.constantFrom('floor', 'trim', 'tape') }),
});

describe('any reply', () => {
  it('is sound messages, its headline in the first and every caution whole under Safety', async () => {
    await fc.assert(
      fc.asyncProperty(reply, async (any) => {
        const messages = render(any);
        expect(await flawsOf(messages, any)).toEqual([]);
        expect(whole(messages)).toContain(bare(any.headline));
        const safety = whole(renderSections(any, 'safety') ?? []);
        for (const caution of any.cautions) expect(safety).toContain(bare(caution.text));
        for (const { id } of [...sectionsOf(any), { id: 'more' }])
          expect(await flawsOf(renderSections(any, id) ?? messages, any)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it('of 5,000 rows gives every row behind its button, in a file where it must', () => {
    const rows = Array.from({ length: 5000 }, (_, i) => [`row ${i}`, `cut ${i} @everyone`]);
    const long: Reply = { ...plain, blocks: [{ kind: 'table', title: 'Guide', columns: ['Row', 'Cut'], rows }] };
    expect(render(long)).toHaveLength(1);
    const sheets = renderSections(long, 'list') ?? [];
    const [file, csv] = sheets.flatMap(({ files }) => files);
    for (const one of [file, csv])
      for (const i of [0, 2500, 4999]) expect(one && 'text' in one && one.text).toContain(`cut ${i} `);
  });

  it('begins with its brief, in one message', async () => {
    const planks = await replyTo(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const messages = render(planks);
    expect(messages).toHaveLength(1);
    const { lead, lines, cautions } = briefOf(planks);
    expect(read(messages).split('\n')).toEqual([`### ${lead}`, ...lines, ...cautions.map((text) => `⚠ ${text}`)]);
  });

  it.each(DEMO_ASKS.map((ask) => [ask]))('is no higher than a phone in: %s', async (ask) => {
    const answer = await answerTo(ask);
    if (!('headline' in answer)) return;
    const messages = render(answer);
    const rows = answerRows(answer, { id: 'AAAAAAAAAAA', showable: true, fields: [] });
    expect(messages).toHaveLength(1);
    expect(heightOf([...(messages[0]?.components ?? []), ...rows], answer)).toBeLessThanOrEqual(640);
  });

  it('holds a low picture itself, and a high one under its button', () => {
    const wide = { ...drawing, height: 80 };
    const low: Reply = { ...plain, blocks: [{ kind: 'picture', drawing: wide }] };
    const high: Reply = { ...plain, blocks: [{ kind: 'picture', drawing: { ...drawing, width: 40 } }], lines: LINES };
    const labels = (of: Reply) => buttonsOf({ components: answerRows(of, OFFERING) }).map(({ label: said }) => said);
    expect([render(low)[0]?.files, labels(low)]).toEqual([
      [expect.objectContaining({ drawing: wide })],
      ['Show to channel', CHAT.send],
    ]);
    expect([render(high)[0]?.files, labels(high)]).toEqual([[], ['Show to channel', 'Plan', CHAT.send]]);
    const tall: Reply = { ...plain, blocks: [{ kind: 'picture', drawing: { ...drawing, height: 101 } }] };
    expect(render(tall)[0]?.files).toEqual([]);
    expect(renderSections(high, 'plan')?.[0]?.files).toHaveLength(1);
  });

  it('shows the section that was itself asked for under the brief', () => {
    const steps: Block = { kind: 'steps', title: 'How', steps: ['Cut the board.'] };
    expect(read(render({ ...plain, blocks: [steps] }))).not.toContain('Cut the board.');
    for (const opens of ['how', 'more'] as const)
      expect(read(render({ ...plain, blocks: [steps], opens }))).toMatch(/^### Buy[\s\S]*Cut the board\./);
  });

  it('has at most six controls, one of them the next step, and everything within them', async () => {
    const planks = await replyTo(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const fields = ['room', 'plank'].map((option) => ({
      option,
      label: option,
      summary: 's',
      example: 'e',
      long: false,
    }));
    const rows = { components: answerRows(planks, { ...OFFERING, fields }) };
    const buttons = buttonsOf(rows).map(({ label: said }) => said);
    expect(buttons).toEqual(['Laying guide', 'Safety', 'Turn the rows', 'Show to channel', CHAT.moreList, CHAT.change]);
    expect(allIn(rows).filter((one) => field(one, 'style') === 1)).toHaveLength(1);
    const sections = sectionsOf(planks).map(({ id }) => (id === 'rows' ? 'Laying guide' : SECTION_TITLES[id]));
    for (const wanted of [...sections, ...planks.actions.map(({ label: said }) => said), 'Everything'])
      expect(labelsOf(rows)).toContain(wanted);
    const all = whole(renderSections(planks, 'more') ?? []);
    for (const { text: said } of planks.cautions) expect(all).toContain(bare(said));
  });

  it('of many pictures shows ten a message, and says how many more there are', async () => {
    const blocks = Array.from({ length: 45 }, (): Block => ({ kind: 'picture', drawing }));
    const messages = renderSections({ ...plain, blocks }, 'plan') ?? [];
    expect(await flawsOf(messages, plain)).toEqual([]);
    expect(read(messages)).toContain(CHAT.morePictures(36));
  });
});

const LINES = Array.from({ length: 4 }, (_, i) => `A line of the brief that is long enough to be broken, no. ${i}`);
const OFFERING = { id: 'AAAAAAAAAAA', showable: true, fields: [] };

/** About how high a message is on a phone 390 px wide. */
function heightOf(components: readonly unknown[], { blocks }: Reply): number {
  const heights = components.map((one) => {
    const content = field(one, 'content');
    if (typeof content === 'string')
      return content.split('\n').reduce((sum, line) => sum + 22 * Math.ceil(line.length / 42), 0);
    const within = list(field(one, 'components'));
    if (within.length === 0) {
      const [picture] = blocks.flatMap((all) => (all.kind === 'picture' ? [all.drawing] : []));
      return picture ? Math.min(350, (318 * picture.height) / picture.width) : 0;
    }
    // Buttons break into further lines where their labels need it.
    let [lines, taken] = [1, 0];
    for (const width of within.map((button) => 32 + 8 * String(field(button, 'label') ?? '').length)) {
      if (taken > 0 && taken + width > 318) [lines, taken] = [lines + 1, 0];
      taken += width + 8;
    }
    return 42 * lines;
  });
  return heights.reduce((sum, height) => sum + height, 0);
}

describe('problems, refusals and faults', () => {
  it('begin with the question, and offer each choice by its name', () => {
    const problem = { option: 'plank', got: '', expected: 'How large is one plank?' };
    expect(read(render({ problems: [problem] }))).toBe('### How large is one plank?');
    const choices = [
      { label: '6 x 48 in', ask: 'planks plank: 6 x 48 in' },
      { label: '7 x 48 in', ask: 'planks plank: 7 x 48 in' },
    ];
    const rows = problemRows('AAAAAAAAAAA', true, { fix: undefined, again: false, choices });
    expect(buttonsOf({ components: rows })).toEqual([
      { id: 'choose:AAAAAAAAAAA:0', label: '6 x 48 in' },
      { id: 'choose:AAAAAAAAAAA:1', label: '7 x 48 in' },
      { id: 'mend:AAAAAAAAAAA', label: 'Fill in a form' },
    ]);
  });

  it('are sound messages, whatever was typed', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.record({ option: short, got: text, expected: text, fix: text }), { minLength: 1, maxLength: 9 }),
        async (all) => {
          const [first, ...rest] = all;
          if (!first) return;
          expect(await flawsOf(render({ problems: [first, ...rest] }), plain)).toEqual([]);
        },
      ),
      { numRuns: 25 },
    );
    const refusal = { why: 'w', call: 'c', cautions: [{ topic: 't', text: 'Do not cut.' }], data: unsafe('structure') };
    expect(read(render(refusal))).toMatch(/not safe[\s\S]*Do not cut\./);
    expect(read(render({ reference: 'ab12', outage: false }))).toContain('ab12');
  });
});

describe('hostile texts', () => {
  it('are more than two hundred, each different', () => {
    expect(new Set(HOSTILE).size).toBeGreaterThanOrEqual(200);
  });

  it.each([...HOSTILE])('do nothing: %j', async (evil) => {
    const table: Block = { kind: 'table', title: evil, columns: [evil, 'b'], rows: [[evil, evil]] };
    const blocks: Block[] = [
      { kind: 'text', text: evil },
      { kind: 'facts', title: evil, facts: [{ label: evil, value: evil }] },
      table,
    ];
    const cautions = [{ topic: 't', text: evil }];
    const all: Reply = {
      ...plain,
      headline: evil,
      blocks,
      assumed: [evil],
      cautions,
      actions: [{ label: evil, ask: evil }],
    };
    const problem = { option: evil, got: evil, expected: evil, fix: evil };
    const opened = renderSections(all, 'more') ?? [];
    for (const messages of [render(all), opened, render({ problems: [problem] })]) {
      expect(await flawsOf(messages, all)).toEqual([]);
      for (const message of messages) expect(acts(textOf(message))).toEqual([]);
    }
    expect(acts(`x ${escapedMarkdown(evil)}`)).toEqual([]);
    expect(escapedMarkdown(evil)).not.toMatch(/[\r\n]/);
  });

  it('are caught when they are not escaped', () => {
    const caught = HOSTILE.filter((evil) => acts(evil).length > 0);
    expect(caught.length).toBeGreaterThan(120);
  });

  it('stay what they say', () => {
    expect(
      read([
        { components: [{ type: 10, content: escapedMarkdown('*a* [b](https://c.d) `e` <@1> @here #1') }], files: [] },
      ]),
    ).toBe('*a* [b](https://c.d) `e` <@1> @here #1');
    expect(code('a`b')).toBe('`aˋb`');
    expect(label(`${'x'.repeat(79)}😀`, 80)).toBe(`${'x'.repeat(79)}…`);
  });
});

/** What of a text Discord would act on: mentions, links, formatting that is not ours, lines that look like another's. */
function acts(said: string): readonly string[] {
  // What is inside code is read as it is; what is escaped is not read as marks.
  const outside = said.replace(/\\[^0-9A-Za-z\s]/g, '·').replace(/```[\s\S]*?```|`[^`\n]+`/g, '·');
  const patterns: readonly (readonly [string, RegExp])[] = [
    ['pings all', /@(?:everyone|here)/],
    ['mentions', /<(?:@[!&]?|#|@&|a?:\w+:|t:|\/|id:|sound:)[^>\n]*>/],
    ['links', /\[[^\]\n]*\]\([^)\n]*\)|<?https?:\/\/\S/i],
    ['hides', /\|\|[\s\S]*\|\|/],
    ['strikes', /~~[\s\S]+~~/],
    ['underlines', /__[\s\S]+__/],
    ['opens code', /`/],
    ['turns direction', /[\u200e\u200f\u202a-\u202e\u2066-\u2069]/],
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
    ['controls', /[\u0000-\u0009\u000b-\u001f\u007f]/],
    ['quotes', /^\s*>/m],
    ['a heading of its own', /^(?!### )#{1,6}\s/m],
    ['a masked line', /^-# (?!Read|For instance|“)/m],
  ];
  return patterns.flatMap(([what, pattern]) =>
    pattern.test(outside) ? [`${what}: ${JSON.stringify(said.slice(0, 200))}`] : [],
  );
}
