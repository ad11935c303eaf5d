/** Words of the trade: each leads to an entry, is found by the ways people ask, and takes no other question. */

import { describe, expect, it } from 'vitest';
import { entryOf } from '../../src/handbook/all-entries.ts';
import { TERMS, termAsked } from '../../src/handbook/glossary.ts';
import { answerTo } from '../chat/asked.ts';

describe('the glossary', () => {
  it('leads from each word to an entry, and has no name twice', () => {
    expect(TERMS.filter(({ entry }) => !entryOf(entry)).map(({ names }) => names[0])).toEqual([]);
    const names = TERMS.flatMap((term) => term.names);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });

  it('says each in one line of at most 120 characters, without a figure', () => {
    const long = TERMS.filter(({ meaning }) => meaning.length > 120 || /\d/.test(meaning));
    expect(long.map(({ names }) => names[0])).toEqual([]);
  });

  it.each(TERMS.map(({ names }) => names[0] ?? ''))('knows %s by the ways it is asked for', (name) => {
    for (const text of [
      `what is a ${name}?`,
      `whats ${name}`,
      `What does ${name} mean`,
      `${name} meaning`,
      `define ${name}`,
    ])
      expect(termAsked(text)?.names[0], text).toBe(name);
  });

  it.each([
    'what is a good underlayment',
    'what size is a joist',
    'what is the gap at a jamb',
    'do i need a t-molding',
    'what does a transition cost',
    'what is under the subfloor',
    'caulk',
  ])('leaves another question alone: %s', (text) => {
    expect(termAsked(text)).toBeUndefined();
  });
});

describe('a word that somebody asks about', () => {
  it('is explained first, and its entry comes second', async () => {
    const answer = await answerTo('so whats a sliver??');
    expect(answer).toMatchObject({ headline: expect.stringMatching(/^A sliver is a strip of plank too narrow/) });
    expect(answer).toHaveProperty('data.entry', 'last-row');
  });

  it('gives way to a hazard', async () => {
    const answer = await answerTo('what is black mastic?');
    expect(answer).toMatchObject({ headline: expect.stringMatching(/asbestos/) });
  });

  it('is asked back where it is unknown', async () => {
    expect(await answerTo('handbook word: flibber')).toHaveProperty('problems');
  });
});
