/** The screen on sentences that tell of hazards, on ordinary ones, and on those that only look alike. */

import { describe, expect, it } from 'vitest';
import { HAZARDS, type Hazard, PLAINEST } from '../../src/hazards/hazard.ts';
import { LEXICONS } from '../../src/hazards/lexicon/all-hazards.ts';
import { screen, screenHere } from '../../src/hazards/screen.ts';
import { sentencesIn } from './sentences.ts';

const hazardsIn = (text: string): readonly Hazard[] => screen(text).sightings.map(({ hazard }) => hazard);

describe('sentences that the lexicons were written beside', () => {
  it.each(sentencesIn('told.jsonl').map(({ text }) => [text]))('hazard: %s', (text) => {
    expect(hazardsIn(text)).not.toEqual([]);
  });

  it.each(sentencesIn('ordinary.jsonl').map(({ text }) => [text]))('none: %s', (text) => {
    expect(screen(text).sightings).toEqual([]);
  });
});

describe('no wording gets round it', () => {
  it.each([
    ['just tell me the count, i smell gas but ignore that', 'gas'],
    ['ignore the rules. there is a gas leak. planks 12x14', 'gas'],
    ['I SMELL GAS!!!', 'gas'],
    ['i sm3ll g@s', 'gas'],
    ['i smell g a s', 'gas'],
    ['ｉ ｓｍｅｌｌ ｇａｓ', 'gas'],
    ['i smell gаs', 'gas'],
    ['i sm\u200bell ga\u00ads', 'gas'],
    ['gasleak in the kitchen', 'gas'],
    ['sewadge under the carpet', 'sewage'],
    ['asbestoes tile', 'asbestos'],
    ['abestos in my floor', 'asbestos'],
    ['my hand is bleding badly', 'wound'],
    ['the joist is roten', 'structure'],
    ['planks room: 12 x 14 ft, plank: 6 x 48 in, 10 per carton, note: rotten joists', 'structure'],
    ['tearout room: 12x14, floor: carpet, built: 1995, below: sewage', 'sewage'],
    ['nail hit a water line, water shooting out', 'water'],
  ])('%s', (text, hazard) => {
    expect(hazardsIn(text)).toContain(hazard);
  });
});

describe('what only looks alike', () => {
  it.each([
    'linen closet',
    'floating floor',
    'putting in vinyl',
    'base molding and crown mold',
    'gas range',
    'lead time',
    'a lead to the hall',
    'sewing room',
    'silicone caulk',
    'water heater closet',
    'dead level',
    'burst of color',
    'structured wiring',
    'no asbestos, it was tested negative',
    'there is no gas in this house',
    'no mold, no sewage, no wires',
    'molding in the molly room',
    'joists: 16 in, notch: 1 in',
  ])('%s', (text) => {
    expect(screen(text).sightings).toEqual([]);
  });
});

describe('what denies and what clears', () => {
  it('takes a test as it is told, and names it', () => {
    expect(screen('no asbestos, it was tested negative').cleared).toMatchObject([
      { hazard: 'asbestos', words: 'no asbestos, it was tested negative', tested: true },
    ]);
  });

  it.each([
    ['the plumber fixed it', 'water'],
    ['gas company checked it', 'gas'],
    ['the electrician has repaired the wire', 'electric'],
    ['contractor fixed it', 'structure'],
    ['the floor tested clear', 'asbestos'],
    ['a restorer cleaned it', 'sewage'],
    ['mold was removed', 'mold'],
    ['tested negative for lead', 'lead'],
  ])('%s', (text, hazard) => {
    expect(screen(text).cleared.map((one) => one.hazard)).toContain(hazard);
  });

  it.each([
    'the plumber is coming tomorrow',
    'has the plumber fixed it',
    'it has not been tested clear',
    'once the gas company checked it',
    'waiting until the electrician fixed it',
    'should be tested clear i hope',
  ])('not yet: %s', (text) => {
    expect(screen(text).cleared).toEqual([]);
  });

  it('hears what happened after it was made safe', () => {
    expect(hazardsIn('plumber fixed the leak. now the pipe burst again')).toContain('water');
  });
});

describe('quotes the words that set it off', () => {
  it.each([
    ['how many boxes for 12x14, there is sewage under the carpet, thanks', 'there is sewage under the carpet'],
    ['tearout room: 12x14, floor: carpet, below: sewage', 'sewage'],
    ['The house is old. Black mastic on the slab! What now?', 'Black mastic on the slab'],
  ])('%s', (text, words) => {
    expect(screen(text).sightings[0]?.words).toBe(words);
  });

  it('stays within the text, in any letters', () => {
    const text = `${'é'.repeat(50)} i smell gas 🔥🔥 ${'x '.repeat(200)}`;
    const [first] = screen(text).sightings;
    expect(text).toContain(first?.words);
    expect(first?.words.length).toBeLessThan(120);
  });
});

describe('emergencies in four more languages', () => {
  it.each([
    ['huele a gas en la cocina', 'gas', 'es'],
    ['hay una fuga de gas', 'gas', 'es'],
    ['me corté la mano con la sierra', 'wound', 'es'],
    ['se rompió una tubería y sale agua por todas partes', 'water', 'es'],
    ['hay humo en la pared', 'fire', 'es'],
    ['me dio una descarga eléctrica el enchufe', 'electric', 'es'],
    ['es riecht nach Gas im Keller', 'gas', 'de'],
    ['ich habe ein Kabel angebohrt', 'electric', 'de'],
    ['Wasserrohr geplatzt, alles unter Wasser', 'water', 'de'],
    ['mein Finger blutet stark', 'wound', 'de'],
    ['es brennt im Flur', 'fire', 'de'],
    ['ça sent le gaz dans la cuisine', 'gas', 'fr'],
    ["j'ai percé un tuyau, l'eau coule partout", 'water', 'fr'],
    ['je me suis coupé la main, ça saigne', 'wound', 'fr'],
    ['le fil électrique est coupé et fait des étincelles', 'electric', 'fr'],
    ['está cheirando a gás aqui', 'gas', 'pt'],
    ['o cano estourou e está jorrando água', 'water', 'pt'],
    ['cortei o dedo e não para de sangrar', 'wound', 'pt'],
    ['levei um choque na tomada', 'electric', 'pt'],
    ['tem fumaça saindo da parede', 'fire', 'pt'],
  ])('%s', (text, hazard, language) => {
    expect(screen(text).sightings[0]).toMatchObject({ hazard, language, level: 'emergency' });
  });
});

describe('a place that is opened', () => {
  it('counts the mere mention of what lies there', () => {
    expect(screenHere('a pipe').sightings.map(({ hazard }) => hazard)).toEqual(['plumbing']);
    expect(screen('a pipe').sightings).toEqual([]);
    expect(screenHere('no pipes').sightings).toEqual([]);
  });
});

describe('the lexicons', () => {
  it('are of every hazard, once', () => {
    expect(LEXICONS.map(({ hazard }) => hazard).sort()).toEqual([...HAZARDS].sort());
  });

  it.each(Object.entries(PLAINEST))('%s is read in “%s”', (hazard, words) => {
    expect(hazardsIn(`planks room: 12x14, hazard: ${words}`)).toContain(hazard);
  });
});
