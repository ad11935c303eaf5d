/** Words for every answer: figures by units, platforms, sections of an answer, help, sources and tape. */

import type { SectionId, Source } from '../reply/reply.ts';

const [START, MIDDLE, END] = ['\u0002', '\u0003', '\u0004'];
const EITHER = new RegExp(`${START}([^${START}-${END}]*)${MIDDLE}([^${START}-${END}]*)${END}`, 'g');

/** Both wordings, between control characters that no typed text keeps; `inUnits` picks one. */
export function byUnits(imperial: string, metric: string): string {
  return `${START}${imperial}${MIDDLE}${metric}${END}`;
}

/** Plain data with one wording in every text; unchanged parts are returned as they are. */
export function inUnits<T>(value: T, units: 'imperial' | 'metric'): T;
export function inUnits(value: unknown, units: 'imperial' | 'metric'): unknown {
  if (typeof value === 'string')
    return value.includes(END) ? value.replace(EITHER, units === 'metric' ? '$2' : '$1') : value;
  // A large floor has half a million parts, and few of them have two wordings: nothing is made for the others.
  if (Array.isArray(value)) {
    let items: unknown[] | undefined;
    for (let i = 0; i < value.length; i++) {
      const item = inUnits(value[i], units);
      if (item === value[i]) continue;
      items ??= [...value];
      items[i] = item;
    }
    return items ?? value;
  }
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value;
  const parts = value as Readonly<Record<string, unknown>>;
  let worded: Record<string, unknown> | undefined;
  for (const key of Object.keys(parts)) {
    const item = inUnits(parts[key], units);
    if (item === parts[key]) continue;
    worded ??= { ...parts };
    worded[key] = item;
  }
  return worded ?? value;
}

/** Option values to be said in the units requested, whatever they were typed in; unchanged for undefined. */
export function withUnits<Values extends Readonly<Record<string, unknown>>>(
  values: Values,
  units: 'imperial' | 'metric' | undefined,
): Values {
  if (units === undefined) return values;
  const said = Object.entries(values).map(([option, value]) => {
    const typedIn = typeof value === 'object' && value !== null && 'units' in value;
    return [option, typedIn ? { ...value, units } : value];
  });
  return Object.fromEntries(said) as Values;
}

const LABELS = { terminal: 'the terminal', discord: 'Discord', slack: 'Slack', web: 'web' } as const;

export type PlatformName = keyof typeof LABELS;

export const PLATFORM_NAMES = Object.keys(LABELS) as readonly PlatformName[];

const CALLED: ReadonlyMap<string, string> = new Map(Object.entries(LABELS));

export function accountName(platform: string): string {
  return CALLED.get(platform) ?? platform;
}

export const SECTION_TITLES: Readonly<Record<SectionId, string>> = {
  buy: 'What to buy',
  rows: 'Row by row',
  cuts: 'Cuts',
  plan: 'Plan',
  list: 'List',
  how: 'How to do it',
  checklist: 'Checklist',
  details: 'Details',
  why: 'Why this number',
  read: 'How I read it',
  safety: 'Safety',
  sources: 'Sources',
};

/** What people type to open a section. */
const WORDS: Readonly<Record<string, SectionId | 'more'>> = {
  more: 'more',
  everything: 'more',
  details: 'details',
  buy: 'buy',
  rows: 'rows',
  row: 'rows',
  'row list': 'rows',
  'laying guide': 'rows',
  cuts: 'cuts',
  'cut list': 'cuts',
  plan: 'plan',
  picture: 'plan',
  list: 'list',
  steps: 'how',
  how: 'how',
  checklist: 'checklist',
  why: 'why',
  'why that many': 'why',
  'why so many': 'why',
  safety: 'safety',
  sources: 'sources',
  read: 'read',
  'how you read it': 'read',
};

export const BRIEF = {
  words: WORDS,
  /** The button that opens every section. */
  everything: 'More',
  caution: (text: string) => `Caution: ${text}`,
  /** The ids are what people type. */
  more: (ids: readonly string[]) => `More: ${ids.join(', ')}`,
  wrong: 'Not what you meant? Type “wrong”',
} as const;

export const HELP = {
  lines: [
    `Just ask: how many boxes for ${byUnits('12x14, 24 sq ft', '3.6x4.2 m, 2.2 m²')} a box? Which way do planks run in a hall?`,
    'Floor: planks, estimate, enough, layout, compare, resume. Trim: list, edges, reset, finish.',
    'Before it: tearout, patch, squeaks, level, moisture, plan. Rules and decisions: handbook.',
    'Your own job: project new, project room, project show, project shopping, project share.',
  ],
  example: (line: string) => `For example: ${line}`,
  headline: (commands: number) => `${commands} commands; type “help planks” for one of them.`,
  about: (name: string, summary: string) => `${name}: ${summary}.`,
  members: (names: readonly string[]) => `Commands: ${names.join(', ')}.`,
  questions: (titles: readonly string[]) => `Often asked: ${titles.join(' · ')}`,
  title: 'Commands',
  columns: ['Command', 'What it answers', 'Type for instance'],
  options: 'Options',
  optionColumns: ['Option', 'What to give', 'If left out', 'For instance'],
  needed: 'needed',
  examples: 'Examples',
  grammar: `Type “option: value” pairs in any order with commas between them; you can leave out the first option’s name. Lengths as you write them: ${byUnits(`12'6", 12.5 ft, 3.80 m, 3800 mm`, '3.80 m, 380 cm, 3800 mm')}.`,
  unknown: (name: string, near: string) => ({
    option: 'command',
    got: name,
    expected: `There’s no command “${name}”; the nearest is “${near}”.`,
    fix: near,
  }),
} as const;

export const SOURCES = {
  headline: (figures: number, about: string | undefined) =>
    about === undefined
      ? `${figures} figures, each with its source.`
      : `${figures} ${figures === 1 ? 'figure' : 'figures'} about ${about}.`,
  none: (about: string) => `No figure is about “${about}”; type “sources” for all of them.`,
  title: 'Figures',
  columns: ['Figure', 'Value', 'Source', 'Standing'],
  standing:
    'published: read in the source; reported: read in a page that reports it; common practice: a fact of the trade; from memory: check it before you rely on it. The maker’s instructions beat all of them.',
} as const;

export function saySource({ title, publisher, year, section }: Source): string {
  return [title, publisher, year, section].filter((part) => part !== undefined).join(', ');
}

export const NOT_A_TICK = 'The result was rounded once, to 1/8128 in.';

export const TAPE = {
  about: (figure: string, onTape: string) => `${figure}, about ${onTape}`,
  imperial: 'Feet and inches',
  inches: 'Inches',
  metric: 'Metric',
  millimetres: 'Millimetres',
  squareFeet: 'Square feet',
  squareMetres: 'Square meters',
} as const;
