/** What hazards make of an ask: an emergency answered alone, work refused, a line beside an answer, and lines that lose nothing that was typed. */

import { hazardSources } from '../figures/safety-figures.ts';
import { bearing, byGravity, type Cleared, PLAINEST, type Screened, type Sighting } from '../hazards/hazard.ts';
import { screen, tells } from '../hazards/screen.ts';
import { type HazardResult, type Problem, type Refusal, type Reply, reply } from '../reply/reply.ts';
import { emergencyLine, emergencyText } from '../text/emergency-text.ts';
import {
  clearedNote,
  clearsLine,
  HAZARD_WORDS,
  hazardAnswer,
  hazardCaution,
  noteText,
  rememberedLine,
  stopText,
  wroteText,
} from '../text/hazard-text.ts';
import type { CommandTexts, Outcome, Problems } from './command.ts';
import { HAZARD_OPTION, IMPORT } from './command-line.ts';

/** A hazard that bears on an ask; `before` where it was told earlier. */
export interface Bearer extends Sighting {
  readonly before?: true;
}

const NOTHING: Screened = { sightings: [], cleared: [] };

/** The hazards of a line as it was typed. What brings back a person's own data is data, and no message. */
export function screenedLine(text: string): Screened {
  if (IMPORT.test(text) && isJson(text)) return NOTHING;
  return screen(text);
}

function isJson(text: string): boolean {
  const from = text.indexOf('{');
  if (from < 0 || from > 60) return false;
  try {
    return typeof JSON.parse(text.slice(from)) === 'object';
  } catch {
    return false;
  }
}

/** The answer to an emergency that a text tells of: it is given before anything else is looked at. Undefined where there is none. */
export function emergencyIn(text: string): Refusal | undefined {
  const [gravest] = screenedLine(text).sightings;
  return gravest?.level === 'emergency' ? emergencyAnswer(gravest) : undefined;
}

/** Whether a text tells of an emergency. */
export function isEmergency(text: string): boolean {
  return emergencyIn(text) !== undefined;
}

/** Whether a text tells of any hazard. */
export function isHazard(text: string): boolean {
  return screenedLine(text).sightings.length > 0;
}

/** The answer to an emergency: what to do, whom to call, what ends it, and a line in the language it was told in. */
export function emergencyAnswer({ hazard, about, words, language, before }: Bearer): Refusal {
  const { act, call } = emergencyText(hazard, about);
  const said = before ? rememberedLine(words) : wroteText(words);
  const other = emergencyLine(language, hazard, about);
  return {
    why: [`${act} ${said}`, ...(other === undefined ? [] : [other])].join('\n'),
    call: `${call} ${clearsLine(hazard)}`,
    cautions: [],
    data: { kind: 'hazard', hazard, emergency: true },
  };
}

/** Why an ask is not worked out; undefined where nothing forbids it. The gravest speaks, and the others by their words. */
export function refusedBy(bearers: readonly Bearer[], command: string): Refusal | undefined {
  const against = [...bearers]
    .sort(byGravity)
    .filter(({ hazard, level, before }) => bearing(hazard, level, command, before) === 'refuse');
  const [first, ...rest] = against;
  if (!first) return undefined;
  if (first.level === 'emergency') return emergencyAnswer(first);
  const others = rest.filter(({ hazard }) => hazard !== first.hazard);
  const texts = [first, ...others].map((one) => ({ ...stopText(one.hazard), one }));
  return {
    why: texts
      .map(({ why, one }) => `${one.before ? rememberedLine(one.words) : wroteText(one.words)} ${why}`)
      .join(' '),
    call: `${texts.map(({ call }) => call).join('; ')}. ${clearsLine(first.hazard)}`,
    cautions: texts.map(({ one: { hazard } }) => hazardCaution(hazard)),
    data: { kind: 'hazard', hazard: first.hazard, emergency: false },
  };
}

/** A question about a hazard, answered: what it is, what to do, whom to call. */
export function hazardReply({ hazard, about, words, before }: Bearer): Reply {
  const { headline, text, call } = hazardAnswer(hazard, about);
  const data: HazardResult = { kind: 'hazard', hazard, emergency: false };
  return reply({
    headline,
    blocks: [
      { kind: 'text', text: `${before ? rememberedLine(words) : wroteText(words)} ${text}` },
      { kind: 'facts', facts: [{ label: HAZARD_WORDS.call, value: call }] },
    ],
    sources: hazardSources(hazard),
    data,
  });
}

/** An entry about the hazard that was asked about: with what was written, whom to call, and the data of a hazard. */
export function aboutHazard(given: Outcome, command: string | undefined, { sightings: [asked] }: Screened): Outcome {
  if (!asked || command !== 'handbook' || !('headline' in given)) return given;
  const own = hazardReply(asked);
  const { call } = hazardAnswer(asked.hazard, asked.about);
  return {
    ...given,
    lines: [...(given.lines ?? []).slice(0, 3), `${HAZARD_WORDS.call}: ${call}`],
    blocks: [...own.blocks, ...given.blocks],
    sources: [...given.sources, ...own.sources],
    data: own.data,
  };
}

/** Hazards of old materials: asking how to take a floor up is first a question about them. */
const IN_OLD_MATERIALS = ['asbestos', 'lead', 'silica'];

/** Whether an answer stands beside what is known of hazards: small talk doesn't, nor an entry that is about other things. */
export async function standsBeside(
  { command, optionTexts }: CommandTexts,
  { sightings }: Screened,
  bearers: readonly Bearer[],
): Promise<boolean> {
  if (bearers.length === 0) return true;
  const urgent = bearers.some(({ level }) => level === 'emergency');
  if (command.name === 'small-talk') return sightings.length === 0 && !urgent;
  if (command.name !== 'handbook') return true;
  if (urgent) return false;
  if (!sightings.some(({ hazard }) => IN_OLD_MATERIALS.includes(hazard))) return true;
  const { entryOf } = await import('../handbook/all-entries.ts');
  return ['old materials', 'safety'].includes(entryOf(optionTexts.get('entry') ?? '')?.topic ?? '');
}

/** That a fact was taken note of, where nothing else was asked. */
function clearedReply({ words }: Cleared): Reply {
  return reply({
    headline: HAZARD_WORDS.cleared(words),
    blocks: [{ kind: 'text', text: HAZARD_WORDS.clearedMore }],
    data: { kind: 'none' },
  });
}

/** The one question back, where a misspelled word may be a hazard or something else. */
function doubtProblem(text: string, { typed, hazard, other }: NonNullable<Sighting['or']>): Problems {
  const expected = HAZARD_WORDS.either(typed, hazard, other);
  const problem: Problem = { option: 'ask', got: typed, expected, fix: text.replace(typed, hazard).slice(0, 1000) };
  return { problems: [problem] };
}

/** An outcome with a line for each hazard that bears on it, and with suggestions that lose none that was typed. */
export function withHazardsSaid(
  outcome: Outcome,
  bearers: readonly Bearer[],
  command: string | undefined,
  typed: readonly Sighting[],
): Outcome {
  const said = bearers.filter(({ hazard, level, before }) =>
    // What an entry is about stands in it already.
    command === undefined || (command === 'handbook' && !before)
      ? before
      : bearing(hazard, level, command, before) === 'line',
  );
  const lines = [...new Map(said.map((one) => [one.hazard, one])).values()].sort(byGravity);
  if ('headline' in outcome) {
    const notes = lines.map(({ hazard, words, before, about }) => noteText(hazard, words, before, about));
    const blocks = notes.map((text) => ({ kind: 'text' as const, text }));
    const cautions = lines.map(({ hazard }, i) => ({
      topic: `hazard-${hazard}`,
      text: notes[i] ?? '',
      brief: notes[i] ?? '',
    }));
    return keepingAll(
      { ...outcome, blocks: [...blocks, ...outcome.blocks], cautions: [...cautions, ...outcome.cautions] },
      typed,
    );
  }
  if (!('problems' in outcome) || (typed.length === 0 && lines.length === 0)) return outcome;
  const [first, ...rest] = outcome.problems;
  const kept = (problem: Problem): Problem =>
    problem.fix === undefined ? problem : { ...problem, fix: keeping(problem.fix, typed) };
  const [line] = lines;
  const expected = line
    ? `${noteText(line.hazard, line.words, line.before, line.about)} ${first.expected}`
    : first.expected;
  const { example } = outcome;
  return {
    ...outcome,
    problems: [kept({ ...first, expected }), ...rest.map(kept)],
    ...(example === undefined ? {} : { example: keeping(example, typed) }),
  };
}

/** A reply whose next lines tell of every hazard that was typed. */
export function keepingAll(reply: Reply, typed: readonly Sighting[]): Reply {
  if (typed.length === 0) return reply;
  return { ...reply, actions: reply.actions.map((action) => ({ ...action, ask: keeping(action.ask, typed) })) };
}

/** A line to type that tells of every hazard that was typed: what it lacks is told by an option of its own. */
function keeping(line: string, typed: readonly Sighting[]): string {
  const lacks = (given: string): readonly Sighting[] => {
    const known = new Set(screen(given).sightings.map(({ hazard }) => hazard));
    return typed.filter(({ hazard }) => !known.has(hazard));
  };
  const missing = lacks(line);
  if (missing.length === 0) return line;
  const words = missing.map((one) => inWords(one)).join(' and ');
  return `${line}, ${HAZARD_OPTION}: ${words}`;
}

/** A hazard in words that stand in an option: the asker's own where they are short and read the same by themselves. */
function inWords({ hazard, words }: Sighting): string {
  const own = words
    .replace(/[^\p{L}\p{N}'’ ]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const same = own.length <= 60 && screen(`${HAZARD_OPTION}: ${own}`).sightings.some((one) => one.hazard === hazard);
  return same ? own : PLAINEST[hazard];
}

/** What an ask is judged by. */
interface Judged {
  readonly text: string;
  readonly said: Screened;
  /** Everything that bears on it: what was typed, and what was told before. */
  readonly bearers: readonly Bearer[];
  /** The command that is worked out, by its full name; undefined where there is none. */
  readonly command: string | undefined;
  /** Whether it cannot be worked out as it is. */
  readonly lacks: boolean;
}

/** What a later question is about, of a hazard that was told before. */
function aboutIn({ hazard, about }: Sighting, text: string): Pick<Sighting, 'about'> {
  if (hazard !== 'asbestos' || about === 'disturbed') return {};
  return { about: tells(text, 'DISTURB') ? 'remove' : 'cover' };
}

/** What is answered in place of an ask on account of its hazards; undefined where it is worked out. */
export function answeredInstead({ text, said, bearers, command, lacks }: Judged): Outcome | undefined {
  const [first] = said.sightings;
  if (first?.or) return doubtProblem(text, first.or);
  const refused = command === undefined ? undefined : refusedBy(bearers, command);
  if (refused) return refused;
  if (!lacks) return undefined;
  if (first && command === undefined) return hazardReply(first);
  if (command !== undefined) return undefined;
  const [fact] = said.cleared;
  if (fact && !first) return clearedReply(fact);
  const [gravest] = bearers.filter(({ before }) => before).sort(byGravity);
  if (!gravest) return undefined;
  if (gravest.level === 'emergency') return emergencyAnswer(gravest);
  // What is to be done there is answered by what was told of it; anything else is asked back, with a line on it.
  return tells(text, 'JOB_WORDS') ? hazardReply({ ...gravest, ...aboutIn(gravest, text) }) : undefined;
}

/** How facts that clear were taken, for the answer. */
export function clearedNotes(facts: readonly Cleared[]): readonly string[] {
  return facts.flatMap(({ words, tested }) =>
    tested && !/^tested:\s*clear$/i.test(words) ? [clearedNote(words)] : [],
  );
}
