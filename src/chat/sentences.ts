/** From a sentence's intent to a command, a handbook entry, or one question with choices. */

import { entryOf } from '../handbook/all-entries.ts';
import { termAsked } from '../handbook/glossary.ts';
import { saysMetric, workedFrom, worksWithWords } from '../handbook/worked.ts';
import { fullName, optionsOf, typedName } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import { mentionsIn } from '../language/find-rooms.ts';
import { type SentenceFrame, sentenceFrame } from '../language/frames.ts';
import { type Measured, measured } from '../language/measured.ts';
import { type Heard, hear, LIKELY_SCORE, type Option, PROBABLE_SCORE, SURE_SCORE } from '../language/model.ts';
import type { Action } from '../reply/reply.ts';
import { ASK_FOR, READER } from '../text/reader-text.ts';
import type { Command } from './command.ts';
import { looseness, type Parsed, type ParsedCommand } from './command-line.ts';
import { tallyAlone } from './last-figures.ts';
import { saidOnly } from './said-before.ts';

/** Commands the sentence patterns find in many sentences that ask for something more specific. */
const BROAD = ['help', 'safety', 'sources'];

/** Computed from rooms: if there is no room, the patterns only matched a word. */
const FROM_ROOMS = ['trim list', 'trim finish'];

/** Computed from the same sizes as planks; only the words tell them apart. */
const OVER_PLANKS = ['floor enough', 'floor area', 'floor estimate'];

/**
 * Replaces what the grammar made of a text if it is a sentence that asks for something else. `typed` is the command the
 * text starts with. Throws if the model wasn't built.
 */
export function meant(
  text: string,
  read: Parsed,
  commands: readonly Command[],
  preferences: Preferences,
  typed: Command | undefined,
): Parsed {
  if (text.trim() === '') return read;
  const [word] = termAsked(text)?.names ?? [];
  if (word !== undefined) return of('handbook', commands, new Map([['word', word]])) ?? read;
  // A sentence may begin with the name of the command that it asks for.
  const own =
    typed && !text.includes(':') && lacks(read) ? wholeSentence(text, typed, commands, preferences) : undefined;
  if (own) return own;
  if (typed && read.ok && UNSAID_BASE.test(text) && fullName(typed) === 'prep moisture' && !text.includes(':')) {
    const missing = { option: 'moisture', question: ASK_FOR.moisture ?? '' };
    return framed({ command: 'prep moisture', optionTexts: new Map(), missing }, commands) ?? read;
  }
  if (typed && fullName(typed) === 'prep moisture' && !text.includes(':') && SAYS_BASE.test(text)) {
    const said = wholeSentence(text, typed, commands, preferences);
    if (said) return said;
  }
  if (typed && isLine(text, typed)) {
    // “List” is an everyday verb too: “list your sources”.
    const verb = fullName(typed) === 'trim list' && read.ok && !text.includes(':');
    const other = verb ? otherCommand(text, typed, read, hear(text), commands, preferences) : undefined;
    return other ?? read;
  }
  const untyped = !typed || (fullName(typed) === 'floor planks' && !text.includes(':'));
  const pieces = typed !== undefined && untyped && saidOnly(measured(text, preferences));
  const reckoned = untyped && (!read.ok || pieces) ? tallied(text, commands, preferences) : undefined;
  if (reckoned) return reckoned;
  const heard = hear(text);
  const aside = typed !== undefined && isAside(text, typed, heard);
  if (typed && read.ok && !isQuestion(text) && !aside)
    return otherCommand(text, typed, read, heard, commands, preferences) ?? read;
  if (typed && read.ok) return (aside ? fromHeard(text, heard, commands, preferences) : undefined) ?? read;
  if (read.ok) return instead(text, read, heard, commands, preferences) ?? read;
  // A typed command is meant, unless the sentence clearly asks for another.
  if (typed && (typed.name === 'tape' || heard.score < PROBABLE_SCORE) && !aside) return read;
  return (
    fromPatterns(text, read, heard) ?? fromHeard(text, heard, commands, preferences) ?? unclear(read, heard, commands)
  );
}

/** A reading in a sentence that says nothing of what was measured: the limits of wood and concrete are not the same. */
const UNSAID_BASE =
  /^(?!.*(?:wood|ply|osb|subfloor|joist|concrete|slab|screed|rh|humid|chloride|cm|carbide|%|percent|pin))(?=.*\d).*(?<![a-z])(?:was|is|were|says?|said|reads?|shows?|showed|of|at|got)(?![a-z])/i;

/** A sentence that says what was measured, and how. */
const SAYS_BASE = /(?<![a-z])(?:concrete|slab|subfloor|plywood|osb|wood|probes?)(?![a-z])/i;

/** Counts and prices to add up, or pieces of a plank alone. */
function tallied(text: string, commands: readonly Command[], preferences: Preferences): Parsed | undefined {
  const given = measured(text, preferences);
  const { command, texts } = tallyAlone(given.plain.toLowerCase().trim(), given) ?? {};
  if (command !== undefined) return of(command, commands, new Map(Object.entries(texts ?? {})));
  if (!saidOnly(given)) return undefined;
  const told = given.plank ?? given.size ?? given.count;
  if (told === undefined) return undefined;
  const question = given.plank === undefined && given.size === undefined ? READER.plankSize : (ASK_FOR.room ?? '');
  const missing = { option: (given.plank ?? given.size) === undefined ? 'plank' : 'room', question };
  return framed({ command: 'floor planks', optionTexts: new Map([['plank', told]]), missing }, commands);
}

/** Whether a line misses something that its command needs. */
function lacks(read: Parsed): boolean {
  if (!read.ok) return true;
  return optionsOf(read.command).some(({ name, standard }) => standard === undefined && !read.optionTexts.has(name));
}

/** What a sentence says for a command, if it says all that the command needs. */
function wholeSentence(
  text: string,
  command: Command,
  commands: readonly Command[],
  preferences: Preferences,
): Parsed | undefined {
  const frame = sentenceFrame(fullName(command), measured(text, preferences), preferences);
  return frame?.command === fullName(command) && !frame.missing ? framed(frame, commands) : undefined;
}

/** Work below a floor, whose patterns match almost any word about it. */
const BELOW = ['prep tearout', 'prep patch', 'prep squeaks', 'prep level', 'prep moisture', 'trim finish'];

/** A command the patterns found complete, unless the sentence is a question for the handbook. */
function fromPatterns(text: string, read: Extract<Parsed, { ok: false }>, heard: Heard): Parsed | undefined {
  const { about, problems } = read;
  if (!about || !BELOW.includes(fullName(about.command)) || problems[0].fix === undefined) return undefined;
  const question = /\?|^(?:how do|what|which|should|can|is|do|does|are|will|why)\b/i.test(text.trim());
  if (heard.kind === 'entry' && question && heard.score >= LIKELY_SCORE) return undefined;
  return { ok: true, command: about.command, optionTexts: about.optionTexts };
}

/** Another command, where a text begins with the name of one that can't read the rest: “list your sources”. */
function otherCommand(
  text: string,
  typed: Command,
  read: ParsedCommand,
  heard: Heard,
  commands: readonly Command[],
  preferences: Preferences,
): Parsed | undefined {
  if (heard.kind !== 'command' || heard.name === fullName(typed) || heard.score < PROBABLE_SCORE) return undefined;
  if (read.command !== typed || looseness(typed, read, preferences) !== 'unread') return undefined;
  // Sizes and rooms of the project, by name, are options of what was typed.
  if (/\d/.test(text) || mentionsIn(text.toLowerCase(), text).some(({ name }) => name !== '')) return undefined;
  const found = fromHeard(text, heard, commands, preferences);
  return found?.ok ? found : undefined;
}

/** Whether a text only happens to begin with the name of a command, and is a question. */
function isAside(text: string, { group }: Command, heard: Heard): boolean {
  if (group === 'project' || text.includes(':')) return false;
  // “Planks are cold” states something about planks and gives the command nothing to read.
  if (!isQuestion(text)) return heard.kind === 'entry' && heard.score >= SURE_SCORE && !/\d/.test(text);
  return heard.kind === 'entry' && heard.score >= (/\d/.test(text) ? PROBABLE_SCORE : LIKELY_SCORE);
}

/** Whether a text is options rather than a sentence: a name and a colon, or at most two words. */
export function isLine(text: string, command: Command): boolean {
  const rest = text.trim().slice(typedName(command).length);
  if (command.group === 'project') return true;
  return /[a-z-]:(?:\s|$)/i.test(rest) || rest.trim().split(/\s+/).length <= 3;
}

/** The answer when the patterns took the sentence for something broader. */
function instead(
  text: string,
  read: ParsedCommand,
  heard: Heard,
  commands: readonly Command[],
  preferences: Preferences,
): Parsed | undefined {
  const name = fullName(read.command);
  const wordOnly = FROM_ROOMS.includes(name) && !read.optionTexts.has('room');
  if (wordOnly) return fromHeard(text, heard, commands, preferences);
  if (name === 'trim list') {
    const frame = sentenceFrame(name, measured(text, preferences), preferences);
    const more = frame?.command === name ? frame.optionTexts : [];
    return { ...read, optionTexts: new Map([...more, ...read.optionTexts]) };
  }
  // A row with no measure says nothing of how far a floor is laid.
  if (name === 'floor resume' && heard.kind === 'entry' && heard.score >= PROBABLE_SCORE && !MEASURE.test(text))
    return fromHeard(text, heard, commands, preferences);
  if (BROAD.includes(name) && heard.score >= LIKELY_SCORE && !(heard.kind === 'command' && heard.name === name)) {
    const found = fromHeard(text, heard, commands, preferences);
    return found?.ok ? found : undefined;
  }
  if (
    name === 'floor planks' &&
    heard.kind === 'command' &&
    OVER_PLANKS.includes(heard.name) &&
    heard.score >= PROBABLE_SCORE
  ) {
    const found = fromHeard(text, heard, commands, preferences);
    return found?.ok && heard.name !== 'floor estimate' ? found : undefined;
  }
  return undefined;
}

function fromHeard(
  text: string,
  heard: Heard,
  commands: readonly Command[],
  preferences: Preferences,
): Parsed | undefined {
  if (THANKS.test(text.trim())) return of('small-talk', commands, new Map([['about', 'thanks']]));
  if (isForeign(text)) return of('small-talk', commands, new Map([['about', 'language']]));
  const given = measured(text, preferences);
  if (heard.score < LIKELY_SCORE && given.plank !== undefined) {
    const planks = sentenceFrame('floor planks', given, preferences);
    return planks && framed(planks, commands);
  }
  if (heard.kind === 'talk') {
    const about = ['why', 'more'].includes(heard.about) ? 'nothing-open' : heard.about;
    // If it sounds like another trade but an entry is almost as likely, take the entry.
    const entry = OTHERS.includes(about) && heard.score < PROBABLE_SCORE ? likelyEntry(heard) : undefined;
    if (entry !== undefined) return entryAnswer(text, entry, heard, commands);
    return heard.score >= LIKELY_SCORE ? of('small-talk', commands, new Map([['about', about]])) : undefined;
  }
  // How much of a floor is wanted for a room is said in so many words, whatever else these are near.
  const other =
    heard.kind === 'entry' || (heard.kind === 'command' && /^(?:trim |prep |floor compare)/.test(heard.name));
  if (other && HOW_MUCH_FLOOR.test(given.plain) && (given.room ?? given.areas[0]) !== undefined) {
    const counted = sentenceFrame('floor estimate', given, preferences);
    if (counted && !counted.missing) return framed(counted, commands);
  }
  // Damp below a floor is first of all stopped and dried, whatever rule about it the words are near.
  if (heard.kind === 'entry' && DAMP_BASE.test(given.plain) && !isQuestion(text) && !ABOUT_WET.includes(heard.id))
    return entryAnswer(text, 'damage-found', heard, commands);
  if (heard.kind === 'entry') {
    // A floor and what a box covers are there to be counted, whatever rule the words are near.
    const place = given.room ?? given.areas[0];
    const counts = place !== undefined && given.carton !== undefined && !isQuestion(text);
    const floor = counts || isPad(text, given) ? sentenceFrame('floor estimate', given, preferences) : undefined;
    if (floor && !floor.missing) return framed(floor, commands);
    const judged = judgedBy(heard.id, given, preferences);
    if (judged) return framed(judged, commands);
    const foreign = heard.score < PROBABLE_SCORE && heard.elsewhere >= heard.score * HALF;
    return heard.score < LIKELY_SCORE || foreign ? undefined : entryAnswer(text, heard.id, heard, commands);
  }
  if (heard.score < LIKELY_SCORE && Object.keys(given.room ?? given.areas).length === 0) return undefined;
  // A price or a box beside rooms is for what has to be bought.
  const sold = heard.name.startsWith('trim ') || (heard.name === 'floor compare' && given.plank === undefined);
  const trim = sold && given.carton !== undefined && floorSaid(given) && !TRIM.test(given.plain);
  // An area alone is to be covered: nothing was said to be there already.
  const bare = heard.name === 'floor enough' && given.boxes === undefined && !OWNED.test(given.plain);
  const bought = bare || trim || (heard.name === 'floor area' && (given.price ?? given.carton) !== undefined);
  const own = sentenceFrame(bought ? 'floor estimate' : heard.name, given, preferences);
  // A size alone is a room, whatever the words around it suggest.
  const guess =
    own?.missing &&
    given.room !== undefined &&
    heard.name.startsWith('prep ') &&
    ((heard.score < PROBABLE_SCORE && !/\bsoft|\brot/.test(given.plain)) || !DAMAGE.test(given.plain));
  // A room that is only stated is measured; a project's own sentences were found before.
  const stated = !own && heard.name.startsWith('project ') && given.room !== undefined;
  const frame = guess || stated ? sentenceFrame('floor estimate', given, preferences) : own;
  if (frame?.missing && /(?<![a-z])(?:dye )?(?:lot|batch)s?(?![a-z])/.test(given.plain) && entryOf('same-lot'))
    return entryAnswer(text, 'same-lot', heard, commands);
  if (frame?.missing && RETURNED.test(text) && entryOf('returns')) return entryAnswer(text, 'returns', heard, commands);
  const asks = isQuestion(text) || LAST_ROW.test(text);
  const entry = !frame?.missing || !asks ? undefined : (workedEntry(text, heard) ?? namedEntry(text, heard));
  return entry === undefined ? frame && framed(frame, commands) : entryAnswer(text, entry, heard, commands);
}

function floorSaid({ room, areas }: Measured): boolean {
  return room !== undefined || areas.length > 0;
}

const DAMP_BASE =
  /(?<![a-z])(?:sub ?floor|plywood|osb)(?![a-z]).{0,40}(?<![a-z])(?:wet|damp|moist|soaked|soggy)(?![a-z])|(?<![a-z])(?:wet|damp|moist|soaked|soggy|water ?stain(?:ed|s)?)(?![a-z]).{0,30}(?<![a-z])(?:sub ?floor|plywood|osb)(?![a-z])/;
const ABOUT_WET = [
  'water-damage',
  'damage-found',
  'mold',
  'moisture-test',
  'moisture-limits',
  'crawlspace',
  'leveler-dry',
  'insurance',
  'pet-odor',
  'asbestos-disturbed',
];

/** Entries about a limit, with the command that holds a reading against it. */
const JUDGES: Readonly<Record<string, string>> = {
  'moisture-limits': 'prep moisture',
  'moisture-test': 'prep moisture',
  'must-be-level': 'prep level',
  'check-flat': 'prep level',
  'high-spot': 'prep level',
};

/** The command that judges what was measured, where all that it needs is in the message. */
function judgedBy(entry: string, given: Measured, preferences: Preferences): SentenceFrame | undefined {
  const name = JUDGES[entry];
  const frame = name === undefined ? undefined : sentenceFrame(name, given, preferences);
  return frame?.missing ? undefined : frame;
}

/** If other matters are half as likely as an entry that isn't probable, it is offered and not given. */
const HALF = 0.5;

const THANKS = /^(?:ok |great |perfect )?(?:thx|thnx|thanx|tysm|ty|tks)(?: a lot| so much| man| bud| again)?[.! ]*$/i;

const HOW_MUCH_FLOOR =
  /(?<![a-z])how (?:much|many) (?:of )?(?:laminate|flooring|vinyl|lvp|planks?|boxes|cartons|packs|floor|boards?)(?![a-z])(?!.*(?:trim|base ?board|mou?lding|heavy|weigh|long|leveler))/;

/** Underlayment for an area. */
function isPad(text: string, { areas, room }: Measured): boolean {
  return (
    (areas[0] ?? room) !== undefined &&
    /\b(?:underlay(?:ment)?|pad(?:ding)?|foam|film)\b/i.test(text) &&
    /\b(?:how much|how many|for|rolls?|need)\b/i.test(text) &&
    !/\b(?:what kind|which|should|do i need|can i|is it)\b/i.test(text)
  );
}

const MEASURE = /\d ?(?:"|'|in|inch|inches|ft|feet|foot|mm|cm|m)(?![a-z])|\d ?(?:x|by) ?\d/i;

/** The commonest words of Spanish, French, German, Portuguese, Italian and Dutch that are no English words. */
const FOREIGN =
  /(?<![\p{L}'’])(?:cuant[ao]s?|cuánt[ao]s?|cómo|como|qué|que|para|cuarto|cajas?|una|el|los|las|necesito|piso|combien|pour|les|des|une|dans|est|faut|il|boîtes?|mètres|wie|viele?|wieviele?|für|und|ein|eine|ich|brauche|pakete?|zimmer|quanti|quante|per|il|stanza|scatole|ho|bisogno|quantas?|preciso|caixas?|uma|você|hoeveel|voor|een|het|nodig|ik|dozen|kamer)(?![\p{L}'’])/giu;
const ENGLISH =
  /(?<![\p{L}'’])(?:the|a|an|is|are|do|does|i|my|how|many|much|what|which|of|and|in|for|to|it|if|can|should|with|on|boxes|room|floor|planks?)(?![\p{L}'’])/giu;

/** Whether a text is mostly in the words of another language: at least two of them, and more than English ones. */
function isForeign(text: string): boolean {
  const foreign = new Set((text.match(FOREIGN) ?? []).map((found) => found.toLowerCase())).size;
  return foreign >= 2 && foreign > (text.match(ENGLISH) ?? []).length;
}

const OTHERS = ['other-trade', 'chat'];

/** The entry on how the work of a command is done, for someone who asks that and gives no size. */
export const HOW_TO: Readonly<Record<string, string>> = {
  'prep patch': 'patch-how',
  'prep squeaks': 'squeak-how',
  'prep level': 'leveler-on-wood',
  'prep moisture': 'moisture-test',
  'prep tearout': 'carpet-removal',
  'trim edges': 'which-transition',
  'trim reset': 'baseboard-remove',
};

const OWNED =
  /(?<![a-z])(?:enough|sufficient|have|has|had|got|bought|buy|order(?:ed)?|said|says|told|short|left|over|extra|too|cover|will|would|do|leftovers?)(?![a-z])/;
/** What is bought goes back. */
const RETURNED =
  /\b(?:can|could|may|should|do|will|would|how)\b.*\b(?:return|refund|take .{1,20} back|bring .{1,20} back|go back)\b/i;
const TRIM = /(?<![a-z])(?:trim|base ?boards?|mou?lding|skirting|quarter[- ]?round|shoe|sticks?)(?![a-z])/;

const LAST_ROW = /\b(?:last|final) (?:row|strip)\b/i;

function howTo(text: string, command: string): string | undefined {
  if (command === 'floor layout' && LAST_ROW.test(text)) return 'last-row';
  const way = /how (?:do|to|can|should|would)|(?:best|right) way|what (?:do|should|can) (?:i|we) do/i.test(text);
  // Without a figure they want to know whether and how, unless they ask for an amount.
  const whether = !/\d|how (?:much|many|long|heavy)/i.test(text);
  return way || whether ? HOW_TO[command] : undefined;
}

const DAMAGE = /patch|hole|rot|soft|bad|damage|cut|squeak|creak|dip|low|high|level|read|meter|lift|carry|weigh/;

/** Figures that may be a size: then the calculation is wanted, and what it lacks is asked for. */
const SIZED = /\d\s*(?:x|×|by)\s*\d|\d\s*(?:sq|sf|m2|m²)/i;

export function isQuestion(text: string): boolean {
  return /\?|^(?:how|what|which|should|can|is|do|does|are|will|why|when|where|any)\b|[,;.] (?:so |and )?(?:how|what|which|should|can|is|do|does|are|will|where|why|when)\b|\b(?:how do|what do|should i|can i|do i)\b/i.test(
    text.trim(),
  );
}

function namedEntry(text: string, heard: Extract<Heard, { kind: 'command' }>): string | undefined {
  return SIZED.test(text) ? undefined : (likelyEntry(heard) ?? howTo(text, heard.name));
}

/** The likeliest entry that computes something from the figures in a text. */
function workedEntry(text: string, { entries }: Heard): string | undefined {
  if (!/\d/.test(text)) return undefined;
  return entries.find(({ id }) => workedFrom(id, text, saysMetric(text)) !== undefined)?.id;
}

/** The likeliest entry, instead of a command that would have to ask for everything. */
function likelyEntry(heard: Heard): string | undefined {
  const [entry] = heard.entries;
  return entry && entry.score >= heard.score * NEXT_BEST ? entry.id : undefined;
}

/** How much less likely an entry may be than the command it replaces. */
const NEXT_BEST = 0.12;

/** An entry along with the message, whose figures it may use, and with two alternatives if it isn't certain. */
function entryAnswer(text: string, id: string, heard: Heard, commands: readonly Command[]): Parsed | undefined {
  const near = heard.entries.filter((one) => one.id !== id && one.score >= WORTH_OFFERING).map((one) => one.id);
  const options = new Map([['entry', id]]);
  const also = alsoAsked(text, id);
  if (also !== undefined) options.set('also', also);
  else if (near.length > 0 && heard.score < SURE_SCORE) options.set('near', near.slice(0, 2).join(' '));
  if (/\d/.test(text) || worksWithWords(id))
    options.set(
      'said',
      text
        .replace(/[:;\n]+/g, ' ')
        .slice(0, MOST_SAID)
        .trim(),
    );
  return of('handbook', commands, options);
}

const MOST_SAID = 300;
/** Less likely entries are noise that only makes an answer longer. */
const WORTH_OFFERING = 0.0005;

const PARTS = /[?.;,]\s+|(?<!\s)\s+(?:and|also|plus)\s+/i;
const ASKS = /^(?:how|what|which|where|when|who|why|should|can|may|is|are|do|does|will)\b/i;
const FEWEST_WORDS = 4;
/** Below it, the rest of a sentence is too little to say what it asks. */
const SURE_PART = 0.8;

/** The entry for a second question in the same message: “how long does it take and what does it cost”. */
function alsoAsked(text: string, id: string): string | undefined {
  const parts = text.split(PARTS).filter((part) => ASKS.test(part) && part.split(/\s+/).length >= FEWEST_WORDS);
  if (parts.length < 2 || parts.length > MOST_PARTS) return undefined;
  const found = parts.flatMap((part) => {
    const heard = hear(part);
    if (heard.kind === 'command') return heard.score < LIKELY_SCORE ? [] : (OF_COMMAND[heard.name] ?? []);
    return heard.kind === 'entry' && heard.score >= SURE_PART ? heard.id : [];
  });
  return found.findLast((entry) => entry !== id);
}

const MOST_PARTS = 4;

/** The entry on what a command computes, for a question with nothing to compute from. */
const OF_COMMAND: Readonly<Record<string, string>> = {
  'floor estimate': 'material-cost',
  'floor planks': 'extra-percent',
  'prep moisture': 'moisture-test',
  'prep tearout': 'carpet-removal',
};

function framed(
  { command: name, optionTexts, missing, assumed }: SentenceFrame,
  commands: readonly Command[],
): Parsed | undefined {
  const command = commands.find((one) => fullName(one) === name);
  if (!command) return undefined;
  if (!missing) return { ok: true, command, optionTexts, ...(assumed ? { assumed } : {}) };
  const option =
    missing.option in command.options.shape ? missing.option : (Object.keys(command.options.shape)[0] ?? 'ask');
  const told = new Map(optionTexts);
  return {
    ok: false,
    problems: [{ option, got: '', expected: missing.question }],
    partly: { command, optionTexts: told, assumed: assumed ?? [], missing: [option] },
    about: { command, optionTexts: told },
    open: missing.option,
  };
}

function of(name: string, commands: readonly Command[], optionTexts: ReadonlyMap<string, string>): Parsed | undefined {
  const command = commands.find((one) => fullName(one) === name);
  return command && { ok: true, command, optionTexts };
}

/** One question with the likeliest meanings; never empty. */
function unclear(read: Extract<Parsed, { ok: false }>, heard: Heard, commands: readonly Command[]): Parsed {
  const own: readonly Option[] =
    heard.kind === 'entry' ? [{ entry: heard.id }] : heard.kind === 'command' ? [{ command: heard.name }] : [];
  const choices = [...own, ...heard.others].flatMap((option) => choice(option, commands)).slice(0, 3);
  const [first] = read.problems;
  return {
    ...read,
    problems: [
      {
        option: 'ask',
        got: '',
        expected: choices.length > 0 ? READER.maybe : READER.nothing,
        ...(first.fix === undefined ? {} : { fix: first.fix }),
      },
    ],
    choices: choices.length > 0 ? choices : READER.examples,
  };
}

function choice(option: Option, commands: readonly Command[]): readonly Action[] {
  if ('entry' in option) {
    const entry = entryOf(option.entry);
    return entry ? [{ label: entry.title, ask: `handbook entry: ${entry.id}` }] : [];
  }
  const command = commands.find((one) => fullName(one) === option.command);
  return command ? [{ label: command.summary, ask: `help ${typedName(command)}` }] : [];
}
