/** Autocomplete as a calculator, and the message menu on messages people really write: nothing that is understood comes back empty. */

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { menu, typing } from './interactions.ts';
import { field, list, textOf } from './json-field.ts';
import { type Stage, stage } from './stage.ts';

let bot: Stage;
beforeAll(async () => {
  bot = await stage();
});
afterAll(async () => {
  await bot.close();
  expect(bot.discord.flaws).toEqual([]);
});

/** What is typed where, and how the first choice reads it. */
const PROBES: readonly (readonly [entry: string, option: string, typed: string, first: RegExp])[] = [
  ['boxes', 'room', '12 by 14 feet', /^12 by 14 feet → 168 sq ft$/],
  ['boxes', 'room', '12x14', /→ 168 sq ft$/],
  ['boxes', 'room', `12' x 14'`, /→ 168 sq ft$/],
  ['boxes', 'room', 'hall 3x11', /→ 33 sq ft$/],
  ['boxes', 'room', '3,6 x 4,2 m', /→ 15[.,]12 m²$/],
  ['boxes', 'room', '3.6 x 4.2 m', /→ 15[.,]12 m²$/],
  ['boxes', 'room', `bedroom 11' x 12'6"`, /→ 137[.]5 sq ft$/],
  ['boxes', 'room', 'living 12x14 + 3x6 closet; hall 3 x 11', /→ 219 sq ft$/],
  ['boxes', 'room', '12x', /two sides/],
  ['boxes', 'plank', '7x48', /How much is in a box/],
  ['boxes', 'plank', '7x48 23.33', /→ 7" × 48", 10 per box$/],
  ['boxes', 'plank', '7x48 10', /→ 7" × 48", 10 per box$/],
  ['boxes', 'plank', '6 x 36 in, 24 per carton', /→ 6" × 36", 24 per box$/],
  ['boxes', 'plank', '6 x 48 in, 10 per carton', /→ 6" × 48", 10 per box$/],
  ['boxes', 'plank', '180 x 1220 mm, 8 per carton', /→ 180 mm × 1220 mm, 8 per box$/],
  ['boxes', 'direction', '45', /45/],
  ['boxes', 'direction', 'long', /long/],
  ['boxes', 'pattern', 'brick', /half/],
  ['boxes', 'pattern', 'ran', /scattered|random/],
  ['boxes', 'pattern', '1/3', /thirds/],
  ['boxes', 'pattern', 'half', /half/],
  ['boxes', 'pattern', 'off', /offcut-first/],
  ['boxes', 'gap', '1/4', /1\/4/],
  ['boxes', 'gap', '6 mm', /6 mm/],
  ['boxes', 'mistakes', '5', /5/],
  ['boxes', 'tax', '8', /8/],
  ['boxes', 'tax', '8.25 %', /8.25 %/],
  ['estimate', 'area', '168', /168/],
  ['estimate', 'area', '168 sq ft', /168 sq ft/],
  ['estimate', 'area', '15x21', /15x21/],
  ['estimate', 'price', '2.89', /2.89/],
  ['baseboard', 'doors', '2', /2/],
  ['baseboard', 'doors', '32 in on wall 2', /32 in on wall 2/],
  ['baseboard', 'stock', '8 ft', /8 ft/],
  ['baseboard', 'stock', '8 ft $7.98; 12 ft $12.48', /8 ft/],
  ['tear-out', 'floor', 'tile', /tile/],
  ['tear-out', 'floor', 'carpet', /carpet/],
  ['tear-out', 'built', '1962', /1962/],
  ['tear-out', 'built', '19', /19/],
  ['squeaks', 'area', '4 x 6', /4 x 6/],
  ['level', 'readings', '3/16 in over 10 ft', /3\/16 in over 10 ft/],
  ['moisture', 'readings', '10 11 9 12', /10 11 9 12/],
  ['tape', 'sum', `12'6" + 3'4 1/2"`, /12'6" \+ 3'4 1\/2"/],
];

describe('autocomplete', () => {
  it('is tried with 43 things people type', () => expect(PROBES).toHaveLength(43));

  it.each(PROBES)('%s %s: %s', async (entry, option, typed, first) => {
    const choices = list(field(field((await bot.ask(typing(entry, option, typed))).body, 'data'), 'choices'));
    expect(choices.length).toBeGreaterThan(0);
    expect(String(field(choices[0], 'name'))).toMatch(first);
  });

  it('gives what is read as the value, so that it is answered as it was said', async () => {
    const found = (await bot.ask(typing('boxes', 'plank', '7x48 23.33'))).body;
    expect(field(list(field(field(found, 'data'), 'choices'))[0], 'value')).toBe('7x48, 23.33 sq ft per box');
  });

  it('reads figures in the person’s language', async () => {
    const found = (await bot.ask(typing('boxes', 'room', '3,6 x 4,2', { locale: 'de' }))).body;
    expect(field(list(field(field(found, 'data'), 'choices'))[0], 'name')).toBe('3,6 x 4,2 → 15,12 m²');
  });
});

/** Messages like those that members write to each other, and what an answer must hold. */
const MESSAGES: readonly (readonly [message: string, holds: RegExp])[] = [
  ['My bedroom is 12 by 14 ft, the planks are 6 x 48 in and there are 10 per carton', /Buy 10 cartons/],
  ['my bedroom is 12 by 14, how many planks do I need?', /168 sq ft/],
  ['is 3/16 over 10 ft flat enough', /flat|3\/16/i],
  ['my subfloor dips 3/16 over 10 feet, is that ok', /flat|3\/16/i],
  ['What gap should I leave at the walls?', /gap/i],
  ['can I lay vinyl over old tile from 1965?', /asbestos/i],
  ['Room is 4.2m x 3.6m, boards 1220x180 8 in a pack', /Buy \d+/],
  [`I need to cut 15'2 1/2" minus 2 x 4'0 3/8"`, /7' ?1 3\/4"/],
  ['how long do the boxes have to sit in the room before I start?', /hour|day/i],
  ['the floor squeaks in the hall, about 4 x 6 ft', /screw/i],
  ['how much baseboard for a 11 x 12 room with one 30 in door?', /ft|stick|long/i],
  ['I sanded the old black glue, what now?', /asbestos|stop/i],
  ['moisture meter says 14% on the plywood, can I lay?', /12 ?%|dry|limit/i],
];

describe('the message menu', () => {
  it('is tried with 13 messages', () => expect(MESSAGES).toHaveLength(13));

  it.each(MESSAGES)('%s', async (message, holds) => {
    const said = textOf(field((await bot.ask(menu(message))).body, 'data')).replace(/\\/g, '');
    expect(said).not.toMatch(/I didn’t understand|Nothing to work out|could not be answered/);
    expect(said).toMatch(holds);
  });
});
