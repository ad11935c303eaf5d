/** Settings told: what they make of those before, and how they are shown. */

import type { Context } from '../../../src/chat/command.ts';
import { COUNTRY_NAMES } from '../../../src/input/parse-house.ts';
import type { Habits } from '../../../src/input/reading.ts';
import type { Country } from '../../../src/prep/old-materials.ts';
import type { Settings } from '../../../src/project/person.ts';
import type { Fact, Problem } from '../../../src/reply/reply.ts';
import { SETTINGS } from '../../../src/text/project-text.ts';
import { picksSaid } from './pick-said.ts';
import { AS_IT_IS, CLEAR, type SettingsAsk } from './settings-options.ts';

interface Settled {
  readonly apply: (before: Settings) => Settings;
  readonly said: readonly string[];
  readonly notes: readonly string[];
}

const HABITS = ['units', 'decimal', 'currency'] as const;
/** What is set by a word of its own. */
const WORDS = [...HABITS, 'country'] as const;
const STANDARDS = ['mistakes', 'spares', 'tax'] as const;

/** What an ask makes of the settings. */
export function settled(ask: SettingsAsk, context: Context): Settled | { readonly problem: Problem } {
  const said: string[] = [];
  const words = WORDS.filter((name) => ask[name] !== AS_IT_IS);
  for (const name of words)
    said.push(ask[name] === CLEAR ? SETTINGS.cleared(name) : SETTINGS.set(name, shown(name, ask[name])));
  const cleared = STANDARDS.filter((name) => ask[name] === CLEAR);
  const named = STANDARDS.filter((name) => ![AS_IT_IS, CLEAR].includes(ask[name])).map(
    (name) => `${name}: ${ask[name]}`,
  );
  const rules = [AS_IT_IS, CLEAR].includes(ask.rules) ? [] : [ask.rules];
  const told = [...named, ...rules].join(', ');
  const picks = told === '' ? { set: [], clear: [], notes: [] } : picksSaid(told, context);
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

/** The mended pick as a setting. */
function fixFor(fix: string | undefined): string | undefined {
  const pick = /^project pick (?<pick>(?<name>[\w-]+): .+)$/.exec(fix ?? '')?.groups;
  if (!pick) return undefined;
  const standard = STANDARDS.some((name) => name === pick.name);
  return `project settings ${standard ? '' : 'rules: '}${pick.pick}`;
}

/** The settings as facts, with what the platform gives where none are told; `habits` hold those of `before`. */
export function settingFacts(
  settings: Settings | undefined,
  before: Settings | undefined,
  habits: Habits,
): readonly Fact[] {
  const standards = Object.entries(settings?.standards ?? {});
  return [
    ...HABITS.map((name) => {
      const own = settings?.[name];
      if (own !== undefined) return { label: name, value: shown(name, own) };
      const untold = before?.[name] === undefined ? SETTINGS.ofPlatform(shown(name, habits[name])) : SETTINGS.notSet;
      return { label: name, value: untold };
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
