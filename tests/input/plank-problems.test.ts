/** Planks that cannot be read: what is told, and a fix that is read. */

import { describe, expect, it } from 'vitest';
import { readPlank } from '../../src/input/parse-plank.ts';
import { given, METRES, problemsIn } from './room-typed.ts';

describe('the fix', () => {
  it.each([
    ['6x48 10', '6x48 10 per carton'],
    ['6x48, 10 per carton, 2.89 per sq ft', '6x48, 10 per carton, $2.89 per sq ft'],
    ['6 x 4 ft, 10 per box', '6 in x 4 ft, 10 per box'],
    ['6x48, 10\u0000 per carton', '6x48, 10 per carton'],
  ])('of %j', (text, fix) => {
    expect(problemsIn(readPlank, text)[0]?.fix).toBe(fix);
  });

  it.each([
    ['a carton', '6x48'],
    ['a size', '10 per carton'],
    ['a plank', 'asdf'],
    ['a plank for nothing', ''],
    ['a plank without what was said of it', '6x48, 10 per carton, waterproof'],
    ['one size of two', '6x48, 7x48, 10 per carton'],
    ['a count for an area', '6x48, 25 sq ft a carton'],
    ['another area', '6x48, 10 per carton, 30 sq ft per carton'],
    ['another width', '1/2 x 48 in, 8 per carton'],
    ['a count for none', '6x48, 0 per carton'],
    ['a count for one too large', '6x48, 1001 per carton'],
    ['a plank without its thickness', '6x48, 10 per carton, 2 in thick'],
  ])('never makes up or leaves out: %s', (_what, text) => {
    for (const problem of problemsIn(readPlank, text)) expect(problem.fix).toBeUndefined();
  });

  it('is typed in the units of the asker', () => {
    expect(problemsIn(readPlank, '6x48, 8 a box', METRES)[0]?.fix).toBe('6 x 48 in, 8 a box');
  });
});

it('quotes what it cannot place, word for word', () => {
  const problems = problemsIn(readPlank, '6x48, Oak Look, 10 per carton, $58, AC4');
  expect(problems.map(({ got }) => got)).toEqual(['Oak Look', '$58', 'AC4']);
  expect(problems[0]?.fix).toBeUndefined();
});

describe('limits', () => {
  it('a carton more than 2 % off is told with both figures', () => {
    expect(given(readPlank, '6x48 in, 10 a box, 20.4 sq ft').value.plank.perCarton).toBe(10);
    const [problem] = problemsIn(readPlank, '6x48 in, 10 a box, 20.41 sq ft');
    expect(problem?.expected).toContain('20.41 sq ft');
    expect(problem?.expected).toContain('20 sq ft');
    expect(problemsIn(readPlank, '6x48, 7.31 sq ft a carton')[0]?.expected).toContain('3.655 planks');
  });

  it('1 in to 1 m wide, at most 4 m long', () => {
    expect(given(readPlank, '1 in x 4 m, 5 a box').value.plank.perCarton).toBe(5);
    expect(given(readPlank, '1000 x 4000 mm, 5 a box').value.plank.perCarton).toBe(5);
    for (const size of ['25 x 1000 mm', '1001 x 2000 mm', '200 x 4001 mm']) {
      expect(problemsIn(readPlank, `${size}, 5 a box`)[0]?.expected).toContain('1 m wide');
    }
  });

  it('500 characters', () => {
    expect(given(readPlank, `6x48, 10 a box${' '.repeat(486)}`).value.plank.perCarton).toBe(10);
    expect(problemsIn(readPlank, `6x48, 10 a box${' '.repeat(487)}`)[0]?.expected).toContain('500');
  });
});
