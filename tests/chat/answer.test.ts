/** The pipeline: answers in order, faults with a reference and their cause, and problems whose fix is a whole ask. */

import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Command, type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { LONGEST_ASK } from '../../src/chat/command-line.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { count } from '../../src/input/options.ts';
import { type Reply, unsafe } from '../../src/reply/reply.ts';
import { Outage } from '../../src/storage/types.ts';
import { sayFault } from '../../src/text/chat-text.ts';
import { answersTo, answerTo, problemsOf, replyTo } from './asked.ts';

function reply(headline: string): Reply {
  return {
    headline,
    blocks: [],
    assumed: [],
    cautions: [],
    sources: [],
    actions: [],
    audience: 'asker',
    data: { kind: 'test' },
  };
}

/** As it leaves the pipeline for `rows 2`. */
function shown(headline: string): Answer {
  return { ...reply(headline), form: { command: 'rows', told: { many: '2' } } };
}

function rows(run: (context: Context) => Outcome | AsyncIterable<Outcome>): readonly Command[] {
  const number = { summary: 'Number', least: 1, most: 9 };
  return [
    defineCommand({
      name: 'rows',
      summary: 'Counts rows',
      options: z.object({ many: count(number), more: count({ ...number, standard: '1' }) }),
      examples: [{ ask: 'rows 2', headline: '' }],
      run: (_options, context) => run(context),
    }),
  ];
}

async function askedOf(commands: readonly Command[], text = 'rows 2') {
  const faults: { reference: string; cause: unknown }[] = [];
  const fault = (reference: string, cause: unknown): void => void faults.push({ reference, cause });
  return { answers: await answersTo(text, { commands, fault }), faults };
}

describe('answers', () => {
  it('come one for a plain outcome', async () => {
    const { answers, faults } = await askedOf(rows(() => reply('Two rows.')));
    expect(answers).toEqual([shown('Two rows.')]);
    expect(faults).toEqual([]);
  });

  it('come in order, the last one standing', async () => {
    const commands = rows(async function* () {
      yield reply('About two.');
      await Promise.resolve();
      yield { why: 'Not safe.', call: 'An engineer.', cautions: [], data: unsafe('structure') };
      yield reply('Two, proven.');
    });
    const { answers } = await askedOf(commands);
    expect(answers).toEqual([
      shown('About two.'),
      { why: 'Not safe.', call: 'An engineer.', cautions: [], data: unsafe('structure') },
      shown('Two, proven.'),
    ]);
  });

  it('offer the same ask otherwise through the context', async () => {
    const asks: string[] = [];
    const commands = rows((context) => {
      asks.push(context.again({ more: '3' }), context.again({}));
      return reply('');
    });
    await askedOf(commands, 'rows many: 2, more: 5');
    expect(asks).toEqual(['rows many: 2, more: 3', 'rows many: 2, more: 5']);
  });
});

describe('a fault', () => {
  const cause = new Error('the saw is broken');

  it('gives a short reference to the asker, and the same with its cause to the port', async () => {
    const { answers, faults } = await askedOf(
      rows(() => {
        throw cause;
      }),
    );
    expect(answers).toEqual([{ reference: faults[0]?.reference, outage: false }]);
    expect(faults).toHaveLength(1);
    expect(faults[0]?.cause).toBe(cause);
    expect(faults[0]?.reference).toMatch(/^[0-9a-f]{8}$/);
    expect(JSON.stringify(answers)).not.toContain('saw');
  });

  it('has a reference of its own each time', async () => {
    const commands = rows(() => {
      throw cause;
    });
    const both = [await askedOf(commands), await askedOf(commands)].map(({ faults }) => faults[0]?.reference);
    expect(new Set(both).size).toBe(2);
  });

  it('behind a first answer comes after it', async () => {
    const { answers, faults } = await askedOf(
      rows(async function* () {
        yield reply('About two.');
        throw cause;
      }),
    );
    expect(answers).toEqual([shown('About two.'), { reference: faults[0]?.reference, outage: false }]);
  });

  it('is not what somebody types', async () => {
    const { answers, faults } = await askedOf(
      rows(() => reply('')),
      'rows banana',
    );
    expect(answers.flatMap(problemsOf)).toHaveLength(1);
    expect(faults).toEqual([]);
  });
});

describe('too long an ask', () => {
  it('is refused before anything looks at it, and one just short of it is read', async () => {
    const padded = (length: number) => 'safety'.padEnd(length - 'laying'.length).concat('laying');
    expect(problemsOf(await answerTo(padded(LONGEST_ASK + 1)))).toMatchObject([
      { option: 'ask', got: `${LONGEST_ASK + 1} characters` },
    ]);
    expect(await replyTo(padded(LONGEST_ASK))).toMatchObject({ data: { kind: 'safety', task: 'laying' } });
  });
});

describe('problems', () => {
  const ASK =
    'planks room: 12 x 14 x 8, plank: 7 x 48, gap: banana, kerf: 2 in, spares: -1, tax: 300%, pattern: zigzag, direction: up';

  it('of one ask come back together, in the order of the options', async () => {
    const options = problemsOf(await answerTo(ASK)).map(({ option }) => option);
    expect(options).toEqual(['room', 'plank', 'pattern', 'direction', 'gap', 'kerf', 'spares', 'tax']);
  });

  it('each offer the whole ask, mended, with all that was typed', async () => {
    const given = await answerTo(
      'planks room: bedroom 2 12 x 14; hall 3 x 11 bath 5 x 8, plank: 6 x 48 in, 10 per carton, pattern: hafl, spares: 4',
    );
    const problems = problemsOf(given);
    expect(problems.length).toBeGreaterThan(1);
    for (const { fix } of problems) {
      expect(fix).toBe(
        'planks room: bedroom 2: 12 x 14; hall 3 x 11; bath 5 x 8, plank: 6 x 48 in, 10 per carton, pattern: half, spares: 4',
      );
      expect((await replyTo(fix ?? '')).headline).toBeTruthy();
    }
  });

  it('of which one cannot be mended offer no ask, and the form with all that was typed', async () => {
    const given = await answerTo(`${ASK}, stagger: 7 in`);
    for (const problem of problemsOf(given)) expect(problem).not.toHaveProperty('fix');
    expect(given).toMatchObject({
      form: { command: 'floor planks', told: { room: '12 x 14 x 8', gap: 'banana', stagger: '7 in' } },
    });
  });

  it('that a command itself finds are told in words where a wall would have to be made up', async () => {
    const given = await answerTo("planks room: 12' x 14', plank: 6 x 48 in, 10 per carton, direction: wall 9");
    const [problem] = problemsOf(given);
    expect(problem).toMatchObject({ option: 'direction', expected: expect.stringContaining('walls 1 to 4') });
    expect(problem).not.toHaveProperty('fix');
  });
});

describe('a store that does not answer', () => {
  it('is a fault that says so, not silence', async () => {
    const commands = rows(() => {
      throw new Outage('connection refused');
    });
    const { answers, faults } = await askedOf(commands);
    expect(answers).toEqual([{ reference: faults[0]?.reference, outage: true }]);
    expect(sayFault('abcd', true)).toMatch(/^Not saved: .* try again in a minute\. Reference: abcd\.$/);
  });
});

describe('a form', () => {
  it('goes with problems: the ask so far', async () => {
    expect(await answerTo('planks room: 12 by, plank: 6 x 48 in, 10 per carton')).toMatchObject({
      problems: [{ option: 'room' }],
      form: { command: 'floor planks', told: { room: '12 by', plank: '6 x 48 in, 10 per carton' } },
    });
  });

  it('goes with what a message tells, and never with a sample', async () => {
    expect(await answerTo('my bedroom is 12x14, planks 7 x 48 in, how many boxes?')).toMatchObject({
      form: { command: 'floor planks', told: { room: expect.stringContaining('12') } },
    });
    expect(await answerTo('blorp fnord wibble')).not.toHaveProperty('form');
  });
});
