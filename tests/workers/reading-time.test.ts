/** Reading is stopped in the midst of a pattern, only by the time it really takes, and the one who typed reads why. */

import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { z } from 'zod';
import { commands } from '../../commands/all.ts';
import { defineCommand } from '../../src/chat/command.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES, read, reader } from '../../src/input/reading.ts';
import { limitReading, readInTime, readWithin } from '../../src/workers/time-limits.ts';
import { problemsOf } from '../chat/asked.ts';

/** Tries two ways for every letter: with these 40 it would take hours. */
const TWO_WAYS = /^(?:a|a)*$/;
const HOURS = `${'a'.repeat(40)}b`;

/** A clock of processor time that moves so many milliseconds a look. */
const clock = (...steps: number[]): (() => number) => {
  let now = 0;
  return () => {
    now += steps.shift() ?? 0;
    return now;
  };
};
/** Holds the thread for so many milliseconds. */
const busy = (milliseconds: number): void => {
  const until = process.hrtime.bigint() + BigInt(milliseconds) * 1_000_000n;
  while (process.hrtime.bigint() < until);
};

describe('reading', () => {
  it('gives what is read, and throws what reading throws', () => {
    const limits = { hold: 1000, used: clock() };
    expect(readWithin(() => 'read', limits)).toEqual({ value: 'read' });
    expect(readWithin(() => undefined, limits)).toEqual({ value: undefined });
    const wrong = new RangeError('wrong');
    expect(() =>
      readWithin(() => {
        throw wrong;
      }, limits),
    ).toThrow(wrong);
  });

  it.each([
    ['test', () => TWO_WAYS.test(HOURS)],
    ['exec', () => TWO_WAYS.exec(HOURS)],
    ['match', () => HOURS.match(TWO_WAYS)],
    ['matchAll', () => [...HOURS.matchAll(/(?:a|a)*c/g)]],
    ['replace', () => HOURS.replace(/(?:a|a)*c/g, '')],
    ['split', () => HOURS.split(/(?:a|a)*c/)],
    ['search', () => HOURS.search(/(?:a|a)*c/)],
    ['no pattern at all', () => busy(3_600_000)],
  ])('is stopped in the midst of %s', (_, work) => {
    // Two attempts that had all the time of the machine.
    expect(readWithin(work, { hold: 20, used: clock(0, 100, 0, 100) })).toBeUndefined();
    // Nothing of it is left over: what comes next is read as ever.
    expect(readWithin(() => TWO_WAYS.test('aaa'), { hold: 1000, used: clock() })).toEqual({ value: true });
  });

  it('takes longer where others had the machine: that is not the text’s fault', () => {
    const looks = vi.fn(clock());
    // 20, 40 and 80 ms of which the thread had next to nothing; it is done within the 160 that come then, or the 320.
    expect(readWithin(() => busy(120), { hold: 20, used: looks })).toEqual({ value: undefined });
    // Before and after each attempt that was stopped, and before the last. One may be stopped before it calls anything.
    expect(looks.mock.calls.length).toBeGreaterThanOrEqual(7);
  });

  it('ends on a machine that has no time for it at all', () => {
    const looks = vi.fn(clock());
    expect(readWithin(() => busy(3_600_000), { hold: 5, used: looks })).toBeUndefined();
    // Six attempts, each between two looks.
    expect(looks).toHaveBeenCalledTimes(12);
  });

  it('within reading has the time of the whole', () => {
    const whole = (): string => readInTime(() => `${readInTime(() => TWO_WAYS.test(HOURS))}`);
    expect(readWithin(() => readInTime(() => 'inner'), { hold: 1000, used: clock() })).toEqual({ value: 'inner' });
    expect(readWithin(whole, { hold: 20, used: clock(0, 100, 0, 100) })).toBeUndefined();
  });
});

describe('whoever typed it', () => {
  const stopped = (): never => readInTime(() => busy(3_600_000) as never);
  let unlimited: () => void;
  beforeAll(() => {
    unlimited = limitReading();
  });
  afterAll(() => unlimited());

  const slow = (hidden: (text: string) => void) =>
    defineCommand({
      name: 'slowly',
      summary: 'Reads slowly',
      options: z.object({
        text: reader({ kind: 'text', summary: 'A text', example: 'one' }, (text) => {
          hidden(text);
          return read(text);
        }),
      }),
      examples: [{ ask: 'slowly text: one', headline: 'One.' }],
      run: ({ text }) => {
        if (text.includes('late')) stopped();
        throw new Error('never reached');
      },
    });
  const hang = (text: string): void => {
    if (text.includes('hang')) busy(3_600_000);
  };

  it.each(['slowly text: hang', 'slowly text: late'])('reads why, and nothing is a fault: %s', async (text) => {
    const fault = vi.fn();
    const given = [];
    const request = { asker: { platform: 'discord', id: '1' }, preferences: DEFAULT_PREFERENCES, text } as const;
    for await (const one of answer(request, [slow(hang), ...commands], { fault })) given.push(one);
    expect(fault).not.toHaveBeenCalled();
    expect(given).toHaveLength(1);
    const [problem] = problemsOf(given[0] as never);
    expect(problem).toMatchObject({ expected: expect.stringContaining('too long to read, so I stopped') });
    expect(problem?.got).toContain(text.includes('hang') ? 'hang' : 'late');
    expect(problem?.fix).not.toBe('');
  });

  it('has a Problem from the grammar, for whoever only takes a line apart', () => {
    const parsed = parseLine('slowly hang', [slow(hang), ...commands]);
    expect(parsed).toMatchObject({ ok: false, problems: [{ got: 'slowly hang' }] });
  });
});
