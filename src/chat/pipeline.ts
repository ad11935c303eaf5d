/** The one pipeline from an ask to its answers, and the one place where faults are caught. */

import type { ProjectAccess } from '../accounts/account-access.ts';
import { accountKey } from '../accounts/asker.ts';
import { openAccess } from '../accounts/project-access.ts';
import type { Screened, Sighting } from '../hazards/hazard.ts';
import { screen, screenHere } from '../hazards/screen.ts';
import { askLine, fullName, isCalculating } from '../input/command-shape.ts';
import { examplePlank, isExamplePlank } from '../input/parse-plank.ts';
import type { Preferences } from '../input/reading.ts';
import type { Partly } from '../language/old/plain.ts';
import { contentOf, type Project } from '../project/project.ts';
import type { Block, Problem, Refusal } from '../reply/reply.ts';
import { Outage, type Store } from '../storage/types.ts';
import { askTooLong, notSearchedFurther, notWorkedOut, readingStopped } from '../text/chat-text.ts';
import { exampleTaken } from '../text/language-text.ts';
import { notForKeeping } from '../text/project-problems-text.ts';
import { readAsNote } from '../text/project-text.ts';
import { eachOnBehalfOf, Unworked } from '../workers/queue.ts';
import { readInTime } from '../workers/time-limits.ts';
import { filled } from './autofill.ts';
import { sectionNamed } from './brief.ts';
import { type Catalog, loadCommands } from './catalog.ts';
import {
  type AnsweredRequest,
  type Command,
  type CommandTexts,
  type Context,
  type OptionsRead,
  type Outcome,
  type Problems,
  type ReplyWithForm,
  readOptions,
} from './command.ts';
import { figuresTyped, IMPORT, LONGEST_ASK, LONGEST_IMPORT, type Parsed, type ParsedCommand } from './command-line.ts';
import {
  type ConversationMemory,
  goingOn,
  recalled,
  rememberAnswer,
  rememberQuestion,
  sectionMeant,
} from './conversation.ts';
import type { TextParsed } from './grammar.ts';
import {
  aboutHazard,
  answeredInstead,
  type Bearer,
  clearedNotes,
  emergencyAnswer,
  hazardReply,
  keepingAll,
  refusedBy,
  screenedLine,
  standsBeside,
  withHazardsSaid,
} from './hazard-answers.ts';
import { asSighting, bearingOn, cleared, type HazardsBefore, hazardsBefore, rememberHazards } from './hazard-memory.ts';
import { offering, remembered } from './keep-offer.ts';
import { notifications } from './notifications.ts';
import type { Ports, Request } from './ports.ts';
import { allowedToAsk } from './rate-limit.ts';
import { faultReference, withRequestId } from './request-id.ts';
import { AskSeen } from './request-metrics.ts';
import { Reached, readOnce, Suggestions, type Tried, textsIn, unwritten } from './suggestions.ts';
import { holdingsOf, noState, scopeOf, type UserState } from './user-state.ts';

// A command's answers as far as they could be worked out: what came, stands, and says why no more came.

type Run = Outcome | Promise<Outcome> | AsyncIterable<Outcome>;

/** Each outcome of a run; where it ends with Unworked, the last one with a word on it, or a Problem that has the line again. Throws what else the run throws. */
async function* asFarAsWorked(run: () => Run, line: string): AsyncGenerator<Outcome> {
  let last: Outcome | undefined;
  try {
    const outcome = await run();
    if (!(Symbol.asyncIterator in outcome)) {
      yield outcome;
      return;
    }
    for await (const one of outcome) {
      last = one;
      yield one;
    }
  } catch (cause) {
    if (!(cause instanceof Unworked)) throw cause;
    if (last && 'headline' in last) yield { ...last, assumed: [...last.assumed, notSearchedFurther(cause.why)] };
    else if (cause.why === 'unread') yield { problems: [readingStopped(line)] };
    else yield { problems: [notWorkedOut(cause.why, line)], again: true };
  }
}

/** A fault of ours, as the asker learns of it. */
interface Fault {
  readonly reference: string;
  /** The store did not answer: nothing was saved, and asking again may do. */
  readonly outage: boolean;
}

export type Answer = ReplyWithForm | Problems | Refusal | Fault;

/** Answers an ask: each answer replaces the one before. Never throws; a fault is told to the port and to the asker. */
export function answer(request: Request, catalog: Catalog, ports: Ports): AsyncGenerator<Answer> {
  return withRequestId(answered(request, catalog, ports));
}

async function* answered(request: Request, catalog: Catalog, ports: Ports): AsyncGenerator<Answer> {
  const seen = new AskSeen(request.asker.platform, ports);
  try {
    const stream = outcomes(request, catalog, ports, seen);
    yield* seen.each(eachOnBehalfOf(accountKey(request.asker), stream, (ms) => seen.waited(ms)));
  } catch (cause) {
    if (cause instanceof Unworked && cause.why === 'unread') {
      yield seen.gave({ problems: [readingStopped(request.text)] });
      return;
    }
    const reference = faultReference();
    ports.fault(reference, cause);
    yield seen.gave({ reference, outage: cause instanceof Outage });
  } finally {
    seen.end();
  }
}

async function* outcomes(
  request: Request,
  catalog: Catalog,
  ports: Ports,
  seen: AskSeen,
): AsyncGenerator<Exclude<Answer, Fault>> {
  // Before anything else is looked at: it needs nobody's account, no store and no form.
  const said = screenedLine(request.text);
  const [gravest] = said.sightings;
  const access = openAccess(request.asker, ports);
  if (gravest?.level === 'emergency') {
    yield emergencyAnswer(gravest);
    await keepsHazards(request, said, access, ports);
    return;
  }
  const most = IMPORT.test(request.text) ? LONGEST_IMPORT : LONGEST_ASK;
  if (request.text.length > most) {
    yield gravest ? hazardReply(gravest) : { problems: [askTooLong(request.text.length, most)] };
    return;
  }
  const holdings = await holdingsOf(access, request, ports);
  const lost = noState(access, holdings);
  if (lost) {
    yield { problems: [lost] };
    return;
  }
  const given = await hazardsBefore(request, holdings.project, ports);
  const hazards = cleared(given, said.cleared);
  const { text, written, given: form } = request;
  const typed = written !== 'message' && !form;
  const sure = typed ? await figuresTyped(text, catalog, holdings.preferences) : undefined;
  const commands = sure ? [sure.command] : await loadCommands(catalog);
  const here: Here = {
    request,
    catalog,
    commands,
    sure,
    ports,
    access,
    holdings,
    hazards,
    answers: new Map(),
    rehearsed: false,
  };
  try {
    yield* judgedOutcomes(here, said, seen);
  } finally {
    await later(ports, () => rememberHazards(request, { ...said, before: given }, holdings.project, access, ports));
  }
}

async function* judgedOutcomes(here: Here, said: Screened, seen: AskSeen): AsyncGenerator<Exclude<Answer, Fault>> {
  const { request, ports, access, holdings } = here;
  const memory = await recalled(request, ports);
  const opened = sectionNamed(request.text) ?? (memory && !here.sure ? await sectionMeant(request.text) : undefined);
  const whole = await wholeAsk(here, request, memory);
  const command = 'problems' in whole ? undefined : whole.command;
  const typed = typedHazards(whole, said);
  const bearers: readonly Bearer[] = [...typed, ...bearersBefore(whole, here)];
  const named =
    'problems' in whole || (await standsBeside(whole, said, bearers)) ? await commandOf(whole, here) : undefined;
  const instead = answeredInstead({
    text: request.text,
    said,
    bearers,
    command: named,
    lacks: named === undefined || 'problems' in whole,
  });
  if (instead) {
    yield withForm(instead, whole);
    return;
  }
  const refused = await allowedToAsk(request, holdings.person, command, ports);
  if (refused || 'problems' in whole) {
    const nothing = { typed: new Map<string, string>(), held: holdings };
    const problems = withHazardsSaid(whole as Problems, bearers, named, typed);
    yield refused ? againOnly(refused, whole) : await suggestionsFor(nothing, here).passed(problems);
    if ('problems' in whole) await later(ports, () => rememberQuestion(request, whole, memory, ports));
    return;
  }
  seen.read(whole.command);
  const requested = { ...whole, assumed: [...whole.assumed, ...clearedNotes(said.cleared)] };
  let notGiven: readonly Block[] | undefined;
  const suggestions = suggestionsFor(whole, here);
  let last: Outcome | undefined;
  for await (const found of outcomesOf(requested, { ...here, holdings: whole.held })) {
    const told = withHazardsSaid(aboutHazard(found, named, said), bearers, named, typed);
    const outcome =
      memory && 'headline' in told ? { ...told, seen: memory.seen, ...(opened ? { opens: opened } : {}) } : told;
    last = outcome;
    if (!access || access.guest || !('headline' in outcome)) yield withForm(await suggestions.passed(outcome), whole);
    else {
      notGiven ??= await notifications(whole.command, holdings, access, ports);
      const offered = keepingAll(offering(outcome, whole, holdings, access.now()), typed);
      const shown = await suggestions.passed({ ...offered, blocks: [...notGiven, ...offered.blocks] });
      yield withForm(shown, whole);
    }
  }
  const answered = last;
  if (answered) await later(ports, () => rememberAnswer(request, whole, answered, memory, ports));
}

/** What an ask happens among. */
interface Here {
  readonly request: Request;
  readonly catalog: Catalog;
  /** All of them, or the one of a line that is sure. */
  readonly commands: readonly Command[];
  /** The request taken apart where it cannot be a sentence. */
  readonly sure: ParsedCommand | undefined;
  readonly ports: Ports;
  readonly access: ProjectAccess | undefined;
  readonly holdings: UserState;
  /** What was told of hazards before, and not cleared since. */
  readonly hazards: HazardsBefore;
  /** Answers to lines that this request asked for in its turn, by `answerKey`. */
  readonly answers: Map<string, AnsweredRequest>;
  /** Run for its problems alone: nothing is kept, and it ends where what takes long would begin. */
  readonly rehearsed: boolean;
}

/** Options that tell what lies there: a pipe’s mere mention counts in them. */
const LAYERS = ['floor', 'below', 'found'];

/** What was typed of hazards, in the line itself and in what a project fills in. */
function typedHazards(whole: Whole | Problems, said: Screened): readonly Sighting[] {
  if ('problems' in whole) return said.sightings;
  const known = new Set([...said.sightings, ...said.cleared].map(({ hazard }) => hazard));
  const layers = LAYERS.flatMap((option) => {
    const given = whole.optionTexts.get(option);
    // Whether a layer may hold asbestos hangs on its year, which the command judges itself.
    return given === undefined ? [] : screenHere(given).sightings.filter(({ hazard }) => hazard !== 'asbestos');
  });
  const filled = [...screen(whole.line).sightings, ...layers].filter(({ hazard }) => !known.has(hazard));
  return [...said.sightings, ...filled];
}

/** What was told before and bears on an ask: of the rooms that it is about. */
function bearersBefore(whole: Whole | Problems, { hazards, holdings, request }: Here): readonly Bearer[] {
  const rooms = holdings.project?.rooms.map(({ name }) => name) ?? [];
  const text = 'problems' in whole ? request.text : whole.line;
  return bearingOn(hazards, text, rooms).map((one) => ({ ...asSighting(one), before: true }));
}

const GENERAL = ['safety', 'sources', 'help'];

/** Two sides. */
const SIZE = /\d ?['″"]? ?(?:ft|feet|in|m)? ?(?:x|×|by) ?\d/i;

/** The command that an ask is worked out by: where it cannot be as it is, the one it begins with, or the sum that its sentence tells of. */
async function commandOf(whole: Whole | Problems, { request, commands, sure }: Here): Promise<string | undefined> {
  const known = sure ?? request.given;
  if (known) return fullName(known.command);
  const { commandTyped } = await import('./grammar.ts');
  const typed = request.written === 'message' ? undefined : commandTyped(request.text, commands);
  // A question in words that is read as one for cautions in general is answered as it was asked.
  if (!('problems' in whole))
    return typed || !GENERAL.includes(whole.command.name) ? fullName(whole.command) : undefined;
  if (typed) return fullName(typed);
  const sum = whole.form?.command;
  // A question that tells no size asks for no sum.
  const sized = sum !== undefined && /^(?:floor|trim) /.test(sum) ? /\d/ : SIZE;
  return sized.test(request.text) ? sum : undefined;
}

/** Keeps what an emergency told, once it is answered. */
async function keepsHazards(
  request: Request,
  said: Screened,
  access: ProjectAccess | undefined,
  ports: Ports,
): Promise<void> {
  if (!access) return;
  await later(ports, async () => {
    try {
      const { project } = await holdingsOf(access, request, ports);
      const before = await hazardsBefore(request, project, ports);
      await rememberHazards(request, { ...said, before }, project, access, ports);
    } catch (cause) {
      if (!(cause instanceof Outage)) ports.fault(faultReference(), cause);
    }
  });
}

/** Work that the answer need not wait for. */
async function later({ later: does }: Ports, work: () => Promise<unknown>): Promise<void> {
  if (does) does(work);
  else await work();
}

/** An ask with everything told: by its asker, and from what they keep. */
interface Whole {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
  /** What the asker told themselves. */
  readonly typed: ReadonlyMap<string, string>;
  /** Its options, where they were read in the time that filling them left. */
  readonly options: OptionsRead | undefined;
  readonly assumed: readonly string[];
  readonly line: string;
  /** What it is answered from: of what the asker keeps, as much as its command was shared. */
  readonly held: UserState;
}

/** A request taken apart, unless it came in parts; a few words go on from the last request. */
async function parsedOf(
  here: Here,
  { text, written, given }: Pick<Request, 'text' | 'written' | 'given'>,
  memory: ConversationMemory | undefined,
): Promise<TextParsed> {
  if (given) return { said: undefined, parsed: { ok: true, ...given } };
  if (here.sure) return { said: undefined, parsed: here.sure };
  const next = memory && (await goingOn(text, memory, here));
  return next ?? (await import('./grammar.ts')).parseText(here, text, written);
}

async function wholeAsk(
  here: Here,
  request: Pick<Request, 'text' | 'written' | 'given'>,
  memory?: ConversationMemory,
): Promise<Whole | Problems> {
  const { text } = request;
  const { commands, holdings, access } = here;
  const { said, parsed } = await parsedOf(here, request, memory);
  const known: Lacking | undefined = parsed.ok ? { ...parsed, missing: [] } : parsed.partly;
  if (!known) return unread(parsed, commands);
  const { command } = known;
  const scope = await scopeOf(command, text, holdings, access);
  if ('problem' in scope) return { problems: [scope.problem] };
  const fill = () => filled(command, known.optionTexts, scope.held, commands, holdings.preferences);
  // Each limit of time costs a thread: both are read within one where they can be.
  const { optionTexts, notes, problem, options } = readInTime<ReturnType<typeof fill> & Pick<Whole, 'options'>>(
    () => {
      const filling = fill();
      return { ...filling, options: readOptions(command, filling.optionTexts, scope.held.preferences) };
    },
    () => ({ ...readInTime(fill), options: undefined }),
  );
  // A sentence that lacks something is still an ask where the project tells it; told a part, what is left is asked for.
  if (known.missing.length > 0 && !known.missing.some((option) => optionTexts.has(option)))
    return unread(parsed, commands);
  if (problem) return { problems: [problem] };
  // Where nothing but the group was left out, what was read is what was typed.
  const read = said === undefined || said === `project ${text.trim()}` ? [] : [readAsNote(said)];
  const unreadable = isCalculating(command) ? holdings.notes : [];
  const assumed = [...read, ...(known.assumed ?? []), ...notes, ...unreadable];
  return {
    command,
    optionTexts,
    typed: known.optionTexts,
    options,
    assumed,
    line: askLine(command, optionTexts),
    held: scope.held,
  };
}

/** Takes saved requests apart. A line that is sure reads no other, so that nothing is loaded for it. */
async function lineReader({ commands, holdings, sure }: Here): Promise<Context['parse']> {
  if (sure) return () => undefined;
  const { parseLine } = await import('./grammar.ts');
  return (line) => {
    const parsed = parseLine(line, commands, holdings.preferences);
    return parsed.ok ? parsed : undefined;
  };
}

async function* outcomesOf(whole: Whole, here: Here): AsyncGenerator<Outcome> {
  const { command, optionTexts } = whole;
  const { request, commands, ports, access, holdings } = here;
  const options = whole.options ?? readOptions(command, optionTexts, holdings.preferences);
  if (!options.ok) {
    yield mendable(options, whole);
    return;
  }
  const parse = await lineReader(here);
  const context: Context = {
    asker: request.asker,
    preferences: holdings.preferences,
    commands,
    assumed: [...whole.assumed, ...options.assumed],
    optionTexts,
    access,
    now: () => ports.now?.() ?? Date.now(),
    address: ports.address?.(),
    ask: (line, project) => requestedFor(line, project, here),
    parse,
    begin: () => {
      if (here.rehearsed) throw new Reached('all that was typed goes together');
    },
    again: (changes) => askLine(command, new Map([...optionTexts, ...Object.entries(changes)])),
    alike: (name) => {
      const other = commands.find((one) => one.name === name);
      if (!other) throw new Error(`no command “${name}”`);
      return askLine(other, new Map([...optionTexts].filter(([option]) => option in other.options.shape)));
    },
  };
  let last: Outcome | undefined;
  for await (const one of asFarAsWorked(() => command.run(options.values, context), whole.line)) {
    last = withExample(mendable(one, whole), optionTexts, holdings.preferences);
    yield last;
  }
  if (!access || access.guest || !last || !('headline' in last)) return;
  const shown = last;
  await later(ports, () => remembered(whole, shown, access, ports));
}

/** The last answer to a line that a command asks for; where it is only tried, one that is known already, or the problems of a new one. */
async function requestedFor(line: string, project: Project | undefined, here: Here): Promise<AnsweredRequest> {
  if (project) return requested(line, { ...here, holdings: { ...here.holdings, project } });
  const key = answerKey(line, here.holdings);
  const known = here.rehearsed ? here.answers.get(key) : undefined;
  const answer = known ?? (await requested(line, here));
  here.answers.set(key, answer);
  return answer;
}

function answerKey(line: string, { project }: UserState): string {
  return [project?.id, project?.count, line].join(' ');
}

/** The gate for what a request is answered with. */
function suggestionsFor(
  { typed, held }: { readonly typed: ReadonlyMap<string, string>; readonly held: UserState },
  here: Here,
): Suggestions {
  let reads: Store | undefined;
  const { request, ports } = here;
  return new Suggestions({
    text: request.text,
    typed,
    own: () => ownTexts(held, here),
    tries: (line) => {
      reads ??= ports.store && readOnce(ports.store);
      return tried(line, reads, here);
    },
  });
}

/** A line as it is read, where it would be answered; a refusal; undefined where it has problems. Never rejects. */
async function tried(line: string, reads: Store | undefined, here: Here): Promise<Tried | Refusal | undefined> {
  const { request } = here;
  const { store: _store, later: _later, requested: _requested, allowed: _allowed, ...rest } = here.ports;
  const ports: Ports = { ...rest, ...(reads ? { store: unwritten(reads) } : {}), fault: () => undefined };
  let whole: Whole | Problems | undefined;
  try {
    const access = openAccess(request.asker, ports);
    const holdings = await holdingsOf(access, request, ports);
    const commands = await loadCommands(here.catalog);
    const there: Here = { ...here, commands, sure: undefined, ports, access, holdings, rehearsed: true };
    whole = await wholeAsk(there, { text: line });
    if ('problems' in whole) return undefined;
    const refused = refusedBy([...screen(line).sightings, ...bearersBefore(whole, there)], fullName(whole.command));
    if (refused) return refused;
    for await (const outcome of outcomesOf(whole, { ...there, holdings: whole.held })) {
      if ('problems' in outcome) return undefined;
      return 'why' in outcome ? outcome : whole;
    }
  } catch (cause) {
    if (cause instanceof Reached && whole && 'command' in whole) return whole;
    // The store tells of its own outages.
    if (!(cause instanceof Outage)) here.ports.fault(faultReference(), cause);
  }
  return undefined;
}

/** What stands in the asker's project and settings, as they typed it, and what their projects are called. Never rejects. */
async function ownTexts({ project, settings }: UserState, { access }: Here): Promise<readonly string[]> {
  const mine = (await access?.mine().catch(() => [])) ?? [];
  const names = mine.map(({ name }) => name);
  return [...textsIn(project && contentOf(project)), ...textsIn(settings?.standards), ...names];
}

/** A request to be made again later: the line itself, where it can be read. */
function againOnly({ problems: [problem, ...more], ...rest }: Problems, whole: Whole | Problems): Problems {
  return 'problems' in whole
    ? { ...rest, problems: [{ ...problem, fix: undefined }, ...more] }
    : { ...rest, problems: [problem, ...more] };
}

/** The last answer to a line asked on the asker's behalf: never a command that changes what they keep. */
async function requested(line: string, given: Here): Promise<AnsweredRequest> {
  const here: Here = { ...given, commands: await loadCommands(given.catalog), sure: undefined };
  const whole = await wholeAsk(here, { text: line });
  if ('problems' in whole) return { outcome: whole, line };
  if (whole.command.group === 'project') return { outcome: { problems: [notForKeeping(line)] }, line };
  const refused = refusedBy(bearersBefore(whole, here), fullName(whole.command));
  if (refused) return { outcome: refused, line: whole.line };
  let outcome: Outcome | undefined;
  for await (const one of outcomesOf(whole, { ...here, access: undefined })) outcome = one;
  if (!outcome) throw new Error(`no answer to “${line}”`);
  return { outcome, line: whole.line };
}

function mendable(outcome: Outcome, given: CommandTexts): Outcome {
  if (!('problems' in outcome)) return outcome;
  const { problems } = outcome;
  const form = { command: fullName(given.command), told: Object.fromEntries(given.optionTexts) };
  const missing = problems.every(({ got }) => got === '') ? problems.map(({ option }) => option) : [];
  return { ...outcome, problems: typeable(problems, given), form, example: exampleLine(given, missing) };
}

/** A reply with what was told, as a form; a request of one option has no other detail to change. */
function withForm(outcome: Outcome, whole: Whole | Problems): ReplyWithForm | Problems | Refusal {
  if (!('headline' in outcome) || 'problems' in whole) return outcome;
  const { command, typed } = whole;
  if (Object.keys(command.options.shape).length < 2) return outcome;
  return { ...outcome, form: { command: fullName(command), told: Object.fromEntries(typed) } };
}

type Lacking = Pick<Partly<Command>, 'command' | 'optionTexts' | 'missing'> & Partial<Partly<Command>>;

/** An answer with a plank of ours says so first, and is no shopping list. */
function withExample(outcome: Outcome, optionTexts: ReadonlyMap<string, string>, preferences: Preferences): Outcome {
  if (!('headline' in outcome) || !isExamplePlank(optionTexts.get('plank') ?? '')) return outcome;
  const { needs: _needs, ...reply } = outcome;
  const example = exampleTaken(examplePlank(preferences));
  // What follows on it would be worked out with it too, and its buttons would not say so.
  return { ...reply, example, assumed: [example, ...reply.assumed], actions: [] };
}

/** The same request with a plank of ours, for somebody who has told all but the plank. */
function exampleLine({ command, optionTexts }: CommandTexts, missing: readonly string[]): string | undefined {
  const [only, ...more] = missing;
  if (only !== 'plank' || more.length > 0 || !isCalculating(command)) return undefined;
  return askLine(command, inOrder(command, optionTexts, { option: 'plank', fix: 'example' }));
}

/** Problems of a line, with the form of the request as far as it was read. */
async function unread(parsed: Parsed, commands: readonly Command[]): Promise<Problems> {
  if (parsed.ok) throw new Error('a line that was read lacks nothing');
  const { problems, about, open, choices } = parsed;
  const [{ fix }] = problems;
  const more = { ...(open === undefined ? {} : { open }), ...(choices ? { choices } : {}) };
  const { parseLine } = await import('./grammar.ts');
  const mended = about || fix === undefined ? undefined : parseLine(fix, commands);
  const read = about ?? (mended?.ok ? mended : undefined);
  if (!read) return { problems, ...more };
  const example = parsed.partly && exampleLine(parsed.partly, parsed.partly.missing);
  return {
    problems,
    form: { command: fullName(read.command), told: Object.fromEntries(read.optionTexts) },
    example,
    ...more,
  };
}

/** Problems whose fix is the whole request, mended in every option, so that it can be typed as it is; none where one cannot be mended. */
function typeable(
  [first, ...rest]: Problems['problems'],
  { command, optionTexts }: CommandTexts,
): Problems['problems'] {
  const mended = new Map(optionTexts);
  const ofOptions = [first, ...rest].filter(({ option }) => option !== 'ask');
  const hopeless = ofOptions.some(({ fix }) => fix === undefined);
  for (const { option, fix = '' } of ofOptions.toReversed()) mended.set(option, fix);
  const whole = (problem: Problem): Problem => {
    if (problem.option === 'ask') return problem;
    return { ...problem, fix: hopeless ? undefined : askLine(command, inOrder(command, mended, problem)) };
  };
  return [whole(first), ...rest.map(whole)];
}

/** The options in the command's own order, with this problem's mend. */
function inOrder(
  command: Command,
  mended: ReadonlyMap<string, string>,
  { option, fix = '' }: Pick<Problem, 'option' | 'fix'>,
): Map<string, string> {
  const all = new Map([...mended, [option, fix]]);
  const names = [...new Set([...Object.keys(command.options.shape), ...all.keys()])];
  return new Map(names.flatMap((name) => [...all].filter(([given]) => given === name)));
}
