/** Reads what to share, with whom and for how long: “shopping list with @… for 3 days”, “2 until friday”, “stop 2”, “leave”. */

import { readInTime } from '../workers/time-limits.ts';
import { clockOf, momentOf, readLasting, readMoment } from './moment.ts';
import { singleLine } from './parse-label.ts';
import { LETTER, plainSigns } from './rooms/room-text.ts';

type SharedPart = 'project' | 'shopping' | 'guide' | 'cuts' | 'tearout' | 'checklist';

/** One share, new or to be changed. */
export interface ParsedShare {
  readonly what?: SharedPart;
  /** As the project has it. */
  readonly room?: string;
  readonly to?: { readonly member: string } | 'link' | 'code';
  readonly role?: 'look' | 'tick' | 'measure';
  /** Milliseconds since 1970; `always` until it is stopped. */
  readonly until?: number | 'always';
  readonly label?: string;
  /** The words that none of these explains. */
  readonly rest: string;
}

/** `which`: a number, a name, what was shared, a member, or all. */
type ParsedSharing =
  | { readonly do: 'list' }
  | { readonly do: 'leave' }
  | { readonly do: 'stop'; readonly which: string }
  | { readonly do: 'change'; readonly id: string; readonly given: ParsedShare }
  | { readonly do: 'give'; readonly given: ParsedShare };

const words = (source: string): RegExp => new RegExp(`(?<![${LETTER}\\d])(?:${source})(?![${LETTER}\\d])`, 'g');

const PARTS: readonly (readonly [SharedPart, RegExp])[] = [
  ['shopping', words('shopp?ing(?: ?li?sts?)?|what (?:is left )?to buy|things to buy|buying list|purchases')],
  ['checklist', words('check ?-?lists?|to-?do(?: list)?|progress|stages')],
  ['cuts', words('cut(?:ting)?(?: |-)?(?:lists?|cards?)|saw(?: |-)?(?:lists?|cards?)|cuts?')],
  [
    'guide',
    words(
      '(?:lay(?:ing)?|plank|floor|row|install(?:ation)?)(?: |-)?(?:guides?|plans?|layouts?|out)|layouts?|laying|guide|rows',
    ),
  ],
  ['tearout', words('tear(?:ing)?(?: |-)?outs?|rip(?:ping)?(?: |-)?outs?|demo(?:lition)?')],
  [
    'project',
    words(
      '(?:whole |entire |full |complete )?(?:project|job|flat|home|house|floor)|everything|(?:all|the whole) of it|whole|all',
    ),
  ],
];

const ROLES: readonly (readonly ['look' | 'tick' | 'measure', RegExp])[] = [
  ['measure', words('measur(?:e|es|ing)')],
  [
    'tick',
    words(
      'tick(?:s|ing)?(?: (?:it |things |stages )?off)?(?: and (?:take |make |write )?notes?)?|check(?: (?:it |things )?off)|take notes?',
    ),
  ],
  ['look', words('(?:only |just )?(?:look(?:s|ing)?|see|view|read)(?: only| at it)?|read-only|look-only')],
];

const MEMBER = /<@!?([A-Z]?[A-Z0-9]{5,24})(?:\|[^<>]*)?>|(?<![\w@])@?(\d{17,20}|[UW][A-Z0-9]{7,12})(?![\w])/;
const LINK = words(
  '(?:with |by |via |as |through |in )?(?:a |an |the |my )?(?:share |web |page )?links?|anyone|anybody|whoever',
);
const CODE = words('(?:with |by |via |as |using )?(?:a |the )?codes?');
const ALWAYS = words(
  '(?:for )?(?:good|ever|always|no end|endless(?:ly)?)|forever|(?:un)?til (?:i|we) stop(?: it)?|until stopped',
);
const CLOCK = /\d ?[:.h] ?\d\d|\d ?(?:am|pm|a\.m|p\.m)|o'clock|noon|midnight|morning|evening|afternoon/;
const NAMED = new RegExp(
  `(?<![${LETTER}\\d])(?:call(?: (?:them|him|her|it))?|called|named|name|as)(?: ?:)? ?(?=\\S)(?<=[ :])`,
  'g',
);
const WITH = new RegExp(`(?<![${LETTER}\\d])(?:with|to|for)(?: ?:)? ?(?=\\S)(?<=[ :])`, 'g');
const FILLER = words(
  'share|sharing|shared|send|give|please|let|my|the|a|an|of|with|to|for|by|and|may|can|could|they|them|he|him|she|her|only|just|list|until|till|it|so|that|who|also',
);

/** Reads a text about sharing a project that has rooms with these names. Never throws. */
export function readSharing(text: string, rooms: readonly string[], now: number, zone: string): ParsedSharing {
  return readInTime(() => sharingIn(text, rooms, now, zone));
}

function sharingIn(text: string, rooms: readonly string[], now: number, zone: string): ParsedSharing {
  const line = singleLine(text);
  const plain = plainSigns(line);
  if (/^(?:list|show|shares?|all shares|who(?: .*)?)?\??$/.test(plain)) return { do: 'list' };
  if (/^(?:leave|quit)(?: (?:it|this|the project))?[.!]?$/.test(plain)) return { do: 'leave' };
  const stop = /^(?:stop|end|revoke|cancel|unshare|withdraw)(?: sharing)?(?: of)?(?<which>.*)$/.exec(plain);
  if (stop) return { do: 'stop', which: line.slice(line.length - (stop.groups?.which ?? '').length).trim() };
  const change =
    /^(?:change |share |make )?(?:no\.? ?|number |share )?#?(?<id>\d{1,6})(?![\d\w]|[.:]\d)(?<rest>.*)$/.exec(plain);
  if (change?.groups?.id !== undefined) {
    const { id, rest = '' } = change.groups;
    return {
      do: 'change',
      id: String(Number(id)),
      given: readShare(line.slice(line.length - rest.length), rooms, now, zone),
    };
  }
  return { do: 'give', given: readShare(line, rooms, now, zone) };
}

/** Takes parts off a text one after the other; its plain form stays as long as it. */
class Left {
  text: string;

  constructor(text: string) {
    this.text = text;
  }

  get plain(): string {
    return plainSigns(this.text);
  }

  take(pattern: RegExp, plain = this.plain): RegExpExecArray | undefined {
    pattern.lastIndex = 0;
    const found = pattern.exec(plain);
    if (!found) return undefined;
    this.cut(found.index, found[0].length);
    return found;
  }

  cut(at: number, length: number): void {
    this.text = `${this.text.slice(0, at)}${' '.repeat(length)}${this.text.slice(at + length)}`;
  }
}

function readShare(line: string, rooms: readonly string[], now: number, zone: string): ParsedShare {
  const left = new Left(line);
  const member = left.take(MEMBER, left.text);
  const id = member?.[1] ?? member?.[2];
  const until = untilIn(left, now, zone);
  const code = left.take(CODE);
  const link = left.take(LINK);
  const role = ROLES.find(([, pattern]) => left.take(pattern))?.[0];
  const room = roomIn(left, rooms);
  const what = PARTS.find(([, pattern]) => left.take(pattern))?.[0];
  const label = labelIn(left);
  const to = id !== undefined ? { member: id } : code ? 'code' : link ? 'link' : undefined;
  const rest = left.text.replace(/[\s,.;:!?"'“”]+/g, ' ').trim();
  return {
    ...(what && { what }),
    ...(room !== undefined && { room }),
    ...(to !== undefined && { to }),
    ...(role && { role }),
    ...(until !== undefined && { until }),
    ...(label !== undefined && { label }),
    rest: plainSigns(rest).replace(FILLER, ' ').replace(/\s+/g, ' ').trim(),
  };
}

function untilIn(left: Left, now: number, zone: string): number | 'always' | undefined {
  if (left.take(ALWAYS)) return 'always';
  const months = left.take(/(?<![a-z])(?:for )?(\d{1,2}|an?|one|two|three|six) months?(?![a-z])/g);
  const counts: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, six: 6 };
  if (months) return now + (counts[months[1] ?? ''] ?? (Number(months[1]) || 1)) * 30 * 86_400_000;
  const behind = /(?<![a-z])(?:until|till?|through|ends?|ending) (.*)$/.exec(left.plain);
  if (behind) {
    const segment = behind[1] ?? '';
    const moment = readMoment(segment, now, zone, 'future');
    if (!moment) return undefined;
    const at = CLOCK.test(segment) ? moment.at : momentOf({ ...clockOf(moment.at, zone), hour: 23, minute: 59 }, zone);
    const start = left.text.length - segment.length;
    const after = left.text.slice(start);
    left.cut(behind.index, left.text.length - behind.index);
    // The words after the moment are read again.
    const kept = /(?:,| (?=with |may |to |they |he |she |as |name))[\s\S]*/i.exec(after)?.[0] ?? '';
    left.text = `${left.text.slice(0, left.text.length - kept.length)}${kept}`;
    return at;
  }
  const lasting = readLasting(
    left.plain.replace(/(?<![a-z])for (?:one|a single) /, 'for 1 ').replace(/(?<![a-z])for two /, 'for 2 '),
  );
  if (!lasting) return undefined;
  left.take(
    /(?:for )?(?:\d{1,3}(?:[.,]\d)?|an?|one|two|a single) ?(?:hours?|hrs?|h|minutes?|mins?|days?|weeks?)(?![a-z])/g,
  );
  return now + lasting.lasts;
}

/** A room by its name, “of the bedroom” before “bedroom”; the longest name first. */
function roomIn(left: Left, rooms: readonly string[]): string | undefined {
  for (const name of [...rooms].sort((one, other) => other.length - one.length)) {
    const source = plainSigns(name)
      .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
      .replace(/\s+/g, '\\s+');
    if (left.take(words(`(?:(?:of|for|in) )?(?:the |my )?${source}(?: room)?(?:'s)?`))) return name;
  }
  return undefined;
}

/** The name after “named”, or else after “with” or “to”, up to the next mark. */
function labelIn(left: Left): string | undefined {
  const named = nameBehind(left, NAMED);
  const withWhom = nameBehind(left, WITH);
  return named ?? withWhom;
}

function nameBehind(left: Left, pattern: RegExp): string | undefined {
  let empty = 0;
  for (const found of left.plain.matchAll(pattern)) {
    // Words that name nobody name nobody from any of them on.
    if (found.index < empty) continue;
    const behind = left.text.slice(found.index + found[0].length);
    const quoted = /^\s*["“'‘](?<name>[^"”'’]{1,80})["”'’]/.exec(behind);
    const whole = quoted?.[0] ?? /^\s*[^,;]*/.exec(behind)?.[0] ?? '';
    const name = (quoted?.groups?.name ?? whole).replace(/\s+/g, ' ').trim();
    const bare = name.replace(/(?<![.!?])[.!?]+$/, '');
    if (plainSigns(bare).replace(FILLER, '').trim() === '') {
      empty = found.index + found[0].length + whole.length;
      continue;
    }
    left.cut(found.index, found[0].length + whole.length);
    return bare;
  }
  return undefined;
}
