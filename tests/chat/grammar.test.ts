/** Lines taken apart: pairs in any order, commas that belong to values, near misses, and commands with and without their group. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { commands } from '../../commands/all.ts';
import { defineCommand } from '../../src/chat/command.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { askLine, fullName, optionsOf } from '../../src/input/command-shape.ts';
import { count, text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { type Problem, unsafe } from '../../src/reply/reply.ts';

function given(line: string): Record<string, string> {
  const parsed = parseLine(line, commands);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ expected }) => expected).join(' '));
  return { command: parsed.command.name, ...Object.fromEntries(parsed.optionTexts) };
}

function problems(line: string): readonly Problem[] {
  const parsed = parseLine(line, commands);
  return parsed.ok ? [] : parsed.problems;
}

describe('pairs', () => {
  const pairs = ['room: 12x14, hall', 'plank: 6 x 48 in, 10 per carton', 'gap: 3/8 in', 'shortest-end: 10 in'];

  it('may come in any order', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(pairs, { minLength: 4 }), (order) => {
        expect(given(`planks ${order.join(', ')}`)).toEqual({
          command: 'planks',
          room: '12x14, hall',
          plank: '6 x 48 in, 10 per carton',
          gap: '3/8 in',
          'shortest-end': '10 in',
        });
      }),
    );
  });

  it('keep every comma that no option follows, and lose those between pairs', () => {
    expect(given('planks room: 3,8 x 4,2 m, plank: 180 x 1220 mm, 8 per carton, 31,90 € a carton,')).toEqual({
      command: 'planks',
      room: '3,8 x 4,2 m',
      plank: '180 x 1220 mm, 8 per carton, 31,90 € a carton',
    });
  });

  it('may stand behind a colon after the command', () => {
    expect(given('project new: Upstairs flat')).toEqual({ command: 'new', name: 'Upstairs flat' });
    expect(given('Tape: 3 + 4')).toEqual({ command: 'tape', sum: '3 + 4' });
    expect(given('planks: room: 12x14')).toEqual({ command: 'planks', room: '12x14' });
  });

  it('need no comma or space between them', () => {
    expect(given('planks room:12x14 plank:6x48 , 10 per carton;gap:1/4')).toEqual({
      command: 'planks',
      room: '12x14',
      plank: '6x48 , 10 per carton',
      gap: '1/4',
    });
  });

  it('need no colon before the figures of a plank, a pattern or a direction where another has one', () => {
    expect(given("planks room 12' x 14', plank 6x48 in, 10 per carton, pattern: half, direction short")).toEqual({
      command: 'planks',
      room: "room 12' x 14'",
      plank: '6x48 in, 10 per carton',
      pattern: 'half',
      direction: 'short',
    });
    expect(given('planks room: plank store 12x14; hall 3 x 9, plank: 6x48')).toEqual({
      command: 'planks',
      room: 'plank store 12x14; hall 3 x 9',
      plank: '6x48',
    });
  });

  it('give text without a name to the first option', () => {
    expect(given("planks 12' x 14', plank: 6x48")).toEqual({ command: 'planks', room: "12' x 14'", plank: '6x48' });
    expect(given("tape 15' - 2 x 4'")).toEqual({ command: 'tape', sum: "15' - 2 x 4'" });
  });

  it('are known in capitals, with a space for the hyphen, and with a space before the colon', () => {
    expect(given('PLANKS Room: 12x14 SHORTEST END : 10 in, narrowest strip: 3 in')).toEqual({
      command: 'planks',
      room: '12x14',
      'shortest-end': '10 in',
      'narrowest-strip': '3 in',
    });
  });

  it('leave a room named with a colon to the rooms', () => {
    expect(given('planks living: 12x14; hall: 3x11, plank: 6x48')).toEqual({
      command: 'planks',
      room: 'living: 12x14; hall: 3x11',
      plank: '6x48',
    });
  });

  it('do not begin inside a word', () => {
    expect(given('planks room: bedroom: 11x12, plank: 6x48').room).toBe('bedroom: 11x12');
  });

  it('read the line that askLine writes', () => {
    const value = fc.stringMatching(/^[a-z0-9](?:[a-z0-9 ,.'"x]{0,20}[a-z0-9])?$/);
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom('room', 'plank', 'gap', 'tax'), value), (typed) => {
        const [planks] = commands.filter(({ name }) => name === 'planks');
        if (!planks) throw new Error('no planks');
        expect(given(askLine(planks, new Map(Object.entries(typed))))).toEqual({ command: 'planks', ...typed });
      }),
    );
  });
});

describe('an option told twice', () => {
  it('is told once by the fix, as it was told last', () => {
    const [problem, ...more] = problems('planks 10x10, room: 12x14, plank: 6x48, gap: 1/4 in, gap: 3/8 in');
    expect([problem, ...more].map((one) => one?.expected)).toEqual([
      'Give room once: it was read both as “10x10” and as “12x14”.',
      'Give gap once: it was read both as “1/4 in” and as “3/8 in”.',
    ]);
    expect(given(problem?.fix ?? '')).toEqual({ command: 'planks', room: '12x14', plank: '6x48', gap: '3/8 in' });
  });

  it('counts only when something was told before', () => {
    expect(given('planks gap: gap: 3/8 in')).toEqual({ command: 'planks', gap: '3/8 in' });
  });
});

it('a colon before anything is no option of a command without options', () => {
  expect(problems(':skull:')).toHaveLength(1);
  expect(problems('project archive: x')).toBeInstanceOf(Array);
});

describe('a misspelt option', () => {
  it.each([
    ['plnk', 'plank'],
    ['rooms', 'room'],
    ['gep', 'gap'],
    ['patern', 'pattern'],
    ['stager', 'stagger'],
  ])('%s is answered with %s', (typed, near) => {
    const [problem, ...more] = problems(`planks ${typed}: 7x48`);
    expect(more).toEqual([]);
    expect(problem?.expected).toBe(`There’s no option “${typed}”; the nearest is “${near}”.`);
    expect(given(problem?.fix ?? '')).toEqual({ command: 'planks', [near]: '7x48' });
  });

  it('and another come back together, and one fix mends both', () => {
    const both = problems('planks room: 12x14, plnk: 6x48, patern: half');
    expect(both.map(({ got }) => got)).toEqual(['plnk:', 'patern:']);
    for (const { fix } of both)
      expect(given(fix ?? '')).toEqual({ command: 'planks', room: '12x14', plank: '6x48', pattern: 'half' });
  });
});

describe('a word before a colon that is no option', () => {
  const strict = commands.flatMap((command) =>
    optionsOf(command).flatMap(({ name, colons, example }) => (colons === 'any' ? [] : [{ command, name, example }])),
  );

  it('is a Problem behind every option of every command, and is swallowed by none', () => {
    expect(strict.length).toBeGreaterThan(100);
    for (const { command, name, example } of strict) {
      const line = `${fullName(command)} ${name}: ${example}, remark: sewage everywhere`;
      const [problem] = problems(line);
      expect(problem, line).toMatchObject({ option: 'ask', got: 'remark: sewage everywhere' });
      expect(problem?.expected, line).toContain('has no option “remark”');
    }
  });

  it.each([
    ['moisture readings: 4 5 4, colour: grey', 'colour: grey'],
    ['tearout room: 12x14, built: 1995, found: sewage', 'found: sewage'],
    ['planks room: 12x14, found: sewage, plank: 6 x 48 in, 10 per carton', 'found: sewage'],
    ['tearout 12x14, below: plywood, wet: yes', 'wet: yes'],
    ['project settings units: metric, planet: mars', 'planet: mars'],
  ])('%s', (line, got) => expect(problems(line).map((problem) => problem.got)).toEqual([got]));

  it('stays with a name, a note, a walk and a grid', () => {
    expect(given("planks room: living: walk 12' right 10' right 12' right 10'").room).toContain('living: walk');
    expect(given('planks room: hall: about 3 x 9; bedroom: 11x12').room).toBe('hall: about 3 x 9; bedroom: 11x12');
    expect(given('level readings: grid 2 feet: 0 1/8; 0 1/4').readings).toBe('grid 2 feet: 0 1/8; 0 1/4');
    expect(given('project log note remember: buy tape').do).toBe('note remember: buy tape');
    expect(given('project pick plank: 6 x 48 in, 10 per carton').pick).toBe('plank: 6 x 48 in, 10 per carton');
  });
});

describe('a command', () => {
  it.each([
    'planks 12x14',
    'floor planks 12x14',
    '/planks 12x14',
    '/floor  planks 12x14',
    'Floor Planks 12x14',
    ' planks 12x14',
  ])('%s is planks', (line) => expect(given(line)).toEqual({ command: 'planks', room: '12x14' }));

  it.each([
    ['plank room: 12x14', 'planks'],
    ['floor plank room: 12x14', 'planks'],
    ['floor  plnks  room: 12x14', 'planks'],
    ['tpe room: 12x14', 'tape'],
    ['saftey tear-out', 'safety'],
    ['halp', 'help'],
  ])('%s gets the nearest, %s', (line, name) => {
    const [problem, ...more] = problems(line);
    expect(more).toEqual([]);
    expect(problem?.option).toBe('ask');
    expect(given(problem?.fix ?? '').command).toBe(name);
  });

  it('keeps what was told behind a misspelt one', () => {
    const [problem] = problems('floor  plnks  room: 12x14, plank: 6x48');
    expect(given(problem?.fix ?? '')).toEqual({ command: 'planks', room: '12x14', plank: '6x48' });
  });

  it('is put before a line that begins with one of its options', () => {
    const [problem] = problems('plank: 7x48, room: 12x14');
    expect(given(problem?.fix ?? '')).toEqual({ command: 'planks', plank: '7x48', room: '12x14' });
  });

  it('is planks where a room stands alone, and asks back the plank', () => {
    const parsed = parseLine('12x14', commands);
    if (parsed.ok) throw new Error('it was read');
    expect(parsed.problems[0]).toMatchObject({ option: 'plank', fix: undefined });
    expect(parsed.about?.command.name).toBe('planks');
    expect([...(parsed.about?.optionTexts ?? [])]).toEqual([['room', '12x14']]);
  });

  it.each(['', '   ', '/', 'xylophone', '😀', '🙂: 3'])('“%s” is none: what can be asked is told in words', (line) => {
    const [problem] = problems(line);
    expect(problem).toMatchObject({ option: 'ask', expected: expect.stringMatching(/ask|Ask/) });
    expect(problem).not.toHaveProperty('fix');
    expect(problem?.expected).not.toMatch(/\d/);
  });
});

describe('any line', () => {
  const echo = defineCommand({
    name: 'echo',
    summary: 'Says it again',
    options: z.object({
      words: text({ summary: 'Words', example: 'hello' }, (typed) => read(typed)),
      times: count({ summary: 'How often', standard: '1', least: 1, most: 9 }),
    }),
    examples: [{ ask: 'echo hello', headline: 'hello' }],
    run: () => ({ why: '', call: '', cautions: [], data: unsafe('structure') }),
  });

  it('is taken apart without a throw, and its values are pieces of it', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 20 }),
      fc.constantFrom('words:', 'times:', 'wrds:', ', ', ';', ' '),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), (pieces) => {
        const line = `echo ${pieces.join('')}`;
        const parsed = parseLine(line, [echo]);
        if (parsed.ok) for (const value of parsed.optionTexts.values()) expect(line).toContain(value);
        else expect(parsed.problems.map(({ fix }) => fix?.trim())).not.toContain('');
      }),
      { numRuns: 60 },
    );
  });
});
