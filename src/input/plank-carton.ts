/** What a carton holds: a count of planks, an area, or both, and the missing one worked out from the size. */

import {
  areaAgainstCount,
  areaStands,
  cartonAreaRead,
  cartonMissing,
  countFromArea,
  countOutOfRange,
  planksNotWhole,
} from '../text/plank-problems-text.ts';
import { type Area, SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../units/length.ts';
import { roundedRatio } from './length-number.ts';
import type { Unclaimed } from './plank-claim.ts';
import { FIGURE, FIGURE_START, figureOf } from './price.ts';
import type { Reading, Units } from './reading.ts';
import type { Flaw } from './rooms/room-flaw.ts';
import { LETTER } from './rooms/room-plain.ts';
import { sayArea, sayNumber } from './say.ts';

const END = `(?![${LETTER}])`;
export const CARTON = `(?:cartons?|box(?:es)?|packs?|packets?|packages?|cases?|bx|ctn|pkg)\\.?${END}`;
export const PLANK = `(?:planks?|boards?|pieces?|pcs?|tiles?)\\.?${END}`;
export const SQUARE_FOOT = `(?:(?:sq(?:uare)?\\.? ?-?(?:ft|feet|foot)|sqft|sf|(?:ft|feet|foot) ?\\^?[2²])\\.?${END})`;
export const SQUARE_METRE = `(?:(?:sq(?:uare)?\\.? ?-?(?:met(?:er|re)s?|m)|sqm|qm|m ?\\^?[2²])\\.?${END})`;
export const PER = `(?:(?:per|an?|each|every|in|to|for|the)${END}|/)`;

const AREA = new RegExp(
  `${FIGURE_START}(?<figure>${FIGURE}) ?-?(?:(?<foot>${SQUARE_FOOT})|(?<metre>${SQUARE_METRE}))(?! ?${PER} ?(?:${PER} ?)?${PLANK})(?: ?(?:${PER} ?){1,2}${CARTON})?`,
);
const COUNTS = [
  `${FIGURE_START}(?<figure>${FIGURE}) ?-?(?:(?:${PLANK}|ct${END}|count${END}) ?)?(?:${PER} ?){1,2}${CARTON}`,
  `${CARTON} ?(?:(?:of|has|holds|contains|with|is)${END}|[:=])? ?(?<figure>${FIGURE})(?![\\d.,]*\\d)(?! ?-?(?:x|${PER} ?)) ?(?:${PLANK})?`,
  `${FIGURE_START}(?<figure>${FIGURE}) ?-?(?:${PLANK}|ct${END}|count${END})(?: ?(?:${PER} ?)*${CARTON})?`,
  `${FIGURE_START}(?<figure>${FIGURE}) ?-?(?:carton|box|packs?|case)${END}`,
].map((source) => new RegExp(source));

/** The most planks in a carton. */
const MOST = 1000;
/** Printed areas are nominal: this near to a whole number of planks they are taken at their word. */
const TOLERANCE = 50n;

interface Place {
  readonly from: number;
  readonly to: number;
}

/** What is told of a carton, each with its place in the text. */
export interface ToldCarton {
  readonly area?: { readonly area: Area; readonly typed: string } & Place;
  readonly count?: { readonly count: number } & Place;
}

/** Claims the count and the area of a carton. A number a carton that is not whole is an area, and that is noted. */
export function claimCarton(
  text: string,
  rest: Unclaimed,
  units: Units,
  reading: Reading,
): { told: ToldCarton; flaws: Flaw[] } {
  const flaws: Flaw[] = [];
  let told: ToldCarton = {};
  const found = rest.claim(AREA);
  if (found) {
    const foot = found.groups?.foot !== undefined;
    told = areaTold(found, foot ? 'imperial' : 'metric', reading) ?? {};
    if (!told.area) flaws.push(cartonFlaw(found));
  }
  const counted = rest.claimFirst(COUNTS);
  if (!counted) return { told, flaws };
  const place = placeOf(counted);
  const value = figureOf(counted.groups?.figure ?? '', reading.habits);
  if (!value) return { told, flaws: [...flaws, cartonFlaw(counted)] };
  if (value.top % value.bottom === 0n) {
    const count = value.top / value.bottom;
    if (count >= 1n && count <= BigInt(MOST))
      return { told: { ...told, count: { count: Number(count), ...place } }, flaws };
    const few = { ...place, expected: countOutOfRange(MOST), mends: () => [] };
    return { told, flaws: [...flaws, few] };
  }
  const area = told.area ? undefined : areaTold(counted, units, reading);
  if (!area?.area) return { told, flaws: [...flaws, cartonFlaw(counted)] };
  const typed = text.slice(place.from, place.to).trim();
  reading.note(cartonAreaRead(typed, area.area.typed));
  return { told: area, flaws };
}

function cartonFlaw(found: RegExpExecArray): Flaw {
  return { ...placeOf(found), expected: cartonMissing(), mends: () => [] };
}

function placeOf(found: RegExpExecArray): Place {
  return { from: found.index, to: found.index + found[0].length };
}

function areaTold(found: RegExpExecArray, units: Units, { habits }: Reading): ToldCarton | undefined {
  const figure = found.groups?.figure ?? '';
  const value = figureOf(figure, habits);
  if (!value || value.top <= 0n) return undefined;
  const unit = units === 'imperial' ? SQUARE_TICKS_PER_SQUARE_FOOT : SQUARE_TICKS_PER_SQUARE_METRE;
  const area = roundedRatio({ top: value.top * unit, bottom: value.bottom });
  return { area: { area, typed: `${figure} ${units === 'imperial' ? 'sq ft' : 'm²'}`, ...placeOf(found) } };
}

export interface Carton {
  readonly count: number;
  readonly area: Area;
}

/** Count and area together: the missing one worked out from one plank's area, both checked to within 2 %. */
export function cartonOf(told: ToldCarton, plank: Area, units: Units, reading: Reading): Carton | Flaw {
  const saying = { units, decimal: reading.habits.decimal };
  const { area, count } = told;
  if (!area) return { count: count?.count ?? 1, area: plank * BigInt(count?.count ?? 1) };
  const planks = count?.count ?? Number(roundedRatio({ top: area.area, bottom: plank }));
  const product = plank * BigInt(planks);
  const apart = area.area > product ? area.area - product : product - area.area;
  const place = { from: area.from, to: area.to };
  if (planks < 1 || apart * TOLERANCE > product) {
    const exact = sayNumber(Number((area.area * 1000n) / plank) / 1000, saying, 3);
    const expected = count
      ? areaAgainstCount(area.typed, planks, sayArea(product, saying))
      : planksNotWhole(area.typed, exact);
    return { ...place, expected, mends: () => [] };
  }
  if (planks > MOST) return { ...place, expected: countOutOfRange(MOST), mends: () => [] };
  if (!count) reading.note(countFromArea(area.typed, planks));
  if (apart > 0n && sayArea(area.area, saying) !== sayArea(product, saying)) {
    reading.note(areaStands(area.typed, planks, sayArea(product, saying)));
  }
  return { count: planks, area: area.area };
}
