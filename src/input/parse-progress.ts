/** Reads how far the work is: done tear-out bedroom, acclimating since Friday 18:00, not flat hall. */

import { STAGES, type Stage } from '../reply/need.ts';
import { readInTime } from '../workers/time-limits.ts';
import { readLasting, readMoment } from './moment.ts';
import { plainSigns, withoutHidden } from './rooms/room-text.ts';

export interface ParsedProgress {
  readonly state: 'done' | 'waiting' | 'blocked' | 'skipped' | 'open' | 'show';
  /** Empty: the room's next stage is meant. */
  readonly stages: readonly Stage[];
  /** Names as the project has them. */
  readonly rooms: readonly string[];
  readonly everywhere: boolean;
  /** Milliseconds since 1970. */
  readonly since?: number;
  readonly until?: number;
  /** Milliseconds of a wait. */
  readonly lasts?: number;
}

const words = (source: string): RegExp => new RegExp(`(?<![a-z])(?:${source})(?![a-z])`);

/** Ways to name each stage; the first that fits is taken, so that a longer name stands before a shorter. */
const STAGE_WORDS: readonly (readonly [Stage, RegExp])[] = [
  [
    'tear-out',
    words(
      'tear(?:ing)?[ -]?outs?|tore (?:it )?out|torn out|(?:carpet|old floor) (?:is |was )?(?:out|up|gone)|ripped (?:it )?(?:out|up)|demo(?:lition)?|strip(?:ped|ping) out|staples',
    ),
  ],
  ['transitions', words('transitions?|thresholds?|t-?mou?ldings?|reducers?|door ?strips?|nosings?')],
  ['caulk', words('caulk(?:ed|ing)?|fill(?:ed|ing)?(?: holes)?')],
  ['paint', words('paint(?:ed|ing)?|prim(?:ed|er|ing)')],
  ['baseboards', words('base ?boards?|skirtings?|trim|shoe|quarter[ -]?round')],
  [
    'acclimate',
    words(
      'acclimat(?:e|ed|es|ing|ion|ize|ized|izing)|climati[sz](?:e|ed|ing)|cartons? (?:are |is )?in(?: the room)?|resting',
    ),
  ],
  [
    'flat',
    words('flat(?:ness|ten(?:ed|ing)?)?|level(?:l?ed|l?ing|l?er)?|pour(?:ed|ing)?|uneven|bumpy|hump(?:s|y)?|dips?'),
  ],
  ['dry', words('dry(?:ing)?|dried|moisture|wet|damp|moist')],
  ['subfloor', words('sub ?-?floors?|squeak(?:s|ing|y)?|patch(?:es|ed|ing)?|soft spots?|screw(?:ed|ing|s)?(?: down)?')],
  ['clear', words('clear(?:ed|ing)?|empt(?:y|ied)|furniture(?: (?:is )?out)?|moved out')],
  ['lay', words('lay(?:ing)?|laid|floor(?:ing)?(?: is| was)?(?: down| in)?|planks?|install(?:ed|ing)?')],
];

const NEGATED = words("not|isn'?t|is not|aren'?t|still|fail(?:s|ed)?|too");
const BAD: readonly (readonly [Stage, RegExp])[] = [
  ['flat', words('uneven|bumpy|hump(?:s|y)?|dips?')],
  ['dry', words('wet|damp|moist')],
];
const REOPENED = words("undo|re-?open(?:ed)?|not done(?: yet)?|isn'?t done|not finished|unfinished|untick(?:ed)?");
const SKIPPED = words('skip(?:ped|ping)?|leave out|left out|no need(?: for| of)?|not needed|none needed|without');
const WAITING = words(
  'since|until|till|waiting|wait|drying|acclimati(?:ng|zing|sing)|acclimating|curing|resting|for \\d+',
);
const DONE = words('done|finish(?:ed)?|complet(?:e|ed)|tick(?:ed)?|ready|ok|okay|passed|is (?:flat|dry|clear|level)');
const EVERYWHERE = words(
  'everywhere|all(?: the| of the)? rooms|every room|each room|whole (?:flat|home|house|place)|all over',
);

/** The progress in a text about rooms with these names; undefined if there is none. `now` in milliseconds since 1970. Never throws. */
export function readProgress(
  text: string,
  names: readonly string[],
  now: number,
  zone: string,
): ParsedProgress | undefined {
  return readInTime(() => progressIn(text, names, now, zone));
}

function progressIn(text: string, names: readonly string[], now: number, zone: string): ParsedProgress | undefined {
  const plain = plainSigns(withoutHidden(text, ' ')).replace(/\s+/g, ' ').trim();
  if (plain.length > 300) return undefined;
  const { rooms, rest } = roomsIn(plain, names);
  const everywhere = EVERYWHERE.test(rest);
  const show = /^(?:list|show|status|progress|what(?:'s| is)? next|next|how far)?\??$/.test(rest.trim());
  if (show) return { state: 'show', stages: [], rooms, everywhere };
  const timed = timesIn(rest, now, zone);
  const named = timed.rest.split(/,|(?<![a-z])and(?![a-z])|[;&+]/).flatMap((part) => stageIn(part) ?? []);
  const stages = [...new Set(named)];
  const state = stateOf(timed.rest, stages[0], timed);
  if (state === undefined) return undefined;
  return { state, stages, rooms, everywhere, ...timed.times };
}

function stageIn(plain: string): Stage | undefined {
  return STAGE_WORDS.find(([, pattern]) => pattern.test(plain))?.[0];
}

function stateOf(rest: string, stage: Stage | undefined, { times }: Timed): ParsedProgress['state'] | undefined {
  if (REOPENED.test(rest)) return 'open';
  if (SKIPPED.test(rest)) return 'skipped';
  const bad = BAD.find(([of, pattern]) => of === stage && pattern.test(rest));
  const negated = NEGATED.test(rest);
  if ((stage === 'flat' || stage === 'dry') && (bad ? !/(?<![a-z])(?:not|no longer)(?![a-z])/.test(rest) : negated))
    return 'blocked';
  const timed = times.since !== undefined || times.until !== undefined || times.lasts !== undefined;
  if (stage !== undefined && (timed || WAITING.test(rest))) {
    return /(?<![a-z])(?:done|finished)(?![a-z])/.test(rest) ? 'done' : 'waiting';
  }
  if (negated) return 'open';
  return DONE.test(rest) || stage !== undefined ? 'done' : undefined;
}

interface Timed {
  readonly rest: string;
  readonly times: Pick<ParsedProgress, 'since' | 'until' | 'lasts'>;
}

/** When it began, how long it takes, and until when, each after a word of its own. */
function timesIn(plain: string, now: number, zone: string): Timed {
  const lasting = readLasting(plain);
  let rest = lasting?.rest ?? plain;
  const until = /(?<![a-z])(?:until|till|through|ready (?:on|at|by)) (?<when>.+)$/.exec(rest);
  const end = until && readMoment(`at ${until.groups?.when ?? ''}`, now, zone, 'future');
  if (until && end) rest = `${rest.slice(0, until.index)} until ${end.rest.replace(/^at /, '')}`;
  const since = readMoment(rest, now, zone, 'past');
  if (since) rest = since.rest;
  return {
    rest: rest.replace(/\s+/g, ' '),
    times: {
      ...(since && { since: since.at }),
      ...(end && { until: end.at }),
      ...(lasting && { lasts: lasting.lasts }),
    },
  };
}

/** The rooms named, and the text without them; where one name contains another, the longer one. */
function roomsIn(plain: string, names: readonly string[]): { rooms: readonly string[]; rest: string } {
  const rooms: string[] = [];
  let rest = plain;
  for (const name of [...names].sort((a, b) => b.length - a.length)) {
    const escaped = plainSigns(name)
      .replace(/\s+/g, ' ')
      .trim()
      .replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
    const pattern = new RegExp(`(?<![\\p{L}\\d])(?:in |of |for |the )*${escaped}(?: room)?(?![\\p{L}\\d])`, 'u');
    if (!pattern.test(rest)) continue;
    rooms.push(name);
    rest = rest.replace(pattern, ' ');
  }
  return { rooms: names.filter((name) => rooms.includes(name)), rest: rest.replace(/\s+/g, ' ').trim() };
}

/** The stage named in a text about money or in a note. */
export function stageNamed(text: string): Stage | undefined {
  const plain = plainSigns(text);
  return STAGES.find((stage) => plain.includes(stage)) ?? stageIn(plain);
}
