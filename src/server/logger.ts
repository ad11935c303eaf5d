/** The bot's log: one line of JSON per request and fault, from an allow-list of fields that hold nothing anybody typed. */

import { fileURLToPath } from 'node:url';
import { type DestinationStream, pino } from 'pino';
import type { Ports, RequestMetrics } from '../chat/ports.ts';
import { requestId } from '../chat/request-id.ts';
import { Outage } from '../storage/types.ts';
import { PLATFORM_NAMES } from '../text/platform-names.ts';
import { withoutSecrets } from './standard-error.ts';

// What a line of the log may hold: a fixed list of fields, each of a form that no text, name, token or
// person's id has.

const OUTCOMES = ['reply', 'problem', 'refusal', 'fault', 'outage', 'none'];
/** Everything that happens to the bot as a whole. */
const STATES = [
  'starting',
  'connected',
  'listening',
  'metrics',
  'stopping',
  'closing',
  'stopped',
  'late',
  'doubt',
] as const;
const METHODS = ['GET', 'HEAD', 'POST', 'OTHER'];
/** What is closed at the end. */
const PARTS = ['http', 'metrics', ...PLATFORM_NAMES, 'later', 'store', 'workers', 'pictures', 'files', 'all'] as const;

type State = (typeof STATES)[number];
export type LogPart = (typeof PARTS)[number];

type Check = (value: unknown) => boolean;

const oneOf =
  (list: readonly string[]): Check =>
  (value) =>
    typeof value === 'string' && list.includes(value);
const formed =
  (form: RegExp): Check =>
  (value) =>
    typeof value === 'string' && form.test(value);
const listOf =
  (check: Check): Check =>
  (value) =>
    Array.isArray(value) && value.every(check);
const number: Check = (value) => typeof value === 'number' && Number.isFinite(value);

/** A place in the code: a file of ours, of a package or of Node, its line and column. */
const FRAME = /^(?:dist|src|commands|scripts|tests|bench|node_modules|node:[\w/]+)(?:[\w./@+-]*):\d+:\d+$/;

/** The fields that there are. A command's name is looked up by who writes it: it is never what was typed. */
export const FIELDS = {
  request: formed(/^[0-9a-f]{8}$/),
  platform: oneOf(PLATFORM_NAMES),
  command: formed(/^[a-z]+(?:[ -][a-z]+){0,3}$/),
  outcome: oneOf(OUTCOMES),
  first: number,
  ms: number,
  wait: number,
  state: oneOf(STATES),
  part: oneOf(PARTS),
  where: oneOf(['store', 'http', ...PLATFORM_NAMES, 'server', 'process', 'start', 'limits']),
  error: formed(/^[A-Za-z]\w{0,40}$/),
  code: formed(/^[A-Za-z0-9_]{1,40}$/),
  status: number,
  at: listOf(formed(FRAME)),
  because: listOf(formed(/^[A-Za-z]\w{0,40}(?: [A-Za-z0-9_]{1,40})?$/)),
  port: number,
  route: formed(/^\/[a-z/:*.-]{0,60}$/),
  method: oneOf(METHODS),
} as const satisfies Readonly<Record<string, Check>>;

/** A line's fields. */
type Line = { readonly [Name in keyof typeof FIELDS]?: string | number | readonly string[] };

/** The fields that are as they may be; the rest are left out, and `left` tells that something was. */
export function allowedFields(line: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const given = Object.entries(line).filter(([, value]) => value !== undefined);
  const allowed = given.filter(([name, value]) => isField(name) && FIELDS[name](value));
  return {
    ...Object.fromEntries(allowed),
    ...(allowed.length < given.length ? { left: given.length - allowed.length } : {}),
  };
}

function isField(name: string): name is keyof typeof FIELDS {
  return Object.hasOwn(FIELDS, name);
}

// What of a fault may be told: its class, its code and where in the code it came up; never its message, which
// may hold anybody's text.

/** The folder that the code is in; compiled, a folder deeper. */
const ROOT = fileURLToPath(new URL(import.meta.url.includes('/dist/') ? '../../../' : '../../', import.meta.url));
const MOST_FRAMES = 12;
const MOST_CAUSES = 5;

/** A fault as fields of a line. */
function faultFields(cause: unknown): Line {
  const code = codeOf(cause);
  const status = field(cause, 'status') ?? field(cause, 'statusCode');
  const because = causesOf(cause);
  return {
    error: classOf(cause),
    ...(code === undefined ? {} : { code }),
    ...(typeof status === 'number' ? { status } : {}),
    ...(cause instanceof Error ? { at: framesOf(cause) } : {}),
    ...(because.length > 0 ? { because } : {}),
  };
}

function classOf(cause: unknown): string {
  return cause instanceof Error ? cause.constructor.name || 'Error' : `No${typeof cause}`;
}

/** The code of Node, of a database or of a platform: `ECONNREFUSED`, `57P01`, `10062`, `invalid_auth`. */
function codeOf(cause: unknown): string | undefined {
  const said = field(field(cause, 'data'), 'error');
  const code = typeof said === 'string' ? said : field(cause, 'code');
  return typeof code === 'string' || typeof code === 'number' ? String(code) : undefined;
}

/** Places in the code, outermost last, without what stands before them: a message may be written to look like a place. */
function framesOf({ stack = '', message }: Error): readonly string[] {
  const start = stack.indexOf(message);
  if (start < 0) return [];
  const places = stack.slice(start + message.length).split('\n');
  return places.flatMap((line) => placeOf(line) ?? []).slice(0, MOST_FRAMES);
}

function placeOf(line: string): string | undefined {
  const [, place = ''] = /^ {4}at (?:.* \()?(?:file:\/\/)?([^\s()]+:\d+:\d+)\)?$/.exec(line) ?? [];
  if (place.startsWith('node:')) return place;
  const packages = place.lastIndexOf('node_modules/');
  if (packages >= 0) return place.slice(packages);
  return place.startsWith(ROOT) ? place.slice(ROOT.length) : undefined;
}

/** What is behind it, a class and a code each. */
function causesOf(cause: unknown): readonly string[] {
  const given: string[] = [];
  const seen = new Set<unknown>([cause]);
  for (let one = field(cause, 'cause'); one instanceof Error && !seen.has(one); one = one.cause) {
    seen.add(one);
    given.push([classOf(one), codeOf(one) ?? []].flat().join(' '));
    if (given.length === MOST_CAUSES) break;
  }
  return given;
}

function field(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null && name in value ? Reflect.get(value, name) : undefined;
}

export interface Log extends Ports {
  requested(ended: RequestMetrics): void;
  /** What happens to the bot as a whole. */
  state(state: State, more?: { readonly part?: LogPart; readonly port?: number; readonly ms?: number }): void;
  /** A sentence of our own about what stands in the way, in which no secret is left. */
  doubt(sentence: string): void;
}

interface LogTerms {
  readonly level: 'silent' | 'error' | 'warn' | 'info' | 'debug';
  /** What is taken out wherever it would stand. */
  readonly secrets: readonly string[];
  readonly output: { write(text: string): unknown };
}

/** A log that writes to an output. */
export function logTo({ level, secrets, output }: LogTerms): Log {
  const stream: DestinationStream = { write: (line) => void output.write(withoutSecrets(line, secrets)) };
  const log = pino(
    { level, base: null, messageKey: 'what', formatters: { level: (label) => ({ level: label }) } },
    stream,
  );
  const request = (): Line => {
    const id = requestId();
    return id === undefined ? {} : { request: id };
  };
  return {
    requested: ({ platform, command, outcome, first, last, wait }) => {
      const line: Line = {
        ...request(),
        platform,
        ...(command ? { command } : {}),
        outcome,
        first: tenths(first),
        ms: tenths(last),
        wait: tenths(wait),
      };
      log.info(allowedFields(line), 'ask');
    },
    fault: (reference, cause) => {
      const named: Line = /^[0-9a-f]{8}$/.test(reference)
        ? { request: reference }
        : { ...request(), ...placed(reference) };
      const line = allowedFields({ ...named, ...faultFields(cause) });
      // Whoever asked may simply ask again.
      if (cause instanceof Outage) log.warn(line, 'outage');
      else log.error(line, 'fault');
    },
    state: (state, more = {}) => log.info(allowedFields({ state, ...more }), 'state'),
    doubt: (sentence) =>
      log.warn({ ...allowedFields({ state: 'doubt' }), said: withoutSecrets(sentence, secrets) }, 'doubt'),
  };
}

/** Where it came up, where that is one of the places there are. */
function placed(where: string): Line {
  return allowedFields({ where }).where === undefined ? {} : { where };
}

function tenths(milliseconds: number): number {
  return Math.round(milliseconds * 10) / 10;
}
