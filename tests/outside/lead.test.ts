/** Old paint disturbed, against the US EPA's questions and answers on its rule. */

import { describe, expect, it, test } from 'vitest';
import { LEAD_YEARS, MINOR_WORK } from '../../src/figures/tearout-figures.ts';
import { disturbedArea, isMinor } from '../../src/prep/old-floor.ts';
import { feet, inches, SQUARE_TICKS_PER_SQUARE_FOOT } from '../../src/units/length.ts';
import { replyTo } from '../chat/asked.ts';

const SQUARE_INCH = SQUARE_TICKS_PER_SQUARE_FOOT / 144n;
const part = (length: number, height: number, count = 1) => ({ length: inches(length), height: inches(height), count });

// US EPA RRP FAQ (published): a 1 in strip taken off a door 36 in wide disturbs 36 in².
it('36 in x 1 in is 36 square inches', () => {
  expect(disturbedArea([part(36, 1)])).toBe(36n * SQUARE_INCH);
});

// US EPA RRP (published): minor repair disturbs six square feet or less a room.
describe('six square feet', () => {
  test.each([
    ['exactly', [part(864, 1)], true],
    ['exactly, in two parts', [part(24 * 12, 3, 1)], true],
    ['an inch more of a 1 in strip', [part(865, 1)], false],
    ['four 1.5 ft² pieces', [part(72, 3, 4)], true],
    ['five of them', [part(72, 3, 5)], false],
  ])('%s', (_name, parts, minor) => expect(isMinor(disturbedArea(parts), MINOR_WORK.value)).toBe(minor));

  it('is 864 square inches', () => expect(MINOR_WORK.value).toBe(864n * SQUARE_INCH));
});

// The same, asked: 24 ft of 3 in trim is six square feet, to the last tick.
describe('asked', () => {
  const verdict = async (trim: string, built = '1962', country = 'US') => {
    const { blocks } = await replyTo(`tearout room: 12x14, built: ${built}, trim: ${trim}, country: ${country}`);
    return JSON.stringify(blocks.find((block) => block.kind === 'facts' && block.title?.startsWith('Painted')));
  };

  it('24 ft x 3 in is minor, a sixteenth of an inch longer is not', async () => {
    expect(feet(24) * inches(3)).toBe(Number(MINOR_WORK.value));
    expect(await verdict('24 ft x 3 in')).toContain('minor repair');
    expect(await verdict(`24' 0 1/16" x 3 in`)).toContain('more than 6 sq ft');
    expect(await verdict('2 x 12 ft x 3 in')).toContain('minor repair');
    expect(await verdict('12 ft x 3 in; 12 ft x 3 in; 36 in x 1 in')).toContain('more than 6 sq ft');
  });

  // US EPA RRP FAQ (published): minor repair excludes demolition, where a painted part is destroyed as it comes off, and work
  // done in one room within 30 days counts together.
  it('minor repair is only what comes off whole and goes back, and 30 days count together', async () => {
    expect(await verdict('20 ft x 3 in')).toMatch(/comes off whole and goes back.*demolition.*30 days/);
  });

  // Years of national rules (from memory): Canada 1990, UK 1992, Australia 1997; elsewhere the latest of these.
  test.each([
    ['US', 1978],
    ['Canada', 1990],
    ['UK', 1992],
    ['Australia', 1997],
    ['France', 1997],
  ])('in %s paint is old before %i', async (country, year) => {
    const old = country === 'US' ? 'more than 6 sq ft' : `before ${year}`;
    const young = country === 'US' ? '1978 or later' : `${year} or later`;
    expect(await verdict('40 ft x 3 in', String(year - 1), country)).toContain(old);
    expect(await verdict('40 ft x 3 in', String(year), country)).toContain(young);
    expect(
      LEAD_YEARS[country === 'US' ? 'us' : country === 'France' ? 'elsewhere' : (country.toLowerCase() as 'uk')].value,
    ).toBe(year);
    // The rule of six square feet is the US EPA's.
    if (country !== 'US') expect(await verdict('40 ft x 3 in', '1950', country)).not.toContain('6 sq ft');
  });

  it('1977 is old and 1978 is not; a year not known is old', async () => {
    expect(await verdict('40 ft x 3 in', '1977')).toContain('more than 6 sq ft');
    expect(await verdict('40 ft x 3 in', '1978')).toContain('1978 or later');
    expect(await verdict('40 ft x 3 in', 'unknown')).toContain('more than 6 sq ft');
  });
});
