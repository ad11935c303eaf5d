/** Answers as Slack messages: such as Slack takes, whatever is in them, and nothing in them that rings, links or pretends. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { briefOf, sectionsOf } from '../../src/chat/brief.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { render, renderPart, renderSection, type SlackMessage } from '../../src/platforms/slack/render.ts';
import { type Problem, type Reply, unsafe } from '../../src/reply/reply.ts';
import { answerTo, replyTo } from '../chat/asked.ts';
import { anyReply, anyText, HOSTILE_BITS } from '../contracts/arbitrary-reply.ts';
import { bare } from '../contracts/renderer-contract.ts';
import { flawsOf } from './payload.ts';
import { pressables } from './running.ts';
import { slackWords } from './words.ts';

const PLAIN: Reply = {
  headline: 'Buy 10 cartons.',
  blocks: [],
  assumed: [],
  cautions: [],
  sources: [],
  actions: [],
  audience: 'asker',
  data: { kind: 'any' },
};

/** Everything that Slack may be sent of a reply. */
function allOf(reply: Reply): readonly SlackMessage[] {
  return [
    ...render(reply, { id: 'abcdefghijk' }),
    ...render(reply, { id: 'abcdefghijk', shown: true, requested: reply.headline }),
    ...render({ ...reply, opens: 'more' }, { id: 'abcdefghijk', showable: true, changeable: true }),
    ...render(reply),
    ...reply.blocks.flatMap((_, place) => renderPart(reply, place) ?? []),
    ...[...sectionsOf(reply).map(({ id }) => id), 'more'].flatMap((id) => renderSection(reply, id) ?? []),
  ];
}

describe('any reply', () => {
  it('becomes messages that Slack takes, its headline first and every caution whole under Safety', () => {
    fc.assert(
      fc.property(anyReply, (reply) => {
        expect(allOf(reply).flatMap(flawsOf).slice(0, 3)).toEqual([]);
        const wordsOf = (messages: readonly SlackMessage[]) => bare(slackWords(messages.map(({ blocks }) => blocks)));
        const [brief, whole] = [wordsOf(render(reply, { id: 'abcdefghijk' })), wordsOf(render(reply))];
        for (const words of [brief, whole]) expect(words.startsWith(bare(reply.headline))).toBe(true);
        for (const words of [whole, wordsOf(renderSection(reply, 'safety') ?? [])])
          expect(reply.cautions.filter(({ text }) => !words.includes(bare(text)))).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });

  it('of five thousand rows is told in one message, its rows behind a button', () => {
    const rows = Array.from({ length: 5000 }, (_, i) => [`${i + 1}`, `${i} 3/4 in`, '😀', '<@U1>']);
    const reply: Reply = {
      ...PLAIN,
      blocks: [{ kind: 'table', title: 'Guide', columns: ['Row', 'Start', 'End', 'From'], rows }],
      cautions: [{ topic: 'knees', text: 'Wear pads.' }],
    };
    const messages = render(reply, { id: 'abcdefghijk' });
    expect(messages).toHaveLength(1);
    expect(pressables(messages).map(({ text }) => text?.text)).toContain('List');
    expect(allOf(reply).flatMap(flawsOf)).toEqual([]);
  });
});

/** Two hundred texts that would be something else in Slack's markup, or look like another message. */
const hostile = HOSTILE_BITS.flatMap((bit) => [
  bit,
  `${bit}${bit}`,
  `bedroom ${bit}`,
  `${bit} 12 x 14`,
  `*Take care*\n${bit}`,
  `&amp;${bit}`,
  `\`${bit}\``,
  `<${bit}>`,
]);

/** Texts within blocks that would begin a line of their own, or steer what is shown. */
function pretending(value: unknown, code = false): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((one) => pretending(one, code));
  if (typeof value !== 'object' || value === null) return [];
  const within = code || ('type' in value && value.type === 'rich_text_preformatted');
  return Object.entries(value).flatMap(([name, one]) => {
    if (typeof one !== 'string') return pretending(one, within);
    if (!['text', 'alt_text'].includes(name) || one === '\n') return [];
    const lines = within ? one.replaceAll('\n', '') : one;
    return /[\p{Cc}\u200e\u200f\u2028-\u202e\u2066-\u2069]/u.test(lines) ? [one] : [];
  });
}

describe('two hundred hostile texts', () => {
  it('are that many', () => {
    expect(new Set(hostile).size).toBeGreaterThanOrEqual(200);
  });

  it.each(hostile.map((text) => [text]))('%j is told as it is, wherever it stands', (evil) => {
    const reply: Reply = {
      ...PLAIN,
      headline: `Buy ${evil}`,
      blocks: [
        { kind: 'text', text: evil },
        { kind: 'facts', title: evil, facts: [{ label: evil, value: evil }] },
        { kind: 'table', title: evil, columns: [evil, 'b'], rows: [[evil, '']] },
        { kind: 'steps', title: evil, steps: [evil] },
        { kind: 'checklist', title: evil, items: [evil] },
        { kind: 'picture', drawing: { width: 360, height: 10, title: evil, alt: evil, shapes: [] } },
      ],
      assumed: [evil],
      cautions: [{ topic: 'any', text: evil }],
      sources: [{ title: evil, standing: 'reported' }],
      actions: [{ label: evil, ask: evil }],
    };
    const problem = { option: 'room', got: evil, expected: evil, fix: evil };
    const messages = [
      ...allOf(reply),
      ...render({ problems: [problem] }, { id: 'abcdefghijk' }),
      ...render({ why: evil, call: evil, cautions: [], data: unsafe('structure') }),
    ];
    expect(messages.flatMap(flawsOf)).toEqual([]);
    expect(messages.flatMap(({ blocks }) => pretending(blocks))).toEqual([]);
    expect(messages.filter(({ text }) => /[\p{Cc}\u2028-\u202e]/u.test(text.replaceAll('\n', '')))).toEqual([]);
    if (evil.includes('\n')) expect(allOf(reply).filter(({ text }) => text.includes(evil))).toEqual([]);
  });

  it('typed as asks ring nobody', async () => {
    for (const evil of HOSTILE_BITS) {
      for (const ask of [`planks room: ${evil}, plank: 7 x 48, 10 per carton`, `help ${evil}`, evil, `tape ${evil}`]) {
        const messages = render(await answerTo(ask), { id: 'abcdefghijk' });
        expect(messages.flatMap(flawsOf)).toEqual([]);
        expect(messages.flatMap(({ blocks }) => pretending(blocks))).toEqual([]);
      }
    }
  });
});

describe('the walker of limits', () => {
  const message = (block: object) => ({ text: 'x', blocks: [block] });

  it.each([
    [{ type: 'section', text: { type: 'mrkdwn', text: 'hello <!channel>' } }],
    [{ type: 'rich_text', elements: [{ type: 'rich_text_section', elements: [{ type: 'user', user_id: 'U1' }] }] }],
    [{ type: 'image', slack_file: { id: 'F123456789' } }],
    [{ type: 'actions', elements: [] }],
    [{ type: 'header', text: { type: 'plain_text', text: 'x'.repeat(151) } }],
    [{ type: 'table', rows: [[{ type: 'raw_text', text: '' }]] }],
    [{ type: 'table', rows: Array.from({ length: 101 }, () => [{ type: 'raw_text', text: 'x' }]) }],
    [{ type: 'divider', colour: 'red' }],
  ])('sees what Slack would not take: %j', (block) => {
    expect(flawsOf(message(block))).not.toEqual([]);
  });

  it('takes what it takes', () => {
    expect(flawsOf(message({ type: 'divider' }))).toEqual([]);
    expect(flawsOf({ text: 'a <b', blocks: [{ type: 'divider' }] })).not.toEqual([]);
  });
});

describe('a planks answer', () => {
  it('has its brief in one message, its sections behind buttons', async () => {
    const reply = await replyTo(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const messages = render(reply, { id: 'abcdefghijk', showable: true, changeable: true });
    expect(messages).toHaveLength(1);
    const { lead, lines, cautions } = briefOf(reply);
    const words = bare(slackWords(messages.map(({ blocks }) => blocks)));
    for (const said of [lead, ...lines, ...cautions]) expect(words).toContain(bare(said));
    for (const { text } of reply.cautions) expect(words).not.toContain(bare(text));
    const ids = pressables(messages).map(({ action_id }) => action_id);
    expect(ids).toEqual(['section.rows', 'section.plan', 'section.safety', 'section.open', 'ask.list', 'show']);
    expect(JSON.stringify(messages).match(/"style":"primary"/g)).toHaveLength(1);
  });

  it('shows the section that was itself asked for, and a question by its first line and choices', () => {
    const steps = { kind: 'steps', title: 'How', steps: ['Cut the board.'] } as const;
    const shown = (reply: Reply) => slackWords(render(reply, { id: 'a' }).map(({ blocks }) => blocks));
    expect(shown({ ...PLAIN, blocks: [steps] })).not.toContain('Cut the board.');
    expect(shown({ ...PLAIN, blocks: [steps], opens: 'how' })).toContain('Cut the board.');
    const problems = [{ option: 'plank', got: '', expected: 'How large is one plank?' }] as const;
    const choices = [{ label: '6 x 48 in', ask: 'planks plank: 6 x 48 in' }];
    const [question] = render({ problems, choices }, { id: 'a' });
    expect(question?.text).toBe('How large is one plank?');
    expect(JSON.stringify(question).match(/"style":"primary"/g)).toHaveLength(1);
    expect(pressables(question ? [question] : []).map(({ action_id }) => action_id)).toEqual(['choice.0']);
  });

  it('says to who cannot see it what stands in it: the lead, its figures, every caution of the brief', () => {
    fc.assert(
      fc.property(anyReply, (reply) => {
        const [first] = render(reply, { id: 'a' });
        const { lead, lines, cautions } = briefOf(reply);
        const heard = bare(
          (first?.text ?? '').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&'),
        );
        for (const said of [lead, ...lines, ...cautions].map(bare))
          expect(heard.length > 2000 || heard.includes(said)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('says so of a question too: each reason, what was read, what to type; and of a refusal who to call', () => {
    const heardOf = (answer: Answer): string => {
      const [first] = render(answer, { id: 'a' });
      return bare((first?.text ?? '').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&'));
    };
    const text = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 100 });
    const problem = fc.record({ option: fc.constant('room'), got: text, expected: text, fix: fc.option(text) });
    fc.assert(
      fc.property(fc.array(problem, { minLength: 1, maxLength: 5 }), text, text, (given, why, call) => {
        const [first, ...more] = given.map(({ fix, ...rest }) => (fix === null ? rest : { ...rest, fix }));
        if (!first) throw new Error('no problem');
        const question = heardOf({ problems: [first, ...more] });
        for (const { expected, got, fix } of [first, ...more] as readonly Problem[])
          for (const said of [expected, got, fix ?? '']) expect(question).toContain(bare(said));
        const cautions = [{ topic: 'any', text: why }];
        const refusal = heardOf({ why, call, cautions, data: unsafe('structure') });
        for (const said of [why, call]) expect(refusal).toContain(bare(said));
      }),
      { numRuns: 60 },
    );
    const long = { option: 'room', got: '', expected: 'How large?', fix: '12 x 14; '.repeat(500) };
    expect(heardOf({ problems: [long, { ...long, expected: 'Which plank?' }] })).toContain(bare('Which plank?'));
  });

  it('has a heading, at most six controls, and one of them first', () => {
    fc.assert(
      fc.property(anyReply, (reply) => {
        const messages = render(reply, { id: 'a', showable: true, changeable: true });
        const controls = pressables(messages);
        expect(controls.length).toBeLessThanOrEqual(6);
        const primary = JSON.stringify(messages).match(/"style":"primary"/g) ?? [];
        expect(primary.length).toBeLessThanOrEqual(1);
        expect(messages[0]?.blocks[0]?.type).toBe(
          reply.headline.replace(/\s+/g, ' ').trim().length <= 150 ? 'header' : 'rich_text',
        );
      }),
      { numRuns: 60 },
    );
  });

  it('of any texts never breaks a character in two', () => {
    fc.assert(
      fc.property(anyText(3000), (headline) => {
        const given = JSON.stringify(
          render(
            { ...PLAIN, headline: `😀${headline.repeat(3)}`, actions: [{ label: '😀'.repeat(60), ask: 'x' }] },
            { id: 'a' },
          ),
        );
        // A lone half that was typed is told as it is; none of ours is made.
        if (!/\\ud8|\\udc/.test(JSON.stringify(headline))) expect(given).not.toMatch(/\\ud[89a-f]/i);
      }),
      { numRuns: 60 },
    );
  });
});
