/** Figures in a text that tell of a hazard: years and decades, by how old they make a house or a floor, and what a meter reads. */

import { TABLES } from './lexicon/all.ts';
import type { Token } from './tokens.ts';

/** Floors laid up to this year are taken for suspect where nothing else is known (margin over OSHA's 1980; a cautious default). */
const SUSPECT = 1989;
/** The last year whose houses fall under the US rule on lead paint (EPA, 40 CFR 745: before 1978). */
const LEAD = 1977;

/** More humidity in a slab, and more moisture in wood, than most makers allow (common practice: 75 to 85 % RH, 12 %). */
const HUMIDITY = 85;
const MOISTURE = 12;
/** What a slab may read by the strictest of them. */
const DRY_SLAB = 75;

const [OLD_YEAR, LEAD_YEAR, NEW_YEAR, HIGH_HUMIDITY, HIGH_MOISTURE, LOW_READING] = [
  'OLD_YEAR',
  'LEAD_YEAR',
  'NEW_YEAR',
  'HIGH_HUMIDITY',
  'HIGH_MOISTURE',
  'LOW_READING',
].map((name) => TABLES.classes.get(name) ?? -1);

const DECADES: Readonly<Record<string, number>> = {
  twenties: 1920,
  thirties: 1930,
  forties: 1940,
  fifties: 1950,
  sixties: 1960,
  seventies: 1970,
  eighties: 1980,
  nineties: 1990,
};

/** What makes a figure of four digits no year: what it measures, or what it is the number of. */
const MEASURED = new Set(
  'sq square sqft sf ft feet foot inch inches mm cm meters metres yd yards dollars bucks lb lbs kg psi rpm watt watts st street ave avenue rd road main blvd lane ln drive dr apt style look quilt boxes planks pieces grit degrees ml'.split(
    ' ',
  ),
);
const NUMBERED = new Set(
  'model code no number apt unit suite room sku lot po item order invoice size grit page'.split(' '),
);

const NONE: readonly number[] = [];

/** The classes of figures that a token belongs to. */
export function figureClasses(tokens: readonly Token[], i: number): readonly number[] {
  const token = tokens[i];
  if (!token) return NONE;
  const year = yearAt(tokens, i);
  if (year === undefined) return readingClasses(token.word);
  return [...(year <= SUSPECT ? [OLD_YEAR ?? -1] : [NEW_YEAR ?? -1]), ...(year <= LEAD ? [LEAD_YEAR ?? -1] : [])];
}

function readingClasses(word: string): readonly number[] {
  if (!/^\d{1,2}(?:\.\d)?$/.test(word)) return NONE;
  const figure = Number(word);
  const low = figure <= MOISTURE || (figure >= 40 && figure <= DRY_SLAB);
  return [
    ...(low ? [LOW_READING ?? -1] : []),
    ...(figure > MOISTURE ? [HIGH_MOISTURE ?? -1] : []),
    ...(figure > HUMIDITY ? [HIGH_HUMIDITY ?? -1] : []),
  ];
}

function yearAt(tokens: readonly Token[], i: number): number | undefined {
  const word = tokens[i]?.word ?? '';
  const decade = DECADES[word];
  if (decade !== undefined) return decade;
  if (!/^\d{2,4}$/.test(word)) return undefined;
  const [before, next] = [tokens[i - 1], tokens[i + 1]];
  // `50s`: the figure and its letter are two words that touch; `’50s` has a mark before it.
  const plural = next?.word === 's' && next.from - (tokens[i]?.to ?? 0) <= 1;
  const figure = Number(word);
  if (word.length === 2 && !plural) {
    // `built in 64`
    const said = `${tokens[i - 2]?.word ?? ''} ${before?.word ?? ''}`;
    return /^(?:built in|built around|from about|dates from|house from|back in)$/.test(said) && figure >= 20
      ? 1900 + figure
      : undefined;
  }
  if (plural && word.length === 2) return figure % 10 === 0 && figure >= 20 ? 1900 + figure : undefined;
  if (word.length !== 4 || figure < 1850 || figure > 2100) return undefined;
  const behind = plural ? tokens[i + 2] : next;
  if (behind && MEASURED.has(behind.word) && behind.at - (tokens[i]?.at ?? 0) <= 2) return undefined;
  if (before && NUMBERED.has(before.word)) return undefined;
  return figure;
}
