/** What was said of a floor in a conversation, piece by piece and in any order: rooms, the size of a plank, what a box holds. */

import { fullName } from '../input/command-shape.ts';
import { readPlank } from '../input/parse-plank.ts';
import type { Preferences } from '../input/reading.ts';
import { pairPattern } from '../input/rooms/room-text.ts';
import { offersIn, stockedIn } from '../language/counted.ts';
import { type Measured, measured } from '../language/measured.ts';
import type { Project } from '../project/project.ts';
import { READER } from '../text/reader-text.ts';
import type { Command } from './command.ts';
import type { Parsed } from './command-line.ts';

/** By name: `room`, `area`, `plank`, `box`, `size`, `count`, `have`, `price`, `offer`. */
export type Known = Readonly<Record<string, string>>;

/** Options whose text says the same in every command. */
const SHARED = ['room', 'area', 'plank', 'box', 'have', 'price', 'doors', 'built'];
const LONGEST = 1000;

/** What is known after a message: the options that it was read as, and what else it says of a plank. */
export function piecesIn(text: string, texts: Known, before: Known, preferences: Preferences): Record<string, string> {
  const given = measured(text.slice(0, LONGEST), preferences);
  const own = SHARED.flatMap((name) => (texts[name] === undefined ? [] : [[name, texts[name]] as const]));
  const [, had, covers] = /^(\d{1,4}) box(?:es)? of (.+)$/.exec(texts.items ?? '') ?? [];
  const stock = had === undefined || covers === undefined ? {} : { have: `${had} boxes`, box: covers };
  const count = stockedIn(given.plain.toLowerCase());
  const lot = count === undefined ? {} : { have: `${count} boxes` };
  const place = texts.room !== undefined || texts.area !== undefined;
  const old = Object.entries(before).filter(([name]) => !(place && (name === 'room' || name === 'area')));
  return {
    ...Object.fromEntries(old),
    ...Object.fromEntries(own),
    ...stock,
    ...lot,
    ...withPieces(given, before, preferences),
  };
}

/** The pieces of a plank in a message, put together with those said before. */
function withPieces(given: Measured, before: Known, preferences: Preferences): Known {
  const { plank, size, plain } = given;
  const known =
    size === undefined && before.size !== undefined && before.plank === undefined ? given.countable : undefined;
  const count = given.count ?? known;
  const carton = known === undefined ? given.carton : undefined;
  const [offer] = offersIn(plain);
  const more = offer === undefined ? {} : { offer };
  if (plank !== undefined) return { ...more, plank, ...(size === undefined ? {} : { size }) };
  if ((size ?? count ?? carton) === undefined) return more;
  const box = carton ?? (size === undefined ? before.box : undefined) ?? before.box;
  const pieces = {
    ...(size === undefined ? {} : { size }),
    ...(count === undefined ? {} : { count }),
    ...(carton === undefined ? {} : { box: carton }),
  };
  const now = size ?? before.size;
  const holds = [count ?? (carton === undefined ? before.count : undefined), perCarton(box), before.count];
  const whole = now === undefined ? undefined : holds.flatMap((one) => wholePlank(now, one, preferences) ?? [])[0];
  return { ...more, ...pieces, ...(whole === undefined ? {} : { plank: whole }) };
}

function perCarton(box: string | undefined): string | undefined {
  if (box === undefined) return undefined;
  return /per (?:carton|box)/.test(box) ? box.replace(/^.*, ?(?=\d)/, '') : `${box} per carton`;
}

function wholePlank(size: string, holds: string | undefined, preferences: Preferences): string | undefined {
  if (holds === undefined) return undefined;
  const text = `${size}, ${holds}`;
  return readPlank(text, { option: 'plank', preferences, note: () => undefined }).ok ? text : undefined;
}

/** The plank that is known whole; undefined where a piece of it is missing. */
export function plankKnown({ plank }: Known, preferences: Preferences): string | undefined {
  if (plank === undefined) return undefined;
  return readPlank(plank, { option: 'plank', preferences, note: () => undefined }).ok ? plank : undefined;
}

const PIECE_WORDS =
  /(?<![a-z])(?:ok(?:ay)?|oh|and|so|the|they(?:'re| are)?|theyre|it(?:'s| is)?|its|my|our|are|is|was|a|an|each|every|per|in|to|of|by|with|has|have|hold|holds|come|comes|covers?|says?|box(?:es)?|cartons?|packs?|cases?|planks?|boards?|pieces?|tiles?|ones?|wide|width|long|length|inch(?:es)?|in|ft|feet|foot|sq(?:uare)?|sqft|sf|m|mm|cm|m2|size|about|which|that|label|vinyl|laminate|lvp|flooring|click|thick|i think|there(?:'s| are)?|got|one|x|them|for)(?![a-z])/g;

/** Whether a message says nothing but pieces of a plank. */
export function saidOnly(given: Measured): boolean {
  if (given.room !== undefined || given.boxes !== undefined) return false;
  if (given.price !== undefined && given.plank === undefined) return false;
  if ((given.plank ?? given.size ?? given.count ?? given.carton) === undefined) return false;
  if (/\?/.test(given.plain)) return false;
  return !/\p{L}{2,}/u.test(given.plain.toLowerCase().replace(PIECE_WORDS, ' '));
}

/** A room that has walls: an area alone has none. */
export function roomKnown({ room, area }: Known): string | undefined {
  return [room, area].find((one) => one !== undefined && pairPattern().exec(one) !== null);
}

/** What a row that ends short may be a row of. */
interface RowTalk {
  readonly command: string;
  readonly texts: Known;
  readonly known?: Known | undefined;
  readonly open?: string | undefined;
  readonly said?: string | undefined;
}

const ROW_SHORT =
  /^(?:(?:my|the|and|but|now|oh|help),? ){0,3}row (?<row>\d{1,3}) (?:(?:ends?|ended|is|came|comes|stops?|stopped|falls|fell|up|out|too|a bit|a little) ){1,4}short[.!?]*$/i;
const ROW_END =
  /^(?:(?:it|at|about|ended|ends|stops|stopped|is|it's|the last piece is|last piece is|by),? ){0,4}(?<end>\d{1,3}(?:[ -]\d{1,2}\/\d{1,2}|\/\d{1,2}|\.\d{1,2})?(?: ?(?:"|in(?:ch(?:es)?)?|cm|mm))?)[.!]*$/i;

/** A row that ends short, of a floor that is known: where it ends is asked, and then the rest is laid from there. */
export function rowEnds(
  text: string,
  { command: last, texts, known = {}, open, said = '' }: RowTalk,
  commands: readonly Command[],
  {
    preferences,
    project,
  }: { readonly preferences: Preferences; readonly project?: Pick<Project, 'picks'> | undefined },
): { readonly parsed: Parsed; readonly sentence: string } | undefined {
  const command = commands.find((one) => fullName(one) === 'floor resume');
  if (!command) return undefined;
  const before = ROW_SHORT.exec(said)?.groups?.row;
  const end = ROW_END.exec(text.trim())?.groups?.end;
  if (last === 'floor resume' && open === 'so-far' && before !== undefined && end !== undefined) {
    const optionTexts = new Map([...Object.entries(texts), ['so-far', `row ${before} ended at ${end}`] as const]);
    return { parsed: { ok: true, command, optionTexts }, sentence: said };
  }
  const row = ROW_SHORT.exec(text.trim())?.groups?.row;
  const plank = texts.plank ?? plankKnown(known, preferences);
  const room = roomKnown({ ...known, ...texts });
  if (row === undefined || (plank ?? project?.picks.plank) === undefined || (!project && room === undefined))
    return undefined;
  const optionTexts = new Map([
    ...(room === undefined ? [] : [['room', room] as const]),
    ...(plank === undefined ? [] : [['plank', plank] as const]),
  ]);
  const problems = [{ option: 'so-far', got: '', expected: READER.rowEnd(Number(row)) }] as const;
  const partly = { command, optionTexts, assumed: [], missing: ['so-far'] };
  return { parsed: { ok: false, problems, partly, about: partly, open: 'so-far' }, sentence: text };
}
