/** The options of `project settings`; “clear” unsets any of them. */

import { text } from '../../../src/input/options.ts';
import { readCountry } from '../../../src/input/parse-house.ts';
import { type Colons, type Read, read, unread } from '../../../src/input/reading.ts';
import { settingUnread } from '../../../src/text/project-problems-text.ts';
import { SETTING_EXPECTED } from '../../../src/text/project-text.ts';

export const AS_IT_IS = 'as it is';
export const CLEAR = 'clear';

const SIGNS: ReadonlyMap<string, string> = new Map([
  ['$', 'USD'],
  ['€', 'EUR'],
  ['£', 'GBP'],
]);

/** One of some words, each with what it is kept as. */
function words(summary: string, example: string, expected: string, known: Readonly<Record<string, string>>) {
  return text({ summary, example, standard: AS_IT_IS }, (typed, { option }): Read<string> => {
    const word = typed.trim().toLowerCase();
    if (word === AS_IT_IS || isClear(word)) return read(isClear(word) ? CLEAR : word);
    const value = Object.hasOwn(known, word) ? known[word] : undefined;
    return value === undefined ? unread(settingUnread(option, typed, expected, example)) : read(value);
  });
}

function isClear(word: string): boolean {
  return /^(?:clear|unset|none|default|standard)$/.test(word);
}

/** The text of a standard, read later by the option that it is for. */
const standard = (summary: string, example: string, colons?: Colons) =>
  text({ summary, example, standard: AS_IT_IS, ...(colons && { colons }) }, (typed) =>
    read(isClear(typed.trim().toLowerCase()) ? CLEAR : typed.trim()),
  );

export const settingsOptions = {
  units: words('imperial or metric', 'metric', SETTING_EXPECTED.units, {
    imperial: 'imperial',
    feet: 'imperial',
    inches: 'imperial',
    us: 'imperial',
    metric: 'metric',
    metres: 'metric',
    meters: 'metric',
    mm: 'metric',
  }),
  decimal: words('The decimal mark: point or comma', 'comma', SETTING_EXPECTED.decimal, {
    '.': '.',
    point: '.',
    dot: '.',
    ',': ',',
    comma: ',',
  }),
  currency: text(
    { summary: 'The currency of a price without a sign: a code such as EUR', example: 'EUR', standard: AS_IT_IS },
    (typed, { option }): Read<string> => {
      const word = typed.trim();
      if (word === AS_IT_IS || isClear(word.toLowerCase())) return read(word === AS_IT_IS ? word : CLEAR);
      const code = SIGNS.get(word) ?? word.toUpperCase();
      return /^[A-Z]{3}$/.test(code)
        ? read(code)
        : unread(settingUnread(option, typed, SETTING_EXPECTED.currency, 'EUR'));
    },
  ),
  country: text(
    {
      summary: 'Where the home is: US, Canada, UK, Australia or another; its years for old floors and paint',
      example: 'UK',
      standard: AS_IT_IS,
    },
    (typed, reading): Read<string> => {
      const word = typed.trim().toLowerCase();
      if (word === AS_IT_IS || isClear(word)) return read(isClear(word) ? CLEAR : word);
      const country = readCountry(typed, reading);
      return country.ok && country.value === undefined
        ? unread(settingUnread(reading.option, typed, SETTING_EXPECTED.country, 'UK'))
        : (country as Read<string>);
    },
  ),
  mistakes: standard('Planks on top for mistakes', '5 %'),
  spares: standard('Planks on top to keep for repairs', '3'),
  tax: standard('Sales tax', '8.25 %'),
  rules: standard('Other standards, told as picks are: “gap: 3/8 in; stagger: 8 in”', 'gap: 3/8 in', 'any'),
};

export type SettingsAsk = { readonly [O in keyof typeof settingsOptions]: string };
