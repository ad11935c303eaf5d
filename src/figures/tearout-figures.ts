/** Figures for tearing out a floor: strips, tack strip, staples, tools, time, debris, old asbestos and lead. */

import {
  type Country,
  type Covering,
  KILOGRAMS_PER_POUND,
  LITRES_PER_CUBIC_YARD,
  looseLitres,
  type Stapling,
} from '../prep/old-floor.ts';
import { type Area, feet, inches, type Length, SQUARE_TICKS_PER_SQUARE_FOOT } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited, COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';

// Figures for asbestos in old floors and lead paint on trim.

const ASBESTOS_YEAR: Cited<number> = {
  name: 'Resilient floor and its glue that OSHA presumes to hold asbestos',
  said: 'laid up to 1980, unless tested; later is not presumed free of it',
  value: 1980,
  source: {
    title: 'Asbestos standards: questions and answers; interpretation of 1 August 1997',
    publisher: 'OSHA',
    standing: 'published',
  },
};

const ASBESTOS_PRESUMED: Cited<string> = {
  name: 'Resilient floor, backing or glue that was not tested',
  said: 'presumed to hold asbestos, whatever its year, unless positively certain',
  value: 'presume',
  source: { title: 'Recommended Work Practices for resilient floors', publisher: 'RFCI', standing: 'published' },
};

const MARGIN_US: Cited<number> = {
  name: 'House of the US whose untested resilient floor is refused',
  said: 'built up to 1989; later only with proof',
  value: 1989,
  source: CAUTIOUS_DEFAULT,
};

const MARGIN_ELSEWHERE: Cited<number> = {
  name: 'House elsewhere, or with metric sizes, whose untested resilient floor is refused',
  said: 'built up to 2005; later only with proof (sale ended in the UK in 1999, in Australia in 2003)',
  value: 2005,
  source: CAUTIOUS_DEFAULT,
};

/** Untested resilient floors are refused in a house built up to this year. */
export const ASBESTOS_MARGIN: Readonly<Record<Country, Cited<number>>> = {
  us: MARGIN_US,
  canada: MARGIN_ELSEWHERE,
  uk: MARGIN_ELSEWHERE,
  australia: MARGIN_ELSEWHERE,
  elsewhere: MARGIN_ELSEWHERE,
};

const ASBESTOS_WORK: Cited<string> = {
  name: 'What is never done to such a floor',
  said: 'sand, dry sweep, dry scrape, drill, saw, or chip it by machine',
  value: 'recommended work practices',
  source: { title: 'Recommended Work Practices for resilient floors', publisher: 'RFCI', standing: 'published' },
};

export const ASBESTOS_FIGURES: readonly Cited<unknown>[] = [
  ASBESTOS_YEAR,
  ASBESTOS_PRESUMED,
  MARGIN_US,
  MARGIN_ELSEWHERE,
  ASBESTOS_WORK,
];

export function asbestosFigures(country: Country): readonly Cited<unknown>[] {
  return [ASBESTOS_YEAR, ASBESTOS_PRESUMED, ASBESTOS_MARGIN[country], ASBESTOS_WORK];
}

// Lead paint on trim.

const RRP = {
  title: 'Renovation, Repair and Painting rule: questions and answers',
  publisher: 'US EPA',
  standing: 'published',
} as const;
const MEMORY = { title: 'National rules on lead in paint', standing: 'from memory' } as const;

function year(where: string, value: number, source: Cited<number>['source']): Cited<number> {
  return { name: `Homes whose paint may hold lead, ${where}`, said: `built before ${value}`, value, source };
}

/** Paint in a home built before this year may contain lead. */
export const LEAD_YEARS: Readonly<Record<Country, Cited<number>>> = {
  us: year('US', 1978, RRP),
  canada: year('Canada', 1990, MEMORY),
  uk: year('UK', 1992, MEMORY),
  australia: year('Australia', 1997, MEMORY),
  elsewhere: year('other countries: the latest of these', 1997, CAUTIOUS_DEFAULT),
};

export const MINOR_WORK: Cited<Area> = {
  name: 'Minor repair of old paint, in the US',
  said: 'up to 6 sq ft a room in 30 days, a removed part counted whole; not where a painted part is destroyed as it comes off; paid work beyond it falls under the rule',
  value: 6n * SQUARE_TICKS_PER_SQUARE_FOOT,
  source: RRP,
};

export const LEAD_FIGURES: readonly Cited<unknown>[] = [...Object.values(LEAD_YEARS), MINOR_WORK];

export function leadFigures(country: Country): readonly Cited<unknown>[] {
  return [LEAD_YEARS[country], ...(country === 'us' ? [MINOR_WORK] : [])];
}

const CRI = {
  title: 'CRI 104/105, Standard for Installation of Carpet',
  publisher: 'Carpet and Rug Institute',
  section: '§11.1',
  standing: 'published',
} as const;
const COLLECTION = { title: 'Bulky waste: collection rules of a US city', standing: 'published' } as const;

export const BUNDLE: Cited<{ readonly length: Length; readonly kilograms: number; readonly aWeek: number }> = {
  name: 'Bundle at the curb',
  said: 'at most 4 ft long and 50 lb, at most 10 rolls a week; cans of at most 32 gallons; ask your own hauler',
  value: { length: feet(4), kilograms: 50 * KILOGRAMS_PER_POUND, aWeek: 10 },
  source: COLLECTION,
};

/** Share of the carpet alone when the weight is given with its pad, but no less than the usual carpet weight. */
export const CARPET_SHARE: Cited<number> = {
  name: 'Carpet in the weight of carpet with pad',
  said: '45%, and no less than carpet alone usually weighs',
  value: 0.45,
  source: CAUTIOUS_DEFAULT,
};

export const ONE_PERSON: Cited<number> = {
  name: 'What one person lifts',
  said: '35 lb: a cautious default; give your own as carry',
  value: 35 * KILOGRAMS_PER_POUND,
  source: TRADE_CUSTOM,
};

export const STRIP_WIDTH: Cited<Length> = {
  name: 'Width of a strip of old floor',
  said: '3 ft, rolled and tied with a slit strip',
  value: feet(3),
  source: COMMON_PRACTICE,
};

export const GULLY: Cited<Length> = {
  name: 'Gully between tack strip and wall',
  said: 'at most 3/8 in',
  value: inches(0.375),
  source: CRI,
};

export const TACK_STRIP: Cited<Length> = {
  name: 'Tack strip',
  said: 'at least 1 in wide and 1/4 in thick, two nails or more a piece',
  value: inches(1),
  source: CRI,
};

/** In a room longer than `beyond`, tack strip is wider or doubled and reaches `reach` from the gully. */
export const WIDE_TACK_STRIP: Cited<{ readonly beyond: Length; readonly reach: Length }> = {
  name: 'Tack strip in rooms over 30 ft',
  said: '1 3/4 in wide, or two strips side by side',
  value: { beyond: feet(30), reach: inches(2) },
  source: CRI,
};

export const TACK_STRIP_PIECE: Cited<Length> = {
  name: 'Length of a piece of tack strip',
  said: '4 ft',
  value: feet(4),
  source: TRADE_CUSTOM,
};

export const DOORWAY: Cited<Length> = {
  name: 'Doorway',
  said: '32 in wide, one a room',
  value: inches(32),
  source: TRADE_CUSTOM,
};

/** Width of the pad, and its fewest and most staples. */
export const PAD_STAPLES: Cited<{ readonly breadth: Length; readonly least: Stapling; readonly most: Stapling }> = {
  name: 'Staples in a pad',
  said: 'breadths of 6 ft: both edges every 12 in at the least, three rows every 6 in at the most',
  value: {
    breadth: feet(6),
    least: { rows: 2, spacing: inches(12) },
    most: { rows: 3, spacing: inches(6) },
  },
  source: TRADE_CUSTOM,
};

/** Ticks of cutting per knife blade. */
export const BLADE_LASTS: Cited<Length> = {
  name: 'Fresh blade in old carpet',
  said: 'every 30 ft of cut',
  value: feet(30),
  source: TRADE_CUSTOM,
};

export const MASK_LASTS: Cited<number> = {
  name: 'N95 mask in a dusty room',
  said: 'a new one every 4 hours, sooner when breathing gets hard',
  value: 4,
  source: TRADE_CUSTOM,
};

/** Slow and fast, per hour for one person: square feet, feet of tack strip, staples. */
interface Pace {
  readonly slow: number;
  readonly fast: number;
}

function pace(name: string, slow: number, fast: number, unit: string): Cited<Pace> {
  return {
    name: `Pace: ${name}`,
    said: `${slow}–${fast} ${unit} an hour`,
    value: { slow, fast },
    source: TRADE_CUSTOM,
  };
}

export const LIFTING_PACE: Readonly<Record<Covering, Cited<Pace>>> = {
  carpet: pace('carpet and pad cut, rolled and carried', 100, 250, 'sq ft'),
  'sheet vinyl': pace('sheet vinyl scored, pulled and scraped', 20, 80, 'sq ft'),
  'plank vinyl': pace('plank lifted and stacked', 60, 200, 'sq ft'),
  laminate: pace('laminate unlocked and stacked', 80, 200, 'sq ft'),
  tile: pace('tile carried out', 10, 25, 'sq ft'),
};
export const TACK_STRIP_PACE = pace('tack strip pried up', 40, 100, 'ft');
export const STAPLE_PACE = pace('staples pulled', 200, 600, 'staples');

/** Years, straight-line depreciation. */
const CARPET_LIFE: Cited<{ readonly least: number; readonly most: number }> = {
  name: 'Carpet’s useful life where a deposit is in dispute',
  said: '5 to 10 years, written off in equal parts; local law decides',
  value: { least: 5, most: 10 },
  source: { title: 'Guides for landlords and tenants', standing: 'reported' },
};

export const COVERING_NOT_GIVEN: Cited<string> = {
  name: 'Floor that comes up, if not given',
  said: 'carpet with its pad',
  value: 'carpet',
  source: TRADE_CUSTOM,
};

export const TEAROUT_FIGURES: readonly Cited<unknown>[] = [
  BUNDLE,
  CARPET_SHARE,
  ONE_PERSON,
  STRIP_WIDTH,
  GULLY,
  TACK_STRIP,
  WIDE_TACK_STRIP,
  TACK_STRIP_PIECE,
  DOORWAY,
  PAD_STAPLES,
  BLADE_LASTS,
  MASK_LASTS,
  ...Object.values(LIFTING_PACE),
  TACK_STRIP_PACE,
  STAPLE_PACE,
  CARPET_LIFE,
  COVERING_NOT_GIVEN,
];

export function tearoutFigures(covering: Covering): readonly Cited<unknown>[] {
  const carpet = [
    GULLY,
    TACK_STRIP,
    WIDE_TACK_STRIP,
    TACK_STRIP_PIECE,
    DOORWAY,
    PAD_STAPLES,
    TACK_STRIP_PACE,
    STAPLE_PACE,
  ];
  return [
    BUNDLE,
    ONE_PERSON,
    STRIP_WIDTH,
    ...(covering === 'carpet' ? carpet : []),
    BLADE_LASTS,
    MASK_LASTS,
    LIFTING_PACE[covering],
  ];
}

// Debris: weights of floor coverings, laid and loose, and what carries them away.

const EPA = {
  title: 'Volume-to-Weight Conversion Factors',
  publisher: 'US EPA',
  year: 2016,
  standing: 'published',
} as const;
const NAHB = {
  title: 'Residential construction waste: debris densities',
  publisher: 'NAHB Research Center',
  year: 1995,
  standing: 'reported',
} as const;

function loose(name: string, poundsPerCubicYard: number, source: Cited<number>['source']): Cited<number> {
  const value = (poundsPerCubicYard * KILOGRAMS_PER_POUND) / LITRES_PER_CUBIC_YARD;
  return { name: `Loose weight: ${name}`, said: `${poundsPerCubicYard} lb a cubic yard`, value, source };
}

/**
 * Kilograms per liter of loose debris. Tile counts as concrete and laminate as engineered wood, the nearest published
 * factors. There is none for vinyl floors (a printed 150 lb per cubic yard is for vinyl siding), so they go by area.
 */
export const LOOSE_WEIGHT: Readonly<Record<Exclude<Covering, 'sheet vinyl' | 'plank vinyl'>, Cited<number>>> = {
  carpet: loose('carpet with pad', 105, EPA),
  laminate: loose('laminate, as engineered wood', 280, NAHB),
  tile: loose('tile and its mortar, as concrete', 860, EPA),
};

const SQUARE_FOOT = 0.09290304;
const SQUARE_YARD = 0.83612736;

/** Liters per square meter of vinyl floor, rolled or loose. */
const LOOSE_VINYL: Cited<number> = {
  name: 'Vinyl floor thrown loosely',
  said: '0.7 cubic yards from 100 sq ft; no published factor was found',
  value: (0.7 * LITRES_PER_CUBIC_YARD) / (100 * SQUARE_FOOT),
  source: CAUTIOUS_DEFAULT,
};

/** Loose pad in kilograms per liter, for what goes into bags. */
export const LOOSE_PAD = loose('pad alone', 62, {
  title: 'Volume-to-Weight Conversion Factors',
  publisher: 'US EPA',
  standing: 'from memory',
});

export const PAD_SHARE: Cited<number> = {
  name: 'Pad in carpet debris, by volume',
  said: 'half: the factor of 105 lb a cubic yard assumes 50% carpet and 50% pad',
  value: 0.5,
  source: { title: 'Portfolio Manager help: waste weights by volume', publisher: 'US EPA', standing: 'reported' },
};

/** Kilograms per square meter, light and heavy. */
interface LaidWeight {
  readonly light: number;
  readonly heavy: number;
}

function laid(name: string, pounds: readonly [number, number], per: 'yard' | 'foot', source: Cited<number>['source']) {
  const squareMetres = per === 'yard' ? SQUARE_YARD : SQUARE_FOOT;
  const [light, heavy] = pounds.map((weight) => (weight * KILOGRAMS_PER_POUND) / squareMetres) as [number, number];
  return {
    name: `Laid weight: ${name}`,
    said: `${pounds.join('–')} lb a square ${per}`,
    value: { light, heavy },
    source,
  };
}

/** Weight of a covering as laid, glue or mortar included. Plans use the heavy end. */
export const LAID_WEIGHT: Readonly<Record<Covering, Cited<LaidWeight>>> = {
  carpet: laid('carpet with pad', [5, 10], 'yard', { title: 'Carpet and pad weights', standing: 'reported' }),
  'sheet vinyl': laid('sheet vinyl', [0.5, 1], 'foot', TRADE_CUSTOM),
  'plank vinyl': laid('vinyl plank or tile', [1, 2.2], 'foot', TRADE_CUSTOM),
  laminate: laid('laminate', [1.2, 2.2], 'foot', TRADE_CUSTOM),
  tile: laid('ceramic tile with its mortar', [4, 10], 'foot', TRADE_CUSTOM),
};

/**
 * Weight of carpet without its pad, which is bagged separately; rolls are cut by this weight. Plans use the heavy end.
 */
export const CARPET_ALONE: Cited<LaidWeight> = laid('carpet alone, without its pad', [4, 4.5], 'yard', {
  title: 'Carpet and pad weights',
  standing: 'reported',
});

export const PICKUP_BED: Cited<number> = {
  name: 'Level bed of a pickup, 8 ft',
  said: '2 cubic yards',
  value: 2 * LITRES_PER_CUBIC_YARD,
  source: { title: 'Hauling guides', standing: 'reported' },
};

/** Kilograms a pickup may carry; the sticker in the door has the actual figure. */
export const PICKUP_PAYLOAD: Cited<number> = {
  name: 'Payload of a pickup',
  said: '1,000 lb; the sticker in the door says yours, and people and tools count against it',
  value: 1000 * KILOGRAMS_PER_POUND,
  source: TRADE_CUSTOM,
};

/** Cubic yards, nominal. */
export const CONTAINERS: Cited<readonly [number, ...number[]]> = {
  name: 'Roll-off containers',
  said: '10, 15, 20, 30, 40 cubic yards',
  value: [10, 15, 20, 30, 40],
  source: { title: 'Hauling guides', standing: 'reported' },
};

/** Liters per contractor bag. */
export const BAG: Cited<number> = {
  name: 'Contractor bag',
  said: '42 gallons (159 L)',
  value: 159,
  source: TRADE_CUSTOM,
};

export const DEBRIS_FIGURES: readonly Cited<unknown>[] = [
  ...Object.values(LOOSE_WEIGHT),
  LOOSE_VINYL,
  LOOSE_PAD,
  PAD_SHARE,
  ...Object.values(LAID_WEIGHT),
  CARPET_ALONE,
  PICKUP_BED,
  PICKUP_PAYLOAD,
  CONTAINERS,
  BAG,
];

/** Loose volume of a floor's debris in liters: by weight, or by area if no factor is known. */
export function looseVolume(covering: Covering, kilograms: number, squareMetres: number): number {
  return covering === 'sheet vinyl' || covering === 'plank vinyl'
    ? squareMetres * LOOSE_VINYL.value
    : looseLitres(kilograms, LOOSE_WEIGHT[covering].value);
}

export function debrisFigures(covering: Covering): readonly Cited<unknown>[] {
  const loosely = covering === 'sheet vinyl' || covering === 'plank vinyl' ? LOOSE_VINYL : LOOSE_WEIGHT[covering];
  const pad = covering === 'carpet' ? [CARPET_ALONE, PAD_SHARE, LOOSE_PAD] : [];
  return [loosely, LAID_WEIGHT[covering], ...pad, PICKUP_BED, PICKUP_PAYLOAD, CONTAINERS, BAG];
}
