/** Everyday sentences about a project, as the line of the command that does it. */

import { type CommandShape, fullName, isCalculating, typedName } from '../../input/command-shape.ts';
import type { Preferences } from '../../input/reading.ts';
import type { Project } from '../../project/project.ts';
import { readInTime } from '../../workers/time-limits.ts';
import { measureSaid } from './bot-measure-said.ts';
import { projectRoomsSaid } from './bot-rooms-said.ts';
import { sharingSaid } from './bot-sharing-said.ts';
import { jobSaid } from './job-said.ts';
import { linkSaid } from './link-said.ts';
import { settingsSaid } from './settings-said.ts';

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
    said: /^delete (?:my |the )?project (?:called )?(?<name>.+?)[.!]?$/i,
    line: ({ name = '' }) => `project delete ${name}`,
  },
  { said: /^(?:archive|put away) (?:my |the |this )?project[.!]?$/i, line: () => 'project archive' },
  {
    said: /^(?:restore|bring back|undelete) (?:my |the )?(?:deleted )?project[.!]?$/i,
    line: () => 'project restore',
  },
  {
    said: /^(?:restore|bring back|undelete) (?:my |the )?project (?:called )?(?<name>.+?)[.!]?$/i,
    line: ({ name = '' }) => `project restore ${name}`,
  },
  {
    said: /^(?:rename|call) (?:my |the |this )?project (?:to |as )?(?<name>.+?)[.!]?$/i,
    line: ({ name = '' }) => `project rename ${name}`,
  },
  { said: /^copy (?:my |the |this )?project[.!]?$/i, line: () => 'project copy' },
  {
    said: /^copy (?:my |the |this )?project (?:as |to |for )?(?<name>.+?)[.!]?$/i,
    line: ({ name = '' }) => `project copy ${name}`,
  },
  {
    said: /^(?:no project|(?:use |work without |leave |close |stop using )(?:no |the |my |a )?project)[.!]?$/i,
    line: () => 'project use none',
  },
  {
    said: /^(?:what(?:'s| has| was|) changed|(?:show |list )?(?:me )?(?:the |my |all )?(?:last )?changes|history)[?.!]?$/i,
    line: () => 'project undo list',
  },
  { said: /^(?:spend|spending|costs|budget)[?.!]?$/i, line: () => 'project spend' },
  { said: /^log[?.!]?$/i, line: () => 'project log' },
  { said: /^(?:found|findings)[?.!]?$/i, line: () => 'project found' },
  { said: /^(?:show )?(?:my |the )?picks?[?.!]?$/i, line: () => 'project pick' },
  { said: /^(?:show |list )?(?:my |the |all )?rooms[?.!]?$/i, line: () => 'project room' },
  {
    said: /^(?:(?:show|export|download|give|send)(?: me)? )?(?:all )?(?:of )?my ?data[?.!]?$/i,
    line: () => 'project mydata',
  },
  {
    said: /^(?:delete|remove|erase) (?:all )?(?:of )?(?:my data|(?:everything|all)(?: (?:about|on|of) me)?|me)[.!]?$/i,
    line: () => 'project mydata do: forget',
  },
  {
    said: /^what(?: do you| have you)? (?:know|kept|keep|stored?|saved?) (?:about|of|on) me[?.!]?$/i,
    line: () => 'project mydata',
  },
  { said: /^forget (?:me|all about me|everything(?: about me)?)[.!]?$/i, line: () => 'project mydata do: forget' },
];

/** Keeping the answer of an ask told with it. */
const KEEP = /^(?:keep|save) (?<ask>[a-z]+\b.*)$/i;

/** Names of project commands that mean nothing else at the start of a line. */
const BARE = /^(?:spend|log|pick(?! up\b)|shopping|progress) [^\s:]/i;

/** What sentences about a project are read by. */
type ProjectInUse = Pick<Project, 'rooms' | 'picks'> & Partial<Pick<Project, 'measures'>>;

/** The line that does what a sentence about a project says; undefined for any other text. Rooms and news go to the project in use. */
export function projectSaid(
  text: string,
  commands: readonly CommandShape[],
  preferences: Preferences,
  project: ProjectInUse | undefined,
): string | undefined {
  if (text.length > 400 || !commands.some((command) => fullName(command) === 'project new')) return undefined;
  const line = readInTime(() => lineOf(plainSaid(text), commands, preferences, project));
  return line === text.trim() ? undefined : line;
}

/** The line of what is said of a job by somebody with no project in use: it tells what to do first. */
export function jobWithout(text: string): string | undefined {
  return text.length > 400 ? undefined : readInTime(() => jobSaid(plainSaid(text)));
}

function plainSaid(text: string): string {
  return (
    text
      .trim()
      // Marks round all of it are those of whoever copied it.
      .replace(/^[“"‘](?<said>[^“”"]*)[”"’]$/, '$<said>')
      // Rooms are told one a line.
      .replace(/(?:[;,]\s*|(?<!\s)\s+)?[\r\n]\s*/g, '; ')
      .replace(/\s+/g, ' ')
      .replaceAll('’', "'")
      .replace(new RegExp(`^${PLEASE}`, 'i'), '')
  );
}

function lineOf(
  said: string,
  commands: readonly CommandShape[],
  preferences: Preferences,
  project: ProjectInUse | undefined,
): string | undefined {
  for (const { said: pattern, line } of SAYINGS) {
    const found = pattern.exec(said);
    if (found) return line(found.groups ?? {});
  }
  const shared = sharingSaid(said);
  if (shared !== undefined) return shared;
  const kept = KEEP.exec(said)?.groups?.ask;
  if (kept !== undefined && isAsk(kept, commands.filter(isCalculating))) return `project keep ${kept}`;
  const settings = settingsSaid(said) ?? linkSaid(said);
  if (settings !== undefined || !project) return settings;
  const measured = measureSaid(said, project, preferences);
  if (measured !== undefined) return measured;
  const job = jobSaid(said) ?? (BARE.test(said) ? `project ${said}` : undefined);
  const asks = isAsk(said, commands);
  return job ?? (asks ? undefined : projectRoomsSaid(said, project, preferences));
}

/** Whether a text begins with the name of one of some commands. */
function isAsk(text: string, commands: readonly CommandShape[]): boolean {
  const plain = `${text.toLowerCase()} `;
  return commands.some((command) =>
    [typedName(command), fullName(command)].some((name) => plain.startsWith(`${name} `)),
  );
}
