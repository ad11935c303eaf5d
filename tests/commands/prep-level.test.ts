/** Dips in a wood floor: what is filled, what is measured first, and what stops with whom to call. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LevelResult } from '../../commands/prep/level.ts';
import { answerTo, replyTo } from '../chat/asked.ts';

const data = async (ask: string): Promise<LevelResult> => (await replyTo(ask)).data as LevelResult;

/** fill, measure, or stop: the last a refusal that says who to call, and counts no bags. */
async function verdict(ask: string): Promise<string> {
  const given = await answerTo(ask);
  if ('why' in given) {
    expect(given.why).toMatch(/^Stop here/);
    expect(given.call).toMatch(/contractor|engineer/);
    expect(`${given.why} ${given.call}`).not.toMatch(/\bbags?\b/);
    return 'stop';
  }
  return ((await replyTo(ask)).data as LevelResult).verdict;
}

// A dip deeper than 3/4 in under any straightedge up to 10 ft, longer ones in proportion (cautious default).
describe('how deep', () => {
  // The maker's rule makes each of these flat, so that nothing is filled and the depth alone decides.
  const deep = (reading: string, rule: string) => verdict(`level readings: ${reading}, rule: ${rule}, floor: wood`);

  it.each([
    ['3/4 in over 10 ft', '1 in in 10 ft', 'fill'],
    ['13/16 in over 10 ft', '1 in in 10 ft', 'stop'],
    ['3/4 in over 8 ft', '1 in in 8 ft', 'fill'],
    ['13/16 in over 8 ft', '1 in in 8 ft', 'stop'],
    ['13/16 in over 2 ft', '2 in in 2 ft', 'stop'],
    ['high 1 in over 8 ft', '1 in in 8 ft', 'stop'],
    ['1 1/2 in over 20 ft', '2 in in 20 ft', 'fill'],
    ['1 9/16 in over 20 ft', '2 in in 20 ft', 'stop'],
    ['19 mm over 3 m', '30 mm in 3 m', 'fill'],
    ['20 mm over 3 m', '30 mm in 3 m', 'stop'],
  ])('%s by a rule of %s: %s', async (reading, rule, expected) => {
    expect(await deep(reading, rule)).toBe(expected);
  });

  it('is found under any straightedge on a grid, and a slope below a level line is no dip', async () => {
    expect(await verdict('level readings: grid 4 ft: 0 1 0; 0 1 0, floor: wood')).toBe('stop');
    expect(await verdict('level readings: grid 4 ft: 0 1 2; 0 1 2, line: level, floor: wood')).toBe('fill');
    expect(await verdict('level readings: grid 4 ft: 0 2 2; 0 2 2, line: level, floor: wood')).toBe('stop');
  });
});

// 12–14 lb a sq ft an inch, figured with 14 (reported); over 5 lb a sq ft by the fullest shape still possible is a stop, and
// where only the fullest is over it, its shape is measured (cautious default). In sixteenths: even 5/14 in = 5.7/16, trough
// 5/14 · 3/2 = 8.6/16, dish 5/14 · 2 = 11.4/16.
describe('how heavy', () => {
  it.each([
    [5, 'unknown', 'fill'],
    [6, 'unknown', 'measure'],
    [8, 'unknown', 'measure'],
    [9, 'unknown', 'stop'],
    [12, 'unknown', 'stop'],
    [5, 'even', 'fill'],
    [6, 'even', 'stop'],
    [8, 'trough', 'fill'],
    [9, 'trough', 'stop'],
    [11, 'dish', 'fill'],
    [12, 'dish', 'stop'],
  ])('%i/16 in, %s: %s', async (sixteenths, shape, expected) => {
    const ask = `level readings: low ${sixteenths}/16 in over 8 ft, area: 6 x 8 ft, shape: ${shape}, floor: wood`;
    expect(await verdict(ask)).toBe(expected);
    // How large it is makes no odds, and neither does whether that is told.
    expect(await verdict(ask.replace('6 x 8 ft', '2 x 2 ft'))).toBe(expected);
    expect(await verdict(ask.replace('area: 6 x 8 ft, ', ''))).toBe(expected);
    expect(await verdict(ask.replace(', floor: wood', ''))).toBe(expected);
    expect(await verdict(ask.replace('floor: wood', 'floor: concrete'))).toBe('fill');
  });

  it('gives the range, the depth to measure and no bags to buy where only the fullest shape is over', async () => {
    const reply = await replyTo('level readings: low 1/2 in over 6 ft, area: 6 x 6 ft, floor: wood');
    expect(reply.headline).toContain('3.5 to 7 lb a sq ft');
    expect(JSON.stringify(reply.blocks)).toContain('halfway between the deepest place and the edge');
    expect(reply.needs).toBeUndefined();
  });

  it('judges a ramp and a grid by what they weigh', async () => {
    const ramp = (height: string) =>
      verdict(`level readings: 1/4 in over 6 ft, ramp: 3 x 4 ft, ${height}, floor: wood`);
    // Half of 11/16 in is 4.8 lb, of 3/4 in 5.25 lb a sq ft.
    expect([await ramp('11/16 in'), await ramp('3/4 in')]).toEqual(['fill', 'stop']);
    // A plane from 0 to 1 in below a level line bends nowhere, but a corner does; its mean of 1/2 in weighs 7 lb a sq ft.
    expect(await verdict('level readings: grid 4 ft: 0 1/2 11/16; 0 1/2 11/16, line: level, floor: wood')).toBe('stop');
  });

  it('tells the weight a square foot whatever the verdict is', async () => {
    for (const [reading, load] of [
      ['1/4 in over 6 ft', '3.5 lb a sq ft'],
      ['1/2 in over 6 ft', '7 lb a sq ft'],
      ['2 in over 10 ft', '14 to 28 lb a sq ft'],
      ['6 mm over 2 m', '16 kg/m²'],
    ] as const) {
      for (const floor of ['wood', 'concrete']) {
        const given = JSON.stringify(await answerTo(`level readings: low ${reading}, area: 20 sq ft, floor: ${floor}`));
        if (floor === 'wood') expect(given, reading).toContain(load);
        expect(given, reading).toMatch(/lb a sq ft|kg\/m²/);
      }
    }
  });

  it('never gets milder for a deeper dip', async () => {
    const order = ['fill', 'measure', 'stop'];
    const sixteenths = fc.integer({ min: 1, max: 40 });
    const given = fc.tuple(
      sixteenths,
      sixteenths,
      fc.integer({ min: 4, max: 20 }),
      fc.constantFrom('unknown', 'dish', 'trough'),
    );
    await fc.assert(
      fc.asyncProperty(given, async ([gap, more, over, shape]) => {
        const ask = (sixteenth: number) =>
          `level readings: low ${sixteenth / 16} in over ${over} ft, area: 8 x 8 ft, shape: ${shape}`;
        const [before, after] = [await verdict(ask(gap)), await verdict(ask(gap + more))];
        expect(order.indexOf(after)).toBeGreaterThanOrEqual(order.indexOf(before));
      }),
      { numRuns: 60 },
    );
  });
});

it('readings that say they are of a slab are judged as on concrete, and a board of cement is not one', async () => {
  const reply = await replyTo('level readings: low 1 in over 10 ft on the concrete slab');
  expect(reply.assumed.join(' ')).toContain('floor read as concrete');
  expect((reply.data as LevelResult).verdict).toBe('fill');
  for (const words of ['', ' on cement board', ' on concrete board over joists', ' on the floor'])
    expect(await answerTo(`level readings: low 1 in over 10 ft${words}`), words).not.toHaveProperty('headline');
});

it('result data keep their keys', async () => {
  const known = await data('level readings: low 1/4 in over 6 ft, area: 4 x 6 ft');
  expect(known).toMatchObject({
    kind: 'level',
    flat: false,
    litres: expect.any(Number),
    bags: 2,
    kilograms: expect.any(Number),
  });
});
