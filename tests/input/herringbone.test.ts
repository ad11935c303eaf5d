/** Herringbones and the boards for them as people type them. */

import { describe, expect, it } from 'vitest';
import { readHerringbone, readPattern } from '../../src/input/parse-layout.ts';
import { readPlank } from '../../src/input/parse-plank.ts';
import { FEET, given, kept } from './room-typed.ts';

describe('a herringbone', () => {
  it.each([
    ['herringbone', 0],
    ['Herring-bone pattern', 0],
    ['herring bone', 0],
    ['herringbone with a border', 1],
    ['herringbone, border 2', 2],
    ['herringbone border of 3 boards', 3],
    ['herringbone with a border of two courses', 2],
    ['herringbone with 2 border', 2],
    ['herringbone with a 2 board border', 2],
    ['herringbone without a border', 0],
    ['herringbone, border 0', 0],
  ])('%s', (text, border) => {
    expect(readPattern(text, kept('pattern', FEET))).toEqual({ ok: true, value: { name: 'herringbone', border } });
  });

  it.each(['herringbone border 9', 'herringbone with sofa'])('%s is a problem whose fix is one', (text) => {
    const read = readPattern(text, kept('pattern', FEET));
    expect(read.ok).toBe(false);
    if (!read.ok) expect(readHerringbone(read.problems[0].fix ?? '')).toEqual({ name: 'herringbone', border: 0 });
  });
});

describe('a pattern with a slip in it', () => {
  it.each([
    ['herringbne', 'herringbone'],
    ['Herringbome', 'herringbone'],
    ['scaterred', 'scattered'],
  ])('%s is taken for %s, and that is said', (text, name) => {
    const reading = kept('pattern', FEET);
    expect(readPattern(text, reading)).toMatchObject({ ok: true, value: { name } });
    expect(reading.notes).toEqual([`pattern “${text}” read as ${name}`]);
  });

  it('is asked back where it is short or far off', () => {
    for (const text of ['harf', 'fishbone', 'zigzag']) expect(readPattern(text, kept('pattern', FEET)).ok).toBe(false);
  });
});

describe('boards for it', () => {
  it.each(['A/B boards', 'A and B boards', 'a+b', 'left and right boards', 'left/right-handed', 'handed boards'])(
    '%s',
    (words) => {
      const { value } = given(readPlank, `5 x 24 in, 12 per carton, ${words}`);
      expect(value).toMatchObject({ handed: true, plank: { lock: 'click' } });
    },
  );

  it('are not what other planks are', () => {
    expect(given(readPlank, '5 x 24 in, 12 per carton').value.handed).toBeUndefined();
    expect(given(readPlank, '5 x 24 in, 12 per carton, no lock').value.handed).toBeUndefined();
  });
});
