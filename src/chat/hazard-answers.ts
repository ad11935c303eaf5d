/** What hazards do to a request: an emergency is answered alone, work is refused, or a line is added to the answer. Suggested lines keep every hazard that was typed. */

import { hazardSources } from '../figures/safety-figures.ts';
import { LEAD_YEARS } from '../figures/tearout-figures.ts';
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

/** A hazard that affects the request; `before` if it was mentioned earlier. */
export interface Bearer extends Sighting {
  readonly before?: true;
}

const NOTHING: Screened = { sightings: [], cleared: [] };

/** The hazards in a line as typed. Imported project data isn't a message and isn't screened. */
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

/** The answer to an emergency, which comes before everything else. Undefined if there is none. */
export function emergencyIn(text: string): Refusal | undefined {
  const [gravest] = screenedLine(text).sightings;
  return gravest?.level === 'emergency' ? emergencyAnswer(gravest) : undefined;
}

export function isEmergency(text: string): boolean {
  return emergencyIn(text) !== undefined;
}

export function isHazard(text: string): boolean {
  return screenedLine(text).sightings.length > 0;
}

/** What to do, whom to call, what ends it, and a line in the language it was written in. */
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

/**
 * Why the request isn't computed; undefined if nothing forbids it. The gravest hazard is explained, the others are
 * quoted.
 */
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

/** The answer to a question about a hazard: what it is, what to do, whom to call. */
export function hazardReply({ hazard, about, words, before }: Bearer): Reply {
  const { headline, text, call } = hazardAnswer(hazard, about);
  const data: HazardResult = { kind: 'hazard', hazard, emergency: false };
  return reply({
    headline,
    lines: [text, `${HAZARD_WORDS.call}: ${call}`],
    blocks: [
      { kind: 'text', text: `${before ? rememberedLine(words) : wroteText(words)} ${text}` },
      { kind: 'facts', facts: [{ label: HAZARD_WORDS.call, value: call }] },
    ],
    sources: hazardSources(hazard),
    data,
  });
}

/** Asking how to take up a floor is first of all a question about these. */
const IN_OLD_MATERIALS = ['asbestos', 'lead', 'silica'];

/** Lines in the way, which entries warn of as `hidden-lines`. */
const FOUND_LIVE = ['electric', 'plumbing', 'heated-floor'];

function foundLive(sightings: readonly Sighting[]): boolean {
  return sightings.some(({ hazard, level }) => level === 'stop' && FOUND_LIVE.includes(hazard));
}

/** Work on it that was done; “may it be sanded” asks about work to come. */
const DONE =
  /(?<!\b(?:be|get|been|gets|being) )\b(?:sanded|scraped|chipped|ground|drilled|vacuumed|swept|smashed|chiseled|sawed|broke|buffed)\b/i;

/** What is asked about a hazard, from the whole text where its own words don't say. */
function asAsked(sighting: Sighting, text: string): Sighting {
  const { hazard, about } = sighting;
  if (hazard !== 'asbestos' && hazard !== 'lead') return sighting;
  const open = about === undefined || about === 'asked';
  if (hazard === 'asbestos' && (open || about === 'remove') && DONE.test(text))
    return { ...sighting, about: 'disturbed' };
  if (!open) return sighting;
  if (tells(text, 'DISTURB')) return { ...sighting, about: 'remove' };
  return hazard === 'asbestos' && tells(text, 'COVERS') ? { ...sighting, about: 'cover' } : sighting;
}

const PAINTED =
  /(?<![a-z])(?:trim|base ?boards?|skirting|paint(?:ed)?|windows?|sills?|doors?|casings?|walls?)(?![a-z])/i;
const HOUSE_YEAR = /(?<![\d.,$])1[89]\d\d(?![\d.,]*\d)/;

/** Dust of an old floor may hold lead as well as asbestos: its varnish does, and the paint beside it. */
function leadToo({ hazard, about }: Sighting, text: string): readonly string[] {
  if (hazard !== 'asbestos' || about !== 'disturbed') return [];
  const year = Number(HOUSE_YEAR.exec(text)?.[0]);
  const old = year < LEAD_YEARS.us.value || (Number.isNaN(year) && PAINTED.test(text));
  return old ? [HAZARD_WORDS.leadToo] : [];
}

/**
 * Adds to an entry about the hazard what was written, whom to call, and the hazard's data. Whoever has disturbed
 * it reads first what to do now.
 */
export async function aboutHazard(
  given: Outcome,
  command: string | undefined,
  { sightings: [found] }: Screened,
  text: string,
): Promise<Outcome> {
  if (!found || command !== 'handbook' || !('headline' in given)) return given;
  const asked = asAsked(found, text);
  const own = hazardReply(asked);
  const { call } = hazardAnswer(asked.hazard, asked.about);
  const id = 'entry' in given.data ? String(given.data.entry) : '';
  const { entryOf } = await import('../handbook/all-entries.ts');
  const disturbed = asked.about === 'disturbed' && !/disturbed/.test(id);
  // Cutting, nailing or screwing near what is live waits until it is safe.
  const leads = disturbed || (foundLive([found]) && entryOf(id)?.topic !== 'safety');
  return {
    ...given,
    ...(leads && { headline: own.headline }),
    lines: leads
      ? [...leadToo(asked, text), ...(own.lines ?? [])]
      : [...(given.lines ?? []).slice(0, 3), `${HAZARD_WORDS.call}: ${call}`],
    blocks: [
      ...own.blocks,
      ...(leads ? [{ kind: 'text' as const, text: [given.headline, ...(given.lines ?? [])].join(' ') }] : []),
      ...given.blocks,
    ],
    sources: [...given.sources, ...own.sources],
    data: own.data,
  };
}

/**
 * Whether the answer appears along with what is known of hazards: not small talk, and not entries about other things.
 */
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
  const { entryOf } = await import('../handbook/all-entries.ts');
  const { topic = '', cautions = [] } = entryOf(optionTexts.get('entry') ?? '') ?? {};
  // Something live was found: an entry that doesn't warn of it is about another thing.
  if (foundLive(sightings) && topic !== 'safety' && !cautions.includes('hidden-lines')) return false;
  if (!sightings.some(({ hazard }) => IN_OLD_MATERIALS.includes(hazard))) return true;
  const own = ['old materials', 'safety'].includes(topic);
  return own && sightings.some(({ hazard }) => hazard === cautions[0]);
}

/** Confirms a fact that clears a hazard when nothing else was asked. */
function clearedReply({ words }: Cleared): Reply {
  return reply({
    headline: HAZARD_WORDS.cleared(words),
    blocks: [{ kind: 'text', text: HAZARD_WORDS.clearedMore }],
    data: { kind: 'none' },
  });
}

/** Asks back when a misspelled word may or may not be a hazard. */
function doubtProblem(text: string, { typed, hazard, other }: NonNullable<Sighting['or']>): Problems {
  const expected = HAZARD_WORDS.either(typed, hazard, other);
  const problem: Problem = { option: 'ask', got: typed, expected, fix: text.replace(typed, hazard).slice(0, 1000) };
  return { problems: [problem] };
}

/** Adds a line for each hazard that affects the answer, and keeps the typed hazards in its suggestions. */
export function withHazardsSaid(
  outcome: Outcome,
  bearers: readonly Bearer[],
  command: string | undefined,
  typed: readonly Sighting[],
): Outcome {
  const said = bearers.filter(({ hazard, level, before }) =>
    // An entry about the hazard already says it.
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

/** A reply whose suggested lines mention every hazard that was typed. */
export function keepingAll(reply: Reply, typed: readonly Sighting[]): Reply {
  if (typed.length === 0) return reply;
  return { ...reply, actions: reply.actions.map((action) => ({ ...action, ask: keeping(action.ask, typed) })) };
}

/** Adds the hazards a line lacks through the `hazard` option. */
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

/** The user's own words if they are short and screen the same on their own. */
function inWords({ hazard, words }: Sighting): string {
  const own = words
    .replace(/[^\p{L}\p{N}'’ ]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const same = own.length <= 60 && screen(`${HAZARD_OPTION}: ${own}`).sightings.some((one) => one.hazard === hazard);
  return same ? own : PLAINEST[hazard];
}

interface Judged {
  readonly text: string;
  readonly said: Screened;
  /** Everything that affects it, typed now or mentioned earlier. */
  readonly bearers: readonly Bearer[];
  /** The full name of the command to compute; undefined if there is none. */
  readonly command: string | undefined;
  /** Whether it lacks something and can't be computed as it is. */
  readonly lacks: boolean;
}

/** What a later question asks about a hazard mentioned before. */
function aboutIn({ hazard, about }: Sighting, text: string): Pick<Sighting, 'about'> {
  if (hazard !== 'asbestos' || about === 'disturbed') return {};
  return { about: tells(text, 'DISTURB') ? 'remove' : 'cover' };
}

const WET = ['moisture', 'water', 'mold'];
/** Whether it may be covered now. */
const LAYS_IT =
  /^(?:(?:so|and|ok|but|then),? ){0,3}(?:can|could|may|should|when can|is it (?:ok|okay|fine|safe) to|ok to) (?:i |we )?(?:just |still |now |already |start |go ahead and ){0,2}(?:lay|laying|install|installing|cover|put|close|go over|floor)(?: (?:it|over|the|floor|flooring|planks?|this|that|down|up|tomorrow|now|today|tonight|anyway|already|soon)){0,6}[?.!]*$/i;

/** What is answered instead of the request because of its hazards; undefined if it is computed. */
export function answeredInstead({ text, said, bearers, command, lacks }: Judged): Outcome | undefined {
  const [first] = said.sightings;
  if (first?.or) return doubtProblem(text, first.or);
  const refused = command === undefined ? undefined : refusedBy(bearers, command);
  if (refused) return refused;
  const wet = bearers.find(({ hazard, before }) => before && WET.includes(hazard));
  if (wet && LAYS_IT.test(text.trim()) && (command === undefined || command === 'handbook')) return hazardReply(wet);
  if (!lacks) return undefined;
  if (first && command === undefined) return hazardReply(asAsked(first, text));
  if (command !== undefined) return undefined;
  const [fact] = said.cleared;
  if (fact && !first) return clearedReply(fact);
  const [gravest] = bearers.filter(({ before }) => before).sort(byGravity);
  if (!gravest) return undefined;
  if (gravest.level === 'emergency') return emergencyAnswer(gravest);
  // Questions about the work are answered from what was said before; anything else is asked back.
  return tells(text, 'JOB_WORDS') ? hazardReply({ ...gravest, ...aboutIn(gravest, text) }) : undefined;
}

export function clearedNotes(facts: readonly Cleared[]): readonly string[] {
  return facts.flatMap(({ words, tested }) =>
    tested && !/^tested:\s*clear$/i.test(words) ? [clearedNote(words)] : [],
  );
}
