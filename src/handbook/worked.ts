/** Computes an entry's answer from the figures in a message: a lead and the values behind it. */

import { sayCut, sayLength } from '../input/format.ts';
import { lengthsIn } from '../input/parse-length.ts';
import { WORKED } from '../text/handbook-text.ts';
import { feet, inches, type Length, millimetres, ticks } from '../units/length.ts';
import { AMOUNT_WORKERS, quotedFigure, ROOM_SIDES, type Worked, type Worker } from './worked-amounts.ts';

/** Undefined if the message has no figures for it. */
export function workedFrom(id: string, text: string, metric: boolean): Worked | undefined {
  return WORKERS[id]?.(text.toLowerCase(), metric);
}

function say(length: Length, metric: boolean): string {
  return sayLength(length, { units: metric ? 'metric' : 'imperial', decimal: '.' });
}

/** Whether every measure in a message is metric. */
export function saysMetric(text: string): boolean {
  return (
    /\d ?(?:mm|cm|m|m2|m²|metres?|meters?|kg|kilos?)(?![a-z\d])/i.test(text) &&
    !/\d ?(?:"|'|in(?:ch|\b)|ft|feet|foot|lbs?\b)/i.test(text)
  );
}

/** In inches alone, as a part of a plank or an opening is measured. */
function cut(length: Length, metric: boolean): string {
  return sayCut(length, { units: metric ? 'metric' : 'imperial', decimal: '.' });
}

function plus(one: Length, other: Length): Length {
  return ticks(one + other);
}

const UNDERCUT = inches(1 / 16);
const DOOR_CLEAR = inches(1 / 4);
const LEAST_STRIP = inches(2);
const LEAST_STAGGER = inches(6);
const METRIC_STAGGER = millimetres(150);
const METRIC_GAP = millimetres(6);
/** From here on a plank is sold as wide. */
const WIDE_PLANK = inches(7);
const THIRD = 3;

/** Two thicknesses under an inch, plank and pad, give the height to undercut jambs and doors. */
const jambs: Worker = (text, metric) => {
  const thin = lengthsIn(text, metric).filter(({ length }) => length > 0 && length < inches(1));
  const [plank, pad] = thin;
  if (!plank) return undefined;
  const height = pad ? plus(plank.length, pad.length) : plank.length;
  return {
    lead: WORKED.jambs(say(height, metric), say(plus(height, UNDERCUT), metric), say(plus(height, DOOR_CLEAR), metric)),
    values: { height, jamb: height + UNDERCUT, door: height + DOOR_CLEAR },
  };
};

const DEGREES = /(?<![\d.,])(\d{2,3}(?:\.\d{1,2})?) ?(?:°|deg(?:rees?)?)/;

const angle: Worker = (text) => {
  const corner = Number(DEGREES.exec(text)?.[1]);
  if (!(corner >= 30 && corner <= 180)) return undefined;
  const setting = (180 - corner) / 2;
  return { lead: WORKED.angle(corner, setting), values: { corner, setting } };
};

/** A third of a plank's length, or what planks of its width are laid at. */
const stagger: Worker = (text, metric) => {
  const all = lengthsIn(text, metric).map(({ length }) => length);
  const least = metric ? METRIC_STAGGER : LEAST_STAGGER;
  const plank = all.find((length) => length >= inches(24) && length <= inches(96));
  const wide = all.find((length) => length >= inches(3) && length <= inches(14));
  const third = plank === undefined ? undefined : ticks(Math.round(plank / THIRD));
  if (third !== undefined && third > least)
    return { lead: WORKED.stagger(cut(least, metric), cut(third, metric)), values: { least, third } };
  if (wide === undefined) return undefined;
  const lead =
    wide >= WIDE_PLANK
      ? WORKED.staggerWide(say(least, metric), say(wide, metric), quotedFigure('stagger-wide', metric))
      : WORKED.staggerNarrow(say(least, metric), say(wide, metric));
  return { lead, values: { least, width: wide } };
};

/** The shorter side of a room that is given by two: rows lie along the longer one. */
function acrossRows(text: string, metric: boolean): { readonly across: Length; readonly rest: string } | undefined {
  const [found] = text.matchAll(ROOM_SIDES);
  if (!found) return undefined;
  const [pair, one, metre, other, otherMetre] = found;
  const [short, long] = [Number(one), Number(other)].toSorted((a, b) => a - b) as [number, number];
  const inMetres = metric || metre !== undefined || otherMetre !== undefined;
  // Smaller than any room: the size of a plank.
  if (inMetres ? short < 1 : short < 3 || long < 7) return undefined;
  return { across: inMetres ? millimetres(short * 1000) : feet(short), rest: text.replace(pair, ' ') };
}

/** A strip that somebody found left for the last row, with no plank said: what the first row is ripped to. */
function thinStrip(text: string, metric: boolean): Worked | undefined {
  const [only, ...more] = lengthsIn(text, metric).filter(({ unit }) => unit !== '');
  if (!only || more.length > 0 || only.length <= 0 || only.length >= LEAST_STRIP) return undefined;
  const half = ticks(Math.round(only.length / 2));
  return { lead: WORKED.thinStrip(cut(only.length, metric), cut(half, metric)), values: { strip: only.length } };
}

/** “11 ft 4”: the bare figure is in inches. */
const FEET_AND_FIGURE =
  /(?<![\d.,/])(\d{1,2}) ?(?:ft|feet|foot|') ?(\d{1,2}(?:\.\d+)?)(?![\d./]| ?(?:"|''|x|by|in|ft|feet|foot|'|mm|cm|m)(?![a-z])| ?inch)/g;

const GAP_SAID =
  /(?<![\d.,/])((?:\d{1,2} )?\d{1,2}(?:[./]\d{1,2})? ?(?:mm|cm|in|inch(?:es)?|")?) (?:expansion )?gaps?(?![a-z])/;

/** How long a room is says nothing about its rows' count. */
const ALONG = /(?<![\d.,/])\d{1,3}(?:[.,]\d{1,2})? ?(?:ft|feet|foot|'|m|met(?:er|re)s?) (?:long|in length)(?![a-z])/g;

/** The last row of a room across its rows, with the gap that is told, or the usual one, at both walls. */
const lastRow: Worker = (typed, metric) => {
  const stated = GAP_SAID.exec(typed);
  const [told] = stated ? lengthsIn(stated[1] ?? '', metric) : [];
  const text = typed.replace(GAP_SAID, ' ').replace(FEET_AND_FIGURE, `$1' $2"`).replace(ALONG, ' ');
  const pair = acrossRows(text, metric);
  const found = lengthsIn(pair?.rest ?? text, metric);
  const all = found.map(({ length }) => length);
  // A figure with a unit is a surer width than a bare one.
  const [wide] = [...found]
    .sort((one, other) => Number(one.unit === '') - Number(other.unit === ''))
    .map(({ length }) => length)
    .filter((length) => length >= inches(3) && length <= inches(14));
  const room = pair?.across ?? all.find((length) => length > inches(30));
  if (wide === undefined || room === undefined) return thinStrip(text, metric);
  const gap = told && told.length > 0 && told.length <= inches(1) ? told.length : metric ? METRIC_GAP : GAP.least;
  const between = room - 2 * gap;
  const rest = between % wide;
  const other = all.find((length) => length > inches(30) && length !== room && Math.abs(length - room) < wide);
  if (pair === undefined && other !== undefined) {
    const ends = [rest, (other - 2 * gap) % wide].map((width) => ticks(width === 0 ? wide : width));
    const [one, two] = [ends[0] ?? wide, ends[1] ?? wide];
    return {
      lead: WORKED.lastRowTapers(
        say(one, metric),
        say(two, metric),
        say(gap, metric),
        Math.min(one, two) >= LEAST_STRIP,
      ),
      values: { last: one, end: two },
    };
  }
  const last = ticks(rest === 0 ? wide : rest);
  const both = ticks(Math.round((last + wide) / 2));
  const gaps = say(gap, metric);
  if (last >= LEAST_STRIP) {
    const rows = Math.ceil(between / wide);
    return {
      lead: WORKED.lastRow(say(last, metric), rows, gaps, last === wide ? undefined : say(both, metric)),
      values: { last, first: wide, rows },
    };
  }
  return { lead: WORKED.bothRows(say(last, metric), say(both, metric), gaps), values: { last: both, first: both } };
};

const OFF = /square|parallel|wider|narrower|differ|crooked|taper|\boff\b/;

/** Two ends of a room that differ, or by how much it is off. */
const taper: Worker = (text, metric) => {
  const all = lengthsIn(text, metric);
  const [one, other] = all.filter(({ length }) => length > inches(30));
  const [by] = all.filter(({ length }) => length > 0 && length <= inches(6));
  const ends = one && other && one.length !== other.length ? ticks(Math.abs(one.length - other.length)) : undefined;
  const off = ends ?? (by && OFF.test(text) ? by.length : undefined);
  if (off === undefined || off > inches(12)) return undefined;
  return { lead: WORKED.taper(say(off, metric), say(ticks(Math.round(off / 2)), metric)), values: { taper: off } };
};

const STEPS = /(?<![\d.,])(\d{1,2}) (?:steps?|stairs|treads?|risers?)(?![a-z])/;

const nosings: Worker = (text, metric) => {
  const count = Number(STEPS.exec(text)?.[1]);
  if (!(count >= 1 && count <= 60)) return undefined;
  const [wide, stick] = lengthsIn(text, metric)
    .filter(({ length, unit }) => unit !== '' && length >= inches(24) && length <= inches(120))
    .map(({ length }) => length)
    .sort((a, b) => a - b);
  const each = wide !== undefined && stick !== undefined ? Math.floor(stick / wide) : 0;
  const sticks = each > 0 ? Math.ceil(count / each) : undefined;
  return {
    lead: WORKED.nosings(count, sticks),
    values: { nosings: count, ...(sticks === undefined ? {} : { sticks }) },
  };
};

const STEP_AREA = { feet: 5, meters: 0.45 } as const;

/** What the steps take in plank, by the usual step. */
const stairsAmount: Worker = (text, metric) => {
  const count = Number(STEPS.exec(text)?.[1]);
  if (!(count >= 1 && count <= 60)) return undefined;
  const area = Math.round(count * (metric ? STEP_AREA.meters : STEP_AREA.feet) * 10) / 10;
  return { lead: WORKED.stairs(metric ? `${area} m²` : `${area} sq ft`, count), values: { area, nosings: count } };
};

const AGE = /(?<![\d.,$])(\d{1,2}) ?(?:years?|yrs?)(?! (?:of )?life)/;
const LIFE = /(?:last|life|lifespan)[^\d]{0,20}(\d{1,2}) ?(?:years?|yrs?)|(\d{1,2}) ?(?:years?|yrs?) (?:of )?life/;
const PRICE = /[$£€] ?(\d{1,3}(?:,\d{3})+|\d{2,6})|(\d{3,6}) ?(?:dollars|bucks|euros?|pounds)/;
const CARPET_YEARS = { least: 5, most: 10 } as const;

/** What carpet of an age is still worth, in a straight line over its life. */
const landlord: Worker = (text) => {
  const life = LIFE.exec(text);
  const stated = Number(life?.[1] ?? life?.[2]);
  const years = Number(AGE.exec(life ? text.replace(life[0], ' ') : text)?.[1]);
  if (!(years >= 1)) return undefined;
  const { least, most } = stated >= 1 ? { least: stated, most: stated } : CARPET_YEARS;
  const cost = PRICE.exec(text);
  const price = Number((cost?.[1] ?? cost?.[2])?.replaceAll(',', ''));
  const left = (of: number): number => Math.max(0, of - years);
  if (!(price > 0))
    return { lead: WORKED.landlord(years, least, most, left(most)), values: { years, left: left(most) } };
  const share = (of: number): number => Math.round((price * left(of)) / of);
  const money = (amount: number): string => `${sign}${amount.toLocaleString('en-US')}`;
  const sign = /[$£€]/.exec(cost?.[0] ?? '')?.[0] ?? '$';
  return {
    lead: WORKED.carpetWorth(money(price), { years, least, most }, money(share(least)), money(share(most))),
    values: { years, left: left(most), least: share(least), most: share(most) },
  };
};

const GAP = { least: inches(1 / 4), usual: inches(3 / 8) } as const;

const gap: Worker = (text, metric) => {
  const thin = lengthsIn(text, metric).filter(({ length }) => length > 0 && length <= inches(1));
  const [left] = thin;
  if (!left || !/enough|ok|fine|only|too (?:small|little|much)|leave|left/.test(text)) return undefined;
  return {
    lead:
      left.length >= GAP.least
        ? WORKED.gapEnough(say(left.length, metric))
        : WORKED.gapSmall(say(left.length, metric), say(GAP.least, metric)),
    values: { gap: left.length },
  };
};

const RUN = { cautious: feet(30), strict: feet(40), generous: feet(85), wider: feet(50) } as const;

/** The longest line of a floor, against what makers allow. */
const longRun: Worker = (text, metric) => {
  const run = lengthsIn(text, metric)
    .filter(({ unit }) => unit !== '')
    .map(({ length }) => length)
    .filter((length) => length >= feet(12))
    .sort((a, b) => b - a)[0];
  if (run === undefined) return undefined;
  const [strict, generous] = [quotedFigure('run-cautious', metric), quotedFigure('run-generous', metric)];
  const gap = run >= RUN.wider ? quotedFigure('gap-long-run', metric) : undefined;
  const said = say(run, metric);
  const lead =
    run <= RUN.cautious
      ? WORKED.runShort(said, strict)
      : run > RUN.generous
        ? WORKED.runLong(said, generous)
        : WORKED.runBetween(said, strict, generous, gap);
  return { lead, values: { run } };
};

const ROWS = /(?<![\d.,/])(\d{1,2}) ?(?:rows?|planks? (?:across|wide)|courses?|across)?(?![\d.,/]*\d)/g;

const LONG_SIDE =
  /(?<![\d.,/])(\d{1,3}(?:\.\d{1,2})?) ?(?:'|ft|feet|foot|m)? ?(?:x|by) ?(\d{1,3}(?:\.\d{1,2})?) ?('|ft|feet|foot|m)?(?![\w.,/"])/;

/** Which of a room's two sides is the longer. */
function longSide(text: string): Worked | undefined {
  const [, one, other, unit = 'ft'] = LONG_SIDE.exec(text) ?? [];
  const [first, second] = [Number(one), Number(other)];
  if (one === undefined || first === second || Math.min(first, second) < 2) return undefined;
  const long = Math.max(first, second);
  return { lead: WORKED.longSide(`${long} ${unit === 'm' ? 'm' : 'ft'}`), values: { long } };
}

/** Two counts of rows, one for each way of laying; or a room by its sides. */
const fewerRows: Worker = (text) => {
  const side = longSide(text);
  if (side) return side;
  if (!/planks? across|rows|courses/.test(text) || /\d ?(?:ft|feet|'|m|x)\b/.test(text)) return undefined;
  const counts = [...new Set([...text.matchAll(ROWS)].map(({ 1: count }) => Number(count)))].filter(
    (count) => count > 2,
  );
  const [one, other] = counts;
  if (one === undefined || other === undefined || counts.length > 2) return undefined;
  const [fewer, more] = [Math.min(one, other), Math.max(one, other)];
  return { lead: WORKED.fewerRows(fewer, more), values: { fewer, more } };
};

const DISHWASHER = inches(34);

/** What stays of an opening once the floor is in. */
const underCounter: Worker = (text, metric) => {
  const all = lengthsIn(text, metric).map(({ length }) => length);
  const opening = all.find((length) => length >= inches(32) && length <= inches(37));
  const floor = all.filter((length) => length > 0 && length <= inches(2)).reduce((sum, length) => sum + length, 0);
  if (opening === undefined || floor === 0) return undefined;
  const left = ticks(opening - floor);
  const needs = quotedFigure('dishwasher-opening', metric);
  return {
    lead:
      left >= DISHWASHER
        ? WORKED.underCounter(cut(left, metric), needs)
        : WORKED.underCounterLow(cut(left, metric), needs),
    values: { left },
  };
};

/** Opening, fridge and floor give the air above the fridge. */
const aboveFridge: Worker = (text, metric) => {
  const all = lengthsIn(text, metric).map(({ length }) => length);
  const [opening, fridge] = all.filter((length) => length >= inches(48) && length <= inches(96)).sort((a, b) => b - a);
  const floor = all.filter((length) => length > 0 && length <= inches(2)).reduce((sum, length) => sum + length, 0);
  if (opening === undefined || fridge === undefined || floor === 0) return undefined;
  const left = ticks(opening - fridge - floor);
  const air = quotedFigure('fridge-clearance', metric);
  const lead =
    left <= 0
      ? WORKED.fridgeStuck(say(ticks(-left), metric))
      : left < inches(1)
        ? WORKED.fridgeTight(say(left, metric), air)
        : WORKED.fridgeFits(say(left, metric), air);
  return { lead, values: { left } };
};

const NAILS = [1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3].map(inches);
const WALLBOARD = inches(1 / 2);
const INTO_STUD = inches(3 / 4);

/** Trim and wallboard give the shortest nail that holds, as nails are sold. */
const nail: Worker = (text, metric) => {
  if (/shoe|quarter/.test(text)) return undefined;
  const [trim, board = WALLBOARD] = lengthsIn(text, metric)
    .map(({ length }) => length)
    .filter((length) => length >= inches(1 / 4) && length <= inches(1.25));
  if (trim === undefined) return undefined;
  const least = ticks(trim + board + INTO_STUD);
  const sold = NAILS.find((length) => length >= least);
  if (sold === undefined) return undefined;
  return {
    lead: WORKED.nail(say(sold, metric), say(trim, metric), say(board, metric), say(INTO_STUD, metric)),
    values: { nail: sold, least },
  };
};

/** Plywood that flooring nails hold in, by the spacing of the joists it lies on. */
const NAILED_PLYWOOD = [
  { spacing: inches(16.1), least: inches(5 / 8) },
  { spacing: inches(24.1), least: inches(7 / 8) },
] as const;

const nailedSubfloor: Worker = (text, metric) => {
  const lengths = lengthsIn(text, metric).map(({ length }) => length);
  const panel = lengths.find((length) => length >= inches(1 / 4) && length <= inches(1.25));
  const spacing = lengths.find((length) => length >= inches(11.5) && length <= inches(24.1));
  if (panel === undefined || spacing === undefined || /osb|particle|chip ?board/.test(text)) return undefined;
  const least = NAILED_PLYWOOD.find((one) => spacing <= one.spacing)?.least;
  if (least === undefined) return undefined;
  const holds = panel >= least;
  return {
    lead: WORKED.nailedSubfloor(holds, cut(panel, metric), cut(spacing, metric), cut(least, metric)),
    values: { panel, spacing, least },
  };
};

/** What a maker prints about a plank, by the words people ask for it with. */
const PRINTED: readonly (readonly [RegExp, string])[] = [
  [/fire|flam|burn/, 'fire rating'],
  [/r[- ]?value|insulat|tog\b|thermal|heat resist/, 'thermal resistance'],
  [/dent|indent|hardness|janka/, 'indentation'],
  [/psi|static load|hold|pressure|heavy|load/, 'static load'],
  [/voc|formaldehyde|emission|phthalate|off-?gas|safe air/, 'emissions'],
  [/slip|friction|traction/, 'slip resistance'],
  [/expan|shrink|grow|stab/, 'dimensional stability'],
  [/weigh|heav|lbs?\b|pounds/, 'weight'],
  [/ac ?rating|abrasion|ac ?\d/, 'abrasion class'],
  [/recycl|content/, 'content'],
  [/static|conduct/, 'static electricity'],
];

const printed: Worker = (text) => {
  const name = PRINTED.find(([words]) => words.test(text))?.[1];
  return name === undefined ? undefined : { lead: WORKED.printed(name), values: {} };
};

const BY_WORDS = ['maker-figures'];

/** Whether an entry computes from words, with no figure in the message. */
export function worksWithWords(id: string): boolean {
  return BY_WORDS.includes(id);
}

/** The floor of two or more rooms that a message gives by their sides. */
export function areasSaid(text: string, metric: boolean): string | undefined {
  const pairs = [...text.toLowerCase().matchAll(ROOM_SIDES)].flatMap(([, one, metre, other, otherMetre]) => {
    const meters = metric || metre !== undefined || otherMetre !== undefined;
    const sides = [Number(one), Number(other)];
    return Math.min(...sides) < (meters ? 1 : 3) ? [] : [{ area: Number(one) * Number(other), meters }];
  });
  const [first] = pairs;
  if (pairs.length < 2 || first === undefined || pairs.some(({ meters }) => meters !== first.meters)) return undefined;
  const round = (area: number): number => Math.round(area * 10) / 10;
  const sum = round(pairs.reduce((total, { area }) => total + area, 0));
  return WORKED.areas(
    sum,
    pairs.map(({ area }) => round(area)),
    first.meters,
  );
}

const WORKERS: Readonly<Record<string, Worker>> = {
  ...AMOUNT_WORKERS,
  jambs,
  'door-clearance': jambs,
  'trim-angle': angle,
  'outside-corner': angle,
  stagger,
  'last-row': lastRow,
  'first-row': lastRow,
  'out-of-square': taper,
  'stair-nosing-count': nosings,
  'stairs-amount': stairsAmount,
  landlord,
  'long-run': longRun,
  'run-through': longRun,
  direction: fewerRows,
  dishwasher: underCounter,
  'fridge-fits': aboveFridge,
  'nail-length': nail,
  'nailed-subfloor': nailedSubfloor,
  gap,
  'gap-cover': gap,
  'maker-figures': printed,
};
