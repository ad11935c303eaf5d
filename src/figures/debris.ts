/** Figures for debris: what floor coverings weigh laid and thrown loosely, and what carries them away. */

import { type Covering, KILOGRAMS_PER_POUND, LITRES_PER_CUBIC_YARD, looseLitres } from '../prep/tearout-amounts.ts';
import { CAUTIOUS_DEFAULT, type Cited, TRADE_CUSTOM } from './cited.ts';

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

/** Pounds a cubic yard as kilograms a litre. */
function loose(name: string, poundsPerCubicYard: number, source: Cited<number>['source']): Cited<number> {
  const value = (poundsPerCubicYard * KILOGRAMS_PER_POUND) / LITRES_PER_CUBIC_YARD;
  return { name: `Loose weight: ${name}`, said: `${poundsPerCubicYard} lb a cubic yard`, value, source };
}

/**
 * Kilograms a litre of loose debris. Tile is taken as concrete, laminate as engineered wood: the nearest published factors.
 * For vinyl floors there is none (a printed 150 lb a cubic yard is of vinyl siding): they go by their area.
 */
export const LOOSE_WEIGHT: Readonly<Record<Exclude<Covering, 'sheet vinyl' | 'plank vinyl'>, Cited<number>>> = {
  carpet: loose('carpet with pad', 105, EPA),
  laminate: loose('laminate, as engineered wood', 280, NAHB),
  tile: loose('tile and its mortar, as concrete', 860, EPA),
};

const SQUARE_FOOT = 0.09290304;
const SQUARE_YARD = 0.83612736;

/** Litres that a square metre of vinyl floor fills, rolled or thrown loosely. */
export const LOOSE_VINYL: Cited<number> = {
  name: 'Vinyl floor thrown loosely',
  said: '0.7 cubic yards from 100 sq ft; no published factor was found',
  value: (0.7 * LITRES_PER_CUBIC_YARD) / (100 * SQUARE_FOOT),
  source: CAUTIOUS_DEFAULT,
};

/** Pad thrown loosely, in kilograms a litre: what goes into bags. */
export const LOOSE_PAD = loose('pad alone', 62, {
  title: 'Volume-to-Weight Conversion Factors',
  publisher: 'US EPA',
  standing: 'from memory',
});

export const PAD_SHARE: Cited<number> = {
  name: 'Pad in carpet debris, by volume',
  said: 'half: the factor of 105 lb a cubic yard assumes 50 % carpet and 50 % pad',
  value: 0.5,
  source: { title: 'Portfolio Manager help: waste weights by volume', publisher: 'US EPA', standing: 'reported' },
};

/** Kilograms a square metre, light and heavy. */
export interface LaidWeight {
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

/** What a covering weighs as it lies, its glue or mortar included. Plans are made for the heavy end. */
export const LAID_WEIGHT: Readonly<Record<Covering, Cited<LaidWeight>>> = {
  carpet: laid('carpet with pad', [5, 10], 'yard', { title: 'Carpet and pad weights', standing: 'reported' }),
  'sheet vinyl': laid('sheet vinyl', [0.5, 1], 'foot', TRADE_CUSTOM),
  'plank vinyl': laid('vinyl plank or tile', [1, 2.2], 'foot', TRADE_CUSTOM),
  laminate: laid('laminate', [1.2, 2.2], 'foot', TRADE_CUSTOM),
  tile: laid('ceramic tile with its mortar', [4, 10], 'foot', TRADE_CUSTOM),
};

/** What carpet weighs without its pad, which is bagged apart; rolls are cut by it. Plans are made for the heavy end. */
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

/** Kilograms a pickup may carry; the sticker in the door has the true figure. */
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

/** Litres in a contractor's bag. */
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

/** What debris of a floor fills when it is thrown loosely, in litres: by its weight, or by its area where no factor is known. */
export function looseVolume(covering: Covering, kilograms: number, squareMetres: number): number {
  return covering === 'sheet vinyl' || covering === 'plank vinyl'
    ? squareMetres * LOOSE_VINYL.value
    : looseLitres(kilograms, LOOSE_WEIGHT[covering].value);
}

/** The figures that an answer about one covering leans on. */
export function debrisFigures(covering: Covering): readonly Cited<unknown>[] {
  const loosely = covering === 'sheet vinyl' || covering === 'plank vinyl' ? LOOSE_VINYL : LOOSE_WEIGHT[covering];
  const pad = covering === 'carpet' ? [CARPET_ALONE, PAD_SHARE, LOOSE_PAD] : [];
  return [loosely, LAID_WEIGHT[covering], ...pad, PICKUP_BED, PICKUP_PAYLOAD, CONTAINERS, BAG];
}
