/** The pipeline from a request to its answers, and the one place where faults are caught. */

import type { ProjectAccess } from '../accounts/account-access.ts';
import { openAccess } from '../accounts/project-access.ts';
import { accountKey } from '../accounts/records.ts';
import type { Screened, Sighting } from '../hazards/hazard.ts';
import { screen, screenHere } from '../hazards/screen.ts';
import { askLine, fullName, isCalculating } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import type { Partly } from '../language/sentence.ts';
import { contentOf, type Project } from '../project/project.ts';
import type { Block, Refusal, Reply } from '../reply/reply.ts';
import { Outage, type Store } from '../storage/types.ts';
import { inUnits, withUnits } from '../text/answer-text.ts';
import { askTooLong, notSearchedFurther, notWorkedOut, readingStopped } from '../text/chat-text.ts';
import { notForKeeping, OWN_PROJECT, ownProject } from '../text/project-problems-text.ts';
import { readAsNote } from '../text/project-text.ts';
import { eachOnBehalfOf, Unworked } from '../workers/queue.ts';
import { readInTime } from '../workers/time-limits.ts';
import { filled } from './autofill.ts';
import { focused, saysBox, sectionNamed, withBoxes } from './brief.ts';
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
  unitsOfRequest,
} from './command.ts';
import { figuresTyped, IMPORT, LONGEST_ASK, LONGEST_IMPORT, type Parsed, type ParsedCommand } from './command-line.ts';
import {
  type ConversationMemory,
  recalled,
  rememberAnswer,
  rememberQuestion,
  screenedInHouse,
} from './conversation.ts';
import { inCommandOrder, wholeFixes } from './form.ts';
import { goingOn, questioned, sectionMeant } from './going-on.ts';
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
import { reasonActions, reasonTyped, withExample } from './offers.ts';
import type { Ports, Request } from './ports.ts';
import { allowedToAsk } from './rate-limit.ts';
import { faultReference, withRequestId } from './request-id.ts';
import { AskSeen } from './request-metrics.ts';
import { Reached, readOnce, Suggestions, type Tried, textsIn, unwritten } from './suggestions.ts';
import { holdingsOf, noState, scopeOf, type UserState, usedFor } from './user-state.ts';

type Run = Outcome | Promise<Outcome> | AsyncIterable<Outcome>;

/** Yields each outcome. If the work can't be finished, it yields the last outcome with a note, or a Problem that offers the line again. Other errors pass through. */
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

/** A fault of ours as the user sees it. */
interface Fault {
  readonly reference: string;
  /** The store didn't respond: nothing was saved, and trying again may help. */
  readonly outage: boolean;
}

export type Answer = ReplyWithForm | Problems | Refusal | Fault;

/** Answers a request; each answer replaces the one before. Never throws: a fault is reported to the port and to the user. */
export function answer(request: Request, catalog: Catalog, ports: Ports): AsyncGenerator<Answer> {
  return withRequestId(answered(request, catalog, ports));
}

async function* answered(request: Request, catalog: Catalog, ports: Ports): AsyncGenerator<Answer> {
  const seen = new AskSeen(request, ports);
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
  // Emergencies come first: they need no account, no store and no form.
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
    yield gravest
      ? inUnits(hazardReply(gravest), request.preferences.units)
      : { problems: [askTooLong(request.text.length, most)] };
    return;
  }
  const holdings = await holdingsOf(access, request, ports);
  const lost = noState(access, holdings);
  if (lost) {
    yield { problems: [lost] };
    return;
  }
  const used = usedFor(request, holdings);
  const given = await hazardsBefore(request, used.project, ports);
  const hazards = cleared(given, said.cleared);
  const { text, written, given: form } = request;
  const typed = written !== 'message' && !form;
  const sure = typed ? await figuresTyped(text, catalog, holdings.preferences) : undefined;
  const commands = sure ? [sure.command] : await loadCommands(catalog);
  const state = { holdings: used, own: holdings, hazards, answers: new Map() };
  const here: Here = { request, catalog, commands, sure, ports, access, ...state, rehearsed: false };
  const memory = await recalled(request, ports);
  const screened = screenedInHouse(said, text, memory);
  try {
    yield* judgedOutcomes(here, memory, screened, seen);
  } finally {
    await later(ports, () => rememberHazards(request, { ...screened, before: given }, used.project, access, ports));
  }
}

async function* judgedOutcomes(
  here: Here,
  memory: ConversationMemory | undefined,
  said: Screened,
  seen: AskSeen,
): AsyncGenerator<Exclude<Answer, Fault>> {
  const { request, ports, access, holdings } = here;
  const box = memory?.box === true || saysBox(request.text);
  const talks = memory && !here.sure && !reasonTyped(request.text, here.commands);
  const opened = sectionNamed(request.text) ?? (talks ? await sectionMeant(request.text) : undefined);
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
    yield shown(instead, whole, here, box);
    return;
  }
  const refused = await allowedToAsk(request, holdings.person, command, ports);
  if (refused || 'problems' in whole) {
    const nothing = { typed: new Map<string, string>(), held: holdings };
    const problems = withHazardsSaid(whole as Problems, bearers, named, typed);
    const told = refused ? againOnly(refused, whole) : await suggestionsFor(nothing, here).passed(problems);
    yield shown(told, whole, here, box);
    if ('problems' in whole) await later(ports, () => rememberQuestion(request, whole, memory, ports));
    return;
  }
  if (request.open && whole.command.group === 'project' && whole.sentence !== undefined) {
    yield { problems: [ownProject(request.text)], choices: [{ label: OWN_PROJECT, ask: whole.line }] };
    return;
  }
  seen.read(whole.command);
  const requested = { ...whole, assumed: [...whole.assumed, ...clearedNotes(said.cleared)] };
  let notGiven: readonly Block[] | undefined;
  const suggestions = suggestionsFor(whole, here);
  let last: Outcome | undefined;
  for await (const found of outcomesOf(requested, { ...here, holdings: whole.held })) {
    const told = withHazardsSaid(await aboutHazard(found, named, said, request.text), bearers, named, typed);
    const outcome =
      memory && 'headline' in told ? { ...told, seen: memory.seen, ...(opened ? { opens: opened } : {}) } : told;
    last = outcome;
    if (!access || access.guest || !('headline' in outcome))
      yield shown(await suggestions.passed(outcome), whole, here, box);
    else {
      notGiven ??= request.open ? [] : await notifications(whole.command, holdings, access, ports);
      const offered = keepingAll(offering(outcome, whole, holdings, access.now()), typed);
      const full = { ...offered, blocks: [...notGiven, ...offered.blocks] };
      yield shown(await suggestions.passed(full), whole, here, box);
    }
  }
  const answered = last;
  if (answered) await later(ports, () => rememberAnswer(request, whole, answered, memory, ports));
}

/** What a request runs with. */
interface Here {
  readonly request: Request;
  readonly catalog: Catalog;
  /** All commands, or just the one if the line can't mean another. */
  readonly commands: readonly Command[];
  /** The parsed request if it can't be a sentence. */
  readonly sure: ParsedCommand | undefined;
  readonly ports: Ports;
  readonly access: ProjectAccess | undefined;
  readonly holdings: UserState;
  /** All that is saved for the user, for the commands of the group project. */
  readonly own: UserState;
  /** Hazards mentioned earlier and not cleared since. */
  readonly hazards: HazardsBefore;
  /** Answers to lines this request asked for itself, by project and line. */
  readonly answers: Map<string, AnsweredRequest>;
  /** A trial run: it only finds problems, saves nothing, and ends before anything slow. */
  readonly rehearsed: boolean;
}

/** Options that describe layers, where merely naming a pipe counts. */
const LAYERS = ['floor', 'below', 'found'];

/** Hazards typed in the line itself or filled in from a project. */
function typedHazards(whole: Whole | Problems, said: Screened): readonly Sighting[] {
  if ('problems' in whole) return said.sightings;
  const known = new Set([...said.sightings, ...said.cleared].map(({ hazard }) => hazard));
  const layers = LAYERS.flatMap((option) => {
    const given = whole.optionTexts.get(option);
    // Whether a layer may contain asbestos depends on its year, which the command checks itself.
    return given === undefined ? [] : screenHere(given).sightings.filter(({ hazard }) => hazard !== 'asbestos');
  });
  const filled = [...screen(whole.line).sightings, ...layers].filter(({ hazard }) => !known.has(hazard));
  return [...said.sightings, ...filled];
}

/** Hazards mentioned earlier that affect the rooms of this request. */
function bearersBefore(whole: Whole | Problems, { hazards, holdings, request }: Here): readonly Bearer[] {
  const rooms = holdings.project?.rooms.map(({ name }) => name) ?? [];
  const text = 'problems' in whole ? request.text : whole.line;
  return bearingOn(hazards, text, rooms).map((one) => ({ ...asSighting(one), before: true }));
}

const GENERAL = ['safety', 'sources', 'help'];

const SIZE = /\d ?['″"]? ?(?:ft|feet|in|m)? ?(?:x|×|by) ?\d/i;

/** The command that computes the request. If it can't run as it is: the command it starts with, or the calculation its sentence describes. */
async function commandOf(whole: Whole | Problems, { request, commands, sure }: Here): Promise<string | undefined> {
  const known = sure ?? request.given;
  if (known) return fullName(known.command);
  const { commandTyped } = await import('./grammar.ts');
  const typed = request.written === 'message' ? undefined : commandTyped(request.text, commands);
  // A question that was only read as a general safety question keeps its own answer.
  if (!('problems' in whole))
    return typed || !GENERAL.includes(whole.command.name) ? fullName(whole.command) : undefined;
  if (typed) return fullName(typed);
  const sum = whole.form?.command;
  // A question without a size doesn't want a calculation.
  const sized = sum !== undefined && /^(?:floor|trim) /.test(sum) ? /\d/ : SIZE;
  return sized.test(request.text) ? sum : undefined;
}

/** Remembers what an emergency mentioned, after it is answered. */
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

async function later({ later: does }: Ports, work: () => Promise<unknown>): Promise<void> {
  if (does) does(work);
  else await work();
}

/** A complete request: what was typed plus what was filled in. */
interface Whole extends Pick<TextParsed, 'aside' | 'short'> {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
  /** What the user typed. */
  readonly typed: ReadonlyMap<string, string>;
  /** The options, if there was time to read them after filling in. */
  readonly options: OptionsRead | undefined;
  readonly assumed: readonly string[];
  readonly line: string;
  /** The saved data it is computed from, limited to what was shared. */
  readonly held: UserState;
  /** The sentence it was read from, if it was one. */
  readonly sentence: string | undefined;
  /** Units that the answer was requested in. */
  readonly units: Preferences['units'] | undefined;
}

/** Parses a request, unless it came already parsed; a few words continue the last request. */
async function parsedOf(
  here: Here,
  { text, written, given, mistaken }: Pick<Request, 'text' | 'written' | 'given' | 'mistaken'>,
  memory: ConversationMemory | undefined,
): Promise<TextParsed> {
  if (given) return { said: undefined, parsed: { ok: true, ...given } };
  if (here.sure) return { said: undefined, parsed: here.sure };
  const reason = reasonTyped(text, here.commands);
  if (reason) return { said: undefined, parsed: reason };
  const next = mistaken
    ? await questioned(mistaken, here.commands, here.holdings.preferences)
    : memory && (await goingOn(text, memory, here));
  return next ?? (await import('./grammar.ts')).parseText(here, text, written);
}

async function wholeAsk(
  here: Here,
  request: Pick<Request, 'text' | 'written' | 'given' | 'mistaken'>,
  memory?: ConversationMemory,
): Promise<Whole | Problems> {
  const { text } = request;
  const { commands, holdings, own, access } = here;
  const { said, parsed, sentence, units, aside, short } = await parsedOf(here, request, memory);
  const known: Lacking | undefined = parsed.ok ? { ...parsed, missing: [] } : parsed.partly;
  if (!known) return unread(parsed, commands);
  const { command } = known;
  const scope = await scopeOf(command, text, command.group === 'project' ? own : holdings, access);
  if ('problem' in scope) return { problems: [scope.problem] };
  const fill = () => filled(command, known.optionTexts, scope.held, commands, holdings.preferences);
  // Each time limit costs a thread, so filling in and reading share one where possible.
  const { optionTexts, notes, problem, options } = readInTime<ReturnType<typeof fill> & Pick<Whole, 'options'>>(
    () => {
      const filling = fill();
      return { ...filling, options: readOptions(command, filling.optionTexts, scope.held.preferences) };
    },
    () => ({ ...readInTime(fill), options: undefined }),
  );
  // An incomplete sentence is fine if the project fills it in. If it names a part, the rest is asked for.
  if (known.missing.length > 0 && !known.missing.some((option) => optionTexts.has(option)))
    return unread(parsed, commands);
  if (problem) return { problems: [problem] };
  // If only the group was left out, what was read is what was typed.
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
    sentence,
    units,
    aside,
    short,
  };
}

/** Parses saved requests. An unambiguous line reads none, so that nothing is loaded for it. */
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
  const units = unitsIn(whole, here);
  const context: Context = {
    asker: request.asker,
    preferences: { ...holdings.preferences, units },
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
  const values = withUnits(options.values, whole.units);
  let last: Outcome | undefined;
  for await (const one of asFarAsWorked(() => command.run(values, context), whole.line)) {
    last = inUnits(withExample(mendable(one, whole), optionTexts, context.preferences), units);
    yield last;
  }
  if (!access || access.guest || !last || !('headline' in last)) return;
  const shown = last;
  await later(ports, () => remembered(whole, shown, access, ports));
}

/** The last answer to a line a command requests. A trial run takes a known answer, or only the problems of a new one. */
async function requestedFor(line: string, project: Project | undefined, here: Here): Promise<AnsweredRequest> {
  if (project) return requested(line, { ...here, holdings: { ...here.holdings, project } });
  const { id, count } = here.holdings.project ?? {};
  const key = [id, count, line].join(' ');
  const known = here.rehearsed ? here.answers.get(key) : undefined;
  const answer = known ?? (await requested(line, here));
  here.answers.set(key, answer);
  return answer;
}

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

/** The line as it is read if it would get an answer; the refusal if it is unsafe; undefined if it has problems. Never rejects. */
async function tried(line: string, reads: Store | undefined, here: Here): Promise<Tried | Refusal | undefined> {
  const { request } = here;
  const { store: _store, later: _later, requested: _requested, allowed: _allowed, ...rest } = here.ports;
  const ports: Ports = { ...rest, ...(reads ? { store: unwritten(reads) } : {}), fault: () => undefined };
  let whole: Whole | Problems | undefined;
  try {
    const access = openAccess(request.asker, ports);
    const own = await holdingsOf(access, request, ports);
    const commands = await loadCommands(here.catalog);
    const state = { own, holdings: usedFor(request, own) };
    const there: Here = { ...here, ...state, commands, sure: undefined, ports, access, rehearsed: true };
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
    // The store reports its own outages.
    if (!(cause instanceof Outage)) here.ports.fault(faultReference(), cause);
  }
  return undefined;
}

/** The texts in the user's project and settings as typed, and the names of their projects. Never rejects. */
async function ownTexts({ project, settings }: UserState, { access }: Here): Promise<readonly string[]> {
  const mine = (await access?.mine().catch(() => [])) ?? [];
  const names = mine.map(({ name }) => name);
  return [...textsIn(project && contentOf(project)), ...textsIn(settings?.standards), ...names];
}

/** A request to send again later: the line itself, if it can be read. */
function againOnly({ problems: [problem, ...more], ...rest }: Problems, whole: Whole | Problems): Problems {
  return 'problems' in whole
    ? { ...rest, problems: [{ ...problem, fix: undefined }, ...more] }
    : { ...rest, problems: [problem, ...more] };
}

/** The last answer to a line requested on the user's behalf. Never runs a command that changes saved data. */
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
  return { ...outcome, problems: wholeFixes(problems, given), form, example: exampleLine(given, missing) };
}

/** The units of an answer: those its request uses; a project's own for commands about the project. */
function unitsIn(whole: Whole | Problems, { request, holdings: { preferences } }: Pick<Here, 'request' | 'holdings'>) {
  if ('problems' in whole) return unitsOfRequest([request.text], preferences);
  if (whole.command.group === 'project') return preferences.units;
  return whole.units ?? unitsOfRequest(whole.optionTexts.values(), preferences);
}

/** An outcome as it leaves: in one system of units, and with its request as a form if it has details to change. */
function shown(given: Outcome, whole: Whole | Problems, here: Here, box: boolean): ReplyWithForm | Problems | Refusal {
  const worded = inUnits(box ? withBoxes(given) : given, unitsIn(whole, here));
  if (!('headline' in worded)) return worded;
  const everybody = here.request.open && ('problems' in whole || whole.command.group !== 'project');
  const answered: Reply = everybody ? { ...worded, audience: 'channel' } : worded;
  const outcome = focused(answered, 'problems' in whole || whole.sentence === undefined ? '' : here.request.text);
  if ('problems' in whole) return outcome;
  const { command, typed, sentence } = whole;
  const form = { command: fullName(command), told: Object.fromEntries(typed) };
  const understood = sentence === undefined || command.hidden ? {} : { understood: { ...form, said: sentence } };
  const actions = [...outcome.actions, ...reasonActions(outcome)];
  return {
    ...outcome,
    ...(whole.short ? { lines: [] } : {}),
    actions,
    ...understood,
    ...(Object.keys(command.options.shape).length < 2 ? {} : { form }),
  };
}

type Lacking = Pick<Partly<Command>, 'command' | 'optionTexts' | 'missing'> & Partial<Partly<Command>>;

/** The same request with an example plank, if only the plank is missing. */
function exampleLine({ command, optionTexts }: CommandTexts, missing: readonly string[]): string | undefined {
  const [only, ...more] = missing;
  if (only !== 'plank' || more.length > 0 || !isCalculating(command)) return undefined;
  return askLine(command, inCommandOrder(command, optionTexts, { option: 'plank', fix: 'example' }));
}

/** The problems of a line, with a form of the options read so far. */
async function unread(parsed: Parsed, commands: readonly Command[]): Promise<Problems> {
  if (parsed.ok) throw new Error('a line that was read lacks nothing');
  const { problems, about, open, choices, complaint } = parsed;
  const [{ fix }] = problems;
  const asked = { ...(open === undefined ? {} : { open }), ...(choices ? { choices } : {}) };
  const more = { ...asked, ...(complaint ? { complaint } : {}) };
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
