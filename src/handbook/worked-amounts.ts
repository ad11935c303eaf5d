/** Computes leads of entries about amounts: what weighs, dries, lasts, and costs how much, and how long it takes. */

import { QUOTED } from '../figures/all-figures.ts';
import { WORKED } from '../text/handbook-text.ts';

export interface Worked {
  readonly lead: string;
  readonly values: Readonly<Record<string, number>>;
}

export type Worker = (text: string, metric: boolean) => Worked | undefined;

/** A figure of the handbook as a sentence quotes it. Throws an Error where there is none by that id. */
export function quotedFigure(id: string, metric: boolean): string {
  const quoted = QUOTED.get(id);
  if (!quoted) throw new Error(`${id} is no figure`);
  return metric ? (quoted.metric ?? quoted.us) : quoted.us;
}

/** Two sides of a room: groups 1 and 3, with an m in 2 and 4. */
export const ROOM_SIDES =
  /(?<![\d.,])(\d{1,2}(?:\.\d{1,2})?) ?(?:'|ft|feet|(m))? ?(?:x|×|by) ?(\d{1,2}(?:\.\d{1,2})?)(?! ?(?:"|in|mm|cm|x|\d)) ?(?:'|ft|feet|(m)(?![a-z]))?/g;

const WEIGHT = /(?<![\d.,])(\d{1,3}(?:,\d{3})+|\d{2,5}) ?-?(lbs?|pounds?|kg|kilos?)(?![a-z])/;
const GALLONS = /(?<![\d.,])(\d{2,4}) ?-?(?:gal|gallons?)(?![a-z])/;
const POUNDS_A_GALLON = 8.34;
const POUNDS_A_KILO = 2.20462;
const HEAVY_POUNDS = 500;

/** A weight on one spot of a floating floor; a tank's water by its gallons. */
const heavy: Worker = (text, metric) => {
  const gallons = Number(GALLONS.exec(text)?.[1]);
  const [, said = '', unit = ''] = WEIGHT.exec(text) ?? [];
  const kilos = unit.startsWith('k');
  const given = Number(said.replaceAll(',', '')) * (kilos ? POUNDS_A_KILO : 1);
  const pounds = given > 0 ? given : gallons > 0 ? Math.round((gallons * POUNDS_A_GALLON) / 10) * 10 : 0;
  if (pounds === 0) return undefined;
  const weight =
    given > 0 ? `${said} ${kilos ? 'kg' : 'lb'}` : metric ? `${Math.round(pounds / POUNDS_A_KILO)} kg` : `${pounds} lb`;
  const limit = quotedFigure('heavy-single', metric || kilos);
  const water = given > 0 ? '' : WORKED.waterAlone;
  return {
    lead:
      pounds >= HEAVY_POUNDS
        ? WORKED.tooHeavy(`${weight}${water}`, limit)
        : WORKED.notHeavy(`${weight}${water}`, limit),
    values: { pounds: Math.round(pounds) },
  };
};

const SHARE = /(?<![\d.,])(\d{1,3}(?:\.\d)?) ?(?:%|percent|per cent|rh)/;
const LIMIT = { rh: 75, plankRh: 85, wood: 12 } as const;

/** A reading against the usual limits; which base it was taken on must be said. */
const dryEnough: Worker = (text, metric) => {
  const share = Number(SHARE.exec(text)?.[1]);
  if (!(share > 0 && share <= 100)) return undefined;
  if (/wood|ply|osb|board|joist/.test(text) && !/slab|concrete|rh\b/.test(text)) {
    const limit = quotedFigure('wood-subfloor-moisture', metric);
    const lead = share <= LIMIT.wood ? WORKED.dryWood(share, limit) : WORKED.wetWood(share, limit);
    return { lead, values: { share } };
  }
  if (!/slab|concrete|rh\b/.test(text) || share < 40) return undefined;
  const [strict, plank] = [quotedFigure('slab-rh-limit', metric), quotedFigure('slab-rh-plank', metric)];
  const lead =
    share <= LIMIT.rh
      ? WORKED.drySlab(share, strict)
      : share <= LIMIT.plankRh
        ? WORKED.dampSlab(share, strict, plank)
        : WORKED.wetSlab(share, plank);
  return { lead, values: { share } };
};

const MIL = /(?<![\d.,/])(\d{1,2}) ?-?(?:mils?)(?![a-z])/g;
const WEAR = { family: 12, hard: 20 } as const;

/** A wear layer in mils, against what a household asks of it. */
/** Who walks on it, the hardest on it first. */
const LIFE_ON_IT = [
  { words: /\bdogs?\b/, figure: 'wear-hard', name: 'dogs' },
  { words: /\b(?:tenants?|rental|airbnb|office|shop)\b/, figure: 'wear-hard', name: 'a rental' },
  { words: /\b(?:kids?|child(?:ren)?|toddlers?|cats?|family)\b/, figure: 'wear-family', name: 'a family' },
] as const;

const wear: Worker = (text) => {
  const mils = [...text.matchAll(MIL)].map(({ 1: mil }) => Number(mil)).filter((mil) => mil >= 4 && mil <= 40);
  const [one, other] = [...new Set(mils)].sort((a, b) => a - b);
  const life = LIFE_ON_IT.find(({ words }) => words.test(text));
  if (one === undefined)
    return life && { lead: WORKED.wearFor(quotedFigure(life.figure, false), life.name), values: {} };
  if (other !== undefined) return { lead: WORKED.wearEither(one, other), values: { mil: other } };
  const lead =
    one >= WEAR.hard ? WORKED.wearHard(one) : one >= WEAR.family ? WORKED.wearFamily(one) : WORKED.wearLight(one);
  return { lead, values: { mil: one } };
};

const FLOOR_AREA =
  /(?<![\d.,])(\d{1,3}(?:,\d{3})|\d{2,4})(?:\.\d+)? ?(?:sq(?:uare)?\.? ?(?:ft|feet|foot)|sqft|sf|ft2|(m2|m²|sqm|sq\.? ?m|square met(?:er|re)s?))(?![a-z])/;
/** Square feet and square meters that a beginner lays in an hour. */
const PACE = { us: { slow: 20, quick: 40 }, metric: { slow: 2, quick: 4 } } as const;
const HOURS_A_DAY = 8;

const TWO_PEOPLE =
  /\b(?:two (?:people|of us|persons)|2 people|the two of us|me and my|my \w+ and (?:me|i)|with (?:my|a) (?:wife|husband|son|daughter|brother|sister|friend|buddy|dad|helper|partner|neighbor))\b/;
/** Two people go half again as fast: one cuts while the other lays. */
const TWO_GO = 1.5;

const COUNTED_ROOMS =
  /(?<![\w.,])(\d{1,2}|two|three|four|five|six) (?:[a-z]+ )?(?:bedrooms|rooms|halls|offices|closets)(?: of| at| each|,|:)? ?$/;
const COUNTS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six'];

/** How many rooms have the sides that follow: “3 bedrooms 12x12”. */
function roomsBefore(text: string): number {
  const word = COUNTED_ROOMS.exec(text)?.[1];
  if (word === undefined) return 1;
  return COUNTS.includes(word) ? COUNTS.indexOf(word) : Math.max(1, Number(word));
}

const DONE_IN =
  /(?<![\d.,])(\d{2,4}) ?(?:sq(?:uare)?\.? ?(?:ft|feet|foot|m|met(?:er|re)s?)|sqft|sf|sqm|m2|m²)? in (\d{1,2}(?:\.\d)?) ?(?:hours?|hrs?|h)(?![a-z])/;
const TO_GO =
  /(?<![\d.,])(\d{2,4}) ?(?:sq(?:uare)?\.? ?(?:ft|feet|foot|m|met(?:er|re)s?)|sqft|sf|sqm|m2|m²)? (?:more )?(?:left|to go|remaining|remain)(?![a-z])/;

/** How long the rest takes at the pace that somebody has shown. */
function ownPace(text: string, metric: boolean): Worked | undefined {
  const [, done, hours] = DONE_IN.exec(text) ?? [];
  const rest = Number(TO_GO.exec(text)?.[1]);
  const pace = Number(done) / Number(hours);
  if (!(pace > 0 && Number.isFinite(pace) && rest > 0)) return undefined;
  const meters = metric || /m2|m²|sqm|sq(?:uare)? ?m/.test(text);
  const least = Math.ceil(rest / pace);
  return { lead: WORKED.ownPace(least, Math.round(pace * 10) / 10, rest, meters), values: { least, most: least } };
}

/** How long a floor takes to lay, by its area or its sides. */
const layingTime: Worker = (text, metric) => {
  const own = ownPace(text, metric);
  if (own) return own;
  const [, said = '', square] = FLOOR_AREA.exec(text) ?? [];
  const pairs = [...text.matchAll(ROOM_SIDES)];
  const [pair] = pairs;
  const meters =
    square !== undefined || (said === '' && (metric || pair?.[2] !== undefined || pair?.[4] !== undefined));
  const sides = pairs.map((one) => Number(one[1]) * Number(one[3]) * roomsBefore(text.slice(0, one.index)));
  const area = said === '' ? sides.reduce((sum, one) => sum + one, 0) : Number(said.replaceAll(',', ''));
  if (!(area >= (meters ? 3 : 30))) return undefined;
  const { slow, quick } = meters ? PACE.metric : PACE.us;
  const people = TWO_PEOPLE.test(text) ? TWO_GO : 1;
  const hours = [area / quick / people, area / slow / people].map(Math.ceil) as [number, number];
  const days = hours.map((own) => Math.ceil(own / HOURS_A_DAY)) as [number, number];
  const floor = `${Math.round(area).toLocaleString('en-US')} ${meters ? 'm²' : 'sq ft'}`;
  return { lead: WORKED.layingTime(floor, hours, days, people > 1), values: { least: hours[0], most: hours[1] } };
};

const BY_FOOT = /[$] ?(\d{1,2}(?:\.\d{1,2})?)|(?<![\d.,])(\d{1,2}\.\d{2})(?= ?(?:\/|a|per) ?(?:sq|foot|ft|square))/;

/** What a quote by the square foot comes to for a floor. */
const quoted: Worker = (text, metric) => {
  const found = BY_FOOT.exec(text);
  const rate = Number(found?.[1] ?? found?.[2]);
  const area = Number(/(?<![\d.,$])(\d{2,4}) ?(?:sq|ft\b|feet|foot|sf)/.exec(text)?.[1]);
  if (metric || !(rate > 0) || !(area >= 30)) return undefined;
  const total = Math.round(rate * area);
  return { lead: WORKED.quoted(`$${total.toLocaleString('en-US')}`, `$${rate.toFixed(2)}`, area), values: { total } };
};

const EXTRA = [
  { words: /herring|chevron|fishbone|zig/, figure: 'extra-herringbone', least: 15, most: 20, rows: 'herringbone' },
  { words: /diagonal|45|angle|bias/, figure: 'extra-diagonal', least: 10, most: 15, rows: 'diagonal rows' },
  { words: /(?:)/, figure: 'extra-straight', least: 5, most: 10, rows: 'straight rows' },
] as const;
const ASKS_ENOUGH = /enough|ok\b|okay|fine|too (?:little|much|low|small|few)|plenty|sufficient|will .{0,20}do\b|safe/;

/** A share of extra planks, against the rule of thumb for the way they are laid. */
/** What to buy of an area by the rule of thumb. */
function extraFor(text: string, rule: (typeof EXTRA)[number], metric: boolean): Worked | undefined {
  const [, said = '', meters] = FLOOR_AREA.exec(text) ?? [];
  const area = Number(said.replaceAll(',', ''));
  if (!(area > 0)) return undefined;
  const say = (share: number): string => `${Math.round(area * (100 + share)) / 100}`;
  const unit = meters === undefined ? 'sq ft' : 'm²';
  const lead = WORKED.extraFor(
    quotedFigure(rule.figure, metric),
    rule.rows,
    say(rule.least),
    `${say(rule.most)} ${unit}`,
  );
  return { lead, values: { area, least: rule.least, most: rule.most } };
}

const extraEnough: Worker = (text, metric) => {
  const share = Number(SHARE.exec(text)?.[1]);
  const rule = EXTRA.find(({ words }) => words.test(text));
  if (!rule) return undefined;
  if (Number.isNaN(share)) return extraFor(text, rule, metric);
  if (!(share > 0 && share <= 60) || !ASKS_ENOUGH.test(text)) return undefined;
  const usual = quotedFigure(rule.figure, metric);
  const lead =
    share < rule.least
      ? WORKED.extraShort(share, usual, rule.rows)
      : share > rule.least
        ? WORKED.extraPlenty(share, usual, rule.rows)
        : WORKED.extraJust(share, usual, rule.rows);
  return { lead, values: { share } };
};

const BOX_WEIGHT = /(?<![\d.,])(\d{1,2}(?:\.\d)?) ?-?(lbs?|pounds?|#|kg|kilos?)(?![a-z])/;
const BOX_COUNT = /(?<![\d.,])(\d{1,3})(?: \w+){0,2}? (?:boxes|cartons|packs|cases)(?![a-z])/;
const STICKER = /(?<![\d.,])(\d,\d{3}|\d{3,4}) ?-?(?:lbs?|pounds?|kg|kilos?)(?![a-z])/;
const CAR = { us: { holds: 800, person: 150 }, metric: { holds: 360, person: 68 } } as const;

/** Cartons that a car carries beside its driver: what the door sticker says, or else what many say. */
const carLoad: Worker = (text, metric) => {
  const [, said, unit = ''] = BOX_WEIGHT.exec(text) ?? [];
  const each = Number(said);
  if (!(each >= 5)) return undefined;
  const kilos = unit.startsWith('k') || metric;
  const { holds, person } = kilos ? CAR.metric : CAR.us;
  const sticker = Number(STICKER.exec(text)?.[1]?.replaceAll(',', ''));
  const most = sticker > 0 ? sticker : holds;
  const fits = Math.max(0, Math.floor((most - person) / each));
  const name = kilos ? 'kg' : 'lb';
  const count = Number(BOX_COUNT.exec(text)?.[1]);
  const load = { each: `${each} ${name}`, most: `${most} ${name}`, known: sticker > 0, fits };
  if (!(count > 0)) return { lead: WORKED.carBoxes(load), values: { boxes: fits } };
  const whole = Math.round(count * each);
  return {
    lead: WORKED.carTrips(
      load,
      count,
      `${whole.toLocaleString('en-US')} ${name}`,
      Math.ceil(count / Math.max(1, fits)),
    ),
    values: { boxes: fits, weight: whole },
  };
};

const CARRY = { us: 35, metric: 16 } as const;

/** A weight as carries of a load that one person manages. */
const carries: Worker = (text, metric) => {
  const [, said = '', unit = ''] = WEIGHT.exec(text) ?? [];
  const weight = Number(said.replaceAll(',', ''));
  const kilos = unit.startsWith('k') || (unit === '' && metric);
  const load = kilos ? CARRY.metric : CARRY.us;
  if (!(weight > load)) return undefined;
  const count = Math.ceil(weight / load);
  const name = kilos ? 'kg' : 'lb';
  return { lead: WORKED.carries(count, `${load} ${name}`, `${said} ${name}`), values: { carries: count } };
};

export const AMOUNT_WORKERS: Readonly<Record<string, Worker>> = {
  'heavy-furniture': heavy,
  'moisture-limits': dryEnough,
  'weight-carpet': carries,
  'car-load': carLoad,
  'installer-price': quoted,
  'thickness-wear': wear,
  'how-long': layingTime,
  'extra-percent': extraEnough,
  'diagonal-herringbone': extraEnough,
  knees: carries,
  delivery: carries,
};
