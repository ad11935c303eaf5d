/** A sentence by its intent: the command or the handbook entry that it asks for, or one question with choices. */

import { entryOf } from '../handbook/all-entries.ts';
import { fullName, typedName } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import { type SentenceFrame, sentenceFrame } from '../language/frames.ts';
import { type Heard, hear, LIKELY_SCORE, type Option, PROBABLE_SCORE, SURE_SCORE } from '../language/hearing.ts';
import { measured } from '../language/measured.ts';
import type { Action } from '../reply/reply.ts';
import { READER } from '../text/reader-text.ts';
import type { Command } from './command.ts';
import type { Parsed, ParsedCommand } from './command-line.ts';

/** What the old patterns find in many sentences that ask for something more exact. */
const BROAD = ['help', 'safety', 'sources'];

/** Worked out from rooms: without one, the patterns only knew a word. */
const FROM_ROOMS = ['trim list', 'trim finish'];

/** Intents that are worked out from the same sizes as planks and are told apart by their words. */
const OVER_PLANKS = ['floor enough', 'floor area', 'floor estimate'];

/**
 * Takes what the grammar made of a text, and takes its place where the text is a sentence that asks for something else.
 * `typed` is the command that the text begins with. Throws where the model was not built.
 */
export function meant(
  text: string,
  read: Parsed,
  commands: readonly Command[],
  preferences: Preferences,
  typed: Command | undefined,
): Parsed {
  if (text.trim() === '' || (typed && (read.ok || isLine(text, typed)))) return read;
  const heard = hear(text);
  if (read.ok) return instead(text, read, heard, commands, preferences) ?? read;
  // A command that was typed is what was meant, unless the sentence is surely another.
  if (typed && (typed.name === 'tape' || heard.score < PROBABLE_SCORE)) return read;
  return (
    fromPatterns(text, read, heard) ?? fromHeard(text, heard, commands, preferences) ?? unclear(read, heard, commands)
  );
}

/** Work on what lies under a floor, whose patterns take every word about it along. */
const BELOW = ['prep tearout', 'prep patch', 'prep squeaks', 'prep level', 'prep moisture', 'trim finish'];

/** A command that the patterns found with all that it needs, unless the sentence asks the handbook. */
function fromPatterns(text: string, read: Extract<Parsed, { ok: false }>, heard: Heard): Parsed | undefined {
  const { about, problems } = read;
  if (!about || !BELOW.includes(fullName(about.command)) || problems[0].fix === undefined) return undefined;
  const question = /\?|^(?:how do|what|which|should|can|is|do|does|are|will|why)\b/i.test(text.trim());
  if (heard.kind === 'entry' && question && heard.score >= LIKELY_SCORE) return undefined;
  return { ok: true, command: about.command, optionTexts: about.optionTexts };
}

/** Whether a text is options rather than a sentence: a name and a colon, or no more than two words. */
function isLine(text: string, command: Command): boolean {
  const rest = text.trim().slice(typedName(command).length);
  if (command.group === 'project') return true;
  return /[a-z-]:(?:\s|$)/i.test(rest) || rest.trim().split(/\s+/).length <= 3;
}

/** What is answered although the patterns read the sentence as something broader. */
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
  if (heard.kind === 'command' && heard.name === name && name === 'trim list') {
    const frame = sentenceFrame(name, measured(text, preferences), preferences);
    return { ...read, optionTexts: new Map([...(frame?.optionTexts ?? []), ...read.optionTexts]) };
  }
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
  const given = measured(text, preferences);
  if (heard.score < LIKELY_SCORE && given.plank !== undefined) {
    const planks = sentenceFrame('floor planks', given, preferences);
    return planks && framed(planks, commands);
  }
  if (heard.kind === 'talk') {
    const about = ['why', 'more'].includes(heard.about) ? 'nothing-open' : heard.about;
    // What sounds like another trade is looked up first where an entry is nearly as likely.
    const entry = OTHERS.includes(about) && heard.score < PROBABLE_SCORE ? likelyEntry(heard) : undefined;
    if (entry !== undefined) return entryAnswer(text, entry, heard, commands);
    return heard.score >= LIKELY_SCORE ? of('small-talk', commands, new Map([['about', about]])) : undefined;
  }
  if (heard.kind === 'entry') {
    return heard.score < LIKELY_SCORE ? undefined : entryAnswer(text, heard.id, heard, commands);
  }
  if (heard.score < LIKELY_SCORE && Object.keys(given.room ?? given.areas).length === 0) return undefined;
  const own = sentenceFrame(heard.name, given, preferences);
  // A size alone is a room, whatever the words beside it sounded like.
  const guess =
    own?.missing &&
    given.room !== undefined &&
    heard.name.startsWith('prep ') &&
    (heard.score < PROBABLE_SCORE || !DAMAGE.test(given.plain));
  const frame = guess ? sentenceFrame('floor estimate', given, preferences) : own;
  const entry =
    frame?.missing && isQuestion(text) && !SIZED.test(text)
      ? (likelyEntry(heard) ?? howTo(text, heard.name))
      : undefined;
  return entry === undefined ? frame && framed(frame, commands) : entryAnswer(text, entry, heard, commands);
}

const OTHERS = ['other-trade', 'chat'];

/** How the work of a command is done, for somebody who asks that and gives no size. */
const HOW_TO: Readonly<Record<string, string>> = {
  'prep patch': 'patch-how',
  'prep squeaks': 'squeak-how',
  'prep level': 'leveler-on-wood',
  'prep moisture': 'moisture-test',
  'prep tearout': 'carpet-removal',
  'trim edges': 'which-transition',
  'trim reset': 'baseboard-remove',
};

function howTo(text: string, command: string): string | undefined {
  return /how (?:do|to|can|should|would)|(?:best|right) way/i.test(text) ? HOW_TO[command] : undefined;
}

const DAMAGE = /patch|hole|rot|soft|bad|damage|cut|squeak|creak|dip|low|high|level|read|meter|lift|carry|weigh/;

/** Figures that could be the size of something: then the sum is wanted, and what it lacks is asked for. */
const SIZED = /\d\s*(?:x|×|by)\s*\d|\d\s*(?:sq|sf|m2|m²)/i;

function isQuestion(text: string): boolean {
  return /\?|^(?:how|what|which|should|can|is|do|does|are|will|why|when|where|any)\b|\b(?:how do|what do|should i|can i|do i)\b/i.test(
    text.trim(),
  );
}

/** The entry that comes next where a command would have to ask for everything. */
function likelyEntry(heard: Heard): string | undefined {
  const [entry] = heard.entries;
  return entry && entry.score >= heard.score * NEXT_BEST ? entry.id : undefined;
}

/** How much less likely an entry may be than a command that it takes the place of. */
const NEXT_BEST = 0.12;

/** An entry with the message, whose figures it may work with, and with two others where it is not sure. */
function entryAnswer(text: string, id: string, heard: Heard, commands: readonly Command[]): Parsed | undefined {
  const near = heard.entries.filter((one) => one.id !== id).map((one) => one.id);
  const options = new Map([['entry', id]]);
  if (near.length > 0 && heard.score < SURE_SCORE) options.set('near', near.slice(0, 2).join(' '));
  if (/\d/.test(text))
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

/** One question with what may have been meant; never a blank. */
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
