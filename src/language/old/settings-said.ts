/** Settings said in other words than the options of `project settings`, as its line. */

import { isCountry } from '../../input/parse-house.ts';

const NAMES = ['units', 'decimal', 'currency', 'country', 'mistakes', 'spares', 'tax'] as const;
const OTHER_WORDS: ReadonlyMap<string, string> = new Map([
  ['unit', 'units'],
  ['decimals', 'decimal'],
  ['decimal mark', 'decimal'],
  ['waste', 'mistakes'],
  ['sales tax', 'tax'],
]);
const NAMED = new RegExp(
  `(?<=^|[\\s,;])(${[...NAMES, ...OTHER_WORDS.keys()].sort((one, other) => other.length - one.length).join('|')})\\b\\s*(?:[:=]|is |to |are )?\\s*`,
  'gi',
);
const CLEAR = /^(?:clear|reset|unset|forget)(?: (?:the |my )?(?<what>[a-z ]+?))?$/i;
const SET =
  /^(?:set|change) (?:the |my )?(?<rest>(?:units?|decimals?|decimal mark|currency|country|mistakes|spares|(?:sales )?tax) .+)$/i;
const USE =
  /^(?:use|switch to|change to|set to|work in|i (?:use|think in)) (?:the )?(?<what>metric|imperial|feet(?: and inches)?|inches|meters|metres|millimet(?:er|re)s|decimal commas?|decimal points?|commas|euros?|pounds|dollars)(?: (?:units|system|measures|please|for decimals))*$/i;
const USED: readonly (readonly [RegExp, string])[] = [
  [/^(?:metric|met|milli)/i, 'units: metric'],
  [/^(?:imperial|feet|inches)/i, 'units: imperial'],
  [/comma/i, 'decimal: comma'],
  [/point/i, 'decimal: point'],
  [/^euro/i, 'currency: EUR'],
  [/^pounds/i, 'currency: GBP'],
  [/^dollars/i, 'currency: USD'],
];

const HOME =
  /^(?:(?:my|our|the) (?:country|home country) is|(?:my|our|the) (?:house|home|flat|apartment|place) is in|(?:i|we) live in) (?<country>(?:the )?[a-z][a-z .]{1,40})$/i;

/** The line for a sentence about settings; undefined for any other text, and for one that the command reads itself. */
export function settingsSaid(said: string): string | undefined {
  const text = said.replace(/(?<![.!?])[.!?]+$/, '');
  const use = USE.exec(text)?.groups?.what;
  if (use !== undefined) return `project settings ${USED.find(([word]) => word.test(use))?.[1] ?? ''}`.trim();
  const country = HOME.exec(text)?.groups?.country;
  if (country !== undefined && isCountry(country)) return `project settings country: ${country}`;
  const own = /^(?:show )?(?:project |my |the |our )*settings\b[:,]?\s*(?<rest>.*)$/is.exec(text)?.groups?.rest;
  const rest = own ?? SET.exec(text)?.groups?.rest;
  if (rest === undefined) return undefined;
  if (rest === '') return 'project settings';
  const cleared = CLEAR.exec(rest);
  if (cleared) {
    const all = /^(?:all|everything|settings|them)?$/i.test(cleared.groups?.what ?? '');
    const names = all ? [...NAMES, 'rules'] : named(cleared.groups?.what ?? '').map(([name]) => name);
    return names.length > 0 ? `project settings ${names.map((name) => `${name}: clear`).join(', ')}` : undefined;
  }
  const pairs = named(rest);
  // A rule may hold any of the names: the command reads it as it is told.
  if (pairs.length === 0 || /\brules\s*:/i.test(rest) || rest.search(NAMED) !== 0)
    return own === undefined ? undefined : (plain(rest) ?? `project settings ${rest}`);
  return `project settings ${pairs.map(([name, value]) => `${name}: ${value}`).join(', ')}`;
}

/** A setting told without its name: metric, comma, EUR. */
function plain(rest: string): string | undefined {
  const found = USED.find(([word]) => word.test(rest));
  return found && /^[a-z]+(?: units)?$/i.test(rest) ? `project settings ${found[1]}` : undefined;
}

/** The settings named in a text, each with what follows its name. */
function named(text: string): readonly (readonly [name: string, value: string])[] {
  const found = [...text.matchAll(NAMED)];
  return found.map((one, i) => {
    const word = (one[1] ?? '').toLowerCase();
    const value = text.slice(one.index + one[0].length, found[i + 1]?.index ?? text.length);
    return [OTHER_WORDS.get(word) ?? word, value.replace(/(?<!\s)(?:\s*[,;]|\s+and)?\s*$/i, '').trim()];
  });
}
