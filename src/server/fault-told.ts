/** What of a fault may be told: its class, its code and where in the code it came up; never its message, which may hold anybody's text. */

import { fileURLToPath } from 'node:url';
import type { Line } from './log-fields.ts';

/** The folder that the code is in; compiled, a folder deeper. */
const ROOT = fileURLToPath(new URL(import.meta.url.includes('/dist/') ? '../../../' : '../../', import.meta.url));
const MOST_FRAMES = 12;
const MOST_CAUSES = 5;

/** A fault as fields of a line. */
export function faultFields(cause: unknown): Line {
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
  const told: string[] = [];
  const seen = new Set<unknown>([cause]);
  for (let one = field(cause, 'cause'); one instanceof Error && !seen.has(one); one = one.cause) {
    seen.add(one);
    told.push([classOf(one), codeOf(one) ?? []].flat().join(' '));
    if (told.length === MOST_CAUSES) break;
  }
  return told;
}

function field(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null && name in value ? Reflect.get(value, name) : undefined;
}
