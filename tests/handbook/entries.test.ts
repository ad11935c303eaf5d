/** What every entry of the handbook keeps to. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { QUOTED } from '../../src/figures/all-figures.ts';
import { ENTRIES, entryOf } from '../../src/handbook/all-entries.ts';
import { entryText } from '../../src/handbook/answer.ts';
import { saysMetric, workedFrom } from '../../src/handbook/worked.ts';
import { replyTo } from '../chat/asked.ts';

/** Names that hold a figure, and no measure. */
const NAMES =
  /\b(?:\d+x\d+s?|N\d{2,3}|P100|\d+ mil|R\d+|8d|6d|OSHA|SPC|WPC|F\d{4}|D\d{4}|3-in-1|2-by-\d+|MERV \d+|911|24\/7|100%)\b/g;
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

  it('has one figure of each id', () => {
    const folder = new URL('../../src/figures/', import.meta.url);
    const ids = readdirSync(folder)
      .filter((name) => name.startsWith('handbook-'))
      .flatMap((name) =>
        [...readFileSync(new URL(name, folder), 'utf8').matchAll(/\bid: '([a-z0-9-]+)'/g)].map(([, id]) => id),
      );
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it('leaves no figure unused', () => {
    const used = new Set(texts.flatMap(({ text }) => [...text.matchAll(/\{([a-z0-9-]+)\}/g)].map(([, id]) => id)));
    expect([...QUOTED.keys()].filter((id) => !used.has(id))).toEqual([]);
  });

  it('holds figures of at least 60 entries against what others publish', () => {
    const folder = new URL('.', import.meta.url);
    const checks = readdirSync(folder).filter((name) => name.startsWith('outside-'));
    const named = new Set(
      checks.flatMap((name) =>
        [...readFileSync(new URL(name, folder), 'utf8').matchAll(/'([a-z0-9-]+)'/g)].map(([, id]) => id ?? ''),
      ),
    );
    const checked = ENTRIES.filter((entry) => entryText(entry, false).figures.some(({ id }) => named.has(id)));
    expect(checked.length).toBeGreaterThanOrEqual(60);
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
    // 142 less two gaps of 1/4 is 141.5; nineteen rows of 7.125 are 135.375, so 6 1/8 is left, by hand.
    ['last-row', 'room is 142 in across, 7 1/8 in planks', /row 20, is 6 1\/8"/],
    // 216 less two gaps is 215.5; 43 rows of 5 leave 1/2, and half of 5 1/2 is 2 3/4, by hand.
    ['last-row', '18x29 room with 5 in planks', /2 3\/4".*1\/2"/],
    // 3600 less 12 is 3588; nineteen rows of 180 are 3420, so 168 is left, by hand.
    ['last-row', 'room 3.6 m wide, planks 180 mm', /168 mm.*174 mm/],
    // A whole row of w and a strip of 1 give two rows of (w + 1) / 2, by hand.
    ['last-row', 'the last row comes out 1 inch wide', /half a plank’s width plus 1\/2"/],
    // Five square feet a step, by hand: a tread of 10 in and a riser of 7 1/2 at 36 in with 15 % more: 5.03.
    ['stairs-amount', '13 steps in plank', /65 sq ft.*13 nosings/],
    ['nailed-subfloor', '1/2 inch plywood, joists 24 apart', /^No: 1\/2".*24".*7\/8"/],
    ['nailed-subfloor', '3/4 in plywood on joists 16 in apart', /^Yes, 3\/4"/],
    // 16 m² and 15 or 20 % on top, by hand.
    ['extra-percent', 'herringbone for 16 m2 how much extra', /18\.4 to 19\.2 m²/],
    ['thickness-wear', '2 big dogs what wear layer', /^20 mil for dogs/],
    // 400 sq ft at 20 to 40 an hour are 10 to 20 hours, and two go half again as fast, by hand.
    ['how-long', 'me and my brother, 400 sq ft', /7 to 14 hours for two people/],
    ['maker-figures', 'what is the dent rating', /look for “indentation” on the carton/],
    ['stagger', 'my planks are 8 in wide', /^At least 6".*8" wide.*8 to 12 in/],
    ['stagger', 'planks 48 inches long', /16"/],
    ['out-of-square', 'the room is 1/2 inch out of square', /1\/2".*1\/4"/],
    // 10 + 1.6 and 10 + 6.35, rounded, by hand.
    ['jambs', '8 mm plank with 2 mm underlay', /12 mm.*10 mm.*16 mm/],
    // 0.312 + 0.125 is 0.437: 7/16 to the nearest sixteenth.
    ['door-clearance', 'plank 0.312 in, pad 0.125 in', /7\/16".*11\/16"/],
    ['long-run', 'can i run 60 ft without a break', /30 to 40 ft.*85 ft.*1\/2 in/],
    ['run-through', 'the upstairs is 100 feet end to end', /^No/],
    // Straight line: 1200 x 2/5 and 1200 x 7/10, by hand.
    ['landlord', 'carpet is 3 years old and cost $1200', /\$480 to \$840/],
    // California's published example: 8 of 10 years used, $1,000 for new, $200 may be charged.
    ['landlord', 'the carpet lasts 10 years, was 8 years old and cost $1,000', /\$200/],
    // 9/16 + 1/2 + 3/4 is 1 13/16, and nails are sold by the quarter inch, by hand.
    ['nail-length', 'base is 9/16 thick on 1/2 drywall', /^2" nails/],
    // 34 1/2 less 5/16 less 1/8, by hand.
    ['dishwasher', 'opening is 34 1/2, floor is 5/16 plus a 1/8 pad', /34 1\/16"/],
    // 71 less 69 3/4 less 5/16, by hand.
    ['fridge-fits', 'fridge is 69 3/4 tall, opening is 71, new floor 5/16', /15\/16"/],
    // 75 gallons of 8.34 lb, by hand.
    ['heavy-furniture', '75 gallon aquarium', /^No.*630 lb/],
    ['moisture-limits', 'slab reads 82% rh', /^It depends/],
    // 900 / 35, rounded up, by hand.
    // 49 CFR 575.6(a)(5) with one person: 1400 - 150 is 1250; 1250 / 50 is 25 boxes.
    ['car-load', 'sticker says 1400 lb, boxes are 50 lb each, how many', /^25 boxes/],
    // 800 - 150 is 650 and 650 / 40 is 16; 20 boxes weigh 800, by hand.
    ['car-load', '20 boxes at 40 lb each in my car', /^2 trips.*800 lb.*16/],
    ['thickness-wear', 'is 12 mil ok', /^12 mil suits a family.*12\/1000/],
    // 300 / 40 and 300 / 20, rounded up, by hand.
    ['how-long', 'how long does 300 sq ft take', /8 to 15 hours.*1 to 2 days/],
    ['how-long', '12x15 room how many days', /5 to 9 hours to lay 180 sq ft/],
    ['diagonal-herringbone', 'is 10 % enough on a diagonal', /^Just enough.*10 to 15%/],
    ['extra-percent', 'is 5% enough for herringbone', /^No.*15 to 20%/],
    // 6.5 x 420, by hand.
    ['installer-price', 'quote says 6.50/sqft installed for 420 ft', /^\$2,730/],
    ['extra-percent', 'is 15 percent enough', /^Yes.*5 to 10%/],
    ['weight-carpet', '900 lb of flooring', /26 carries/],
    ['direction', '18 planks across with the light, only 9 the long way', /9 rows.*18/],
    ['out-of-square', "one end is 12' and the other 12'1\"", /1"/],
    ['stair-nosing-count', '13 steps 36 in wide, nosing comes in 94 in', /13 nosings.*7 sticks/],
    ['landlord', 'lived here 8 years', /8 years/],
    ['gap', 'i can only leave 3/8, is that enough', /^Yes, 3\/8"/],
  ])('%s: %s', (id, text, lead) => expect(workedFrom(id, text, saysMetric(text))?.lead).toMatch(lead));

  it('says nothing of its own where there is nothing to work with', () => {
    expect(workedFrom('trim-angle', 'my corners are not square', false)).toBeUndefined();
    expect(workedFrom('same-lot', '12 boxes', false)).toBeUndefined();
  });
});

describe('a question to the handbook', () => {
  const asked = async (text: string) => {
    const { headline, lines = [], data } = await replyTo(text);
    return { data, whole: [headline, ...lines].join(' ') };
  };

  it('may hold a second one', async () => {
    const { data, whole } = await asked('can i lay laminate myself, how long does it take and what does it cost?');
    expect(data).toMatchObject({ entry: 'how-long' });
    expect(whole).toMatch(/What does it cost if I lay it myself\? .*\$/);
  });

  it('gets the floor of the rooms it names', async () => {
    // 17 x 9 + 12 x 10, by hand.
    const { whole } = await asked('rooms 17x9 and 12x10 with old sheet vinyl, take it all up or cover it?');
    expect(whole).toContain('273 sq ft in all (153 + 120)');
  });

  it('about what only the maker knows is said to be unknown', async () => {
    for (const text of ['what psi can it hold', "what's the fire rating of this plank", 'r value of lvp'])
      expect((await asked(text)).whole).toMatch(/^I don’t have a figure for that; your plank’s maker does/);
  });

  it('about no floor of a home is not answered as one', async () => {
    for (const text of [
      'can i lay click vinyl on a boat',
      'can i put the planks on the wall',
      'can i lay it in a shower',
    ])
      expect((await asked(text)).data.kind, text).not.toBe('handbook');
  });
});
