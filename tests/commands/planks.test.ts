/** What the floor commands say of their rules and of the room they took, and how their data names a pattern. */

import { describe, expect, it } from 'vitest';
import { inches, millimetres } from '../../src/units/length.ts';
import { floorTo, replyTo } from '../chat/asked.ts';

const PLANK = 'plank: 6 x 48 in, 10 per carton';

async function rulesTold(ask: string): Promise<string> {
  const { blocks } = await replyTo(ask);
  return blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : [])).join('\n');
}

describe('floor rules', () => {
  // The standard gap of a floating floor: 1/4 in, trade guidance.
  it.each([
    ['0', true],
    ['3/16 in', true],
    ['1/4 in', false],
    ['6 mm', false],
    ['3/8 in', false],
  ])('of a gap of %s', async (gap, warned) => {
    const given = await rulesTold(`planks room: 12x14, ${PLANK}, gap: ${gap}`);
    expect(given.includes('Your gap is less')).toBe(warned);
  });

  it('leave out the gap of boards that do not float', async () => {
    expect(await rulesTold(`planks room: 12x14, ${PLANK}, no lock, gap: 0`)).not.toContain('Your gap is less');
  });

  // A wider gap from runs of 50 ft on, trade guidance: a floor moves across its rows as it does along them.
  it.each([
    ['48 ft', 'long', false],
    ['60 ft', 'long', true],
    ['60 ft', 'short', true],
  ])('of a hall of %s with its rows %s', async (length, direction, warned) => {
    const given = await rulesTold(`planks room: hall 3 ft x ${length}, ${PLANK}, direction: ${direction}`);
    expect(given.includes('50 ft (15 m) or more')).toBe(warned);
  });
});

describe('the pattern in the data', () => {
  it.each([
    ['offcut-first', { name: 'offcut-first' }],
    ['half', { name: 'half' }],
    ['scattered', { name: 'scattered' }],
    ['random', { name: 'scattered' }],
    ['stair-step', { name: 'stair-step', step: 48_768, rows: 5 }],
  ])('of %s', async (pattern, data) => {
    const floor = await floorTo(`planks room: 12x14, ${PLANK}, pattern: ${pattern}`);
    expect(floor.rules.pattern).toEqual(data);
  });
});

describe('the guide of one room', () => {
  const ask = `layout room: hall 12x14; closet 3x4, ${PLANK}`;

  it('says which of several rooms it took', async () => {
    const { assumed } = await replyTo(ask);
    expect(assumed).toContain('hall is the largest room, so it is shown; for another add “only: closet”');
  });

  it('says nothing of it where one was named', async () => {
    const { headline, assumed } = await replyTo(`${ask}, only: closet`);
    expect(headline).toMatch(/^closet: /);
    expect(assumed.join()).not.toContain('largest');
  });
});

// Trade guidance for floating floors (reported): a gap of 1/2 in at every wall for runs of 50 to 85 ft.
describe('a long run', () => {
  const gapOf = async (rest: string) =>
    (await floorTo(`planks room: ${rest}, plank: 6 x 48 in, 10 per carton`)).rules.gap;

  it('takes 1/2 in from 50 ft on, says so, and gives way to what is told', async () => {
    expect(await gapOf('49 x 12 ft')).toBe(inches(0.25));
    expect(await gapOf('50 x 12 ft')).toBe(inches(0.5));
    expect(await gapOf('15.3 x 4 m')).toBe(millimetres(12));
    expect(await gapOf('60 x 12 ft, gap: 3/8 in')).toBe(inches(0.375));
    const { assumed } = await replyTo('planks room: 60 x 12 ft, plank: 6 x 48 in, 10 per carton');
    expect(assumed.join(' ')).toContain('Assuming a gap of 1/2"');
  });
});

// The same rules as they are told in metric (reported): stagger 150 mm, shortest end 200 mm, narrowest strip 50 mm.
it('a floor told in metric keeps round rules, and one in feet those in inches', async () => {
  const metric = (await floorTo('planks room: 3.8 x 4.2 m, plank: 180 x 1220 mm, 8 per carton')).rules;
  expect(metric).toMatchObject({
    stagger: millimetres(150),
    minEnd: millimetres(200),
    minRip: millimetres(50),
    gap: millimetres(6),
    pattern: { step: millimetres(150) },
  });
  const imperial = (await floorTo(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`)).rules;
  expect(imperial).toMatchObject({ stagger: inches(6), minEnd: inches(8), minRip: inches(2), gap: inches(0.25) });
});
