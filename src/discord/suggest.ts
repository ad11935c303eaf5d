/** What may be typed for an option where nobody's past is known: its choices, its standard and its example. */

import { type Command, optionsOf } from '../bot/command.ts';
import { oneLine } from '../bot/sheet.ts';

/** What fits what is typed so far, the likeliest first: what begins with it, then what holds it. */
export function suggestions(command: Command, option: string, typed: string): readonly string[] {
  const facts = optionsOf(command).find(({ name }) => name === option);
  if (!facts) return [];
  const { standard, example, choices = [] } = facts;
  const all = [...new Set([...(standard === undefined ? [] : [standard]), ...choices, example])];
  return fitting(all, typed);
}

/** Texts that fit what is typed: those that begin with it before those that hold it. */
export function fitting(texts: readonly string[], typed: string): readonly string[] {
  const wanted = oneLine(typed).toLowerCase();
  const begins = texts.filter((text) => text.toLowerCase().startsWith(wanted));
  return [...begins, ...texts.filter((text) => !begins.includes(text) && text.toLowerCase().includes(wanted))];
}
