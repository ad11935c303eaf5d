/** A plain sentence to the command of its topic, told in the grammar's own words; or the problem that asks one fact back. */

import { askLine, type CommandShape, optionsOf } from '../input/command-shape.ts';
import { suspectWords } from '../input/parse-covering.ts';
import { unsafeWords } from '../input/parse-found.ts';
import { unitIn } from '../input/parse-length.ts';
import { readPlank } from '../input/parse-plank.ts';
import { PRICE_SQUARE_FOOT, SQUARE_METRE } from '../input/parse-plank-price.ts';
import { FIGURE, FIGURE_START, markOf } from '../input/parse-price.ts';
import { readRowsLaid } from '../input/parse-rows-laid.ts';
import { sumInSentence } from '../input/parse-tape.ts';
import type { Preferences, Read, Reading } from '../input/reading.ts';
import { readRooms } from '../input/rooms/parse-room.ts';
import {
  CARTON_WORDS,
  FIGURE_WORDS,
  FLOOR_WORDS,
  laterTopic,
  QUESTION,
  REQUEST,
  SAFETY_IDIOMS,
  SAFETY_WORDS,
  SOURCE_WORDS,
  TALK,
  TASK_WORDS,
  word,
} from '../input/trade-words.ts';
import type { Problem } from '../reply/reply.ts';
import { readingStopped } from '../text/chat-text.ts';
import { priceMark } from '../text/floor-problems-text.ts';
import {
  aboutNote,
  areaNote,
  builtInNote,
  byOptions,
  laterNote,
  layoutUnknown,
  notYet,
  plankByNoWord,
  plankNotGiven,
  plankRole,
  plankTwice,
  plankUnit,
  questionBack,
  readAsCommand,
  repeatedNote,
  roomCounts,
  roomEither,
  roomNotGiven,
  roomRole,
  roomTurned,
  roomUnsized,
  sentenceTooLong,
  speltNote,
  unplacedFigure,
  unusedNote,
  wasteNote,
} from '../text/reader-text.ts';
import { areaAlone, oneSide } from '../text/room-problems-text.ts';
import { TICKS_PER_INCH } from '../units/length.ts';
import { readInTime } from '../workers/time-limits.ts';
import { doorsIn } from './frames.ts';
import { figureIn, findMeasures, type MeasuresInText, turnIn } from './measured.ts';
import { normalize } from './normalize.ts';

/** A sentence understood. `read` tells whether any of it was told to an option of the command typed, if one was. */
export type Sentence<C extends CommandShape> =
  | {
      readonly ok: true;
      readonly command: C;
      readonly optionTexts: ReadonlyMap<string, string>;
      readonly assumed: readonly string[];
    }
  | {
      readonly ok: false;
      readonly problems: readonly [Problem];
      readonly read: boolean;
      readonly partly?: Partly<C> | undefined;
      /** The command that is meant, with what was read for its options: for a form. */
      readonly about?: Pick<Partly<C>, 'command' | 'optionTexts'>;
    };

/** A sentence that lacks facts and leaves none in doubt. */
export interface Partly<C extends CommandShape> {
  readonly command: C;
  readonly optionTexts: ReadonlyMap<string, string>;
  readonly assumed: readonly string[];
  readonly missing: readonly string[];
}

/** The command of each topic, by its full name. */
const COMMANDS: Readonly<Record<Topic, string>> = {
  planks: 'floor planks',
  tape: 'tape',
  safety: 'safety',
  sources: 'sources',
  help: 'help',
  trim: 'trim list',
  'tear-out': 'prep tearout',
  squeaks: 'prep squeaks',
  level: 'prep level',
  moisture: 'prep moisture',
  patch: 'prep patch',
  finish: 'trim finish',
};

/**
 * Commands that a sentence never sets off: on what lies under a carpet or in a joist hangs somebody's health, so the asker is
 * given the ask to complete. The options named decide the answer and are asked even though they have a standard.
 */
const BY_OPTIONS: ReadonlyMap<string, readonly string[]> = new Map([
  ['tearout', []],
  ['squeaks', []],
  ['level', []],
  ['moisture', []],
  ['patch', ['found']],
  ['finish', []],
]);

/** Reads a sentence for the commands there are; `typed` is the command before it. Undefined when nothing is asked. */
export function parseSentence<C extends CommandShape>(
  text: string,
  commands: readonly C[],
  preferences: Preferences,
  typed?: C,
): Sentence<C> | undefined {
  const late = (): Sentence<C> => ({ ok: false, problems: [readingStopped(text)], read: false });
  return readInTime(() => sentenceParsed(text, commands, preferences, typed), late);
}

function sentenceParsed<C extends CommandShape>(
  text: string,
  commands: readonly C[],
  preferences: Preferences,
  typed: C | undefined,
): Sentence<C> | undefined {
  const begun = typed
    ? undefined
    : (begunFloor(text, commands, preferences) ?? boardsReused(text, commands, preferences));
  if (begun) return begun;
  const plain = readSentence(text, preferences, typed && topicNamed(typed.name));
  if (plain.kind === 'nothing') return undefined;
  const { topic, optionTexts } = plain;
  const command = commandOf(topic, commands);
  const read = optionTexts.size > 0 && (typed === undefined || command === typed);
  if (!command) return { ok: false, problems: [notYet(text, topic, optionTexts)], read };
  if (command.group !== undefined && BY_OPTIONS.has(command.name)) {
    const all = new Map([...optionTexts, ...oldFloor(command, text), ...hazards(command, text)]);
    const { line, missing } = completed(command, all);
    return {
      ok: false,
      problems: [byOptions(text, topic, optionTexts, missing, line)],
      read,
      about: { command, optionTexts: all },
    };
  }
  if (plain.kind === 'ask') {
    const known = [...optionTexts].filter(([option]) => option in command.options.shape);
    const others = [...optionTexts]
      .filter(([option]) => !(option in command.options.shape))
      .map((pair) => pair.join(' '));
    const assumed = others.length > 0 ? [...plain.assumed, unusedNote(others)] : plain.assumed;
    return { ok: true, command, optionTexts: new Map(known), assumed };
  }
  const { missing, got, why, mends, said = optionTexts } = plain;
  // The options in the order of the command, so that the fix reads like any other line.
  const options = Object.keys(command.options.shape).flatMap((option): [string, string][] => {
    const value = mends?.get(option) ?? optionTexts.get(option);
    return value === undefined ? [] : [[option, value]];
  });
  const whole = mends && options.length > 0 ? askLine(command, new Map(options)) : undefined;
  const partly = plain.notGiven && { command, optionTexts, assumed: plain.assumed, missing: plain.notGiven };
  const problems = [questionBack(missing, got || text, why, whole)] as const;
  return { ok: false, problems, read, partly, about: { command, optionTexts: said } };
}

/** Words that tell of rows in place: what else is said is then how far a floor is laid. */
const ROWS_LAID =
  /(?<![a-z])(?:row \d+[a-z]? (?:of (?:the )?[a-z ]+ )?(?:ended|ends|started|starts|finished|is (?:done|laid|down))|\d+ rows? (?:are )?(?:done|laid|down|finished)|laid \d+ rows?)(?![a-z])/i;

/** A sentence of how far a floor is laid and what is left, told to the command that goes on with it. */
function begunFloor<C extends CommandShape>(
  text: string,
  commands: readonly C[],
  preferences: Preferences,
): Sentence<C> | undefined {
  const command = commands.find(({ group, name }) => group === 'floor' && name === 'resume');
  if (!command || !ROWS_LAID.test(text)) return undefined;
  const read = readRowsLaid(text, { option: 'so-far', preferences, note: () => undefined });
  return read.ok ? { ok: true, command, optionTexts: new Map([['so-far', text]]), assumed: [] } : undefined;
}

const REUSED =
  /(?<![a-z])(?:re-?us(?:e|ed|ing)|keep(?:ing)? (?:the|our|my|all|old|existing)|put(?:ting)?(?: \w+){0,4} back|re-?install(?:ed|ing)?|go(?:ing|es)? back on)(?![a-z])/i;
const BOARDS = /(?<![a-z])(?:base ?boards?|base trim|skirtings?(?: boards?)?)(?![a-z])/i;
const IN_QUESTION = /\?|^(?:should|can|could|may|is|are|do|does|how|what|which|when|why|where|would)(?![a-z])/i;

/** Old boards that go back on their walls: new ones are not bought. */
function boardsReused<C extends CommandShape>(
  text: string,
  commands: readonly C[],
  preferences: Preferences,
): Sentence<C> | undefined {
  const command = commands.find(({ group, name }) => group === 'trim' && name === 'reset');
  if (!command || text.length > 400 || !REUSED.test(text) || !BOARDS.test(text) || IN_QUESTION.test(text.trim()))
    return undefined;
  const plain = readSentence(text, preferences);
  const room = plain.kind === 'nothing' ? undefined : plain.optionTexts.get('room');
  const optionTexts = new Map(room === undefined ? [] : [['room', room]]);
  return { ok: true, command, optionTexts, assumed: [readAsCommand(command.name, 'the old baseboards go back')] };
}

/** The line of such a command where the sentence told all that decides the answer; else what it did not tell, in words. */
function completed(
  command: CommandShape,
  optionTexts: ReadonlyMap<string, string>,
): { readonly line?: string; readonly missing: readonly string[] } {
  const decides = BY_OPTIONS.get(command.name) ?? [];
  const missing = optionsOf(command)
    .filter(({ name, standard }) => !optionTexts.has(name) && (standard === undefined || decides.includes(name)))
    .map(({ name, summary }) => `${name} (${summary.charAt(0).toLowerCase()}${summary.slice(1)})`);
  return missing.length > 0 ? { missing } : { missing, line: askLine(command, optionTexts) };
}

/** The old floor and the house's year in the asker's own words: never a floor that is safer than what was said. */
function oldFloor(command: CommandShape, text: string): readonly (readonly [string, string])[] {
  if (command.name !== 'tearout') return [];
  const floor =
    /(?:carpet|lino(?:leum)?|laminate|(?:sheet |asphalt |floor |ceramic )?(?:vinyl|tiles?)(?: (?:sheet|tiles?|plank))?)(?!\p{L})/iu;
  const given = floor.exec(text)?.[0] ?? '';
  const below = suspectWords(text.replace(given, ' '));
  return [
    ...(given === '' ? [] : [['floor', given] as const]),
    ...(below === undefined ? [] : [['below', below] as const]),
    ['built', /(?<!\d)(?:1[89]|20)\d\d(?!\d)/.exec(text)?.[0] ?? 'unknown'],
  ];
}

/** What is unsafe in the sentence, where the command asks what was found. */
function hazards(command: CommandShape, text: string): readonly (readonly [string, string])[] {
  const found = 'found' in command.options.shape ? unsafeWords(text) : undefined;
  return found === undefined ? [] : [['found', found]];
}

/** The command that works a topic out: the one of its name, alone or in its group. */
function commandOf<C extends CommandShape>(topic: Topic, commands: readonly C[]): C | undefined {
  return commands.find(({ name, group }) => COMMANDS[topic] === (group === undefined ? name : `${group} ${name}`));
}

function topicNamed(name: string): Topic | undefined {
  return (['planks', 'tape', 'safety', 'sources', 'help'] as const).find((topic) => topic === name);
}

const LONGEST_TEXT = 1500;

/**
 * Reads a sentence by grammar and lexicon, without computing anything: every figure in it is told to an option, noted as
 * not used, or asked about. `hint` is the topic of a command typed before it. Never throws.
 */
export function readSentence(text: string, preferences: Preferences, hint?: Topic): SentenceReading {
  if (text.length > LONGEST_TEXT) {
    const why = sentenceTooLong(LONGEST_TEXT);
    return {
      kind: 'ask-back',
      topic: hint ?? 'help',
      optionTexts: new Map(),
      assumed: [],
      missing: 'ask',
      got: text,
      why,
    };
  }
  const clean = normalize(text, aboutNote(), speltNote);
  const tape = hint === 'planks' ? undefined : sumInSentence(clean.plain, preferences);
  if (tape) return sumReading(tape);
  const measures = findMeasures(clean, { option: 'room', preferences, note: () => undefined });
  const topic = topicOf(clean.plain, measures, hint);
  if (!topic) return { kind: 'nothing' };
  if (topic === 'planks') return planksReading(clean.plain, measures, preferences, clean.notes);
  const optionTexts = otherOptions(topic, clean.plain, measures, preferences);
  // Another task must not pass for the usual one behind the command’s own name.
  if (topic === 'safety' && hint === topic && optionTexts.size === 0) return { kind: 'nothing' };
  return { kind: 'ask', topic, optionTexts, assumed: clean.notes };
}

function sumReading({ sum, problem }: NonNullable<ReturnType<typeof sumInSentence>>): SentenceReading {
  if (!problem) return { kind: 'ask', topic: 'tape', optionTexts: new Map([['sum', sum]]), assumed: [] };
  const { got, expected, fix } = problem;
  const mends = fix === undefined ? undefined : new Map([['sum', fix]]);
  return {
    kind: 'ask-back',
    topic: 'tape',
    optionTexts: new Map(),
    assumed: [],
    missing: 'sum',
    got,
    why: expected,
    mends,
  };
}

/** What is told of a topic other than planks. */
function otherOptions(topic: Topic, plain: string, measures: MeasuresInText, preferences: Preferences): ReadLine {
  const optionTexts = new Map<string, string>();
  const tell = (option: string, value: string | undefined): void => void (value && optionTexts.set(option, value));
  if (topic === 'safety') tell('task', TASK_WORDS.find(([, words]) => words.test(plain))?.[0]);
  else if (topic === 'sources') tell('about', FIGURE_WORDS.exec(plain)?.[0]);
  else if (topic !== 'help') {
    const { rooms, leftover } = measures;
    const read =
      rooms.given !== '' && readRooms(rooms.given, { option: 'room', preferences, note: () => undefined }).ok;
    tell('room', read ? rooms.given : undefined);
    tell('doors', doorsIn(leftover.doors, plain));
  }
  return optionTexts;
}

/** Whether a word is only talk: a greeting, thanks, a filler. */
export function isTalk(word: string): boolean {
  return TALK.test(word);
}

const CHEAP_TALK = word('thanks|thank you|thx|cheers|danke|lol|haha');

/** The topic, undefined when nothing is asked of us. `hint` is that of the command typed before the sentence. */
export function topicOf(plain: string, measures: MeasuresInText, hint: Topic | undefined): Topic | undefined {
  const { planks, roomPairs, carton, layout, doubtful } = measures;
  const asks = REQUEST.test(plain) || hint === 'planks';
  const bought = planks.length > 0 || carton.carton;
  if (hint === 'sources' && SOURCE_WORDS.test(plain)) return 'sources';
  if (!bought && hint === 'safety' && SAFETY_WORDS.test(plain.replace(SAFETY_IDIOMS, ' '))) return 'safety';
  const later = laterTopic(plain);
  if (later && !bought && !CARTON_WORDS.test(plain) && (asks || QUESTION.test(plain) || roomPairs.length > 0))
    return later;
  const words = FLOOR_WORDS.test(plain) || hint === 'planks';
  if (planks.length > 0 && (roomPairs.length > 0 || asks || carton.carton || doubtful.length > 0)) return 'planks';
  if (carton.carton && (roomPairs.length > 0 || asks)) return 'planks';
  if (roomPairs.length + doubtful.length > 0) {
    const given = MEASURED.test(plain);
    const alone = !/\p{L}{2,}/u.test(measures.rest.replace(CHEAP_TALK, ' '));
    return measures.named || words || asks || alone || given ? 'planks' : undefined;
  }
  if (planks.length > 0 && !/\p{L}{2,}/u.test(measures.rest)) return 'planks';
  const about = words && (asks || layout.options.size > 0) && !PRICE_ONLY.test(plain);
  if (
    about &&
    (CARTON_WORDS.test(plain) || QUANTITY.test(plain) || measures.mentioned || measures.carton.areas.length > 0)
  )
    return 'planks';
  if (layout.options.size > 0 && words && QUESTION.test(plain)) return 'planks';
  return layout.options.size + layout.doubts.length > 0 && asks ? 'planks' : undefined;
}

const MEASURED = /(?<![a-z])(?:measured|measures|measurements?|dimensions?|it'?s (?=\d))/;
const PRICE_ONLY = /(?<![a-z])how much (?:does|do|is|are|did|was)(?![a-z])/;
const QUANTITY = /(?<![a-z])(?:how (?:many|much)|calculate|estimate|quantity|work out|figure out)(?![a-z])/;

/** What can be asked about; those from trim on are known by their words and not all of them are worked out yet. */
export type Topic =
  | 'planks'
  | 'tape'
  | 'safety'
  | 'sources'
  | 'help'
  | 'trim'
  | 'tear-out'
  | 'squeaks'
  | 'level'
  | 'moisture'
  | 'patch'
  | 'finish';

/** Texts by option. */
export type ReadLine = ReadonlyMap<string, string>;

/** A sentence read: `told` is in the grammar's words, by option, and holds only what its readers read. */
export type SentenceReading =
  | { readonly kind: 'ask'; readonly topic: Topic; readonly optionTexts: ReadLine; readonly assumed: readonly string[] }
  | {
      readonly kind: 'ask-back';
      readonly topic: Topic;
      readonly optionTexts: ReadLine;
      readonly assumed: readonly string[];
      /** The option that is missing or in doubt; 'ask' for something that no option could be found for. */
      readonly missing: string;
      readonly got: string;
      readonly why: string;
      /** What was told of any option, read or not: for a form. */
      readonly said?: ReadLine | undefined;
      /** What was told of the options in doubt as it may be meant, where the request is whole with it: nothing that was not typed. */
      readonly mends?: ReadLine | undefined;
      /** The options that are missing, where nothing told is in doubt. */
      readonly notGiven?: readonly string[] | undefined;
    }
  | { readonly kind: 'nothing' };

/** A fact that is missing or in doubt; `mend` is what was told of it as it may be meant. */
interface Missing {
  readonly option: string;
  readonly got: string;
  readonly why: string;
  readonly mend?: string | undefined;
}

/** The ask for planks that a sentence makes, or its missing fact. */
export function planksReading(
  plain: string,
  measures: MeasuresInText,
  preferences: Preferences,
  notes: readonly string[],
): SentenceReading {
  const optionTexts = new Map<string, string>();
  const silent = (option: string): Reading => ({ option, preferences, note: () => undefined });
  const assumed = [...notes, ...notesOf(plain, measures)];
  const { rooms, layout } = measures;
  const read = rooms.given === '' ? undefined : readRooms(rooms.given, silent('room'));
  const roomMissing = missingRoom(measures, read);
  const plankText = plankOf(measures, assumed);
  const plankMissing = missingPlank(measures, plankText, silent('plank'));
  if (!roomMissing) optionTexts.set('room', rooms.given);
  if (!plankMissing) optionTexts.set('plank', plankText);
  const doubts = layout.doubts.map(({ option }) => option);
  for (const [option, value] of layout.options) if (!doubts.includes(option)) optionTexts.set(option, value);
  const loose = unmarkedPrice(measures, plankText, preferences) ?? unplaced(measures);
  const missing = roomMissing ?? plankMissing ?? missingLayout(measures) ?? loose;
  if (!missing) return { kind: 'ask', topic: 'planks', optionTexts, assumed };
  const lacking = [roomMissing, plankMissing, missingLayout(measures), loose].filter((one) => one !== undefined);
  const mends = new Map(lacking.flatMap(({ option, mend }) => (mend === undefined ? [] : [[option, mend] as const])));
  return {
    kind: 'ask-back',
    topic: 'planks',
    optionTexts,
    assumed,
    missing: missing.option,
    got: missing.got,
    why: missing.why,
    said: new Map([
      ...(rooms.given === '' ? [] : [['room', rooms.given] as const]),
      ...(plankText === '' ? [] : [['plank', plankText] as const]),
      ...optionTexts,
    ]),
    mends: mends.size === lacking.length ? mends : undefined,
    notGiven: lacking.every((one) => one.got === '') ? lacking.map(({ option }) => option) : undefined,
  };
}

function missingRoom(measures: MeasuresInText, read: Read<unknown> | undefined): Missing | undefined {
  const { rooms, doubtful, carton, rest } = measures;
  const missing = (why: string, got = '', mend?: string): Missing => ({ option: 'room', got, why, mend });
  if (rooms.given === '') {
    const [doubt] = doubtful;
    if (doubt) return missing(roomRole(doubt.typed), doubt.typed);
    const [area] = carton.areas;
    if (area) return missing(areaAlone(), area.got);
    const side = figureIn(rest);
    return side?.side ? missing(oneSide(), side.got) : missing(roomNotGiven());
  }
  if (read && !read.ok) return missing(read.problems[0].expected, rooms.given, read.problems[0].fix);
  if (measures.either) return missing(roomEither(), rooms.given);
  if (rooms.doubt) {
    const { why, got } = rooms.doubt;
    return missing(why === 'rooms counted' ? roomCounts(got) : roomUnsized(got), got);
  }
  const turn = turnIn(rest);
  return turn === undefined ? undefined : missing(roomTurned(turn), turn, rooms.given);
}

/** What is told of the plank, in the words of its reader. An area behind the size is what a carton covers, and that is noted. */
function plankOf({ planks, carton, roomPairs }: MeasuresInText, assumed: string[]): string {
  const [plank] = planks;
  const behind =
    plank && !carton.carton
      ? carton.areas.find(({ at }) => at > plank.to && !roomPairs.some(({ from }) => from > plank.to && from < at))
      : undefined;
  if (behind) assumed.push(areaNote(behind.got));
  return [plank?.typed, ...(behind ? [`${behind.got} per carton`] : []), ...carton.parts]
    .filter((part) => part !== undefined)
    .join(', ');
}

function missingPlank(measures: MeasuresInText, text: string, reading: Reading): Missing | undefined {
  const { planks, doubtful, roomPairs } = measures;
  const missing = (why: string, got: string, mend?: string): Missing => ({ option: 'plank', got, why, mend });
  const [plank, other] = planks;
  if (!plank && doubtful.length > 0 && roomPairs.length > 0)
    return missing(plankRole(doubtful[0]?.typed ?? ''), doubtful[0]?.typed ?? '');
  if (plank && other && plank.typed.replace(/\s/g, '') !== other.typed.replace(/\s/g, '')) {
    return missing(plankTwice(plank.typed, other.typed), `${plank.typed} … ${other.typed}`);
  }
  if (text === '') return missing(plankNotGiven(), '');
  const read = readPlank(text, reading);
  if (read.ok)
    return plank && unitless(plank.typed, read.value.plank)
      ? missing(plankUnit(plank.typed), plank.typed, text.replace(plank.typed, `${plank.typed} cm`))
      : undefined;
  const [problem] = read.problems;
  return plank ? missing(problem.expected, text, problem.fix) : missing(plankNotGiven(), text);
}

function missingLayout({ layout }: MeasuresInText): Missing | undefined {
  const [doubt] = layout.doubts;
  if (!doubt) return undefined;
  return { option: doubt.option, got: doubt.got, why: layoutUnknown(doubt.option, doubt.got) };
}

/** A figure for an area that nobody claimed is probably a price without its mark. */
const UNMARKED = new RegExp(
  `${FIGURE_START}${FIGURE} ?(?:per|/|an?(?![a-z])) ?(?:${PRICE_SQUARE_FOOT}|${SQUARE_METRE})`,
);

function unmarkedPrice(
  { rest, carton }: MeasuresInText,
  plankText: string,
  { currency }: Preferences,
): Missing | undefined {
  const got = carton.price ? undefined : UNMARKED.exec(rest)?.[0];
  if (got === undefined) return undefined;
  return { option: 'plank', got, why: priceMark(), mend: `${plankText}, ${markOf(currency)}${got}` };
}

/** A figure or a pair that nobody claimed: it may change the answer, so it is asked about. */
function unplaced({ rest, doubtful }: MeasuresInText): Missing | undefined {
  const [pair] = doubtful;
  const figure = pair ? pair.typed : figureIn(rest)?.got;
  return figure === undefined ? undefined : { option: 'ask', got: figure, why: unplacedFigure(figure) };
}

function notesOf(plain: string, measures: MeasuresInText): string[] {
  const { layout, leftover, carton, rooms, things, planks } = measures;
  const areas =
    measures.roomPairs.length > 0 && (carton.carton || planks.length === 0) ? carton.areas.map(({ got }) => got) : [];
  const unused = [
    ...leftover.unused,
    ...leftover.doors,
    ...carton.unused,
    ...things.map(({ typed }) => typed),
    ...areas,
    ...rooms.passed,
  ];
  const later = laterTopic(plain);
  return [
    ...planks.filter(({ bySize }) => bySize).map(({ typed }) => plankByNoWord(typed)),
    ...rooms.repeated.map(repeatedNote),
    ...rooms.builtIns.map(builtInNote),
    ...layout.waste.map(wasteNote),
    ...(unused.length > 0 ? [unusedNote(unused)] : []),
    ...(later && later !== 'tear-out' ? [laterNote(later)] : []),
  ];
}

/** Whether a size without a unit, read as inches, is larger than any plank: over 13 in or 8 ft, by custom of the trade. */
function unitless(typed: string, { width, length }: { width: number; length: number }): boolean {
  return unitIn(typed) === undefined && (width > 13 * TICKS_PER_INCH || length > 96 * TICKS_PER_INCH);
}
