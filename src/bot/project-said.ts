/** Everyday sentences about a project, as the line of the command that does it. */

import type { Habits } from '../measure/reading.ts';
import { readRooms } from '../measure/room.ts';
import type { Command } from './command.ts';
import { fullName } from './command.ts';
import { jobSaid } from './job-said.ts';

const PLEASE =
  "(?:please |ok(?:ay)?,? |now |and |then |let'?s |can you |could you |i want to |i'd like to |i would like to )*";

interface Saying {
  readonly said: RegExp;
  readonly line: (found: Readonly<Record<string, string>>) => string;
}

/** Each begins the whole sentence and takes all of it. */
const SAYINGS: readonly Saying[] = [
  {
    said: /^(?:start|begin|create|make|open|set up)(?: me)? (?:a |an |my )?(?:new )?project(?: (?:called|named|for|with the name))?[:,]? (?<name>.+)$/i,
    line: ({ name = '' }) => `project new ${name}`,
  },
  {
    said: /^(?:start|begin|create|make|open|set up)(?: me)? (?:a |an |my )?(?:new )?project[.!]?$/i,
    line: () => 'project new',
  },
  { said: /^new project(?: (?:called|named))?[:,]? (?<name>.+)$/i, line: ({ name = '' }) => `project new ${name}` },
  { said: /^new project[.!]?$/i, line: () => 'project new' },
  {
    said: /^(?:keep|save|remember|store) (?:that|this|it|the (?:last )?answer)(?: (?:in|to) (?:my |the )?project)?[.!]?$/i,
    line: () => 'project keep',
  },
  { said: /^(?:keep|save) (?:in|to) (?:my |the )?project[.!]?$/i, line: () => 'project keep' },
  { said: /^undo(?: (?:that|it|the last(?: change)?|my last change))?[.!]?$/i, line: () => 'project undo' },
  { said: /^take (?:that|it) back[.!]?$/i, line: () => 'project undo' },
  { said: /^redo(?: (?:that|it))?[.!]?$/i, line: () => 'project undo redo' },
  {
    said: /^(?:(?:show|open|see|what(?:'s| is) in) )?(?:me )?(?:my|the) project(?: now)?[.?!]?$/i,
    line: () => 'project show',
  },
  {
    said: /^(?:show me my |show |list |see |my |show my |list my |what are my )(?:all )?projects[.?!]?$/i,
    line: () => 'project list',
  },
  { said: /^projects?[.?!]?$/i, line: () => 'project show' },
  {
    said: /^(?:switch|change|go)(?: back)? to (?:my |the )?(?:project )(?:called )?(?<name>.+?)[.!]?$/i,
    line: ({ name = '' }) => `project use ${name}`,
  },
  { said: /^use (?:my |the )?project (?:called )?(?<name>.+?)[.!]?$/i, line: ({ name = '' }) => `project use ${name}` },
  { said: /^delete (?:my |the |this )?project[.!]?$/i, line: () => 'project delete' },
  {
    said: /^what(?: do you| have you)? (?:know|kept|keep|stored?|saved?) (?:about|of|on) me[?.!]?$/i,
    line: () => 'project mydata',
  },
  { said: /^forget (?:me|all about me|everything(?: about me)?)[.!]?$/i, line: () => 'project mydata do: forget' },
];

const ADD =
  /^add (?:a |an |the |my |another |room )*(?<room>.+?)(?: to (?:my |the )?(?:project|flat|home|house|list))?[.!]?$/i;
const SCOPE =
  /^(?:(?:exclude|leave out) (?:the )?(?<except>[\p{L}\d' -]{1,40}?)|leave (?:the )?(?<left>[\p{L}\d' -]{1,40}?) (?:as it is|out(?: of (?:it|the job|scope))?|alone)|(?:the )?(?<out>[\p{L}\d' -]{1,40}?) (?:is out of scope|stays as it is|is out of the job))[.!]?$/iu;

/** The line that does what a sentence about a project says; undefined for any other text. Rooms go to a project in use. */
export function projectSaid(
  text: string,
  commands: readonly Command[],
  habits: Habits,
  inUse: boolean,
): string | undefined {
  if (text.length > 400 || !commands.some((command) => fullName(command) === 'project new')) return undefined;
  const said = text
    .trim()
    .replace(/\s+/g, ' ')
    .replaceAll('’', "'")
    .replace(new RegExp(`^${PLEASE}`, 'i'), '');
  for (const { said: pattern, line } of SAYINGS) {
    const found = pattern.exec(said);
    if (found) return line(found.groups ?? {});
  }
  if (!inUse) return undefined;
  const job = jobSaid(said);
  if (job !== undefined) return job;
  const { except, left, out } = SCOPE.exec(said)?.groups ?? {};
  const name = except ?? left ?? out;
  if (name !== undefined) return `project room ${name} out of scope`;
  const room = ADD.exec(said)?.groups?.room;
  const reading = { option: 'room', habits, note: () => undefined };
  return room !== undefined && /\d/.test(room) && readRooms(room, reading).ok ? `project room add ${room}` : undefined;
}
