/** Sentences through the grammar: which command answers, what is asked back, and what is said of how they were read. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import type { Problems } from '../../src/chat/command.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { sentenceFrame } from '../../src/language/frames.ts';
import { measured } from '../../src/language/measured.ts';
import { answerTo, floorTo, problemsOf, replyTo } from '../chat/asked.ts';

function parsed(line: string) {
  const one = parseLine(line, commands);
  if (!one.ok) throw new Error(one.problems.map(({ expected }) => expected).join(' '));
  return { command: one.command.name, given: Object.fromEntries(one.optionTexts), assumed: one.assumed ?? [] };
}

function framed(command: string, line: string) {
  const preferences = { units: 'imperial', decimal: '.', currency: 'USD' } as const;
  const frame = sentenceFrame(command, measured(line, preferences), preferences);
  if (!frame) throw new Error(`nothing in it for ${command}`);
  return frame;
}

const WHOLE = { room: '12x14', plank: '7 inch by 4 foot, 23.33 a box' };

describe('a sentence', () => {
  it.each([
    'how many boxes for 12x14, 7 inch by 4 foot planks, 23.33 a box?',
    'planks 12x14 with 7 inch by 4 foot planks, 23.33 a box',
    'floor planks 12x14 with 7 inch by 4 foot planks, 23.33 a box',
  ])('%s is the ask it means', async (line) => {
    expect(parsed(line)).toMatchObject({ command: 'planks', given: WHOLE });
    const { assumed } = await replyTo(line);
    expect(assumed).toContain('23.33 a box read as 23.33 sq ft a box');
  });

  it('and its grammar form have the same floor', async () => {
    const plain = await floorTo('boxes for bedroom 11x12 and closet 2x5? planks 7x48, 10 per box, 3/8 in gap');
    const given = await floorTo('planks room: bedroom: 11x12; closet: 2x5, plank: 7x48, 10 per carton, gap: 3/8 in');
    expect(plain).toEqual(given);
  });

  it.each([
    [`living 14' x 12' with a bay 8' x 2' at 45°`, `living 14' x 12' with a bay 8' x 2' at 45°`],
    ['a 14x12 living room with a bay 8x2', '14x12 living room with a bay 8x2'],
    ['den 12x14 less a 2x2 corner cut diagonally', 'den 12x14 less a 2x2 corner cut diagonally'],
    ['den 12 x 14 with a clipped corner 2x2', 'den 12 x 14 with a clipped corner 2x2'],
  ])('keeps the bay and the cut corner of %s, and takes neither for the way of the rows', (room, given) => {
    expect(parsed(`how many boxes for ${room}, 7 x 48 in planks, 10 a box?`).given).toEqual({
      room: given,
      plank: '7 x 48 in, 10 per carton',
    });
    expect(parsed(`how many boxes for ${room}, laid diagonally, 7 x 48 in planks, 10 a box?`).given).toMatchObject({
      room: given,
      direction: 'diagonal',
    });
  });

  it.each([
    ['soft spot by the toilet about 18x24, how do i cut it out', { damage: '18 in x 24 in' }],
    ['rot about 2 ft square by the tub, joists 16 on center', { damage: '2 ft x 2 ft', spacing: '16 in' }],
    [
      'patch a hole 24x30 in, 3 ft from the left wall and 1 ft up from the bottom, first joist is at 15 in',
      { damage: '24 in x 30 in at 3 ft from left, 1 ft from bottom', 'first-joist': '15 in' },
    ],
    ['chipboard by the bath is mush, 600 by 450 mm, cut and patch', { damage: '600 mm x 450 mm' }],
  ])('%s gives the patch its size', (line, options) => {
    const { command, optionTexts } = framed('prep patch', line);
    expect({ command, ...Object.fromEntries(optionTexts) }).toEqual({ command: 'prep patch', ...options });
  });

  it.each([
    ['subfloor reads 15, 14, 10 percent, ok for laminate?', { readings: '15 14 10', floor: 'wood' }],
    ['i got 12 at the door and 17 by the window on the osb', { readings: '12 17', floor: 'wood' }],
    ['subfloor was 14% last week and 12% now', { readings: '12', floor: 'wood' }],
    [
      'plywood moisture 12% and solid oak 3 1/4 in boards 6%, ok to nail',
      { readings: '12', floor: 'wood', flooring: '6 %', boards: 'wide' },
    ],
    ['ply 11, 12, 10, oak boards 8, 8, 9', { readings: '11 12 10', floor: 'wood', flooring: '8 %' }],
    ['wood at 11 percent, house at 45 percent humidity', { readings: '11', floor: 'wood' }],
  ])('%s gives every reading that may say to wait', (line, options) => {
    const { method, ...given } = Object.fromEntries(framed('prep moisture', line).optionTexts);
    expect({ method, given }).toEqual({ method: 'wood', given: options });
  });

  it.each([
    ['leveler for 120 sq ft at 1/8, how many bags', { readings: '1/8 in all over', area: '120 sq ft' }],
    ['compound for 18 m2 at 5mm, 20 kg bags', { readings: '5mm all over', area: '18 m2', bag: '20 kg' }],
  ])('%s is a pour of one depth', (line, options) => {
    expect(Object.fromEntries(framed('prep level', line).optionTexts)).toEqual(options);
  });

  it('takes sticks by the meter', () => {
    const line = 'skirting for 4.2 x 3.6 m, comes in 2.4m lengths';
    expect(framed('trim list', line).optionTexts.get('stock')).toBe('2.4 m');
  });

  it('adds what the pad costs to what the plank costs', () => {
    const { optionTexts, assumed } = framed('floor estimate', 'lvp 2.79 sqft and pad 50 cents sqft for 400 sq ft');
    expect(optionTexts.get('price')).toBe('$3.29/sq ft');
    expect(assumed).toContainEqual(expect.stringContaining('$0.50 for the pad'));
  });

  it.each(['what 2x10 joists go under a patch', 'do i put 2x4 blocks below the patch'])('%s has no size', (line) => {
    expect(framed('prep patch', line).missing?.option).toBe('damage');
  });

  it.each([
    ["what's 12'6\" plus 3'?", 'tape', { sum: `12'6" plus 3'` }],
    ["tape what is 12'6\" plus 3'?", 'tape', { sum: `12'6" plus 3'` }],
    ['safety glasses when sanding?', 'safety', { task: 'sanding' }],
  ])('%s goes to %s', (line, command, given) => expect(parsed(line)).toMatchObject({ command, given }));

  it.each([
    ['planks 12x14', { room: '12x14' }],
    ['planks living: 12x14; hall: 3x11', { room: 'living: 12x14; hall: 3x11' }],
    ["tape 15' - 2 x 4'", { sum: "15' - 2 x 4'" }],
    ['help planks', { command: 'planks' }],
    ['sources gap', { about: 'gap' }],
  ])('%s stays with the grammar', (line, given) => expect(parsed(line).given).toEqual(given));
});

describe('a plank among the rooms', () => {
  it.each(['planks 12x14, 6x48 planks', 'room: 12x14, 6x48 planks'])('%s is no room', async (line) => {
    const given = await answerTo(line);
    const [problem] = problemsOf(given);
    expect(problem).toMatchObject({ option: 'plank', got: '6x48', expected: expect.stringContaining('in a box') });
    expect(problem).not.toHaveProperty('fix');
    expect(given).toMatchObject({ form: { command: 'floor planks', told: { room: '12x14', plank: '6x48' } } });
    expect(given).not.toHaveProperty('example');
  });
});

describe('what is missing', () => {
  it('is answered with an example plank only where that was pressed, and says so', async () => {
    const tried = await replyTo('planks room: 2,5 auf 3,2 m, plank: example');
    expect(tried.example).toMatch(/^With an example plank, not yours: /);
    expect([tried.assumed[0], tried.needs, tried.actions]).toEqual([tried.example, undefined, []]);
  });

  it('does not keep an estimate back: a room and what a box covers are enough', async () => {
    // 168 sq ft with 10 % is 184.8; 184.8 / 23.33 is 7.92, by hand.
    expect((await replyTo('12x14 bedroom, boxes cover 23.33 sq ft')).headline).toMatch(/^About 8 boxes for 168 sq ft/);
  });

  it('is no mark of money where a price stands without one, and that is said', async () => {
    const { headline, assumed } = await replyTo(
      'how many boxes for 12x15, 7 inch by 4 foot planks, 23.33 a box, 2.89 a sq ft',
    );
    expect(headline).toContain('$');
    expect(assumed.join(' ')).toContain('$2.89/sq ft');
  });
});

describe('trim', () => {
  it('is worked out from a room and its doors', async () => {
    const reply = await answerTo('need baseboard for a 12 by 10 room with two 32in doors');
    expect('headline' in reply && reply.data.kind).toBe('trim');
  });
});

describe('what lies under a floor', () => {
  it('is answered from the sentence where it tells what decides', async () => {
    expect(await replyTo('ripping out carpet in a 12 x 14 ft room, house from 1994')).toMatchObject({
      data: { kind: 'tearout' },
    });
  });

  it('is refused where the floor is suspect', async () => {
    expect(await answerTo('how do i rip out the old lino in 12x14')).toMatchObject({
      data: { kind: 'hazard', hazard: 'asbestos', emergency: false },
    });
  });
});

describe('chatter', () => {
  it.each(['thanks!!', 'hello there', 'what’s the weather tomorrow'])('%s gets one line, and no sum', async (line) => {
    expect(await replyTo(line)).toMatchObject({ data: { kind: 'none' } });
  });

  it.each(['🎉', 'blorp fnord wibble'])('%s is asked back with things to press, and nothing made up', async (line) => {
    const given = await answerTo(line);
    const [problem] = problemsOf(given);
    expect(problem?.expected).not.toMatch(/\d/);
    expect(problem).not.toHaveProperty('fix');
    expect(given).not.toHaveProperty('form');
    expect((given as Problems).choices?.length).toBeGreaterThan(0);
  });
});
