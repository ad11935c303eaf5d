/** Faults told to whoever runs the bot: the reference, and the whole cause. */

import { Writable } from 'node:stream';
import { expect, it } from 'vitest';
import { faultsTo } from '../../src/server/standard-error.ts';

function written(cause: unknown): string {
  let text = '';
  const output = new Writable({
    write(chunk, _encoding, done) {
      text += String(chunk);
      done();
    },
  });
  faultsTo(output).fault('0badcafe', cause);
  return text;
}

it('an error comes with its message and where it was thrown', () => {
  const text = written(new RangeError('no wall 9'));
  expect(text).toMatch(/^fault 0badcafe: RangeError: no wall 9\n/);
  expect(text).toContain('faults.test.ts');
});

it('an error without a stack comes with its message', () => {
  const bare = new Error('no wall 9');
  delete bare.stack;
  expect(written(bare)).toBe('fault 0badcafe: no wall 9\n');
});

it.each([
  ['a word', 'fault 0badcafe: a word\n'],
  [undefined, 'fault 0badcafe: undefined\n'],
])('whatever else was thrown is told: %s', (cause, line) => expect(written(cause)).toBe(line));

it('what is behind an error comes behind it, once each', () => {
  const root = new Error('connection refused');
  const middle = new Error('no answer', { cause: root });
  root.cause = middle;
  const text = written(new Error('not saved', { cause: middle }));
  expect(text).toMatch(/^fault 0badcafe: Error: not saved\n/);
  expect(text.split('\n').filter((line) => line.startsWith('  because'))).toEqual([
    '  because: Error: no answer',
    '  because: Error: connection refused',
  ]);
});
