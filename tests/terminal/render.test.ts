/** Answers as terminal text: every kind of block, problems, refusals and faults; nothing dropped, nothing too wide, nothing that drives the terminal. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/chat/pipeline.ts';
import { DEMO_ASKS } from '../../src/platforms/terminal/demo.ts';
import { render, type TerminalPage } from '../../src/platforms/terminal/render.ts';
import { type Block, type Reply, unsafe } from '../../src/reply/reply.ts';
import { answerTo, replyTo } from '../chat/asked.ts';

const PAPER: TerminalPage = { width: 60, colour: false };

function replyOf(part: Partial<Reply>): Reply {
  return {
    headline: 'Buy 10 cartons.',
    blocks: [],
    assumed: [],
    cautions: [],
    sources: [],
    actions: [],
    audience: 'asker',
    data: { kind: 'test' },
    ...part,
  };
}

function unbold(text: string): string {
  return text.replaceAll('\u001b[1m', '').replaceAll('\u001b[22m', '');
}

function shown(block: Block, sheet = PAPER): readonly string[] {
  return render(replyOf({ blocks: [block] }), sheet)
    .split('\n')
    .slice(2);
}

describe('blocks', () => {
  it('text', () => expect(shown({ kind: 'text', text: 'Mind the gap.' })).toEqual(['Mind the gap.']));

  it('facts, with and without a title', () => {
    const facts = [{ label: 'Cartons', value: '10 cartons of 10' }];
    expect(shown({ kind: 'facts', facts })).toEqual(['Cartons: 10 cartons of 10']);
    expect(shown({ kind: 'facts', title: 'What to buy', facts })).toEqual(['What to buy', 'Cartons: 10 cartons of 10']);
  });

  it('steps, numbered, their further lines indented', () => {
    const steps = ['Lay.', 'Measure each end piece in place before you cut it, for walls wander.'];
    expect(shown({ kind: 'steps', title: 'How', steps })).toEqual([
      'How',
      '1. Lay.',
      '2. Measure each end piece in place before you cut it, for',
      '   walls wander.',
    ]);
  });

  it('a checklist', () => {
    expect(shown({ kind: 'checklist', title: 'Rules', items: ['One lot.'] })).toEqual(['Rules', '[ ] One lot.']);
  });

  const table: Block = {
    kind: 'table',
    title: 'Guide',
    columns: ['Row', 'Start', 'End'],
    rows: [
      ['1', 'whole', ''],
      ['2', '42"', '17 1/2"'],
    ],
  };

  it('a table', () => {
    expect(shown(table)).toEqual([
      'Guide',
      'Row  Start  End',
      '---  -----  -------',
      '1    whole',
      '2    42"    17 1/2"',
    ]);
  });

  it('a table as a list where the terminal is narrow, without its empty cells', () => {
    expect(shown(table, { width: 40, colour: false })).toEqual([
      'Guide',
      'Row: 1',
      'Start: whole',
      '',
      'Row: 2',
      'Start: 42"',
      'End: 17 1/2"',
      '',
    ]);
  });

  it('a table as a list where it has more columns than fit', () => {
    const columns = Array.from({ length: 8 }, (_, i) => `Column ${i}`);
    const lines = shown({ kind: 'table', title: 'Wide', columns, rows: [columns] });
    expect(lines).toContain('Column 7: Column 7');
  });
});

describe('around the blocks', () => {
  const full = replyOf({
    assumed: ['12x14 read as feet'],
    cautions: [{ topic: 'knees', text: 'Wear pads.' }],
    sources: [
      { title: 'Handbook', publisher: 'Press', year: 2018, section: 'p. 12', standing: 'published' },
      { title: 'Custom', standing: 'from memory' },
      { title: 'Custom', standing: 'from memory' },
    ],
    actions: [{ label: 'Turn the rows', ask: 'planks 12x14' }],
  });

  it('what was assumed, cautions, sources (each once) and next asks', () => {
    expect(render(full, PAPER).split('\n')).toEqual([
      'Buy 10 cartons.',
      '',
      'How it was read',
      '- 12x14 read as feet',
      '',
      'Safety',
      '- Wear pads.',
      '',
      'Sources',
      '- Handbook, Press, 2018, p. 12 (published)',
      '- Custom (from memory)',
      '',
      'You could also ask',
      '- Turn the rows: planks 12x14',
    ]);
  });

  it('titles and the headline stand out where there is colour, and only there', () => {
    const coloured = render(full, { width: 60, colour: true });
    expect(coloured.split('\n')[0]).toBe('\u001b[1mBuy 10 cartons.\u001b[22m');
    expect(unbold(coloured)).toBe(render(full, PAPER));
  });
});

describe('what is no reply', () => {
  it('one problem', () => {
    const problem = { option: 'gap', got: 'banana', expected: 'A length.', fix: 'planks 12x14, gap: 3/8 in' };
    expect(render({ problems: [problem] }, PAPER).split('\n')).toEqual([
      'I need one more thing',
      'gap: A length.',
      '  Read: banana',
      '  Type instead: planks 12x14, gap: 3/8 in',
    ]);
  });

  const gap = { option: 'gap', got: 'banana', expected: 'A length.', fix: 'planks 12x14' };

  it('several problems that one ask mends: the ask once, below', () => {
    const lines = render({ problems: [gap, { ...gap, option: 'room', got: '' }] }, PAPER).split('\n');
    expect(lines).toEqual([
      'I need one more thing',
      'gap: A length.',
      '  Read: banana',
      'room: A length.',
      '  Read: (nothing)',
      'Type instead: planks 12x14',
    ]);
  });

  it('several problems with a fix each', () => {
    const text = render({ problems: [gap, { ...gap, fix: 'tape 3' }] }, PAPER);
    expect(text).toContain('  Type instead: planks 12x14');
    expect(text).toContain('  Type instead: tape 3');
  });

  it('a refusal, with whom to call and its cautions', () => {
    const cautions = [{ topic: 'asbestos', text: 'Do not sand it.' }];
    const refusal: Answer = {
      why: 'It may hold asbestos.',
      call: 'A licensed contractor.',
      cautions,
      data: unsafe('asbestos'),
    };
    expect(render(refusal, PAPER).split('\n')).toEqual([
      'This is not safe to work out from here',
      'It may hold asbestos.',
      'Who to call: A licensed contractor.',
      '',
      'Safety',
      '- Do not sand it.',
    ]);
  });

  it('a fault, by its reference', () => {
    expect(render({ reference: '0badcafe', outage: false }, PAPER).replaceAll('\n', ' ')).toContain(
      'this reference: 0badcafe.',
    );
  });
});

describe('control characters', () => {
  it('that an asker typed do not reach the terminal, wherever they are said back', async () => {
    const evil = '\u001b[2J\u001b]0;owned\u0007\u202e\u009b31m\u001b[1m\u2028\r';
    const asks = [
      `planks room: 12 x 14, plank: 7 x 48, gap: ${evil}`,
      `tape 1' + ${evil} 2'`,
      `sources about: ${evil}`,
      `help ${evil}`,
    ];
    for (const ask of asks) {
      const text = render(await answerTo(ask), PAPER);
      // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what must not be there
      expect(text.replaceAll('\n', '')).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2028\u2029]/);
      expect(text).toContain('31m');
    }
  });

  it('in our own titles do not either', () => {
    const text = render(replyOf({ blocks: [{ kind: 'steps', title: 'A\u001b[2Jroom\nof steps', steps: [] }] }), PAPER);
    expect(text).toBe('Buy 10 cartons.\n\nA [2Jroom of steps');
  });
});

describe('real answers', () => {
  const asks = [
    ...DEMO_ASKS,
    "planks room: a room with a name that is longer than any terminal that anybody has: 12' x 14', plank: 6 x 48 in, 10 per carton",
    'planks room: 12 x 14 x 8, gap: banana, kerf: 2 in, direction: up, pattern: constructor',
    'help',
    'help planks',
    'sources',
    'safety',
  ];

  it('are never wider than the terminal, and keep every caution, at any width', async () => {
    const answers = await Promise.all(asks.map((ask) => answerTo(ask)));
    const tight = (text: string): string => text.replace(/\s/g, '');
    fc.assert(
      fc.property(
        fc.constantFrom(...answers),
        fc.integer({ min: 20, max: 120 }),
        fc.boolean(),
        (answer, width, colour) => {
          const text = unbold(render(answer, { width, colour }));
          expect(text.split('\n').filter((line) => [...line].length > width)).toEqual([]);
          const cautions = 'cautions' in answer ? answer.cautions : [];
          for (const caution of cautions) expect(tight(text)).toContain(tight(caution.text));
        },
      ),
      { numRuns: 150 },
    );
  });

  it('tell every block and every line of it', async () => {
    const reply = await replyTo(DEMO_ASKS[1] ?? '');
    const words = new Set(render(reply, { width: 120, colour: false }).split(/\s+/));
    const said = JSON.stringify([reply.headline, reply.assumed, reply.blocks.map((block) => Object.values(block))]);
    const numbers = said.match(/(?<=[ "])\d+(?=[ "])/g) ?? [];
    expect(numbers.length).toBeGreaterThan(100);
    expect(numbers.filter((number) => ![...words].some((word) => word.includes(number)))).toEqual([]);
  });
});
