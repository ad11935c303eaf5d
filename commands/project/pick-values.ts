/** The value of a pick, checked by the option it is for: which option that is, and what's wrong with the value. */

import { closest, distance } from 'fastest-levenshtein';
import { isRead, meaningsOf } from '../../src/chat/autofill.ts';
import type { Command, Context } from '../../src/chat/command.ts';
import { isCalculating } from '../../src/input/command-shape.ts';
import { isExamplePlank } from '../../src/input/parse-plank.ts';
import { factsOf, type Preferences, problemsIn, type Units } from '../../src/input/reading.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import type { Problem } from '../../src/reply/reply.ts';
import { exampleKept, pickAmbiguous, pickTooLong, pickUnknown } from '../../src/text/project-problems-text.ts';
import { readInTime } from '../../src/workers/time-limits.ts';

// A pick must read the same for everybody, so a unit that came from somebody's settings is written out.

const PAIR =
  /((?<!\d)\d(?:[\d.,/ ]*\d)?)\s*(x|×|by)\s*(\d+(?:[.,]\d+)?)(?![\d/]|[.,]\d|\s*(?:x|×|by|in|ft|mm|cm|m\b|["'″′]))/i;

/** Adds the unit it was read in if that makes it unambiguous. */
function plainly(text: string, command: Command, option: string, preferences: Preferences): string {
  const meant = readBy(text, command, option, preferences);
  if (meant === undefined) return text;
  const units: readonly Units[] = ['imperial', 'metric'];
  const everywhere = (candidate: string): boolean =>
    units.every((one) => readBy(candidate, command, option, { ...preferences, units: one })?.value === meant.value);
  if (meant.notes === 0 && everywhere(text)) return text;
  const unit = preferences.units === 'metric' ? 'mm' : 'in';
  const plainer = [text.replace(PAIR, `$1 $2 $3 ${unit}`), `${text} ${unit}`].find(
    (candidate) => everywhere(candidate) && (readBy(candidate, command, option, preferences)?.notes ?? 0) < meant.notes,
  );
  return plainer ?? text;
}

/** `notes` counts the remarks on how it was read. Undefined if the option can't read it. */
function readBy(text: string, { options }: Command, option: string, preferences: Preferences) {
  let notes = 0;
  const reading = { option, preferences, note: () => void notes++ };
  const read = options.shape[option]?.safeParse({ text, reading });
  if (!read?.success) return undefined;
  const value = JSON.stringify(read.data, (_key, one) => (typeof one === 'bigint' ? String(one) : one));
  return { value, notes };
}

/** A Problem if no option of that name can read the value, or several could be meant. */
function valueRead(
  key: string,
  value: string,
  commands: readonly Command[],
  preferences: Preferences,
  notes: string[],
): readonly [key: string, text: string] | { readonly problem: Problem } {
  const [name, own] = key.includes(' ') ? key.split(' ') : [undefined, key];
  const option = own ?? key;
  if (option === 'plank' && isExamplePlank(value)) return { problem: exampleKept(`${key}: ${value}`) };
  if (value.length > LIMITS.pick) return { problem: pickTooLong(option, LIMITS.pick) };
  const meanings = meaningsOf(option, commands);
  const meant =
    name === undefined ? meanings : commands.filter((one) => one.name === name && option in one.options.shape);
  const readers = meant.filter((one) => isRead(one, option, value, preferences));
  // If just one of several options can read the value, that one is meant.
  const [first, ...others] = meant.length > 1 && readers.length === 1 ? readers : meant;
  if (!first) return { problem: pickUnknown(key, undefined, ['plank', 'gap', 'tax']) };
  if (others.length > 0) {
    const all = meant.map((one) => ({ command: one.name, summary: summaryOf(one, option) }));
    return { problem: pickAmbiguous(option, value, all) };
  }
  const read = first.options.shape[option]?.safeParse({
    text: value,
    reading: { option, preferences, note: (line: string) => void (notes.includes(line) || notes.push(line)) },
  });
  if (read?.success !== false)
    return [meant.length > 1 ? `${first.name} ${option}` : key, plainly(value, first, option, preferences)];
  const [wrong] = problemsIn(read.error);
  const { expected = '', fix } = wrong ?? {};
  const line = fix === undefined ? undefined : `project pick ${key}: ${fix}`;
  return { problem: { option: 'ask', got: `${key}: ${value}`, expected, fix: line } };
}

function summaryOf({ options }: Command, option: string): string {
  const schema = options.shape[option];
  return schema ? factsOf(schema).summary : '';
}

// Reads lines like `plank: 6 x 48 in, 10 per carton, gap: 3/8 in` or `clear gap`.

/** By key; `notes` say how unclear ones were read. */
export interface PicksSaid {
  readonly set: readonly (readonly [key: string, text: string])[];
  readonly clear: readonly string[];
  readonly notes: readonly string[];
}

/** Everyday names for options that are called something else. */
const OTHER_WORDS: ReadonlyMap<string, string> = new Map([
  ['planks', 'plank'],
  ['flooring', 'plank'],
  ['baseboard', 'list stock'],
  ['baseboards', 'list stock'],
  ['trim stock', 'list stock'],
  ['sticks', 'list stock'],
  ['threshold', 'edges stock'],
  ['thresholds', 'edges stock'],
  ['transitions', 'edges stock'],
  ['old floor', 'tearout floor'],
  ['year', 'built'],
  ['house', 'built'],
  ['house built', 'built'],
]);

/** Rooms belong to the project, and one day's measurements apply to that day: neither is a pick. */
const NEVER = ['room', 'planks', 'readings', 'damage', 'area', 'only', 'found'];

export function picksSaid(text: string, context: Context): PicksSaid | { readonly problem: Problem } {
  return readInTime(() => picksIn(text, context));
}

function picksIn(text: string, { commands, preferences }: Context): PicksSaid | { readonly problem: Problem } {
  const names = pickNames(commands);
  const cleared = /^(?:clear|remove|drop|forget|unset|no)\s+(.+)$/is.exec(text.trim())?.[1];
  if (cleared !== undefined) {
    const clear = cleared
      .split(/(?:(?<!\s)\s+)?(?:,|;|\band\b)\s*/i)
      .filter((name) => name !== '')
      .map((name) => listed(name, names));
    return { set: [], clear, notes: [] };
  }
  const pairs = pairsIn(text, names);
  if (!Array.isArray(pairs)) return pairs;
  const notes: string[] = [];
  const set: (readonly [string, string])[] = [];
  for (const [key, value] of pairs) {
    const read = valueRead(key, value, commands, preferences, notes);
    if ('problem' in read) return read;
    set.push(read);
  }
  return { set, clear: [], notes };
}

/** Options, `command option`, and everyday names. */
function pickNames(commands: readonly Command[]): readonly string[] {
  const options = commands.filter(isCalculating).flatMap(({ name, options: { shape } }) =>
    Object.keys(shape)
      .filter((option) => !NEVER.includes(option))
      .flatMap((option) => [option, `${name} ${option}`]),
  );
  return [...new Set([...options, ...OTHER_WORDS.keys()])];
}

function pairsIn(text: string, names: readonly string[]): [string, string][] | { readonly problem: Problem } {
  const longest = [...names].sort((one, other) => other.length - one.length);
  const source = longest.map((name) => name.replaceAll('-', '[- ]')).join('|');
  const marked = [...text.matchAll(new RegExp(`(?<=^|[\\s,;])(${source})\\s*[:=]`, 'giu'))];
  const [first] = marked;
  if (!first || text.slice(0, first.index).trim() !== '') {
    // Without a colon, it is a single pick that starts with its name.
    const loose = new RegExp(`^(?:my |the )?(${source})(?: is| are)?\\s+(.+)$`, 'isu').exec(text.trim());
    if (loose && !first) return [[listed(loose[1] ?? '', names), tidy(loose[2] ?? '')]];
    // Two sides without a name are the size of a plank.
    if (!first && /\d[\s"'”’a-z]*(?:x|×|by)\s*\d/i.test(text)) return [['plank', tidy(text)]];
    const typed = listed(/^[^:=\d]*/.exec(text.trim())?.[0] ?? '', names).slice(0, 40);
    const near = closest(typed, names as string[]);
    const likely = distance(typed, near) <= 2 && typed !== '' ? near : undefined;
    const rest = text.replace(/^[^:=\d]*[:=]?\s*/, '');
    return {
      problem: pickUnknown(
        typed || text,
        likely === undefined ? undefined : { name: likely, text: rest },
        [...new Set(names)].filter((name) => !name.includes(' ')).slice(0, 12),
      ),
    };
  }
  return marked.map((pair, i): [string, string] => {
    const value = text.slice(pair.index + pair[0].length, marked[i + 1]?.index ?? text.length);
    return [listed(pair[1] ?? '', names), tidy(value)];
  });
}

/** For example, “shortest end” is the option “shortest-end”, and “trim stock” is an everyday name for the sticks. */
function listed(typed: string, names: readonly string[]): string {
  const spaced = (name: string): string => name.toLowerCase().replaceAll('-', ' ').replace(/\s+/g, ' ').trim();
  const words = spaced(typed.replace(/^\s*(?:my|the)\s/i, ''));
  const name = names.find((one) => spaced(one) === words) ?? words;
  return OTHER_WORDS.get(name) ?? name;
}

function tidy(value: string): string {
  return value.replace(/\s+/g, ' ').replace(/^[\s,;]+|(?<![\s,;])[\s,;]+$/g, '');
}
