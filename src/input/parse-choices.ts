/** Up to five planks to compare, each with a name and optionally its light reflectance and price tier. */

import type { Problem } from '../reply/reply.ts';
import { choicesMissing, tooManyChoices } from '../text/floor-text.ts';
import { readPlank } from './parse-plank.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import type { ParsedPlank } from './readings-made.ts';

/** One of the planks. `reflectance` is a percentage (light reflectance value), `tier` is as given. */
export interface ParsedChoice {
  readonly name: string;
  readonly plank: ParsedPlank;
  /** The plank as typed, for a follow-up request about it alone. */
  readonly typed: string;
  readonly reflectance?: number;
  readonly tier?: string;
}

const MOST_CHOICES = 5;

const NAME = /^\s*([\p{L}][\p{L}\d -]{0,23}?)\s*[:=]\s*(.+)$/su;
const REFLECTANCE =
  /(?:,\s*|(?<!\s)\s+)?\b(?:lrv|light reflectance(?: value)?|reflectance)(?:\s*(?:of|is|=))?\s*(\d{1,3})(?:\s*%)?/i;
const TIER =
  /(?:,\s*|(?<!\s)\s+)?\b(?:(budget|low|mid|middle|premium|high)[- ]?(?:tier|range|end)|tier\s*(budget|low|mid|middle|premium|high|\d))\b/i;

export function choicesIn(text: string): readonly string[] {
  return text
    .split(/[;|\n]|(?<![^\S\n])\s+vs\.?\s+/i)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/**
 * Planks separated by `;`, `|`, a newline or “vs”, named `oak: 7 x 48 in, …` or otherwise plank A, plank B. Reports all
 * problems at once.
 */
export function readChoices(text: string, reading: Reading): Read<readonly ParsedChoice[]> {
  const parts = choicesIn(text);
  if (parts.length < 2) return unread(choicesMissing(reading.option, text));
  if (parts.length > MOST_CHOICES)
    return unread(tooManyChoices(reading.option, text, MOST_CHOICES, parts.slice(0, MOST_CHOICES).join('; ')));
  const choices: ParsedChoice[] = [];
  const problems: Problem[] = [];
  const mended: (string | undefined)[] = [];
  parts.forEach((part, i) => {
    const named = NAME.exec(part);
    const name = named?.[1]?.trim() ?? `plank ${String.fromCodePoint(65 + i)}`;
    const { rest, reflectance, tier } = extras(named?.[2] ?? part);
    const plank = readPlank(rest, { ...reading, note: (line) => reading.note(`${name}: ${line}`) });
    if (plank.ok)
      choices.push({ name: unique(name, choices), plank: plank.value, typed: rest, ...reflectance, ...tier });
    else problems.push(...plank.problems);
    const fix = plank.ok ? part : plank.problems[0].fix;
    mended.push(plank.ok || fix === undefined ? fix : `${named ? `${name}: ` : ''}${fix}`);
  });
  const fix = mended.includes(undefined) ? undefined : mended.join('; ');
  const [first, ...more] = problems.map((problem) => ({ ...problem, fix }));
  return first ? unread(first, ...more) : read(choices);
}

function extras(text: string): { rest: string; reflectance?: { reflectance: number }; tier?: { tier: string } } {
  const light = REFLECTANCE.exec(text);
  const dark = light ? text.replace(light[0], '') : text;
  const tier = TIER.exec(dark);
  const rest = tier ? dark.replace(tier[0], '') : dark;
  const word = (tier?.[1] ?? tier?.[2])?.toLowerCase();
  return {
    rest: rest.replace(/^[\s,]+|(?<![\s,])[\s,]+$/g, ''),
    ...(light && Number(light[1]) <= 100 && { reflectance: { reflectance: Number(light[1]) } }),
    ...(word !== undefined && { tier: { tier: word } }),
  };
}

function unique(name: string, before: readonly ParsedChoice[]): string {
  const same = before.filter((choice) => choice.name.toLowerCase().startsWith(name.toLowerCase())).length;
  return before.some((choice) => choice.name.toLowerCase() === name.toLowerCase()) ? `${name} ${same + 1}` : name;
}
