/** Talk about figures that were answered: “so 8?”, “how much altogether”, “plus tax”, “the insurer pays 600”, “6.48 apiece”. */

import { z } from 'zod';
import {
  asksInAll,
  asksMine,
  type Claim,
  claimIn,
  coveringCount,
  deductibleIn,
  hadAndUsed,
  offersIn,
  oneOf,
  paidIn,
  partDone,
  pricedCount,
  priceEach,
  shareOf,
  statedSum,
  stockedIn,
  taxIn,
  type Unit,
  unitNamed,
  usedIn,
} from '../language/counted.ts';
import type { Measured } from '../language/measured.ts';
import type { Result } from '../reply/reply.ts';

/** What an answer came to. */
export const figureSchema = z.object({
  command: z.string().max(60),
  /** The rooms or the area that it is for. */
  place: z.string().max(1000).optional(),
  count: z.number().optional(),
  unit: z.string().max(10).optional(),
  cents: z.number().optional(),
  /** Planks that were bought beside those to lay. */
  spare: z.number().optional(),
  currency: z.string().max(3).optional(),
});
export type LastFigure = z.infer<typeof figureSchema>;

interface FigureData extends Result {
  readonly cartons?: number;
  /** Of a comparison, a sum for each way. */
  readonly cents?: number | object;
  readonly currency?: string;
  readonly count?: number | { readonly cartons: number; readonly planks: number };
  readonly plank?: { readonly perCarton: number };
  readonly unit?: string;
  readonly cost?: { readonly cents: number };
  readonly sticks?: readonly { readonly count?: number; readonly cents?: number }[];
  readonly bags?: number;
  readonly screws?: number;
  readonly values?: { readonly sticks?: number };
}

/** The count and the money of an answer's data; undefined where it has neither. */
export function answeredFigure(command: string, place: string | undefined, data: Result): LastFigure | undefined {
  const { kind, cartons, cents, currency, count, unit, cost, sticks, bags, screws, values, plank } = data as FigureData;
  const laid = typeof count === 'object' ? count.cartons : undefined;
  const spare =
    kind === 'floor' && typeof count === 'object' && plank ? count.cartons * plank.perCarton - count.planks : undefined;
  const [stick] = sticks ?? [];
  const counted: readonly [number | undefined, string | undefined] =
    kind === 'estimate'
      ? [cartons, unit ?? 'boxes']
      : kind === 'floor'
        ? [laid, 'boxes']
        : kind === 'trim'
          ? [sticks?.length, 'sticks']
          : kind === 'trim-run'
            ? [stick?.count, 'sticks']
            : kind === 'level'
              ? [bags, 'bags']
              : kind === 'handbook' && values?.sticks !== undefined
                ? [values.sticks, 'sticks']
                : kind === 'squeaks'
                  ? [screws, 'screws']
                  : kind === 'tally' && typeof count === 'number'
                    ? [count, unit]
                    : [undefined, undefined];
  const sum = typeof cents === 'number' ? cents : undefined;
  const money = sum ?? cost?.cents ?? (kind === 'trim-run' ? stick?.cents : undefined);
  const [value, named] = counted;
  if (value === undefined && money === undefined && (place === undefined || kind !== 'estimate')) return undefined;
  return {
    command,
    ...(place === undefined ? {} : { place: place.slice(0, 1000) }),
    ...(value === undefined ? {} : { count: value, unit: named ?? 'pieces' }),
    ...(money === undefined ? {} : { cents: money }),
    ...(currency === undefined ? {} : { currency }),
    ...(spare === undefined ? {} : { spare }),
  };
}

const MOST_FIGURES = 5;
/** How a message begins that takes the place of the last one. */
const CORRECTS =
  /^(?:(?:oh|um|oops|wait|hmm?),? )*(?:no|nope|sorry|oops|actually|i meant|i mean|make (?:it|that)|wait|instead|scratch|not|correction)(?![a-z])/i;

/** The figures of a conversation with those of its last answer; a correction takes the place of the one it corrects. */
export function withFigure(
  before: readonly LastFigure[],
  next: LastFigure | undefined,
  text: string,
): readonly LastFigure[] {
  const [last] = before.slice(-1);
  if (!next) return before;
  const same =
    last !== undefined && last.command === next.command && (last.place === next.place || CORRECTS.test(text.trim()));
  const grown = last?.place !== undefined && next.place?.startsWith(`${last.place};`) === true;
  return [
    ...(same || grown || next.command === 'tally' ? before.slice(0, same || grown ? -1 : undefined) : before),
    next,
  ].slice(-MOST_FIGURES);
}

/** What is known in a conversation for talk about its figures. */
export interface FigureTalk {
  readonly command: string;
  readonly texts: Readonly<Record<string, string>>;
  readonly known: Readonly<Record<string, string>>;
  readonly figures: readonly LastFigure[];
}

export interface Reckoned {
  /** A figure said back: what it was of stays what is talked about. */
  readonly aside?: true;
  readonly command: string;
  readonly texts: Readonly<Record<string, string>>;
}

/** What somebody without a conversation asks to add up: “7 boxes at 64.99”. */
export function tallyAlone(plain: string, given: Measured): Reckoned | undefined {
  if (given.room !== undefined) return undefined;
  const stated = statedSum(plain);
  if (stated !== undefined) return { command: 'tally', texts: { items: stated } };
  const gone = hadAndUsed(plain);
  if (gone && given.areas.length === 0)
    return { command: 'tally', texts: { items: `${gone.all} ${gone.unit}`, used: `${gone.some} ${gone.unit}` } };
  const offers = offersIn(plain);
  if (offers.length > 1 && COMPARES.test(plain)) return { command: 'tally', texts: { offers: offers.join('; ') } };
  const covering = coveringCount(plain);
  if (covering && given.areas.filter((area) => area !== covering.box).length === 0)
    return { command: 'tally', texts: { items: `${covering.have} of ${covering.box}` } };
  if (given.areas.length > 0) return undefined;
  const priced = pricedCount(plain);
  const tax = taxIn(plain);
  const paid = paidIn(plain);
  if (priced)
    return {
      command: 'tally',
      texts: {
        items: `${priced.count} ${priced.unit} at ${priced.price}`,
        ...(tax === undefined ? {} : { 'sales-tax': tax }),
        ...(paid === undefined ? {} : { paid }),
      },
    };
  return doneIn(plain);
}

function doneIn(plain: string): Reckoned | undefined {
  const done = partDone(plain);
  if (!done) return undefined;
  const used = usedIn(
    plain.replace(/(?<!\d)\d{1,5} (?:[a-z]{1,20} )?(?:out )?of (?:the |my )?\d{1,5} [a-z]{1,20}/, ' '),
  );
  return {
    command: 'tally',
    texts: {
      done: `${done.some} of ${done.all} ${done.unit}`,
      ...(used ? { used: `${used.count} ${used.unit}` } : {}),
    },
  };
}

const COMPARES =
  /(?<![a-z])(?:cheaper|cheapest|better|best|which|other|compare[ds]?|or|versus|vs|difference|deal|value)(?![a-z])/;
const MOST_WORDS = 16;

/** The request that a message about the last figures makes; undefined where it isn't about them. */
export function figuresTalk(plain: string, given: Measured, talk: FigureTalk): Reckoned | undefined {
  if (plain.split(/\s+/).length > MOST_WORDS) return undefined;
  return (
    comparing(plain, talk) ??
    covering(plain, given, talk) ??
    stocked(plain, given, talk) ??
    (given.room === undefined
      ? (payingIn(plain, given, talk) ?? claimed(plain, talk) ?? counting(plain, talk) ?? leftOver(plain, talk))
      : undefined) ??
    inAll(plain, given, talk)
  );
}

function comparing(plain: string, { command, texts, known }: FigureTalk): Reckoned | undefined {
  const offers = offersIn(plain);
  if (offers.length === 0 || !COMPARES.test(plain)) return undefined;
  const before = command === 'tally' ? texts.offers : known.offer;
  const all = [...(before === undefined ? [] : [before]), ...offers];
  return all.length > 1 ? { command: 'tally', texts: { offers: all.join('; ') } } : undefined;
}

const DOES_IT =
  /(?<![a-z])(?:enough|sufficient|(?:will|would|does|do|can|is) (?:that|it|they|this|those|what i have|these|i have)[a-z ]{0,12}(?:do|cover|work|fit|be ok|reach))(?![a-z])/;

/** Whether what was said to be there is enough for a floor: “will that do my 12x13 den”. */
function covering(plain: string, given: Measured, { known, command }: FigureTalk): Reckoned | undefined {
  const { have, box } = known;
  const area = given.room ?? given.areas[0];
  if (area === undefined || have === undefined || box === undefined || !DOES_IT.test(plain)) return undefined;
  if (given.boxes !== undefined || given.carton !== undefined || command === 'floor enough') return undefined;
  return { command: 'floor enough', texts: { area, have, box } };
}

const LEFT_OVER =
  /^(?:(?:and|so|ok|then|but),? ){0,3}(?:how much|how many|what(?:'s| is|s)?|is there)(?: [a-z]+){0,3}? (?:waste|wasted|leftovers?|left|extra)(?: (?:is|will|would|be|that|it|there|over|then|for|me|do|i|have|got|in|of|with|from)){0,6}[?.!]*$/;
/** “How many more do I need”, after a verdict that says so. */
const HOW_MANY_MORE =
  /^(?:(?:and|so|ok|then|but),? ){0,3}how many (?:more|extra)(?: boxes| cartons| packs)?(?: (?:should|do|would|must) (?:i|we) (?:need|get|buy|have to (?:get|buy)|order))?(?: then)?[?.!]*$/;

/** What the boxes that were counted leave over, or what is still to get. */
function leftOver(plain: string, { command, texts, figures }: FigureTalk): Reckoned | undefined {
  if (command === 'floor enough' && (HOW_MANY_MORE.test(plain) || LEFT_OVER.test(plain)))
    return { aside: true, command, texts };
  const [last] = figures.slice(-1);
  const area = texts.area ?? texts.room;
  const box = texts.box ?? texts.plank;
  if (!LEFT_OVER.test(plain) || !/^floor (?:planks|estimate)$/.test(command)) return undefined;
  if (last?.unit !== 'boxes' || area === undefined || box === undefined) return undefined;
  return { aside: true, command: 'floor enough', texts: { area, have: `${last.count} boxes`, box } };
}

/** What a store has of one lot against the floor that is known, whichever of them is said first. */
function stocked(plain: string, given: Measured, { command, texts, known }: FigureTalk): Reckoned | undefined {
  const count = stockedIn(plain);
  const asked = command === 'handbook' && texts.entry === 'same-lot';
  const have = count === undefined ? (asked ? known.have : undefined) : `${count} boxes`;
  const fresh = given.room ?? given.areas[0];
  const area = fresh ?? known.room ?? known.area;
  const box = given.carton ?? given.plank ?? known.box ?? known.plank;
  if (have === undefined || area === undefined || box === undefined) return undefined;
  return count === undefined && fresh === undefined && given.carton === undefined
    ? undefined
    : { command: 'floor enough', texts: { area, have, box } };
}

function money({ cents, currency = 'USD' }: LastFigure): string | undefined {
  if (cents === undefined || cents === 0) return undefined;
  const mark = { USD: '$', EUR: '€', GBP: '£' }[currency] ?? `${currency} `;
  return `${mark}${(cents / 100).toFixed(2)}`;
}

/** Everything that was priced, as items. */
function items({ command, texts, figures }: FigureTalk): string | undefined {
  if (command === 'tally') return texts.items;
  const [last] = figures.slice(-1);
  return last && money(last);
}

/** An added thing by its area: “and pad at 50 cents a foot”. */
const ADDED =
  /^(?:and|plus|also|with|then|add)(?: (?:the|some|a|add))* (?<label>pad(?:ding)?|underlay(?:ment)?|trim|baseboards?|transitions?|delivery|tear[- ]?out|haul(?:ing)?|labor|installation|install|removal|disposal|tools?|glue|adhesive|film|moisture barrier|moldings?|quarter[- ]round|shipping|shoe|leveler|primer|nails|caulk|paint)(?: (?:is|are|at|for|costs?|runs?|about|another|will be|which is))* (?<price>[$€£]? ?\d[\d.,]{0,8})(?<square> ?(?:\/|a|an|per) ?(?:sq(?:uare)?\.? ?(?:ft|foot|feet)|sqft|sf|foot|ft|m2|m²|sqm))?[?.!]*$/;

/** “And 180 for transitions”. */
const AMOUNT_FIRST =
  /^(?:and|plus|also|with|then|add)(?: another| about)* (?<price>[$€£]? ?\d[\d.,]{0,8})(?<square>(?!))? (?:for|of|in) (?:the |some )?(?<label>[a-z][a-z ]{2,24}?)[?.!]*$/;

function payingIn(plain: string, given: Measured, talk: FigureTalk): Reckoned | undefined {
  const { command, texts, figures, known } = talk;
  const [last] = figures.slice(-1);
  const sum = items(talk);
  const tally = (more: Readonly<Record<string, string>>): Reckoned | undefined =>
    sum === undefined
      ? undefined
      : { command: 'tally', texts: { ...(command === 'tally' ? texts : {}), items: sum, ...more } };
  const tax = taxIn(plain);
  if (tax !== undefined) {
    if (command === 'floor estimate' && last?.cents !== undefined)
      return { command, texts: { ...texts, 'sales-tax': tax } };
    return tally({ 'sales-tax': tax });
  }
  const first = deductibleIn(plain);
  if (first !== undefined && sum !== undefined) {
    const share = /^\d+%/.exec(texts.paid ?? '')?.[0] ?? paidIn(plain) ?? '100%';
    return tally({ paid: `${/%$/.test(share) ? share : '100%'} after ${first}` });
  }
  const paid = paidIn(plain) ?? shareOf(plain);
  if (paid !== undefined) return tally({ paid });
  if (asksMine(plain) && texts.paid !== undefined) return tally({});
  const { label, price = '', square } = (ADDED.exec(plain) ?? AMOUNT_FIRST.exec(plain))?.groups ?? {};
  if (label !== undefined && sum !== undefined) {
    const amount = /^[$€£]/.test(price) ? price.replace(' ', '') : `$${price}`;
    const area = areaText(last?.place ?? known.area ?? known.room);
    if (square !== undefined && area === undefined) return undefined;
    const item = square === undefined ? `${label} ${amount}` : `${label} ${area} at ${amount}/sq ft`;
    const first = command === 'tally' ? sum : `flooring ${sum}`;
    return { command: 'tally', texts: { ...(command === 'tally' ? texts : {}), items: `${first}; ${item}` } };
  }
  const each = priceEach(plain);
  const have = command === 'floor enough' ? /^(\d{1,4}) boxes$/.exec(texts.have ?? '')?.[1] : undefined;
  if (each && have !== undefined && (each.unit ?? 'boxes') === 'boxes')
    return { command: 'tally', texts: { items: `${have} boxes at ${each.price}` } };
  if (each && last?.count !== undefined && (each.unit === undefined || each.unit === last.unit)) {
    if (last.unit === 'boxes' && command !== 'tally') {
      const carton = `${each.price} a carton`;
      const plank = texts.plank;
      if (command === 'floor planks' && plank !== undefined)
        return { command, texts: { ...texts, plank: `${plank.replace(/, ?[$€£][^,]*$/, '')}, ${carton}` } };
      if (command === 'floor estimate') return { command, texts: { ...texts, price: carton } };
      return undefined;
    }
    const unit = unitNamed(last.unit ?? '') ?? 'pieces';
    return { command: 'tally', texts: { items: `${last.count} ${unit} at ${each.price}` } };
  }
  const priced = given.areas.length === 0 ? pricedCount(plain) : undefined;
  return priced
    ? { command: 'tally', texts: { items: `${priced.count} ${priced.unit} at ${priced.price}` } }
    : undefined;
}

const AREA_ALONE = /^\d[\d.,]* ?(?:sq(?:uare)? ?(?:ft|feet)|sqft|sf)$/;
const SIDES = /(\d{1,3}(?:\.\d+)?) ?(?:'|ft|feet)? ?(?:x|by) ?(\d{1,3}(?:\.\d+)?)/g;

/** Rooms of plain feet as an area. */
function areaText(place: string | undefined): string | undefined {
  if (place === undefined || AREA_ALONE.test(place)) return place;
  const areas = [...place.matchAll(SIDES)].map(([, one, other]) => Number(one) * Number(other));
  if (areas.length === 0 || /[m"]|in(?![a-z])|-/.test(place.replace(/[a-z]{4,}/gi, ''))) return undefined;
  return `${Number(areas.reduce((sum, one) => sum + one, 0).toFixed(2))} sq ft`;
}

/** The last figures of one unit that stand for different places. */
function together(figures: readonly LastFigure[], unit: string | undefined): readonly LastFigure[] {
  return figures.filter((one) => one.count !== undefined && one.unit === unit && one.command !== 'tally');
}

function claimed(plain: string, { command, texts, figures }: FigureTalk): Reckoned | undefined {
  const claim: Claim | undefined = claimIn(plain);
  // What was counted last, though money was spoken of since.
  const last =
    claim && figures.findLast((one) => (claim.unit === undefined ? one === figures.at(-1) : one.unit === claim.unit));
  if (!claim || !last) return undefined;
  const check = claim.money ? `$${claim.figure}` : `${claim.figure}`;
  const tally = (said: string): Reckoned => ({ aside: true, command: 'tally', texts: { items: said, check } });
  if (claim.money || (last.count === undefined && claim.unit === undefined)) {
    const sum = money(last);
    return sum === undefined ? undefined : tally(sum);
  }
  if (last.count === undefined || (claim.unit !== undefined && claim.unit !== last.unit)) return undefined;
  const unit = unitNamed(last.unit ?? '') ?? 'pieces';
  if (claim.inAll) {
    const all = together(figures, last.unit);
    if (all.length > 1) return tally(all.map(({ count }) => `${count} ${unit}`).join('; '));
  }
  const { area, box } = texts;
  if (unit === 'boxes' && command === 'floor estimate' && area !== undefined && box !== undefined && !claim.inAll)
    return { aside: true, command: 'floor enough', texts: { area, box, have: `${claim.figure} boxes` } };
  if (command === 'floor enough' && area !== undefined)
    return { command, texts: { ...texts, have: `${claim.figure} boxes` } };
  return tally(`${last.count} ${unit}`);
}

const LESS =
  /^(?:minus|less|take (?:away|off)|except|but i? ?(?:returned|gave back|took back)|(?:and )?i? ?(?:returned|gave back|took back)|returned|without) (?<n>\d{1,3})(?! ?(?:x|by|ft|feet|in|%|sq))/;
const PLUS = /^(?:plus|and|add|bought|got|i (?:bought|got)|with) (?<n>\d{1,3}) more(?![a-z])/;

const ON_ROW = /(?<![a-z])(?:on|at|starting|start|up to|reached|doing) (?:the )?row (?<on>\d{1,3})(?![\d.x/])/;
const ROWS_DONE =
  /(?<![a-z\d.])(?:row (?<through>\d{1,3}) (?:is )?(?:done|finished|down|in)|(?:done|finished|laid|through|completed|did|put down)(?: with)?(?: about)? (?:row (?<row>\d{1,3})|(?<rows>\d{1,3}) rows)|(?<laid>\d{1,3}) rows (?:are )?(?:done|down|in|laid|finished|so far))(?! of)(?![a-z])/;
const WHAT_IS_LEFT =
  /^(?:so |and |ok |then )*(?:how (?:many|much)(?: more)? ?(?:planks?|rows?|boxes|pieces|boards)? ?(?:are |is |do i have |have i got |'?s )?(?:left|to go|remaining|still (?:to go|needed))(?: to (?:lay|do|go))?|what(?:'s|s| is) (?:left|still to do)|how far am i|how much (?:more )?(?:is left|to go))[?.! ]*$/;

const BROKE =
  /^(?:(?:and|i|we|just|oh|oops|damn|also|then),? )*(?:broke|ruined|miscut|cracked|wasted|messed up|damaged) (an?|one|\d{1,2})(?: more| of them)?(?: planks?| boards?)?(?: already| today| so far)?[.! ]*$/;
const LEFT_THERE =
  /(?<![\d.])(\d{1,3} (?:planks?|boards?|boxes|cartons))(?: (?:are|is))?(?: still)? (?:left|here|to go|remaining|on hand|more)(?![a-z])/;
/** Where a row ended, and nothing else. */
const BARE_END =
  /^(?:(?:it|at|about|ended|ends|stops|stopped|it'?s|the last piece is|last piece is) )*(\d{1,3}(?:[ -]\d{1,2}\/\d{1,2}|\/\d{1,2}|\.\d{1,2})?(?: ?(?:"|in(?:ch(?:es)?)?|cm|mm))?)[.!]*$/;

/** Rows laid of the floor that was counted, for what is left of it. */
function rowsLaid(plain: string, { command, texts, known }: FigureTalk): Reckoned | undefined {
  if (command === 'floor resume' && WHAT_IS_LEFT.test(plain)) return { command, texts };
  const plank = texts.plank ?? known.plank;
  const room = texts.room ?? known.room ?? known.area;
  if (plank === undefined || room === undefined) return undefined;
  const { direction, pattern, gap } = texts;
  const layout = Object.entries({ direction, pattern, gap }).filter(([, value]) => value !== undefined);
  const resumed = (soFar: string): Reckoned => ({
    command: 'floor resume',
    texts: { room, plank, ...Object.fromEntries(layout), 'so-far': soFar },
  });
  const soFar = texts['so-far'];
  const before = /(?<!\d)(\d{1,4}) rows done|row (\d{1,4})/.exec(
    soFar ?? (command === 'handbook' ? (texts.said ?? '') : ''),
  );
  const end = BARE_END.exec(plain)?.[1];
  if (before && end !== undefined) return resumed(`row ${before[1] ?? before[2]} ended at ${end}`);
  const rest = LEFT_THERE.exec(plain)?.[1];
  if (command === 'floor resume' && rest !== undefined && soFar !== undefined)
    return resumed(`${soFar.replace(/, \d+ (?:planks|boxes) left/, '')}, ${rest} left`);
  const broke = BROKE.exec(plain)?.[1];
  if (command === 'floor resume' && broke !== undefined && soFar !== undefined)
    return resumed(`${soFar.replace(/, broke \w+/, '')}, broke ${broke}`);
  const { on } = ON_ROW.exec(plain)?.groups ?? {};
  const { through, row, rows, laid } = ROWS_DONE.exec(plain)?.groups ?? {};
  const done = on === undefined ? Number(through ?? row ?? rows ?? laid ?? 0) : Number(on) - 1;
  if (done < 1 || /(?<![a-z])(?:ended|ends|offcuts?|broke)/.test(plain)) return undefined;
  return resumed(`${done} rows done`);
}

function counting(plain: string, talk: FigureTalk): Reckoned | undefined {
  const { command, texts, figures } = talk;
  const [last] = figures.slice(-1);
  const rows = rowsLaid(plain, talk);
  if (rows) return rows;
  const broke = BROKE.exec(plain)?.[1];
  if (broke !== undefined && last?.spare !== undefined && last.spare > 0)
    return {
      command: 'tally',
      texts: { items: `${last.spare} planks`, used: `${/^\d/.test(broke) ? broke : 1} planks` },
    };
  const part = doneIn(plain);
  if (part) return part;
  const used = usedIn(plain);
  if (used && command === 'tally' && texts.done !== undefined)
    return { command, texts: { ...texts, used: `${used.count} ${used.unit}` } };
  if (used && last?.count !== undefined && last.unit === used.unit)
    return { command: 'tally', texts: { items: `${last.count} ${used.unit}`, used: `${used.count} ${used.unit}` } };
  const item = command === 'tally' ? /^(\d{1,6}) ([a-z]{1,30})(?![a-z])(.*)$/.exec(texts.items ?? '') : null;
  if (!item) return undefined;
  const [, count = '0', unit = '', rest = ''] = item;
  const less = LESS.exec(plain)?.groups?.n;
  const more = PLUS.exec(plain)?.groups?.n;
  const now = Number(count) - Number(less ?? 0) + Number(more ?? 0);
  if ((less ?? more) === undefined || now < 1) return undefined;
  const named = unitNamed(unit);
  const word = now === 1 && named ? oneOf(named as Unit) : unit;
  return { command, texts: { ...texts, items: `${now} ${word}${rest}` } };
}

/** Words for all of several rooms, within a message that says more. */
const OF_BOTH =
  /(?<![a-z])(?:(?:for|do|cover|in) (?:both|all|everything|the (?:two|three|whole (?:thing|lot)))|both rooms|all (?:two|three|four)? ?rooms|both of (?:them|those))(?![a-z])/;

/** Several rooms as one request, or several sums of money as one. */
function inAll(plain: string, given: Measured, talk: FigureTalk): Reckoned | undefined {
  const whole = asksInAll(plain);
  if (!whole && !(OF_BOTH.test(plain) && given.room === undefined)) return undefined;
  const { command, texts, figures } = talk;
  if (command === 'tally') return whole ? { command, texts } : undefined;
  const [last] = figures.slice(-1);
  if (!last) return undefined;
  const alike = figures.filter((one) => one.command === last.command && one.place !== undefined);
  const places = [...new Set(alike.flatMap(({ place }) => place ?? []))];
  const option = texts.area === undefined ? 'room' : 'area';
  const { carton, price } = given;
  const more =
    command === 'floor estimate'
      ? { ...(carton === undefined ? {} : { box: carton }), ...(price === undefined ? {} : { price }) }
      : {};
  if (places.length > 1) return { command, texts: { ...texts, ...more, [option]: joined(places) } };
  if (!whole) return undefined;
  const sums = figures.flatMap((one) => (one.command === last.command ? [] : (money(one) ?? [])));
  const own = money(last);
  if (own !== undefined && sums.length > 0) return { command: 'tally', texts: { items: [...sums, own].join('; ') } };
  return { command, texts };
}

/** Places as one text of rooms; areas are added up by their reader. */
function joined(places: readonly string[]): string {
  return places.every((place) => AREA_ALONE.test(place)) ? places.join(' + ') : places.join('; ');
}
