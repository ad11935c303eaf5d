/** The bot's log: one JSON line per request and fault, from an allow-list of fields that contain nothing anybody typed. */

import { fileURLToPath } from 'node:url';
import { type DestinationStream, pino } from 'pino';
import type { Ports, RequestMetrics } from '../chat/ports.ts';
import { requestId } from '../chat/request-id.ts';
import { Outage } from '../storage/types.ts';
import { PLATFORM_NAMES } from '../text/answer-text.ts';
import { withoutSecrets } from './standard-error.ts';

// A fixed list of fields, each in a format that no text, name, token or user id has.

const OUTCOMES = ['reply', 'problem', 'refusal', 'fault', 'outage', 'none'];
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
/** What is closed at shutdown. */
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

/** A stack position: a file of ours, of a package or of Node, with line and column. */
const FRAME = /^(?:dist|src|commands|scripts|tests|bench|node_modules|node:[\w/]+)(?:[\w./@+-]*):\d+:\d+$/;

/** The writer looks up a command's name in the catalog, so it is never user text. */
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
  /** What a platform limits, and for how long. */
  call: formed(/^[A-Za-z_]{1,40}(?:\.[A-Za-z]{1,40}){0,3}$/),
  seconds: number,
} as const satisfies Readonly<Record<string, Check>>;

type Line = { readonly [Name in keyof typeof FIELDS]?: string | number | readonly string[] };

/** Fields in a valid format; the others are dropped, and `left` says so. */
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

// What may be logged of a fault: its class, code and stack positions; never its message, which may contain user text.

/** One level deeper when compiled. */
const ROOT = fileURLToPath(new URL(import.meta.url.includes('/dist/') ? '../../../' : '../../', import.meta.url));
const MOST_FRAMES = 12;
const MOST_CAUSES = 5;

function faultFields(cause: unknown): Line {
  const code = codeOf(cause);
  const status = field(cause, 'status') ?? field(cause, 'statusCode');
  const because = causesOf(cause);
  const [call, seconds] = [field(cause, 'call'), field(cause, 'seconds')];
  return {
    error: classOf(cause),
    ...(code === undefined ? {} : { code }),
    ...(typeof status === 'number' ? { status } : {}),
    ...(typeof call === 'string' && typeof seconds === 'number' ? { call, seconds } : {}),
    ...(cause instanceof Error ? { at: framesOf(cause) } : {}),
    ...(because.length > 0 ? { because } : {}),
  };
}

function classOf(cause: unknown): string {
  return cause instanceof Error ? cause.constructor.name || 'Error' : `No${typeof cause}`;
}

/** A code of Node, a database or a platform: `ECONNREFUSED`, `57P01`, `10062`, `invalid_auth`. */
function codeOf(cause: unknown): string | undefined {
  const said = field(field(cause, 'data'), 'error');
  const code = typeof said === 'string' ? said : field(cause, 'code');
  return typeof code === 'string' || typeof code === 'number' ? String(code) : undefined;
}

/** Stack positions, outermost last. The message is cut off first, as it may be written to look like a position. */
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

/** The class and code of each cause, and of each of several. */
function causesOf(cause: unknown): readonly string[] {
  const given: string[] = [];
  const seen = new Set<unknown>([cause]);
  const within = (one: unknown): readonly unknown[] => [
    field(one, 'cause'),
    ...(one instanceof AggregateError ? one.errors : []),
  ];
  for (const left = [...within(cause)]; left.length > 0 && given.length < MOST_CAUSES; ) {
    const one = left.shift();
    if (!(one instanceof Error) || seen.has(one)) continue;
    seen.add(one);
    given.push([classOf(one), codeOf(one) ?? []].flat().join(' '));
    left.push(...within(one));
  }
  return given;
}

function field(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null && name in value ? Reflect.get(value, name) : undefined;
}

export interface Log extends Ports {
  requested(ended: RequestMetrics): void;
  state(state: State, more?: { readonly part?: LogPart; readonly port?: number; readonly ms?: number }): void;
  /** A sentence of ours about a problem, with secrets removed. */
  doubt(sentence: string): void;
}

interface LogTerms {
  readonly level: 'silent' | 'error' | 'warn' | 'info' | 'debug';
  /** Removed wherever they would appear. */
  readonly secrets: readonly string[];
  readonly output: { write(text: string): unknown };
}

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
      // The user can simply try again.
      if (cause instanceof Outage) log.warn(line, 'outage');
      else log.error(line, 'fault');
    },
    state: (state, more = {}) => log.info(allowedFields({ state, ...more }), 'state'),
    doubt: (sentence) =>
      log.warn({ ...allowedFields({ state: 'doubt' }), said: withoutSecrets(sentence, secrets) }, 'doubt'),
  };
}

/** Only positions in a known format. */
function placed(where: string): Line {
  return allowedFields({ where }).where === undefined ? {} : { where };
}

function tenths(milliseconds: number): number {
  return Math.round(milliseconds * 10) / 10;
}
