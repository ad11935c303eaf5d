/** What keeps a command off a platform's menu or out of help: names, lengths, facts, standards and missing examples. */

import type { Command } from '../../src/chat/command.ts';
import { fullName } from '../../src/input/command-shape.ts';
import {
  DEFAULT_PREFERENCES,
  factsOf,
  type OptionFacts,
  type Preferences,
  type Typed,
} from '../../src/input/reading.ts';

/** The strictest platform of the plan: Discord's documented limits on application commands, read in Nov 2026. */
const NAME = /^[-_\p{L}\p{N}]{1,32}$/u;
const MOST_SUMMARY = 100;
const MOST_OPTIONS = 25;
const MOST_CHOICES = 25;
const MOST_CHARACTERS = 8000;

/** The one text grammar reads a command's name as letters and hyphens. */
const TYPED_NAME = /^[\p{L}-]+$/u;

const PREFERENCES: readonly Preferences[] = [DEFAULT_PREFERENCES, { units: 'metric', decimal: ',', currency: 'EUR' }];

/** Everything wrong with a command, as lines that name it. Sound commands have none. */
export function commandFlaws(command: Command): readonly string[] {
  const named = fullName(command);
  const examples: readonly unknown[] = command.examples ?? [];
  const options = Object.entries(command.options.shape);
  const flaws = [
    ...(examples.length === 0 ? ['has no example'] : []),
    ...[command.name, ...(command.group ? [command.group] : [])].flatMap(nameFlaws),
    ...[command.name, ...(command.group ? [command.group] : [])]
      .filter((name) => !TYPED_NAME.test(name))
      .map((name) => `cannot be typed as ${name}`),
    ...textFlaws('summary', command.summary),
    ...(options.length > MOST_OPTIONS ? [`has ${options.length} options`] : []),
    ...options.flatMap(([option, schema]) => optionFlaws(option, schema)),
    ...orderFlaws(command),
    ...(charactersOf(command) > MOST_CHARACTERS ? [`has more than ${MOST_CHARACTERS} characters in all`] : []),
  ];
  return flaws.map((flaw) => `${named} ${flaw}`);
}

function nameFlaws(name: string): readonly string[] {
  return NAME.test(name) && name === name.toLowerCase() ? [] : [`is no name for a menu: ${name}`];
}

function textFlaws(what: string, text: string): readonly string[] {
  if (text.trim() === '') return [`${what} is empty`];
  return [...text].length > MOST_SUMMARY ? [`${what} has ${[...text].length} characters`] : [];
}

function optionFlaws(option: string, schema: Command['options']['shape'][string]): readonly string[] {
  const facts = factsIfAny(schema);
  if (facts === undefined) return [`option ${option} has no facts`];
  const { summary, standard, example, choices = [] } = facts;
  const given = [...(standard === undefined ? [] : [standard]), example, ...choices];
  return [
    ...nameFlaws(option),
    ...textFlaws(`summary of ${option}`, summary),
    ...(choices.length > MOST_CHOICES ? [`option ${option} has ${choices.length} choices`] : []),
    ...choices.flatMap((choice) => textFlaws(`choice of ${option}`, choice)),
    ...PREFERENCES.flatMap((preferences) =>
      given.filter((text) => !isRead(schema, { text, reading: { option, preferences, note: () => undefined } })),
    ).map((text) => `option ${option} does not read its own “${text}”`),
  ];
}

function isRead(schema: Command['options']['shape'][string], typed: Typed): boolean {
  return schema.safeParse(typed).success;
}

/** Menus want the required options first. */
function orderFlaws({ options }: Command): readonly string[] {
  const required = Object.values(options.shape).map((schema) => factsIfAny(schema)?.standard === undefined);
  const last = required.lastIndexOf(true);
  return required.slice(0, last + 1).every(Boolean) ? [] : ['has a required option behind one that is not'];
}

/** What a menu counts: names, descriptions and choices. */
function charactersOf({ name, summary, options }: Command): number {
  const texts = Object.entries(options.shape).flatMap(([option, schema]) => {
    const facts = factsIfAny(schema);
    return [option, facts?.summary ?? '', ...(facts?.choices ?? []).flatMap((choice) => [choice, choice])];
  });
  return [name, summary, ...texts].join('').length;
}

function factsIfAny(schema: Command['options']['shape'][string]): OptionFacts | undefined {
  try {
    return factsOf(schema);
  } catch {
    return undefined;
  }
}
