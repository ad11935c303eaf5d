/** What a button, a select or a form says when it comes back: a verb, the short id of what is kept, and one word more. */

export const VERBS = [
  'ask',
  'pick',
  'change',
  'parts',
  'sources',
  'show',
  'poll',
  'mend',
  'fix',
  'try',
  'form',
] as const;
export type Verb = (typeof VERBS)[number];

export interface Pressed {
  readonly verb: Verb;
  /** Of the kept answer or draft; empty where none could be kept. */
  readonly id: string;
  readonly rest: string;
}

export function customId(verb: Verb, id: string, rest = ''): string {
  return rest === '' ? `${verb}:${id}` : `${verb}:${id}:${rest}`;
}

/** Undefined for what we never wrote. */
export function readCustomId(text: string): Pressed | undefined {
  const match = /^([a-z]+):([\w-]{0,22})(?::(.*))?$/su.exec(text);
  const verb = VERBS.find((known) => known === match?.[1]);
  return match && verb ? { verb, id: match[2] ?? '', rest: match[3] ?? '' } : undefined;
}
