/** Who may ask how much: one place for all platforms, asks weighed by what they cost. */

import { accountKey } from '../accounts/asker.ts';
import { fullName } from '../input/command-shape.ts';
import { askedTooMuch } from '../text/chat-text.ts';
import type { Command, Problems } from './command.ts';
import type { Invocation } from './invocation.ts';
import type { Ports } from './ports.ts';

/** What an ask counts for: roughly, how many of a plain sum's it takes (measured by their examples, with what is worked out in threads). */
const WEIGHTS: Readonly<Record<string, number>> = {
  'floor planks': 2,
  'floor layout': 2,
  'floor resume': 2,
  'floor compare': 3,
  'trim list': 2,
  'trim reset': 2,
  'project shopping': 2,
  'project sheets': 2,
};

/** What an ask weighs; one that was not read weighs 1. */
export function weightOf(command: Command | undefined): number {
  return (command && WEIGHTS[fullName(command)]) ?? 1;
}

/** Undefined where the ask is allowed; else when to ask again, with the ask as it was typed. A terminal is its owner's own. */
export async function allowedToAsk(
  { asker, server, text }: Invocation,
  person: string | undefined,
  command: Command | undefined,
  { allowed }: Ports,
): Promise<Problems | undefined> {
  if (!allowed || asker.platform === 'terminal') return undefined;
  const place = server ?? asker.workspace;
  const who = {
    person: person ?? accountKey(asker),
    ...(place === undefined ? {} : { server: `${asker.platform}:${place}` }),
  };
  const { again, everybody } = await allowed(who, weightOf(command));
  return again > 0 ? { problems: [askedTooMuch(again, everybody, text)], again: true } : undefined;
}
