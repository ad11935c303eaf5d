/** How areas, money, numbers and weights are said. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Saying, sayArea, sayAreasOfSum, sayMoney, sayNumber, sayWeight } from '../../src/input/format.ts';
import { areaOf, cents, feet, inches, millimetres } from '../../src/units/length.ts';

const IMPERIAL: Saying = { units: 'imperial', decimal: '.' };
const METRIC: Saying = { units: 'metric', decimal: '.' };
const COMMA: Saying = { units: 'metric', decimal: ',' };

describe('an area', () => {
  it('is whole or to a tenth in square feet', () => {
    expect(sayArea(areaOf(feet(12), feet(14)), IMPERIAL)).toBe('168 sq ft');
    expect(sayArea(areaOf(feet(12.5), feet(14.2)), IMPERIAL)).toBe('177.5 sq ft');
    expect(sayArea(areaOf(inches(6), inches(6)), IMPERIAL)).toBe('0.3 sq ft');
    expect(sayArea(areaOf(feet(40), feet(50)), IMPERIAL)).toBe('2,000 sq ft');
    expect(sayArea(areaOf(feet(40), feet(50)), { units: 'imperial', decimal: ',' })).toBe('2.000 sq ft');
    expect(sayArea(0n, IMPERIAL)).toBe('0 sq ft');
  });

  it('said beside its sum adds up to it as it is read, each within a step of what it is alone', () => {
    const figure = (said: string): number => Math.round(Number(said.replace(/,/g, '').split(' ')[0]) * 100);
    // Three rooms of 33.33… sq ft: 33.3 thrice is 99.9, and the sum is read as 100.
    const third = areaOf(inches(40), inches(120));
    expect(sayAreasOfSum([third, third, third], IMPERIAL)).toEqual(['33.4 sq ft', '33.3 sq ft', '33.3 sq ft']);
    expect(sayAreasOfSum([], IMPERIAL)).toEqual([]);
    fc.assert(
      fc.property(
        fc.array(fc.bigInt({ min: 0n, max: 5n * 10n ** 13n }), { minLength: 1, maxLength: 20 }),
        fc.constantFrom(IMPERIAL, METRIC),
        (areas, saying) => {
          const parts = sayAreasOfSum(areas, saying);
          const sum = sayArea(
            areas.reduce((all, area) => all + area, 0n),
            saying,
          );
          expect(parts.reduce((all, part) => all + figure(part), 0)).toBe(figure(sum));
          const step = saying.units === 'imperial' ? 10 : 1;
          for (const [i, part] of parts.entries())
            expect(Math.abs(figure(part) - figure(sayArea(areas[i] ?? 0n, saying)))).toBeLessThanOrEqual(step);
        },
      ),
    );
  });

  it('is to a hundredth in square metres', () => {
    // 168 sq ft × 0.09290304 m² = 15.6077 m².
    expect(sayArea(areaOf(feet(12), feet(14)), METRIC)).toBe('15.61 m²');
    expect(sayArea(areaOf(feet(12), feet(14)), COMMA)).toBe('15,61 m²');
    expect(sayArea(areaOf(millimetres(3000), millimetres(4000)), METRIC)).toBe('12 m²');
    expect(sayArea(areaOf(millimetres(3000), millimetres(4500)), METRIC)).toBe('13.5 m²');
    expect(sayArea(-areaOf(millimetres(3000), millimetres(4500)), METRIC)).toBe('-13.5 m²');
    expect(sayArea(-1n, METRIC)).toBe('0 m²');
  });

  it('rounds a half away from zero, exactly at any size', () => {
    // 3.2 m is 1,024,000 ticks; 0.005 m² = 512,000,000 square ticks.
    expect(sayArea(512_000_000n, METRIC)).toBe('0.01 m²');
    expect(sayArea(511_999_999n, METRIC)).toBe('0 m²');
    expect(sayArea(102_400_000_000n * 10n ** 20n, METRIC)).toBe('100,000,000,000,000,000,000 m²');
  });
});

describe('money', () => {
  it('stands in its currency with the asker’s marks', () => {
    expect(sayMoney(cents(123_450), 'USD', IMPERIAL)).toBe('$1,234.50');
    expect(sayMoney(cents(123_450), 'EUR', COMMA)).toBe('1.234,50 €');
    expect(sayMoney(cents(123_450), 'EUR', METRIC)).toBe('€1,234.50');
    expect(sayMoney(cents(5), 'USD', IMPERIAL)).toBe('$0.05');
    expect(sayMoney(cents(-250), 'USD', IMPERIAL)).toBe('-$2.50');
  });

  it('tells dollars apart and refuses what is no currency', () => {
    expect(sayMoney(cents(100), 'CAD', IMPERIAL)).not.toBe(sayMoney(cents(100), 'USD', IMPERIAL));
    expect(() => sayMoney(cents(100), 'dollars', IMPERIAL)).toThrow(RangeError);
  });

  it('says every cent there is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 ** 12 }), (count) => {
        expect(
          sayMoney(cents(count), 'USD', IMPERIAL)
            .replace(/[$,.]/g, '')
            .replace(/^0+(?=\d)/, ''),
        ).toBe(String(count));
      }),
    );
  });
});

describe('numbers and weights', () => {
  it('groups thousands', () => {
    expect(sayNumber(1234.567, IMPERIAL)).toBe('1,234.57');
    expect(sayNumber(1234.5, COMMA)).toBe('1.234,5');
    expect(sayNumber(12, IMPERIAL)).toBe('12');
    expect(sayNumber(2.345, IMPERIAL, 0)).toBe('2');
    expect(sayNumber(-0.001, IMPERIAL)).toBe('0');
  });

  it('gives pounds for kilograms', () => {
    // 1 lb = 0.45359237 kg (international yard and pound agreement, 1959; from memory): 20 kg = 44.09 lb, 1.25 kg = 2.76 lb.
    expect(sayWeight(20, IMPERIAL)).toBe('44 lb');
    expect(sayWeight(1.25, IMPERIAL)).toBe('2.8 lb');
    expect(sayWeight(20, METRIC)).toBe('20 kg');
    expect(sayWeight(1.25, COMMA)).toBe('1,3 kg');
    expect(sayWeight(1234, METRIC)).toBe('1,234 kg');
  });
});
