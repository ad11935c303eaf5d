/** Everyday sentences about a length to be measured in a project in use, as the line of the command. */

import { readLength } from '../../input/parse-length.ts';
import type { Preferences } from '../../input/reading.ts';
import { EMPTY_MEASURES } from '../../project/measurements.ts';
import type { Project } from '../../project/project.ts';
import { readMeasureSaid } from './measure-said.ts';

/** How a sentence begins that asks for a wall. */
const ASKED =
  /^(?:how (?:long|wide) (?:is|are)|what(?:'?s| is) the length of|(?:re)?measure|ask (?:for|about|how long)|(?:i |we )?need (?:(?:the )?(?:length|measurement)s? of|(?:the )?wall)|check|length of|the length of)\b/i;
const WITHDRAWN = /^(?:withdraw|cancel|never ?mind|forget|don't measure|no longer ask(?: for)?) (?=.*\bwall\b)/i;
const LIST =
  /^(?:what(?:'?s| is| do (?:i|we) (?:have|need))? (?:left |still )?to (?:be )?measured?|what needs (?:to be )?measur(?:ing|ed)|(?:show )?(?:the )?open (?:questions|measurements)|measurements)[.?!]?$/i;
const TOLD =
  /\bwall\s*(?:no\.?\s*|number\s*|#\s*)?(?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b/i;
/** What else of a room is asked for by these words alone. */
const THING = /^(?:(?:re)?measure|ask (?:for|about)) (?=.{3,60} (?:of|in) )/i;

/** Whoever is asked sees it without being named. */
const ASK_SOMEBODY = /^ask (?!for\b|about\b|how\b)\S+ (?:for|about|to measure|how long)\b/i;

/** The line of `project measure` for a sentence; undefined for any other text. */
export function measureSaid(
  typed: string,
  { rooms, measures = EMPTY_MEASURES }: Pick<Project, 'rooms'> & Partial<Pick<Project, 'measures'>>,
  preferences: Preferences,
): string | undefined {
  const said = typed.replace(ASK_SOMEBODY, 'how long is');
  if (LIST.test(said)) return 'project measure';
  if (measures.open.length > 0 && /^withdraw (?:all|everything)[.!]?$/i.test(said))
    return 'project measure withdraw all';
  const reading = { option: 'do', preferences, note: () => undefined };
  const bare = said.replace(/^(?:it(?:'s| is| measures)|that(?:'s| is)) /i, '').replace(/[.!]$/, '');
  if (measures.open.length > 0 && /^[\d.½¼¾⅛⅜⅝⅞]/.test(bare) && readLength(bare, reading, 'ft').ok)
    return `project measure ${bare}`;
  const names = [...new Set([...rooms.map(({ name }) => name), ...measures.open.map(({ room }) => room)])];
  const read = readMeasureSaid(said, names);
  if (WITHDRAWN.test(said)) return read.do === 'withdraw' ? `project measure ${said}` : undefined;
  if (!TOLD.test(said)) return THING.test(said) && read.do === 'ask' ? `project measure ${bareAsk(said)}` : undefined;
  if (read.do === 'ask') return ASKED.test(said) ? `project measure ${bareAsk(said)}` : undefined;
  // What stands in a wall is told with its place, and is no length of it.
  const place = /^(?:the |my )*(?:wall\b|.{1,60}\bwall\s*#?\d)/i.test(said) && read.do === 'tell';
  const length =
    /^\d+,\d+ ?(?:m|cm|mm)$/i.test(place ? read.length : '') || (place && readLength(read.length, reading, 'ft').ok);
  return length ? `project measure ${said}` : undefined;
}

function bareAsk(said: string): string {
  return said.replace(/^(?:re)?measure /i, '').replace(/(?<![?!.])[?!.]+$/, '');
}
