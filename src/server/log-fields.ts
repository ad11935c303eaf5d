/** What a line of the log may hold: a fixed list of fields, each of a form that no text, name, token or person's id has. */

const PLATFORMS = ['terminal', 'discord', 'slack', 'web'];
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
const PARTS = ['http', 'metrics', 'discord', 'slack', 'later', 'store', 'workers', 'pictures', 'files', 'all'] as const;

export type State = (typeof STATES)[number];
export type Part = (typeof PARTS)[number];

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
  platform: oneOf(PLATFORMS),
  command: formed(/^[a-z]+(?:[ -][a-z]+){0,3}$/),
  outcome: oneOf(OUTCOMES),
  first: number,
  ms: number,
  wait: number,
  state: oneOf(STATES),
  part: oneOf(PARTS),
  where: oneOf(['store', 'http', 'slack', 'discord', 'server', 'process', 'start', 'limits']),
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
export type Line = { readonly [Name in keyof typeof FIELDS]?: string | number | readonly string[] };

/** The fields that are as they may be; the rest are left out, and `left` tells that something was. */
export function allowedFields(line: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const told = Object.entries(line).filter(([, value]) => value !== undefined);
  const allowed = told.filter(([name, value]) => isField(name) && FIELDS[name](value));
  return {
    ...Object.fromEntries(allowed),
    ...(allowed.length < told.length ? { left: told.length - allowed.length } : {}),
  };
}

function isField(name: string): name is keyof typeof FIELDS {
  return Object.hasOwn(FIELDS, name);
}
