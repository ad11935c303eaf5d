/** The one pipeline from an ask to its answers, and the one place where faults are caught. */

import type { Habits } from '../measure/reading.ts';
import { readInTime } from '../queue/reading-time.ts';
import { Unworked } from '../queue/unworked.ts';
import { eachOnBehalfOf } from '../queue/whose.ts';
import type { Problem } from '../reply/problem.ts';
import type { Block } from '../reply/reply.ts';
import { askTooLong, SAMPLE_ASK } from '../words/asks.ts';
import { readingStopped } from '../words/busy.ts';
import { nothingAsked } from '../words/plain.ts';
import { readAsNote } from '../words/project-fill.ts';
import { notForKeeping } from '../words/project-problems.ts';
import { allowedToAsk } from './allowed.ts';
import { asFarAsWorked } from './as-far.ts';
import { AskSeen } from './ask-seen.ts';
import { type Asked, askLine, type Command, type Context, fullName, type Outcome, type Problems } from './command.ts';
import { type Desk, openDesk } from './desk.ts';
import { filled } from './fill.ts';
import { IMPORT, LONGEST_ASK, LONGEST_IMPORT, type Parsed, parseLine } from './grammar.ts';
import { type Held, holdingsOf } from './holdings.ts';
import { accountKey, type Invocation } from './invocation.ts';
import { offering, remembered } from './offering.ts';
import { isCalculating } from './pick.ts';
import { type Partly, parseSentence } from './plain.ts';
import { Outage, type Ports } from './ports.ts';
import { jobWithout, projectSaid } from './project-said.ts';
import { readOptions } from './read-options.ts';
import { faultReference, requested } from './request.ts';
import { nowhere, scopeOf } from './shared-ask.ts';
import { tidings } from './tidings.ts';

/** A fault of ours, as the asker learns of it. */
export interface Fault {
  readonly reference: string;
  /** The store did not answer: nothing was saved, and asking again may do. */
  readonly outage: boolean;
}

export type Answer = Outcome | Fault;

/** Answers an ask: each answer replaces the one before. Never throws; a fault is told to the port and to the asker. */
export function answer(invocation: Invocation, commands: readonly Command[], ports: Ports): AsyncGenerator<Answer> {
  return requested(answered(invocation, commands, ports));
}

async function* answered(invocation: Invocation, commands: readonly Command[], ports: Ports): AsyncGenerator<Answer> {
  const seen = new AskSeen(invocation.asker.platform, ports);
  try {
    const stream = outcomes(invocation, commands, ports, seen);
    yield* seen.each(eachOnBehalfOf(accountKey(invocation.asker), stream, (ms) => seen.waited(ms)));
  } catch (cause) {
    if (cause instanceof Unworked && cause.why === 'unread') {
      yield seen.gave({ problems: [readingStopped(invocation.text)] });
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
  invocation: Invocation,
  commands: readonly Command[],
  ports: Ports,
  seen: AskSeen,
): AsyncGenerator<Outcome> {
  const most = IMPORT.test(invocation.text) ? LONGEST_IMPORT : LONGEST_ASK;
  if (invocation.text.length > most) {
    yield { problems: [askTooLong(invocation.text.length, most)] };
    return;
  }
  const desk = openDesk(invocation.asker, ports);
  const holdings = await holdingsOf(desk, invocation, ports);
  const lost = nowhere(desk, holdings);
  if (lost) {
    yield { problems: [lost] };
    return;
  }
  const here: Here = { invocation, commands, ports, desk, holdings };
  const whole = await wholeAsk(here, invocation.text, invocation.written);
  const command = 'problems' in whole ? undefined : whole.command;
  const refused = await allowedToAsk(invocation, holdings.person, command, ports);
  if (refused || 'problems' in whole) {
    yield refused ?? (whole as Problems);
    return;
  }
  seen.read(whole.command);
  let untold: readonly Block[] | undefined;
  for await (const outcome of outcomesOf(whole, { ...here, holdings: whole.held })) {
    if (!desk || desk.guest || !('headline' in outcome)) yield outcome;
    else {
      untold ??= await tidings(whole.command, holdings, desk, ports);
      const offered = offering(outcome, whole, holdings, desk.now());
      yield { ...offered, blocks: [...untold, ...offered.blocks] };
    }
  }
}

/** What an ask happens among. */
interface Here {
  readonly invocation: Invocation;
  readonly commands: readonly Command[];
  readonly ports: Ports;
  readonly desk: Desk | undefined;
  readonly holdings: Held;
}

/** An ask with everything told: by its asker, and from what they keep. */
export interface Whole {
  readonly command: Command;
  readonly told: ReadonlyMap<string, string>;
  /** What the asker told themselves. */
  readonly typed: ReadonlyMap<string, string>;
  readonly assumed: readonly string[];
  readonly line: string;
  /** What it is answered from: of what the asker keeps, as much as its command was shared. */
  readonly held: Held;
}

async function wholeAsk(here: Here, text: string, written: Invocation['written']): Promise<Whole | Problems> {
  const { commands, holdings, desk } = here;
  const { habits, project, named = project } = holdings;
  // Somebody's message was not typed for us: nothing in it changes what anybody keeps.
  const said = desk && written !== 'message' ? projectSaid(text, commands, habits, named) : undefined;
  const first = parse(said ?? text, written, habits, commands);
  const news = desk && !project && written !== 'message' && !first.ok && !first.partly ? jobWithout(text) : undefined;
  const parsed = news === undefined ? first : parse(news, written, habits, commands);
  const known: Lacking | undefined = parsed.ok ? { ...parsed, missing: [] } : parsed.partly;
  if (!known) return unread(parsed, commands);
  const { command } = known;
  const scope = await scopeOf(command, text, holdings, desk);
  if ('problem' in scope) return { problems: [scope.problem] };
  const { told, notes, problem } = readInTime(() => filled(command, known.told, scope.held, commands, habits));
  // A sentence that lacks something is still an ask where the project tells it; told a part, what is left is asked for.
  if (known.missing.length > 0 && !known.missing.some((option) => told.has(option))) return unread(parsed, commands);
  if (problem) return { problems: [problem] };
  // Where nothing but the group was left out, what was read is what was typed.
  const read = said === undefined || said === `project ${text.trim()}` ? [] : [readAsNote(said)];
  const unreadable = isCalculating(command) ? holdings.notes : [];
  const assumed = [...read, ...(known.assumed ?? []), ...notes, ...unreadable];
  return { command, told, typed: known.told, assumed, line: askLine(command, told), held: scope.held };
}

async function* outcomesOf(whole: Whole, here: Here): AsyncGenerator<Outcome> {
  const { command, told } = whole;
  const { invocation, commands, ports, desk, holdings } = here;
  const options = readOptions(command, told, holdings.habits);
  if (!options.ok) {
    yield mendable(options, whole);
    return;
  }
  const context: Context = {
    asker: invocation.asker,
    habits: holdings.habits,
    commands,
    assumed: [...whole.assumed, ...options.assumed],
    told,
    desk,
    now: () => ports.now?.() ?? Date.now(),
    address: ports.address?.(),
    ask: (line, project) => asked(line, project ? { ...here, holdings: { ...here.holdings, project } } : here),
    again: (changes) => askLine(command, new Map([...told, ...Object.entries(changes)])),
  };
  let last: Outcome | undefined;
  for await (const one of asFarAsWorked(() => command.run(options.values, context), whole.line)) {
    last = mendable(one, whole);
    yield last;
  }
  if (!desk || desk.guest || !last || !('headline' in last)) return;
  const shown = last;
  const remember = (): Promise<void> => remembered(whole, shown, desk, ports);
  if (ports.later) ports.later(remember);
  else await remember();
}

/** The last answer to a line asked on the asker's behalf: never a command that changes what they keep. */
async function asked(line: string, here: Here): Promise<Asked> {
  const whole = await wholeAsk(here, line, 'line');
  if ('problems' in whole) return { outcome: whole, line };
  if (whole.command.group === 'project') return { outcome: { problems: [notForKeeping(line)] }, line };
  let outcome: Outcome | undefined;
  for await (const one of outcomesOf(whole, { ...here, desk: undefined })) outcome = one;
  if (!outcome) throw new Error(`no answer to “${line}”`);
  return { outcome, line: whole.line };
}

interface Told {
  readonly command: Command;
  readonly told: ReadonlyMap<string, string>;
}

function mendable(outcome: Outcome, told: Told): Outcome {
  if (!('problems' in outcome)) return outcome;
  const form = { command: fullName(told.command), told: Object.fromEntries(told.told) };
  return { ...outcome, problems: typeable(outcome.problems, told), form };
}

/** A line typed for us by the grammar; somebody's message as a sentence. */
function parse(text: string, written: Invocation['written'], habits: Habits, commands: readonly Command[]): Parsed {
  if (written !== 'message') return parseLine(text, commands, habits);
  return parseSentence(text, commands, habits) ?? { ok: false, problems: [nothingAsked(text)] };
}

type Lacking = Pick<Partly, 'command' | 'told' | 'missing'> & Partial<Partly>;

function unread(parsed: Parsed, commands: readonly Command[]): Problems {
  if (parsed.ok) throw new Error('a line that was read lacks nothing');
  return withForm(parsed.problems, commands);
}

/** Problems of a line, with the form of the whole ask that mends it: what was read of it is told there. */
function withForm(problems: Problems['problems'], commands: readonly Command[]): Problems {
  const mended = parseLine(problems[0].fix, commands);
  // A sample holds nothing of the asker's.
  if (!mended.ok || problems[0].fix === SAMPLE_ASK) return { problems };
  return { problems, form: { command: fullName(mended.command), told: Object.fromEntries(mended.told) } };
}

/** Problems whose fix is the whole ask, mended in every option, so that it can be typed as it is. */
function typeable([first, ...rest]: Problems['problems'], { command, told }: Told): Problems['problems'] {
  const mended = new Map(told);
  for (const { option, fix } of [first, ...rest].reverse()) if (option !== 'ask') mended.set(option, fix);
  const whole = (problem: Problem): Problem =>
    problem.option === 'ask' ? problem : { ...problem, fix: askLine(command, inOrder(command, mended, problem)) };
  return [whole(first), ...rest.map(whole)];
}

/** The options in the command's own order, with this problem's mend. */
function inOrder(command: Command, mended: ReadonlyMap<string, string>, { option, fix }: Problem): Map<string, string> {
  const all = new Map([...mended, [option, fix]]);
  const names = [...new Set([...Object.keys(command.options.shape), ...all.keys()])];
  return new Map(names.flatMap((name) => [...all].filter(([told]) => told === name)));
}
