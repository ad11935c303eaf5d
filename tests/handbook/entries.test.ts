/** What every entry of the handbook keeps to. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { QUOTED } from '../../src/figures/all-quoted.ts';
import { ENTRIES, entryOf } from '../../src/handbook/all-entries.ts';
import { entryText } from '../../src/handbook/answer.ts';
import { workedFrom } from '../../src/handbook/worked.ts';
import { replyTo } from '../chat/asked.ts';

/** Names that hold a figure, and no measure. */
const NAMES =
  /\b(?:\d+x\d+s?|N\d{2,3}|P100|\d+ mil|R\d+|8d|6d|OSHA|SPC|WPC|F\d{4}|D\d{4}|3-in-1|2-by-\d+|MERV \d+|911|24\/7|100 %)\b/g;
const WORDS = 60;
/** A figure stands as some words of its own. */
const SPARE = 15;

const texts = ENTRIES.flatMap((entry) => [entry.answer, ...(entry.more ?? [])].map((text) => ({ id: entry.id, text })));

describe('the handbook', () => {
  it('has at least 150 entries, each by an id of its own', () => {
    expect(ENTRIES.length).toBeGreaterThanOrEqual(150);
    expect(new Set(ENTRIES.map(({ id }) => id)).size).toBe(ENTRIES.length);
  });

  it('has a dozen ways to ask for each, and no phrase in two', () => {
    expect(ENTRIES.filter(({ phrases }) => phrases.length < 12).map(({ id }) => id)).toEqual([]);
    const all = ENTRIES.flatMap(({ phrases }) => phrases.map((phrase) => phrase.toLowerCase()));
    expect(all.filter((phrase, i) => all.indexOf(phrase) !== i)).toEqual([]);
  });

  it('types no figure into a sentence', () => {
    const bare = texts.map(({ id, text }) => ({ id, text: text.replace(/\{[a-z0-9-]+\}/g, '').replace(NAMES, '') }));
    expect(bare.filter(({ text }) => /\d/.test(text))).toEqual([]);
  });

  it('answers in about sixty words', () => {
    const long = ENTRIES.map((entry) => {
      const { lead, lines } = entryText(entry, false);
      return { id: entry.id, words: [lead, ...lines].join(' ').split(/\s+/).length };
    });
    expect(long.filter(({ words }) => words > WORDS + SPARE)).toEqual([]);
  });

  it('says where each answer comes from', () => {
    expect(ENTRIES.filter((entry) => entryText(entry, false).sources.length === 0).map(({ id }) => id)).toEqual([]);
  });

  it('names others that are there, and titles that a button holds', () => {
    expect(ENTRIES.flatMap(({ near = [] }) => near.filter((id) => !entryOf(id)))).toEqual([]);
    expect(ENTRIES.filter(({ title }) => title.length > 45).map(({ title }) => title)).toEqual([]);
  });

  it('leaves no figure unused', () => {
    const used = new Set(texts.flatMap(({ text }) => [...text.matchAll(/\{([a-z0-9-]+)\}/g)].map(([, id]) => id)));
    expect([...QUOTED.keys()].filter((id) => !used.has(id))).toEqual([]);
  });

  it('gives every entry as an answer, in either units, with a lead that fits', async () => {
    for (const { id } of ENTRIES) {
      const reply = await replyTo(`handbook entry: ${id}`);
      // An id that names a danger is answered as a question about it.
      expect(['handbook', 'hazard'], id).toContain(reply.data.kind);
      if (reply.data.kind === 'handbook') expect(reply.data, id).toMatchObject({ entry: id });
      expect(reply.headline.length, `${id}: ${reply.headline}`).toBeLessThanOrEqual(125);
    }
  });

  it('is among the commands', () => expect(commands.some(({ name }) => name === 'handbook')).toBe(true));
});

describe('an entry that works with the message', () => {
  it.each<[string, string, RegExp]>([
    // (180 - 93) / 2, by hand.
    ['trim-angle', 'my corner is 93 degrees', /43\.5°/],
    // 5/16 + 1/8 = 7/16, and 1/16 more for the saw, by hand.
    ['jambs', 'plank is 5/16 and the pad 1/8', /1\/2".*7\/16"/],
    // 142 / 7.125 is 19 rows and 6 5/8 in, by hand.
    ['last-row', 'room is 142 in across, 7 1/8 in planks', /6 5\/8"/],
    ['out-of-square', "one end is 12' and the other 12'1\"", /1"/],
    ['stair-nosing-count', '13 steps 36 in wide, nosing comes in 94 in', /13 nosings.*7 sticks/],
    ['landlord', 'lived here 8 years', /8 years/],
    ['gap', 'i can only leave 3/8, is that enough', /^Yes, 3\/8"/],
  ])('%s: %s', (id, text, lead) => expect(workedFrom(id, text, false)?.lead).toMatch(lead));

  it('says nothing of its own where there is nothing to work with', () => {
    expect(workedFrom('trim-angle', 'my corners are not square', false)).toBeUndefined();
    expect(workedFrom('same-lot', '12 boxes', false)).toBeUndefined();
  });
});
