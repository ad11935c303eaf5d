/** Spelling: no English word becomes a hazard, and slips of a hazard's word are read as it. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { slips, spellingMended } from '../../src/hazards/hazard-spelling.ts';
import { TABLES } from '../../src/hazards/lexicon/all-hazards.ts';
import { screen } from '../../src/hazards/screen.ts';
import { tokensOf } from '../../src/hazards/tokens.ts';

const read = (word: string): readonly string[] => spellingMended(tokensOf(word)).map((token) => token.word);

describe('a word of English', () => {
  const lists = JSON.parse(readFileSync('node_modules/categorized-words/2of12id.json', 'utf8')) as Record<
    string,
    string[]
  >;
  const all = [...new Set(Object.values(lists).flat())].filter((word) => /^[a-z]+$/.test(word));

  it('is never mended: of 78,000 words each stays what it is', () => {
    expect(all.length).toBeGreaterThan(70_000);
    expect(all.filter((word) => read(word).join(' ') !== word)).toEqual([]);
  });
});

describe('a slip', () => {
  it.each([
    ['asbestoes', 'asbestos'],
    ['abestos', 'abestos'],
    ['asbetsos', 'asbestos'],
    ['sewadge', 'sewage'],
    ['vermiculte', 'vermiculite'],
    ['monoxid', 'monoxide'],
    ['bleding', 'bleeding'],
    ['joyst', 'joist'],
    ['leakng', 'leaking'],
  ])('%s is %s', (typed, right) => {
    expect(read(typed)).toEqual([right]);
  });

  it('of words run together is taken apart', () => {
    expect(read('gasleak')).toEqual(['gas', 'leak']);
  });

  it('never changes a word of the lexicons', () => {
    const words = [...TABLES.words].filter((word) => /^[a-z]+$/.test(word));
    expect(words.filter((word) => read(word).join(' ') !== word)).toEqual([]);
  });

  it('is counted as typists make them', () => {
    expect([slips('gas', 'gas'), slips('gsa', 'gas'), slips('mol', 'mold'), slips('smokke', 'smoke')]).toEqual([
      0, 1, 1, 1,
    ]);
    expect(slips('abcdef', 'uvwxyz')).toBe(3);
  });
});

describe('a word that may be either', () => {
  it('says what else it may be', () => {
    expect(screen('moldly room').sightings[0]?.or).toEqual({ typed: 'moldly', hazard: 'moldy', other: 'molly' });
  });
});
