/** Everyday sentences about a project, as the line of the command that does it. */

import { type CommandShape, fullName, isCalculating, typedName } from '../input/command-shape.ts';
import { isCountry } from '../input/parse-house.ts';
import type { Preferences } from '../input/reading.ts';
import { pairPattern } from '../input/rooms/room-text.ts';
import type { Project } from '../project/project.ts';
import { readInTime } from '../workers/time-limits.ts';
import { jobLine, measuringLine, roomLine, stockedLine, supposedLine } from './job-lines.ts';
import { measured } from './measured.ts';

const PLEASE =
  "(?:please |ok(?:ay)?,? |now |and |then |let'?s |can you |could you |i want to |i'd like to |i would like to |actually,? |no, |sorry,? |wait,? |oops,? |i meant )*";

interface SharingPattern {
  readonly said: RegExp;
  readonly line: (found: Readonly<Record<string, string>>) => string;
}

interface Saying {
  readonly said: RegExp;
  readonly line: (found: Readonly<Record<string, string>>, preferences: Preferences) => string;
}

/** A name, and the rooms that follow it in the same breath: “condo. living room 14x19”, “kitchen 10x11 dining 11x12”. */
function newProject(said: string, preferences: Preferences): string {
  const sides = pairPattern().exec(said)?.index;
  const { room } = sides === undefined ? {} : measured(said, preferences);
  if (sides === undefined || room === undefined || said.includes(', rooms:')) return `project new ${said}`;
  const end = said.slice(0, sides).search(/[.:;,](?: |$)/);
  const name = end < 0 ? '' : said.slice(0, end).trim();
  return `project new${name === '' ? '' : ` ${name}`}${name === '' ? ' ' : ', '}rooms: ${room}`;
}

/** Each begins the whole sentence and takes all of it. */
const SAYINGS: readonly Saying[] = [
  {
    said: /^(?:start|begin|create|make|open|set up)(?: me)? (?:a |an |my )?(?:new )?project(?: (?:called|named|for|with the name))?[:,]? (?<name>.+)$/i,
    line: ({ name = '' }, preferences) => newProject(name, preferences),
  },
  {
    said: /^(?:start|begin|create|make|open|set up)(?: me)? (?:a |an |my )?(?:new )?project[.!]?$/i,
    line: () => 'project new',
  },
  {
    said: /^new project(?: (?:called|named))?[:,]? (?<name>.+)$/i,
    line: ({ name = '' }, preferences) => newProject(name, preferences),
  },
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
  { said: /^log[?.!]?$/i, line: () => 'project log' },
  { said: /^(?:found|findings)[?.!]?$/i, line: () => 'project found' },
  { said: /^(?:show )?(?:my |the )?picks?[?.!]?$/i, line: () => 'project pick' },
  { said: /^(?:show |list )?(?:my |the |all )?rooms[?.!]?$/i, line: () => 'project room' },
  {
    said: /^(?:delete|remove|erase) (?:all )?(?:of )?(?:my data|(?:everything|all)(?: (?:about|on|of) me)?|me)[.!]?$/i,
    line: () => 'project mydata do: forget',
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
export function projectLine(
  text: string,
  commands: readonly CommandShape[],
  preferences: Preferences,
  project: ProjectInUse | undefined,
): string | undefined {
  if (text.length > 400 || !commands.some((command) => fullName(command) === 'project new')) return undefined;
  const line = readInTime(() => lineOf(plainStatement(text), commands, preferences, project));
  return line === text.trim() ? undefined : line;
}

const NUMBERED_ROOM =
  /(?<![a-z])(?<name>bed(?:room)?|bath(?:room)?|closet|room|hall|office|kid'?s room) (?<no>[1-9]) (?=\d{1,3}(?:\.\d)? ?(?:'|ft|feet|m)? ?(?:x|by) ?\d)/gi;

/** The line of what is said of a job by somebody with no project in use: it tells what to do first. */
export function jobLineAlone(text: string): string | undefined {
  return text.length > 400 ? undefined : readInTime(() => jobLine(plainStatement(text)));
}

function plainStatement(text: string): string {
  return (
    text
      .trim()
      // Marks round all of it are those of whoever copied it.
      .replace(/^[“"‘](?<said>[^“”"]*)[”"’]$/, '$<said>')
      // Rooms are told one a line.
      .replace(/(?:[;,]\s*|(?<!\s)\s+)?[\r\n]\s*/g, '; ')
      .replace(/\s+/g, ' ')
      .replaceAll('’', "'")
      // “Bed 1 10x11”: the number is part of the name.
      .replace(NUMBERED_ROOM, '$<name> $<no>: ')
      .replace(/^(?:no|nope|sorry|oops|wait|i meant|actually),? (?=\d)/i, 'make it ')
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
    if (found) return line(found.groups ?? {}, preferences);
  }
  const shared = sharingLine(said);
  if (shared !== undefined) return shared;
  const kept = KEEP.exec(said)?.groups?.ask;
  if (kept !== undefined && isAsk(kept, commands.filter(isCalculating))) return `project keep ${kept}`;
  const settings = settingsLine(said) ?? accountLine(said);
  if (settings !== undefined || !project) return settings;
  const measured = measuringLine(said, project, preferences);
  if (measured !== undefined) return measured;
  const supposed = supposedLine(said, project, preferences) ?? stockedLine(said);
  if (supposed !== undefined) return supposed;
  const job = jobLine(said) ?? (BARE.test(said) ? `project ${said}` : undefined);
  const asks = isAsk(said, commands);
  return job ?? (asks ? undefined : roomLine(said, project, preferences));
}

/** Whether a text begins with the name of one of some commands. */
function isAsk(text: string, commands: readonly CommandShape[]): boolean {
  const plain = `${text.toLowerCase()} `;
  return commands.some((command) =>
    [typedName(command), fullName(command)].some((name) => plain.startsWith(`${name} `)),
  );
}

const NAMES = ['units', 'decimal', 'currency', 'country', 'mistakes', 'spares', 'tax'] as const;
const OTHER_WORDS: ReadonlyMap<string, string> = new Map([
  ['unit', 'units'],
  ['decimals', 'decimal'],
  ['decimal mark', 'decimal'],
  ['waste', 'mistakes'],
  ['sales tax', 'tax'],
]);
const NAMED = new RegExp(
  `(?<=^|[\\s,;])(${[...NAMES, ...OTHER_WORDS.keys()].sort((one, other) => other.length - one.length).join('|')})\\b\\s*(?:[:=]|is |to |are )?\\s*`,
  'gi',
);
const CLEAR = /^(?:clear|reset|unset|forget)(?: (?:the |my )?(?<what>[a-z ]+?))?$/i;
const SET =
  /^(?:set|change) (?:the |my )?(?<rest>(?:units?|decimals?|decimal mark|currency|country|mistakes|spares|(?:sales )?tax) .+)$/i;
const USE =
  /^(?:use|switch to|change to|set to|work in|i (?:use|think in)) (?:the )?(?<what>metric|imperial|feet(?: and inches)?|inches|meters|metres|millimet(?:er|re)s|decimal commas?|decimal points?|commas|euros?|pounds|dollars)(?: (?:units|system|measures|please|for decimals))*$/i;
const USED: readonly (readonly [RegExp, string])[] = [
  [/^(?:metric|met|milli)/i, 'units: metric'],
  [/^(?:imperial|feet|inches)/i, 'units: imperial'],
  [/comma/i, 'decimal: comma'],
  [/point/i, 'decimal: point'],
  [/^euro/i, 'currency: EUR'],
  [/^pounds/i, 'currency: GBP'],
  [/^dollars/i, 'currency: USD'],
];

const HOME =
  /^(?:(?:my|our|the) (?:country|home country) is|(?:my|our|the) (?:house|home|flat|apartment|place) is in|(?:i|we) live in) (?<country>(?:the )?[a-z][a-z .]{1,40})$/i;

/** The line for a sentence about settings; undefined for any other text, and for one that the command reads itself. */
export function settingsLine(said: string): string | undefined {
  const text = said.replace(/(?<![.!?])[.!?]+$/, '');
  const use = USE.exec(text)?.groups?.what;
  if (use !== undefined) return `project settings ${USED.find(([word]) => word.test(use))?.[1] ?? ''}`.trim();
  const country = HOME.exec(text)?.groups?.country;
  if (country !== undefined && isCountry(country)) return `project settings country: ${country}`;
  const own = /^(?:show )?(?:project |my |the |our )*settings\b[:,]?\s*(?<rest>.*)$/is.exec(text)?.groups?.rest;
  const rest = own ?? SET.exec(text)?.groups?.rest;
  if (rest === undefined) return undefined;
  if (rest === '') return 'project settings';
  const cleared = CLEAR.exec(rest);
  if (cleared) {
    const all = /^(?:all|everything|settings|them)?$/i.test(cleared.groups?.what ?? '');
    const names = all ? [...NAMES, 'rules'] : named(cleared.groups?.what ?? '').map(([name]) => name);
    return names.length > 0 ? `project settings ${names.map((name) => `${name}: clear`).join(', ')}` : undefined;
  }
  const pairs = named(rest);
  // A rule may hold any of the names: the command reads it as it is told.
  if (pairs.length === 0 || /\brules\s*:/i.test(rest) || rest.search(NAMED) !== 0)
    return own === undefined ? undefined : (plain(rest) ?? `project settings ${rest}`);
  return `project settings ${pairs.map(([name, value]) => `${name}: ${value}`).join(', ')}`;
}

/** A setting told without its name: metric, comma, EUR. */
function plain(rest: string): string | undefined {
  const found = USED.find(([word]) => word.test(rest));
  return found && /^[a-z]+(?: units)?$/i.test(rest) ? `project settings ${found[1]}` : undefined;
}

/** The settings named in a text, each with what follows its name. */
function named(text: string): readonly (readonly [name: string, value: string])[] {
  const found = [...text.matchAll(NAMED)];
  return found.map((one, i) => {
    const word = (one[1] ?? '').toLowerCase();
    const value = text.slice(one.index + one[0].length, found[i + 1]?.index ?? text.length);
    return [OTHER_WORDS.get(word) ?? word, value.replace(/(?<!\s)(?:\s*[,;]|\s+and)?\s*$/i, '').trim()];
  });
}

const PLATFORM = '(?<platform>discord|slack|(?:the )?terminal|phone|computer|other account|accounts?)';

const LINKING: readonly (readonly [said: RegExp, line: (found: Readonly<Record<string, string>>) => string])[] = [
  [
    new RegExp(
      `^(?:link|connect|join|merge) (?:up )?(?:my |the |this |both |all )*(?:account )?(?:(?:to|with) )?(?:my )?${PLATFORM}(?: accounts?)?(?: (?:to|with|and) .*)?[.!?]?$`,
      'i',
    ),
    () => 'project link',
  ],
  [
    /^(?:give me|make(?: me)?|show(?: me)?|get(?: me)?|i need) (?:a |my )?(?:new )?(?:link(?:ing)? )?code[.!?]?$/i,
    () => 'project link',
  ],
  [
    /^(?:which|what|show(?: me)?|list)(?: of)? (?:my |the )?(?:linked |other )?accounts(?: (?:are|do i have|have i) ?(?:linked|connected)?)?[.!?]?$/i,
    () => 'project link list',
  ],
  [
    new RegExp(`^(?:unlink|disconnect|part) (?:my |the |this )*${PLATFORM}(?: account)?[.!]?$`, 'i'),
    ({ platform = '' }) => `project link remove ${/account/.test(platform) ? 'this' : platform}`,
  ],
  [
    /^(?:(?:link|join|redeem)(?: with| by)?(?: (?:the|my))?(?: ?code)?|(?:(?:use|take|enter|type) )?(?:(?:the|my) )?code(?: is)?)[: ]+(?<code>[\da-z]{4}[ \p{Pd}]?[\da-z]{4})[.!]?$/iu,
    ({ code = '' }) => (/\d/.test(code) ? `project link ${code}` : ''),
  ],
];

/** A code by itself, which is no sum of lengths. */
const BARE_CODE = /^(?=.*\d)(?=.*[a-z])(?!.*\d(?:ft|in|cm|mm|m)(?![a-z\d]))[\da-z]{4} ?\p{Pd} ?[\da-z]{4}[.!]?$/iu;

/** The line for a sentence about linked accounts; undefined for any other text. */
export function accountLine(said: string): string | undefined {
  for (const [pattern, line] of LINKING) {
    const found = pattern.exec(said);
    const done = found && line(found.groups ?? {});
    if (done) return done;
  }
  if (BARE_CODE.test(said) || /^link (?:list|remove .+)$/i.test(said))
    return `project link ${said.replace(/^link |[.!]$/gi, '')}`;
  return /^(?:link|unlink)[.!]?$/i.test(said) ? 'project link' : undefined;
}

/** “all of my” is “all of” and “my”, each by itself: told together as well, both ways would be tried at every one. */
const PART =
  '(?:(?:my |our |the |a |all of )*(?:whole |entire |full )?(?:project|shopp?ing(?: li?st)?|(?:laying|plank|floor) (?:guide|plan)|layout|guide|cut(?:ting)? ?list|cuts|saw list|tear-?out|check ?list|progress|everything)|what to buy)';

/** Each begins the whole sentence and takes all of it. */
const SHARING: readonly SharingPattern[] = [
  {
    said: /^(?:stop|end|revoke|cancel) (?:sharing|the shares|all shares)(?<which>\b.*)?$/i,
    line: ({ which = '' }) => `project share stop ${which.trim()}`.trim(),
  },
  {
    said: /^(?:stop|end|revoke|cancel) (?:(?:the |my |all )*(?<links>links?)|(?:the )?(?:share|link) (?<which>\S.*)|(?:no\.? ?|#)?(?<no>\d{1,6}))[.!]?$/i,
    line: ({ links, which, no }) => `project share stop ${links ?? which ?? no}`,
  },
  { said: /^unshare(?<which>\b.*)?$/i, line: ({ which = '' }) => `project share stop ${which.trim()}`.trim() },
  {
    said: /^(?:change|make|set) (?:the )?(?:share|link) (?<rest>#?\d.*)$/i,
    line: ({ rest = '' }) => `project share ${rest}`,
  },
  { said: /^leave (?:my |the |this )?shared project[.!]?$/i, line: () => 'project share leave' },
  {
    // What is shared may be missing or misspelt: the command tells what can be.
    said: new RegExp(`^share (?<rest>(?:${PART}\\b|my |our |the |this\\b|it\\b|with ).*)$`, 'i'),
    line: ({ rest = '' }) => `project share ${rest}`,
  },
  {
    // “Send Dana a link to the cut list”; “a link to the cut list for Dana”.
    said: new RegExp(
      `^(?:send|give|make|get|create)(?: me)?(?: (?<who>(?!me\\b|an? |the )\\S(?:.{0,50}?\\S)?))? (?:an? |the )?(?:share )?link (?:to|for|of) (?<rest>${PART}\\b.*)$`,
      'i',
    ),
    line: ({ who, rest = '' }) => linkLine(rest, who),
  },
  {
    said: new RegExp(
      `^(?:send|give|show) (?<who><@[^>]+>|(?!me\\b)\\S(?:.{0,50}?\\S)?) (?:access to )?(?<rest>(?=my |our |the )${PART}\\b.*)$`,
      'i',
    ),
    line: ({ who = '', rest = '' }) => `project share ${rest}, with ${who}`,
  },
  {
    said: new RegExp(
      `^let (?<who>\\S(?:.{0,50}?\\S)?) (?<may>see|look at|view|tick(?: off)?|measure)(?: (?:in|on|for))? (?<rest>${PART}\\b.*)$`,
      'i',
    ),
    line: ({ who = '', may = '', rest = '' }) => `project share ${rest}, with ${who}, may ${may}`,
  },
];

function linkLine(rest: string, who: string | undefined): string {
  return who === undefined ? `project share ${rest}, with a link` : `project share ${rest}, with a link, named ${who}`;
}

/** The line that does what a sentence about sharing says; undefined for any other text. */
export function sharingLine(said: string): string | undefined {
  for (const { said: pattern, line } of SHARING) {
    const found = pattern.exec(said);
    if (found) return line(found.groups ?? {});
  }
  return undefined;
}
