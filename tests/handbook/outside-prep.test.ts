/** Figures the handbook quotes on tear-out and preparation, against the published source named beside each check. */

import { describe, expect, test } from 'vitest';
import { COVERING_OVER_QUOTED, PAD_AND_SOUND_QUOTED } from '../../src/figures/handbook-floors-figures.ts';
import { DAMP_AND_SMELL_QUOTED } from '../../src/figures/handbook-hazards-figures.ts';
import { ROOM_CLIMATE_QUOTED } from '../../src/figures/handbook-laying-figures.ts';
import {
  CONCRETE_SLAB_QUOTED,
  FIRM_SUBFLOOR_QUOTED,
  FLAT_FLOOR_QUOTED,
} from '../../src/figures/handbook-subfloor-figures.ts';
import { TEARING_OUT_QUOTED } from '../../src/figures/handbook-work-figures.ts';

const QUOTED = new Map(
  [
    ...TEARING_OUT_QUOTED,
    ...FLAT_FLOOR_QUOTED,
    ...COVERING_OVER_QUOTED,
    ...FIRM_SUBFLOOR_QUOTED,
    ...CONCRETE_SLAB_QUOTED,
    ...DAMP_AND_SMELL_QUOTED,
    ...PAD_AND_SOUND_QUOTED,
    ...ROOM_CLIMATE_QUOTED,
  ].map((figure) => [figure.id, figure]),
);

/** The numbers in a figure's text in the order they stand: '1 3/4 in' is [1.75], '24 to 48 hours' is [24, 48]. */
function numbers(text: string): readonly number[] {
  return [...text.matchAll(/(?:(\d+) )?(\d+)\/(\d+)|\d+(?:\.\d+)?/g)].map(([all, whole, top, bottom]) =>
    top === undefined ? Number(all) : Number(whole ?? 0) + Number(top) / Number(bottom),
  );
}

function us(id: string): readonly number[] {
  return numbers(figure(id).us);
}

function figure(id: string) {
  const found = QUOTED.get(id);
  if (found === undefined) throw new Error(`no figure ${id}`);
  return found;
}

test('numbers are read from a figure as it is written', () => {
  expect(numbers('1 3/4 in')).toEqual([1.75]);
  expect(numbers('3/16 in in 10 ft, or 1/8 in in 6 ft')).toEqual([0.1875, 10, 0.125, 6]);
  expect(numbers('0.5 to 1 lb')).toEqual([0.5, 1]);
});

describe('tack strip: Carpet and Rug Institute, CRI 104/105, Standard for Installation of Carpet, §11.1', () => {
  test('is at least 1/4 in thick', () => expect(us('tack-strip-height')).toEqual([1 / 4]));
  test('stands at most 3/8 in from the wall', () => expect(us('tack-strip-gully')).toEqual([3 / 8]));
  test('is 1 3/4 in wide in rooms over 30 ft', () => {
    expect(us('tack-strip-wide')).toEqual([1.75]);
    expect(us('tack-strip-long-room')).toEqual([30]);
  });
});

describe('asbestos and silica: OSHA', () => {
  // 29 CFR 1926.1101(k)(1): resilient floor laid no later than 1980 is presumed to contain asbestos; 2013 edition.
  test('old floors are presumed to hold asbestos up to 1980', () =>
    expect(us('asbestos-presumed-year')).toEqual([1980]));
  // 29 CFR 1926.1153(c)(1), Table 1 (2016): handheld powered chipping tools, indoors, up to and over 4 hours.
  test('powered chipping indoors asks for a protection factor of 10', () =>
    expect(us('chipping-respirator')).toEqual([10]));
});

describe('flatness', () => {
  // ASTM F710, Preparing Concrete Floors to Receive Resilient Flooring: 3/16 in in 10 ft.
  test('a floating floor: ASTM F710', () => expect(us('floor-flatness').slice(0, 2)).toEqual([3 / 16, 10]));
  // NWFA, Hardwood Floors, February 2018: 1/4 in in 10 ft or 3/16 in in 6 ft.
  test('nailed-down wood: NWFA', () => expect(us('floor-flatness-nailed')).toEqual([1 / 4, 10, 3 / 16, 6]));

  // United States Mint, Coin specifications: a cent is 1.52 mm thick.
  test.each([
    ['penny-pair', 2],
    ['penny-trio', 3],
  ] as const)('%s is %i cents of the Mint, within a hair', (id, cents) => {
    const [inches = 0] = us(id);
    expect(Math.abs(inches * 25.4 - cents * 1.52)).toBeLessThan(0.25);
    expect(Math.abs((numbers(figure(id).metric ?? '')[0] ?? 0) - cents * 1.52)).toBeLessThan(0.25);
  });

  // 29 CFR 1926.1153(c)(1), Table 1 (2016): handheld grinders, uses other than mortar removal, indoors.
  test('grinding concrete: OSHA', () => {
    expect(us('grinder-airflow')).toEqual([25]);
    expect(us('grinder-hours')).toEqual([4]);
  });
});

describe('collection: City of DeKalb, FAQ 221, bulky waste', () => {
  test('carpet is rolled, at most 4 ft and 50 lb, ten rolls a week', () => {
    expect(us('bundle-length')).toEqual([4]);
    expect(us('bundle-weight')).toEqual([50]);
    expect(us('bundles-weekly')).toEqual([10]);
  });
  test('cans hold at most 32 gallons', () => expect(us('trash-can-size')).toEqual([32]));
});

describe('a second layer: APA, Engineered Wood Construction Guide, E30V, 2011, Table 14', () => {
  test('is 1/4 in over smooth panels, nailed at 3 and 6 in', () => {
    expect(us('overlay-smooth')).toEqual([1 / 4]);
    expect(us('overlay-thin-nails')).toEqual([3, 6]);
  });
  test('is 11/32 in over boards, nailed at 6 and 8 in', () => {
    expect(us('overlay-boards')).toEqual([11 / 32]);
    expect(us('overlay-nails')).toEqual([6, 8]);
  });
  test('keeps nails 3/8 in from the edge, and seams 2 in off those below', () => {
    expect(us('overlay-edge')).toEqual([3 / 8]);
    expect(us('overlay-offset')).toEqual([2]);
  });
});

describe('the subfloor', () => {
  // Wood Floor Business, A guide to subfloors used under wood flooring, after the NWFA installation guidelines.
  test('panels on joists: NWFA', () => {
    expect(us('plywood-on-joists')).toEqual([5 / 8]);
    expect(us('osb-on-joists')).toEqual([23 / 32]);
    expect(us('wide-joist-panel')).toEqual([3 / 4]);
  });
  // ICC, International Residential Code 2021, Table R301.7: floors bend at most the span over 360.
  test('bend of a joist: ICC', () => {
    const [bend = 0, span = 0] = us('joist-deflection');
    expect(bend).toBeCloseTo((span * 12) / 360, 9);
  });
  // NAHB, Residential Construction Performance Guidelines, floors: 1/2 in within 20 ft.
  test('slope of a new floor: NAHB', () => expect(us('slope-benchmark')).toEqual([1 / 2, 20]));
});

describe('moisture of concrete', () => {
  // ASTM F2170-09, §10.1 and §10.2, as a maker of probes prints them (Operating instructions, RH testing).
  test('number of tests and depth of the hole: ASTM F2170', () => {
    expect(us('slab-tests')).toEqual([3, 1000, 1, 1000]);
    expect(us('rh-probe-depth')).toEqual([40]);
  });
  // ASTM F710: 3 lb or 170 µg a second and square meter, and 75% relative humidity, unless the maker says otherwise.
  test('limits: ASTM F710', () => {
    expect(us('slab-rh-limit')).toEqual([75]);
    expect(us('slab-chloride-limit')[0]).toBe(3);
  });
  test('the metric chloride limits are the same amounts of water', () => {
    const [gram = 0] = numbers(figure('slab-chloride-limit').metric ?? '');
    expect(gram).toBeCloseTo((170 * 24 * 3600) / 1e6, 0);
    const [plank = 0] = numbers(figure('slab-chloride-plank').metric ?? '');
    expect(Math.abs(plank / gram - 5 / 3)).toBeLessThan(0.1);
  });
  // ASTM D4263-83 (reapproved 2018): a sheet 18 in square, at least 16 h.
  test('plastic sheet: ASTM D4263', () => {
    expect(us('sheet-test-size')).toEqual([18]);
    expect(us('sheet-test-hours')).toEqual([16]);
  });
  // The Construction Specifier, Artistry meets practicality: 28 to 30 days for each 25 mm.
  test('drying of a slab: The Construction Specifier', () => expect(us('concrete-drying')).toEqual([28, 30]));
  // US EPA, A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003, moisture control.
  test('humidity indoors: EPA', () => expect(us('indoor-humidity')).toEqual([60, 30, 50]));
});

describe('water, mold and rot', () => {
  // US EPA, A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003: mold basics, and who should do the cleanup.
  test('a leak is dried in a day or two, small mold is cleaned by the owner: EPA', () => {
    expect(us('leak-dry-time')).toEqual([24, 48]);
    expect(us('mold-diy-area')).toEqual([10]);
  });
  // USDA Forest Products Laboratory, Improvements in decay resistance based on moisture exclusion, 2000.
  test('wood is kept below 20%: USDA', () => expect(us('wood-decay-line')).toEqual([20]));
  // ICC, International Residential Code 2021, R408.1 and its exception, R408.3 item 1.
  test('crawl spaces: ICC', () => {
    expect(us('crawl-vents')).toEqual([1, 150]);
    expect(us('crawl-vents-covered')).toEqual([1, 1500]);
    expect(us('crawl-lap')).toEqual([6]);
    expect(us('crawl-turn-up')).toEqual([6]);
  });
});

describe('sound: ICC, International Building Code 2021, section 1206', () => {
  test('IIC and STC are 50 between homes, 45 measured in the building', () => {
    expect(us('sound-code')).toEqual([50]);
    expect(us('sound-code-field')).toEqual([45]);
  });
});

/** What a figure would be in the other system, by its units; nothing where they are not lengths or temperatures. */
function converted(text: string): readonly number[] | undefined {
  if (/°F(?! a day)/.test(text)) return numbers(text).map((degrees) => ((degrees - 32) * 5) / 9);
  if (/^[\d /]+(to [\d /]+)?in$/.test(text)) return numbers(text).map((inches) => inches * 25.4);
  return undefined;
}

describe('metric words say the same as US words, rounded', () => {
  const pairs = [...QUOTED.values()].flatMap(({ id, us: text, metric }) => {
    const values = converted(text);
    if (values === undefined || metric === undefined) return [];
    return [{ id, values, metric, scale: /\bcm\b/.test(metric) ? 10 : 1, slack: /°C/.test(metric) ? 1 : undefined }];
  });

  test('there are enough of them to mean something', () => expect(pairs.length).toBeGreaterThan(20));
  test.each(pairs)('$id', ({ values, metric, scale, slack }) => {
    const written = numbers(metric).map((value) => value * scale);
    expect(written.length).toBe(values.length);
    for (const [i, value] of values.entries())
      expect(Math.abs((written[i] ?? 0) - value)).toBeLessThanOrEqual(slack ?? Math.max(0.5, value * 0.06));
  });
});
