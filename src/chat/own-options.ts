/** What a follow-up says for options of the last command: by an option's name, or in the words of its trade. */

import { optionsOf } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import { pairPattern } from '../input/rooms/room-text.ts';
import { sentenceFrame } from '../language/frames.ts';
import type { Measured } from '../language/measured.ts';
import type { Command } from './command.ts';
import { pairStart, parseOptions } from './command-line.ts';

/** The last request, as far as it was said; `open` is what was asked back. */
export interface Before {
  readonly command: string;
  readonly texts: Readonly<Record<string, string>>;
  readonly open?: string | undefined;
}

export const OF_FLOORS = /^floor (?:planks|estimate|enough|area|layout)$/;

/** The first two sides in a text. */
export function pairIn(text: string): string | undefined {
  return pairPattern().exec(text)?.[0];
}

const LONGEST_NAMED = 200;
const LEAD =
  /^(?:(?:and|no|nope|actually|sorry|ok(?:ay)?|also|but|wait|now|then|so|what about|how about|what if|if|with|use|make|set|change|try|it'?s|i meant|the|an?|my|we have|i have),? ){1,5}/i;

/** Options by their names, as in `gap: 3/8 in` or “with a gap of 3/8 in”; undefined unless all of the message is read so. */
export function namedOptions(
  text: string,
  command: Command,
  preferences: Preferences,
): ReadonlyMap<string, string> | undefined {
  if (text.length > LONGEST_NAMED) return undefined;
  const names = Object.keys(command.options.shape);
  const whole = text.trim().replace(/(?<![.!])[.!]+$/, '');
  const lean = whole.replace(LEAD, '');
  const read = ([option, value]: readonly [string, string]): boolean => reads(command, option, value, preferences);
  const line = [whole, lean].find((one) => one.search(pairStart(names)) === 0);
  if (line === undefined) {
    const spoken = spokenOptions(lean, names).find(read);
    return spoken && new Map([spoken]);
  }
  const parsed = parseOptions(command, line);
  return parsed.ok && [...parsed.optionTexts].every(read) ? parsed.optionTexts : undefined;
}

/** A name before its value or behind it, the longest name first: “spacing is 12 in”, “a 3/8 in gap”. */
function spokenOptions(lean: string, names: readonly string[]): readonly (readonly [string, string])[] {
  const longestFirst = [...names].sort((one, other) => other.length - one.length);
  const said = lean.toLowerCase().replaceAll('-', ' ');
  return longestFirst.flatMap((name) => {
    const words = name.replaceAll('-', ' ');
    const value = said.startsWith(`${words} `)
      ? lean.slice(words.length + 1).replace(NAME_IS, '')
      : said.endsWith(` ${words}`)
        ? lean.slice(0, -words.length - 1)
        : '';
    return /\d|^[a-z-]+$/i.test(value) ? [[name, value.trim()] as const] : [];
  });
}

const NAME_IS = /^(?:(?:is|are|of|at|to|should be|set to|now) ){1,2}/i;

function reads(command: Command, option: string, value: string, preferences: Preferences): boolean {
  const text = { text: value, reading: { option, preferences, note: () => undefined } };
  return command.options.shape[option]?.safeParse(text).success === true;
}

const UNDER =
  /(?<![a-z])(?:(?<first>(?:old |ceramic |vinyl |sheet |asphalt )*(?:tiles?|vinyl|lino(?:leum)?|plywood|osb|particle ?board|concrete|hardwood|wood|laminate)) (?:is |are )?(?:under|below|beneath)|(?:under|below|beneath)[a-z]*(?: (?:it|that|the carpet))?(?: is| are|'s)?(?: there'?s)? (?:an? )?(?<then>(?:old |ceramic |vinyl |sheet |asphalt )*(?:tiles?|vinyl|lino(?:leum)?|plywood|osb|particle ?board|concrete|hardwood|wood|laminate)))/;
const WOODEN = /(?<![a-z])(?:plywood|osb|wood(?:en)?|particle ?board|(?:sub)?floor joists?)(?![a-z])/;
const CONCRETE = /(?<![a-z])(?:concrete|slab|cement)(?![a-z])/;
const GAP =
  /(?<![\d./x])(?<figure>(?:\d{1,2}[ -])?\d{1,2}\/\d{1,2}|\d{1,2}(?:\.\d{1,2})?(?= ?(?:"|in(?:ch(?:es)?)?|mm|cm)(?![a-z])))(?: ?(?<unit>mm|cm)(?![a-z]))?(?! ?x)/;
const SIDES = /(\d{1,3}(?:\.\d{1,2})?) ?(?:'|ft|feet|m)? ?(?:x|×|by) ?(\d{1,3}(?:\.\d{1,2})?) ?(m(?![a-z]))?/;
/** A depth, in inches where no unit is said. */
function gapIn(plain: string): string | undefined {
  const { figure, unit = 'in' } = GAP.exec(plain)?.groups ?? {};
  return figure === undefined ? undefined : `${figure} ${unit}`;
}

/** What a bag of leveler weighs: “bags are 40 lb”, “25 kg bags”. */
const BAG =
  /(?<![a-z])bags? (?:(?:is|are|of|weighs?|come in|comes in|at|only) ){0,2}(?<behind>\d{1,2}(?:\.\d)?) ?(?<unit>lbs?|pounds?|kgs?|kilos?)(?![a-z])|(?<![\d.,/])(?<before>\d{1,2}(?:\.\d)?)[ -]?(?<of>lbs?|pounds?|pound|kgs?|kilos?)[ -]bags?(?![a-z])/;
const STANDARD_BAG = /^([\d.]+) cu ft per ([\d.]+) lb$/;
const POUNDS_PER_KILOGRAM = 2.20462262;

/** A bag of another weight, at the yield by weight of the usual one. */
function bagOf(plain: string, usual: string | undefined): string | undefined {
  const { behind, unit = '', before, of = unit } = BAG.exec(plain)?.groups ?? {};
  const weight = behind ?? before;
  const [, cubicFeet, pounds] = STANDARD_BAG.exec(usual ?? '') ?? [];
  if (weight === undefined || cubicFeet === undefined) return undefined;
  const metric = of.startsWith('k');
  const share = (Number(weight) * (metric ? POUNDS_PER_KILOGRAM : 1)) / Number(pounds);
  return `${Number((Number(cubicFeet) * share).toFixed(4))} cu ft per ${weight} ${metric ? 'kg' : 'lb'}`;
}

/** Sticks of one length, where nothing else is said: “only 8 ft at the store”, “and 16 ft ones?”. */
const ONLY_STICKS =
  /^(?:(?:and|only|just|what about|how about|with|in|using|what if|if|they only have|they have|the store only has|store only has|it comes in|i have|the|use|all)(?: |$)){0,4}(?<figure>\d{1,2}(?:\.\d{1,2})?)[ -]?(?<unit>'|ft|foot|feet|footers?|m|meters?|metres?)(?: (?:ones?|long|sticks?|lengths?|pieces?|boards?|only))*(?: (?:at|in) the store| there| available| in stock| then| instead)*[?.!]*$/;

function onlySticks(plain: string): string | undefined {
  const { figure, unit = '' } = ONLY_STICKS.exec(plain)?.groups ?? {};
  const metric = /^m/.test(unit);
  const [least, most] = metric ? [1.8, 6] : [6, 20];
  if (figure === undefined || Number(figure) < least || Number(figure) > most) return undefined;
  return `${figure} ${metric ? 'm' : 'ft'}`;
}

const LENGTH_UNIT = '(?:mm|cm|m|in|inch|inches|ft|feet|millimet(?:er|re)s?|centimet(?:er|re)s?|met(?:er|re)s?)';
/** The last sum in another unit: “in mm”, “what’s that in inches”. */
const IN_UNIT = new RegExp(
  `^(?:(?:and|now|so|what'?s|what is|how much is|how many is|that|it|this|show|give|me|convert|please|say)(?: |$)){0,5}(?:in|to|into|as) (${LENGTH_UNIT})(?: please)?[?.!]*$`,
);
const ENCLOSED = /^\([^()]*\)$/;
const TARGET = new RegExp(` (?:in|to) ${LENGTH_UNIT}$`);
/** Another length for the same question: “and 193 mm”. */
const OTHER_LENGTH = new RegExp(
  `^(?:and|what about|how about|or|then|now)(?: for)? (\\d[\\d ./'-]{0,12}(?: ?(?:${LENGTH_UNIT}|"))?)[?.!]*$`,
);

/** A sum that goes on from the last one. */
function nextSum(plain: string, before: string): string | undefined {
  const unit = IN_UNIT.exec(plain)?.[1];
  const target = TARGET.exec(before)?.[0];
  const inner = target === undefined ? before : before.slice(0, -target.length);
  if (unit !== undefined) return `${/[-+*/x]/.test(inner) && !ENCLOSED.test(inner) ? `(${inner})` : inner} in ${unit}`;
  const other = target === undefined ? undefined : OTHER_LENGTH.exec(plain)?.[1]?.trim();
  if (other !== undefined) return `${other}${target}`;
  const [, sign, figure = ''] = MORE_OF_A_SUM.exec(plain) ?? [];
  return sign === undefined
    ? undefined
    : `${ENCLOSED.test(inner) ? inner : `(${inner})`} ${SIGNS[sign] ?? 'x'} ${figure}`;
}

const BARE_WIDTH = /(?<![\d./x])(\d{2,3}) ?(?:"|in(?:ch(?:es)?)?)?(?: wide)?[.!?]?$/;
const MORE_OF_A_SUM =
  /^(?:and |then |now )*(plus|minus|times|divided by|less|add|take off|subtract|\+|-|x|\*) ?(\d.{0,40}?)[.!?]*$/;
const SIGNS: Readonly<Record<string, string>> = {
  plus: '+',
  add: '+',
  '+': '+',
  minus: '-',
  less: '-',
  'take off': '-',
  subtract: '-',
  '-': '-',
  'divided by': '/',
};

/** A meter read once more: “after 2 weeks it’s 11”. */
const READS_NOW =
  /(?:it'?s|it is|now|down to|up to|reads?|says?|got)(?: now| at| about| down to)? (\d{1,3}(?:\.\d{1,2})?) ?(?:%|percent)?(?: now| today)?[.! ]*$/;

/** What a message says for options of the last command, where it isn't about a floor's quantity; undefined for nothing new. */
export function ownNews(
  plain: string,
  given: Measured,
  { command, texts, open }: Before,
  preferences: Preferences,
  last: Command,
): ReadonlyMap<string, string> | undefined {
  if (OF_FLOORS.test(command) || command.startsWith('project ')) return undefined;
  const news = new Map<string, string>();
  const frame = sentenceFrame(command, given, preferences);
  if (command === 'floor resume' && !/\d/.test(plain)) return undefined;
  if (frame?.command === command) for (const [option, value] of frame.optionTexts) news.set(option, value);
  const under = UNDER.exec(plain)?.groups;
  if (command === 'prep tearout' && under) {
    news.delete('floor');
    news.set('below', under.first ?? under.then ?? '');
  }
  if (command === 'prep level' || command === 'prep moisture') {
    if (CONCRETE.test(plain)) news.set('floor', 'concrete');
    else if (WOODEN.test(plain)) news.set('floor', 'wood');
  }
  const again = command === 'prep moisture' && texts.readings !== undefined ? READS_NOW.exec(plain)?.[1] : undefined;
  if (again !== undefined && !news.has('readings')) news.set('readings', again);
  if (command === 'prep level') {
    const pair = pairIn(plain);
    const gap = gapIn(pair === undefined ? plain : plain.replace(pair, ' '));
    const bag = bagOf(plain, optionsOf(last).find(({ name }) => name === 'bag')?.standard);
    if (bag !== undefined) news.set('bag', bag);
    if (given.areas[0] !== undefined && !news.has('area')) news.set('area', given.areas[0]);
    const before = texts.readings;
    if (pair !== undefined && !news.has('area')) news.set('area', pair.trim());
    if (gap !== undefined && before !== undefined && !news.has('readings'))
      news.set('readings', before.replace(/^.*? over /, `${gap} over `));
    const size = SIDES.exec(news.get('area') ?? texts.area ?? '');
    // A depth alone is that of the low area said before, over its longer side.
    if (gap !== undefined && before === undefined && size && !news.has('readings'))
      news.set('readings', `${gap} over ${Math.max(Number(size[1]), Number(size[2]))} ${size[3] === 'm' ? 'm' : 'ft'}`);
  }
  if (command === 'trim edges' && (open === 'doorways' || texts.doorways !== undefined) && news.size === 0) {
    const wide = BARE_WIDTH.exec(plain)?.[1];
    const before = texts.doorways ?? 'tile';
    if (wide !== undefined) news.set('doorways', `${wide} in to ${before.replace(/^.* to /, '')}`);
  }
  if (command === 'prep lift' && texts.weight !== undefined && !news.has('weight')) {
    const count = /(?<![\d.])(\d{1,3}) (?:of (?:them|those|em|'em)|boxes|cartons|packs|cases|bags)/.exec(plain)?.[1];
    const [, one, unit] = /^([\d.]+) ?([a-z]+)/.exec(texts.weight) ?? [];
    if (count !== undefined && one !== undefined) news.set('weight', `${Number(count) * Number(one)} ${unit}`);
  }
  const sticks = command.startsWith('trim ') && !news.has('stock') ? onlySticks(plain) : undefined;
  if (sticks !== undefined && 'stock' in last.options.shape) news.set('stock', sticks);
  const sum = command === 'tape' && texts.sum !== undefined ? nextSum(plain, texts.sum) : undefined;
  if (sum !== undefined) news.set('sum', sum);
  return news.size === 0 ? undefined : news;
}
