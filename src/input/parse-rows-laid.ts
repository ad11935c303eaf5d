/** Reads how far a floor is laid and what is left: `row 7 ended at 31 1/4, broke one, 22 planks and these offcuts left: 18 in left, 31 in right`. */

import type { Offcut } from '../layout/resume-floor.ts';
import { SO_FAR_NOTES, soFarUnread } from '../text/floor-problems-text.ts';
import type { Length } from '../units/length.ts';
import { readLength } from './parse-length.ts';
import { Rest } from './parse-plank.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, SIDE } from './rooms/room-text.ts';

/** The last row laid. `run` counts from 0: row 7b is run 1. Without a room it is the room being laid. */
export interface ParsedRow {
  readonly room?: string;
  readonly row: number;
  readonly run?: number;
  readonly start?: Length;
  readonly end?: Length;
}

/** What is laid, and what is left: whole planks and cartons where given, planks broken, offcuts kept. */
export interface RowsLaid {
  readonly rows: readonly ParsedRow[];
  readonly done: readonly string[];
  readonly broken: number;
  readonly planks: number | undefined;
  readonly cartons: number;
  readonly offcuts: readonly Offcut[] | undefined;
}

const MOST_OFFCUTS = 200;
const LONGEST_TEXT = 1500;
const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const COUNT = `(?<count>\\d{1,4}|none|nothing|an?|${WORDS.join('|')})`;
const NAME = "(?:(?<room>\\p{L}[\\p{L}'’ ]{0,60}?(?: \\d{1,2})?)[ ,:]+)?";
const BROKE = new RegExp(
  `(?<![a-z])(?:(?:i )?(?:have )?(?:broke|broken|ruined|spoiled|spoilt|wasted|damaged|miscut|cracked|lost) ${COUNT}(?: of them)?(?: (?:planks?|boards?))?|${COUNT.replace('count', 'other')} (?:planks? |boards? )?(?:(?:is|are|was|were|got) )?(?:broke|broken|ruined|spoiled|spoilt|wasted|damaged|miscut|cracked))(?![a-z])`,
);
const PLANKS = new RegExp(
  `(?<![\\p{L}\\d/.])(?:i )?(?:have )?${COUNT} (?:more )?(?:whole |full |new |uncut |unused )?(?:planks?|boards?)(?: (?:are|is|still))*(?: left| over| remaining| to go)*(?![a-z])`,
  'u',
);
const CARTONS = new RegExp(
  `(?<![\\p{L}\\d/.])${COUNT} (?:more )?(?:whole |full |new |unopened |sealed )?(?:cartons?|box(?:es)?|packs?)(?: (?:are|is|still))*(?: left| over| unopened| remaining)*(?![a-z])`,
  'u',
);
const ROW = new RegExp(
  `(?<![\\p{L}])(?:in |the ){0,3}${NAME}row (?<row>\\d{1,4})(?<run>[a-z](?![a-z]))?(?: (?:of|in) (?:the )?(?<owner>\\p{L}[\\p{L}' ]{0,60}?(?: \\d{1,2})?)(?= (?:ended|ends|end|started|starts|start|began|finished|stopped|is|was|done|laid)|[,;.]|$))?`,
  'u',
);
const ROWS = new RegExp(
  `(?<![\\p{L}\\d])(?:in |the ){0,3}${NAME}(?:(?:laid|done|finished|put down) )?(?<row>\\d{1,4}) (?:whole |full )?rows?(?: (?:are|is))?(?: (?:laid|done|down|finished|in place|so far|in))*(?: (?:of|in) (?:the )?(?<owner>\\p{L}[\\p{L}' ]{0,60}?(?: \\d{1,2})?)(?=[,;.]|$))?`,
  'u',
);
const ENDED = new RegExp(
  `^(?:[ ,]*(?:and|which|that|it|with|(?:the )?last (?:one|row)))*[ ,]*(?:(?:ended|ends|finished|finishes|stopped|stops)(?: there)?(?: (?:at|with|in|on|by))?(?: an?)?|(?:its )?(?:end|last) (?:piece|plank|board)(?: is| was)?)[ :]*(?<side>${SIDE})`,
);
const STARTED = new RegExp(
  `^(?:[ ,]*(?:and|which|that|it|with|(?:the )?last (?:one|row)))*[ ,]*(?:(?:started|starts|began|begins|begun)(?: (?:at|with|in|on|by))?(?: an?)?|(?:its )?(?:start|first) (?:piece|plank|board)(?: is| was)?)[ :]*(?<side>${SIDE})`,
);
const WHOLE_PIECE =
  /^(?:[ ,]*(?:and|which|that|it|with|(?:the )?last (?:one|row)))*[ ,]*(?:ended|ends|finished|started|starts|began)(?: with)? a? ?(?:whole|full)(?: (?:plank|board))?/;
const LAID = /^(?:[ ,]*(?:is|was|are|all))*[ ,]*(?:done|laid|down|finished|complete)(?![a-z])/;
const DONE =
  /(?<![\p{L}])(?:the )?(?<room>\p{L}[\p{L}' ]*?(?: \d{1,2})?) (?:is |are |all ){0,3}(?:done|finished|complete|laid)(?![a-z])/u;
const OFFCUTS =
  /(?<![a-z])(?:(?:these|the|my|and|with|no|some) )*(?:offcuts?|off-cuts?|cut-?offs?|scraps?|rests|leftovers?)(?: (?:are|is|left|kept|over))*:?/;
const OFFCUT = new RegExp(
  `(?:(?<![\\d/.])(?<times>\\d{1,2}|${WORDS.slice(1).join('|')}) ?(?:x|times|of) ?)?(?<side>${SIDE})(?: long)?(?:,? ?(?:of )?(?:an? |the )?-?(?<end>left|right|middle|unsure)(?:[ -]?(?:hand|end|part|piece|side|half))*)?`,
);
const FILLER =
  /(?<![a-z])(?:and|these|those|the|with|so far|i|we|have|has|had|are|is|there|still|left|over|only|now|then|up|to|in|of|it|my|just|got|a|an|pieces?|at|also|plus)(?![a-z])|[,:;.()!\s-]/g;

/** Reads all of it, part by part; a figure that is not understood is a Problem. Never throws. */
export function readRowsLaid(text: string, reading: Reading): Read<RowsLaid> {
  const fail = () => unread(soFarUnread({ option: reading.option, got: text }, reading.preferences.units === 'metric'));
  if (text.length > LONGEST_TEXT) return fail();
  const rest = new Rest(plainSigns(text).replace(/\s+/g, ' ').replace(/[!?]/g, '.').trim());
  const rows = rowsIn(rest, reading);
  if (!rows) return fail();
  const broken = rest.claimAll(BROKE).reduce((sum, { groups }) => sum + countOf(groups?.count ?? groups?.other), 0);
  const cartons = rest.claimAll(CARTONS).map(({ groups }) => countOf(groups?.count));
  const planks = rest.claimAll(PLANKS).map(({ groups }) => countOf(groups?.count));
  const offcuts = offcutsIn(rest, reading);
  if (!offcuts || planks.length > 1 || cartons.length > 1) return fail();
  const done = rest.claimAll(DONE).map(({ groups }) => (groups?.room ?? '').replace(/^(?:and|the) /, '').trim());
  const left = rest.text.replace(FILLER, ' ').replace(/\s+/g, ' ').trim();
  if (/\d|[½⅓⅔¼¾⅛⅜⅝⅞]/.test(left)) return fail();
  if (/\p{L}{2}/u.test(left)) reading.note(SO_FAR_NOTES.unused(left));
  if (rows.length + done.length === 0) return fail();
  return read({
    rows,
    done,
    broken,
    planks: planks[0] ?? (cartons.length > 0 ? 0 : undefined),
    cartons: cartons[0] ?? 0,
    offcuts: offcuts.given ? offcuts.list : undefined,
  });
}

function rowsIn(rest: Rest, reading: Reading): readonly ParsedRow[] | undefined {
  const rows: ParsedRow[] = [];
  for (const pattern of [ROW, ROWS]) {
    for (let found = rest.claim(pattern); found; found = rest.claim(pattern)) {
      const { room, owner, row, run } = found.groups ?? {};
      const name = (owner ?? room ?? '')
        .replace(/^(?:(?:and|the|in|on|of|at|done|laid|finished|up to|to) )+/, '')
        .trim();
      const clauses = clausesAfter(rest, found.index + found[0].length, reading);
      if (!clauses || Number(row) < 1) return undefined;
      rows.push({
        ...(name === '' || /^(?:i|we|so far|have|last|now|up to|to|done|laid|finished|through)$/.test(name)
          ? {}
          : { room: name }),
        row: Number(row),
        ...(run === undefined ? {} : { run: run.charCodeAt(0) - 97 }),
        ...clauses,
      });
    }
  }
  return rows;
}

/** What follows a row: how it started, how it ended. Undefined where a length in it cannot be read. */
function clausesAfter(rest: Rest, from: number, reading: Reading): Pick<ParsedRow, 'start' | 'end'> | undefined {
  let at = from;
  const given: { start?: Length; end?: Length } = {};
  for (;;) {
    const text = rest.text.slice(at);
    const found = ENDED.exec(text) ?? STARTED.exec(text) ?? WHOLE_PIECE.exec(text) ?? LAID.exec(text);
    if (!found) return given;
    const side = found.groups?.side;
    if (side !== undefined) {
      const length = lengthOf(side, reading);
      if (length === undefined) return undefined;
      if (ENDED.test(text)) given.end = length;
      else given.start = length;
    }
    rest.text = rest.text.slice(0, at) + ' '.repeat(found[0].length) + rest.text.slice(at + found[0].length);
    at += found[0].length;
  }
}

/** Offcuts after their word, or with an end named; bare figures only after the word. */
function offcutsIn(
  rest: Rest,
  reading: Reading,
): { readonly given: boolean; readonly list: readonly Offcut[] } | undefined {
  const word = rest.claim(OFFCUTS);
  const list: Offcut[] = [];
  for (let found = rest.claim(OFFCUT); found; found = rest.claim(OFFCUT)) {
    const { times, side, end } = found.groups ?? {};
    const bare = /^[\d ./½⅓⅔¼¾⅛⅜⅝⅞]+$/.test(side ?? '');
    if ((end === undefined || bare) && (!word || found.index < word.index)) return undefined;
    const length = lengthOf(side ?? '', reading);
    const count = times === undefined ? 1 : countOf(times);
    if (length === undefined || list.length + count > MOST_OFFCUTS) return undefined;
    const own = end === 'left' || end === 'right' ? end : 'any';
    if (end === undefined) reading.note(SO_FAR_NOTES.noEnd((side ?? '').trim()));
    for (let i = 0; i < count; i++) list.push({ length, end: own });
  }
  return { given: word !== undefined || list.length > 0, list };
}

function countOf(text: string | undefined): number {
  if (text === undefined) return 0;
  const word = text.toLowerCase();
  if (word === 'none' || word === 'nothing') return 0;
  if (word === 'a' || word === 'an') return 1;
  const index = WORDS.indexOf(word);
  return index >= 0 ? index : Number(word);
}

function lengthOf(text: string, reading: Reading): Length | undefined {
  const found = readLength(text.trim(), reading, reading.preferences.units === 'metric' ? 'mm' : 'in');
  return found.ok ? found.value : undefined;
}
