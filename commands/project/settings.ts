/** `project settings`: how a user writes numbers, and their own defaults. */

import { z } from 'zod';
import { type Context, defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { COUNTRY_NAMES, readCountry } from '../../src/input/parse-house.ts';
import { type Colons, type Preferences, type Read, read, unread } from '../../src/input/reading.ts';
import type { Country } from '../../src/prep/old-floor.ts';
import type { Settings } from '../../src/project/person.ts';
import type { Fact, Problem } from '../../src/reply/reply.ts';
import { settingUnread } from '../../src/text/project-problems-text.ts';
import { SETTING_EXPECTED, SETTINGS } from '../../src/text/project-text.ts';
import { picksSaid } from './pick-values.ts';
import { projectProblem, projectReply, withProject } from './project-command.ts';

// “clear” unsets any of these options.

const AS_IT_IS = 'as it is';
const CLEAR = 'clear';

const SIGNS: ReadonlyMap<string, string> = new Map([
  ['$', 'USD'],
  ['€', 'EUR'],
  ['£', 'GBP'],
]);

/** `known` maps what they may type to what is stored. */
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

/** Stored as text and read later by the option it is a default for. */
const standard = (summary: string, example: string, colons?: Colons) =>
  text({ summary, example, standard: AS_IT_IS, ...(colons && { colons }) }, (typed) =>
    read(isClear(typed.trim().toLowerCase()) ? CLEAR : typed.trim()),
  );

const settingsOptions = {
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
    { summary: 'The currency for prices without a sign: a code such as EUR', example: 'EUR', standard: AS_IT_IS },
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
      summary: 'Where the home is: US, Canada, UK, Australia or another; for the years of old floors and paint',
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
  mistakes: standard('Extra planks for mistakes', '5%'),
  spares: standard('Extra planks to keep for repairs', '3'),
  tax: standard('Sales tax', '8.25%'),
  rules: standard('Other defaults, written like picks: “gap: 3/8 in; stagger: 8 in”', 'gap: 3/8 in', 'any'),
};

type SettingsAsk = { readonly [O in keyof typeof settingsOptions]: string };

interface Settled {
  readonly apply: (before: Settings) => Settings;
  readonly said: readonly string[];
  readonly notes: readonly string[];
}

const PREFERENCES = ['units', 'decimal', 'currency'] as const;
/** Each of these is set by a word. */
const WORDS = [...PREFERENCES, 'country'] as const;
const STANDARDS = ['mistakes', 'spares', 'tax'] as const;

function settled(ask: SettingsAsk, context: Context): Settled | { readonly problem: Problem } {
  const said: string[] = [];
  const words = WORDS.filter((name) => ask[name] !== AS_IT_IS);
  for (const name of words)
    said.push(ask[name] === CLEAR ? SETTINGS.cleared(name) : SETTINGS.set(name, shown(name, ask[name])));
  const cleared = STANDARDS.filter((name) => ask[name] === CLEAR);
  const named = STANDARDS.filter((name) => ![AS_IT_IS, CLEAR].includes(ask[name])).map(
    (name) => `${name}: ${ask[name]}`,
  );
  const rules = [AS_IT_IS, CLEAR].includes(ask.rules) ? [] : [ask.rules];
  const given = [...named, ...rules].join(', ');
  const picks = given === '' ? { set: [], clear: [], notes: [] } : picksSaid(given, context);
  if ('problem' in picks) return { problem: { ...picks.problem, fix: fixFor(picks.problem.fix) } };
  said.push(...[...cleared, ...picks.clear].map(SETTINGS.cleared));
  said.push(...picks.set.map(([name, text]) => SETTINGS.set(name, text)));
  if (ask.rules === CLEAR) said.push(SETTINGS.cleared('rules'));
  const apply = (before: Settings): Settings => {
    const { standards, ...others } = before;
    const gone: readonly string[] = [...cleared, ...picks.clear];
    const kept = Object.entries(standards).filter(
      ([name]) => !gone.includes(name) && (ask.rules !== CLEAR || STANDARDS.some((one) => one === name)),
    );
    const set = words.filter((name) => ask[name] !== CLEAR).map((name) => [name, ask[name]]);
    const same = Object.entries(others).filter(([name]) => !words.some((one) => one === name));
    return { ...Object.fromEntries([...same, ...set]), standards: Object.fromEntries([...kept, ...picks.set]) };
  };
  return { apply, said, notes: picks.notes };
}

/** Turns the fix for a pick into one for a setting. */
function fixFor(fix: string | undefined): string | undefined {
  const pick = /^project pick (?<pick>(?<name>[\w-]+): .+)$/.exec(fix ?? '')?.groups;
  if (!pick) return undefined;
  const standard = STANDARDS.some((name) => name === pick.name);
  return `project settings ${standard ? '' : 'rules: '}${pick.pick}`;
}

/** `preferences` still reflect `before`, so they show the platform's default only where `before` had nothing set. */
function settingFacts(
  settings: Settings | undefined,
  before: Settings | undefined,
  preferences: Preferences,
): readonly Fact[] {
  const standards = Object.entries(settings?.standards ?? {});
  return [
    ...PREFERENCES.map((name) => {
      const own = settings?.[name];
      if (own !== undefined) return { label: name, value: shown(name, own) };
      const notGiven =
        before?.[name] === undefined ? SETTINGS.ofPlatform(shown(name, preferences[name])) : SETTINGS.notSet;
      return { label: name, value: notGiven };
    }),
    {
      label: 'country',
      value: settings?.country === undefined ? SETTINGS.noCountry : shown('country', settings.country),
    },
    ...standards.map(([label, value]) => ({ label, value })),
  ];
}

function shown(name: (typeof WORDS)[number], value: string): string {
  if (name === 'country') return Object.hasOwn(COUNTRY_NAMES, value) ? COUNTRY_NAMES[value as Country] : value;
  return name === 'decimal' ? SETTINGS.names[value === ',' ? ',' : '.'] : value;
}

export default defineCommand({
  group: 'project',
  name: 'settings',
  summary: 'Your units, decimal mark, currency, country, and your own defaults',
  phrases: [
    'use metric',
    'switch to meters',
    'show me in feet and inches',
    'change units to cm',
    'set my units',
    'i want inches only',
    'prices in euros',
    'turn reminders off',
    'remind me tomorrow morning',
    'set language',
    'metric please',
    'give me that in centimeters',
    'use feet with decimals',
    'nearest eighth is fine',
    'round to 1/16',
    'change currency',
    'turn off buttons',
    'how do i change settings',
    'stop sending me messages',
    'mm please',
    'switch me to feet and inches',
    "i'd rather see everything in centimeters if that's all the same to you",
    'change units',
    "round cuts to the nearest sixteenth from now on, eighths aren't close enough",
    'show prices in pounds',
    "set it to millimetres please, my tape hasn't got inches on it",
    'turn off the reminders, they come at six in the morning',
    'what are my settings',
    'put me on meters for this project but leave the other project in feet',
    'no more buttons',
    "can you make the answers shorter, i'm reading them on a tiny phone",
    "my currency's euros",
    "i'm in the uk so use square metres, kilos and pounds sterling",
    'set sales tax to 7.25 percent for all my totals',
    'units: imperial',
    "remind me every sunday evening about what's next on the floor",
    'bigger text in the printed sheets',
    'could we do decimal inches instead of fractions, my saw has a digital readout',
    'change language to spanish',
    'set nearest 1/8',
    "i keep getting square meters and don't want them, go back to square feet",
    'how do i change how you show measurements',
    'default waste should be 8 percent every time i ask for boxes',
    'kilograms not pounds',
    'stop the daily message you send me about the shopping list',
    'settings',
    'paper size a4',
    'i need lengths in inches only, like 147 3/8, without the feet in front',
    'use canadian dollars',
    'show my preferences',
    "don't show the drawings, they come out garbled in this chat window",
    'time zone is wrong',
    'set the units back the way they came, i liked the first ones better',
    'turn reminders on for thursdays',
    'make it all metric except the stick lengths, which come in feet here',
    'cm please',
    'can i set it so money is hidden when other people are in the channel',
    'answer in feet',
    'put the country as australia so the dates and sizes make sense',
  ],
  options: z.object(settingsOptions),
  examples: [
    { ask: 'project settings', headline: 'Your settings.' },
    {
      ask: 'project settings units: metric, decimal: comma, currency: EUR',
      headline: 'Units metric; decimal comma; currency EUR.',
    },
    { ask: 'project settings country: UK', headline: 'Country UK.' },
    {
      ask: 'project settings mistakes: 5%, spares: 3, rules: gap: 3/8 in',
      headline: 'Mistakes 5%; spares 3; gap 3/8 in.',
    },
  ],
  run: (given, context) =>
    withProject(context, async (access) => {
      const change = settled(given, context);
      if ('problem' in change) return projectProblem(change.problem);
      const before = (await access.person())?.settings;
      const settings = change.said.length === 0 ? before : (await access.settle(change.apply)).settings;
      return projectReply(context, {
        headline: change.said.length === 0 ? SETTINGS.headline : SETTINGS.changed(change.said),
        blocks: [{ kind: 'facts', title: SETTINGS.title, facts: settingFacts(settings, before, context.preferences) }],
        assumed: [...change.notes, ...(given.units === AS_IT_IS ? [] : [SETTINGS.unitsOfText])],
      });
    }),
});
